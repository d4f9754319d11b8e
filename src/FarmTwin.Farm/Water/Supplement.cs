using FarmTwin.Farm.Library;
using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Water;

/// <summary>A salt, base, acid, chelate or mix that is dosed: what one kilogram of the product, as bought, brings into the
/// water.</summary>
/// <remarks>
/// The data state the composition of the pure substance and the product's purity; the figures here are their product. Alkalinity
/// is not stated: it follows from the ions, hydroxide and acid included. Immutable.
/// </remarks>
/// <param name="Name">Name in the library ("potassium-bicarbonate").</param>
/// <param name="Title">The name a reader sees.</param>
/// <param name="InorganicCarbonGramsPerKilogram">Carbon as carbonate or bicarbonate, g/kg.</param>
/// <param name="TanGramsNPerKilogram">Ammonium nitrogen, g N/kg.</param>
/// <param name="NitrateGramsNPerKilogram">Nitrate nitrogen, g N/kg.</param>
/// <param name="PhosphorusGramsPerKilogram">Phosphate phosphorus, g P/kg.</param>
/// <param name="PotassiumGramsPerKilogram">Potassium, g/kg.</param>
/// <param name="CalciumGramsPerKilogram">Calcium, g/kg.</param>
/// <param name="MagnesiumGramsPerKilogram">Magnesium, g/kg.</param>
/// <param name="SodiumGramsPerKilogram">Sodium, g/kg.</param>
/// <param name="ChlorideGramsPerKilogram">Chloride, g/kg.</param>
/// <param name="SulfateGramsSPerKilogram">Sulfate sulfur, g S/kg.</param>
/// <param name="IronGramsPerKilogram">Iron, chelated or not, g Fe/kg.</param>
/// <param name="IronHolder">What holds it.</param>
/// <param name="HydroxideEquivalentsPerKilogram">Hydroxide, eq/kg; zero for all that is no hydroxide.</param>
/// <param name="DissolvesSlowly">Whether it lies as a solid and dissolves over hours or days (limestone, magnesium
/// hydroxide).</param>
public sealed record Supplement(
    string Name, string Title, double InorganicCarbonGramsPerKilogram, double TanGramsNPerKilogram, double NitrateGramsNPerKilogram,
    double PhosphorusGramsPerKilogram, double PotassiumGramsPerKilogram, double CalciumGramsPerKilogram,
    double MagnesiumGramsPerKilogram, double SodiumGramsPerKilogram, double ChlorideGramsPerKilogram,
    double SulfateGramsSPerKilogram, double IronGramsPerKilogram, IronHolder IronHolder, double HydroxideEquivalentsPerKilogram, bool DissolvesSlowly)
{
    // In the order of IronHolder.
    private static readonly string[] IronNames = ["ironOnEddha", "ironOnDtpa", "ironOnEdta", "ironUnchelated"];

    private static readonly string[] KnownParameters =
    [
        "purity", "inorganicCarbon", "ammoniumNitrogen", "nitrateNitrogen", "phosphorus", "potassium", "calcium", "magnesium", "sodium",
        "chloride", "sulfateSulfur", "hydroxide", "dissolvesSlowly",
        .. IronNames,
    ];

    /// <summary>Whether it is a hydroxide: it can carry weak water to a pH that kills, and is limited by the free carbon
    /// dioxide.</summary>
    public bool IsHydroxide => HydroxideEquivalentsPerKilogram > 0;

    /// <summary>Moles of inorganic carbon in a kilogram.</summary>
    public double InorganicCarbonMolesPerKilogram => InorganicCarbonGramsPerKilogram / UnitConstants.AtomicWeight.Carbon;

    /// <summary>The ions of a kilogram, mol/kg.</summary>
    public Ions IonsMolesPerKilogram => new(
        Na: SodiumGramsPerKilogram / UnitConstants.AtomicWeight.Sodium,
        K: PotassiumGramsPerKilogram / UnitConstants.AtomicWeight.Potassium,
        Ca: CalciumGramsPerKilogram / UnitConstants.AtomicWeight.Calcium,
        Mg: MagnesiumGramsPerKilogram / UnitConstants.AtomicWeight.Magnesium,
        Cl: ChlorideGramsPerKilogram / UnitConstants.AtomicWeight.Chlorine,
        NitrateN: NitrateGramsNPerKilogram / UnitConstants.AtomicWeight.Nitrogen,
        NitriteN: 0,
        SulfateS: SulfateGramsSPerKilogram / UnitConstants.AtomicWeight.Sulfur,
        P: PhosphorusGramsPerKilogram / UnitConstants.AtomicWeight.Phosphorus,
        TAN: TanGramsNPerKilogram / UnitConstants.AtomicWeight.Nitrogen);

    /// <summary>Alkalinity that a kilogram brings once dissolved, eq/kg: above zero for a base, below for an acid.</summary>
    public double AlkalinityEquivalentsPerKilogram
    {
        get
        {
            Ions ions = IonsMolesPerKilogram;
            return Alkalinity.EquivalentsPerLitre(in ions);
        }
    }

    /// <summary>
    /// Free carbon dioxide that a kilogram turns into bicarbonate, eq/kg: all of a hydroxide, half of a carbonate's alkalinity,
    /// none of a bicarbonate's. This is what raises pH at once.
    /// </summary>
    public double CarbonDioxideBoundEquivalentsPerKilogram =>
        Math.Max(0, AlkalinityEquivalentsPerKilogram - InorganicCarbonMolesPerKilogram);

    /// <summary>Reads a supplement. What the set does not name is absent from the product.</summary>
    /// <param name="set">A set of the folder "supplements".</param>
    /// <exception cref="ArgumentException">The set names something that a supplement does not have.</exception>
    public static Supplement From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        foreach (Parameter parameter in set.All)
        {
            if (!KnownParameters.Contains(parameter.Name))
            {
                throw new ArgumentException(
                    $"The supplement '{set.Name}' states '{parameter.Name}', which is none of: {string.Join(", ", KnownParameters)}.");
            }
        }

        double purity = set.Get("purity", "1");
        string[] iron = [.. IronNames.Where(set.Has)];
        if (iron.Length > 1)
        {
            throw new ArgumentException(
                $"The supplement '{set.Name}' states {string.Join(" and ", iron)}: the iron of a product is held by one of them; make two products of it.");
        }

        return new Supplement(
            set.Name,
            set.Title,
            Content("inorganicCarbon", "g/kg"),
            Content("ammoniumNitrogen", "g/kg"),
            Content("nitrateNitrogen", "g/kg"),
            Content("phosphorus", "g/kg"),
            Content("potassium", "g/kg"),
            Content("calcium", "g/kg"),
            Content("magnesium", "g/kg"),
            Content("sodium", "g/kg"),
            Content("chloride", "g/kg"),
            Content("sulfateSulfur", "g/kg"),
            iron.Length == 1 ? Content(iron[0], "g/kg") : 0,
            iron.Length == 1 ? (IronHolder)Array.IndexOf(IronNames, iron[0]) : IronHolder.Eddha,
            Content("hydroxide", "eq/kg"),
            set.Has("dissolvesSlowly") && set.Get("dissolvesSlowly", "1") > 0);

        double Content(string name, string unit) => set.Has(name) ? purity * set.Get(name, unit) : 0;
    }
}
