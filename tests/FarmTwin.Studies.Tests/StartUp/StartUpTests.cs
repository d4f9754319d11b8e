using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.StartUp;

namespace FarmTwin.Studies.Tests.StartUp;

public sealed class StartUpTests
{
    private static readonly Lazy<StartUpResult> First = new(() => StartUpStudy.Play(ShippedScenarios.Plan("first-season"), ShippedLibrary.Library, 1, 6, 90, 2));

    // "25 to 40 days" to cycle without seed (FAO Fisheries and Aquaculture Technical Paper 589, from memory), "one to six weeks" its glossary.
    [Fact]
    public void Without_mature_media_a_warm_filter_takes_as_long_as_is_printed()
    {
        StartUpRow none = Row("fishless, no mature media");
        Assert.InRange(none.Cycled.Median, 25, 45);
        Assert.True(none.Cycled.High - none.Cycled.Low > 5);
    }

    [Fact]
    public void The_more_mature_media_the_sooner_it_is_cycled()
    {
        double[] medians = [.. new[] { "fishless, no mature media", "fishless, 2% mature media", "fishless, 5% mature media", "fishless, 10% mature media", "fishless, 20% mature media" }.Select(w => Row(w).Cycled.Median)];
        Assert.Equal(medians.OrderDescending(), medians);
        Assert.True(medians[0] > medians[^1] + 14);
    }

    [Fact]
    public void Colder_water_takes_longer_and_warmer_water_less()
    {
        Assert.True(Row("as planned, water 5 °C cooler").Cycled.Median > Row("as planned").Cycled.Median);
        Assert.True(Row("as planned, water 2 °C warmer").Cycled.Median <= Row("as planned").Cycled.Median);
    }

    [Fact]
    public void Fish_in_an_unseeded_filter_stand_in_harm_for_days_and_on_mature_media_hardly()
    {
        StartUpRow bare = Row("with the first batch from day 2, no mature media");
        StartUpRow seeded = Row("with the first batch from day 2, 10% mature media");
        Assert.True(bare.HoursOfHarm.Median > 48);
        Assert.True(seeded.HoursOfHarm.Median < bare.HoursOfHarm.Median / 2);
        Assert.Contains(First.Value.Sentences(), s => s.Contains("prefer the fishless start", StringComparison.Ordinal));
    }

    private static StartUpRow Row(string words) => First.Value.Rows.Single(r => r.Choice.Words == words);
}
