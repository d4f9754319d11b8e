using System.Text;

namespace FarmTwin.Reports.Html;

/// <summary>A column of a table.</summary>
/// <param name="Name">What stands in it.</param>
/// <param name="Unit">Its unit, shown in the header; empty for none.</param>
/// <param name="IsNumber">Whether its cells are numbers, which stand to the right.</param>
public sealed record HtmlColumn(string Name, string Unit, bool IsNumber)
{
    /// <summary>A column of words.</summary>
    /// <param name="name">What stands in it.</param>
    public static HtmlColumn Words(string name) => new(name, string.Empty, false);

    /// <summary>A column of numbers.</summary>
    /// <param name="name">What stands in it.</param>
    /// <param name="unit">Unit of all its cells; empty for a count.</param>
    public static HtmlColumn Number(string name, string unit = "") => new(name, unit, true);
}

/// <summary>A table: a caption, headers with units, a row header in the first column of every row.</summary>
/// <param name="caption">What the table shows, in a phrase.</param>
/// <param name="columns">The columns; the first names the rows.</param>
public sealed class HtmlTable(string caption, params HtmlColumn[] columns)
{
    private const int MostRowsKeptTogether = 18;

    private readonly List<(Inline[] Cells, bool IsTotal)> _rows = [];

    /// <summary>Rows so far.</summary>
    public int RowCount => _rows.Count;

    /// <summary>Adds a row.</summary>
    /// <param name="cells">A cell for every column; the first one names the row.</param>
    /// <exception cref="ArgumentException">There are more or fewer cells than columns, or the row has no name.</exception>
    public HtmlTable Row(params Inline[] cells) => Add(cells, isTotal: false);

    /// <summary>Adds a row that sums up those above it.</summary>
    /// <param name="cells">A cell for every column.</param>
    /// <exception cref="ArgumentException">There are more or fewer cells than columns, or the row has no name.</exception>
    public HtmlTable Total(params Inline[] cells) => Add(cells, isTotal: true);

    internal void Write(StringBuilder text)
    {
        // A short table stays on one sheet; a wide one is reached and moved by the keyboard.
        text.Append(_rows.Count <= MostRowsKeptTogether ? "<div class=\"wide whole\" tabindex=\"0\">\n<table>" : "<div class=\"wide\" tabindex=\"0\">\n<table>").Append("\n<caption>").Append(Inline.Escape(caption)).Append("</caption>\n<thead><tr>");
        foreach (HtmlColumn column in columns)
        {
            text.Append("<th scope=\"col\"").Append(column.IsNumber ? " class=\"number\">" : ">").Append(Inline.Escape(column.Name));
            if (column.Unit.Length > 0)
            {
                text.Append(" <small>").Append(Inline.Escape(column.Unit)).Append("</small>");
            }

            text.Append("</th>");
        }

        text.Append("</tr></thead>\n<tbody>\n");
        foreach ((Inline[] cells, bool isTotal) in _rows)
        {
            text.Append(isTotal ? "<tr class=\"total\">" : "<tr>").Append("<th scope=\"row\">").Append(cells[0].Markup).Append("</th>");
            for (int c = 1; c < cells.Length; c++)
            {
                text.Append(columns[c].IsNumber ? "<td class=\"number\">" : "<td>").Append(cells[c].Markup).Append("</td>");
            }

            text.Append("</tr>\n");
        }

        text.Append("</tbody>\n</table>\n</div>\n");
    }

    private HtmlTable Add(Inline[] cells, bool isTotal)
    {
        ArgumentNullException.ThrowIfNull(cells);
        if (cells.Length != columns.Length)
        {
            throw new ArgumentException($"The table '{caption}' has {columns.Length} columns and the row {cells.Length} cells.", nameof(cells));
        }

        if (cells[0].IsEmpty)
        {
            throw new ArgumentException($"A row of the table '{caption}' has no name in its first cell: who hears the table could not tell which row it is.", nameof(cells));
        }

        _rows.Add((cells, isTotal));
        return this;
    }
}
