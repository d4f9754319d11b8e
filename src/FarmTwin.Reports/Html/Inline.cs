using System.Text;

namespace FarmTwin.Reports.Html;

/// <summary>Text inside a paragraph, a list item or a cell: always escaped, with weight and links where they are wanted.</summary>
/// <remarks>
/// A plain string becomes one by itself; pieces are joined with +:
/// <c>section.Paragraph("The filter is cycled on " + Inline.Strong("day 19") + ".")</c>.
/// </remarks>
public readonly record struct Inline
{
    private readonly string? _markup;

    private Inline(string markup) => _markup = markup;

    /// <summary>Nothing: an empty cell.</summary>
    public static Inline Empty => default;

    /// <summary>Whether nothing would be shown.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(_markup);

    /// <summary>The text as HTML.</summary>
    internal string Markup => _markup ?? string.Empty;

    /// <summary>Plain text.</summary>
    /// <param name="text">The text; what HTML would take for markup is escaped.</param>
    public static implicit operator Inline(string text) => Text(text);

    /// <summary>Two pieces, one after the other.</summary>
    public static Inline operator +(Inline left, Inline right) => new(left.Markup + right.Markup);

    /// <summary>Plain text.</summary>
    /// <param name="text">The text.</param>
    public static Inline Text(string text) => new(Escape(text));

    /// <summary>Text that matters more than what stands around it.</summary>
    /// <param name="text">The text.</param>
    public static Inline Strong(string text) => new($"<strong>{Escape(text)}</strong>");

    /// <summary>Text beside the point, set smaller: a unit, a source.</summary>
    /// <param name="text">The text.</param>
    public static Inline Small(string text) => new($"<small>{Escape(text)}</small>");

    /// <summary>A link to a file beside the page, or to a place in it.</summary>
    /// <param name="text">What is read.</param>
    /// <param name="target">A file relative to the page (<c>days.csv</c>) or a place (<c>#network</c>).</param>
    /// <exception cref="ArgumentException">The target lies elsewhere: a page must be whole without a network.</exception>
    public static Inline Link(string text, string target)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(target);
        if (target.Contains(':', StringComparison.Ordinal) || target.StartsWith('/'))
        {
            throw new ArgumentException($"The link '{target}' leaves the folder of the page; name a file beside it, or cite the source as text.", nameof(target));
        }

        return new Inline($"<a href=\"{Escape(target)}\">{Escape(text)}</a>");
    }

    /// <summary>Pieces with something between them.</summary>
    /// <param name="between">Stands between two pieces.</param>
    /// <param name="pieces">The pieces.</param>
    public static Inline Join(string between, IEnumerable<Inline> pieces)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        return new Inline(string.Join(Escape(between), pieces.Select(p => p.Markup)));
    }

    /// <summary>Text as it may stand in HTML, between tags or in a quoted attribute.</summary>
    /// <param name="text">The text.</param>
    public static string Escape(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.AsSpan().IndexOfAny("&<>\"") < 0)
        {
            return text;
        }

        var escaped = new StringBuilder(text.Length + 16);
        foreach (char c in text)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }
}
