namespace FarmTwin.Engine.Chance;

/// <summary>Random variates keyed by what they are for (process, entity, ordinal), never by the order of drawing.</summary>
/// <remarks>
/// Two plans under one seed therefore meet the same weather, and adding a tank changes no other tank's luck. One draw per
/// variate (inverse distribution function), so streams never slip. A value type without state: safe to copy and share.
/// </remarks>
/// <param name="Seed">The user's seed.</param>
/// <param name="Replicate">Which repetition of the season, from 0.</param>
public readonly record struct RandomStreams(ulong Seed, uint Replicate)
{
    private const double TwoToMinus52 = 1.0 / 4503599627370496.0;

    /// <summary>A uniform variate in the open interval (0, 1).</summary>
    /// <param name="process">What is drawn, hashed once by <see cref="StableHash.Of"/> ("weather", "germination").</param>
    /// <param name="entity">For which thing (a cohort's ordinal, 0 where there is one only).</param>
    /// <param name="ordinal">Which time (the day number, or the lot's ordinal).</param>
    public double Uniform(uint process, uint entity, uint ordinal)
    {
        (uint high, uint low, _, _) = Philox.Block(ordinal, entity, process, Replicate, (uint)Seed, (uint)(Seed >> 32));
        return OpenUnit(high, low);
    }

    /// <summary>The middle of one of 2^52 equal parts of (0, 1), chosen by the upper 52 of 64 random bits.</summary>
    /// <remarks>With 53 bits the half would be rounded away in the upper part, and the largest draw would be 1 itself.</remarks>
    public static double OpenUnit(uint high, uint low)
    {
        ulong bits = (((ulong)high << 32) | low) >> 12;
        return (bits + 0.5) * TwoToMinus52;
    }

    /// <summary>A standard normal variate, by the inverse of the normal distribution function.</summary>
    public double Normal(uint process, uint entity, uint ordinal) => NormalDistribution.Quantile(Uniform(process, entity, ordinal));
}
