using FarmTwin.Farm;
using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Compare;

namespace FarmTwin.Reports.Compare;

/// <summary>Figures of a comparison: the sign's line with what acting makes of it, and the lines on which the farms part.</summary>
public static class ComparisonFigures
{
    private const int MostPanels = 3;
    private const int DaysAfter = 60;
    private const string Reference = "reference";

    /// <summary>The figures, two a farm that is held against the reference at most.</summary>
    public static IReadOnlyList<Figure> Of(SideBySide comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var figures = new List<Figure>();
        for (int i = 0; i < comparison.Others.Count; i++)
        {
            ComparedPair pair = comparison.Others[i];
            if (pair.Sign is { } sign)
            {
                figures.Add(SignFigure(comparison, pair, sign, i + 1));
                LineParting[] others = [.. pair.Partings.Where(p => p.Line.Key != sign.Line.Key && p.Line.Confirm > 1).Take(MostPanels)];
                if (others.Length > 0)
                {
                    figures.Add(LinesFigure(comparison, pair, others, i + 1));
                }
            }
        }

        return figures;
    }

    private static Figure SignFigure(SideBySide comparison, ComparedPair pair, LineParting sign, int number)
    {
        int last = Math.Min(comparison.Days, sign.Day + DaysAfter);
        var lines = new List<FigureLine>
        {
            Line(Reference, sign.ReferenceDays, 0, last, 0),
            Line("nobody acts", sign.OtherDays, 0, last, 1),
        };
        if (ComparisonWords.Best(pair) is { } best)
        {
            foreach (Act act in best.Acts.Count > 1 ? [best.Acts[0], best.Acts[^1]] : best.Acts)
            {
                int acted = (int)(act.Seconds / UnitConstants.SecondsPerDay);
                lines.Add(Line(act.When.Replace(" after it broke", string.Empty, StringComparison.Ordinal), act.SignDays, acted, last, lines.Count));
            }
        }

        string title = $"{Capital(sign.Line.Title)} is the first sign, on day {sign.Day}: {sign.Line.Words(sign.Other)} instead of {sign.Line.Words(sign.Reference)}";
        return new Figure(
            $"sign-{number}", title, $"{Capital(sign.Line.Title)}{(sign.Line.Unit.Length > 0 ? $", {sign.Line.Unit}" : string.Empty)}, {sign.Line.Sheet}. {pair.Farm.Title} against {comparison.Reference.Title}",
            $"{title}. {ComparisonWords.Lesson(comparison, pair)}", comparison.Start, last,
            [new FigurePanel(Axis(sign.Line), lines, Bands(sign.Line), FromZero(sign.Line))],
            [new FigureEvent(sign.Day, $"sign, day {sign.Day}")], "compare.csv");
    }

    private static Figure LinesFigure(SideBySide comparison, ComparedPair pair, LineParting[] partings, int number)
    {
        string title = $"They part on {partings.Length} more {(partings.Length == 1 ? "line" : "lines")} of the sheet, first {partings[0].Line.Title} on day {partings[0].Day}";
        return new Figure(
            $"parting-{number}", title, $"{string.Join("; ", partings.Select(p => Axis(p.Line)))}. {pair.Farm.Title} against {comparison.Reference.Title}",
            $"{title}. {string.Join(" ", partings.Select(p => $"Day {p.Day}, {p.Words}."))}", comparison.Start, comparison.Days,
            [.. partings.Select(p => new FigurePanel(Axis(p.Line),
                [Line(Reference, p.ReferenceDays, 0, comparison.Days, 0), Line("this farm", p.OtherDays, 0, comparison.Days, 1)], [], FromZero(p.Line)))],
            [], "compare.csv");
    }

    private static FigureLine Line(string label, double[] values, int from, int last, int style)
    {
        int until = Math.Min(last, values.Length);
        int count = Math.Max(0, until - from);
        return new FigureLine(label, [.. Enumerable.Range(from, count).Select(d => (double)d)], [.. values.Skip(from).Take(count)], style);
    }

    private static FigureBand[] Bands(DailySheetLine line) =>
        line.High is > 0 and < double.PositiveInfinity || line.Low > double.NegativeInfinity ? [new FigureBand(line.Low, line.High, "nobody worries")] : [];

    private static bool FromZero(DailySheetLine line) => !line.Key.StartsWith("pH", StringComparison.Ordinal) && line.Unit != "°C";

    private static string Axis(DailySheetLine line) => line.Unit.Length > 0 ? $"{line.Title}, {line.Unit}" : line.Title;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
