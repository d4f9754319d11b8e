using System.Text;
using System.Text.RegularExpressions;

namespace FarmTwin.Reports.Html;

/// <summary>
/// A page: one HTML file without script, font or picture from elsewhere, that opens offline, prints on A4 and Letter and can be heard
/// as well as seen.
/// </summary>
/// <remarks>
/// <code>
/// var page = new HtmlPage("Two plans side by side", "365 days from 1 March 2027");
/// page.Section("In short").Lead("Three batches sell fish from day 150 on, one batch only on day 171.");
/// var table = new HtmlTable("What the plans bring", HtmlColumn.Words("plan"), HtmlColumn.Number("fish sold", "kg"));
/// table.Row("three batches", "74").Row("one batch", "61");
/// page.Section("Yield").Table(table).Figure(HtmlFigure.Of(figure));
/// File.WriteAllText("comparison.html", page.ToString());
/// </code>
/// Sections without content are left out with their heading. The same content gives the same bytes.
/// </remarks>
/// <param name="title">What the page is about: its first heading, and the title of the window.</param>
/// <param name="subtitle">Farm, period, purpose, in a phrase; may be empty.</param>
public sealed partial class HtmlPage(string title, string subtitle = "")
{
    private readonly List<HtmlSection> _sections = [];
    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);
    private readonly List<Inline> _footer = [];

    /// <summary>Whether links to the sections stand below the title; worth it from about five sections on.</summary>
    public bool HasContents { get; init; }

    /// <summary>Adds a section.</summary>
    /// <param name="heading">Its heading.</param>
    /// <param name="newPage">Whether it begins a new sheet in print.</param>
    public HtmlSection Section(string heading, bool newPage = false)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(heading);
        string words = NotAWord().Replace(heading.ToLowerInvariant(), "-").Trim('-');
        string id = words.Length == 0 || !char.IsAsciiLetter(words[0]) ? $"section-{words}".TrimEnd('-') : words;
        for (int again = 2; !_ids.Add(id); again++)
        {
            id = $"{words}-{again}";
        }

        var section = new HtmlSection(2, heading, id, newPage);
        _sections.Add(section);
        return section;
    }

    /// <summary>Adds a line at the foot of the page.</summary>
    /// <param name="text">Its text.</param>
    public HtmlPage Footer(Inline text)
    {
        _footer.Add(text);
        return this;
    }

    /// <summary>The page.</summary>
    /// <exception cref="InvalidOperationException">Two parts of the page have the same id: two figures of one name, most likely.</exception>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
            .Append($"<title>{Inline.Escape(title)}</title>\n<style>\n{PageStyle.Text}</style>\n</head>\n<body>\n<header>\n<h1>{Inline.Escape(title)}</h1>\n");
        if (subtitle.Length > 0)
        {
            text.Append($"<p class=\"subtitle\">{Inline.Escape(subtitle)}</p>\n");
        }

        text.Append("</header>\n");
        HtmlSection[] shown = [.. _sections.Where(s => !s.IsEmpty)];
        if (HasContents)
        {
            text.Append("<nav aria-label=\"Contents\">\n<ul>\n");
            foreach (HtmlSection section in shown)
            {
                text.Append($"<li>{Inline.Link(section.Title, "#" + section.Id).Markup}</li>\n");
            }

            text.Append("</ul>\n</nav>\n");
        }

        text.Append("<main>\n");
        foreach (HtmlSection section in shown)
        {
            section.Write(text);
        }

        text.Append("</main>\n");
        if (_footer.Count > 0)
        {
            text.Append("<footer>\n").AppendJoin('\n', _footer.Select(f => $"<p>{f.Markup}</p>")).Append("\n</footer>\n");
        }

        string page = text.Append("</body>\n</html>\n").ToString();
        RefuseTwins(page);
        return page;
    }

    private void RefuseTwins(string page)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (Match match in Identifier().Matches(page))
        {
            if (!seen.Add(match.Groups[1].Value))
            {
                throw new InvalidOperationException(
                    $"The id '{match.Groups[1].Value}' stands twice on the page '{title}': every figure of a page needs a name of its own.");
            }
        }
    }

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotAWord();

    [GeneratedRegex("\\sid=\"([^\"]+)\"")]
    private static partial Regex Identifier();
}
