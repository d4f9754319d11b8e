namespace FarmTwin.Studies.Statistics;

/// <summary>Wilcoxon's test of paired differences, exact: ranks keep their size, signs are turned over in every possible way.</summary>
/// <remarks>
/// Frank Wilcoxon, Individual comparisons by ranking methods, Biometrics Bulletin 1 (1945) 80–83. Differences of nothing are left out; equal
/// sizes share their mean rank, and the distribution is that of the ranks as they are.
/// </remarks>
public static class SignedRanks
{
    /// <summary>The chance, under no difference, of rank sums at least as uneven as these, both ways; 1 where nothing differs.</summary>
    /// <param name="differences">The paired differences, finite.</param>
    public static double TwoSided(IEnumerable<double> differences)
    {
        double[] ordered = [.. differences.Where(d => d != 0).OrderBy(Math.Abs)];
        int n = ordered.Length;
        if (n == 0)
        {
            return 1;
        }

        // Twice the ranks are whole numbers even where two share a mean rank.
        var ranks = new int[n];
        for (int i = 0; i < n;)
        {
            int j = i;
            while (j < n && Math.Abs(ordered[j]) == Math.Abs(ordered[i]))
            {
                j++;
            }

            Array.Fill(ranks, i + j + 1, i, j - i);
            i = j;
        }

        int all = ranks.Sum();
        int positive = Enumerable.Range(0, n).Where(i => ordered[i] > 0).Sum(i => ranks[i]);
        int smaller = Math.Min(positive, all - positive);
        var chance = new double[all + 1];
        chance[0] = 1;
        int reached = 0;
        foreach (int rank in ranks)
        {
            reached += rank;
            for (int sum = reached; sum >= 0; sum--)
            {
                chance[sum] = 0.5 * (chance[sum] + (sum >= rank ? chance[sum - rank] : 0));
            }
        }

        return Math.Min(1, 2 * chance.AsSpan(0, smaller + 1).ToArray().Sum());
    }

    /// <summary>Holm's correction: the chances as they stand when several figures are looked at at once.</summary>
    /// <remarks>Sture Holm, A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6 (1979) 65–70.</remarks>
    /// <param name="chances">Uncorrected, each in [0, 1]; what is not a number stays so and does not count.</param>
    public static double[] Holm(IReadOnlyList<double> chances)
    {
        ArgumentNullException.ThrowIfNull(chances);
        int[] order = [.. Enumerable.Range(0, chances.Count).Where(i => !double.IsNaN(chances[i])).OrderBy(i => chances[i])];
        double[] corrected = [.. chances];
        double highest = 0;
        for (int k = 0; k < order.Length; k++)
        {
            highest = Math.Max(highest, Math.Min(1, (order.Length - k) * chances[order[k]]));
            corrected[order[k]] = highest;
        }

        return corrected;
    }
}
