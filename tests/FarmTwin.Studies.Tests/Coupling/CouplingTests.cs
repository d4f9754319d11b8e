using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Coupling;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Studies.Tests.Coupling;

public sealed class CouplingTests
{
    private static readonly FarmPlan First = ShippedScenarios.Plan("first-season");
    private static readonly int[] Days = [49, 70, 91];
    private static readonly Lazy<CouplingStudyResult> AsPlanned = new(() => Play(First.Farm));

    [Fact]
    public void The_example_farm_opens_when_its_feed_has_been_steady_and_not_before()
    {
        CouplingAdvice advice = AsPlanned.Value.Advice();
        Assert.Equal((70, 91), (advice.FirstDay, advice.LastDay));
        Assert.Contains(AsPlanned.Value.At(49, "ramp").Binds, b => b.What.StartsWith("feed", StringComparison.Ordinal));
        Assert.Equal(0, AsPlanned.Value.At(49, "ramp").Kept);
    }

    [Fact]
    public void A_cold_plant_loop_falls_on_the_fish_when_opened_at_once_and_is_borne_by_the_ramp()
    {
        // The same farm begun in autumn: by the same day the plant loop is winter-cold.
        CouplingStudyResult winter = Play(First.Farm with { Start = new DateOnly(2027, 11, 1) });
        Assert.True(Worst(winter, 70, "at-once", "fall-day") > Worst(AsPlanned.Value, 70, "at-once", "fall-day") + 0.5);
        Assert.True(Worst(winter, 70, "ramp", "heater") > Worst(AsPlanned.Value, 70, "ramp", "heater"));
        Assert.True(Worst(winter, 70, "at-once", "fall-hour") > 1);
        Assert.Equal(0, winter.At(70, "at-once").LimitsHeld);
        Assert.Equal(1, winter.At(70, "ramp").LimitsHeld);
    }

    [Fact]
    public void The_day_of_the_opening_counts_for_the_fall_in_a_day() => Assert.All(
        CouplingOption.All.SelectMany(o => Days.Select(d => AsPlanned.Value.At(d, o.Key))),
        c => Assert.True(c.Worst[Index("fall-day")].Median >= c.Worst[Index("fall-hour")].Median, $"{c.Option.Key} on day {c.Day}"));

    [Fact]
    public void Low_nitrate_closes_the_gate_of_the_mixed_water()
    {
        // No bridging nutrients, and no ammonium start that would have made nitrate.
        CouplingStudyResult poor = Play(First.Farm with { Dosing = First.Farm.Dosing.Where(d => d.Key != "bridging").ToDictionary(d => d.Key, d => d.Value) });
        CouplingCandidate candidate = poor.At(70, "ramp");
        Assert.True(candidate.Kept < AsPlanned.Value.At(70, "ramp").Kept);
        Assert.Contains(candidate.Binds, b => b.What.Contains("nitrate", StringComparison.Ordinal));
        Assert.True(poor.Advice().FirstDay is null or > 70);
    }

    [Fact]
    public void A_young_filter_puts_the_day_off()
    {
        CouplingStudyResult young = Play(First.Farm with { Filters = First.Farm.Filters.ToDictionary(f => f.Key, f => f.Value with { MatureMediaShare = 0 }) });
        Assert.Equal(0, young.At(70, "ramp").Kept);
        Assert.True(young.Advice().FirstDay is null or > 70);
        Easing media = young.Eased.Single(e => e.Words.Contains("mature media", StringComparison.Ordinal));
        Assert.True(media.FirstDay.Count > 0 && (young.Eased[0].FirstDay.Count == 0 || media.FirstDay.Median < young.Eased[0].FirstDay.Median - 7));
    }

    [Fact]
    public void A_small_heater_holds_the_ramp_back_or_lets_the_fish_go_cold()
    {
        CouplingStudyResult small = Play(First.Farm with
        {
            Start = new DateOnly(2027, 11, 1),
            WaterHeaters = First.Farm.WaterHeaters.ToDictionary(h => h.Key, h => h.Value with { OutputKilowatts = 3 }),
        });
        CouplingStudyResult ample = Play(First.Farm with { Start = new DateOnly(2027, 11, 1) });
        Assert.True(DaysToFull(small, 70) > DaysToFull(ample, 70) || Worst(small, 70, "ramp", "coldest") < Worst(ample, 70, "ramp", "coldest") - 1);
        Assert.True(small.At(70, "at-once").LimitsHeld < ample.At(70, "ramp").LimitsHeld);
        Assert.True(Worst(small, 70, "at-once", "coldest") < Worst(ample, 70, "at-once", "coldest"));
    }

    [Fact]
    public void A_branch_is_the_season_that_was_planned_so_from_the_start()
    {
        CouplingRun run = CouplingTrial.Play(First, ShippedLibrary.Library, 1, 1, [70], 30)[0][CouplingStudy.Option("ramp")];
        FarmDescription farm = FarmUnknowns.With(First.Farm, First.Unknowns, FarmUnknowns.Draw(First.Unknowns, 1, 1)) with { LengthDays = 100 };
        var season = new Season(farm with { Coupling = farm.Coupling! with { OnDay = 70 } }, ShippedLibrary.Library, 1, 1);
        season.Advance(FarmWork.At(100, 0));
        var record = new WindowRecord(season, 70, 30, 0, 0);
        Assert.Equal(record.Lowest("nitrate_plant_loop_mgN_per_L"), run.Worst[CouplingLimit.All.ToList().FindIndex(l => l.Key == "nitrate")]);
        Assert.Equal(record.Lowest("fish_water_C"), run.Worst[CouplingLimit.All.ToList().FindIndex(l => l.Key == "coldest")]);
        Assert.Equal(record.Heads, run.Heads);
        Assert.InRange(run.WorstClosure, 0, 1e-9);
    }

    [Fact]
    public void The_study_is_the_same_with_more_threads()
    {
        CouplingStudyResult one = CouplingStudy.Play(First, ShippedLibrary.Library, 1, 2, [70], 10, 1);
        CouplingStudyResult two = CouplingStudy.Play(First, ShippedLibrary.Library, 1, 2, [70], 10, 4);
        Assert.Equal(one.Advice().Sentences, two.Advice().Sentences);
        Assert.Equal(one.Candidates.SelectMany(c => c.Worst), two.Candidates.SelectMany(c => c.Worst));
    }

    [Fact]
    public void Days_are_Mondays_where_the_gates_ask_for_the_early_week() =>
        Assert.All(CouplingStudy.Days(First.Farm with { Start = new DateOnly(2027, 3, 4) }, 28, 70, 7), d => Assert.Equal(DayOfWeek.Monday, new DateOnly(2027, 3, 4).AddDays(d).DayOfWeek));

    [Fact]
    public void A_farm_without_a_coupling_is_refused_with_the_reason() =>
        Assert.Contains("coupling", Assert.Throws<DescriptionException>(() => Play(First.Farm with { Coupling = null })).Message, StringComparison.Ordinal);

    private static CouplingStudyResult Play(FarmDescription farm) =>
        CouplingStudy.Play(new FarmPlan("farm", farm, "farm", ShippedLibrary.Library), ShippedLibrary.Library, 1, 2, Days, 30, 2);

    private static double Worst(CouplingStudyResult result, int day, string way, string limit) =>
        result.At(day, way).Worst[CouplingLimit.All.ToList().FindIndex(l => l.Key == limit)].Median;

    private static int Index(string limit) => CouplingLimit.All.ToList().FindIndex(l => l.Key == limit);

    private static int DaysToFull(CouplingStudyResult result, int day)
    {
        double[] valve = result.At(day, "ramp").Valve;
        int full = Array.FindIndex(valve, v => v >= First.Farm.Coupling!.FullFlowLitresPerHour - 1);
        return full < 0 ? valve.Length : full;
    }
}
