using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Causes;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Compare;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Studies.Tests.Compare;

/// <summary>Two farms under one seed: where a person sees them part, and what acting on the first sign saves.</summary>
public sealed class ComparisonTests
{
    private const int Days = 60;
    private static readonly FarmPlan Base = Cause("base");
    private static readonly FarmPlan WashedTooHard = Cause("10-filter-washed-too-hard");
    private static readonly FarmPlan IronLacking = Cause("14-iron-lacking");

    // The filter that is washed too hard kills fish about day 26: the longer it goes on, the more. This is the monotone case.
    private static readonly SideBySide Washed = ComparisonStudy.Play([Base, WashedTooHard, IronLacking], ShippedLibrary.Library, 1, Days, threads: 2);

    private static FarmPlan Cause(string name) =>
        FarmPlan.Of(ScenarioReader.Read<FarmDescription>(Path.Combine(ShippedScenarios.Root, "scenarios", "causes", name + ".json")), ShippedLibrary.Library);

    [Fact]
    public void A_plan_held_against_itself_parts_nowhere_and_asks_for_nothing()
    {
        SideBySide same = ComparisonStudy.Play([Base, Base], ShippedLibrary.Library, 1, 40);
        Assert.Empty(same.Others[0].Partings);
        Assert.Null(same.Others[0].Sign);
        Assert.Empty(same.Others[0].Ways);
        Assert.Equal(same.Reference.Outcome.Figures, same.Others[0].Farm.Outcome.Figures);
    }

    [Fact]
    public void The_test_kit_tells_of_a_stripped_filter_before_the_first_fish_dies()
    {
        ComparedPair pair = Washed.Others[0];
        Assert.Contains(pair.Sign!.Line.Key, new[] { "tan", "nitrite" });
        int dead = pair.Partings.Single(p => p.Line.Key == "dead_fish").Day;
        Assert.True(pair.Sign.Day + 3 < dead, $"sign on day {pair.Sign.Day}, fish dead on day {dead}");
        Assert.True(pair.Sign.Other > pair.Sign.Line.High && pair.Sign.Reference <= pair.Sign.Line.High);
    }

    [Fact]
    public void Iron_is_missed_first_on_its_card_and_then_on_the_young_leaves()
    {
        ComparedPair pair = Washed.Others[1];
        int card = pair.Partings.Single(p => p.Line.Key == "iron").Day;
        int leaves = pair.Partings.Single(p => p.Line.Key == "leaves_lettuce_iron").Day;
        Assert.True(card < leaves, $"card day {card}, leaves day {leaves}");
        Assert.DoesNotContain(pair.Partings, p => p.Line.Key == "leaves_lettuce_nitrogen");
        Assert.All(pair.Ways, w => Assert.True(w.Acts[0].HeadsSaved > 0));
    }

    [Fact]
    public void Acting_sooner_on_the_stripped_filter_never_saves_fewer_fish()
    {
        Act[] acts = [.. Washed.Others[0].Ways.Single(w => w.Key == "asReference").Acts];
        Assert.Equal([0, 1, 3], acts.Select(a => a.Delay));
        Assert.True(acts[0].FishSaved >= acts[1].FishSaved && acts[1].FishSaved >= acts[2].FishSaved, string.Join(", ", acts.Select(a => a.FishSaved)));
        Assert.True(acts[0].FishSaved > 20);
        Assert.True(acts[0].FishSaved > acts[2].FishSaved + 2, "three days cost fish");
    }

    [Fact]
    public void No_branch_saves_more_fish_than_there_are_and_every_ledger_closes()
    {
        foreach (ComparedPair pair in Washed.Others)
        {
            Assert.All(pair.Ways.SelectMany(w => w.Acts), a =>
            {
                Assert.InRange(a.WorstClosure, 0, 1e-9);
                Assert.True(a.FishSaved <= pair.Farm.Dead);
                Assert.Equal(pair.Farm.Dead - a.Farm.Dead, a.FishSaved, 1e-9);
            });
        }
    }

    [Fact]
    public void The_comparison_is_the_same_for_any_number_of_threads()
    {
        SideBySide one = ComparisonStudy.Play([Base, WashedTooHard, IronLacking], ShippedLibrary.Library, 1, Days, threads: 1);
        Assert.Equal(Washed.Others.SelectMany(o => o.Partings).Select(p => (p.Line.Key, p.Day, p.Other)), one.Others.SelectMany(o => o.Partings).Select(p => (p.Line.Key, p.Day, p.Other)));
        Assert.Equal(Washed.Others.SelectMany(o => o.Ways).SelectMany(w => w.Acts).Select(a => (a.FishSaved, a.HeadsSaved, a.CropKgSaved)),
            one.Others.SelectMany(o => o.Ways).SelectMany(w => w.Acts).Select(a => (a.FishSaved, a.HeadsSaved, a.CropKgSaved)));
    }

    [Fact]
    public void Air_on_a_battery_that_comes_in_time_saves_the_fish_of_a_cut_and_a_day_later_none()
    {
        FarmPlan grown = Cause("grown");
        var cut = new MainsCut { Day = 25, Hour = 18.5, RepairAfterHours = 5 };
        FarmDescription without = grown.Farm with { Plan = new Dictionary<string, PlannedEvent>(grown.Farm.Plan) { ["cut"] = cut } };
        FarmDescription with = without with
        {
            Backups = new Dictionary<string, BackupDescription> { ["battery"] = new BatteryAir { Basins = ["tank"], AirShare = 1, PowerWatts = 40, BatteryWattHours = 2000 } },
        };
        SideBySide comparison = ComparisonStudy.Play([grown.With("battery", with), grown.With("none", without)], ShippedLibrary.Library, 1, 40);
        Act[] acts = [.. comparison.Others[0].Ways.Single().Acts];
        Assert.Equal("15 min after it broke", acts[0].When);
        Assert.True(acts[0].FishSaved > 50, $"{acts[0].FishSaved}");
        Assert.Equal(comparison.Others[0].Farm.Dead - comparison.Reference.Dead, acts[0].FishSaved, 2.0);
        Assert.Equal(0, acts[^1].FishSaved, 0.5);
        Assert.All(acts.Zip(acts.Skip(1)), a => Assert.True(a.First.FishSaved >= a.Second.FishSaved - 0.01));
    }

    [Fact]
    public void The_remedy_that_a_cause_states_begins_when_somebody_acts()
    {
        CauseScenario cause = CauseReader.Read(Path.Combine(ShippedScenarios.Root, "scenarios", "causes", "07-power-lost-without-backup.json"));
        var library = ShippedLibrary.Library;
        var remedies = new Dictionary<int, StatedRemedy> { [1] = new(cause.Card.Remedy!.About, cause.Remedied!.Value) };
        SideBySide lost = ComparisonStudy.Play([FarmPlan.Of(cause.Without, library), FarmPlan.Of(cause.With, library)], library, 1, 70, 1, remedies);
        Act[] acts = [.. lost.Others[0].Ways.Single(w => w.Key == "remedy").Acts];
        Assert.True(lost.Others[0].Farm.Dead > 30);
        Assert.True(acts[0].FishSaved > 0.9 * lost.Others[0].Farm.Dead, $"{acts[0].When}: {acts[0].FishSaved} of {lost.Others[0].Farm.Dead}");
        Assert.Equal(0, acts[^1].FishSaved, 0.5);
        Assert.All(lost.Others[0].Ways.Single(w => w.Key == "asReference").Acts, a => Assert.Equal(0, a.FishSaved, 0.5));
    }

    [Fact]
    public void A_farm_of_another_shape_cannot_go_on_as_the_reference_and_the_page_says_why()
    {
        FarmPlan twoLanes = Base.With("short lane", Base.Farm with { Lanes = Base.Farm.Lanes.ToDictionary(l => l.Key, l => l.Value with { Boards = 10 }) });
        ComparedPair pair = ComparisonStudy.Play([twoLanes, WashedTooHard], ShippedLibrary.Library, 1, Days).Others[0];
        Assert.Contains("'lanes' differ", pair.ActingReason, StringComparison.Ordinal);
        Assert.Equal("care", Assert.Single(pair.Ways).Key);
    }

    [Fact]
    public void Seasons_that_begin_on_different_days_are_refused()
    {
        FarmPlan later = Base.With("later", Base.Farm with { Start = Base.Farm.Start.AddDays(1) });
        DescriptionException refused = Assert.Throws<DescriptionException>(() => ComparisonStudy.Play([Base, later], ShippedLibrary.Library, 1, Days));
        Assert.Contains("begin on one day", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(0.2, 0.25)]
    [InlineData(0.37, 0.25)]
    [InlineData(0.38, 0.5)]
    [InlineData(0.9, 1)]
    [InlineData(2.9, 2)]
    [InlineData(3.1, 4)]
    public void A_colour_between_two_of_the_card_is_taken_for_the_nearer(double water, double colour)
    {
        DailySheetLine tan = DailySheet.Of(new FarmParts(Base.Farm, ShippedLibrary.Library), ShippedLibrary.Library).Single(l => l.Key == "tan");
        Assert.Equal(colour, tan.Shown(water));
    }

    [Fact]
    public void A_whole_colour_is_noticed_and_a_shade_is_not()
    {
        DailySheetLine tan = DailySheet.Of(new FarmParts(Base.Farm, ShippedLibrary.Library), ShippedLibrary.Library).Single(l => l.Key == "tan");
        Assert.False(tan.Differs(0.37, 0.38));
        Assert.True(tan.Differs(0.2, 0.5));
        Assert.False(tan.Differs(3.9, 4.4));
    }
}
