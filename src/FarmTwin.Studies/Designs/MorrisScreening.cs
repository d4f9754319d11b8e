using FarmTwin.Engine.Chance;

namespace FarmTwin.Studies.Designs;

/// <summary>Morris's screening: trajectories that change one factor after the other, and what each change did.</summary>
/// <remarks>
/// Max D. Morris, Factorial sampling plans for preliminary computational experiments, Technometrics 33 (1991) 161–174, on a grid of four levels
/// with steps of 2/3; mean size μ* after F. Campolongo, J. Cariboni, A. Saltelli, Environmental Modelling &amp; Software 22 (2007) 1509–1518.
/// </remarks>
public static class MorrisScreening
{
    private const int Levels = 4;
    private const double Step = (double)Levels / (2 * (Levels - 1));
    private static readonly uint Start = StableHash.Of("morris start");
    private static readonly uint Turn = StableHash.Of("morris order");

    /// <summary>The points, [trajectory × (factors + 1)][factor], each in [0, 1].</summary>
    /// <param name="trajectories">How many, from 1.</param>
    /// <param name="factors">Names of the factors.</param>
    /// <param name="seed">Seed.</param>
    public static double[][] Points(int trajectories, IReadOnlyList<string> factors, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trajectories, 1);
        ArgumentNullException.ThrowIfNull(factors);
        var streams = new RandomStreams(seed, 0);
        var points = new List<double[]>();
        for (int t = 0; t < trajectories; t++)
        {
            uint trajectory = (uint)t;

            // A start on the grid from which a step stays within it, up or down.
            double[] point = [.. factors.Select(f => (int)(streams.Uniform(Start, StableHash.Of(f), trajectory) * Levels) / (double)(Levels - 1))];
            points.Add([.. point]);
            foreach (int f in Enumerable.Range(0, factors.Count).OrderBy(f => streams.Uniform(Turn, StableHash.Of(factors[f]), trajectory)))
            {
                point[f] += point[f] + Step > 1 + 1e-9 ? -Step : Step;
                points.Add([.. point]);
            }
        }

        return [.. points];
    }

    /// <summary>What the factors did: mean size of the elementary effects and their spread.</summary>
    /// <param name="points">The points of <see cref="Points"/>.</param>
    /// <param name="values">The result at each, [point]; a trajectory's step without a finite result on both sides is left out.</param>
    public static IReadOnlyList<ElementaryEffects> Effects(IReadOnlyList<double[]> points, IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(values);
        int factors = points[0].Length;
        List<double>[] effects = [.. Enumerable.Range(0, factors).Select(_ => new List<double>())];
        for (int p = 1; p < points.Count; p++)
        {
            if (p % (factors + 1) == 0)
            {
                continue;
            }

            int moved = Enumerable.Range(0, factors).Single(f => points[p][f] != points[p - 1][f]);
            double effect = (values[p] - values[p - 1]) / (points[p][moved] - points[p - 1][moved]);
            if (double.IsFinite(effect))
            {
                effects[moved].Add(effect);
            }
        }

        return [.. effects.Select(e =>
        {
            double mean = e.Count > 0 ? e.Average() : double.NaN;
            double spread = e.Count > 1 ? Math.Sqrt(e.Sum(x => (x - mean) * (x - mean)) / (e.Count - 1)) : double.NaN;
            return new ElementaryEffects(e.Count > 0 ? e.Average(Math.Abs) : double.NaN, mean, spread, e.Count);
        })];
    }
}

/// <summary>What a factor did over its whole range, as steps found it.</summary>
/// <param name="MeanSize">μ*: mean size; how much the factor moves the result.</param>
/// <param name="Mean">μ: mean with sign.</param>
/// <param name="Spread">σ: spread; large against μ* where the effect bends or depends on other factors.</param>
/// <param name="Count">Steps.</param>
public readonly record struct ElementaryEffects(double MeanSize, double Mean, double Spread, int Count);
