namespace FarmTwin.Scenarios;

/// <summary>Finds the valid name that a mistyped one most likely stands for.</summary>
internal static class NearestName
{
    /// <summary>The nearest of the names, or null where none is near enough to be what was meant.</summary>
    /// <param name="given">What the user wrote.</param>
    /// <param name="names">The valid names; of two equally near the earlier wins.</param>
    public static string? Of(string given, IEnumerable<string> names)
    {
        if (string.IsNullOrWhiteSpace(given))
        {
            return null;
        }

        string? best = null;
        int bestDistance = int.MaxValue;
        string folded = Fold(given);
        foreach (string name in names)
        {
            string other = Fold(name);
            int distance = Distance(folded, other);
            int allowed = Math.Max(1, Math.Max(folded.Length, other.Length) / 3);
            bool contained = Math.Min(folded.Length, other.Length) >= 3
                && (other.Contains(folded, StringComparison.Ordinal) || folded.Contains(other, StringComparison.Ordinal));
            if ((distance <= allowed || contained) && distance < bestDistance)
            {
                (best, bestDistance) = (name, distance);
            }
        }

        return best;
    }

    /// <summary>Edits that turn one text into the other: insert, drop, replace, swap of neighbours (optimal string alignment).</summary>
    public static int Distance(string first, string second)
    {
        // A name is short; a text of thousands of characters is no mistyped name and must not cost a quadratic table.
        if (first.Length > 64 || second.Length > 64)
        {
            return Math.Max(first.Length, second.Length);
        }

        var table = new int[first.Length + 1, second.Length + 1];
        for (int i = 0; i <= first.Length; i++)
        {
            table[i, 0] = i;
        }

        for (int j = 0; j <= second.Length; j++)
        {
            table[0, j] = j;
        }

        for (int i = 1; i <= first.Length; i++)
        {
            for (int j = 1; j <= second.Length; j++)
            {
                int replaced = table[i - 1, j - 1] + (first[i - 1] == second[j - 1] ? 0 : 1);
                table[i, j] = Math.Min(replaced, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && first[i - 1] == second[j - 2] && first[i - 2] == second[j - 1])
                {
                    table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
                }
            }
        }

        return table[first.Length, second.Length];
    }

    // Case, hyphens, blanks and underscores are slips, not other names.
    private static string Fold(string name) =>
        string.Concat(name.Where(c => c is not ('-' or '_' or ' '))).ToLowerInvariant();
}
