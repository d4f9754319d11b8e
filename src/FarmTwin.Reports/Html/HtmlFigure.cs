using System.Text;
using FarmTwin.Reports.Plots;

namespace FarmTwin.Reports.Html;

/// <summary>A picture of a page: inline SVG, the finding above it, the same in words and its table below it.</summary>
/// <param name="Svg">
/// The picture: an <c>svg</c> element with <c>role="img"</c>, labelled by a <c>title</c> and a <c>desc</c> of its own, and with ids
/// that begin with its name. <see cref="SvgPicture"/> makes one.
/// </param>
/// <param name="Title">The finding.</param>
/// <param name="Detail">Quantity, unit, place and period; may be empty.</param>
/// <param name="Alternative">The same in words, for who cannot see the picture.</param>
/// <param name="Data">File beside the page with its numbers; null where the page itself has them.</param>
public sealed record HtmlFigure(string Svg, string Title, string Detail, string Alternative, string? Data)
{
    /// <summary>A drawn figure, made for the width of a page.</summary>
    /// <param name="figure">The figure; its name must be the only one of its kind on the page.</param>
    /// <param name="folder">Folder of its table relative to the page, with a slash at its end; empty where they lie side by side.</param>
    public static HtmlFigure Of(Figure figure, string folder = "")
    {
        ArgumentNullException.ThrowIfNull(figure);
        return new HtmlFigure(FigureImage.PageSvg(figure), figure.Title, figure.Subtitle, figure.Alternative, folder + figure.Data);
    }

    internal void Write(StringBuilder text)
    {
        // What is told above the picture is not told again below it.
        string rest = Alternative.StartsWith(Title, StringComparison.Ordinal) ? Alternative[Title.Length..].TrimStart('.', ' ') : Alternative;
        text.Append("<figure>\n<p class=\"finding\">").Append(Inline.Escape(Title)).Append("</p>\n");
        if (Detail.Length > 0)
        {
            text.Append("<p class=\"detail\">").Append(Inline.Escape(Detail)).Append("</p>\n");
        }

        text.Append(Svg).Append("\n<figcaption>").Append(Inline.Escape(rest.Length > 0 ? rest : Alternative));
        if (Data is not null)
        {
            text.Append(" Numbers: ").Append(Inline.Link(Data, Data).Markup).Append('.');
        }

        text.Append("</figcaption>\n</figure>\n");
    }
}
