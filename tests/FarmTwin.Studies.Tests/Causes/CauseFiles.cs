namespace FarmTwin.Studies.Tests.Causes;

/// <summary>The causes that ship with the program.</summary>
internal static class CauseFiles
{
    public static string Root => ShippedScenarios.Root;

    public static string Folder { get; } = Path.Combine(Root, "scenarios", "causes");

    /// <summary>File names of the causes: those that begin with the number of their chain.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateFiles(Folder, "*.json").Select(f => Path.GetFileName(f)).Where(n => char.IsDigit(n[0])).Order(StringComparer.Ordinal)];

    public static string PathOf(string name) => Path.Combine(Folder, name);
}
