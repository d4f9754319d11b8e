using FarmTwin.Farm.Fish;

namespace FarmTwin.Farm.Tests.Fish;

/// <summary>Deaths are told by their cause.</summary>
public class DeathTallyTests
{
    [Fact]
    public void Deaths_are_shared_by_hazard_and_the_worst_day_is_kept()
    {
        var tally = new DeathTally();
        tally.Add(2, new HazardsPerHour(0.001, 0, 0, 0, 0.001, 0, 0));
        tally.EndDay();
        tally.Add(40, new HazardsPerHour(0.001, 0.019, 0, 0, 0, 0, 0));
        tally.EndDay();
        tally.Add(1, new HazardsPerHour(0, 0, 0, 1, 0, 0, 0));
        tally.EndDay();
        Assert.Equal(43, tally.Season.Sum(), 1e-9);
        Assert.Equal(38, tally.WorstDay[HazardsPerHour.Causes.ToList().IndexOf("cold")], 1e-9);
        Assert.Equal(0, tally.WorstDay[HazardsPerHour.Causes.ToList().IndexOf("oxygen")]);
        var copy = new DeathTally();
        copy.CopyFrom(tally);
        Assert.Equal(tally.Season, copy.Season);
        Assert.Equal(tally.WorstDay, copy.WorstDay);
    }
}
