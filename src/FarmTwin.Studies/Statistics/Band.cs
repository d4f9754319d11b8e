using MathNet.Numerics.Statistics;

namespace FarmTwin.Studies.Statistics;

/// <summary>What replicates gave for a figure: median and the band between the lowest and the highest tenth.</summary>
/// <param name="Low">The 10 % quantile; not a number where no replicate has the figure.</param>
/// <param name="Median">The median.</param>
/// <param name="High">The 90 % quantile.</param>
/// <param name="Count">Replicates that have the figure.</param>
/// <param name="Missing">Replicates that have none: a day that never came.</param>
public readonly record struct Band(double Low, double Median, double High, int Count, int Missing)
{
    private const double LowShare = 0.1;

    /// <summary>The band of some values; what is not a number counts as missing.</summary>
    /// <remarks>Quantiles by linear interpolation between order statistics (definition 7 of Hyndman and Fan 1996).</remarks>
    public static Band Of(IEnumerable<double> values)
    {
        double[] all = [.. values];
        double[] there = [.. all.Where(double.IsFinite).Order()];
        return there.Length == 0
            ? new Band(double.NaN, double.NaN, double.NaN, 0, all.Length)
            : new Band(Quantile(there, LowShare), Quantile(there, 0.5), Quantile(there, 1 - LowShare), there.Length, all.Length - there.Length);
    }

    /// <summary>A quantile of ordered values.</summary>
    /// <param name="ordered">Ascending, at least one.</param>
    /// <param name="share">In [0, 1].</param>
    public static double Quantile(double[] ordered, double share) => SortedArrayStatistics.QuantileCustom(ordered, share, QuantileDefinition.R7);
}
