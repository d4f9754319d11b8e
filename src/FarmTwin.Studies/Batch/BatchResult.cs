using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.Batch;

/// <summary>The finished runs of a batch, by plan and figure. Curves stay on the disk until they are asked for, plan by plan.</summary>
public sealed class BatchResult
{
    private readonly RunJournal _journal;
    private readonly double[][] _figures;

    internal BatchResult(BatchPlan batch, RunJournal journal)
    {
        Batch = batch;
        _journal = journal;
        _figures = new double[batch.Runs.Count][];
        Troubles = new string?[batch.Runs.Count];
        for (int r = 0; r < _figures.Length; r++)
        {
            SeasonOutcome outcome = Read(r);
            _figures[r] = outcome.Figures;
            Troubles[r] = outcome.Trouble;
            WorstClosure = Math.Max(WorstClosure, outcome.WorstClosure);
        }
    }

    /// <summary>The batch.</summary>
    public BatchPlan Batch { get; }

    /// <summary>What went badly wrong in each run, [run]; null where nothing did.</summary>
    public string?[] Troubles { get; }

    /// <summary>The largest closure error of any ledger of any run.</summary>
    public double WorstClosure { get; }

    /// <summary>Runs of a plan in trouble.</summary>
    public int InTrouble(int plan) => Enumerable.Range(plan * Batch.RunsOfAPlan, Batch.RunsOfAPlan).Count(r => Troubles[r] is not null);

    /// <summary>A figure of a plan, [seed × replicate].</summary>
    /// <param name="plan">The plan's index.</param>
    /// <param name="figure">The figure's index in <see cref="Headlines.All"/>.</param>
    public double[] Values(int plan, int figure) => [.. Enumerable.Range(plan * Batch.RunsOfAPlan, Batch.RunsOfAPlan).Select(r => _figures[r][figure])];

    /// <summary>Median and band of a figure of a plan.</summary>
    public Band BandOf(int plan, int figure) => Band.Of(Values(plan, figure));

    /// <summary>The figures of a run, in the order of <see cref="Headlines.All"/>.</summary>
    public IReadOnlyList<double> FiguresOf(int run) => _figures[run];

    /// <summary>How a plan differs from another in every figure, replicate by replicate, and whether it stands out of the noise.</summary>
    /// <param name="plan">The plan's index.</param>
    /// <param name="reference">The index of the plan that it is compared with.</param>
    public IReadOnlyList<FigureDifference> Against(int plan, int reference = 0)
    {
        PairedDifference[] differences = [.. Headlines.All.Select((_, f) => PairedDifference.Of(Values(plan, f), Values(reference, f)))];
        double[] corrected = SignedRanks.Holm([.. differences.Select(d => d.Chance)]);
        return [.. differences.Select((d, f) => new FigureDifference(Headlines.All[f], BandOf(plan, f), d, corrected[f]))];
    }

    /// <summary>The curves of a plan's runs, [run of the plan][curve][week].</summary>
    public double[][][] Weeks(int plan) => [.. Enumerable.Range(plan * Batch.RunsOfAPlan, Batch.RunsOfAPlan).Select(r => Read(r).Weeks)];

    private SeasonOutcome Read(int run)
    {
        (int plan, ulong seed, uint replicate) = Batch.Runs[run];
        return _journal.Read(Batch.Plans[plan].Hash, seed, replicate);
    }
}
