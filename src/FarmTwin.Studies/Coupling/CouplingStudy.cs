using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.Coupling;

/// <summary>Tries days and ways to open the valves, replicate by replicate, and what would bring the day forward.</summary>
public static class CouplingStudy
{
    /// <summary>How many days are looked at from each candidate day on.</summary>
    public const int UsualWindowDays = 30;

    private const int Monday = 1;
    private const int DaysOfWeek = 7;

    /// <summary>Plays it.</summary>
    /// <param name="plan">The plan; its farm has a coupling and fish.</param>
    /// <param name="library">The library.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="replicates">Replicates, from 1.</param>
    /// <param name="days">Candidate days, ascending.</param>
    /// <param name="window">Days looked at from each on.</param>
    /// <param name="threads">Replicates at once, from 1; the result is the same.</param>
    /// <param name="done">Told of each finished replicate.</param>
    /// <param name="cancellation">Stops before the next replicate.</param>
    /// <exception cref="DescriptionException">The farm has no coupling, or no fish.</exception>
    public static CouplingStudyResult Play(
        FarmPlan plan, FarmLibrary library, ulong seed, int replicates, IReadOnlyList<int> days, int window, int threads, Action? done = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(days);
        if (plan.Farm.Coupling is null)
        {
            throw new DescriptionException("the farm has no 'coupling': there is no valve whose opening could be planned.");
        }

        if (plan.Farm.Stocking.Count == 0)
        {
            throw new DescriptionException("the farm has no 'stocking': without fish there is nothing to couple.");
        }

        CouplingRun[][][] runs = ParallelRuns.Play(replicates, threads, r => CouplingTrial.Play(plan, library, seed, (uint)r + 1, days, window), (_, _) => done?.Invoke(), cancellation);
        var candidates = new List<CouplingCandidate>();
        int apart = Option("apart");
        for (int d = 0; d < days.Count; d++)
        {
            for (int o = 0; o < CouplingOption.All.Count; o++)
            {
                int day = d;
                int option = o;
                candidates.Add(CouplingCandidate.Of(days[d], CouplingOption.All[o], [.. runs.Select(r => r[day][option])], [.. runs.Select(r => r[day][apart])]));
            }
        }

        IReadOnlyList<Easing> eased = Easing.Play(plan, library, seed, replicates, days[^1], threads, cancellation);
        return new CouplingStudyResult(plan, seed, replicates, window, days, candidates, eased, runs[0][0][0].Limits);
    }

    /// <summary>Candidate days from one on, every so many days, moved on to the next Monday where the gates ask for the early week.</summary>
    public static IReadOnlyList<int> Days(FarmDescription farm, int from, int to, int every)
    {
        ArgumentNullException.ThrowIfNull(farm);
        int first = from;
        if (farm.Coupling?.Gates.EarlyInWeek == true)
        {
            int weekday = (int)farm.Start.AddDays(from).DayOfWeek;
            first += (Monday - weekday + DaysOfWeek) % DaysOfWeek;
        }

        return [.. Enumerable.Range(0, Math.Max(1, ((to - first) / every) + 1)).Select(i => first + (i * every))];
    }

    /// <summary>Index of a way in <see cref="CouplingOption.All"/> by its key.</summary>
    public static int Option(string key) => CouplingOption.All.ToList().FindIndex(o => o.Key == key);
}

/// <summary>A candidate day and way over all replicates.</summary>
/// <param name="Day">The day.</param>
/// <param name="Option">The way.</param>
/// <param name="Kept">Share of replicates in which every gate held on the day (of a way that opens) and every limit held over the window.</param>
/// <param name="GatesHeld">Share in which every gate held on the day.</param>
/// <param name="LimitsHeld">Share in which every limit held over the window.</param>
/// <param name="Binds">What broke, the most frequent first: gates on the day, limits after it, with the share of replicates.</param>
/// <param name="Worst">Bands of the worst of each limit, in the order of <see cref="CouplingLimit.All"/>.</param>
/// <param name="Heads">First-grade heads over the window less those of staying apart.</param>
/// <param name="CropKilograms">Crops over the window less those of staying apart, kg.</param>
/// <param name="HeatKilowattHours">Heat of the water heaters over the window less that of staying apart, kWh.</param>
/// <param name="Valve">Median flow through the valve by day of the window, L/h.</param>
/// <param name="Gates">Median reading of each gate on the day.</param>
public sealed record CouplingCandidate(
    int Day, CouplingOption Option, double Kept, double GatesHeld, double LimitsHeld, IReadOnlyList<(string What, double Share)> Binds, Band[] Worst,
    Band Heads, Band CropKilograms, Band HeatKilowattHours, double[] Valve, IReadOnlyList<GateReading> Gates)
{
    internal static CouplingCandidate Of(int day, CouplingOption option, CouplingRun[] runs, CouplingRun[] apart)
    {
        double n = runs.Length;
        bool Gated(CouplingRun r) => !option.Opens || r.Refused == CouplingGates.None;
        var broke = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (CouplingRun run in runs)
        {
            if (option.Opens)
            {
                // Days on end are counted from when the water and the feed hold: where those do not, they are the reason.
                const CouplingGates Water = CouplingGates.Tan | CouplingGates.Nitrite | CouplingGates.Feed;
                CouplingGates named = (run.Refused & Water) != 0 ? run.Refused & ~CouplingGates.Days : run.Refused;
                foreach (GateReading gate in run.Gates.Where(g => named.HasFlag(g.Gate)))
                {
                    broke[gate.Name] = broke.GetValueOrDefault(gate.Name) + 1;
                }
            }

            for (int l = 0; l < CouplingLimit.All.Count; l++)
            {
                if (!run.Holds(l))
                {
                    string name = $"{CouplingLimit.All[l].Name} afterwards";
                    broke[name] = broke.GetValueOrDefault(name) + 1;
                }
            }
        }

        return new CouplingCandidate(
            day, option, runs.Count(r => Gated(r) && r.HoldsAll) / n, runs.Count(r => r.Refused == CouplingGates.None) / n, runs.Count(r => r.HoldsAll) / n,
            [.. broke.OrderByDescending(b => b.Value).ThenBy(b => b.Key, StringComparer.Ordinal).Select(b => (b.Key, b.Value / n))],
            [.. CouplingLimit.All.Select((_, l) => Band.Of(runs.Select(r => r.Worst[l])))],
            Band.Of(runs.Zip(apart, (r, a) => r.Heads - a.Heads)), Band.Of(runs.Zip(apart, (r, a) => r.CropKilograms - a.CropKilograms)),
            Band.Of(runs.Zip(apart, (r, a) => r.HeatKilowattHours - a.HeatKilowattHours)),
            [.. Enumerable.Range(0, runs[0].Valve.Length).Select(d => Band.Of(runs.Select(r => r.Valve[d])).Median)],
            [.. runs[0].Gates.Select((g, i) => g with { Value = Band.Of(runs.Select(r => r.Gates[i].Value)).Median, Holds = runs.Count(r => r.Gates[i].Holds) > n / 2 })]);
    }
}

/// <summary>Something that might bring the day forward, tried: the first day on which every gate holds, with it and without.</summary>
/// <param name="Words">What was changed; empty for the plan as it stands.</param>
/// <param name="FirstDay">Band of the first day on which every gate holds.</param>
public sealed record Easing(string Words, Band FirstDay)
{
    private const double EarlierDays = 14;
    private const double MoreFish = 1.3;
    private const double MatureShare = 0.15;
    private const double MoreBeads = 1.4;

    internal static IReadOnlyList<Easing> Play(FarmPlan plan, FarmLibrary library, ulong seed, int replicates, int lastDay, int threads, CancellationToken cancellation)
    {
        double first = plan.Farm.Stocking.Values.Min(s => s.AfterDays);
        (string Words, FarmDescription Farm)[] farms =
        [
            (string.Empty, plan.Farm),
            ($"{MatureShare:0%} mature media in the filter", plan.Farm with { Filters = plan.Farm.Filters.ToDictionary(f => f.Key, f => f.Value with { MatureMediaShare = Math.Max(MatureShare, f.Value.MatureMediaShare) }) }),
            ($"the later batches {EarlierDays:0} days earlier", plan.Farm with { Stocking = plan.Farm.Stocking.ToDictionary(s => s.Key, s => s.Value.AfterDays >= first + EarlierDays ? s.Value with { AfterDays = s.Value.AfterDays - EarlierDays } : s.Value) }),
            ($"{MoreFish - 1:0%} more fish in every batch", plan.Farm with { Stocking = plan.Farm.Stocking.ToDictionary(s => s.Key, s => s.Value with { Number = (int)Math.Round(s.Value.Number * MoreFish) }) }),
            ($"{MoreBeads - 1:0%} more beads", plan.Farm with { Filters = plan.Farm.Filters.ToDictionary(f => f.Key, f => f.Value with { BeadsLitres = f.Value.BeadsLitres * MoreBeads }) }),
        ];
        double[] days = ParallelRuns.Play(farms.Length * replicates, threads, i => FirstDayOf(plan.With(farms[i / replicates].Words, farms[i / replicates].Farm), library, seed, (uint)(i % replicates) + 1, lastDay), null, cancellation);
        return [.. farms.Select((f, k) => new Easing(f.Words, Band.Of(days.Skip(k * replicates).Take(replicates))))];
    }

    private static double FirstDayOf(FarmPlan plan, FarmLibrary library, ulong seed, uint replicate, int lastDay)
    {
        FarmDescription farm = Unknowns.FarmUnknowns.With(plan.Farm, plan.Unknowns, Unknowns.FarmUnknowns.Draw(plan.Unknowns, seed, replicate));
        var season = new Farm.Seasons.Season(CouplingOption.Apart(farm) with { LengthDays = lastDay + 1 }, library, seed, replicate);
        for (int day = 1; day <= lastDay; day++)
        {
            season.Advance(FarmWork.At(day, 7));
            if ((season.State.Operations.Refused & ~CouplingGates.NotBefore) == CouplingGates.None && season.State.Totals.FeedGrams > 0)
            {
                return day;
            }
        }

        return double.NaN;
    }
}
