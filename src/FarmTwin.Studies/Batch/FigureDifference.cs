using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.Batch;

/// <summary>A figure of a plan beside that of the plan it is compared with.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Band">Median and band of the plan itself.</param>
/// <param name="Difference">The paired difference to the other plan.</param>
/// <param name="Chance">Chance of so uneven a difference under none, corrected for all figures looked at (Holm); not a number without pairs.</param>
public sealed record FigureDifference(Headline Figure, Band Band, PairedDifference Difference, double Chance)
{
    private const double Level = 0.05;

    /// <summary>Whether the difference stands out of the noise of weather and unknowns.</summary>
    public bool StandsOut => Chance < Level && Difference.Mean != 0;

    /// <summary>Whether it stands out and is the better way; false where neither way is.</summary>
    public bool IsBetter => StandsOut && Figure.Wanted != Wanted.Neither && Difference.Mean > 0 == (Figure.Wanted == Wanted.More);
}
