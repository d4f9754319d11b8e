namespace FarmTwin.Reports.Plots;

/// <summary>What a figure is drawn on.</summary>
/// <param name="Width">Width, px.</param>
/// <param name="PanelAlone">Height of a single panel, px.</param>
/// <param name="PanelOfSeveral">Height of each of several, px.</param>
/// <param name="HasHeading">Whether title and subtitle are part of the picture.</param>
internal sealed record FigureSheet(float Width, float PanelAlone, float PanelOfSeveral, bool HasHeading)
{
    /// <summary>A file of its own.</summary>
    public static FigureSheet Alone { get; } = new(1040, 380, 225, HasHeading: true);

    /// <summary>A page that says title and subtitle itself, as narrow as paper: words of 11 px print at 7 points and more.</summary>
    public static FigureSheet Page { get; } = new(760, 270, 180, HasHeading: false);
}
