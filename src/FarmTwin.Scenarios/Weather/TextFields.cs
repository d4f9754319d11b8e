using System.Globalization;

namespace FarmTwin.Scenarios.Weather;

/// <summary>A line of a table: fields between separators, quotes after RFC 4180, and the column at which each field begins.</summary>
internal sealed class TextFields
{
    private readonly List<(string Text, int Column)> _fields = [];

    /// <summary>Takes a line apart.</summary>
    public TextFields(string line, int number, char separator = ',')
    {
        Line = number;
        int at = 0;
        while (at <= line.Length)
        {
            int start = at;
            if (at < line.Length && line[at] == '"')
            {
                int close = at + 1;
                while (close < line.Length && (line[close] != '"' || (close + 1 < line.Length && line[close + 1] == '"')))
                {
                    close += line[close] == '"' ? 2 : 1;
                }

                string quoted = line[(at + 1)..Math.Min(close, line.Length)].Replace("\"\"", "\"", StringComparison.Ordinal);
                _fields.Add((quoted.Trim(), start + 1));
                int next = line.IndexOf(separator, Math.Min(close, line.Length));
                at = next < 0 ? line.Length + 1 : next + 1;
            }
            else
            {
                int end = line.IndexOf(separator, at);
                end = end < 0 ? line.Length : end;
                _fields.Add((line[at..end].Trim(), start + 1));
                at = end + 1;
            }
        }
    }

    /// <summary>Line, from 1.</summary>
    public int Line { get; }

    /// <summary>Number of fields.</summary>
    public int Count => _fields.Count;

    /// <summary>A field without the blanks around it; empty where the line is shorter.</summary>
    public string this[int index] => index >= 0 && index < _fields.Count ? _fields[index].Text : string.Empty;

    /// <summary>Column, from 1, at which a field begins.</summary>
    public int ColumnOf(int index) => index >= 0 && index < _fields.Count ? _fields[index].Column : 1;

    /// <summary>The titles or fields in their order.</summary>
    public IEnumerable<string> All => _fields.Select(f => f.Text);

    /// <summary>A number with a decimal point.</summary>
    public bool TryNumber(int index, out double value) =>
        double.TryParse(this[index], NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    /// <summary>A whole number.</summary>
    public bool TryWhole(int index, out int value) =>
        int.TryParse(this[index], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out value);
}
