using nietras.SeparatedValues;

namespace FarmTwin.Farm.Tests;

/// <summary>Reads a table under <c>Published/</c>: header lines that cite it, then comma separated rows.</summary>
internal sealed class PublishedTable
{
    private static readonly string[] RequiredHeadings = ["source", "locator", "unit", "basis", "tolerance"];

    private PublishedTable(IReadOnlyDictionary<string, string> citation, IReadOnlyList<IReadOnlyDictionary<string, string>> rows)
    {
        Citation = citation;
        Rows = rows;
    }

    public IReadOnlyDictionary<string, string> Citation { get; }

    public IReadOnlyList<IReadOnlyDictionary<string, string>> Rows { get; }

    /// <summary>Reads <c>Published/{name}.csv</c>; a table without its citation is refused.</summary>
    public static PublishedTable Read(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Published", name + ".csv"));
        var citation = lines.TakeWhile(l => l.StartsWith('#'))
            .Select(l => l[1..].Split(':', 2, StringSplitOptions.TrimEntries))
            .ToDictionary(p => p[0], p => p.Length > 1 ? p[1] : string.Empty, StringComparer.Ordinal);
        foreach (string heading in RequiredHeadings)
        {
            Assert.True(citation.ContainsKey(heading), $"{name}.csv does not state its {heading}.");
        }

        string body = string.Join('\n', lines.SkipWhile(l => l.StartsWith('#')));
        using SepReader reader = Sep.New(',').Reader(o => o with { Unescape = true }).FromText(body);
        var columns = reader.Header.ColNames.ToArray();
        var rows = new List<IReadOnlyDictionary<string, string>>();
        foreach (SepReader.Row row in reader)
        {
            var values = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (string column in columns)
            {
                values[column] = row[column].ToString();
            }

            rows.Add(values);
        }

        return new PublishedTable(citation, rows);
    }

    /// <summary>A number in a row.</summary>
    public static double Number(IReadOnlyDictionary<string, string> row, string column) =>
        double.Parse(row[column], System.Globalization.CultureInfo.InvariantCulture);
}
