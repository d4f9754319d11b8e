using FarmTwin.Farm.Climate;

namespace FarmTwin.Scenarios.Weather;

/// <summary>A year of hours as a file gives them: what is missing is still missing, and every hour knows its line.</summary>
/// <remarks>Hour <c>i</c> is the clock hour of local standard time that runs from <c>i</c> to <c>i + 1</c>, 1 January first.</remarks>
internal sealed class RawYear
{
    /// <summary>Quantities of an hour.</summary>
    public const int Quantities = 4;

    /// <summary>Air temperature, °C.</summary>
    public const int Temperature = 0;

    /// <summary>Vapour pressure, kPa.</summary>
    public const int Vapour = 1;

    /// <summary>Global radiation on the level, W/m2.</summary>
    public const int Radiation = 2;

    /// <summary>Wind, m/s.</summary>
    public const int Wind = 3;

    /// <summary>Names for messages, in the order of the numbers.</summary>
    public static readonly string[] Names = ["air temperature", "humidity", "global radiation", "wind speed"];

    /// <summary>Makes an empty year.</summary>
    public RawYear(string format)
    {
        Format = format;
        for (int q = 0; q < Quantities; q++)
        {
            Values[q] = new double[WeatherYear.HourCount];
            Array.Fill(Values[q], double.NaN);
        }
    }

    /// <summary>What the file is: "EPW", "TMY3" or "CSV".</summary>
    public string Format { get; }

    /// <summary>Where it was measured, in the file's words.</summary>
    public string Station { get; set; } = string.Empty;

    /// <summary>Line of the head that states latitude, longitude and time zone; 0 where none does.</summary>
    public int PlaceLine { get; set; }

    /// <summary>Degrees north; NaN where the file does not say.</summary>
    public double LatitudeDegrees { get; set; } = double.NaN;

    /// <summary>Degrees EAST; NaN where the file does not say.</summary>
    public double LongitudeDegrees { get; set; } = double.NaN;

    /// <summary>Local standard time less UTC, h; NaN where the file does not say.</summary>
    public double TimeZoneHours { get; set; } = double.NaN;

    /// <summary>Whether temperature, humidity and wind are those of the stamp, the end of the hour, rather than means over it.</summary>
    public bool StampedAtEnd { get; init; }

    /// <summary>Values by quantity and hour; NaN is missing.</summary>
    public double[][] Values { get; } = new double[Quantities][];

    /// <summary>The line that gave each hour; 0 where none did.</summary>
    public int[] Lines { get; } = new int[WeatherYear.HourCount];

    /// <summary>An hour in words.</summary>
    public static string HourInWords(int hour) =>
        $"{new DateOnly(2025, 1, 1).AddDays(hour / 24):d MMM} {hour % 24:00}:00 to {(hour % 24) + 1:00}:00";
}
