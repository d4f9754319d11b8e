using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Fish;

/// <summary>What a feed is made of, as fed, and where what it carries goes.</summary>
/// <param name="ProteinFraction">Crude protein, g/g.</param>
/// <param name="GramsPerKilogram">Content of the nine elements, g per kg as fed; nitrogen is protein over 6.25.</param>
/// <param name="SolidShare">
/// Share of each offered element that leaves as solids (faeces and uneaten feed). Nitrogen's entry is not used: its share follows
/// from the digestibility and the uneaten feed.
/// </param>
/// <param name="DryMatterFraction">Dry matter, g/g.</param>
/// <param name="UneatenFraction">Share of what is offered that no fish takes even when hungry, g/g.</param>
public sealed record FeedComposition(
    double ProteinFraction, ElementGrams GramsPerKilogram, ElementGrams SolidShare, double DryMatterFraction, double UneatenFraction)
{
    /// <summary>Grams of crude protein per gram of nitrogen: by definition of crude protein (Jones 1931, the general factor).</summary>
    public const double ProteinPerNitrogen = 6.25;

    /// <summary>Reads a feed from its parameter set.</summary>
    public static FeedComposition From(ParameterSet set)
    {
        double protein = set.Get("crudeProtein", "g/g");
        return new FeedComposition(
            protein,
            new ElementGrams(
                Nitrogen: protein / ProteinPerNitrogen * UnitConstants.GramsPerKilogram,
                Phosphorus: set.Get("phosphorus", "g/kg"),
                Potassium: set.Get("potassium", "g/kg"),
                Calcium: set.Get("calcium", "g/kg"),
                Magnesium: set.Get("magnesium", "g/kg"),
                Sodium: set.Get("sodium", "g/kg"),
                Chloride: set.Get("chlorine", "g/kg"),
                Sulfur: set.Get("sulfur", "g/kg"),
                Iron: set.Get("iron", "g/kg")),
            new ElementGrams(
                Nitrogen: 0,
                Phosphorus: set.Get("phosphorusSolidShare", "1"),
                Potassium: set.Get("potassiumSolidShare", "1"),
                Calcium: set.Get("calciumSolidShare", "1"),
                Magnesium: set.Get("magnesiumSolidShare", "1"),
                Sodium: set.Get("sodiumSolidShare", "1"),
                Chloride: set.Get("chlorineSolidShare", "1"),
                Sulfur: set.Get("sulfurSolidShare", "1"),
                Iron: set.Get("ironSolidShare", "1")),
            set.Get("dryMatter", "g/g"),
            set.Get("uneatenFraction", "1"));
    }

    /// <summary>The elements in some feed.</summary>
    /// <param name="grams">Feed, g as fed.</param>
    public ElementGrams ElementsOf(double grams) => GramsPerKilogram * (grams / UnitConstants.GramsPerKilogram);
}
