using FarmTwin.Scenarios.Tests.Sample;

namespace FarmTwin.Scenarios.Tests.Binding;

public class GoodScenarioTests
{
    [Fact]
    public void Every_kind_of_property_is_bound()
    {
        Scenario<SampleFarm> scenario = Reading.ReadText(Reading.Good);
        SampleFarm farm = scenario.Value;

        Assert.Equal("Sample", farm.Name);
        Assert.Equal(new DateOnly(2027, 3, 1), farm.Start);
        Assert.Equal(40.1, farm.Site!.LatitudeDegrees);
        Assert.Equal(12, farm.Site.NormalsCelsius.Count);
        Assert.Equal((75 - 32) / 1.8, farm.Site.NormalsCelsius[7], 1e-9);
        Assert.Equal(SampleCover.TwinWallSheet, farm.Site.Cover);
        Assert.Equal(["tank", "sump"], farm.Basins.Keys);
        Assert.Equal(420 * 3.785411784, farm.Basins["tank"].VolumeLitres, 1e-9);
        Assert.Equal(25, farm.Basins["tank"].TemperatureCelsius, 1e-9);
        Assert.Equal(5, farm.Basins["tank"].DeadbandKelvin!.Value, 1e-12);
        Assert.Equal("sump", farm.Basins["tank"].DrainsTo);
        Assert.Equal(["tank", "sump"], farm.Basins["sump"].Feeds);
        SampleStock stock = Assert.IsType<SampleStock>(farm.Plan["fish"]);
        Assert.Equal(new TimeOnly(6, 30), stock.At);
        Assert.Equal(120, stock.Number);
        Assert.Equal(28.349523125, stock.WeightGrams, 1e-9);
        SampleSow sow = Assert.IsType<SampleSow>(farm.Plan["lettuce"]);
        Assert.Equal(7, sow.EveryDays);
        Assert.Equal(0.005 / 3.785411784, farm.Prices.WaterPerLitre, 1e-12);
        Assert.Equal("USD", scenario.Currency);
        Assert.Equal(0.6, farm.Shares["lettuce"], 1e-12);
        Assert.Equal(["first", "second"], farm.Notes);
        Assert.False(farm.Decoupled);
    }

    [Fact]
    public void What_is_left_out_keeps_its_initial_value()
    {
        SampleFarm farm = Reading.ReadText("""{ "name": "x", "start": "2027-03-01", "basins": { "a": { "volume": "1 L" } }, "prices": { "water": "1 USD/L" } }""").Value;
        Assert.Equal(25, farm.Basins["a"].TemperatureCelsius);
        Assert.Equal(1.5, farm.Basins["a"].SurfaceSquareMetres);
        Assert.Null(farm.Basins["a"].DeadbandKelvin);
        Assert.Null(farm.Site);
        Assert.True(farm.Decoupled);
        Assert.Equal(18, farm.Prices.WagePerHour);
    }

    [Fact]
    public void A_value_at_its_limit_survives_conversion()
    {
        string text = Reading.Good.Replace("77 °F", "32 °F", StringComparison.Ordinal);
        Assert.Equal(0, Reading.ReadText(text).Value.Basins["tank"].TemperatureCelsius, 1e-9);
        Assert.True(Reading.ReadText(text).Value.Basins["tank"].TemperatureCelsius >= 0);
    }

    [Fact]
    public void The_hash_ignores_blanks_comments_and_the_schema_but_no_value()
    {
        string hash = Reading.ReadText(Reading.Good).Hash;
        Assert.Equal(64, hash.Length);
        Assert.Equal(hash, Reading.ReadText(Reading.Good.Replace("  ", "\t", StringComparison.Ordinal)).Hash);
        Assert.Equal(hash, Reading.ReadText(Reading.Good.Replace("// Comments and trailing commas are allowed.",
            "\"$schema\": \"scenario.schema.json\",", StringComparison.Ordinal)).Hash);
        Assert.NotEqual(hash, Reading.ReadText(Reading.Good.Replace("420 gal", "421 gal", StringComparison.Ordinal)).Hash);
    }

    [Fact]
    public void The_resolved_scenario_reads_back_as_the_same()
    {
        Scenario<SampleFarm> scenario = Reading.ReadText(Reading.Good);
        Assert.Equal(scenario.Hash, Reading.ReadText(scenario.Resolved.ToJson()).Hash);
    }

    [Fact]
    public void Reading_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        string path = folder.Write("farm.json", Reading.Good);
        Reading.Read(path);
        folder.Write("bad.json", "{ }");
        Assert.Throws<ScenarioException>(() => Reading.Read(Path.Combine(folder.Folder, "bad.json")));
        Assert.Equal(2, Directory.GetFileSystemEntries(folder.Folder).Length);
    }
}
