using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Plants;

/// <summary>Media beds as bodies of water: the level of each follows its outlet, roots and microbes breathe its oxygen.</summary>
/// <remarks>See docs/model/media-beds.md. Setting out, picking, pruning and clearing are Operations.</remarks>
public sealed class BedProcess
{
    private readonly FarmContext _farm;

    /// <summary>Makes the process; the brim of a bed that states none is the surface of its medium.</summary>
    public BedProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        FarmParts parts = farm.Parts;
        for (int i = 0; i < parts.Beds.Length; i++)
        {
            MediaBedDescription bed = parts.Beds[i];
            int basin = parts.BedBasin[i];
            farm.Network.BrimLitres[basin] = parts.Basins[basin].BrimLitres
                ?? BedWater.Litres(bed.AreaSquareMetres, bed.DepthMetres, parts.BedMedia[i].VoidShare);
        }
    }

    /// <summary>Sets the level at which each bed overflows. Call before the flows of a step are solved.</summary>
    public void SetLevels()
    {
        FarmParts parts = _farm.Parts;
        for (int i = 0; i < parts.Beds.Length; i++)
        {
            _farm.Network.NormalLitres[parts.BedBasin[i]] = BedWater.Litres(
                parts.Beds[i].AreaSquareMetres, _farm.State.Growing.Beds[i].SetHeightMetres, parts.BedMedia[i].VoidShare);
        }
    }

    /// <summary>Adds the oxygen that roots and microbes would breathe.</summary>
    public void Contribute()
    {
        FarmParts parts = _farm.Parts;
        for (int i = 0; i < parts.Beds.Length; i++)
        {
            int basin = parts.BedBasin[i];
            PlantLot lot = _farm.State.Growing.Beds[i].Plants;
            double roots = lot.IsEmpty ? 0 : lot.DryGrams * parts.Crops[lot.Crop].RootShare;
            _farm.OxygenByRoots[basin] += _farm.State.Basins.Litres[basin] > 0
                ? BedWater.RespirationGramsPerHour(roots, parts.Beds[i].AreaSquareMetres, _farm.State.Basins.Celsius[basin], parts.BedParameters)
                : 0;
        }
    }

    /// <summary>Adds the step to each bed's day.</summary>
    public void Commit()
    {
        FarmParts parts = _farm.Parts;
        for (int i = 0; i < parts.Beds.Length; i++)
        {
            int basin = parts.BedBasin[i];
            double litres = _farm.Network.LitresAfter[basin];
            _farm.State.Growing.Beds[i].Add(
                _farm.Step.Hours,
                litres > 0 ? _farm.Step.Concentration[WaterStep.At(basin, Substance.Oxygen)] * UnitConstants.GramsPerKilogram : 0,
                HeightMetres(parts, i, litres));
        }
    }

    /// <summary>Height of a bed's water above its floor, m.</summary>
    public static double HeightMetres(FarmParts parts, int bed, double litres)
    {
        ArgumentNullException.ThrowIfNull(parts);
        MediaBedDescription description = parts.Beds[bed];
        return BedWater.HeightMetres(litres, description.AreaSquareMetres, parts.BedMedia[bed].VoidShare, description.DepthMetres);
    }

    /// <summary>Film area of a bed's medium, m²: its packed surface by the share of its depth that stands in water.</summary>
    public static double FilmSquareMetres(FarmParts parts, int bed, double litres)
    {
        ArgumentNullException.ThrowIfNull(parts);
        MediaBedDescription description = parts.Beds[bed];
        return parts.BedMedia[bed].PackedAreaSquareMetres(
            description.AreaSquareMetres * description.DepthMetres * UnitConstants.LitresPerCubicMetre,
            HeightMetres(parts, bed, litres) / description.DepthMetres);
    }

    /// <summary>The root zone of a bed's plants: the water that leaves the bed, the height it stood at, what transpiration can carry.</summary>
    /// <param name="root">The basin's water at midnight.</param>
    /// <param name="farm">The farm.</param>
    /// <param name="bed">The bed, its day ended.</param>
    /// <param name="day">Days from day 0.</param>
    public static RootZone AtRoots(in RootZone root, FarmContext farm, int bed, double day)
    {
        ArgumentNullException.ThrowIfNull(farm);
        MediaBed state = farm.State.Growing.Beds[bed];
        double transpired = farm.State.Growing.TranspiredLitres[farm.Parts.BedBasin[bed]];
        return root with
        {
            OxygenMilligramsPerLitre = state.OxygenMilligramsPerLitre,
            WaterFactor = BedWater.WaterFactor(
                state.HeightMetres, BedWater.Rooted(day - state.SetOutDay, farm.Parts.Beds[bed].LowerOverDays), farm.Parts.BedParameters),
            CalciumStreamGramsPerDay = farm.Parts.Plants.CalciumStreamShare * transpired * root.CalciumMilligramsPerLitre
                / UnitConstants.GramsPerKilogram,
        };
    }
}
