using ScottPlot;
using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>A line in one of our styles, dashed so that lines are told apart in grey.</summary>
/// <remarks>The SVG canvas writes every dash as a shape of its own: there the stroke is drawn whole, and <see cref="SvgTidy"/> dashes it by its colour.</remarks>
internal sealed class StyledLine(double[] days, double[] values, int style, bool asVector) : IPlottable
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

        Stroke(rp.Canvas, path, style, asVector);
    }

    /// <summary>Strokes a path in a style.</summary>
    public static void Stroke(SKCanvas canvas, SKPath path, int style, bool asVector)
    {
        using var stroke = new SKPaint
        {
            Color = new SKColor(LineStyles.Colours[style].ARGB),
            StrokeWidth = LineStyles.Widths[style],
            IsStroke = true,
            IsAntialias = true,
            StrokeJoin = SKStrokeJoin.Round,
        };
        using SKPathEffect? effect = !asVector && LineStyles.Dashes[style] is { } dash ? SKPathEffect.CreateDash(dash, 0) : null;
        stroke.PathEffect = effect;
        canvas.DrawPath(path, stroke);
    }
}
