using System.Globalization;

namespace FarmTwin.Engine.Tests;

/// <summary>Reads a table under <c>Published/</c>: header lines that cite it, then comma separated rows without quoting.</summary>
internal sealed class PublishedTable
{
    public const string Queueing = "queueing-steady-state";
    public const string ClosedForms = "closed-forms";
    public const string SwitchedAndCrossing = "switched-and-crossing";
    public const string Philox = "philox-known-answers";
    public const string Fnv = "fnv-1a-known-answers";

    /// <summary>Every table: a test holds the folder to this list.</summary>
    public static readonly string[] Names = [ClosedForms, Fnv, Philox, Queueing, SwitchedAndCrossing];

    private static readonly string[] RequiredHeadings = ["source", "locator", "unit", "basis", "tolerance"];

    private PublishedTable(IReadOnlyList<IReadOnlyDictionary<string, string>> rows) => Rows = rows;

    public IReadOnlyList<IReadOnlyDictionary<string, string>> Rows { get; }

    public static string Folder => Path.Combine(AppContext.BaseDirectory, "Published");

    /// <summary>Reads <c>Published/{name}.csv</c>; a table without its citation, or with a ragged row, is refused.</summary>
    public static PublishedTable Read(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Folder, name + ".csv"));
        string[] stated = [.. lines.TakeWhile(l => l.StartsWith('#')).Select(l => l[1..].Split(':', 2)[0].Trim())];
        foreach (string heading in RequiredHeadings)
        {
            Assert.True(stated.Contains(heading), $"{name}.csv does not state its {heading}.");
        }

        string[] body = [.. lines.Skip(stated.Length).Where(l => l.Length > 0)];
        string[] columns = body[0].Split(',');
        var rows = new List<IReadOnlyDictionary<string, string>>();
        foreach (string line in body.Skip(1))
        {
            string[] cells = line.Split(',');
            Assert.True(cells.Length == columns.Length, $"{name}.csv: '{line}' has not {columns.Length} cells.");
            rows.Add(columns.Zip(cells).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal));
        }

        return new PublishedTable(rows);
    }

    public static double Number(IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], CultureInfo.InvariantCulture);

    public static uint Word(IReadOnlyDictionary<string, string> row, string column) =>
        uint.Parse(row[column], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
