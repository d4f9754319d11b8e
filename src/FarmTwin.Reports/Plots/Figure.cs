namespace FarmTwin.Reports.Plots;

/// <summary>A figure before it is drawn: what it shows and what it finds.</summary>
/// <param name="Name">File name without ending.</param>
/// <param name="Title">The finding, made from the data.</param>
/// <param name="Subtitle">Quantity, unit, place and period.</param>
/// <param name="Alternative">The same for who cannot see it, in a sentence or two.</param>
/// <param name="Start">Day 0.</param>
/// <param name="LastDay">Last day on the axis.</param>
/// <param name="Panels">One or more panels over one time axis.</param>
/// <param name="Events">Thin labelled verticals.</param>
/// <param name="Data">Table with its numbers.</param>
public sealed record Figure(
    string Name, string Title, string Subtitle, string Alternative, DateOnly Start, double LastDay,
    IReadOnlyList<FigurePanel> Panels, IReadOnlyList<FigureEvent> Events, string Data = "days.csv")
{
    /// <summary>Ticks of the time axis; days with their dates when left out. With them, "days" are the axis's own unit.</summary>
    public (double[] At, string[] Labels)? Ticks { get; init; }
}

/// <summary>A panel with its own vertical axis.</summary>
/// <param name="Axis">Quantity and unit, shown at the axis.</param>
/// <param name="Lines">At most five lines.</param>
/// <param name="Bands">Shaded bands with words.</param>
/// <param name="FromZero">Whether the axis begins at zero.</param>
public sealed record FigurePanel(string Axis, IReadOnlyList<FigureLine> Lines, IReadOnlyList<FigureBand> Bands, bool FromZero = true);

/// <summary>A line.</summary>
/// <param name="Label">Stands at its end; none where it is empty.</param>
/// <param name="Days">Days from day 0.</param>
/// <param name="Values">Values; what is not a number leaves a gap.</param>
/// <param name="Style">Which of <see cref="LineStyles"/>.</param>
/// <param name="Marked">Whether every point has a marker.</param>
/// <param name="Marks">Days with a mark on the line.</param>
public sealed record FigureLine(
    string Label, double[] Days, double[] Values, int Style, bool Marked = false, IReadOnlyList<double>? Marks = null)
{
    /// <summary>A band about the line, shaded in its colour: of replicates, between their lowest and highest tenth. As long as the values.</summary>
    public (double[] Low, double[] High)? Spread { get; init; }

    /// <summary>Whether only the markers are drawn: points that no line should join.</summary>
    public bool PointsOnly { get; init; }
}

/// <summary>A shaded band.</summary>
/// <param name="Low">Lower end; the bottom of the panel where it is negative infinity.</param>
/// <param name="High">Upper end; the top of the panel where it is positive infinity.</param>
/// <param name="Words">What it means.</param>
public sealed record FigureBand(double Low, double High, string Words);

/// <summary>Something that happened.</summary>
/// <param name="Day">Day from day 0.</param>
/// <param name="Label">A word or two.</param>
public sealed record FigureEvent(double Day, string Label);

/// <summary>A figure in the list of figures.</summary>
/// <param name="Name">File name without ending.</param>
/// <param name="Title">The finding.</param>
/// <param name="Subtitle">Quantity, unit, place and period.</param>
/// <param name="Alternative">Text alternative.</param>
/// <param name="Png">PNG file.</param>
/// <param name="Svg">SVG file.</param>
/// <param name="Data">Table with its numbers.</param>
public sealed record FigureEntry(string Name, string Title, string Subtitle, string Alternative, string Png, string Svg, string Data)
{
    /// <summary>The entry of a figure.</summary>
    public static FigureEntry Of(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return new FigureEntry(
            figure.Name, figure.Title, figure.Subtitle, figure.Alternative, $"plots/{figure.Name}.png", $"plots/{figure.Name}.svg", figure.Data);
    }
}
