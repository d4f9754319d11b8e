using System.Security.Cryptography;
using System.Text;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Scenarios.Weather;

/// <summary>Reads the weather file that a scenario names and hands its hours to the description.</summary>
/// <remarks>The format is told from the content: EPW, TMY3, or plain CSV with titles. Every fault carries file, line and column.</remarks>
internal static class WeatherFiles
{
    private const string PathOfFile = "site.weatherFile.file";

    // A station further off than this is another climate, or a longitude with the wrong sign.
    private const double MostDegreesOff = 5;

    /// <summary>The description with the hours of its weather file, where it names one.</summary>
    public static FarmDescription Attach(FarmDescription farm, ResolvedScenario scenario, List<ScenarioError> errors)
    {
        if (farm.Site.WeatherFile is not { } file)
        {
            return farm;
        }

        string folder = Path.GetDirectoryName(scenario.Find(PathOfFile)!.Place.File) ?? string.Empty;
        string path = Path.Combine(folder, file.File);
        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            errors.Add(scenario.ErrorAt(PathOfFile, $"the weather file \"{file.File}\" cannot be read: {e.Message.TrimEnd('.')}",
                "a file, relative to this scenario"));
            return farm;
        }

        var found = new WeatherErrors(path, errors);
        WeatherYear? year = Read(bytes, farm.Site, file, found);
        return year is null ? farm : farm with { Site = farm.Site with { WeatherFile = file with { Year = year } } };
    }

    private static WeatherYear? Read(byte[] bytes, SiteDescription site, WeatherFileDescription file, WeatherErrors errors)
    {
        string[] lines = [.. Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').Split('\n').Select(l => l.TrimEnd('\r'))];
        RawYear? raw = EpwFile.Is(lines) ? EpwFile.Read(lines, errors)
            : TitledFile.IsTmy3(lines) ? TitledFile.ReadTmy3(lines, errors)
            : TitledFile.IsPlain(lines) ? TitledFile.ReadPlain(lines, errors)
            : null;
        if (raw is null)
        {
            errors.Add(1, 1, "this is no weather file that is known here",
                "EPW (first line LOCATION,...), TMY3 (second line Date (MM/DD/YYYY),...), or CSV whose first line has titles such as temperature_C");
            return null;
        }

        CheckPlace(raw, site, errors);
        if (errors.Any)
        {
            return null;
        }

        var climate = ClimateParameters.From(ParameterLibrary.Load("processes", "climate"));
        int filled = MissingHours.Fill(raw, site, file, climate, errors);
        return errors.Any
            ? null
            : new WeatherYear(HourMeans(raw), file.File, raw.Format, raw.Station, Convert.ToHexStringLower(SHA256.HashData(bytes)), filled);
    }

    private static void CheckPlace(RawYear raw, SiteDescription site, WeatherErrors errors)
    {
        if (raw.PlaceLine == 0)
        {
            return;
        }

        if (Math.Abs(raw.TimeZoneHours - site.TimeZoneHours) > 1e-6)
        {
            errors.Add(raw.PlaceLine, 1, FormattableString.Invariant($"the file's hours are those of UTC {raw.TimeZoneHours:+0.##;-0.##;+0}, the site's of UTC {site.TimeZoneHours:+0.##;-0.##;+0}"),
                "one time zone in both: else the sun would rise at the wrong hour");
        }

        double east = Math.Abs(raw.LongitudeDegrees - site.LongitudeDegrees);
        if (Math.Abs(raw.LatitudeDegrees - site.LatitudeDegrees) > MostDegreesOff || Math.Min(east, 360 - east) > MostDegreesOff)
        {
            errors.Add(raw.PlaceLine, 1, FormattableString.Invariant($"the file is for {raw.LatitudeDegrees:0.##}° north, {raw.LongitudeDegrees:0.##}° east, the site lies at {site.LatitudeDegrees:0.##}° north, {site.LongitudeDegrees:0.##}° east"),
                FormattableString.Invariant($"a station within {MostDegreesOff:0}°; longitudes are east positive, west of Greenwich negative"));
        }
    }

    // What is stamped at the end of its hour is the instant's value: the hour's mean lies between two stamps.
    private static HourlyWeather[] HourMeans(RawYear raw)
    {
        var hours = new HourlyWeather[WeatherYear.HourCount];
        for (int h = 0; h < hours.Length; h++)
        {
            int before = (h + hours.Length - 1) % hours.Length;
            double celsius = Mean(RawYear.Temperature);
            hours[h] = new HourlyWeather(
                celsius,
                raw.Values[RawYear.Radiation][h],
                Math.Min(Mean(RawYear.Vapour), Psychrometrics.SaturationPressureKilopascal(celsius)),
                Mean(RawYear.Wind));

            double Mean(int quantity) => raw.StampedAtEnd
                ? 0.5 * (raw.Values[quantity][before] + raw.Values[quantity][h])
                : raw.Values[quantity][h];
        }

        return hours;
    }
}
