namespace FarmTwin.Farm.Operations;

/// <summary>The gates in words.</summary>
public static class CouplingGateNames
{
    private static readonly string[] Words =
    [
        "TAN of the fish loop", "nitrite of the fish loop", "feed below its share of the steady feed", "days on end not yet reached",
        "predicted mixed nitrate", "predicted mixed alkalinity", "ammonium of the plant loop", "oxygen", "sodium of the plant loop",
        "deaths", "late in the week", "before the earliest day", "a treatment or salt", "a pesticide on the plants",
    ];

    /// <summary>Number of gates.</summary>
    public const int Count = 14;

    /// <summary>The name of the gate with a bit number.</summary>
    public static string Name(int bit) => Words[bit];

    /// <summary>All gates of a set, in words.</summary>
    public static string Describe(CouplingGates gates)
    {
        var words = new List<string>();
        for (int bit = 0; bit < Count; bit++)
        {
            if (((int)gates & (1 << bit)) != 0)
            {
                words.Add(Words[bit]);
            }
        }

        return words.Count == 0 ? "none" : string.Join(", ", words);
    }
}
