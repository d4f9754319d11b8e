using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Studies.Tests.Unknowns;

public sealed class UnknownTests
{
    private static readonly FarmPlan First = ShippedScenarios.Plan("first-season", 60);

    [Fact]
    public void Half_of_the_draws_of_every_unknown_lie_below_the_value_that_a_single_run_uses()
    {
        Assert.NotEmpty(First.Unknowns);
        foreach (Unknown unknown in First.Unknowns)
        {
            Assert.Equal(unknown.Middle, unknown.Quantile(0.5), 1e-12);
            Assert.Equal(unknown.Low, unknown.Quantile(1e-13), 1e-6 * unknown.Middle);
            Assert.Equal(unknown.High, unknown.Quantile(1 - 1e-13), 1e-5 * unknown.High);
            double last = unknown.Quantile(0.001);
            for (double share = 0.01; share < 1; share += 0.01)
            {
                Assert.True(unknown.Quantile(share) > last, $"{unknown.Name} at {share}");
                last = unknown.Quantile(share);
            }
        }
    }

    [Fact]
    public void A_tenth_of_two_triangles_lies_beyond_what_their_closed_form_says()
    {
        // A side of a triangle from m to h holds the share 1 - (1 - t)^2 of its half within t of the way: 0.8 of it within 1 - sqrt(0.2).
        var unknown = new Unknown("x", "x", "1", 0.5, 1, 3, (farm, _) => farm);
        Assert.Equal(1 + (2 * 0.5527864045000421), unknown.Quantile(0.9), 1e-12);
        Assert.Equal(1 - (0.5 * 0.5527864045000421), unknown.Quantile(0.1), 1e-12);
    }

    [Fact]
    public void Two_plans_meet_the_same_unknowns_in_the_same_replicate()
    {
        FarmDescription other = First.Farm with
        {
            Stocking = First.Farm.Stocking.ToDictionary(s => s.Key, s => s.Value with { Number = 90 }),
            Parameters = new Dictionary<string, double> { ["processes/plants/siteFactor"] = 0.9 },
        };
        IReadOnlyList<Unknown> known = FarmUnknowns.Of(other, ShippedLibrary.Library);
        Assert.DoesNotContain(known, u => u.Name == "processes/plants/siteFactor");
        double[] mine = FarmUnknowns.Draw(First.Unknowns, 7, 3);
        double[] others = FarmUnknowns.Draw(known, 7, 3);
        for (int i = 0; i < known.Count; i++)
        {
            Assert.Equal(mine[First.Unknowns.ToList().FindIndex(u => u.Name == known[i].Name)], others[i]);
        }
    }

    [Fact]
    public void A_single_run_and_replicate_0_are_the_same_season()
    {
        var season = new Farm.Seasons.Season(First.Farm, ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        Assert.Equal(
            SeasonOutcome.Of(season, ShippedLibrary.Library).Figures, SeasonOutcome.Of(First.Play(1, 0), ShippedLibrary.Library).Figures);
    }

    [Fact]
    public void Every_replicate_differs_and_closes_its_ledgers()
    {
        SeasonOutcome[] outcomes = [.. Enumerable.Range(1, 4).Select(r => SeasonOutcome.Of(First.Play(1, (uint)r), ShippedLibrary.Library))];
        Assert.All(outcomes, o => Assert.InRange(o.WorstClosure, 0, 1e-9));
        Assert.Equal(4, outcomes.Select(o => o["crops_kg"]).Distinct().Count());
        Assert.Equal(4, outcomes.Select(o => o["heat_kWh"]).Distinct().Count());
    }

    [Fact]
    public void The_curves_of_a_season_sum_to_its_headlines()
    {
        Farm.Seasons.Season season = ShippedScenarios.Plan("first-season", 70).Play(1, 0);
        SeasonOutcome outcome = SeasonOutcome.Of(season, ShippedLibrary.Library);
        Assert.Equal(10, outcome.Weeks[3].Length);
        Assert.Equal(outcome["crops_kg"], outcome.Weeks[3].Sum(), 1e-6);
        Assert.All(outcome.Weeks, w => Assert.Equal(10, w.Length));
    }
}
