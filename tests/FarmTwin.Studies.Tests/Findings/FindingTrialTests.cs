using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Summaries.Findings;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Findings;

namespace FarmTwin.Studies.Tests.Findings;

public sealed class FindingTrialTests
{
    private static readonly Season First = ShippedScenarios.Plan("first-season", 240).Play(1, 0);
    private static readonly SeasonSummary Summary = SeasonSummary.Of(First, ShippedLibrary.Library, "test");
    private static readonly IReadOnlyList<FindingTrial> Trials = FindingTrials.Of(First, Summary, ShippedLibrary.Library, 2);

    [Fact]
    public void Findings_with_proposals_are_the_findings_of_the_summary()
    {
        IReadOnlyList<Finding> findings = SeasonFindings.Of(First, Summary, ShippedLibrary.Library);
        Assert.Equal(Summary.Findings, findings.Select(f => f.Sentence));
        Assert.Contains(findings, f => f.Proposal is not null);
    }

    [Fact]
    public void A_trial_shows_what_a_scenario_with_the_change_written_into_it_gives()
    {
        FindingTrial trial = Trials.Single(t => t.Change == "trays germinated at 20 °C");
        FarmDescription farm = First.Parts.Farm with { Nursery = First.Parts.Farm.Nursery! with { GerminateAtCelsius = 20 } };
        var season = new Season(farm, ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        SeasonSummary written = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        Assert.Equal(Summary.Nursery.PoorSowings, trial.Figures[0].Before);
        Assert.Equal(written.Nursery.PoorSowings, trial.Figures[0].After);
        Assert.Equal(written.Money!.Margin, trial.Figures[^1].After);
        Assert.True(trial.Helped);
        Assert.Contains("it helps", trial.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Trials_are_the_same_however_many_are_played_at_once()
    {
        IReadOnlyList<FindingTrial> one = FindingTrials.Of(First, Summary, ShippedLibrary.Library, 1);
        Assert.Equal(one.Select(t => t.Says), Trials.Select(t => t.Says));
        Assert.Equal(one.SelectMany(t => t.Figures), Trials.SelectMany(t => t.Figures));
    }

    [Fact]
    public void A_change_that_does_not_help_is_said_not_to()
    {
        // In an overstocked farm a third fewer fish is still far too many: they live longer in the same nitrite.
        Season season = ShippedScenarios.Plan("overstocked", 100).Play(1, 0);
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        FindingTrial fewer = FindingTrials.Of(season, summary, ShippedLibrary.Library, 2).First(t => t.Change.Contains("fewer fish", StringComparison.Ordinal));
        Assert.True(fewer.Figures[0].After >= fewer.Figures[0].Before);
        Assert.False(fewer.Helped);
        Assert.EndsWith("it does not help here.", fewer.Says, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("whole-farm")]
    [InlineData("no-mineralizer")]
    public void Every_proposal_of_a_shipped_farm_can_be_played(string name)
    {
        Season season = ShippedScenarios.Plan(name, 150).Play(1, 0);
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        Assert.All(FindingTrials.Of(season, summary, ShippedLibrary.Library, 2), t =>
        {
            Assert.Contains(t.Finding, summary.Findings);
            Assert.NotEmpty(t.Figures);
            Assert.StartsWith("Tried with ", t.Says, StringComparison.Ordinal);
        });
    }
}
