using FarmTwin.Farm;
using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Reports.Comparison;

/// <summary>The figures of a batch: each plan's curves with their bands, and the headline figures side by side.</summary>
public static class ComparisonFigures
{
    private const int PanelsOfAFigure = 4;
    private const int MostInOnePanel = 3;

    /// <summary>Every figure: curves first, headlines last.</summary>
    public static IReadOnlyList<Figure> Of(BatchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var figures = new List<Figure>();
        double[][][][] weeks = [.. Enumerable.Range(0, result.Batch.Plans.Count).Select(result.Weeks)];
        for (int curve = 0; curve < WeeklySeries.All.Count; curve++)
        {
            figures.AddRange(Curve(result, weeks, curve));
        }

        figures.Add(Headline(result, "result-crops-fish", [("crops_kg", "crops, kg"), ("fish_sold_kg", "fish sold, kg"), ("fish_survival_share", "fish survival")], "What is sold, and how many fish live"));
        figures.Add(Headline(result, "result-water", [("peak_nitrite_with_fish_mgN_per_L", "top nitrite, mg N/L"), ("lowest_oxygen_with_fish_mg_per_L", "low oxygen, mg/L"), ("coupled_day", "coupled, day")], "Water with fish, and the day on which the loops are one"));
        bool priced = result.Batch.Plans.All(p => p.Farm.Prices is not null);
        figures.Add(Headline(result, "result-money-work", priced ? [("margin", $"margin, {result.Batch.Plans[0].Farm.Currency}"), ("lowest_cash", $"lowest cash, {result.Batch.Plans[0].Farm.Currency}"), ("labour_h", "work, h")] : [("labour_h", "work, h"), ("heat_kWh", "heat, kWh")], priced ? "Money and work" : "Work and heat"));
        return figures;
    }

    /// <summary>The letter that stands for a plan in figures.</summary>
    public static string Letter(int plan) => plan < 26 ? $"{(char)('A' + plan)}" : $"{Letter((plan / 26) - 1)}{(char)('A' + (plan % 26))}";

    private static IEnumerable<Figure> Curve(BatchResult result, double[][][][] weeks, int curve)
    {
        (string key, string title, string unit) = WeeklySeries.All[curve];
        int plans = result.Batch.Plans.Count;
        FigureLine[] lines = [.. Enumerable.Range(0, plans).Select(p => Line(p, weeks[p], curve, plans <= MostInOnePanel ? p : 0))];
        double top = lines.SelectMany(l => l.Spread!.Value.High).Where(double.IsFinite).DefaultIfEmpty(1).Max();
        string name = key[..key.LastIndexOf('_', key.IndexOf("_mgN", StringComparison.Ordinal) is > 0 and var at ? at : key.Length - 1)].Replace('_', '-');
        string subtitle = $"{title}, {unit}, by week: median of {result.Batch.RunsOfAPlan} replicates and, shaded, their middle 80 %. {Legend(result)}";
        int figures = plans <= MostInOnePanel ? 1 : (plans + PanelsOfAFigure - 1) / PanelsOfAFigure;
        for (int f = 0; f < figures; f++)
        {
            FigureLine[] shown = plans <= MostInOnePanel ? lines : [.. lines.Skip(f * PanelsOfAFigure).Take(PanelsOfAFigure)];
            FigurePanel[] panels = plans <= MostInOnePanel
                ? [new FigurePanel(unit, shown, [])]
                : [.. shown.Select(l => new FigurePanel(unit, [l, Reach(l, top)], []))];
            string finding = Finding(result, lines, title, unit, curve);
            yield return new Figure(
                figures == 1 ? name : $"{name}-{f + 1}", finding, subtitle, finding + ". " + subtitle, result.Batch.Plans[0].Farm.Start,
                shown.Max(l => l.Days.Length == 0 ? 7 : l.Days[^1]), panels, [], "weeks.csv");
        }
    }

    // All panels of a row of plans have one scale: an invisible reach to the highest of all.
    private static FigureLine Reach(FigureLine line, double top) => new(string.Empty, [line.Days[0]], [double.NaN], 0) { Spread = ([0], [top]) };

    private static FigureLine Line(int plan, double[][][] runs, int curve, int style)
    {
        int weeks = runs.Min(r => r[curve].Length);
        var days = new double[weeks];
        var low = new double[weeks];
        var median = new double[weeks];
        var high = new double[weeks];
        for (int w = 0; w < weeks; w++)
        {
            Band band = Band.Of(runs.Select(r => r[curve][w]));
            (days[w], low[w], median[w], high[w]) = ((w * UnitConstants.DaysPerWeek) + 3.5, band.Low, band.Median, band.High);
        }

        return new FigureLine($"plan {Letter(plan)}", days, median, style) { Spread = (low, high) };
    }

    private static string Finding(BatchResult result, FigureLine[] lines, string title, string unit, int curve)
    {
        bool sums = WeeklySeries.All[curve].Key == "crops_kg";
        double[] figure = [.. lines.Select(l => sums ? l.Values.Sum() : l.Values.Where(double.IsFinite).DefaultIfEmpty(0).Max())];
        int most = Array.IndexOf(figure, figure.Max());
        int least = Array.IndexOf(figure, figure.Min());
        string what = sums ? "in all" : "at its highest week";
        string plain = sums ? "kg" : unit;
        return lines.Length == 1 || figure[most] - figure[least] < 0.02 * Math.Abs(figure[most])
            ? $"{title}: {Number(figure[most])} {plain} {what}{(lines.Length > 1 ? " in every plan" : string.Empty)}"
            : $"{title}: {Number(figure[most])} {plain} {what} in plan {Letter(most)}, {Number(figure[least])} in plan {Letter(least)}";
    }

    private static Figure Headline(BatchResult result, string name, (string Key, string Axis)[] keys, string about)
    {
        int plans = result.Batch.Plans.Count;
        var panels = new List<FigurePanel>();
        var told = new List<string>();
        foreach ((string key, string axis) in keys)
        {
            int f = Headlines.IndexOf(key);
            Headline headline = Headlines.All[f];
            Band[] bands = [.. Enumerable.Range(0, plans).Select(p => result.BandOf(p, f))];
            string unit = Unit(result, headline);
            panels.Add(new FigurePanel(
                axis,
                [
                    .. bands.Select((b, p) => new FigureLine(string.Empty, [p + 0.5, p + 0.5], [b.Low, b.High], 0)),
                    new FigureLine("median", [.. bands.Select((_, p) => p + 0.5)], [.. bands.Select(b => b.Median)], 0, Marked: true) { PointsOnly = true },
                ],
                [], FromZero: bands.All(b => !(b.Low < 0))));
            int best = IndexOfBest(result, bands, headline.Wanted == Wanted.Less ? -1 : 1);
            if (plans > 1 && headline.Wanted != Wanted.Neither && best >= 0)
            {
                told.Add($"{headline.Title}: plan {Letter(best)} {Number(bands[best].Median)}{(unit.Length > 0 ? " " + unit : string.Empty)}");
            }
        }

        string title = told.Count == 0 ? about : $"Best by the median: {string.Join("; ", told)}";
        string subtitle = $"{about}. Mark: median of {result.Batch.RunsOfAPlan} replicates; line: their middle 80 %. {Legend(result)}";
        return new Figure(name, title, subtitle, title + ". " + subtitle, result.Batch.Plans[0].Farm.Start, plans, panels, [], "figures.csv")
        {
            Ticks = ([.. Enumerable.Range(0, plans).Select(p => p + 0.5)], [.. Enumerable.Range(0, plans).Select(p => $"plan {Letter(p)}")]),
        };
    }

    // Among those plans that do not come to grief, where there are any.
    private static int IndexOfBest(BatchResult result, Band[] bands, int sign)
    {
        int best = -1;
        IReadOnlyList<int> sound = Verdict.Sound(result);
        foreach (int p in sound)
        {
            best = double.IsFinite(bands[p].Median) && (best < 0 || sign * bands[p].Median > sign * bands[best].Median) ? p : best;
        }

        return best;
    }

    /// <summary>The unit of a figure as a reader sees it: the scenario's currency for money.</summary>
    public static string Unit(BatchResult result, Headline headline)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(headline);
        return headline.Unit switch { "money" => result.Batch.Plans[0].Farm.Currency, "1" => string.Empty, _ => headline.Unit };
    }

    /// <summary>A figure to the digits that replicates bear.</summary>
    public static string Number(double value) => !double.IsFinite(value) ? "never"
        : Math.Abs(value) >= 100 ? $"{value:#,0}" : Math.Abs(value) >= 10 ? $"{value:0.#}" : $"{value:0.##}";

    private static string Legend(BatchResult result) => string.Join("; ", result.Batch.Plans.Select((p, i) => $"{Letter(i)} {p.Name}")) + ".";
}
