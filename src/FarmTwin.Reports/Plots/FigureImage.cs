using System.Text;
using System.Text.RegularExpressions;
using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>A figure as a file: PNG or SVG, the same bytes every time.</summary>
public static partial class FigureImage
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
        var drawing = new FigureDrawing(figure);
        var info = new SKImageInfo((int)(FigureDrawing.Width * PixelsPerUnit), (int)(drawing.Height * PixelsPerUnit));
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale(PixelsPerUnit);
        drawing.Draw(surface.Canvas);
        using SKImage image = surface.Snapshot();
        using SKData data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    /// <summary>The figure as SVG: self-contained, with title and description, and clip paths numbered from 1.</summary>
    public static string Svg(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ShippedFonts.Use();
        var drawing = new FigureDrawing(figure);
        using var stream = new MemoryStream();
        using (SKCanvas canvas = SKSvgCanvas.Create(SKRect.Create(FigureDrawing.Width, drawing.Height), stream))
        {
            canvas.Clear(SKColors.White);
            drawing.Draw(canvas);
        }

        return Tidy(Encoding.UTF8.GetString(stream.ToArray()), figure);
    }

    // The library numbers clip paths through the whole process: here they are numbered through the figure, under its name.
    private static string Tidy(string svg, Figure figure)
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        string renumbered = Identifier().Replace(svg, match =>
        {
            string id = match.Groups[2].Value;
            if (!numbers.TryGetValue(id, out int number))
            {
                numbers.Add(id, number = numbers.Count + 1);
            }

            return $"{match.Groups[1].Value}{figure.Name}-{number}";
        });
        string fonts = renumbered.Replace(
            $"font-family=\"{ShippedFonts.Family}\"", $"font-family=\"{ShippedFonts.Family}, Verdana, sans-serif\"", StringComparison.Ordinal);
        int head = fonts.IndexOf('>', fonts.IndexOf("<svg", StringComparison.Ordinal)) + 1;
        return fonts[..(head - 1)] + $" role=\"img\" aria-labelledby=\"{figure.Name}-title {figure.Name}-text\">\n"
            + $"<title id=\"{figure.Name}-title\">{Escape(figure.Title)}</title>\n"
            + $"<desc id=\"{figure.Name}-text\">{Escape(figure.Alternative)}</desc>" + fonts[head..].Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    private static string Escape(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);

    [GeneratedRegex("(\\bid=\"|url\\(#|href=\"#)([A-Za-z]+_[0-9a-fA-F]+)")]
    private static partial Regex Identifier();
}
