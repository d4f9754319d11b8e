using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Pushing and harvesting boards, first in, first out; what waits and why is in the record.</summary>
/// <remarks>A board of a crop with several cuts goes back to the entry after each but the last, so the exit is always the one cut longest ago.</remarks>
public sealed class LaneWork : FarmWork
{
    // A week's boards come in thirds: three of them make one for all that rounding does.
    private const double Rounding = 1e-9;

    private readonly PlantProcess _plants;
    private readonly Market _market;
    private readonly PlantLot _harvest = new();
    private readonly PlantLot _board = new();

    /// <summary>Makes it.</summary>
    public LaneWork(FarmContext farm, FarmLog log, PlantProcess plants, Market market)
        : base(farm, log)
    {
        _plants = plants;
        _market = market;
    }

    private GrowingState Growing => State.Growing;

    /// <summary>Harvests and plants the boards that are due of a crop.</summary>
    public void HarvestBoards(int crop, long seconds)
    {
        CropPlanDescription plan = Parts.CropPlans[crop];
        double day = DayOf(seconds);
        double perWeek = Parts.Schedules[crop].BoardsAt(day);
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
            int lane = NextLane(crop, day, leastGrams);
            if (lane < 0)
            {
                break;
            }

            RaftLane boards = Growing.Lanes[lane];
            bool old = IsOld(boards, crop, day);
            bool ripe = old && IsHeavy(boards, crop, leastGrams);
            light |= old && !ripe;
            if (ripe)
            {
                age += boards.ExitAgeDays(day);
                Take(boards, plan, day);
                heads += _harvest.Plants;
                grams += _harvest.FreshShootGrams(Parts.Crops[crop]);
                Book(crop, seconds);
                harvested++;
            }

            bool mayPlant = Parts.LaneCropAt(lane, day) == crop && !boards.IsFull;
            bool planting = mayPlant && Plant(crop, boards, day, plan);
            planted += planting ? 1 : 0;
            shortOfSeedlings |= !planting && mayPlant;
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
        bool sows = sownOn > plan.FirstSowingDay && Parts.Schedules[crop].CellsAt(Math.Floor(sownOn)) > 0;
        if (shortOfSeedlings && sows)
        {
            Log.Add(seconds, "no seedlings", Parts.CropNames[crop], Growing.BoardsOwed[crop], "boards", "a lane has free places, but no seedling in the trough is old enough");
        }
    }

    /// <summary>Counts the lanes that stand without a board at the end of a day.</summary>
    public void EndDay()
    {
        for (int lane = 0; lane < Growing.Lanes.Length; lane++)
        {
            bool stands = Growing.Lanes[lane].Count > 0;
            Growing.LaneHasBegun[lane] |= stands;
            Growing.LaneEmptyDays[lane] += Growing.LaneHasBegun[lane] && !stands ? 1 : 0;
        }
    }

    private bool IsOld(RaftLane boards, int crop, double day)
    {
        if (boards.Count == 0 || boards[0].Crop != crop)
        {
            return false;
        }

        CropPlanDescription plan = Parts.CropPlans[crop];
        return boards[0].Cuts > 0
            ? day - boards[0].LastCutDay >= plan.RegrowDays - 0.5
            : boards.ExitAgeDays(day) >= plan.NurseryDays + plan.TroughDays + plan.LeastLaneDays - 0.5;
    }

    private bool IsHeavy(RaftLane boards, int crop, double leastGrams) =>
        boards.ExitFreshGramsPerPlant(Parts.Crops[crop]) * ShareTaken(boards, Parts.CropPlans[crop]) >= leastGrams;

    private static double ShareTaken(RaftLane boards, CropPlanDescription plan) =>
        boards[0].Cuts + 1 < plan.Cuts ? plan.CutShare : 1;

    private void Take(RaftLane boards, CropPlanDescription plan, double day)
    {
        if (ShareTaken(boards, plan) is < 1 and var share)
        {
            boards.CutOldest(_harvest, share, day);
        }
        else
        {
            boards.HarvestOldest(_harvest);
        }
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

    // A lane that another crop is to take over, if its exit board is ripe; then the emptiest; where all are full, the oldest exit board.
    private int NextLane(int crop, double day, double leastGrams)
    {
        const double Full = 1e6;
        int best = -1;
        double highest = double.NegativeInfinity;
        for (int l = 0; l < Growing.Lanes.Length; l++)
        {
            RaftLane lane = Growing.Lanes[l];
            bool leaving = Parts.LaneCropAt(l, day) != crop;
            bool waits = leaving
                ? !(IsOld(lane, crop, day) && IsHeavy(lane, crop, leastGrams))
                : lane.IsFull && lane[0].Crop != crop;
            if (waits)
            {
                continue;
            }

            double rank = leaving ? 2 * Full : lane.IsFull ? -lane[0].SownDay : Full + lane.FreeBoards;
            if (rank > highest)
            {
                highest = rank;
                best = l;
            }
        }

        return best;
    }

    private void Book(int crop, long seconds)
    {
        CropParameters parameters = Parts.Crops[crop];
        HeadGrades grades = Grading.Of(
            _harvest, parameters, Parts.Grades[crop], Parts.CropPlans[crop].HeaviestFirstGrams, bunched: Parts.CropPlans[crop].Cuts > 1);
        double saleable = grades.SaleableShare;
        Growing.HeadsHarvested[crop] += _harvest.Plants;
        Growing.Harvest.Add(crop, grades);
        Growing.SaleableGrams[crop] += grades.FirstGrams;
        ElementGrams roots = _harvest.RootElements(parameters);
        ElementGrams sold = (_harvest.Pools - roots) * saleable;
        double water = _harvest.WaterLitres(parameters);
        double soldWater = water * (1 - parameters.RootShare) * saleable;
        int product = Parts.Products.OfCrop(crop);
        double second = Parts.Products.Prices[product]?.SecondGradePriceShare ?? 1;
        double worth = grades.FirstHeads + grades.SecondHeads is > 0 and var pieces ? (grades.FirstHeads + (second * grades.SecondHeads)) / pieces : 1;
        _market.Offer(product, grades.FirstHeads + grades.SecondHeads, grades.FirstGrams + grades.SecondGrams, sold, soldWater, seconds, worth);
        _plants.PostPlants(Door.CropCompost, _harvest.Pools - sold, water - soldWater, -1);
        Growing.WasteDryGrams[crop] += _harvest.DryGrams * (1 - ((1 - parameters.RootShare) * saleable));
        _harvest.Clear();
    }
}
