using ScottPlot;
using ScottPlot.TickGenerators;
using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>Draws a figure: title and subtitle, a strip of event words, panels, labels at the line ends.</summary>
internal sealed class FigureDrawing
{
    private const float Left = 74;
    private const float Right = 186;
    private const float Edge = 18;
    private const float Axis = 48;
    private const float Gap = 22;
    private const float RowHeight = 15;
    private const int MostPoints = 1500;

    private readonly Figure _figure;
    private readonly FigureSheet _sheet;
    private readonly bool _asVector;
    private readonly List<string> _title;
    private readonly List<string> _subtitle;
    private readonly List<(FigureEvent Event, float X, int Row, bool Leftwards)> _events;
    private readonly int _rows;

    public FigureDrawing(Figure figure, FigureSheet sheet, bool asVector)
    {
        _figure = figure;
        _sheet = sheet;
        _asVector = asVector;
        _title = sheet.HasHeading ? FigureText.Wrap(figure.Title, FigureText.Title, Width - (2 * Edge)) : [];
        _subtitle = sheet.HasHeading ? FigureText.Wrap(figure.Subtitle, FigureText.Small, Width - (2 * Edge)) : [];
        _events = PlaceEvents();
        _rows = _events.Count == 0 ? 0 : _events.Max(e => e.Row) + 1;
    }

    public float Width => _sheet.Width;

    public float Height => Top + (_figure.Panels.Count * (PanelPixels + Gap)) - Gap + Axis + 6;

    private float PanelPixels => _figure.Panels.Count > 1 ? _sheet.PanelOfSeveral : _sheet.PanelAlone;

    private float Top => Heading + (_rows * RowHeight) + 10;

    private float Heading => _sheet.HasHeading ? 24 + (_title.Count * 26) + (_subtitle.Count * 18) : 0;

    private double LastDay => Math.Max(1, _figure.LastDay);

    public void Draw(SKCanvas canvas)
    {
        for (int panel = 0; panel < _figure.Panels.Count; panel++)
        {
            float top = Top + (panel * (PanelPixels + Gap));
            DrawPanel(canvas, _figure.Panels[panel], top, panel == _figure.Panels.Count - 1);
        }

        float y = 14;
        foreach (string line in _title)
        {
            y += 26;
            canvas.DrawText(line, Edge, y - 6, SKTextAlign.Left, FigureText.Title, FigureText.Ink);
        }

        foreach (string line in _subtitle)
        {
            y += 18;
            canvas.DrawText(line, Edge, y - 3, SKTextAlign.Left, FigureText.Small, FigureText.Grey);
        }

        foreach ((FigureEvent item, float x, int row, bool leftwards) in _events)
        {
            float baseline = Top - 8 - (row * RowHeight);
            canvas.DrawLine(x, baseline + 3, x, Top, FigureText.Thin);
            canvas.DrawText(item.Label, leftwards ? x + 3 : x - 2, baseline, leftwards ? SKTextAlign.Right : SKTextAlign.Left, FigureText.Tiny, FigureText.Ink);
        }
    }

    private void DrawPanel(SKCanvas canvas, FigurePanel panel, float top, bool isLast)
    {
        (double low, double high) = Limits(panel);
        var plot = new Plot();
        plot.Font.Set(ShippedFonts.Family);
        plot.FigureBackground.Color = Colors.White;
        plot.DataBackground.Color = Colors.White;
        foreach (FigureBand band in panel.Bands)
        {
            var span = plot.Add.VerticalSpan(Math.Max(low, band.Low), Math.Min(high, band.High));
            span.FillColor = Color.FromHex("#DDEFE4");
            span.LineWidth = 0;
        }

        foreach (FigureEvent item in _figure.Events)
        {
            plot.Add.VerticalLine(item.Day, 1, Color.FromHex("#8A8A8A"));
        }

        foreach (FigureLine line in panel.Lines)
        {
            AddSpread(plot, line);
        }

        foreach (FigureLine line in panel.Lines)
        {
            AddLine(plot, line);
        }

        plot.Axes.SetLimits(0, LastDay, low, high);
        (double[] days, string[] labels) = _figure.Ticks ?? DayTicks.Of(_figure.Start, LastDay);
        plot.Axes.Bottom.TickGenerator = new NumericManual(days, isLast ? labels : [.. labels.Select(_ => string.Empty)]);
        plot.Axes.Bottom.TickLabelStyle.FontSize = 11.5f;
        plot.Axes.Left.TickLabelStyle.FontSize = 11.5f;
        plot.Grid.MajorLineColor = Color.FromHex("#E4E4E4");
        plot.Axes.Right.FrameLineStyle.Width = 0;
        plot.Axes.Top.FrameLineStyle.Width = 0;
        float bottom = isLast ? Axis : Gap / 2;
        plot.Layout.Fixed(new PixelPadding(Left, Right, bottom, 0));

        // The plotting library clears what it draws on: it must see its own panel only.
        canvas.Save();
        canvas.ClipRect(new SKRect(0, top - 6, Width, top + PanelPixels + bottom));
        plot.Render(canvas, new PixelRect(0, Width, top + PanelPixels + bottom, top));
        canvas.Restore();
        float Y(double value) => top + (float)((high - value) / (high - low) * PanelPixels);
        foreach (FigureBand band in panel.Bands)
        {
            DrawWords(canvas, panel, band, Y(Math.Min(high, band.High)), Y(Math.Max(low, band.Low)), Y, top);
        }

        canvas.Save();
        canvas.RotateDegrees(-90);
        canvas.DrawText(panel.Axis, -(top + (PanelPixels / 2)), 22, SKTextAlign.Center, FigureText.Small, FigureText.Ink);
        canvas.Restore();
        DrawLabels(canvas, panel, Y, top);
    }

    private static void AddSpread(Plot plot, FigureLine line)
    {
        if (line.Spread is { } spread)
        {
            int[] there = [.. Enumerable.Range(0, line.Days.Length).Where(i => double.IsFinite(spread.Low[i]) && double.IsFinite(spread.High[i]))];
            if (there.Length > 1)
            {
                var area = plot.Add.FillY([.. there.Select(i => line.Days[i])], [.. there.Select(i => spread.Low[i])], [.. there.Select(i => spread.High[i])]);
                area.FillColor = LineStyles.Colours[line.Style].WithAlpha(0.16);
                area.LineWidth = 0;
                area.MarkerSize = 0;
            }
        }
    }

    private void AddLine(Plot plot, FigureLine line)
    {
        (double[] days, double[] values) = Thin(line.Days, line.Values);
        Color colour = LineStyles.Colours[line.Style];
        if (!line.PointsOnly)
        {
            plot.PlottableList.Add(new StyledLine(days, values, line.Style, _asVector));
        }

        if (line.Marked)
        {
            int[] finite = [.. Enumerable.Range(0, values.Length).Where(i => double.IsFinite(values[i]))];
            plot.Add.Markers(finite.Select(i => days[i]).ToArray(), finite.Select(i => values[i]).ToArray(), LineStyles.Markers[line.Style], 6, colour);
        }

        if (line.Marks is { Count: > 0 } marks)
        {
            double[] at = [.. marks.Where(d => d >= 0 && d < line.Values.Length)];
            plot.Add.Markers(at, at.Select(d => line.Values[(int)d]).ToArray(), MarkerShape.FilledTriangleDown, 7, colour);
        }
    }

    // Words lie in their band, or at its edge, where the lines leave them room.
    private void DrawWords(SKCanvas canvas, FigurePanel panel, FigureBand band, float bandTop, float bandBottom, Func<double, float> y, float top)
    {
        float width = FigureText.Tiny.MeasureText(band.Words);
        float plotWidth = Width - Left - Right;
        float[] baselines = [bandTop + 14, bandBottom - 5, (bandTop + bandBottom) / 2, bandTop - 5, bandBottom + 14];
        (float X, float Baseline, int Crossed) best = (Left + 6, bandTop + 14, int.MaxValue);
        foreach (float baseline in baselines)
        {
            bool fits = baseline - 12 > top && baseline + 3 < top + PanelPixels;
            for (float x = Left + 6; fits && x + width < Left + plotWidth - 4; x += 20)
            {
                int crossed = Crossed(panel, y, x - 4, x + width + 4, baseline - 14, baseline + 6);
                best = crossed < best.Crossed ? (x, baseline, crossed) : best;
            }
        }

        FigureText.Halo(canvas, band.Words, best.X, best.Baseline, FigureText.Tiny);
    }

    private int Crossed(FigurePanel panel, Func<double, float> y, float left, float right, float above, float below)
    {
        float plotWidth = Width - Left - Right;
        int crossed = 0;
        foreach (FigureLine line in panel.Lines)
        {
            float previous = float.NaN;
            for (int i = 0; i < line.Values.Length; i++)
            {
                float at = y(line.Values[i]);
                float x = Left + (float)(line.Days[i] / LastDay * plotWidth);
                bool inside = x >= left && x <= right && float.IsFinite(at);
                float reach = float.IsFinite(previous) ? previous : at;
                crossed += inside && Math.Min(at, reach) < below && Math.Max(at, reach) > above ? 3 : 0;
                previous = at;
            }
        }

        foreach (FigureEvent item in _figure.Events)
        {
            float x = Left + (float)(item.Day / LastDay * plotWidth);
            crossed += x >= left && x <= right ? 1 : 0;
        }

        return crossed;
    }

    private void DrawLabels(SKCanvas canvas, FigurePanel panel, Func<double, float> y, float top)
    {
        const float Step = 17;
        var labels = new List<(FigureLine Line, float At, float Placed)>();
        foreach (FigureLine line in panel.Lines.Where(l => l.Label.Length > 0))
        {
            int last = Array.FindLastIndex(line.Values, double.IsFinite);
            if (last >= 0)
            {
                float at = Math.Clamp(y(line.Values[last]), top, top + PanelPixels);
                labels.Add((line, at, at));
            }
        }

        labels.Sort((a, b) => a.At.CompareTo(b.At));
        for (int pass = 0; pass < 60; pass++)
        {
            for (int i = 1; i < labels.Count; i++)
            {
                float overlap = Step - (labels[i].Placed - labels[i - 1].Placed);
                if (overlap > 0.1f)
                {
                    labels[i - 1] = labels[i - 1] with { Placed = Math.Max(top + 6, labels[i - 1].Placed - (overlap / 2)) };
                    labels[i] = labels[i] with { Placed = Math.Min(top + PanelPixels - 4, labels[i].Placed + (overlap / 2)) };
                }
            }
        }

        float edge = Width - Right;
        foreach ((FigureLine line, float at, float placed) in labels)
        {
            canvas.DrawLine(edge + 2, at, edge + 12, placed, FigureText.Thin);
            if (!line.PointsOnly)
            {
                FigureText.Sample(canvas, line.Style, _asVector, edge + 12, edge + 40, placed);
            }

            if (line.Marked)
            {
                FigureText.Marker(canvas, line.Style, edge + 26, placed);
            }

            canvas.DrawText(line.Label, edge + 45, placed + 4, SKTextAlign.Left, FigureText.Label, FigureText.Ink);
        }
    }

    private static (double Low, double High) Limits(FigurePanel panel)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (double value in panel.Lines.SelectMany(l => l.Spread is { } s ? l.Values.Concat(s.Low).Concat(s.High) : l.Values).Where(double.IsFinite))
        {
            low = Math.Min(low, value);
            high = Math.Max(high, value);
        }

        if (low > high)
        {
            (low, high) = (0, 1);
        }

        foreach (FigureBand band in panel.Bands)
        {
            // A limit that the data come near is shown; one far away would only flatten the lines.
            double reach = Math.Max(high - low, Math.Abs(high) * 0.1);
            high = double.IsFinite(band.High) && band.High < high + (0.6 * reach) ? Math.Max(high, band.High) : high;
            high = double.IsFinite(band.Low) && band.Low < high + (0.6 * reach) ? Math.Max(high, band.Low) : high;
            low = double.IsFinite(band.Low) && band.Low > low - (0.6 * reach) ? Math.Min(low, band.Low) : low;
        }

        double room = Math.Max(high - low, Math.Max(1e-3, Math.Abs(high) * 0.02));
        return panel.FromZero ? (Math.Min(0, low), high + (0.08 * Math.Max(high, 1e-3))) : (low - (0.08 * room), high + (0.1 * room));
    }

    private static (double[] Days, double[] Values) Thin(double[] days, double[] values)
    {
        int step = (int)Math.Ceiling(values.Length / (double)MostPoints);
        return step <= 1
            ? (days, values)
            : ([.. days.Where((_, i) => i % step == 0)], [.. values.Where((_, i) => i % step == 0)]);
    }

    // From right to left: a word begins at its vertical, so that verticals from higher rows pass lower words on their left.
    private List<(FigureEvent Event, float X, int Row, bool Leftwards)> PlaceEvents()
    {
        const int Rows = 5;
        var placed = new List<(FigureEvent Event, float X, int Row, bool Leftwards)>();
        var taken = new List<(float From, float To, int Row)>();
        foreach (FigureEvent item in _figure.Events.Where(e => e.Day >= 0 && e.Day <= LastDay).OrderByDescending(e => e.Day))
        {
            float x = Left + (float)(item.Day / LastDay * (Width - Left - Right));
            float width = FigureText.Tiny.MeasureText(item.Label);
            bool leftwards = x + width > Width - Edge;
            (float from, float to) = leftwards ? (x - width, x + 4) : (x - 3, x + width + 6);
            for (int row = 0; row < Rows; row++)
            {
                bool free = !taken.Exists(t => t.Row == row && from < t.To && to > t.From)
                    && !taken.Exists(t => t.Row < row && x > t.From && x < t.To)
                    && !placed.Exists(p => p.Row > row && p.X > from && p.X < to);
                if (free)
                {
                    placed.Add((item, x, row, leftwards));
                    taken.Add((from, to, row));
                    break;
                }
            }
        }

        return placed;
    }
}
