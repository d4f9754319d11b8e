using MathNet.Numerics.Statistics;

namespace FarmTwin.Studies.Statistics;

/// <summary>How closely two figures rise together, by their ranks alone.</summary>
/// <remarks>Charles Spearman, The proof and measurement of association between two things, American Journal of Psychology 15 (1904) 72–101; ties share their mean rank.</remarks>
public static class RankCorrelation
{
    private const int Fewest = 4;

    /// <summary>In [-1, 1]; not a number with fewer than four pairs or where either never changes.</summary>
    /// <param name="first">One figure, [n].</param>
    /// <param name="second">The other, [n]; pairs in which either is not a number are left out.</param>
    public static double Of(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        (double A, double B)[] pairs = [.. first.Zip(second).Where(p => double.IsFinite(p.First) && double.IsFinite(p.Second))];
        return pairs.Length < Fewest || pairs.All(p => p.A == pairs[0].A) || pairs.All(p => p.B == pairs[0].B)
            ? double.NaN
            : Correlation.Pearson(Ranks(pairs.Select(p => p.A)), Ranks(pairs.Select(p => p.B)));
    }

    private static double[] Ranks(IEnumerable<double> values) => ArrayStatistics.RanksInplace([.. values], RankDefinition.Average);
}
