using FarmTwin.Engine.Chance;

namespace FarmTwin.Studies.Designs;

/// <summary>Points spread over the unit cube so that every factor has one in each of equally likely slices.</summary>
/// <remarks>
/// M. D. McKay, R. J. Beckman, W. J. Conover, A comparison of three methods for selecting values of input variables in the analysis of output
/// from a computer code, Technometrics 21 (1979) 239–245. Keyed by the factor's name: another factor added changes no other's slices.
/// </remarks>
public static class LatinHypercube
{
    private static readonly uint Order = StableHash.Of("latin hypercube order");
    private static readonly uint Place = StableHash.Of("latin hypercube place");

    /// <summary>The points, [point][factor], each in (0, 1).</summary>
    /// <param name="points">How many, from 1.</param>
    /// <param name="factors">Names of the factors.</param>
    /// <param name="seed">Seed.</param>
    public static double[][] Points(int points, IReadOnlyList<string> factors, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 1);
        ArgumentNullException.ThrowIfNull(factors);
        var streams = new RandomStreams(seed, 0);
        double[][] all = [.. Enumerable.Range(0, points).Select(_ => new double[factors.Count])];
        for (int f = 0; f < factors.Count; f++)
        {
            uint name = StableHash.Of(factors[f]);
            int[] slices = [.. Enumerable.Range(0, points).OrderBy(i => streams.Uniform(Order, name, (uint)i))];
            for (int p = 0; p < points; p++)
            {
                all[p][f] = (slices[p] + streams.Uniform(Place, name, (uint)p)) / points;
            }
        }

        return all;
    }
}
