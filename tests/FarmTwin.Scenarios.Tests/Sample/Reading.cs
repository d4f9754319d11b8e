namespace FarmTwin.Scenarios.Tests.Sample;

/// <summary>Reads sample scenarios against a library with a few known names.</summary>
internal static class Reading
{
    /// <summary>A scenario without a fault that uses every kind of property.</summary>
    public const string Good = """
        {
          // Comments and trailing commas are allowed.
          "name": "Sample",
          "start": "2027-03-01",
          "site": {
            "latitude": "40.1°",
            "normals": ["-1 °C", "0 °C", "5 °C", "11 °C", "17 °C", "22 °C", "24 °C", "75 °F", "20 °C", "13 °C", "7 °C", "1 °C"],
            "cover": "twin-wall-sheet"
          },
          "basins": {
            "tank": {
              "volume": "420 gal",
              "temperature": "77 °F",
              "deadband": "9 °F",
              "nitrate": "3 mg N/L",
              "drainsTo": "sump"
            },
            "sump": { "volume": "1.6 m3", "surface": "20 ft2", "feeds": ["tank", "sump"] }
          },
          "plan": {
            "fish": { "do": "stock", "on": "2027-04-05", "at": "06:30", "basin": "tank", "species": "nile-tilapia", "number": 120, "weight": "1 oz" },
            "lettuce": { "do": "sow", "on": "2027-03-20", "crop": "lettuce", "density": "25 plants/m2", "every": "1 week" }
          },
          "prices": { "water": "0.005 USD/gal" },
          "shares": { "lettuce": "60 %", "basil": 0.4 },
          "notes": ["first", "second"],
          "decoupled": false,
        }
        """;

    public static IReadOnlyList<string> Library(string folder) => folder switch
    {
        "fish" => ["blue-tilapia", "nile-tilapia", "rainbow-trout"],
        "crops" => ["basil", "kale", "lettuce"],
        _ => [],
    };

    public static Scenario<SampleFarm> Read(string path) => ScenarioReader.Read<SampleFarm>(path, Library);

    public static Scenario<SampleFarm> ReadText(string text)
    {
        using var folder = new TemporaryFolder();
        return Read(folder.Write("farm.json", text));
    }

    /// <summary>The errors of a text; the file's name is shortened to its last part.</summary>
    public static IReadOnlyList<ScenarioError> Errors(string text)
    {
        ScenarioException refused = Assert.Throws<ScenarioException>(() => ReadText(text));
        return [.. refused.Errors.Select(e => e with { File = Path.GetFileName(e.File) })];
    }

    /// <summary>The place of a fragment in a text, as an editor shows it.</summary>
    public static (int Line, int Column) PlaceOf(string text, string fragment)
    {
        int at = text.IndexOf(fragment, StringComparison.Ordinal);
        Assert.True(at >= 0, $"The text has no {fragment}.");
        return (text[..at].Count(c => c == '\n') + 1, at - (text.LastIndexOf('\n', Math.Max(at - 1, 0)) + 1) + 1);
    }
}
