using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Climate;

/// <summary>The weather of a season, hour by hour: generated from normals or taken from a year on file.</summary>
/// <remarks>All hours are made at construction; look-ups neither compute nor allocate. Immutable afterwards: safe to share between
/// threads. Clock hours are local standard time.</remarks>
public abstract class SeasonWeather
{
    /// <summary>Hours of a day.</summary>
    protected const int HoursADay = 24;

    /// <summary>Makes room for a season.</summary>
    /// <param name="start">Date of day 0.</param>
    /// <param name="days">Days from day 0 on, above 0.</param>
    protected SeasonWeather(DateOnly start, int days)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(days);
        Start = start;
        Days = days;
        DaysAround = new DailyWeather[days + 2];
        Hours = new HourlyWeather[days * HoursADay];
    }

    /// <summary>Number of days.</summary>
    public int Days { get; }

    /// <summary>Date of day 0.</summary>
    public DateOnly Start { get; }

    /// <summary>Days with one more at either end: the night before the first day and the night after the last need them.</summary>
    protected DailyWeather[] DaysAround { get; }

    /// <summary>Hours from the first midnight on.</summary>
    protected HourlyWeather[] Hours { get; }

    /// <summary>The weather that a farm's site describes: of its file, or generated from its normals.</summary>
    /// <param name="parts">The farm.</param>
    /// <param name="streams">Chance; a file needs none.</param>
    /// <exception cref="DescriptionException">The site says nothing of its weather, or its file was not read.</exception>
    public static SeasonWeather Of(FarmParts parts, RandomStreams streams)
    {
        ArgumentNullException.ThrowIfNull(parts);
        SiteDescription site = parts.Farm.Site;
        var where = new WeatherSite(site.LatitudeDegrees, site.LongitudeDegrees, site.ElevationMetres, site.TimeZoneHours);
        int days = (int)Math.Ceiling(parts.Farm.LengthDays) + 2;
        if (site.WeatherFile is { } file)
        {
            WeatherYear year = file.Year
                ?? throw new DescriptionException($"site.weatherFile: '{file.File}' was not read; whoever reads the scenario hands its hours over.");
            return new RecordedWeather(year, where, parts.Farm.Start, days, site.WarmerKelvin);
        }

        WeatherNormalsDescription normals = site.Normals
            ?? throw new DescriptionException("site: neither 'normals' nor a 'weatherFile' says what the weather is; state one of them.");
        return new WeatherGenerator(
            MonthlyNormals.Of(normals, site.WarmerKelvin), where, streams, parts.Climate, parts.Farm.Start, days);
    }

    /// <summary>The weather of a day.</summary>
    /// <param name="dayNumber">0 to <see cref="Days"/> - 1.</param>
    public DailyWeather Day(int dayNumber)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)dayNumber, (uint)Days, nameof(dayNumber));
        return DaysAround[dayNumber + 1];
    }

    /// <summary>The weather of a clock hour of local standard time.</summary>
    /// <param name="dayNumber">0 to <see cref="Days"/> - 1.</param>
    /// <param name="hour">0 to 23: the hour from <paramref name="hour"/> to the next.</param>
    public HourlyWeather At(int dayNumber, int hour)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)hour, (uint)HoursADay, nameof(hour));
        return Hours[(dayNumber * HoursADay) + hour];
    }
}
