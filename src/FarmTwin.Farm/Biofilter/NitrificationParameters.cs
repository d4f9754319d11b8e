using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Biofilter;

/// <summary>Parameters of nitrifying films, as <c>processes/nitrification.json</c> states them.</summary>
/// <remarks>Immutable; shared between runs. Concentrations mg N/L, oxygen mg/L, alkalinity mg CaCO3/L, temperature °C, rates per day.</remarks>
public sealed record NitrificationParameters
{
    /// <summary>Kinetics of the population that makes nitrite.</summary>
    public required PopulationParameters AmmoniaOxidizers { get; init; }

    /// <summary>Kinetics of the population that makes nitrate.</summary>
    public required PopulationParameters NitriteOxidizers { get; init; }

    /// <summary>Mass transfer velocity between bulk water and film, k_L, m/d.</summary>
    public required double TransferVelocityMetresPerDay { get; init; }

    /// <summary>Oxygen diffusivity over ammonium diffusivity in water: the transfer velocity of oxygen is that much larger.</summary>
    public required double OxygenDiffusivityRatio { get; init; }

    /// <summary>Growth per °C of the flux of an oxygen-limited film (base of the power).</summary>
    public required double OxygenLimitedTemperatureBase { get; init; }

    /// <summary>Growth per °C of decay (base of the power; reference 20 °C).</summary>
    public required double DecayTemperatureBase { get; init; }

    /// <summary>Above this temperature growth rises no more, °C.</summary>
    public required double WarmLimitCelsius { get; init; }

    /// <summary>At this temperature growth has fallen to nothing, °C.</summary>
    public required double LethalLimitCelsius { get; init; }

    /// <summary>Half-saturation of ammonia oxidizers for alkalinity, mg CaCO3/L; 0 switches the factor off.</summary>
    public required double AlkalinityHalfSaturationMilligramsPerLitre { get; init; }

    /// <summary>The pH factor never falls below this share, so that a film never dies to exactly nothing.</summary>
    public required double LowestAcidityFactor { get; init; }

    /// <summary>The film never falls below this share of a full one: water and air always bring some cells.</summary>
    public required double FloorShare { get; init; }

    /// <summary>Starting share of a full film without any seeding, fed from tap water.</summary>
    public required double TapWaterInoculumShare { get; init; }

    /// <summary>Share of its film that mature media keeps through the move.</summary>
    public required double SeedingEfficiency { get; init; }

    /// <summary>Most that labile organic carbon takes from the ammonia flux (share).</summary>
    public required double CarbonCompetitionLoss { get; init; }

    /// <summary>Ratio of labile carbon to TAN load at which that loss is complete, g/g.</summary>
    public required double CarbonCompetitionRatio { get; init; }

    /// <summary>Which published pH curve is used.</summary>
    public AcidityResponse AcidityResponse { get; init; } = AcidityResponse.Ekama;

    /// <summary>The kinetics of a population.</summary>
    public PopulationParameters Of(NitrifierPopulation population) =>
        population == NitrifierPopulation.AmmoniaOxidizers ? AmmoniaOxidizers : NitriteOxidizers;

    /// <summary>Reads every value by name and unit.</summary>
    /// <param name="set">The set <c>processes/nitrification</c>.</param>
    /// <exception cref="KeyNotFoundException">A value is missing.</exception>
    /// <exception cref="ArgumentException">A value is stated in another unit.</exception>
    public static NitrificationParameters From(ParameterSet set)
    {
        double fullFilm = set.Get("fullFilmCapacity", "g N/m2/d");
        return new NitrificationParameters
        {
            AmmoniaOxidizers = ReadPopulation(set, "ammoniaOxidizer", fullFilm),
            NitriteOxidizers = ReadPopulation(set, "nitriteOxidizer", fullFilm),
            TransferVelocityMetresPerDay = set.Get("transferVelocity", "m/d"),
            OxygenDiffusivityRatio = set.Get("oxygenDiffusivityRatio", "1"),
            OxygenLimitedTemperatureBase = set.Get("oxygenLimitedTemperatureBase", "1"),
            DecayTemperatureBase = set.Get("decayTemperatureBase", "1"),
            WarmLimitCelsius = set.Get("warmLimit", "degC"),
            LethalLimitCelsius = set.Get("lethalLimit", "degC"),
            AlkalinityHalfSaturationMilligramsPerLitre = set.Get("alkalinityHalfSaturation", "mg CaCO3/L"),
            LowestAcidityFactor = set.Get("lowestAcidityFactor", "1"),
            FloorShare = set.Get("floorShare", "1"),
            TapWaterInoculumShare = set.Get("tapWaterInoculum", "1"),
            SeedingEfficiency = set.Get("seedingEfficiency", "1"),
            CarbonCompetitionLoss = set.Get("carbonCompetitionLoss", "1"),
            CarbonCompetitionRatio = set.Get("carbonCompetitionRatio", "g C/g N"),
        };
    }

    private static PopulationParameters ReadPopulation(ParameterSet set, string prefix, double fullFilmCapacity)
    {
        double growth = set.Get(prefix + "MaximumGrowthRate", "1/d");
        double yield = set.Get(prefix + "Yield", "g COD/g N");
        return new PopulationParameters(
            growth,
            yield,
            set.Get(prefix + "DecayRate", "1/d"),
            set.Get(prefix + "HalfSaturation", "mg N/L"),
            set.Get(prefix + "OxygenHalfSaturation", "mg/L"),
            set.Get(prefix + "ActivationEnergy", "kJ/mol"),
            set.Get(prefix + "AmmoniaInhibition", "mg N/L"),
            fullFilmCapacity * yield / growth);
    }
}
