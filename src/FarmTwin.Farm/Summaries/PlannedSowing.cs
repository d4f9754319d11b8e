using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>A sowing of the plan, and when its plants should move on.</summary>
/// <param name="Day">Day of sowing.</param>
/// <param name="Crop">The crop, or the kind of microgreens.</param>
/// <param name="Cells">Cells; not a number for microgreens.</param>
/// <param name="Trays">Trays: those that the cells take, or those of microgreens.</param>
/// <param name="ToTrough">Day to the trough; not a number for microgreens.</param>
/// <param name="ToLane">Day to a lane; not a number for microgreens.</param>
/// <param name="ToLight">Day on which a covered tray comes into the light; not a number for seedlings.</param>
/// <param name="Harvest">First day of harvest.</param>
/// <param name="Heads">Marketable heads expected; not a number for microgreens.</param>
public sealed record PlannedSowing(
    int Day, string Crop, double Cells, double Trays, double ToTrough, double ToLane, double ToLight, double Harvest, double Heads)
{
    private const double DaysPerWeek = 7;

    /// <summary>All sowings of a season's plan, by day.</summary>
    public static IReadOnlyList<PlannedSowing> Of(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        var sowings = new List<PlannedSowing>();
        FarmParts parts = season.Parts;
        if (parts.Farm.Nursery is { } nursery)
        {
            for (int crop = 0; crop < parts.CropPlans.Length; crop++)
            {
                sowings.AddRange(OfSeedlings(parts, nursery, crop));
            }

            for (int kind = 0; kind < parts.MicrogreenPlans.Length; kind++)
            {
                sowings.AddRange(OfMicrogreens(parts, kind));
            }
        }

        return [.. sowings.OrderBy(s => s.Day)];
    }

    private static IEnumerable<PlannedSowing> OfSeedlings(FarmParts parts, NurseryDescription nursery, int crop)
    {
        CropPlanDescription plan = parts.CropPlans[crop];
        CropSchedule schedule = parts.Schedules[crop];
        for (double day = Math.Floor(plan.FirstSowingDay); day < parts.Farm.LengthDays; day += plan.SowEveryDays)
        {
            int cells = parts.Crops[crop].Fruit is null ? schedule.CellsAt(day) : 0;
            if (cells > 0)
            {
                double lane = day + plan.NurseryDays + plan.TroughDays;
                yield return new PlannedSowing(
                    (int)day, parts.CropNames[crop], cells, (double)cells / nursery.CellsPerTray, day + plan.NurseryDays, lane, double.NaN,
                    lane + schedule.LaneDaysAt(lane), cells * schedule.Shares.ToMarket);
            }
        }
    }

    private static IEnumerable<PlannedSowing> OfMicrogreens(FarmParts parts, int kind)
    {
        MicrogreenPlanDescription plan = parts.MicrogreenPlans[kind];
        double covered = plan.BlackoutDays ?? parts.Microgreens[kind].BlackoutDays;
        double lit = plan.LitDays ?? parts.Microgreens[kind].LitDays;
        for (int day = (int)Math.Floor(plan.FirstSowingDay); day < parts.Farm.LengthDays && day <= (plan.LastSowingDay ?? double.PositiveInfinity); day++)
        {
            double weekday = (int)parts.Farm.Start.AddDays(day).DayOfWeek is var d && d == 0 ? DaysPerWeek : d;
            if (plan.SowWeekdays.Contains(weekday))
            {
                yield return new PlannedSowing(
                    day, parts.MicrogreenNames[kind], double.NaN, plan.TraysPerSowing, double.NaN, double.NaN, day + covered, day + covered + lit, double.NaN);
            }
        }
    }
}
