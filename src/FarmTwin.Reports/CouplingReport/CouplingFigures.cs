using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Coupling;

namespace FarmTwin.Reports.CouplingReport;

/// <summary>The figures of a coupling study, over its candidate days.</summary>
public static class CouplingFigures
{
    /// <summary>Every figure.</summary>
    public static IReadOnlyList<Figure> Of(CouplingStudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Days.Count < 2)
        {
            return [];
        }

        CouplingAdvice advice = result.Advice();
        string window = advice.FirstDay is { } first ? $"From day {first} on enough replicates keep every gate and limit" : "On no day do enough replicates keep every gate and limit";
        return
        [
            Make(result, "coupling-kept", window, "Share of replicates in which every gate holds on the day and every limit in the days after it",
                [new FigurePanel("share of replicates", [.. Openers().Select((o, i) => Line(result, o, i, c => c.Kept))], [new FigureBand(0.8, 1.001, "enough: four of five")])]),
            Make(result, "coupling-after", "What the fish and the plants meet after the opening", "Medians of the worst in the days after, with their middle 80 %",
                [
                    new FigurePanel("fall in a day, K", [.. Openers().Select((o, i) => Worst(result, o, i, "fall-day"))], []),
                    new FigurePanel("plant nitrate, mg N/L", [.. CouplingOption.All.Select((o, i) => Worst(result, o, i, "nitrate")).Take(4)], []),
                    new FigurePanel("nitrite, mg N/L", [.. Openers().Select((o, i) => Worst(result, o, i, "nitrite"))], []),
                ]),
        ];
    }

    private static IEnumerable<CouplingOption> Openers() => CouplingOption.All.Where(o => o.Opens);

    private static Figure Make(CouplingStudyResult result, string name, string title, string subtitle, FigurePanel[] panels) => new(
        name, title, $"{subtitle}, by the day of opening. {result.Replicates} replicates.", $"{title}. {subtitle}, by the day of opening.", result.Plan.Farm.Start,
        result.Days[^1] + 1, panels, [], "coupling.csv");

    private static FigureLine Line(CouplingStudyResult result, CouplingOption option, int style, Func<CouplingCandidate, double> of) =>
        new(option.Key, [.. result.Days.Select(d => (double)d)], [.. result.Days.Select(d => of(result.At(d, option.Key)))], style, Marked: true);

    private static FigureLine Worst(CouplingStudyResult result, CouplingOption option, int style, string limit)
    {
        int l = CouplingLimit.All.ToList().FindIndex(x => x.Key == limit);
        return Line(result, option, style, c => c.Worst[l].Median) with
        {
            Spread = ([.. result.Days.Select(d => result.At(d, option.Key).Worst[l].Low)], [.. result.Days.Select(d => result.At(d, option.Key).Worst[l].High)]),
        };
    }
}
