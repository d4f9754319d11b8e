using FarmTwin.Scenarios.Json;
using FarmTwin.Scenarios.Tests.Sample;

namespace FarmTwin.Scenarios.Tests.Json;

public class ExtendsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public ExtendsTests() => _folder.Write("first.json", Reading.Good);

    public void Dispose()
    {
        _folder.Dispose();
        GC.SuppressFinalize(this);
    }

    private Scenario<SampleFarm> Read(string text) => Reading.Read(_folder.Write("second.json", text));

    private ScenarioError Error(string text) => Assert.Single(Assert.Throws<ScenarioException>(() => Read(text)).Errors);

    [Fact]
    public void Objects_merge_and_values_replace()
    {
        SampleFarm farm = Read("""{ "extends": "first.json", "name": "Second", "basins": { "tank": { "volume": "500 gal" }, "extra": { "volume": "9 L" } }, "notes": ["only"] }""").Value;
        Assert.Equal("Second", farm.Name);
        Assert.Equal(500 * 3.785411784, farm.Basins["tank"].VolumeLitres, 1e-9);
        Assert.Equal(3, farm.Basins["tank"].NitrateMilligramsNPerLitre);
        Assert.Equal(["tank", "sump", "extra"], farm.Basins.Keys);
        Assert.Equal(["only"], farm.Notes);
        Assert.Equal(2, farm.Plan.Count);
    }

    [Fact]
    public void Null_removes()
    {
        SampleFarm farm = Read("""{ "extends": "first.json", "plan": { "fish": null }, "basins": { "tank": { "deadband": null } } }""").Value;
        Assert.Equal(["lettuce"], farm.Plan.Keys);
        Assert.Null(farm.Basins["tank"].DeadbandKelvin);
    }

    [Fact]
    public void What_null_removed_cannot_be_referred_to()
    {
        ScenarioError error = Error("""{ "extends": "first.json", "basins": { "sump": null } }""");
        Assert.Equal(("first.json", "basins.tank.drainsTo"), (Path.GetFileName(error.File), error.Path));
    }

    [Fact]
    public void Null_that_removes_nothing_is_refused()
    {
        ScenarioError error = Error("""{ "extends": "first.json", "plan": { "fisch": null } }""");
        Assert.Equal((1, 38, "fish"), (error.Line, error.Column, error.Suggestion));
    }

    [Fact]
    public void An_item_of_another_kind_replaces_whole()
    {
        SampleFarm farm = Read("""{ "extends": "first.json", "plan": { "fish": { "do": "sow", "on": "2027-05-01", "crop": "kale" } } }""").Value;
        Assert.Equal(["fish", "lettuce"], farm.Plan.Keys);
        Assert.Equal("kale", Assert.IsType<SampleSow>(farm.Plan["fish"]).Crop);
        Assert.Equal(121, Assert.IsType<SampleStock>(Read("""{ "extends": "first.json", "plan": { "fish": { "do": "stock", "number": 121 } } }""").Value.Plan["fish"]).Number);
    }

    [Fact]
    public void A_chain_is_followed_and_every_value_keeps_its_origin()
    {
        _folder.Write("deeper/third.json", """{ "extends": "../second.json", "basins": { "tank": { "nitrate": "7 mg N/L" } } }""");
        _folder.Write("second.json", "{ \"extends\": \"first.json\",\n \"name\": \"Second\" }");
        Scenario<SampleFarm> scenario = Reading.Read(Path.Combine(_folder.Folder, "deeper", "third.json"));
        Assert.Equal(["third.json", "second.json", "first.json"], scenario.Files.Select(f => Path.GetFileName(f)));
        Assert.Equal(7, scenario.Value.Basins["tank"].NitrateMilligramsNPerLitre);
        string[] lines = [.. scenario.Resolved.Describe()];
        Assert.Contains(lines, l => l.StartsWith("name = \"Second\"", StringComparison.Ordinal) && l.EndsWith("second.json:2)", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("basins.tank.nitrate = \"7 mg N/L\"", StringComparison.Ordinal) && l.EndsWith("third.json:1)", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("basins.tank.volume = \"420 gal\"", StringComparison.Ordinal) && l.EndsWith("first.json:12)", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("site.normals = [\"-1 °C\",", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_changes_nothing_has_the_hash_of_its_parent() =>
        Assert.Equal(Reading.ReadText(Reading.Good).Hash, Read("""{ "extends": "first.json" }""").Hash);

    [Fact]
    public void A_circle_is_refused_with_its_chain()
    {
        _folder.Write("a.json", """{ "extends": "b.json" }""");
        _folder.Write("b.json", "{\n  \"extends\": \"c.json\" }");
        string c = _folder.Write("c.json", "{\n\n  \"extends\": \"b.json\" }");
        ScenarioError error = Assert.Single(Assert.Throws<ScenarioException>(
            () => Reading.Read(Path.Combine(_folder.Folder, "a.json"))).Errors);
        Assert.Equal((c, 3, 14), (error.File, error.Line, error.Column));
        Assert.Equal("the files extend each other in a circle: b.json → c.json → b.json",
            error.Problem.Replace(_folder.Folder + Path.DirectorySeparatorChar, string.Empty, StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_parent_is_refused_where_it_is_named()
    {
        ScenarioError error = Error("{\n  \"extends\": \"frist.json\" }");
        Assert.Equal((2, 14, "first.json"), (error.Line, error.Column, error.Suggestion));
        Assert.Equal(14, Error("{\n  \"extends\": 3 }").Column);
        Assert.Equal(14, Error("{\n  \"extends\": \"\" }").Column);
    }

    [Fact]
    public void An_error_in_the_parent_is_reported_there_beside_those_of_the_child()
    {
        _folder.Write("first.json", Reading.Good.Replace("\"3 mg N/L\"", "\"3 gal\"", StringComparison.Ordinal));
        ScenarioException refused = Assert.Throws<ScenarioException>(() => Read("""{ "extends": "first.json", "nam": 3 }"""));
        Assert.Equal([("second.json", 1), ("first.json", 15)], refused.Errors.Select(e => (Path.GetFileName(e.File), e.Line)));
    }

    [Fact]
    public void A_resolved_scenario_finds_a_value_by_its_path()
    {
        ResolvedScenario resolved = ScenarioReader.Resolve(_folder.Write("second.json", """{ "extends": "first.json" }"""));
        Assert.Equal("420 gal", Assert.IsType<TreeText>(resolved.Find("basins.tank.volume")).Value);
        Assert.Equal("second", Assert.IsType<TreeText>(resolved.Find("notes[1]")).Value);
        Assert.Null(resolved.Find("basins.none"));
    }
}
