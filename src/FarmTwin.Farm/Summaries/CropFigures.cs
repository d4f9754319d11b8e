using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the crops.</summary>
internal static class CropFigures
{
    private const double DaysPerWeek = 7;

    public static IReadOnlyDictionary<string, CropSummary> Of(Season season, RecordView record)
    {
        var crops = new Dictionary<string, CropSummary>(StringComparer.Ordinal);
        for (int c = 0; c < season.Parts.CropNames.Length; c++)
        {
            crops.Add(season.Parts.CropNames[c], Of(season, record, c));
        }

        return crops;
    }

    private static CropSummary Of(Season season, RecordView record, int crop)
    {
        string name = season.Parts.CropNames[crop];
        CropParameters parameters = season.Parts.Crops[crop];
        GrowingState growing = season.State.Growing;
        FruitSummary? fruit = FruitFigures.Of(season, record, crop);
        double[] heads = fruit is null ? record.Days($"heads_{name}") : [];
        double[] weights = fruit is null ? record.Days($"head_weight_{name}_g") : [];
        double[] standing = record.Days($"standing_{name}_plants");
        PeakReading? lightest = null;
        PeakReading? heaviest = null;
        double? first = null;
        double sumHeads = 0;
        double sumGrams = 0;
        double outside = 0;
        double fullWeeks = Math.Floor(standing.Length / DaysPerWeek);
        var weeks = new HashSet<double>();
        for (int day = 0; day < heads.Length; day++)
        {
            if (heads[day] <= 0)
            {
                continue;
            }

            first ??= day;
            if (day < fullWeeks * DaysPerWeek)
            {
                weeks.Add(Math.Floor(day / DaysPerWeek));
            }

            sumHeads += heads[day];
            sumGrams += heads[day] * weights[day];
            outside += weights[day] < parameters.SaleableFreshGramsLow || weights[day] > parameters.SaleableFreshGramsHigh ? heads[day] : 0;
            lightest = lightest is null || weights[day] < lightest.Value ? new PeakReading(weights[day], day) : lightest;
            heaviest = heaviest is null || weights[day] > heaviest.Value ? new PeakReading(weights[day], day) : heaviest;
        }

        return new CropSummary
        {
            CellsSown = growing.CellsSown[crop],
            HeadsHarvested = growing.HeadsHarvested[crop],
            SaleableHeads = growing.Harvest[crop].FirstHeads,
            HarvestedKg = growing.SaleableGrams[crop] / UnitConstants.GramsPerKilogram,
            SecondGradeHeads = growing.Harvest[crop].SecondHeads,
            SecondGradeKg = growing.Harvest[crop].SecondGrams / UnitConstants.GramsPerKilogram,
            SecondGradePrice = season.Parts.Products.Prices[season.Parts.Products.OfCrop(crop)]?.SecondGradePriceShare,
            KilledByCold = growing.KilledByCold[crop],
            UnsaleableHeads = growing.Harvest[crop].UnsaleableHeads,
            UnsaleableKg = growing.Harvest[crop].UnsaleableGrams / UnitConstants.GramsPerKilogram,
            NotFirstGrade = HarvestTally.Reasons.Zip(growing.Harvest.NotFirst(crop)).ToDictionary(r => r.First, r => r.Second, StringComparer.Ordinal),
            HeaviestFirstG = season.Parts.CropPlans[crop].HeaviestFirstGrams ?? season.Parts.Grades[crop]?.HeaviestFirstGrams,
            Months = fruit is null ? MonthFigures.Of(record, name, parameters) : [],
            Plan = fruit is null ? [.. season.Parts.Schedules[crop].Turns.Select(d => StageSummary.Of(season, crop, d))] : [],
            FirstHarvestDay = fruit?.FirstPickDay ?? first,
            MeanHeadG = sumHeads > 0 ? sumGrams / sumHeads : null,
            HeadG = new ReadingRange(lightest, heaviest),
            WeeksWithHarvest = fruit?.WeeksWithPicks ?? weeks.Count,
            WeeksSinceFirstHarvest = (fruit?.FirstPickDay ?? first) is { } f ? (int)Math.Max(0, fullWeeks - Math.Floor(f / DaysPerWeek)) : 0,
            DaysBoardsWaited = DaysWaited(season, crop),
            RoundsShortOfSeedlings = season.Log.Events.Count(e => e.What == "no seedlings" && e.Where == name),
            CutFromG = season.Parts.CropPlans[crop].LeastWeightGrams ?? parameters.SaleableFreshGramsLow,
            SaleableLowG = parameters.SaleableFreshGramsLow,
            SaleableHighG = parameters.SaleableFreshGramsHigh,
            HeadsOutsideBand = outside,
            StandingPlants = standing.Length > 0 ? standing[^1] : 0,
            Fruit = fruit,
        };
    }

    // From a refusal to the next harvest day of the plan.
    private static double DaysWaited(Season season, int crop)
    {
        double days = 0;
        foreach (LoggedEvent line in season.Log.Events)
        {
            if (line.What == "boards wait" && line.Where == season.Parts.CropNames[crop])
            {
                days += DaysToNextHarvest(season, crop, line.Seconds);
            }
        }

        return days;
    }

    private static double DaysToNextHarvest(Season season, int crop, long seconds)
    {
        int weekday = (int)season.Parts.Farm.Start.AddDays((int)(seconds / UnitConstants.SecondsPerDay)).DayOfWeek;
        double nearest = DaysPerWeek;
        foreach (double harvest in season.Parts.CropPlans[crop].HarvestWeekdays)
        {
            double gap = (harvest - weekday + DaysPerWeek) % DaysPerWeek;
            nearest = gap > 0 ? Math.Min(nearest, gap) : nearest;
        }

        return nearest;
    }
}
