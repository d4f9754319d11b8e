using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Scenarios.Tests.Shipped;

/// <summary>The scenario files that ship with the program.</summary>
internal static class ShippedScenarios
{
    public static string Folder { get; } = Path.Combine(FindRoot(), "scenarios");

    public static string SchemaPath { get; } = Path.Combine(Folder, "scenario.schema.json");

    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateFiles(Folder, "*.json").Select(f => Path.GetFileName(f)).Where(n => !n.EndsWith(".schema.json", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    public static string PathOf(string name) => Path.Combine(Folder, name);

    public static Scenario<FarmDescription> Read(string path) => ScenarioReader.Read<FarmDescription>(path);

    /// <summary>Runs a farm some days; everything in its water must be a number and not negative.</summary>
    public static void RunSanely(FarmDescription farm, double days)
    {
        var season = new Season(farm with { LengthDays = days }, ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        Basins basins = season.State.Basins;
        for (int i = 0; i < basins.Grams.Length; i++)
        {
            Assert.True(basins.Grams[i] >= 0 && double.IsFinite(basins.Grams[i]), $"{season.Parts.BasinNames[i / Substance.Columns]} holds {basins.Grams[i]} g of substance {i % Substance.Columns}");
        }

        for (int b = 0; b < basins.Count; b++)
        {
            Assert.True(double.IsFinite(basins.Celsius[b]) && double.IsFinite(basins.PH[b]) && basins.Litres[b] >= 0, season.Parts.BasinNames[b]);
        }
    }

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "FarmTwin.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("No folder above the tests holds FarmTwin.sln.");
    }
}
