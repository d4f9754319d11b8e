using System.Globalization;

namespace FarmTwin.Reports.Plots;

/// <summary>Ticks of a time axis: a date and the day number below it.</summary>
internal static class DayTicks
{
    private const double MostDaysByWeek = 100;
    private const int MostMonths = 14;

    public static (double[] Days, string[] Labels) Of(DateOnly start, double lastDay)
    {
        var days = new List<double>();
        if (lastDay > MostDaysByWeek)
        {
            int months = (int)Math.Ceiling(lastDay / 30.4 / MostMonths);
            for (DateOnly date = new(start.Year, start.Month, 1); date.DayNumber - start.DayNumber <= lastDay; date = date.AddMonths(months))
            {
                if (date >= start)
                {
                    days.Add(date.DayNumber - start.DayNumber);
                }
            }
        }
        else
        {
            int step = lastDay > 50 ? 14 : lastDay > 16 ? 7 : lastDay > 8 ? 2 : 1;
            for (int day = 0; day <= lastDay; day += step)
            {
                days.Add(day);
            }
        }

        return ([.. days], [.. days.Select(d => string.Create(
            CultureInfo.InvariantCulture, $"{start.AddDays((int)d):d MMM}\n{(d == 0 ? "day 0" : $"{d:0}")}"))]);
    }
}
