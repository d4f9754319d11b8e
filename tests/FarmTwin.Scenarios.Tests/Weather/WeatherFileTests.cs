using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.Tests.Sample;
using FarmTwin.Scenarios.Tests.Shipped;

namespace FarmTwin.Scenarios.Tests.Weather;

public sealed class WeatherFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string> Formats => ["EPW", "TMY3", "CSV"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void Every_format_gives_the_same_hours(string format)
    {
        WeatherYear year = Read(Lines(format)).Site.WeatherFile!.Year!;
        Assert.Equal(format, year.Format);
        Assert.Equal(0, year.FilledHours);
        Assert.Equal(format == "CSV" ? string.Empty : year.Station, year.Station);
        for (int hour = 0; hour < InventedYear.Hours; hour += 7)
        {
            // Radiation is that of the hour before the stamp; temperature lies between two stamps.
            Assert.Equal(InventedYear.RadiationOf(hour), year.Hours[hour].RadiationWattsPerSquareMetre, 1e-9);
            double celsius = 0.5 * (InventedYear.CelsiusAt(hour) + InventedYear.CelsiusAt(hour + 1));
            Assert.Equal(celsius, year.Hours[hour].TemperatureCelsius, 0.0011);
            Assert.Equal(0.5 * (InventedYear.WindAt(hour) + InventedYear.WindAt(hour + 1)), year.Hours[hour].WindMetresPerSecond, 0.0011);
            Assert.InRange(year.Hours[hour].VapourPressureKilopascal / Psychrometrics.SaturationPressureKilopascal(celsius), 0.70, 0.80);
        }
    }

    [Fact]
    public void Station_and_hash_of_the_file_are_told()
    {
        FarmDescription farm = Read(InventedYear.Epw()) with { LengthDays = 2 };
        Assert.Equal("Invented Meadow, XX, XXX", farm.Site.WeatherFile!.Year!.Station);
        var season = new Season(farm, ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        WeatherSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test").Weather;
        Assert.Equal("EPW", summary.Source);
        Assert.Equal("weather.txt", summary.File);
        Assert.Matches("^[0-9a-f]{64}$", summary.Sha256!);
        List<string> other = InventedYear.Epw();
        other[100] = other[100].Replace("A7A7A7A7", "A7A7A7A8", StringComparison.Ordinal);
        Assert.NotEqual(summary.Sha256, Read(other).Site.WeatherFile!.Year!.Sha256);
    }

    [Fact]
    public void A_season_begins_at_its_date_repeats_the_year_and_knows_a_29th_of_February()
    {
        FarmDescription farm = Read(InventedYear.Csv()) with { Start = new DateOnly(2027, 3, 1), LengthDays = 800 };
        WeatherYear year = farm.Site.WeatherFile!.Year!;
        SeasonWeather weather = new Season(farm, ShippedLibrary.Library, 1).Weather;
        Assert.Equal(year.Hours[59 * 24], weather.At(0, 0));
        Assert.Equal(weather.At(10, 5), weather.At(10 + 366, 5));
        int leap = new DateOnly(2028, 2, 29).DayNumber - farm.Start.DayNumber;
        Assert.Equal(weather.At(leap - 1, 13), weather.At(leap, 13));
        Assert.Equal(year.Hours[(59 * 24) + 13], weather.At(leap + 1, 13));
        Assert.Equal(year.Hours[8759], weather.At(new DateOnly(2027, 12, 31).DayNumber - farm.Start.DayNumber, 23));
        Assert.Equal(weather.At(33, 12), new Season(farm, ShippedLibrary.Library, 77).Weather.At(33, 12));
        double warmer = new Season(farm with { Site = farm.Site with { WarmerKelvin = 3 } }, ShippedLibrary.Library, 1).Weather.At(33, 12).TemperatureCelsius;
        Assert.Equal(weather.At(33, 12).TemperatureCelsius + 3, warmer, 1e-9);
    }

    [Fact]
    public void Sun_of_a_day_is_the_sum_of_its_hours()
    {
        SeasonWeather weather = new Season(Read(InventedYear.Tmy3()) with { LengthDays = 5 }, ShippedLibrary.Library, 1).Weather;
        double sum = Enumerable.Range(0, 24).Sum(h => weather.At(3, h).RadiationWattsPerSquareMetre * 0.0036);
        Assert.Equal(sum, weather.Day(3).RadiationMegajoulesPerSquareMetre, 1e-9);
    }

    [Theory]
    [InlineData("EPW", 4000, "99.9")]
    [InlineData("TMY3", 4000, "-9900")]
    [InlineData("CSV", 4000, "")]
    public void A_missing_value_is_refused_with_its_line_until_its_user_says_how_to_fill_it(string format, int hour, string mark)
    {
        List<string> lines = Lines(format);
        int row = hour + format switch { "EPW" => 8, _ => 2 };
        string celsius = FormattableString.Invariant($",{(format == "CSV" ? 0.5 * (InventedYear.CelsiusAt(hour) + InventedYear.CelsiusAt(hour + 1)) : InventedYear.CelsiusAt(hour + 1)):0.000},");
        Assert.Contains(celsius, lines[row], StringComparison.Ordinal);
        lines[row] = lines[row].Replace(celsius, $",{mark},", StringComparison.Ordinal);
        ScenarioError error = Refused(lines).First(e => e.Problem.Contains("air temperature", StringComparison.Ordinal));
        Assert.Equal(row + 1, error.Line);
        Assert.Contains("missing in 1 hours", error.Problem, StringComparison.Ordinal);

        WeatherYear bridged = Read(lines, "\"fill\": \"interpolate\"").Site.WeatherFile!.Year!;
        Assert.Equal(1, bridged.FilledHours);
        Assert.Equal(0.5 * (InventedYear.CelsiusAt(hour) + InventedYear.CelsiusAt(hour + 1)), bridged.Hours[hour].TemperatureCelsius, 0.25);
    }

    [Fact]
    public void A_gap_longer_than_said_is_refused_and_normals_may_fill_it()
    {
        List<string> lines = InventedYear.Csv();
        lines.RemoveRange(InventedYear.CsvRow(2000), 30);
        ScenarioError error = Refused(lines, "\"fill\": \"interpolate\", \"longestGap\": \"8 h\"")[0];
        Assert.Contains("missing in 30 hours", error.Problem, StringComparison.Ordinal);
        Assert.Contains("no row", error.Problem, StringComparison.Ordinal);
        FarmDescription farm = Read(lines, "\"fill\": \"from-normals\"");
        WeatherYear year = farm.Site.WeatherFile!.Year!;
        Assert.Equal(30, year.FilledHours);

        // Hour 2,000 lies in late March: between the normals of March and April.
        double mean = Enumerable.Range(2003, 24).Average(h => year.Hours[h].TemperatureCelsius);
        Assert.InRange(mean, 5, 11);
        double radiation = Enumerable.Range(2003, 24).Sum(h => year.Hours[h].RadiationWattsPerSquareMetre * 0.0036);
        Assert.InRange(radiation, 14, 18);
    }

    [Fact]
    public void A_gap_at_noon_keeps_the_height_of_the_sun()
    {
        List<string> lines = InventedYear.Csv();
        int noon = (171 * 24) + 12;
        for (int hour = noon - 2; hour <= noon + 2; hour++)
        {
            string[] fields = lines[InventedYear.CsvRow(hour)].Split(',');
            fields[5] = string.Empty;
            lines[InventedYear.CsvRow(hour)] = string.Join(',', fields);
        }

        WeatherYear year = Read(lines, "\"fill\": \"interpolate\"").Site.WeatherFile!.Year!;
        Assert.Equal(5, year.FilledHours);
        Assert.True(year.Hours[noon].RadiationWattsPerSquareMetre > 1.05 * year.Hours[noon - 3].RadiationWattsPerSquareMetre);
    }

    [Fact]
    public void What_cannot_be_right_is_refused_at_its_line_and_column()
    {
        List<string> lines = InventedYear.Csv();
        lines[InventedYear.CsvRow(10)] = "1,1,10,-9999,76,0,2";
        lines[InventedYear.CsvRow(11)] = "1,1,11,zero,76,0,2";
        lines[InventedYear.CsvRow(12)] = "1,1,10,1.0,76,0,2";
        lines[InventedYear.CsvRow(13)] = "13,1,10,1.0,76,0,2";
        IReadOnlyList<ScenarioError> errors = Refused(lines);
        Assert.Contains(errors, e => e is { Line: 13, Column: 8 } && e.Problem.Contains("-9999 is out of range", StringComparison.Ordinal));
        Assert.Contains(errors, e => e is { Line: 14, Column: 8 } && e.Problem.Contains("\"zero\" is no number", StringComparison.Ordinal));
        Assert.Contains(errors, e => e.Line == 15 && e.Problem.Contains("stands in line 13 already", StringComparison.Ordinal));
        Assert.Contains(errors, e => e.Line == 16 && e.Problem.Contains("month 13", StringComparison.Ordinal));
        Assert.All(errors, e => Assert.EndsWith("weather.txt", e.File, StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_of_another_zone_or_with_the_longitude_turned_is_refused()
    {
        Assert.Contains("UTC -6", Refused(InventedYear.Epw(zone: -6))[0].Problem, StringComparison.Ordinal);
        Assert.Contains("76.3° east, the site", Refused(InventedYear.Epw(longitude: 76.3))[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_are_found_by_title_and_a_missing_one_is_named()
    {
        List<string> lines = InventedYear.Csv();
        lines[1] = lines[1].Replace("wind_m_per_s", "wind_m_s", StringComparison.Ordinal);
        ScenarioError error = Assert.Single(Refused(lines));
        Assert.Equal(2, error.Line);
        Assert.Contains("no column gives the wind speed", error.Problem, StringComparison.Ordinal);
        Assert.Equal("wind_m_s", error.Suggestion);
        lines = [.. InventedYear.Csv().Select(l => l.Replace(',', ';'))];
        lines[1] = lines[1].Replace("temperature_C", "TEMPERATURE_F", StringComparison.Ordinal);
        double celsius = Read(lines).Site.WeatherFile!.Year!.Hours[0].TemperatureCelsius;
        Assert.Equal(((0.5 * (InventedYear.CelsiusAt(0) + InventedYear.CelsiusAt(1))) - 32) / 1.8, celsius, 0.001);
    }

    [Fact]
    public void Hours_that_run_from_1_to_24_name_their_end()
    {
        List<string> lines = InventedYear.Csv();
        for (int hour = 0; hour < InventedYear.Hours; hour++)
        {
            string[] fields = lines[InventedYear.CsvRow(hour)].Split(',');
            fields[2] = $"{(hour % 24) + 1}";
            lines[InventedYear.CsvRow(hour)] = string.Join(',', fields);
        }

        Assert.Equal(InventedYear.RadiationOf(12), Read(lines).Site.WeatherFile!.Year!.Hours[12].RadiationWattsPerSquareMetre, 1e-9);
    }

    [Theory]
    [InlineData("some text\nof no format\n", "no weather file")]
    [InlineData("LOCATION,x,x,x,x,x,40,-76,-5,100\nno head\n", "in line 2")]
    public void What_is_no_weather_is_refused(string text, string problem) =>
        Assert.Contains(problem, Refused(text.Split('\n'))[0].Problem, StringComparison.Ordinal);

    [Fact]
    public void A_file_that_is_not_there_is_told_at_the_scenarios_line()
    {
        string path = _folder.Write("lost.json", Scenario("\"file\": \"nowhere.epw\""));
        ScenarioError error = Assert.Single(Assert.Throws<ScenarioException>(() => ShippedScenarios.Read(path)).Errors);
        Assert.EndsWith("lost.json", error.File, StringComparison.Ordinal);
        Assert.Equal("site.weatherFile.file", error.Path);
    }

    [Fact]
    public void Neither_normals_nor_a_file_is_no_site()
    {
        FarmDescription farm = ShippedScenarios.Read(ShippedScenarios.PathOf("first-season.json")).Value;
        DescriptionException e = Assert.Throws<DescriptionException>(() =>
            new Season(farm with { Site = farm.Site with { Normals = null } }, ShippedLibrary.Library, 1));
        Assert.Contains("weatherFile", e.Message, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private static List<string> Lines(string format) => format switch
    {
        "EPW" => InventedYear.Epw(),
        "TMY3" => InventedYear.Tmy3(),
        _ => InventedYear.Csv(),
    };

    private FarmDescription Read(IEnumerable<string> lines, string fill = "\"fill\": \"refuse\"")
    {
        _folder.Write("weather.txt", InventedYear.Text(lines));
        return ShippedScenarios.Read(_folder.Write("scenario.json", Scenario($"\"file\": \"weather.txt\", {fill}"))).Value;
    }

    private IReadOnlyList<ScenarioError> Refused(IEnumerable<string> lines, string fill = "\"fill\": \"refuse\"") =>
        Assert.Throws<ScenarioException>(() => Read(lines, fill)).Errors;

    private string Scenario(string weather)
    {
        File.Copy(ShippedScenarios.PathOf("first-season.json"), Path.Combine(_folder.Folder, "first-season.json"), overwrite: true);
        return $$"""{ "extends": "first-season.json", "title": "Weather from a file", "site": { "weatherFile": { {{weather}} } } }""";
    }
}
