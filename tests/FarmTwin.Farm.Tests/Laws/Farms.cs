using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>The shipped scenarios, and seasons of them.</summary>
internal static class Farms
{
    private static readonly Lazy<FarmDescription> First = new(() => Read("first-season"));

    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Names of the shipped scenarios that stand by themselves: files that state or inherit a title.</summary>
    public static IReadOnlyList<string> Shipped { get; } =
        [.. Directory.EnumerateFiles(Path.Combine(Root, "scenarios"), "*.json")
            .Select(f => Path.GetFileNameWithoutExtension(f))
            .Where(n => !n.EndsWith(".schema", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)];

    /// <summary>The shipped first season.</summary>
    public static FarmDescription FirstSeason => First.Value;

    public static string PathOf(string scenario) => Path.Combine(Root, "scenarios", scenario + ".json");

    public static FarmDescription Read(string scenario) => ScenarioReader.Read<FarmDescription>(PathOf(scenario)).Value;

    /// <summary>A season at its start.</summary>
    public static Season Start(FarmDescription farm, double days, ulong seed = 1, double stepMinutes = 60) =>
        new(farm with { LengthDays = days, StepMinutes = stepMinutes }, ShippedLibrary.Library, seed);

    /// <summary>A season run to its end.</summary>
    public static Season Run(FarmDescription farm, double days, ulong seed = 1, double stepMinutes = 60)
    {
        Season season = Start(farm, days, seed, stepMinutes);
        season.AdvanceToEnd();
        return season;
    }

    /// <summary>A column of the days table.</summary>
    public static double[] Days(Season season, string column) => season.Record.Days.Column(season.Record.Days.ColumnIndex(column));

    /// <summary>A column of the hours table.</summary>
    public static double[] Hours(Season season, string column) => season.Record.Hours.Column(season.Record.Hours.ColumnIndex(column));

    /// <summary>A dictionary with one entry replaced.</summary>
    public static Dictionary<string, T> With<T>(this IReadOnlyDictionary<string, T> parts, string name, Func<T, T> change) =>
        parts.ToDictionary(p => p.Key, p => p.Key == name ? change(p.Value) : p.Value, StringComparer.Ordinal);

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
