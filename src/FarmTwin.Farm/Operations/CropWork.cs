using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Sowing, transplanting, pushing and harvesting boards, first in, first out; what waits and why is in the record.</summary>
public sealed class CropWork : FarmWork
{
    // A week's boards come in thirds: three of them make one for all that rounding does.
    private const double Rounding = 1e-9;

    private readonly PlantProcess _plants;
    private readonly Market _market;
    private readonly PlantLot _waste = new();
    private readonly PlantLot _harvest = new();
    private readonly PlantLot _board = new();

    /// <summary>Makes it.</summary>
    public CropWork(FarmContext farm, FarmLog log, PlantProcess plants, Market market)
        : base(farm, log)
    {
        _plants = plants;
        _market = market;
    }

    private GrowingState Growing => State.Growing;

    /// <summary>Sows a crop.</summary>
    public void Sow(int crop, long seconds)
    {
        NurseryDescription nursery = Parts.Farm.Nursery
            ?? throw new DescriptionException("crops: sowing needs a nursery; describe one under 'nursery'.");
        CropPlanDescription plan = Parts.CropPlans[crop];
        double places = (double)nursery.Tiers * nursery.TraysPerTier * nursery.CellsPerTray;
        double standing = Growing.Trays.Sum(t => t.Cells);
        int wanted = ChangeAt(plan, seconds)?.CellsPerSowing ?? plan.CellsPerSowing;
        double cells = Math.Min(wanted, places - standing);
        if (cells < wanted)
        {
            Log.Add(seconds, "nursery full", Parts.CropNames[crop], wanted - cells, "cells", "the nursery has no more trays free");
        }

        if (cells <= 0)
        {
            return;
        }

        Growing.Trays.Add(new NurseryTray(crop, cells, cells / nursery.CellsPerTray * nursery.TraySquareMetres, DayOf(seconds)));
        Spend(Chore.SowTray, cells / nursery.CellsPerTray, Parts.Products.OfCrop(crop));
        Growing.CellsSown[crop] += cells;
        Growing.Changed = true;
        Log.Add(seconds, "sow", Parts.CropNames[crop], cells, "cells", string.Empty);
    }

    /// <summary>Moves seedlings that are old enough to the trough, as far as there are places.</summary>
    public void Transplant(long seconds)
    {
        double day = DayOf(seconds);
        bool settled = false;
        for (int t = 0; t < Growing.Trays.Count; t++)
        {
            NurseryTray tray = Growing.Trays[t];
            if (!tray.IsUp || tray.Lot.IsEmpty || tray.AgeDays(day) < Parts.CropPlans[tray.Crop].NurseryDays - 0.5)
            {
                continue;
            }

            foreach (TransplantTrough trough in Growing.Troughs)
            {
                double free = trough.FreePlaces(tray.Crop);
                if (free < 1)
                {
                    continue;
                }

                if (!settled)
                {
                    _plants.Settle();
                    settled = true;
                }

                // The weak ones are culled once, when the tray is first lifted.
                if (tray.Lot.Plants > tray.Cells * Parts.Crops[tray.Crop].SeedLotShare * (1 - (Parts.Crops[tray.Crop].NurseryCullShare / 2)))
                {
                    tray.Cull(Parts.Crops[tray.Crop], _waste);
                    ToCompost(tray.Crop);
                }

                double moved = trough.Enter(tray.Lot);
                Spend(Chore.TransplantPlant, moved, Parts.Products.OfCrop(tray.Crop));
                Growing.Changed = true;
                Log.Add(seconds, "transplant", Parts.CropNames[tray.Crop], moved, "plants", $"at {tray.AgeDays(day):0} days to the trough");
                bool firstDay = tray.AgeDays(day) < Parts.CropPlans[tray.Crop].NurseryDays + 1;
                if (firstDay && tray.Lot.Plants > 1)
                {
                    Log.Add(seconds, "trough full", Parts.CropNames[tray.Crop], tray.Lot.Plants, "plants", "they wait in the nursery");
                }
            }
        }

        Discard(day, seconds);
    }

    /// <summary>Harvests and plants the boards that are due of a crop.</summary>
    public void HarvestBoards(int crop, long seconds)
    {
        CropPlanDescription plan = Parts.CropPlans[crop];
        double day = DayOf(seconds);
        double ripeAge = plan.NurseryDays + plan.TroughDays + plan.LeastLaneDays - 0.5;
        double perWeek = ChangeAt(plan, seconds)?.BoardsPerWeek ?? plan.BoardsPerWeek;
        double leastGrams = plan.LeastWeightGrams ?? Parts.Crops[crop].SaleableFreshGramsLow;

        // Boards that could not be moved are made up for later, but never more than a week's.
        Growing.BoardsOwed[crop] = Math.Min(
            Growing.BoardsOwed[crop] + (perWeek / plan.HarvestWeekdays.Count), Math.Max(1, perWeek));
        _plants.Settle();
        int harvested = 0;
        int planted = 0;
        double heads = 0;
        double grams = 0;
        double age = 0;
        bool shortOfSeedlings = false;
        bool light = false;
        while (Growing.BoardsOwed[crop] >= 1 - Rounding)
        {
            int lane = NextLane(crop);
            if (lane < 0)
            {
                break;
            }

            RaftLane boards = Growing.Lanes[lane];
            bool old = boards.Count > 0 && boards.ExitAgeDays(day) >= ripeAge;
            bool ripe = old && boards.ExitFreshGramsPerPlant(Parts.Crops[crop]) >= leastGrams;
            light |= old && !ripe;
            if (ripe)
            {
                age += boards.ExitAgeDays(day);
                boards.HarvestOldest(_harvest);
                heads += _harvest.Plants;
                grams += _harvest.FreshShootGrams(Parts.Crops[crop]);
                TakeHarvest(crop, seconds);
                harvested++;
            }

            bool planting = !boards.IsFull && Plant(crop, boards, day, plan);
            planted += planting ? 1 : 0;
            shortOfSeedlings |= !planting && !boards.IsFull;
            if (!ripe && !planting)
            {
                break;
            }

            Growing.BoardsOwed[crop]--;
        }

        Growing.Changed = true;
        int product = Parts.Products.OfCrop(crop);
        Spend(Chore.MoveBoard, harvested + planted, product);
        Spend(Chore.CleanBoard, harvested, product);
        Spend(Chore.HarvestHead, heads, product);
        if (harvested > 0)
        {
            _market.Trip(seconds);
            Growing.LastHeadGrams[crop] = heads > 0 ? grams / heads : 0;
            Growing.LastHeadAge[crop] = age / harvested;
            Log.Add(seconds, "harvest boards", Parts.CropNames[crop], heads, "heads",
                $"{harvested} boards, {grams / Math.Max(1, heads):0} g a head at {age / harvested:0} days");
        }

        if (light)
        {
            Log.Add(seconds, "boards wait", Parts.CropNames[crop], Growing.BoardsOwed[crop], "boards",
                $"the oldest heads are old enough but below {leastGrams:0} g");
        }

        if (planted > 0)
        {
            Log.Add(seconds, "plant boards", Parts.CropNames[crop], planted, "boards", string.Empty);
        }

        // Places left empty on purpose, because nothing was sown for them, are no shortage.
        double sownOn = day - plan.NurseryDays - plan.TroughDays - plan.SowEveryDays;
        long then = (long)(sownOn * UnitConstants.SecondsPerDay);
        bool sows = sownOn > plan.FirstSowingDay && (ChangeAt(plan, then)?.CellsPerSowing ?? plan.CellsPerSowing) > 0;
        if (shortOfSeedlings && sows)
        {
            Log.Add(seconds, "no seedlings", Parts.CropNames[crop], Growing.BoardsOwed[crop], "boards", "a lane has free places, but no seedling in the trough is old enough");
        }
    }

    /// <summary>Losses of the day on lanes and in troughs: dead plants to compost.</summary>
    public void DailyLosses()
    {
        for (int l = 0; l < Growing.Lanes.Length; l++)
        {
            RaftLane lane = Growing.Lanes[l];
            for (int i = 0; i < lane.Count; i++)
            {
                int crop = lane[i].Crop;
                double perDay = Parts.Crops[crop].GrowingLossShare / Math.Max(1, Parts.CropPlans[crop].LeastLaneDays);
                lane.Lose(i, lane[i].Plants * perDay, _waste);
                ToCompost(crop);
            }
        }

        for (int t = 0; t < Growing.Troughs.Length; t++)
        {
            TransplantTrough trough = Growing.Troughs[t];
            for (int i = trough.Count - 1; i >= 0; i--)
            {
                int crop = trough[i].Crop;
                double perDay = Parts.Crops[crop].TransplantLossShare / Math.Max(1, Parts.CropPlans[crop].TroughDays);
                trough.Lose(i, trough[i].Plants * perDay, _waste);
                ToCompost(crop);
            }
        }

        Growing.Changed = true;
    }

    private static CropPlanChange? ChangeAt(CropPlanDescription plan, long seconds)
    {
        double day = DayOf(seconds);
        CropPlanChange? latest = null;
        foreach (CropPlanChange change in plan.Changes.Values)
        {
            if (change.FromDay <= day && (latest is null || change.FromDay >= latest.FromDay))
            {
                latest = change;
            }
        }

        return latest;
    }

    private bool Plant(int crop, RaftLane boards, double day, CropPlanDescription plan)
    {
        double age = plan.NurseryDays + plan.TroughDays - 0.5;
        foreach (TransplantTrough trough in Growing.Troughs)
        {
            // A board is not planted half empty while a few days more would fill it.
            if (trough.Available(crop, day, age) >= boards.HolesPerBoard)
            {
                _board.Clear();
                trough.TakeForBoard(crop, boards.HolesPerBoard, day, age, _board);
                Spend(Chore.TransplantPlant, boards.HolesPerBoard, Parts.Products.OfCrop(crop));
                return boards.Push(_board);
            }
        }

        return false;
    }

    // The lane of the crop whose exit board is oldest; where none is ripe, the emptiest.
    private int NextLane(int crop)
    {
        int best = -1;
        double oldest = double.NegativeInfinity;
        for (int l = 0; l < Growing.Lanes.Length; l++)
        {
            if (_plants.LaneCrop[l] != crop)
            {
                continue;
            }

            double rank = Growing.Lanes[l].IsFull ? -Growing.Lanes[l][0].SownDay : 1e6 + Growing.Lanes[l].FreeBoards;
            if (rank > oldest)
            {
                oldest = rank;
                best = l;
            }
        }

        return best;
    }

    private void TakeHarvest(int crop, long seconds)
    {
        CropParameters parameters = Parts.Crops[crop];
        double saleable = 1 - parameters.UnsaleableShare;
        Growing.HeadsHarvested[crop] += _harvest.Plants;
        Growing.SaleableHeads[crop] += _harvest.Plants * saleable;
        Growing.SaleableGrams[crop] += _harvest.FreshShootGrams(parameters) * saleable;
        ElementGrams roots = _harvest.RootElements(parameters);
        ElementGrams sold = (_harvest.Pools - roots) * saleable;
        double water = _harvest.WaterLitres(parameters);
        double soldWater = water * (1 - parameters.RootShare) * saleable;
        _market.Offer(
            Parts.Products.OfCrop(crop), _harvest.Plants * saleable, _harvest.FreshShootGrams(parameters) * saleable, sold, soldWater, seconds);
        _plants.PostPlants(Door.CropCompost, _harvest.Pools - sold, water - soldWater, -1);
        Growing.WasteDryGrams[crop] += _harvest.DryGrams * (1 - ((1 - parameters.RootShare) * saleable));
        _harvest.Clear();
    }

    private void ToCompost(int crop)
    {
        if (_waste.Plants > 0 || _waste.DryGrams > 0)
        {
            _plants.PostPlants(Door.CropCompost, _waste.Pools, _waste.WaterLitres(Parts.Crops[crop]), -1);
            Growing.WasteDryGrams[crop] += _waste.DryGrams;
        }

        _waste.Clear();
    }

    // Trays that are empty, or whose seedlings have become too old to move, are cleared.
    private void Discard(double day, long seconds)
    {
        for (int t = Growing.Trays.Count - 1; t >= 0; t--)
        {
            NurseryTray tray = Growing.Trays[t];
            bool empty = tray.IsUp && tray.Lot.Plants < 0.5;
            bool tooOld = tray.AgeDays(day) > Parts.Practice.SeedlingsTooOld * Parts.CropPlans[tray.Crop].NurseryDays;
            if (!empty && !tooOld)
            {
                continue;
            }

            if (tray.Lot.Plants > 0)
            {
                if (!empty)
                {
                    Log.Add(seconds, "discard seedlings", Parts.CropNames[tray.Crop], tray.Lot.Plants, "plants", "too old to move: there was no room in the trough");
                }

                _plants.Settle();
                tray.Lot.MoveInto(_waste, tray.Lot.Plants);
                ToCompost(tray.Crop);
            }

            Growing.Trays.RemoveAt(t);
            Growing.Changed = true;
        }
    }
}
