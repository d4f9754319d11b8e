using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Where the weather came from and what it was like outside, over the days that passed.</summary>
public sealed record WeatherSummary
{
    /// <summary>"generated" from monthly normals, or the format of the file: "EPW", "TMY3", "CSV".</summary>
    public required string Source { get; init; }

    /// <summary>The file, as the scenario names it; null where it was generated.</summary>
    public required string? File { get; init; }

    /// <summary>SHA-256 of the file's bytes: a file changed under the same name is another season.</summary>
    public required string? Sha256 { get; init; }

    /// <summary>Where the file was measured, in its words.</summary>
    public required string? Station { get; init; }

    /// <summary>Hours of the file's year of which a value was missing and filled.</summary>
    public required int? FilledHours { get; init; }

    /// <summary>Mean outside air, °C; null before the first day has passed.</summary>
    public required double? MeanC { get; init; }

    /// <summary>Coldest hour outside, °C, with its day.</summary>
    public required PeakReading? ColdestC { get; init; }

    /// <summary>Hottest hour outside, °C, with its day.</summary>
    public required PeakReading? HottestC { get; init; }

    /// <summary>Mean global radiation, MJ/(m² d).</summary>
    public required double? RadiationMJPerM2Day { get; init; }

    internal static WeatherSummary Of(Season season)
    {
        WeatherYear? year = season.Parts.Farm.Site.WeatherFile?.Year;
        int days = (int)(season.NowSeconds / UnitConstants.SecondsPerDay);
        double sum = 0;
        double radiation = 0;
        var coldest = new PeakReading(double.PositiveInfinity, 0);
        var hottest = new PeakReading(double.NegativeInfinity, 0);
        for (int day = 0; day < days; day++)
        {
            radiation += season.Weather.Day(day).RadiationMegajoulesPerSquareMetre;
            for (int hour = 0; hour < (int)UnitConstants.HoursPerDay; hour++)
            {
                double celsius = season.Weather.At(day, hour).TemperatureCelsius;
                sum += celsius;
                coldest = celsius < coldest.Value ? new PeakReading(celsius, day) : coldest;
                hottest = celsius > hottest.Value ? new PeakReading(celsius, day) : hottest;
            }
        }

        return new WeatherSummary
        {
            Source = year?.Format ?? "generated",
            File = year?.File,
            Sha256 = year?.Sha256,
            Station = year?.Station,
            FilledHours = year?.FilledHours,
            MeanC = days > 0 ? sum / (days * UnitConstants.HoursPerDay) : null,
            ColdestC = days > 0 ? coldest : null,
            HottestC = days > 0 ? hottest : null,
            RadiationMJPerM2Day = days > 0 ? radiation / days : null,
        };
    }
}
