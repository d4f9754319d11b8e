using System.Globalization;
using System.Text;
using FarmTwin.Reports.Html;
using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>A figure as a file: PNG or SVG, the same bytes every time.</summary>
public static class FigureImage
{
    private const float PixelsPerUnit = 1.5f;

    /// <summary>Draws a small figure and throws it away: what the first figure of a process costs is then paid while a season runs.</summary>
    public static void WarmUp()
    {
        double[] ends = [0, 1];
        var figure = new Figure("warm-up", "Warm-up", "Nothing", string.Empty, DateOnly.FromDayNumber(1), 2,
            [new FigurePanel("1", [new FigureLine("a", ends, ends, 0, Marked: true)], [new FigureBand(0, 1, "a")])], [new FigureEvent(1, "a")]);
        _ = Png(figure);
        _ = Svg(figure);
    }

    /// <summary>The figure as PNG.</summary>
    public static byte[] Png(Figure figure)
    {
        ShippedFonts.Use();
        var drawing = new FigureDrawing(figure, FigureSheet.Alone, asVector: false);
        var info = new SKImageInfo((int)(drawing.Width * PixelsPerUnit), (int)(drawing.Height * PixelsPerUnit));
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale(PixelsPerUnit);
        drawing.Draw(surface.Canvas);
        using SKImage image = surface.Snapshot();
        using SKData data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>The figure as an SVG file: self-contained, with title and description.</summary>
    public static string Svg(Figure figure) => "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + Element(figure, FigureSheet.Alone) + "\n";

    /// <summary>The figure as an SVG element for a page that has its title and subtitle as text, made for the width of paper.</summary>
    public static string PageSvg(Figure figure) => Element(figure, FigureSheet.Page);

    private static string Element(Figure figure, FigureSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ShippedFonts.Use();
        var drawing = new FigureDrawing(figure, sheet, asVector: true);
        using var stream = new MemoryStream();
        using (SKCanvas canvas = SKSvgCanvas.Create(SKRect.Create(drawing.Width, drawing.Height), stream))
        {
            canvas.Clear(SKColors.White);
            drawing.Draw(canvas);
        }

        string svg = SvgTidy.Tidy(Encoding.UTF8.GetString(stream.ToArray()), figure.Name);
        int body = svg.IndexOf('>', svg.IndexOf("<svg", StringComparison.Ordinal)) + 1;
        string size = string.Create(CultureInfo.InvariantCulture, $"viewBox=\"0 0 {drawing.Width} {drawing.Height}\" width=\"{drawing.Width}\" height=\"{drawing.Height}\"");
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" {size} role=\"img\" aria-labelledby=\"{figure.Name}-title {figure.Name}-text\">\n"
            + $"<title id=\"{figure.Name}-title\">{Inline.Escape(figure.Title)}</title>\n"
            + $"<desc id=\"{figure.Name}-text\">{Inline.Escape(figure.Alternative)}</desc>{svg[body..].TrimEnd()}";
    }
}
