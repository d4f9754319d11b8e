using ScottPlot;
using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>A line whose dashes are drawn as shapes.</summary>
/// <remarks>The SVG canvas knows no dash effect: a dashed stroke would come out solid there, and lines could not be told apart in grey.</remarks>
internal sealed class StyledLine(double[] days, double[] values, int style) : IPlottable
{
    public bool IsVisible { get; set; } = true;

    public IAxes Axes { get; set; } = new Axes();

    public IEnumerable<LegendItem> LegendItems => [];

    public AxisLimits GetAxisLimits() => AxisLimits.NoLimits;

    public void Render(RenderPack rp)
    {
        using var path = new SKPath();
        bool drawing = false;
        for (int i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                drawing = false;
                continue;
            }

            Pixel pixel = Axes.GetPixel(new Coordinates(days[i], values[i]));
            if (drawing)
            {
                path.LineTo(pixel.X, pixel.Y);
            }
            else
            {
                path.MoveTo(pixel.X, pixel.Y);
            }

            drawing = true;
        }

        Stroke(rp.Canvas, path, style);
    }

    /// <summary>Strokes a path in a style.</summary>
    public static void Stroke(SKCanvas canvas, SKPath path, int style)
    {
        using var stroke = new SKPaint
        {
            Color = new SKColor(LineStyles.Colours[style].ARGB),
            StrokeWidth = LineStyles.Widths[style],
            IsStroke = true,
            IsAntialias = true,
            StrokeJoin = SKStrokeJoin.Round,
        };
        if (LineStyles.Dashes[style] is not { } dash)
        {
            canvas.DrawPath(path, stroke);
            return;
        }

        using SKPathEffect effect = SKPathEffect.CreateDash(dash, 0);
        stroke.PathEffect = effect;
        using var outline = new SKPath();
        stroke.GetFillPath(path, outline);
        using var fill = new SKPaint { Color = stroke.Color, IsAntialias = true };
        canvas.DrawPath(outline, fill);
    }
}
