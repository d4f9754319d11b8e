using FarmTwin.Scenarios.Tests.Sample;

namespace FarmTwin.Scenarios.Tests.Binding;

public class ErrorTests
{
    /// <summary>What is replaced in the good scenario; where the error must stand (a fragment of the new text); path; words; suggestion.</summary>
    public static TheoryData<string, string, string, string, string, string?> Faults => new()
    {
        { "\"nitrate\":", "\"nitrte\":", "\"nitrte\"", "basins.tank.nitrte", "is not a known key", "nitrate" },
        { "\"decoupled\":", "\"zzz\":", "\"zzz\"", "zzz", "is not a known key", null },
        { "\"deadband\": \"9 °F\"", "\"volume\": \"9 L\"", "\"volume\": \"9 L\"", "basins.tank.volume", "written twice, first in line 12", null },
        { "\"name\": \"Sample\",", "", "{", "", "\"name\" is missing", null },
        { "{ \"volume\": \"1.6 m3\", ", "{ ", "{ \"surface\": \"20 ft2\"", "basins.sump", "\"volume\" is missing", null },
        { "\"420 gal\"", "\"420 m2\"", "\"420 m2\"", "basins.tank.volume", "an area, not a volume", null },
        { "\"420 gal\"", "\"420 gla\"", "\"420 gla\"", "basins.tank.volume", "no known unit", "420 gal" },
        { "\"420 gal\"", "420", "420", "basins.tank.volume", "the number 420 has no unit", "420 L" },
        { "\"420 gal\"", "true", "true", "basins.tank.volume", "true or false stands here", null },
        { "\"420 gal\"", "null", "null", "basins.tank.volume", "nothing to remove", null },
        { "\"420 gal\"", "\"0.1 L\"", "\"0.1 L\"", "basins.tank.volume", "out of range", null },
        { "\"77 °F\"", "\"212 °F\"", "\"212 °F\"", "basins.tank.temperature", "out of range", null },
        { "\"drainsTo\": \"sump\"", "\"drainsTo\": \"smup\"", "\"smup\"", "basins.tank.drainsTo", "there is no \"smup\" under basins", "sump" },
        { "[\"tank\", \"sump\"]", "[\"tank\", \"sumps\"]", "\"sumps\"", "basins.sump.feeds[1]", "there is no \"sumps\"", "sump" },
        { "\"nile-tilapia\"", "\"nile tilapia\"", "\"nile tilapia\"", "plan.fish.species", "the library has no", "nile-tilapia" },
        { "\"lettuce\": \"60 %\"", "\"letuce\": \"60 %\"", "\"letuce\": \"60", "shares.letuce", "the library has no \"letuce\"", "lettuce" },
        { "\"do\": \"stock\"", "\"do\": \"stok\"", "\"stok\"", "plan.fish.do", "\"stok\" is not a known kind", "stock" },
        { "\"do\": \"stock\", ", "", "{ \"on\": \"2027-04-05\"", "plan.fish", "\"do\" is missing", null },
        { "\"do\": \"stock\"", "\"do\": 3", "3, \"on\"", "plan.fish.do", "a bare number stands here", null },
        { "\"twin-wall-sheet\"", "\"twin-wall\"", "\"twin-wall\"", "site.cover", "not a known word", "twin-wall-sheet" },
        { "\"2027-03-01\"", "\"1 March 2027\"", "\"1 March 2027\"", "start", "is no date", null },
        { "\"2027-03-01\"", "\"2027-02-30\"", "\"2027-02-30\"", "start", "is no date", null },
        { "\"06:30\"", "\"6.30 am\"", "\"6.30 am\"", "plan.fish.at", "is no time of day", null },
        { "\"number\": 120", "\"number\": 12.5", "12.5", "plan.fish.number", "not a whole number", null },
        { "\"number\": 120", "\"number\": 1e999", "1e999", "plan.fish.number", "out of range", null },
        { "\"every\": \"1 week\"", "\"every\": \"36 h\"", "\"36 h\"", "plan.lettuce.every", "not a whole number", null },
        { "\"decoupled\": false", "\"decoupled\": \"no\"", "\"no\"", "decoupled", "a text stands here", null },
        { "\"notes\": [\"first\", \"second\"]", "\"notes\": \"first\"", "\"first\"", "notes", "a text stands here", null },
        { "[\"first\", \"second\"]", "[\"first\", 2]", "2],", "notes[1]", "a bare number stands here", null },
        { "\"-1 °C\", ", "", "[\"0 °C\"", "site.normals", "the list has 11 entries", null },
        { "\"-1 °C\"", "\"-99 °C\"", "\"-99 °C\"", "site.normals[0]", "out of range", null },
        { "\"0.005 USD/gal\"", "\"0.005 USD/gal\", \"wage\": \"20 EUR/h\"", "\"20 EUR/h\"", "prices.wage", "two currencies", null },
        { "\"water\": \"0.005 USD/gal\"", "", "{  }", "prices", "\"water\" is missing", null },
        { "\"basins\": {", "\"basins\": { \"\": { \"volume\": \"1 L\" },", "\"\":", "basins[\"\"]", "empty name", null },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_is_reported_at_its_place(string before, string after, string place, string path, string words, string? suggestion)
    {
        Assert.Contains(before, Reading.Good, StringComparison.Ordinal);
        int at = Reading.Good.IndexOf(before, StringComparison.Ordinal);
        string text = string.Concat(Reading.Good.AsSpan(0, at), after, Reading.Good.AsSpan(at + before.Length));
        ScenarioError error = Assert.Single(Reading.Errors(text));

        // The fragment is sought where the change was made, or from the start for an object that lacks something.
        int sought = text.IndexOf(place, place == "{" ? 0 : Math.Max(0, at - 2), StringComparison.Ordinal);
        (int line, int column) = Reading.PlaceOf(text, text[sought..]);
        Assert.Equal(("farm.json", line, column), (error.File, error.Line, error.Column));
        Assert.Equal(path, error.Path);
        Assert.Contains(words, error.Problem, StringComparison.Ordinal);
        Assert.Equal(suggestion, error.Suggestion);
    }

    [Fact]
    public void All_errors_come_at_once_in_the_order_of_the_file()
    {
        const string Text = """
            {
              "nmae": "x",
              "start": "soon",
              "basins": {
                "a": { "volume": 5, "surface": "3 gal" },
                "b": { "volume": "5 L", "drainsTo": "c", "drainsTo": "a" }
              },
              "plan": { "x": { "do": "sow", "on": "2027-01-01", "crop": "basel", "density": "3 plants/m" } }
            }
            """;
        IReadOnlyList<ScenarioError> errors = Reading.Errors(Text);
        Assert.Equal(
            [
                (2, 3, "nmae", "name"), (3, 12, "start", null), (5, 22, "basins.a.volume", "5 L"), (5, 36, "basins.a.surface", null),
                (6, 41, "basins.b.drainsTo", "a"), (6, 46, "basins.b.drainsTo", null), (8, 61, "plan.x.crop", "basil"),
                (8, 81, "plan.x.density", null),
            ],
            errors.Select(e => (e.Line, e.Column, e.Path, e.Suggestion)));
    }

    [Fact]
    public void An_error_reads_as_one_line()
    {
        string text = Reading.Good.Replace("\"nitrate\"", "\"nitrte\"", StringComparison.Ordinal);
        Assert.Equal("farm.json:15:7: basins.tank.nitrte: \"nitrte\" is not a known key. Expected one of deadband, drainsTo, feeds, "
            + "nitrate, surface, temperature, volume. Did you mean \"nitrate\"?", Reading.Errors(text)[0].ToString());
    }

    [Fact]
    public void An_error_of_units_names_the_units_that_are_allowed()
    {
        string text = Reading.Good.Replace("\"420 gal\"", "420", StringComparison.Ordinal);
        Assert.Equal("a volume as text with a unit: \"L\", \"m3\", \"gal\", \"ft3\"", Reading.Errors(text)[0].Expected);
    }

    [Fact]
    public void A_range_is_stated_in_the_unit_of_the_property()
    {
        string text = Reading.Good.Replace("77 °F", "212 °F", StringComparison.Ordinal);
        Assert.Equal("0 to 45 °C", Reading.Errors(text)[0].Expected);
    }

    [Fact]
    public void A_later_check_finds_the_place_of_a_path()
    {
        ScenarioError error = Reading.ReadText(Reading.Good).Resolved.ErrorAt("basins.tank.volume", "is too small for its fish");
        Assert.Equal(12, error.Line);
        Assert.Equal(10, Reading.ReadText(Reading.Good).Resolved.ErrorAt("basins.other", "is not there").Line);
    }
}
