namespace FarmTwin.Farm;

/// <summary>The nine elements that are followed through feed, fish, solids, water and plants.</summary>
public static class Element
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

    /// <summary>Chlorine, as chloride.</summary>
    public const int Chloride = 6;

    /// <summary>Sulfur.</summary>
    public const int Sulfur = 7;

    /// <summary>Iron.</summary>
    public const int Iron = 8;

    /// <summary>Number of elements.</summary>
    public const int Count = 9;

    /// <summary>Names, in the order of the constants.</summary>
    public static readonly string[] Names =
        ["nitrogen", "phosphorus", "potassium", "calcium", "magnesium", "sodium", "chloride", "sulfur", "iron"];
}
