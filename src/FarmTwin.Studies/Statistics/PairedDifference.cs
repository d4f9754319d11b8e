using MathNet.Numerics.Distributions;

namespace FarmTwin.Studies.Statistics;

/// <summary>How a plan's figure differs from another plan's in the same replicates: same weather, same unknowns.</summary>
/// <param name="Mean">Mean difference; not a number without a pair.</param>
/// <param name="Low">Lower end of its 95 % interval (Student's t); not a number with fewer than two pairs.</param>
/// <param name="High">Upper end.</param>
/// <param name="ShareHigher">Share of pairs in which the plan's figure is higher; pairs that are equal count half.</param>
/// <param name="Chance">Chance of so uneven a difference under none (Wilcoxon, exact, uncorrected).</param>
/// <param name="Pairs">Replicates in which both have the figure.</param>
/// <param name="Unpaired">Replicates in which one of the two has none: a day that never came in one of them.</param>
public readonly record struct PairedDifference(double Mean, double Low, double High, double ShareHigher, double Chance, int Pairs, int Unpaired)
{
    private const double Confidence = 0.95;

    /// <summary>Of a plan's values against another's, replicate by replicate.</summary>
    /// <param name="values">The plan's, [replicate].</param>
    /// <param name="others">The other's, [replicate].</param>
    public static PairedDifference Of(IReadOnlyList<double> values, IReadOnlyList<double> others)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(others);
        double[] differences = [.. values.Zip(others, (v, o) => v - o).Where(double.IsFinite)];
        int unpaired = values.Zip(others).Count(p => double.IsFinite(p.First) != double.IsFinite(p.Second));
        int n = differences.Length;
        if (n == 0)
        {
            return new PairedDifference(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, 0, unpaired);
        }

        double mean = differences.Average();
        double half = n < 2 ? double.NaN
            : StudentT.InvCDF(0, 1, n - 1, (1 + Confidence) / 2) * Math.Sqrt(differences.Sum(d => (d - mean) * (d - mean)) / (n - 1) / n);
        double higher = (differences.Count(d => d > 0) + (0.5 * differences.Count(d => d == 0))) / n;
        return new PairedDifference(mean, mean - half, mean + half, higher, SignedRanks.TwoSided(differences), n, unpaired);
    }
}
