using ScottPlot;

namespace FarmTwin.Reports.Plots;

/// <summary>Colour, dash and marker of the lines, so that each is told apart in grey as well.</summary>
/// <remarks>
/// The colours of Okabe and Ito (2008), Color Universal Design, that reach 3:1 on white; the source is cited from memory, not
/// re-read.
/// </remarks>
internal static class LineStyles
{
    public static readonly Color[] Colours =
    [
        Color.FromHex("#0072B2"), Color.FromHex("#D55E00"), Color.FromHex("#009E73"), Color.FromHex("#CC79A7"), Color.FromHex("#000000"),
    ];

    public static readonly MarkerShape[] Markers =
        [MarkerShape.FilledCircle, MarkerShape.FilledSquare, MarkerShape.FilledTriangleUp, MarkerShape.FilledDiamond, MarkerShape.Cross];

    // Black is the total or the one that counts most: thicker.
    public static readonly float[] Widths = [1.8f, 1.8f, 1.8f, 2.2f, 2.4f];

    /// <summary>The dash of a style in pixels; null for a full line.</summary>
    public static readonly float[]?[] Dashes = [null, [10, 6], [6, 3], [2, 3], null];
}
