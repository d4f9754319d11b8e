using System.Text;

namespace FarmTwin.Reports.Html;

/// <summary>A section of a page: a heading and what follows it, in the order in which it is added. Every method but <see cref="Section"/> returns the section itself.</summary>
public sealed class HtmlSection
{
    private const int DeepestHeading = 4;

    private readonly int _level;
    private readonly string _title;
    private readonly bool _newPage;
    private readonly List<Action<StringBuilder>> _parts = [];
    private readonly List<HtmlSection> _inner = [];

    internal HtmlSection(int level, string title, string id, bool newPage)
    {
        (_level, _title, _newPage) = (level, title, newPage);
        Id = id;
    }

    /// <summary>Where a link within the page finds it, without the #.</summary>
    public string Id { get; }

    internal string Title => _title;

    internal bool IsEmpty => _parts.Count == _inner.Count && _inner.TrueForAll(s => s.IsEmpty);

    /// <summary>A paragraph; one without words is left out.</summary>
    /// <param name="text">Its text.</param>
    public HtmlSection Paragraph(Inline text) => text.IsEmpty ? this : Add($"<p>{text.Markup}</p>\n");

    /// <summary>A paragraph set larger: the sentence that a reader in a hurry must not miss.</summary>
    /// <param name="text">Its text.</param>
    public HtmlSection Lead(Inline text) => text.IsEmpty ? this : Add($"<p class=\"lead\">{text.Markup}</p>\n");

    /// <summary>A boxed note with a heading word of its own: a warning, a caution, what to do first.</summary>
    /// <param name="heading">The word or two that it begins with.</param>
    /// <param name="texts">A paragraph each.</param>
    public HtmlSection Note(string heading, params Inline[] texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        Inline first = Inline.Strong(heading) + " " + (texts.Length > 0 ? texts[0] : Inline.Empty);
        return Add("<div class=\"note\">\n" + string.Concat(texts.Skip(1).Prepend(first).Select(t => $"<p>{t.Markup}</p>\n")) + "</div>\n");
    }

    /// <summary>A list; an empty one is left out.</summary>
    /// <param name="items">Its items.</param>
    public HtmlSection List(IEnumerable<Inline> items) => Items("ul", string.Empty, items);

    /// <summary>A list of texts; an empty one is left out.</summary>
    /// <param name="items">Its items.</param>
    public HtmlSection List(IEnumerable<string> items) => List(items.Select(Inline.Text));

    /// <summary>Numbered steps; none are left out.</summary>
    /// <param name="items">The steps in their order.</param>
    public HtmlSection Steps(IEnumerable<Inline> items) => Items("ol", string.Empty, items);

    /// <summary>A list with boxes to tick on paper.</summary>
    /// <param name="items">What is to be done.</param>
    public HtmlSection Ticks(IEnumerable<Inline> items) => Items("ul", " class=\"ticks\"", items);

    /// <summary>Terms with what belongs to them, in two columns; none are left out.</summary>
    /// <param name="rows">Term and value.</param>
    public HtmlSection Definitions(IEnumerable<(string Term, Inline Value)> rows)
    {
        string inner = string.Concat(rows.Select(r => $"<dt>{Inline.Escape(r.Term)}</dt><dd>{r.Value.Markup}</dd>\n"));
        return inner.Length == 0 ? this : Add($"<dl>\n{inner}</dl>\n");
    }

    /// <summary>A table; one without rows is left out.</summary>
    /// <param name="table">The table.</param>
    public HtmlSection Table(HtmlTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (table.RowCount > 0)
        {
            _parts.Add(table.Write);
        }

        return this;
    }

    /// <summary>A figure.</summary>
    /// <param name="figure">The figure.</param>
    public HtmlSection Figure(HtmlFigure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        _parts.Add(figure.Write);
        return this;
    }

    /// <summary>A section within this one, its heading one level lower.</summary>
    /// <param name="title">Its heading.</param>
    /// <exception cref="InvalidOperationException">The heading would be the fifth level: nobody reads so deep.</exception>
    public HtmlSection Section(string title)
    {
        if (_level >= DeepestHeading)
        {
            throw new InvalidOperationException($"The section '{title}' would be of level {_level + 1}; the lowest is {DeepestHeading}.");
        }

        var inner = new HtmlSection(_level + 1, title, $"{Id}-part-{_inner.Count + 1}", newPage: false);
        _inner.Add(inner);
        _parts.Add(inner.Write);
        return inner;
    }

    internal void Write(StringBuilder text)
    {
        if (IsEmpty)
        {
            return;
        }

        text.Append($"<section aria-labelledby=\"{Id}\"").Append(_newPage ? " class=\"new-page\">\n" : ">\n")
            .Append($"<h{_level} id=\"{Id}\">{Inline.Escape(_title)}</h{_level}>\n");
        foreach (Action<StringBuilder> part in _parts)
        {
            part(text);
        }

        text.Append("</section>\n");
    }

    private HtmlSection Items(string tag, string attributes, IEnumerable<Inline> items)
    {
        string inner = string.Concat(items.Where(i => !i.IsEmpty).Select(i => $"<li>{i.Markup}</li>\n"));
        return inner.Length == 0 ? this : Add($"<{tag}{attributes}>\n{inner}</{tag}>\n");
    }

    private HtmlSection Add(string markup)
    {
        _parts.Add(text => text.Append(markup));
        return this;
    }
}
