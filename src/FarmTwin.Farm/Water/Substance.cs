namespace FarmTwin.Farm.Water;

/// <summary>What the water carries: a column of <see cref="Basins.Grams"/>.</summary>
/// <remarks>
/// The order is that of the solver's blocks: what acts within minutes and is iterated (0–2), carbon (3), the other ions (4–15) with
/// what is carried along without mass (16–17), suspended solids (20–34). Nitrogen, phosphorus and sulfur species are counted as their element; alkalinity and pH follow from
/// the ions and are never carried.
/// </remarks>
public static class Substance
{
    /// <summary>Dissolved oxygen, g O2.</summary>
    public const int Oxygen = 0;

    /// <summary>Total ammonia nitrogen, g N.</summary>
    public const int Tan = 1;

    /// <summary>Nitrite, g N.</summary>
    public const int Nitrite = 2;

    /// <summary>Inorganic carbon, g C.</summary>
    public const int InorganicCarbon = 3;

    /// <summary>Nitrate, g N.</summary>
    public const int Nitrate = 4;

    /// <summary>Dissolved phosphorus, g P.</summary>
    public const int Phosphorus = 5;

    /// <summary>Potassium, g.</summary>
    public const int Potassium = 6;

    /// <summary>Calcium, g.</summary>
    public const int Calcium = 7;

    /// <summary>Magnesium, g.</summary>
    public const int Magnesium = 8;

    /// <summary>Sodium, g.</summary>
    public const int Sodium = 9;

    /// <summary>Chloride, g.</summary>
    public const int Chloride = 10;

    /// <summary>Sulfate, g S.</summary>
    public const int Sulfate = 11;

    /// <summary>Iron on EDDHA, g; the first of the four that iron is carried by, in the order of <see cref="Plants.IronHolder"/>.</summary>
    public const int Iron = 12;

    /// <summary>How many things hold iron in solution: three chelates and what the water itself has.</summary>
    public const int IronHolders = 4;

    /// <summary>Iron that no chelate holds: of feed, solids and tap, g.</summary>
    public const int IronUnchelated = 15;

    /// <summary>The last of the dissolved.</summary>
    public const int LastDissolved = IronUnchelated;

    /// <summary>Total residual chlorine, g Cl2: a tag without mass in the ledgers, since its chlorine counts as chloride already.</summary>
    public const int Chlorine = 16;

    /// <summary>Pesticide that dripped into the water, in g over the mg/L that kills half of the fish: so its mg/L is a share of that.</summary>
    public const int Pesticide = 17;

    /// <summary>First of the five size classes of suspended solids, g dry matter, largest first.</summary>
    public const int FirstSolidsClass = 20;

    /// <summary>Number of size classes.</summary>
    public const int SolidsClasses = 5;

    /// <summary>Degradable volatile solids within the suspended solids, g.</summary>
    public const int DegradableSolids = 25;

    /// <summary>First of the nine elements within the suspended solids, in the order of <see cref="Element"/>, g.</summary>
    public const int FirstSolidsElement = 26;

    /// <summary>Columns of a basin's row, unused ones included; a multiple of four.</summary>
    public const int Columns = 36;

    /// <summary>First column of the ions that are solved together once a step, with what is merely carried along.</summary>
    public const int FirstIon = Nitrate;

    /// <summary>The dissolved column that an element of the solids is released to.</summary>
    public static int DissolvedOf(int element) => element switch
    {
        Element.Nitrogen => Tan,
        Element.Phosphorus => Phosphorus,
        Element.Potassium => Potassium,
        Element.Calcium => Calcium,
        Element.Magnesium => Magnesium,
        Element.Sodium => Sodium,
        Element.Chloride => Chloride,
        Element.Sulfur => Sulfate,
        Element.Iron => IronUnchelated,
        _ => throw new ArgumentOutOfRangeException(nameof(element)),
    };
}
