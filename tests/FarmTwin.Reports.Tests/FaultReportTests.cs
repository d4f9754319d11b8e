using System.Text.Json;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Json;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.Screen;
using FarmTwin.Reports.Tables;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Reports.Tests;

/// <summary>A cut of the mains in the summary, on the screen, in its table and its figure.</summary>
public class FaultReportTests
{
    private static readonly FarmDescription First = ScenarioReader.Read<FarmDescription>(Repository.FirstSeason).Value;

    private static readonly Season Season = Run(new MainsCut { Day = 4, Hour = 17, RepairAfterHours = 3 });

    private static readonly SeasonSummary Summary = SeasonSummary.Of(Season, ShippedLibrary.Library, "test");

    private static Season Run(FaultEvent? fault)
    {
        StockingDescription stock = First.Stocking["first"] with { Number = 60, MeanGrams = 350, AfterDays = 0, WaitForCycle = false };
        var season = new Season(
            First with
            {
                LengthDays = 6,
                FishlessStart = null,
                Filters = First.Filters.ToDictionary(f => f.Key, f => f.Value with { MatureMediaShare = 1 }),
                Stocking = new Dictionary<string, StockingDescription> { ["a"] = stock, ["b"] = stock with { Tank = "tank-2", Number = 30 } },
                Plan = fault is null ? new Dictionary<string, PlannedEvent>() : new Dictionary<string, PlannedEvent> { ["evening"] = fault },
                Backups = new Dictionary<string, BackupDescription>
                {
                    ["battery"] = new BatteryAir { Basins = ["tank-2"], AirShare = 0.7, PowerWatts = 30, BatteryWattHours = 100 },
                },
            },
            ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        return season;
    }

    [Fact]
    public void The_summary_tells_how_long_each_tank_had_and_what_would_have_carried_it()
    {
        FaultSummary fault = Summary.Faults["evening"];
        FaultTankSummary tank = fault.Tanks["tank-1"];
        Assert.Equal(180, fault.MinutesToMended!.Value, 1e-9);
        Assert.InRange(tank.MinutesTo3MgPerL!.Value, 10, 60);
        Assert.True(tank.MinutesTo2MgPerL > tank.MinutesTo3MgPerL);
        Assert.True(fault.FishLost > 5);

        // The arithmetic is that of the first minutes: 40 % of the oxygen fed dissolves, and both tanks need theirs.
        double need = fault.Tanks.Values.Sum(t => t.FishKg * t.StartOxygenUseMgPerKgH / 1000);
        Assert.Equal(need / 0.4, fault.SmallestBackup!.OxygenGramsPerHour, 1e-6 * need);
        Assert.Equal(tank.MinutesTo3MgPerL.Value, fault.SmallestBackup.GeneratorWithinMinutes!.Value, 1e-9);

        // 100 Wh, half usable, 85 % to a pump of 30 W.
        Assert.Equal(100 * 0.5 * 0.85 / 30, Summary.Backups["battery"].FullHours, 1e-9);
        Assert.Equal(1, Summary.Backups["battery"].TimesEmpty);
        Assert.Contains(Summary.Findings, f => f.Contains("'evening'", StringComparison.Ordinal) && f.Contains("died", StringComparison.Ordinal));
        Assert.Contains(Summary.Findings, f => f.Contains("'battery' ran out", StringComparison.Ordinal));

        using JsonDocument json = JsonDocument.Parse(SummaryJson.Write(Summary));
        Assert.True(json.RootElement.GetProperty("faults").GetProperty("evening").GetProperty("tanks").GetProperty("tank-1").GetProperty("minutesTo3MgPerL").GetDouble() > 10);
    }

    [Fact]
    public void What_the_arithmetic_asks_for_keeps_the_fish_when_it_is_given()
    {
        SmallestBackup smallest = Summary.Faults["evening"].SmallestBackup!;
        var season = new Season(
            Season.Parts.Farm with
            {
                Backups = new Dictionary<string, BackupDescription>
                {
                    ["battery"] = new BatteryAir
                    {
                        Basins = ["tank-1", "tank-2"], AirShare = smallest.AirShareOfNormal, PowerWatts = smallest.AirPumpWatts,
                        BatteryWattHours = smallest.BatteryWattHours * 1.01,
                    },
                },
            },
            ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        FaultSummary fault = SeasonSummary.Of(season, ShippedLibrary.Library, "test").Faults["evening"];
        Assert.Equal(0, fault.FishLost, 0.01);
        Assert.InRange(fault.Tanks["tank-1"].LowestOxygenMgPerL!.Value, 3.5, 5);
    }

    [Fact]
    public void The_table_has_a_row_a_minute_while_the_mains_are_off()
    {
        string[] lines = FaultTable.Of(Season).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string[] header = lines[0].Split(',');
        Assert.Equal(["time", "day", "open", "minute", "mains_on"], header[..5]);
        Assert.StartsWith("2027-03-05T17:00,4,evening,0,0,", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("2027-03-05T17:01,4,evening,1,0,", lines[2], StringComparison.Ordinal);

        // From the minute of the cut to that of the return, both included.
        Assert.Equal(181, lines.Count(l => l.Contains(",evening,", StringComparison.Ordinal) && l.Split(',')[4] == "0"));
        Assert.All(lines, l => Assert.Equal(header.Length, l.Split(',').Length));
    }

    [Fact]
    public void The_figure_says_what_it_shows_and_is_left_out_where_nothing_broke()
    {
        Figure figure = SeasonFigures.Of(Season, Summary, SummaryBands.From(ShippedLibrary.Library)).Single(f => f.Name == "fault");
        Assert.Contains("3 mg/L", figure.Title, StringComparison.Ordinal);
        Assert.Equal("faults.csv", FigureEntry.Of(figure).Data);
        Assert.Equal(["battery starts, 0:00", "battery is empty, 1:25", "mains back, 3:00"], figure.Events.Select(e => e.Label));
        Assert.NotEmpty(FigureImage.Png(figure));

        Season well = Run(null);
        Assert.DoesNotContain(
            SeasonFigures.Of(well, SeasonSummary.Of(well, ShippedLibrary.Library, "test"), SummaryBands.From(ShippedLibrary.Library)), f => f.Name == "fault");
    }

    [Fact]
    public void The_screen_shows_the_fault_and_the_backup()
    {
        IReadOnlyList<string> page = ScreenPage.Of(Summary, UnitSystem.Metric, null);
        Assert.Contains(page, l => l.StartsWith("Faults    evening (day 4): 3.0 h, 3 mg/L after", StringComparison.Ordinal));
        Assert.Contains(page, l => l.StartsWith("Backups   ran battery 1.4 of 1.4 h", StringComparison.Ordinal));
        Assert.True(page.Count <= ScreenPage.Height);
    }
}
