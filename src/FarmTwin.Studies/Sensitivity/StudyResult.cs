using FarmTwin.Scenarios.StudyFiles;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Designs;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.Sensitivity;

/// <summary>A study that was played.</summary>
/// <param name="Study">The study.</param>
/// <param name="Shares">Where each point lies, [point][factor], as shares of each factor's way.</param>
/// <param name="Batch">The finished runs; a plan is a point.</param>
/// <param name="LookAt">Indices of the figures that count, in <see cref="Headlines.All"/>.</param>
/// <param name="Drivers">What moves those figures: factors first, then what nobody knows.</param>
/// <param name="Effects">Elementary effects, [figure of LookAt][factor]; empty but for a screening.</param>
/// <param name="WeatherAlone">Bands of the first point's figures when only the weather differs, [figure of LookAt].</param>
public sealed record StudyResult(
    Study Study, IReadOnlyList<double[]> Shares, BatchResult Batch, IReadOnlyList<int> LookAt, IReadOnlyList<Driver> Drivers,
    IReadOnlyList<IReadOnlyList<ElementaryEffects>> Effects, IReadOnlyList<Band> WeatherAlone)
{
    /// <summary>Replicates from which on what nobody knows is ranked by what it moves. Own choice.</summary>
    public const int FewestDrawsToRank = 20;

    /// <summary>What a factor is set to at a point.</summary>
    public string Label(int point, int factor) => Study.Factors[factor].LabelAt(Shares[point][factor]);

    /// <summary>Every value of a figure at the points at which a factor has a level, over all their replicates.</summary>
    public IEnumerable<double> ValuesAt(int factor, int level, int figure) => Points(factor, level).SelectMany(p => Batch.Values(p, figure));

    /// <summary>Share of the runs at a level that came to grief.</summary>
    public double TroubleAt(int factor, int level)
    {
        int[] points = [.. Points(factor, level)];
        return points.Length == 0 ? double.NaN : points.Average(p => (double)Batch.InTrouble(p) / Batch.Batch.RunsOfAPlan);
    }

    private IEnumerable<int> Points(int factor, int level) => Enumerable.Range(0, Shares.Count).Where(p => Study.Factors[factor].LevelAt(Shares[p][factor]) == level);
}
