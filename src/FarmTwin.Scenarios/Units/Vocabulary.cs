namespace FarmTwin.Scenarios.Units;

/// <summary>The words in a unit that are no unit: the substances that a mass speaks of, and the things that are counted.</summary>
internal static class Vocabulary
{
    /// <summary>Substances, as they follow a mass or an amount ("3 mg N/L").</summary>
    public static readonly IReadOnlySet<string> Substances = new HashSet<string>(StringComparer.Ordinal)
    {
        "N", "P", "K", "Ca", "Mg", "Na", "Cl", "S", "Fe", "Mn", "Zn", "B", "Cu", "Mo", "Si", "C", "O2", "CO2", "Cl2",
        "TAN", "NH3-N", "NH4-N", "NO2-N", "NO3-N", "NH3", "NH4", "NO2", "NO3", "PO4", "PO4-P", "SO4", "SO4-S",
        "CaCO3", "HCO3", "CaO", "K2O", "P2O5", "NaCl", "NH4Cl", "TSS", "VSS", "TDS", "BOD", "COD",
    };

    // After a mass below the line these are units: W/kg K, J/g C.
    private static readonly HashSet<string> UnitsBelowTheLine = new(StringComparer.Ordinal) { "K", "C" };

    private static readonly HashSet<string> Nouns = new(StringComparer.Ordinal)
    {
        "plant", "head", "fish", "tray", "cell", "board", "raft", "seed", "seedling", "lamp", "bed", "tank", "tier", "pack",
        "person", "item", "piece", "time", "chore", "wash", "dose", "turnover", "feed", "fruit", "call", "trip", "visit", "delivery",
        "sample", "test", "lot", "batch", "fingerling", "push", "sowing", "harvest", "fill", "box", "bag",
    };

    /// <summary>Whether a word is a substance in this place.</summary>
    public static bool IsSubstance(string word, bool belowTheLine) =>
        Substances.Contains(word) && !(belowTheLine && UnitsBelowTheLine.Contains(word));

    /// <summary>The singular of a counted thing, or null where the word is none. A "time" counts nothing in particular: empty.</summary>
    public static string? Noun(string word)
    {
        string? singular = word switch
        {
            "people" => "person",
            "deliveries" => "delivery",
            _ when Nouns.Contains(word) => word,
            _ when word.EndsWith('s') && Nouns.Contains(word[..^1]) => word[..^1],
            _ when word.EndsWith("es", StringComparison.Ordinal) && Nouns.Contains(word[..^2]) => word[..^2],
            _ => null,
        };
        return singular == "time" ? string.Empty : singular;
    }
}
