using FarmTwin.Engine;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
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

    /// <summary>Runs a farm some days; its water, its record, its events and its summary must hold numbers where numbers are due.</summary>
    /// <returns>The columns of the days that hold no number on some day.</returns>
    public static IReadOnlyList<string> RunSanely(FarmDescription farm, double days)
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

        Assert.All(season.Log.Events, e => Assert.True(double.IsFinite(e.Amount) && IsSaid(e.Note), e.ToString()));
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        Assert.All(summary.Ledgers, l => Assert.True(Math.Abs(l.Value.Closure) < 1e-9, $"the ledger of {l.Key} closes to {l.Value.Closure}"));
        Assert.All(summary.Findings, f => Assert.True(IsSaid(f), f));
        Recorder record = season.Record.Days;
        Assert.All(Enumerable.Range(0, record.Columns.Length), c => Assert.DoesNotContain(record.Column(c), double.IsInfinity));
        return [.. Enumerable.Range(0, record.Columns.Length).Where(c => record.Column(c).Any(double.IsNaN)).Select(c => record.Columns[c].Name)];
    }

    private static bool IsSaid(string sentence) =>
        !sentence.Contains("NaN", StringComparison.Ordinal) && !sentence.Contains('∞') && !sentence.Contains("Infinity", StringComparison.Ordinal);

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
