using FarmTwin.Studies.Plans;

namespace FarmTwin.Studies.Batch;

/// <summary>A run of a batch: which plan, under which seed, in which replicate.</summary>
/// <param name="Plan">Index of the plan.</param>
/// <param name="Seed">Seed of all chance.</param>
/// <param name="Replicate">The repetition, from 1.</param>
public readonly record struct BatchRun(int Plan, ulong Seed, uint Replicate);

/// <summary>Plans, seeds and replicates: every plan is played under every seed as often as there are replicates.</summary>
public sealed class BatchPlan
{
    /// <summary>Makes it.</summary>
    /// <param name="plans">The plans, the first being the one that others are compared with; names are unique.</param>
    /// <param name="seeds">The seeds, at least one, unique.</param>
    /// <param name="replicates">Replicates under each seed, from 1.</param>
    /// <exception cref="ArgumentException">Two plans share a name, or two seeds are the same.</exception>
    public BatchPlan(IReadOnlyList<FarmPlan> plans, IReadOnlyList<ulong> seeds, int replicates)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(seeds);
        ArgumentOutOfRangeException.ThrowIfLessThan(replicates, 1);
        if (plans.GroupBy(p => p.Name, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two plans are called '{twice.Key}': give their files different names.", nameof(plans));
        }

        if (seeds.Count == 0 || seeds.Distinct().Count() != seeds.Count)
        {
            throw new ArgumentException("The seeds must be at least one, each only once.", nameof(seeds));
        }

        Plans = plans;
        Seeds = seeds;
        Replicates = replicates;
        Runs = [.. from plan in Enumerable.Range(0, plans.Count) from seed in seeds from r in Enumerable.Range(1, replicates) select new BatchRun(plan, seed, (uint)r)];
    }

    /// <summary>The plans.</summary>
    public IReadOnlyList<FarmPlan> Plans { get; }

    /// <summary>The seeds.</summary>
    public IReadOnlyList<ulong> Seeds { get; }

    /// <summary>Replicates under each seed.</summary>
    public int Replicates { get; }

    /// <summary>Every run, by plan, seed and replicate: the order of all tables.</summary>
    public IReadOnlyList<BatchRun> Runs { get; }

    /// <summary>Runs of each plan: those of plan p stand at [p × this, (p + 1) × this) of <see cref="Runs"/>.</summary>
    public int RunsOfAPlan => Seeds.Count * Replicates;
}
