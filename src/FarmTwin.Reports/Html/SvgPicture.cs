using System.Globalization;
using System.Text;

namespace FarmTwin.Reports.Html;

/// <summary>Draws a picture of a page as SVG: shapes and words by their coordinates, labelled for who cannot see it.</summary>
/// <param name="name">Name of the picture, the only one of its kind on the page: ids begin with it.</param>
/// <param name="width">Width, px; a page shows up to 760 at full size.</param>
/// <param name="height">Height, px; no more than 960, or it does not fit on a printed page.</param>
/// <param name="title">What it finds.</param>
/// <param name="description">The same in words.</param>
public sealed class SvgPicture(string name, double width, double height, string title, string description)
{
    private readonly StringBuilder _body = new();

    /// <summary>Name of the picture: begin own ids with it.</summary>
    public string Name => name;

    /// <summary>Adds markup as it is: for gradients, markers, what has no method of its own.</summary>
    /// <param name="markup">The markup, already escaped.</param>
    public SvgPicture Raw(string markup)
    {
        _body.Append(markup).Append('\n');
        return this;
    }

    /// <summary>A rectangle.</summary>
    /// <param name="x">Left.</param>
    /// <param name="y">Top.</param>
    /// <param name="w">Width.</param>
    /// <param name="h">Height.</param>
    /// <param name="style">Attributes such as <c>fill="#fff" stroke="#333"</c>.</param>
    public SvgPicture Rect(double x, double y, double w, double h, string style) =>
        Raw($"<rect x=\"{Number(x)}\" y=\"{Number(y)}\" width=\"{Number(w)}\" height=\"{Number(h)}\" {style}/>");

    /// <summary>A straight line.</summary>
    public SvgPicture Line(double x1, double y1, double x2, double y2, string style) =>
        Raw($"<line x1=\"{Number(x1)}\" y1=\"{Number(y1)}\" x2=\"{Number(x2)}\" y2=\"{Number(y2)}\" {style}/>");

    /// <summary>A path.</summary>
    /// <param name="path">The path's commands; <see cref="Number"/> writes their numbers.</param>
    /// <param name="style">Attributes.</param>
    public SvgPicture Path(string path, string style) => Raw($"<path d=\"{path}\" {style}/>");

    /// <summary>A circle.</summary>
    public SvgPicture Circle(double x, double y, double radius, string style) =>
        Raw($"<circle cx=\"{Number(x)}\" cy=\"{Number(y)}\" r=\"{Number(radius)}\" {style}/>");

    /// <summary>Words.</summary>
    /// <param name="text">The words.</param>
    /// <param name="x">Where they begin, or their middle or end by the anchor.</param>
    /// <param name="y">Baseline.</param>
    /// <param name="size">Size, px; not below 11, which prints at about 7 points.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="style">Attributes.</param>
    public SvgPicture Text(string text, double x, double y, double size = 12, string anchor = "start", string style = "") =>
        Raw($"<text x=\"{Number(x)}\" y=\"{Number(y)}\" font-size=\"{Number(size)}\" text-anchor=\"{anchor}\"{(style.Length > 0 ? " " + style : style)}>{Inline.Escape(text)}</text>");

    /// <summary>The whole element.</summary>
    public override string ToString() =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Number(width)} {Number(height)}\" width=\"{Number(width)}\" height=\"{Number(height)}\" role=\"img\" "
        + $"aria-labelledby=\"{name}-title {name}-text\" font-family=\"{PageStyle.Fonts}\">\n"
        + $"<title id=\"{name}-title\">{Inline.Escape(title)}</title>\n<desc id=\"{name}-text\">{Inline.Escape(description)}</desc>\n{_body}</svg>";

    /// <summary>A coordinate as it stands in SVG: a tenth of a pixel is enough.</summary>
    public static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Width of words, px, by the shipped font: others are about as wide, few wider.</summary>
    /// <param name="text">The words.</param>
    /// <param name="size">Size, px.</param>
    /// <param name="bold">Whether they are bold.</param>
    public static double Measure(string text, double size, bool bold = false)
    {
        using var font = new SkiaSharp.SKFont(bold ? Plots.ShippedFonts.Bold : Plots.ShippedFonts.Regular, (float)size);
        return font.MeasureText(text);
    }
}
