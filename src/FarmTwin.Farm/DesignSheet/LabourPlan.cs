using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Hours of every week of the plan: what is planned times the minutes of each chore. Faults, alarms and repairs come on top.</summary>
public sealed class LabourPlan
{
    private const double MinutesPerHour = 60;
    private const int SaleWeekday = 4;

    private readonly DesignCase _design;
    private readonly CropDemand _crops;
    private readonly ChoreTimes _times;

    /// <summary>Prepares it.</summary>
    public LabourPlan(DesignCase design)
    {
        ArgumentNullException.ThrowIfNull(design);
        _design = design;
        _crops = new CropDemand(design);
        _times = design.Parts.ChoreTimes;
        Hours = [.. Enumerable.Range(0, (int)(design.Farm.LengthDays / UnitConstants.DaysPerWeek)).Select(w =>
            (Rounds(w) + Fish(w) + Water(w) + Leaves(w) + Fruit(w) + Trays(w) + Trips(w)) / MinutesPerHour)];
    }

    /// <summary>Hours of each week.</summary>
    public IReadOnlyList<double> Hours { get; }

    private double Minutes(Chore chore, double count) => _times.MinutesOf(chore) * count;

    private static double Middle(int week) => (week + 0.5) * UnitConstants.DaysPerWeek;

    private static bool InWeek(double day, int week) => Math.Floor(day / UnitConstants.DaysPerWeek) == week;

    private IReadOnlyList<StandingFish> FishOf(int week) => _design.Fish.At(Math.Min(_design.Fish.Days - 1, (int)Middle(week)));

    private double Rounds(int week) =>
        Minutes(Chore.DailyRound, UnitConstants.DaysPerWeek) + Minutes(Chore.ScoutCrops, _design.Parts.Crops.Length > 0 ? UnitConstants.DaysPerWeek : 0)
        + Minutes(Chore.WeeklyRound, 1) + Minutes(Chore.CheckMeters, 1) + Minutes(Chore.Office, 1)
        + Minutes(Chore.TrainPlant, Enumerable.Range(0, _design.Parts.CropPlans.Length).Sum(c => _crops.FruitingPlants(c, Middle(week))));

    private double Fish(int week)
    {
        StockingDescription[] plans = _design.Parts.Stocking;
        double tanks = FishOf(week).Select(f => f.Tank).Distinct().Count();
        double delivered = _design.Fish.Courses.Count(c => InWeek(c.DeliveredDay, week));
        // A course begins in its tank, after quarantine.
        double start = week * UnitConstants.DaysPerWeek;
        BatchCourse[] quarantined = [.. _design.Fish.Courses.Where(c => plans[c.Batch].Quarantine is not null)];
        double released = quarantined.Count(c => InWeek(c.DeliveredDay, week));
        double watched = quarantined.Sum(c => Math.Max(0, Math.Min(c.DeliveredDay, start + UnitConstants.DaysPerWeek)
            - Math.Max(c.DeliveredDay - plans[c.Batch].Quarantine!.Days, start)));
        int[] selling = [.. _design.Fish.Courses
            .Where(c => c.FirstSaleDay is { } sale && sale < (week + 1) * UnitConstants.DaysPerWeek && (c.EmptyDay ?? double.PositiveInfinity) >= week * UnitConstants.DaysPerWeek)
            .Select(c => c.Batch)];
        return Minutes(Chore.FeedTank, tanks * _design.Farm.Feeding.MealHours.Count * UnitConstants.DaysPerWeek)
            + Minutes(Chore.WeighFish, tanks * UnitConstants.DaysPerWeek / _design.Parts.Practice.WeighEveryDays)
            + Minutes(Chore.ReceiveFish, delivered) + Minutes(Chore.WatchQuarantine, watched) + Minutes(Chore.MoveFish, released) + Minutes(Chore.CatchFish, selling.Length)
            + Minutes(Chore.HarvestFish, selling.Sum(b => Math.Min(plans[b].LotPerWeek, plans[b].Number)));
    }

    private double Water(int week)
    {
        DesignCase design = _design;
        double day = Middle(week);
        bool daily = day < design.CycledDay || design.Fish.Courses.Any(c => day >= c.DeliveredDay && day < c.DeliveredDay + design.Parts.Practice.TestDailyDays);
        double tests = design.HasFish ? daily ? UnitConstants.DaysPerWeek : 1 : 0;
        double feedShare = design.Busiest.FeedGrams > 0 ? design.Fish.FeedGrams(Math.Min(design.Fish.Days - 1, (int)day)) / design.Busiest.FeedGrams : 0;
        double washes = 0;
        double washWater = 0;
        for (int f = 0; f < design.Parts.Filters.Length; f++)
        {
            double interval = FilterLines.WashIntervalDays(design, f, feedShare);
            washes += UnitConstants.DaysPerWeek / interval;
            washWater += UnitConstants.DaysPerWeek / interval * design.Parts.Filters[f].WashWaterLitres;
        }

        double decants = design.Parts.Mineralizers.Sum(m => Math.Min(
            UnitConstants.DaysPerWeek / (m.AerateDays + (m.SettleHours / UnitConstants.HoursPerDay)),
            washWater / design.Parts.Mineralizers.Length / (m.SettleAboveShare * design.Farm.Basins[m.Basin].VolumeLitres)));
        double readings = design.Farm.Dosing.Values
            .Where(d => d.FromDay <= day && day <= (d.UntilDay ?? double.PositiveInfinity) && !d.EndsWhenCoupled && !d.EndsWhenOpened)
            .Sum(d => UnitConstants.DaysPerWeek / d.EveryDays);
        return Minutes(Chore.TestWater, tests) + Minutes(Chore.WashFilter, washes) + Minutes(Chore.Decant, decants)
            + Minutes(Chore.EmptyHolding, design.Parts.Mineralizers.Any(m => m.Holding is not null) ? decants : 0)
            + Minutes(Chore.ReadOne, readings) + Minutes(Chore.Dose, readings * design.Bands.Get("doseShare", "1"));
    }

    private double Leaves(int week)
    {
        double day = Middle(week);
        double minutes = 0;
        for (int c = 0; c < _design.Parts.CropPlans.Length; c++)
        {
            CropPlanDescription plan = _design.Parts.CropPlans[c];
            CropSchedule schedule = _design.Parts.Schedules[c];
            if (_design.Parts.Crops[c].Fruit is not null || !schedule.EverSows || day < plan.FirstSowingDay)
            {
                continue;
            }

            double cells = schedule.CellsAt(day) * UnitConstants.DaysPerWeek / plan.SowEveryDays;
            double set = day >= plan.FirstSowingDay + plan.NurseryDays ? cells * schedule.Shares.Germinated * schedule.Shares.Kept : 0;
            double boards = day >= plan.FirstSowingDay + plan.NurseryDays + plan.TroughDays ? schedule.BoardsAt(day) : 0;
            double heads = _crops.HeadsPerWeek(c, day);
            double harvested = heads > 0 ? boards : 0;
            double holes = boards > 0 ? schedule.HeadsAt(day) / schedule.Shares.BoardToMarket : 0;
            minutes += Minutes(Chore.SowTray, cells / (_design.Farm.Nursery?.CellsPerTray ?? 1)) + Minutes(Chore.TransplantPlant, set + holes)
                + Minutes(Chore.MoveBoard, boards + harvested) + Minutes(Chore.CleanBoard, harvested) + Minutes(Chore.HarvestHead, heads);
        }

        return minutes;
    }

    private double Fruit(int week)
    {
        FarmParts parts = _design.Parts;
        double kilograms = Enumerable.Range(0, parts.CropPlans.Length).Sum(c => Bears(c, Middle(week)) ? _crops.FruitKilogramsPerWeek(c, Middle(week)) : 0);
        double cleared = parts.Plantings.Where(p => p.Plan.ClearDay is { } clear && InWeek(clear, week)).Sum(p => p.Beds.Length);
        double set = parts.Plantings.Where(p => InWeek(p.Plan.SetOutDay, week)).Sum(p => _crops.FruitingPlants(p.Crop, p.Plan.SetOutDay));
        return Minutes(Chore.PickFruit, kilograms) + Minutes(Chore.ClearBed, cleared) + Minutes(Chore.TransplantPlant, set);
    }

    // The first fruit of a planting is ripe some weeks after setting out: by its heat sum at the best temperature.
    private bool Bears(int c, double day) => _design.Parts.Crops[c].Fruit is { } fruit && _design.Parts.Plantings.Any(p => p.Crop == c
        && day < (p.Plan.ClearDay ?? double.PositiveInfinity)
        && day >= p.Plan.SetOutDay - _design.Parts.CropPlans[c].NurseryDays
            + ((fruit.OnsetSum + fruit.GrowthSum) / (_design.Parts.Crops[c].AirOptimumCelsius - fruit.BaseCelsius)));

    private double Trays(int week)
    {
        double sown = 0;
        double cut = 0;
        for (int m = 0; m < _design.Parts.MicrogreenPlans.Length; m++)
        {
            MicrogreenPlanDescription plan = _design.Parts.MicrogreenPlans[m];
            double trays = plan.TraysPerSowing * plan.SowWeekdays.Count;
            sown += IsSown(plan, Middle(week)) ? trays : 0;
            cut += IsSown(plan, Middle(week) - StandDays(m)) ? trays : 0;
        }

        return Minutes(Chore.SowMicrogreens, sown) + Minutes(Chore.CutMicrogreens, cut);
    }

    // One trip on every day of the week on which something is cut, picked or netted.
    private double Trips(int week)
    {
        var weekdays = new HashSet<int>();
        for (int c = 0; c < _design.Parts.CropPlans.Length; c++)
        {
            if (_crops.HeadsPerWeek(c, Middle(week)) > 0 || Bears(c, Middle(week)))
            {
                weekdays.UnionWith(_design.Parts.CropPlans[c].HarvestWeekdays.Select(d => (int)d));
            }
        }

        for (int m = 0; m < _design.Parts.MicrogreenPlans.Length; m++)
        {
            if (IsSown(_design.Parts.MicrogreenPlans[m], Middle(week) - StandDays(m)))
            {
                weekdays.UnionWith(_design.Parts.MicrogreenPlans[m].SowWeekdays.Select(d => (((int)d + (int)Math.Ceiling(StandDays(m)) - 1) % (int)UnitConstants.DaysPerWeek) + 1));
            }
        }

        if (_design.Fish.Courses.Any(c => c.FirstSaleDay <= Middle(week) && (c.EmptyDay ?? double.PositiveInfinity) >= Middle(week)))
        {
            weekdays.Add(SaleWeekday);
        }

        return Minutes(Chore.CleanPacking, weekdays.Count) + Minutes(Chore.DeliverGoods, weekdays.Count);
    }

    private double StandDays(int m) => (_design.Parts.MicrogreenPlans[m].BlackoutDays ?? _design.Parts.Microgreens[m].BlackoutDays)
        + (_design.Parts.MicrogreenPlans[m].LitDays ?? _design.Parts.Microgreens[m].LitDays);

    private static bool IsSown(MicrogreenPlanDescription plan, double day) => day >= plan.FirstSowingDay && day <= (plan.LastSowingDay ?? double.PositiveInfinity);
}
