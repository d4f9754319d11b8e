namespace FarmTwin.Farm.Solids;

/// <summary>Order of the elements held by solids: N, P, K, Ca, Mg, Na, Cl, S, Fe, indices 0 to 8.</summary>
/// <remarks>Plain indices and not an enum, so that they address a row of the state directly.</remarks>
public static class SolidsElement
{
    /// <summary>Nitrogen.</summary>
    public const int Nitrogen = 0;

    /// <summary>Phosphorus.</summary>
    public const int Phosphorus = 1;

    /// <summary>Potassium.</summary>
    public const int Potassium = 2;

    /// <summary>Calcium.</summary>
    public const int Calcium = 3;

    /// <summary>Magnesium.</summary>
    public const int Magnesium = 4;

    /// <summary>Sodium.</summary>
    public const int Sodium = 5;

    /// <summary>Chloride.</summary>
    public const int Chloride = 6;

    /// <summary>Sulfur.</summary>
    public const int Sulfur = 7;

    /// <summary>Iron.</summary>
    public const int Iron = 8;

    /// <summary>How many there are.</summary>
    public const int Count = 9;
}
