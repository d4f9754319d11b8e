using System.Text.Json;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Json;

namespace FarmTwin.Reports.Tests;

public sealed class SeasonSummaryTests(SeasonFixture fixture) : IClassFixture<SeasonFixture>
{
    private SeasonSummary Summary => fixture.Summary;

    [Theory]
    [InlineData("engine.version")]
    [InlineData("engine.seed")]
    [InlineData("fish.fcr")]
    [InlineData("fish.survival")]
    [InlineData("fish.harvestedKg")]
    [InlineData("fish.feedKg")]
    [InlineData("crops.lettuce.headsHarvested")]
    [InlineData("crops.basil.harvestedKg")]
    [InlineData("water.cycledDay")]
    [InlineData("water.coupledDay")]
    [InlineData("water.peakTanMgNPerL")]
    [InlineData("water.peakNitriteMgNPerL")]
    [InlineData("water.finalNitrateMgNPerL.fishLoop")]
    [InlineData("water.finalNitrateMgNPerL.plantLoop")]
    [InlineData("water.lowestOxygenMgPerL")]
    [InlineData("energy.fuel")]
    [InlineData("energy.kWh")]
    [InlineData("ledgers.nitrogen.closure")]
    [InlineData("ledgers.water.closure")]
    [InlineData("ledgers.charge.closure")]
    public void Stable_field_names_hold_a_number(string path)
    {
        using JsonDocument document = JsonDocument.Parse(SummaryJson.Write(Summary));
        JsonElement element = document.RootElement;
        foreach (string name in path.Split('.'))
        {
            Assert.True(element.TryGetProperty(name, out element), $"{path}: no '{name}'");
        }

        Assert.True(element.ValueKind is JsonValueKind.Number || path == "engine.version", $"{path} is {element.ValueKind}");
    }

    [Fact]
    public void Ledgers_close_and_can_be_checked_from_the_file()
    {
        using JsonDocument document = JsonDocument.Parse(SummaryJson.Write(Summary));
        foreach (JsonProperty ledger in document.RootElement.GetProperty("ledgers").EnumerateObject())
        {
            double opening = ledger.Value.GetProperty("opening").GetDouble();
            double flowIn = ledger.Value.GetProperty("in").GetDouble();
            double flowOut = ledger.Value.GetProperty("out").GetDouble();
            double rest = opening + flowIn - flowOut - ledger.Value.GetProperty("closing").GetDouble();
            double scale = Math.Max(Math.Max(flowIn, flowOut), Math.Abs(opening));
            Assert.True(Math.Abs(rest) <= 1e-9 * scale, $"{ledger.Name}: {rest} of {scale}");
            Assert.True(ledger.Value.GetProperty("closure").GetDouble() < 1e-9, ledger.Name);
        }
    }

    [Fact]
    public void Shares_of_the_nitrogen_add_up_to_one()
    {
        Assert.Equal(1, Summary.Nutrients.NitrogenSources.Values.Sum(s => s.Share), 12);
        Assert.Equal(1, Summary.Nutrients.NitrogenSinks.Values.Sum(s => s.Share), 12);
        Assert.Equal(Summary.Nutrients.NitrogenSources.Values.Sum(s => s.G), Summary.Nutrients.NitrogenSinks.Values.Sum(s => s.G), 6);
    }

    [Fact]
    public void Conversion_is_feed_over_gain_of_all_fish()
    {
        FishSummary fish = Summary.Fish;
        Assert.Equal(fish.FeedKg / fish.GainedKg, fish.Fcr!.Value, 12);
        Assert.InRange(fish.Fcr.Value, 1, 3);
        Assert.Equal(fish.StandingKg, fish.StandingKgByTank.Values.Sum(), 9);
    }

    [Fact]
    public void Peaks_with_fish_leave_out_the_ammonium_of_the_start()
    {
        WaterSummary water = Summary.Water;
        Assert.True(water.BeforeFish.TanMgNPerL!.Value > 2, "3 mg N/L are dosed before any fish");
        Assert.True(water.WithFish.TanMgNPerL!.Value < water.BeforeFish.TanMgNPerL.Value);
        Assert.True(water.WithFish.TanMgNPerL.Day >= Summary.Fish.FirstDeliveryDay);
        Assert.True(water.BeforeFish.TanMgNPerL.Day <= Summary.Fish.FirstDeliveryDay);
        Assert.Equal(water.PeakTanMgNPerL, Math.Max(water.WithFish.TanMgNPerL.Value, water.BeforeFish.TanMgNPerL.Value));
    }

    [Fact]
    public void Test_kit_reads_ions()
    {
        double nitrogen = Summary.Water.FinalNitrateMgNPerL["fishLoop"];
        Assert.Equal(62.004 / 14.007, Summary.Water.TestKitAtEnd["fishLoop"].NitrateMgNO3PerL / nitrogen, 3);
    }

    [Fact]
    public void Findings_are_five_to_twelve_with_a_day_and_a_number_each()
    {
        Assert.InRange(Summary.Findings.Count, 5, 12);
        Assert.All(Summary.Findings, f => Assert.Matches(@"day \d+|\d+ days", f));
        Assert.All(Summary.Findings, f => Assert.EndsWith(".", f));
        Assert.All(Summary.Findings, f => Assert.DoesNotContain("NaN", f));
        Assert.Equal(Summary.Findings.Count, Summary.Findings.Distinct().Count());
    }

    [Fact]
    public void Doors_add_up_to_the_flows_of_their_ledger()
    {
        foreach (LedgerSummary ledger in Summary.Ledgers.Values)
        {
            Assert.Equal(ledger.In, ledger.Doors.Values.Sum(d => d.In), 1e-9 * Math.Max(1, ledger.In));
            Assert.Equal(ledger.Out, ledger.Doors.Values.Sum(d => d.Out), 1e-9 * Math.Max(1, ledger.Out));
        }
    }
}
