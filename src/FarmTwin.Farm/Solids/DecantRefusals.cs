namespace FarmTwin.Farm.Solids;

/// <summary>Why a decant is refused; several may hold at once.</summary>
[Flags]
public enum DecantRefusals
{
    /// <summary>Nothing stands against it.</summary>
    None = 0,

    /// <summary>It has not settled long enough.</summary>
    NotSettled = 1,

    /// <summary>No clear water stands far enough above the blanket.</summary>
    NoClearWater = 2,

    /// <summary>It would lift TAN in the plant sump too high.</summary>
    TooMuchTan = 4,

    /// <summary>It would lift nitrite in the plant sump too high.</summary>
    TooMuchNitrite = 8,

    /// <summary>Hydrogen sulphide must be expected.</summary>
    Sulphide = 16,

    /// <summary>Too much is still in suspension.</summary>
    Turbid = 32,
}
