using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Whether beds, basins, crops and plantings fit together.</summary>
internal static class BedChecks
{
    private const double VolumeTolerance = 0.05;

    /// <summary>Checks them.</summary>
    /// <exception cref="DescriptionException">They do not; says where, why, and what to write.</exception>
    public static void Check(FarmParts parts)
    {
        for (int i = 0; i < parts.Beds.Length; i++)
        {
            Bed(parts, i);
        }

        foreach (string basin in parts.BasinNames.Where((_, b) => parts.Basins[b].Use == BasinUse.MediaBed && !parts.BedBasin.Contains(b)))
        {
            throw new DescriptionException($"basins.{basin}: a basin of the use media-bed needs a bed; describe one under 'mediaBeds' that names it.");
        }

        for (int c = 0; c < parts.CropNames.Length; c++)
        {
            Crop(parts, c);
        }
    }

    private static void Bed(FarmParts parts, int i)
    {
        string name = parts.BedNames[i];
        MediaBedDescription bed = parts.Beds[i];
        BasinDescription basin = parts.Basins[parts.BedBasin[i]];
        if (basin.Use != BasinUse.MediaBed)
        {
            throw new DescriptionException($"mediaBeds.{name}: its basin '{bed.Basin}' is no media bed; write \"use\": \"media-bed\" there.");
        }

        if (parts.BedBasin.Count(b => b == parts.BedBasin[i]) > 1)
        {
            throw new DescriptionException($"mediaBeds.{name}: two beds share the basin '{bed.Basin}'; give each its own, for each has its own water height.");
        }

        if (parts.Crops[parts.BedCrop[i]].Fruit is null)
        {
            throw new DescriptionException($"mediaBeds.{name}: '{bed.Crop}' bears no fruit; beds grow fruiting crops, leafy ones stand on lanes.");
        }

        if (bed.WaterBelowAtPlantingMetres >= bed.DepthMetres || bed.WaterBelowRootedMetres >= bed.DepthMetres)
        {
            throw new DescriptionException($"mediaBeds.{name}: the water would stand below the floor: the medium is {bed.DepthMetres * 1000:0} mm deep.");
        }

        double litres = BedWater.Litres(bed.AreaSquareMetres, bed.DepthMetres - bed.WaterBelowAtPlantingMetres, parts.BedMedia[i].VoidShare);
        if (Math.Abs(basin.VolumeLitres - litres) > VolumeTolerance * litres)
        {
            throw new DescriptionException($"basins.{bed.Basin}: a bed of {bed.AreaSquareMetres:0.##} m2 with water {bed.WaterBelowAtPlantingMetres * 1000:0} mm below the "
                + $"surface of {bed.DepthMetres * 1000:0} mm of {bed.Medium} holds {litres:0} L, not {basin.VolumeLitres:0}; write \"volume\": \"{litres:0} L\".");
        }
    }

    private static void Crop(FarmParts parts, int c)
    {
        CropPlanDescription plan = parts.CropPlans[c];
        string name = parts.CropNames[c];
        if (plan.Plantings.Count == 0)
        {
            return;
        }

        if (parts.Crops[c].Fruit is null)
        {
            throw new DescriptionException($"crops.{name}: plantings are for fruiting crops in media beds; a leafy crop has 'sow' and 'boardsPerWeek'.");
        }

        if (parts.Farm.Nursery is null)
        {
            throw new DescriptionException($"crops.{name}: sowing needs a nursery; describe one under 'nursery'.");
        }

        foreach ((string key, PlantingDescription planting) in plan.Plantings)
        {
            if (planting.SetOutDay < plan.NurseryDays)
            {
                throw new DescriptionException($"crops.{name}.plantings.{key}: set out on day {planting.SetOutDay:0} after {plan.NurseryDays:0} days in the nursery, they would be "
                    + "sown before day 0; set them out later or shorten 'nursery'.");
            }

            if (planting.ClearDay <= planting.SetOutDay)
            {
                throw new DescriptionException($"crops.{name}.plantings.{key}: cleared on day {planting.ClearDay:0}, not after they are set out on day {planting.SetOutDay:0}.");
            }

            if (planting.TopDay <= planting.SetOutDay || planting.TopDay >= planting.ClearDay)
            {
                throw new DescriptionException($"crops.{name}.plantings.{key}: topped on day {planting.TopDay:0}; that must lie between setting out and clearing.");
            }

            if (parts.BedsOf(c, planting).FirstOrDefault(b => parts.BedCrop[b] != c, -1) is >= 0 and var other)
            {
                throw new DescriptionException($"crops.{name}.plantings.{key}: the bed '{parts.BedNames[other]}' grows {parts.CropNames[parts.BedCrop[other]]}.");
            }

            if (parts.BedsOf(c, planting).Length == 0)
            {
                throw new DescriptionException($"crops.{name}.plantings.{key}: no bed grows {name}; name it as the crop of a bed under 'mediaBeds'.");
            }
        }
    }
}
