namespace FarmTwin.Scenarios.Tests;

/// <summary>Reads a table under <c>Published/</c>: header lines that cite it, then comma separated rows without quotes.</summary>
internal static class PublishedRows
{
    private static readonly string[] RequiredHeadings = ["source", "locator", "unit", "basis", "tolerance"];

    public static IReadOnlyList<string[]> Read(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Published", name + ".csv"));
        foreach (string heading in RequiredHeadings)
        {
            Assert.Contains(lines, l => l.StartsWith($"# {heading}:", StringComparison.Ordinal));
        }

        return [.. lines.Where(l => !l.StartsWith('#')).Skip(1).Select(l => l.Split(',', StringSplitOptions.TrimEntries))];
    }
}
