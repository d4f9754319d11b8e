using FarmTwin.Farm.Business;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of people's hours.</summary>
internal static class LabourFigures
{
    public static LabourSummary Of(Season season)
    {
        LabourState labour = season.State.Labour;
        var chores = new Dictionary<string, double>(StringComparer.Ordinal);
        var areas = Enum.GetNames<WorkArea>().ToDictionary(a => char.ToLowerInvariant(a[0]) + a[1..], _ => 0.0, StringComparer.Ordinal);
        foreach (ChoreKind kind in ChoreTimes.Kinds)
        {
            double hours = labour.HoursOf(kind.Chore);
            if (hours > 0)
            {
                chores.Add(kind.Key, hours);
                string area = kind.Area.ToString();
                areas[char.ToLowerInvariant(area[0]) + area[1..]] += hours;
            }
        }

        double[] weeks = season.Record.Weeks.Column("hours_h");
        int busiest = weeks.Length == 0 ? -1 : Array.IndexOf(weeks, weeks.Max());
        double? there = season.Parts.Farm.Labour is { HoursPerWeek.Count: > 0 } people ? people.HoursPerWeek.Values.Sum() : null;
        return new LabourSummary
        {
            Hours = labour.Hours,
            HoursByChore = chores,
            HoursByArea = areas,
            OrdinaryWeekHours = Median(weeks),
            BusiestWeekHours = busiest < 0 ? null : weeks[busiest],
            BusiestWeek = busiest < 0 ? null : busiest + 1,
            HoursThereAWeek = there,
            WeeksShort = there is { } limit ? [.. Enumerable.Range(1, weeks.Length).Where(w => weeks[w - 1] > limit)] : [],
        };
    }

    private static double? Median(double[] values)
    {
        if (values.Length == 0)
        {
            return null;
        }

        double[] ordered = [.. values.Order()];
        int middle = ordered.Length / 2;
        return ordered.Length % 2 == 1 ? ordered[middle] : (ordered[middle - 1] + ordered[middle]) / 2;
    }
}
