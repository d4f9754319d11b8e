using System.Text.Json;
using FarmTwin.Reports.Screen;

namespace FarmTwin.Reports.Tests;

/// <summary>The design sheet as a user meets it.</summary>
public class DesignSheetPageTests
{
    [Fact]
    public void The_sheet_of_the_shipped_first_season_is_as_recorded()
    {
        ProgramRun run = ProgramRun.Of("check", Repository.FirstSeason);
        Assert.Equal(0, run.ExitCode);
        string sheet = run.Out[..run.Out.LastIndexOf(Path.GetDirectoryName(Repository.FirstSeason)!, StringComparison.Ordinal)];
        string golden = Path.Combine(Repository.Root, "tests", "FarmTwin.Reports.Tests", "Golden", "first-season-sheet.txt");
        if (Environment.GetEnvironmentVariable("FARMTWIN_UPDATE") == "1")
        {
            File.WriteAllText(golden, sheet);
        }

        Assert.Equal(File.ReadAllText(golden), sheet);
        Assert.All(sheet.Split('\n'), line => Assert.True(line.Length <= ScreenPage.Width, line));
    }

    [Fact]
    public void As_json_every_line_has_its_key_verdict_band_and_source()
    {
        ProgramRun run = ProgramRun.Of("check", Repository.FirstSeason, "--json");
        Assert.Equal(0, run.ExitCode);
        using JsonDocument sheet = JsonDocument.Parse(run.Out);
        JsonElement[] lines = [.. sheet.RootElement.GetProperty("lines").EnumerateArray()];
        Assert.True(lines.Length > 40);
        JsonElement turnover = lines.Single(l => l.GetProperty("key").GetString() == "turnover.tank-1");
        Assert.Equal("fine", turnover.GetProperty("verdict").GetString());
        Assert.Equal(1, turnover.GetProperty("value").GetDouble(), 6);
        Assert.Equal("somerville-2014", turnover.GetProperty("source").GetString());
        Assert.True(turnover.TryGetProperty("low", out _) && turnover.TryGetProperty("high", out _));
    }

    [Fact]
    public void In_us_units_the_design_night_is_in_fahrenheit()
    {
        Assert.Contains("-4.81 °F", ProgramRun.Of("check", Repository.FirstSeason, "--units", "us").Out);
        Assert.Equal(2, ProgramRun.Of("check", Repository.FirstSeason, "--units", "imperial").ExitCode);
    }

    [Fact]
    public void Every_source_of_the_sheet_is_cited_in_full() =>
        Assert.DoesNotMatch(@"\n    \[\d+\] [a-z0-9-]+\n", ProgramRun.Of("check", Repository.FirstSeason).Out);
}
