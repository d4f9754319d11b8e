using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>Fonts and inks of a figure.</summary>
internal static class FigureText
{
    public static SKFont Title { get; } = new(ShippedFonts.Bold, 19);

    public static SKFont Small { get; } = new(ShippedFonts.Regular, 13);

    public static SKFont Label { get; } = new(ShippedFonts.Regular, 12.5f);

    public static SKFont Tiny { get; } = new(ShippedFonts.Regular, 11.5f);

    public static SKPaint Ink { get; } = new() { Color = new SKColor(0x1A, 0x1A, 0x1A), IsAntialias = true };

    public static SKPaint Grey { get; } = new() { Color = new SKColor(0x50, 0x50, 0x50), IsAntialias = true };

    public static SKPaint Thin { get; } = new() { Color = new SKColor(0x77, 0x77, 0x77), StrokeWidth = 1, IsAntialias = true, IsStroke = true };

    private static readonly SKPaint White = new() { Color = SKColors.White.WithAlpha(225), IsAntialias = true };

    /// <summary>Breaks a text into lines no wider than a width.</summary>
    public static List<string> Wrap(string text, SKFont font, float width)
    {
        var lines = new List<string>();
        string line = string.Empty;
        foreach (string word in text.Split(' '))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && font.MeasureText(longer) > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = longer;
            }
        }

        lines.Add(line);
        return lines;
    }

    /// <summary>Text on a light ground, so that lines below do not cross it.</summary>
    public static void Halo(SKCanvas canvas, string text, float x, float baseline, SKFont font)
    {
        canvas.DrawRect(x - 2, baseline - font.Size, font.MeasureText(text) + 4, font.Size + 4, White);
        canvas.DrawText(text, x, baseline, SKTextAlign.Left, font, Grey);
    }

    /// <summary>A sample of a line's stroke.</summary>
    public static void Sample(SKCanvas canvas, int style, bool asVector, float from, float to, float y)
    {
        using var path = new SKPath();
        path.MoveTo(from, y);
        path.LineTo(to, y);
        StyledLine.Stroke(canvas, path, style, asVector);
    }

    /// <summary>A sample of a line's marker.</summary>
    public static void Marker(SKCanvas canvas, int style, float x, float y)
    {
        using var paint = new SKPaint { Color = Colour(style), IsAntialias = true };
        using var path = new SKPath();
        switch (style)
        {
            case 0:
                path.AddCircle(x, y, 3.5f);
                break;
            case 1:
                path.AddRect(SKRect.Create(x - 3, y - 3, 6, 6));
                break;
            case 2:
                path.AddPoly([new SKPoint(x, y - 4), new SKPoint(x + 4, y + 3), new SKPoint(x - 4, y + 3)]);
                break;
            default:
                path.AddPoly([new SKPoint(x, y - 4), new SKPoint(x + 4, y), new SKPoint(x, y + 4), new SKPoint(x - 4, y)]);
                break;
        }

        canvas.DrawPath(path, paint);
    }

    private static SKColor Colour(int style) => new(LineStyles.Colours[style].ARGB);
}
