using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Plants;

/// <summary>One kind of microgreens, read from its data file: how it grows, and what its seed brings.</summary>
/// <remarks>Immutable. A new kind is a data file.</remarks>
public sealed record MicrogreenParameters
{
    private const double MilligramsPerKilogramPerUnit = 1e6;

    /// <summary>Growth, germination and nutrition in the light; book-keeping of the cut shoot alone, so without a root.</summary>
    public required CropParameters Growth { get; init; }

    /// <summary>Usual seed, g as sold per m².</summary>
    public required double SeedGramsPerSquareMetre { get; init; }

    /// <summary>Dry over fresh mass of the seed.</summary>
    public required double SeedDryMatter { get; init; }

    /// <summary>Mass of one seed, g.</summary>
    public required double SeedGrams { get; init; }

    /// <summary>e_s: dry mass of the cut shoot when it comes up over the mass of its seed as sold.</summary>
    public required double ShootShareOfSeed { get; init; }

    /// <summary>Elements of the seed, g per g dry.</summary>
    public required ElementGrams SeedElements { get; init; }

    /// <summary>Seed, g/m², from which on neighbours crowd each other out.</summary>
    public required double CrowdingFromGramsPerSquareMetre { get; init; }

    /// <summary>Usual days in the dark.</summary>
    public required double BlackoutDays { get; init; }

    /// <summary>Usual days in the light.</summary>
    public required double LitDays { get; init; }

    /// <summary>Reads a kind from its data.</summary>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A unit is not the expected one.</exception>
    public static MicrogreenParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new MicrogreenParameters
        {
            Growth = CropParameters.OfGrowth(set),
            SeedGramsPerSquareMetre = set.Get("seedDensity", "g/m2"),
            SeedDryMatter = set.Get("seedDryMatter", "1"),
            SeedGrams = set.Get("seedMass", "mg") / UnitConstants.GramsPerKilogram,
            ShootShareOfSeed = set.Get("shootShareOfSeed", "1"),
            SeedElements = new ElementGrams(
                set.Get("seedNitrogen", "% DM") / CropParameters.PercentPerUnit,
                set.Get("seedPhosphorus", "% DM") / CropParameters.PercentPerUnit,
                set.Get("seedPotassium", "% DM") / CropParameters.PercentPerUnit,
                set.Get("seedCalcium", "% DM") / CropParameters.PercentPerUnit,
                set.Get("seedMagnesium", "% DM") / CropParameters.PercentPerUnit,
                Sodium: 0,
                Chloride: 0,
                set.Get("seedSulfur", "% DM") / CropParameters.PercentPerUnit,
                set.Get("seedIron", "mg/kg DM") / MilligramsPerKilogramPerUnit),
            CrowdingFromGramsPerSquareMetre = set.Get("crowdingFrom", "g/m2"),
            BlackoutDays = set.Get("blackoutDays", "d"),
            LitDays = set.Get("litDays", "d"),
        };
    }

    /// <summary>Seed that bears shoots at a sowing density, g/m²: all of it while sparse, and beyond the crowding density only in
    /// proportion to its logarithm, so that more seed still gives more shoots, but less and less.</summary>
    /// <param name="seedGramsPerSquareMetre">Seed sown, g/m².</param>
    public double BearingSeed(double seedGramsPerSquareMetre) =>
        seedGramsPerSquareMetre <= CrowdingFromGramsPerSquareMetre
            ? seedGramsPerSquareMetre
            : CrowdingFromGramsPerSquareMetre * (1 + Math.Log(seedGramsPerSquareMetre / CrowdingFromGramsPerSquareMetre));
}
