using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Business;

/// <summary>People's hours: booked where the work is done, and in the order that a small farm of one operator needs.</summary>
public class LabourTests(ITestOutputHelper output)
{
    private const int Days = 182;
    private static readonly Season Season = Farms.Run(Farms.FirstSeason, Days);
    private static readonly SeasonSummary Summary = SeasonSummary.Of(Season, ShippedLibrary.Library, "test");

    [Fact]
    public void Hours_are_what_was_done_times_the_minutes_of_each()
    {
        LabourState labour = Season.State.Labour;
        Assert.True(labour.Ledger.ClosureError(labour.ClosingHours(Season.Parts.ChoreTimes)) < 1e-9);
        Assert.Equal(labour.Hours, Summary.Labour.HoursByChore.Values.Sum(), 9);
        Assert.Equal(labour.Hours, Summary.Labour.HoursByArea.Values.Sum(), 9);
        Assert.Equal(labour.Hours, Season.Record.Weeks.Column("hours_h").Sum(), 9);
        Assert.Equal(labour.Hours, Farms.Days(Season, "work_h").Sum(), 9);
    }

    [Fact]
    public void Chores_are_counted_where_the_work_is_done()
    {
        LabourState labour = Season.State.Labour;
        Assert.Equal(Season.State.Totals.Washes, labour.CountOf(Chore.WashFilter));
        Assert.Equal(Season.State.Growing.HeadsHarvested.Sum(), labour.CountOf(Chore.HarvestHead), 6);
        Assert.Equal(Season.State.Growing.CellsSown.Sum() / 200, labour.CountOf(Chore.SowTray), 6);
        Assert.Equal(Season.State.Totals.FishSold, labour.CountOf(Chore.HarvestFish), 0);
        Assert.Equal(Days, labour.CountOf(Chore.DailyRound));
        Assert.Equal(3, labour.CountOf(Chore.ReceiveFish));
    }

    // Common practice: 1-1.5 h a day of routine and 15-25 h a week in all for a unit of one operator; 1.0-1.5 min a head for harvest
    // and packing, all in.
    [Fact]
    public void A_small_farm_of_one_operator_takes_fifteen_to_twenty_five_hours_a_week()
    {
        LabourSummary labour = Summary.Labour;
        output.WriteLine($"ordinary {labour.OrdinaryWeekHours:0.0}, busiest {labour.BusiestWeekHours:0.0} h");
        Assert.InRange(labour.OrdinaryWeekHours!.Value, 15, 25);
        Assert.InRange(labour.BusiestWeekHours!.Value, labour.OrdinaryWeekHours.Value, 30);
        Assert.Equal(labour.HoursByArea.Values.Max(), labour.HoursByArea["plants"]);
        LabourState state = Season.State.Labour;
        double hours = state.HoursOf(Chore.HarvestHead) + state.HoursOf(Chore.CleanPacking);
        double minutesAHead = hours * 60 / state.CountOf(Chore.HarvestHead);
        output.WriteLine($"{minutesAHead:0.00} min a head");
        Assert.InRange(minutesAHead, 1.0, 1.5);
    }

    // Beds and all: the upper end of what one operator does, most of it for plants and their sale.
    [Fact]
    public void On_the_whole_farm_most_work_is_for_plants_and_their_sale()
    {
        Season season = Farms.Run(Farms.Read("whole-farm"), Days);
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        LabourSummary labour = summary.Labour;
        output.WriteLine($"ordinary {labour.OrdinaryWeekHours:0.0}, busiest {labour.BusiestWeekHours:0.0} h; {string.Join(", ", labour.HoursByArea.Select(a => $"{a.Key} {a.Value:0}"))}");
        Assert.InRange(labour.OrdinaryWeekHours!.Value, 15, 30);
        Assert.True(labour.HoursByArea["plants"] + labour.HoursByArea["sales"] > 0.5 * labour.Hours);
        Assert.Equal(labour.HoursByArea.Values.Max(), labour.HoursByArea["plants"]);
        Assert.Equal(season.State.Growing.Fruit.Sum(f => f.PickedGrams) / 1000, season.State.Labour.CountOf(Chore.PickFruit), 6);
        int tomato = Array.IndexOf(season.Parts.Products.Names, "tomato");
        Assert.Equal("kg", season.Parts.Products.UnitOf(tomato));
        Assert.True(season.State.Trade.Sold[tomato] > 5);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void A_scenario_may_state_its_own_minutes()
    {
        FarmDescription slow = Farms.FirstSeason with { Parameters = new Dictionary<string, double> { ["processes/labour/dailyRound"] = 45 } };
        Season season = Farms.Run(slow, 14);
        Assert.Equal(14 * 45 / 60.0, season.State.Labour.HoursOf(Chore.DailyRound), 9);
    }

    [Fact]
    public void Weeks_that_need_more_than_the_people_have_are_named()
    {
        FarmDescription few = Farms.FirstSeason with { Labour = new LabourDescription { HoursPerWeek = new Dictionary<string, double> { ["one"] = 12, ["other"] = 5 } } };
        Season season = Farms.Run(few, 98);
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        double[] weeks = season.Record.Weeks.Column("hours_h");
        Assert.Equal(17, summary.Labour.HoursThereAWeek);
        Assert.Equal(weeks.Count(w => w > 17), summary.Labour.WeeksShort.Count);
        Assert.NotEmpty(summary.Labour.WeeksShort);
        Assert.Contains(summary.Findings, f => f.Contains("17 h are there", StringComparison.Ordinal));
    }
}
