using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FarmTwin.Scenarios.Schema;
using FarmTwin.Scenarios.Tests.Sample;
using FarmTwin.Scenarios.Units;

namespace FarmTwin.Scenarios.Tests.Schema;

public class SchemaTests
{
    private static JsonObject Schema => (JsonObject)JsonNode.Parse(SchemaWriter.Write(typeof(SampleFarm), Reading.Library))!;

    private static JsonNode At(string definition, string property) => Schema["$defs"]![definition]!["properties"]![property]!;

    [Fact]
    public void The_schema_is_the_same_text_each_time()
    {
        string text = SchemaWriter.Write(typeof(SampleFarm), Reading.Library);
        Assert.Equal(text, SchemaWriter.Write(typeof(SampleFarm), Reading.Library));
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Required_keys_kinds_words_and_library_names_stand_in_it()
    {
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", (string?)Schema["$schema"]);
        Assert.Equal(["name", "start", "basins"], Schema["$defs"]!["SampleFarm"]!["required"]!.AsArray().Select(n => (string?)n));
        Assert.Null(Schema["$defs"]!["SampleFarm.change"]!["required"]);
        Assert.False((bool)Schema["$defs"]!["SampleBasin"]!["additionalProperties"]!);
        Assert.Equal("stock", (string?)At("SampleStock", "do")["const"]);
        Assert.Equal(["basil", "kale", "lettuce"], At("SampleSow", "crop")["enum"]!.AsArray().Select(n => (string?)n));
        Assert.Equal(["glass", "double-film", "twin-wall-sheet"], At("SampleSite", "cover")["enum"]!.AsArray().Select(n => (string?)n));
        Assert.Equal(12, (int)At("SampleSite", "normals")["maxItems"]!);
        Assert.Equal("First temperature. Range: 0 to 45 °C. Default: 25 °C.", (string?)At("SampleBasin", "temperature")["description"]);
        Assert.Equal(2, At("SampleFarm", "plan")["additionalProperties"]!["oneOf"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("L", "420 gal;1.6 m3;1.6 m³;5 L;-5 mL", "420;5 m2;gal;5 galons")]
    [InlineData("kW", "5 kW;5 W;5 hp;17000 Btu/h;20 MJ/d", "5 kWh")]
    [InlineData("W/m2", "5 W/m2;8 MJ/m2/d;3 Btu/h/ft2", "5 W/m2K")]
    [InlineData("W/K", "5 W/K;9 Btu/h F;5 W/°C", "5 W")]
    [InlineData("°C", "77 °F;25 C;300 K", "25;25 L")]
    [InlineData("K", "9 °F;2 K", "2 L")]
    [InlineData("L/h", "5 L/h;5 gpm;5 gph;1 m3/day;2 L per min", "5 L;5 kg/h")]
    [InlineData("W/m2K", "6 W/m2K;6 W/m2 K;6 kW/m2K;1 Btu/h ft2 F", "6 W/m2")]
    [InlineData("mg N/L", "3 mg N/L;3 mg/L as N;3 ppm N;3 g N/m3", "3 mg/L;3 mg P/L")]
    [InlineData("mg/L as CaCO3", "60 mg/L as CaCO3;60 mg CaCO3/L;60 ppm as CaCO3;1 meq/L;3 dKH", "60 mg/L;1 meq/kg")]
    [InlineData("plants/m2", "25 plants/m2;2 plants/ft2;25 /m2", "25 kg/m2")]
    [InlineData("1/h", "0.5 1/h;0.5 /h;3 /week;0.5 ACH", "0.5;5 h")]
    [InlineData("money/L", "3.50 USD/gal;$3.50/gal;3 EUR/m3", "3.50 /kg")]
    [InlineData("money", "3.50 USD;$3", "3")]
    [InlineData("money/head", "3.50 USD/head;$3/heads", "3 USD")]
    [InlineData("1", "40 %", "40 L")]
    [InlineData("°", "40.1°;40 deg", "40 %")]
    [InlineData("µS/cm", "1.2 mS/cm;500 µS/cm;500 uS/cm", "5 cm")]
    [InlineData("g O2/g feed", "0.4 g O2/g feed;400 mg O2/g feed", "0.4 g/g;0.4 g O2/g")]
    public void The_pattern_of_a_unit_agrees_with_the_reader(string unit, string good, string bad)
    {
        string pattern = QuantityPattern.For(QuantityText.Target(unit));
        foreach (string text in good.Split(';'))
        {
            Assert.Matches(pattern, text);
            QuantityReading reading = QuantityText.Read(text, unit);
            Assert.True(reading.IsRead, $"{text}: {reading.Problem}");
        }

        foreach (string text in bad.Split(';'))
        {
            Assert.DoesNotMatch(pattern, text);
            Assert.False(QuantityText.Read(text, unit).IsRead, text);
        }
    }

    [Fact]
    public void Every_spelling_in_the_table_matches_the_pattern_of_its_own_unit_and_is_read()
    {
        foreach (string spelling in UnitTable.Spellings.Where(s => s != "1"))
        {
            Assert.Equal(5, QuantityText.Read("5 " + spelling, spelling).Value);
            Assert.Matches(QuantityPattern.For(QuantityText.Target(spelling)), "5 " + spelling);
        }
    }

    [Fact]
    public void The_explanation_lists_every_input()
    {
        IReadOnlyList<ExplainedInput> rows = Explanation.Of(typeof(SampleFarm));
        Assert.Contains(new ExplainedInput("basins.*.temperature", "First temperature.", "a temperature", "°C", "0 to 45 °C", "25 °C", false), rows);
        Assert.Contains(new ExplainedInput("plan.*(stock).at", "The time of day.", "a time of day", "", "", "08:00", false), rows);
        Assert.Contains(rows, r => r is { Path: "plan.*(stock).number", IsRequired: true, Range: "1 to 100000 fish" });
        Assert.Contains(rows, r => r is { Path: "plan.*(sow)", About: "Sows a crop." });
        Assert.Contains(rows, r => r is { Path: "prices.wage", Default: "18 money/h" });
        Assert.Contains(rows, r => r is { Path: "site.cover", Default: "double-film", Sort: "one of glass, double-film, twin-wall-sheet" });
    }
}
