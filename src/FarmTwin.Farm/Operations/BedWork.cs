using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Fruiting crops in media beds: sown ahead, set out, watered, pruned, picked, cleared.</summary>
public sealed class BedWork : FarmWork
{
    private const double SameSowing = 0.6;

    private readonly PlantProcess _plants;
    private readonly Market _market;
    private readonly PlantLot _waste = new();
    private ElementGrams _saleableElements;
    private double _saleableGrams;
    private double _saleableWaterLitres;

    /// <summary>Makes it.</summary>
    public BedWork(FarmContext farm, FarmLog log, PlantProcess plants, Market market)
        : base(farm, log)
    {
        _plants = plants;
        _market = market;
    }

    private GrowingState Growing => State.Growing;

    /// <summary>Sows what a planting wants, with its spare, in pots or large cells as far apart as the crop is raised.</summary>
    public void Sow(int planting, long seconds)
    {
        (int crop, PlantingDescription plan, int[] beds) = Parts.Plantings[planting];
        NurseryDescription nursery = Parts.Farm.Nursery!;
        double wanted = Math.Ceiling(beds.Sum(PlacesOf) * (1 + plan.SpareShare));
        double spacing = Parts.Crops[crop].NurseryPlantsPerSquareMetre;
        double cells = 0;
        for (int t = 0; t < Parts.Tiers.Count && cells < wanted; t++)
        {
            double free = Parts.Tiers.UseOf(t, DayOf(seconds)) == TierUse.Seedlings ? NurserySpace.FreeSquareMetres(Growing, nursery, t) : 0;
            double here = Math.Min(wanted - cells, Math.Floor(free * spacing));
            if (here > 0)
            {
                Growing.Trays.Add(new NurseryTray(crop, here, here / spacing, DayOf(seconds), t));
                cells += here;
            }
        }

        if (cells < wanted)
        {
            Log.Add(seconds, "nursery full", Parts.CropNames[crop], wanted - cells, "cells", "the nursery has no more trays free for seedlings");
        }

        if (cells <= 0)
        {
            return;
        }

        Spend(Chore.SowTray, cells / spacing / nursery.TraySquareMetres, Parts.Products.OfCrop(crop));
        Growing.CellsSown[crop] += cells;
        Growing.Changed = true;
        Log.Add(seconds, "sow", Parts.CropNames[crop], cells, "cells", $"to be set out in {Names(beds)}");
    }

    /// <summary>Sets the seedlings of a planting out in its beds; a bed still planted is cleared first, spare seedlings go to compost.</summary>
    public void SetOut(int planting, long seconds)
    {
        (int crop, PlantingDescription plan, int[] beds) = Parts.Plantings[planting];
        foreach (int bed in beds.Where(b => !Growing.Beds[b].Plants.IsEmpty))
        {
            ClearBed(bed, seconds);
        }

        _plants.Settle();
        double sown = plan.SetOutDay - Parts.CropPlans[crop].NurseryDays;
        List<NurseryTray> trays = [.. Growing.Trays.Where(t => t.Crop == crop && Math.Abs(t.SownDay - sown) < SameSowing)];
        foreach (NurseryTray tray in trays.Where(t => t.IsUp))
        {
            tray.Cull(Parts.Crops[crop], _waste);
            ToCompost(crop);
        }

        double set = 0;
        double places = 0;
        double age = DayOf(seconds) - sown;
        foreach (int b in beds)
        {
            MediaBed bed = Growing.Beds[b];
            double lost = Parts.Crops[crop].TransplantLossShare;
            double wanted = PlacesOf(b);
            places += wanted;
            foreach (NurseryTray tray in trays.Where(t => t.IsUp))
            {
                tray.Lot.MoveInto(bed.Plants, (wanted / (1 - lost)) - bed.Plants.Plants);
            }

            bed.Plants.AreaSquareMetres = Parts.Beds[b].AreaSquareMetres;
            bed.Plants.MoveInto(_waste, bed.Plants.Plants * lost, keepArea: true);
            ToCompost(crop);
            set += bed.Plants.Plants;
            bed.Planting = bed.Plants.IsEmpty ? -1 : planting;
            bed.SetOutDay = bed.Plants.IsEmpty ? double.NaN : DayOf(seconds);
            bed.SetByHand = false;
            bed.DryDays = 0;
            bed.DrownedDays = 0;
            SetHeight(b, DayOf(seconds));
        }

        foreach (NurseryTray tray in trays)
        {
            tray.Lot.MoveInto(_waste, tray.Lot.Plants);
            ToCompost(crop);
            Growing.Trays.Remove(tray);
        }

        Spend(Chore.TransplantPlant, set, Parts.Products.OfCrop(crop));
        Growing.Fruit[crop].PlantsSetOut += set;
        Growing.Changed = true;
        Log.Add(seconds, "set out", Parts.CropNames[crop], set, "plants", $"{age:0} days old, in {Names(beds)}");
        if (set < places * (1 - Parts.Crops[crop].TransplantLossShare) - 0.5)
        {
            Log.Add(seconds, "no seedlings", Parts.CropNames[crop], places - set, "plants", "places in the beds stay empty: sow more beyond the places");
        }
    }

    /// <summary>Picks the ripe fruit of a crop, once it comes to a whole fruit.</summary>
    public void Pick(int crop, long seconds)
    {
        if (RipeGrams(crop) >= Parts.Crops[crop].SaleableFreshGramsLow)
        {
            PickAll(crop, seconds);
        }
    }

    private void PickAll(int crop, long seconds)
    {
        _plants.Settle();
        double before = Growing.Fruit[crop].PickedGrams;
        double rot = Growing.Fruit[crop].BlossomEndRotGrams;
        (_saleableElements, _saleableGrams, _saleableWaterLitres) = (ElementGrams.Zero, 0, 0);
        for (int b = 0; b < Growing.Beds.Length; b++)
        {
            if (Parts.BedCrop[b] == crop)
            {
                PickBed(Growing.Beds[b].Plants, crop);
            }
        }

        double picked = Growing.Fruit[crop].PickedGrams - before;
        if (picked > 0)
        {
            int product = Parts.Products.OfCrop(crop);
            _market.Offer(product, 0, _saleableGrams, _saleableElements, _saleableWaterLitres, seconds);
            _market.Trip(seconds);
            Spend(Chore.PickFruit, picked / UnitConstants.GramsPerKilogram, product);
            double spoilt = (Growing.Fruit[crop].BlossomEndRotGrams - rot) / picked;
            Log.Add(seconds, "pick", Parts.CropNames[crop], picked / UnitConstants.GramsPerKilogram, "kg",
                spoilt > 0.01 ? $"{spoilt:0%} with blossom-end rot" : string.Empty);
        }
    }

    /// <summary>Takes the growing tips of a planting off.</summary>
    public void Top(int planting, long seconds)
    {
        for (int b = 0; b < Growing.Beds.Length; b++)
        {
            if (Growing.Beds[b].Planting == planting)
            {
                Growing.Beds[b].Plants.IsTopped = true;
                Log.Add(seconds, "top", Parts.BedNames[b], Growing.Beds[b].Plants.Plants, "plants", "growing tips off: no more fruit sets, what hangs ripens");
            }
        }
    }

    /// <summary>Clears the beds of a planting: a last pick, then all that stands goes to compost.</summary>
    public void Clear(int planting, long seconds)
    {
        for (int b = 0; b < Growing.Beds.Length; b++)
        {
            if (Growing.Beds[b].Planting == planting)
            {
                ClearBed(b, seconds);
            }
        }
    }

    /// <summary>Sets the water of a bed by hand; the plan lowers it no more before the next planting.</summary>
    public void SetWaterHeight(int bed, double belowSurfaceMetres, long seconds)
    {
        Growing.Beds[bed].SetHeightMetres = Math.Max(0, Parts.Beds[bed].DepthMetres - belowSurfaceMetres);
        Growing.Beds[bed].SetByHand = true;
        Log.Add(seconds, "set water height", Parts.BedNames[bed], belowSurfaceMetres * 1000, "mm", "below the surface of the medium");
    }

    /// <summary>Ends a day: prunes, counts losses, looks for dry and drowned beds, lowers the water as roots go down.</summary>
    public void EndDay(long seconds)
    {
        double day = DayOf(seconds);
        for (int b = 0; b < Growing.Beds.Length; b++)
        {
            MediaBed bed = Growing.Beds[b];
            if (!bed.Plants.IsEmpty)
            {
                int crop = Parts.BedCrop[b];
                Prune(bed.Plants, crop);
                Lose(bed.Plants, crop, Parts.Crops[crop].GrowingLossShare / Parts.Crops[crop].FinalDays);
                LookAtWater(b, seconds);
                Growing.Fruit[crop].SquareMetreDays += Parts.Beds[b].AreaSquareMetres;
            }

            SetHeight(b, day);
        }

        Growing.Changed = true;
    }

    private double RipeGrams(int crop)
    {
        FruitParameters fruit = Parts.Crops[crop].Fruit!;
        double dry = 0;
        for (int b = 0; b < Growing.Beds.Length; b++)
        {
            PlantLot lot = Growing.Beds[b].Plants;
            if (Parts.BedCrop[b] == crop && lot.Fruit is { } load)
            {
                dry += load.DryGrams - load.GrowingGrams(lot.DegreeDays - fruit.GrowthSum);
            }
        }

        return fruit.FreshGrams(dry);
    }

    private double PlacesOf(int bed) => Math.Max(1, Math.Round(Parts.Beds[bed].AreaSquareMetres
        * (Parts.Beds[bed].PlantsPerSquareMetre ?? Parts.Crops[Parts.BedCrop[bed]].FinalPlantsPerSquareMetre)));

    private string Names(int[] beds) => string.Join(", ", beds.Select(b => Parts.BedNames[b]));

    private void SetHeight(int b, double day)
    {
        MediaBed bed = Growing.Beds[b];
        MediaBedDescription plan = Parts.Beds[b];
        if (!bed.SetByHand)
        {
            double rooted = bed.Plants.IsEmpty ? 0 : BedWater.Rooted(day - bed.SetOutDay, plan.LowerOverDays);
            bed.SetHeightMetres = plan.DepthMetres - BedWater.Between(plan.WaterBelowAtPlantingMetres, plan.WaterBelowRootedMetres, rooted);
        }
    }

    private void Prune(PlantLot lot, int crop)
    {
        double excess = Fruiting.ToPrune(lot, Parts.Crops[crop]);
        if (excess <= 0)
        {
            return;
        }

        _plants.PostPlants(Door.CropCompost, lot.Prune(excess), Growth.TissueWaterLitres(Parts.Crops[crop], excess), -1);
        Growing.Fruit[crop].PrunedDryGrams += excess;
        Growing.WasteDryGrams[crop] += excess;
    }

    private double Lose(PlantLot lot, int crop, double share)
    {
        double plants = lot.MoveInto(_waste, lot.Plants * share, keepArea: true);
        ToCompost(crop);
        return plants;
    }

    // By the means of the day. The first day of a spell is told.
    private void LookAtWater(int b, long seconds)
    {
        MediaBed bed = Growing.Beds[b];
        MediaBedDescription plan = Parts.Beds[b];
        BedParameters beds = Parts.BedParameters;
        double factor = BedWater.WaterFactor(bed.HeightMetres, BedWater.Rooted(DayOf(seconds) - bed.SetOutDay, plan.LowerOverDays), beds);
        bed.DryDays = factor < beds.WiltBelow ? bed.DryDays + 1 : 0;
        bed.DrownedDays = bed.HeightMetres > plan.DepthMetres - beds.CollarMetres ? bed.DrownedDays + 1 : 0;
        if (bed.DryDays > 0)
        {
            bed.PlantsLost += Lose(bed.Plants, Parts.BedCrop[b], beds.WiltDeathsPerDay);
        }

        if (bed.DrownedDays > beds.RotAfterDays)
        {
            bed.PlantsLost += Lose(bed.Plants, Parts.BedCrop[b], beds.RotDeathsPerDay);
        }

        if (bed.DryDays == 1)
        {
            Log.Add(seconds, "bed dry", Parts.BedNames[b], bed.HeightMetres * 1000, "mm", "of standing water: plants wilt and die; find the blocked inlet or open drain");
        }

        if (bed.DrownedDays == 1)
        {
            Log.Add(seconds, "bed drowned", Parts.BedNames[b], (plan.DepthMetres - bed.HeightMetres) * 1000, "mm",
                "from water to surface: the stem stands wet and rots within days; lower the outlet");
        }
    }

    private void PickBed(PlantLot lot, int crop)
    {
        CropParameters parameters = Parts.Crops[crop];
        if (lot.Fruit is not { } load || parameters.Fruit is not { } fruit)
        {
            return;
        }

        FruitTally tally = Growing.Fruit[crop];
        while (load.Count > 0 && lot.DegreeDays - load[0].SetSum >= fruit.GrowthSum)
        {
            FruitCohort ripe = load.TakeOldest();
            double fresh = fruit.FreshGrams(ripe.DryGrams);
            bool hungTooLong = lot.DegreeDays - ripe.SetSum > fruit.GrowthSum + fruit.HoldSum;
            double rot = Fruiting.BlossomEndRotShare(ripe, fruit, Parts.Plants);
            double saleable = hungTooLong ? 0 : (1 - rot) * (1 - parameters.UnsaleableShare);
            tally.PickedGrams += fresh;
            tally.BlossomEndRotGrams += fresh * rot;
            tally.OverripeGrams += hungTooLong ? fresh * (1 - rot) : 0;
            tally.PickedElements += ripe.Elements;
            Growing.SaleableGrams[crop] += fresh * saleable;
            Growing.WasteDryGrams[crop] += ripe.DryGrams * (1 - saleable);
            double water = fruit.WaterLitres(ripe.DryGrams);
            _saleableElements += ripe.Elements * saleable;
            _saleableGrams += fresh * saleable;
            _saleableWaterLitres += water * saleable;
            _plants.PostPlants(Door.CropCompost, ripe.Elements * (1 - saleable), water * (1 - saleable), -1);
        }
    }

    private void ClearBed(int b, long seconds)
    {
        MediaBed bed = Growing.Beds[b];
        int crop = Parts.BedCrop[b];
        PickAll(crop, seconds);
        double unripe = bed.Plants.Fruit?.DryGrams ?? 0;
        double plants = bed.Plants.MoveInto(_waste, bed.Plants.Plants);
        ToCompost(crop);
        Spend(Chore.ClearBed, 1, Parts.Products.OfCrop(crop));
        bed.Plants.Clear();
        bed.Planting = -1;
        bed.SetOutDay = double.NaN;
        bed.SetByHand = false;
        SetHeight(b, DayOf(seconds));
        Growing.Changed = true;
        Log.Add(seconds, "clear bed", Parts.BedNames[b], plants, "plants",
            $"{Parts.CropNames[crop]} to compost, with {Parts.Crops[crop].Fruit!.FreshGrams(unripe) / UnitConstants.GramsPerKilogram:0.0} kg of unripe fruit");
    }

    private void ToCompost(int crop)
    {
        if (_waste.Plants > 0 || _waste.DryGrams > 0)
        {
            _plants.PostPlants(Door.CropCompost, _waste.Elements, _waste.WaterLitres(Parts.Crops[crop]), -1);
            Growing.WasteDryGrams[crop] += _waste.DryGrams + (_waste.Fruit?.DryGrams ?? 0);
            Growing.Fruit[crop].LostGrams += Parts.Crops[crop].Fruit!.FreshGrams(_waste.Fruit?.DryGrams ?? 0);
        }

        _waste.Clear();
    }
}
