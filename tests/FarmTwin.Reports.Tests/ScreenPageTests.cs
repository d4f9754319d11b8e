using FarmTwin.Reports.Screen;

namespace FarmTwin.Reports.Tests;

public sealed class ScreenPageTests(SeasonFixture fixture) : IClassFixture<SeasonFixture>
{
    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Us)]
    public void The_page_holds_80_columns_and_40_lines(UnitSystem units)
    {
        IReadOnlyList<string> page = ScreenPage.Of(fixture.Summary, units, "out/first-season");
        Assert.InRange(page.Count, 20, ScreenPage.Height);
        Assert.All(page, line => Assert.InRange(line.Length, 0, ScreenPage.Width));
        Assert.All(page, line => Assert.DoesNotContain("NaN", line));
        Assert.Contains(page, line => line.StartsWith("* ", StringComparison.Ordinal));
    }

    [Fact]
    public void Units_of_the_page_may_be_american()
    {
        string page = string.Join('\n', ScreenPage.Of(fixture.Summary, UnitSystem.Us, null));
        Assert.Contains(" lb", page);
        Assert.Contains(" gal", page);
        Assert.Contains(" °F", page);
        Assert.DoesNotContain(" kg,", page.Split("----")[0]);
    }

    // FARMTWIN_UPDATE=1 writes what the program now prints: look at the difference before it is committed.
    [Fact]
    public void Five_days_print_the_recorded_page()
    {
        string folder = Repository.NewFolder();
        ProgramRun run = ProgramRun.Of("run", Repository.FirstSeason, "--days", "5", "--out", folder, "--no-plots");
        Assert.Equal(0, run.ExitCode);
        string actual = run.Out.Replace(folder.Replace('\\', '/'), "OUT", StringComparison.Ordinal);
        string golden = Path.Combine(Repository.Root, "tests", "FarmTwin.Reports.Tests", "Golden", "first-season-5-days.txt");
        if (Environment.GetEnvironmentVariable("FARMTWIN_UPDATE") == "1")
        {
            File.WriteAllText(golden, actual);
        }

        // The hash changes with every word of the scenario; the figures are what is recorded.
        Assert.Equal(WithoutHash(File.ReadAllText(golden)), WithoutHash(actual));
        Directory.Delete(folder, recursive: true);
    }

    private static string WithoutHash(string page) => System.Text.RegularExpressions.Regex.Replace(page, "scenario [0-9a-f]{8}", "scenario");
}
