using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.StudyFiles;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Designs;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Statistics;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Studies.Sensitivity;

/// <summary>Plays a study: a batch over its points, and the first point once more with the weather as the only thing unknown.</summary>
public sealed class StudyRunner(FarmLibrary library, string programVersion) : IDisposable
{
    private static readonly string[] Usual = ["margin", "fish_sold_kg", "crops_kg", "peak_nitrite_with_fish_mgN_per_L"];
    private readonly BatchRunner _runner = new(library, programVersion);

    /// <summary>Plays what is not yet finished.</summary>
    /// <param name="study">The study.</param>
    /// <param name="folder">Its folder; a study that was stopped goes on there.</param>
    /// <param name="replicates">Replicates of each point.</param>
    /// <param name="threads">How many seasons at once, from 1.</param>
    /// <param name="progress">Told after every run.</param>
    /// <param name="cancellation">Stops after the runs that are being played.</param>
    /// <exception cref="ScenarioException">A combination makes no farm.</exception>
    public StudyResult Run(Study study, string folder, int replicates, int threads, Action<BatchProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(study);
        (double[][] shares, FarmPlan[] plans) = Points(study);
        ulong[] seeds = [(ulong)study.Seed];
        FarmPlan weather = plans[0].WithWeatherAlone();
        BatchResult alone = _runner.Run(new BatchPlan([weather], seeds, replicates), folder, threads, progress, null, cancellation);
        BatchResult result = _runner.Run(new BatchPlan(plans, seeds, replicates), folder, threads, progress, null, cancellation);
        int[] lookAt = [.. (study.LookAt.Count > 0 ? study.LookAt : Usual).Select(Headlines.IndexOf).Where(f => plans[0].Farm.Prices is not null || Headlines.All[f].Unit != "money")];
        Driver[] drivers = [.. OfFactors(study, shares, result, lookAt), .. OfUnknowns(result, lookAt)];
        IReadOnlyList<ElementaryEffects>[] effects = study.Design != StudyDesign.Morris ? []
            : [.. lookAt.Select(f => MorrisScreening.Effects(shares, [.. Enumerable.Range(0, plans.Length).Select(p => result.Values(p, f).Where(double.IsFinite).DefaultIfEmpty(double.NaN).Average())]))];
        Band[] byWeather = [.. lookAt.Select(f => alone.BandOf(0, f))];
        return new StudyResult(study, shares, result, lookAt, drivers, effects, byWeather);
    }

    /// <summary>Lets the folder go.</summary>
    public void Dispose() => _runner.Dispose();

    private (double[][] Shares, FarmPlan[] Plans) Points(Study study)
    {
        string[] names = [.. study.Factors.Select(f => f.Name)];
        if (study.Design == StudyDesign.All)
        {
            int[][] levels = [.. Levels(study, 0)];
            return ([.. levels.Select(l => l.Select((level, f) => (level + 0.5) / study.Factors[f].Labels.Count).ToArray())],
                [.. levels.Select(l => Plan(Name(study, f => study.Factors[f].Labels[l[f]]), study.FarmOf(l)))]);
        }

        double[][] shares = study.Design == StudyDesign.Morris
            ? MorrisScreening.Points(study.Points, names, (ulong)study.Seed) : LatinHypercube.Points(study.Points, names, (ulong)study.Seed);
        return (shares, [.. shares.Select((s, p) => Plan($"{p + 1}: {Name(study, f => study.Factors[f].LabelAt(s[f]))}", study.FarmAt(s)))]);
    }

    private FarmPlan Plan(string name, Scenario<FarmDescription> farm) => FarmPlan.Of(farm, library, name);

    private static string Name(Study study, Func<int, string> label) => string.Join(", ", study.Factors.Select((f, i) => $"{f.Name} {label(i)}"));

    private static IEnumerable<int[]> Levels(Study study, int factor)
    {
        if (factor == study.Factors.Count)
        {
            yield return new int[factor];
            yield break;
        }

        for (int level = 0; level < study.Factors[factor].Labels.Count; level++)
        {
            foreach (int[] rest in Levels(study, factor + 1))
            {
                rest[factor] = level;
                yield return rest;
            }
        }
    }

    private static IEnumerable<Driver> OfFactors(Study study, double[][] shares, BatchResult result, int[] lookAt)
    {
        for (int factor = 0; factor < study.Factors.Count; factor++)
        {
            int f = factor;
            double[] inputs = [.. result.Batch.Runs.Select(r => study.Factors[f].ValueAt(shares[r.Plan][f]))];
            yield return new Driver(study.Factors[f].Name, false, [.. lookAt.Select(figure => RankCorrelation.Of(inputs, All(result, figure)))]);
        }
    }

    // Of unknowns only what they do within a point counts: from point to point the plan differs, not the farm's nature.
    private static IEnumerable<Driver> OfUnknowns(BatchResult result, int[] lookAt)
    {
        // All points meet the same draws: as many as there are replicates. A handful of draws ranks nothing.
        BatchPlan batch = result.Batch;
        if (batch.RunsOfAPlan < StudyResult.FewestDrawsToRank)
        {
            yield break;
        }

        foreach (Unknown unknown in batch.Plans.SelectMany(p => p.Unknowns).DistinctBy(u => u.Name).OrderBy(u => u.Name, StringComparer.Ordinal))
        {
            double[] drawn = [.. batch.Runs.Select(r =>
            {
                IReadOnlyList<Unknown> own = batch.Plans[r.Plan].Unknowns;
                int i = Enumerable.Range(0, own.Count).FirstOrDefault(k => own[k].Name == unknown.Name, -1);
                return i < 0 ? double.NaN : FarmUnknowns.Draw([own[i]], r.Seed, r.Replicate)[0];
            })];
            yield return new Driver(unknown.Name, true, [.. lookAt.Select(figure => RankCorrelation.Of(drawn, Within(result, figure)))]);
        }
    }

    private static double[] All(BatchResult result, int figure) => [.. Enumerable.Range(0, result.Batch.Plans.Count).SelectMany(p => result.Values(p, figure))];

    private static double[] Within(BatchResult result, int figure) => [.. Enumerable.Range(0, result.Batch.Plans.Count).SelectMany(p =>
    {
        double middle = result.BandOf(p, figure).Median;
        return result.Values(p, figure).Select(v => v - middle);
    })];
}
