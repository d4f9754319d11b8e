namespace FarmTwin.Farm.Climate;

/// <summary>A year of hourly weather as it stood in a file: 365 days, January first, no 29 February.</summary>
/// <remarks>Immutable. Months of a typical year may come from different years, so it belongs to no year and may be repeated.</remarks>
/// <param name="Hours">8,760 hourly means of local standard time; hour 0 runs from midnight to one on 1 January.</param>
/// <param name="File">The file, as the scenario names it.</param>
/// <param name="Format">What the file is: "EPW", "TMY3" or "CSV".</param>
/// <param name="Station">Where it was measured, in the file's words; empty where it does not say.</param>
/// <param name="Sha256">Hash of the file's bytes, lower-case hexadecimal.</param>
/// <param name="FilledHours">Hours of which at least one value was missing and filled.</param>
public sealed record WeatherYear(
    IReadOnlyList<HourlyWeather> Hours, string File, string Format, string Station, string Sha256, int FilledHours)
{
    /// <summary>Days of the year.</summary>
    public const int Days = 365;

    /// <summary>Hours of the year.</summary>
    public const int HourCount = Days * 24;

    private static readonly int[] DaysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

    /// <summary>Number of a date in the year, 0 to 364; 29 February counts as the day before it.</summary>
    /// <param name="month">1 to 12.</param>
    /// <param name="day">1 to 31.</param>
    public static int DayOf(int month, int day) => DaysBefore[month - 1] + (month == 2 && day == 29 ? 28 : day) - 1;
}
