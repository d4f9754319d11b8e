using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Plants;

/// <summary>One crop's numbers, read from its data file.</summary>
/// <remarks>Immutable. A new crop is a data file. What only plants that are moved on have (seedling, root, stages, losses) is 0 for
/// microgreens, which are cut where they were sown.</remarks>
public sealed record CropParameters
{
    /// <summary>Percent in one.</summary>
    public const double PercentPerUnit = 100;

    private const double MilligramsPerKilogramPerUnit = 1e6;

    /// <summary>The set's name ("lettuce").</summary>
    public required string Name { get; init; }

    /// <summary>The name a reader sees.</summary>
    public required string Title { get; init; }

    /// <summary>LUE0, dry matter per mole of photons in weak light at 400 ppm CO2, g/mol.</summary>
    public required double LightUseEfficiencyGramsPerMole { get; init; }

    /// <summary>I_h, PPFD at which the efficiency has halved at 400 ppm, µmol/m²/s.</summary>
    public required double HalfSaturationMicromolesPerSquareMetreSecond { get; init; }

    /// <summary>R_max, highest relative growth rate, 1/d.</summary>
    public required double RelativeGrowthRateMaximumPerDay { get; init; }

    /// <summary>k L, light caught by a small plant per gram of it, m²/g.</summary>
    public required double EarlyLightCaptureSquareMetresPerGram { get; init; }

    /// <summary>Air temperature at and below which nothing grows, °C.</summary>
    public required double AirMinimumCelsius { get; init; }

    /// <summary>Best air temperature, °C.</summary>
    public required double AirOptimumCelsius { get; init; }

    /// <summary>Air temperature at and above which nothing grows, °C.</summary>
    public required double AirMaximumCelsius { get; init; }

    /// <summary>w0, dry mass of a seedling when it comes up, g.</summary>
    public double SeedlingDryGrams { get; init; }

    /// <summary>Days from sowing to coming up at 20 °C; other temperatures in proportion to the germination table.</summary>
    public required double EmergenceDaysAtTwentyCelsius { get; init; }

    /// <summary>Root over whole-plant dry mass.</summary>
    public double RootShare { get; init; }

    /// <summary>Dry over fresh mass of the shoot (the root is given the same).</summary>
    public required double DryMatterContent { get; init; }

    /// <summary>Tissue targets, g per g dry mass; sodium and chloride have none.</summary>
    public required ElementGrams TissueGramsPerGramDry { get; init; }

    /// <summary>a of the critical nitrogen curve, % at 1 t/ha.</summary>
    public required double CriticalNitrogenPercentAtOneTonne { get; init; }

    /// <summary>b of the critical nitrogen curve.</summary>
    public required double CriticalNitrogenExponent { get; init; }

    /// <summary>Leaf area per gram of dry mass, m²/g.</summary>
    public required double LeafAreaSquareMetresPerGram { get; init; }

    /// <summary>Highest leaf area index.</summary>
    public required double LeafAreaIndexCap { get; init; }

    /// <summary>Factor of growth, 0–1, by root-zone temperature, °C.</summary>
    public required LineTable RootTemperatureFactor { get; init; }

    /// <summary>EC above which NaCl costs growth, mS/cm.</summary>
    public required double SaltThresholdMillisiemensPerCentimetre { get; init; }

    /// <summary>Growth lost per mS/cm above it, 1/(mS/cm).</summary>
    public required double SaltSlopePerMillisiemens { get; init; }

    /// <summary>Share and days of germination by temperature.</summary>
    public required GerminationTable Germination { get; init; }

    /// <summary>Share of sound seed in a usual lot, against the table's.</summary>
    public required double SeedLotShare { get; init; }

    /// <summary>Share of the seedlings culled in the nursery.</summary>
    public double NurseryCullShare { get; init; }

    /// <summary>Share lost at each transplanting.</summary>
    public double TransplantLossShare { get; init; }

    /// <summary>Share lost between final spacing and harvest.</summary>
    public double GrowingLossShare { get; init; }

    /// <summary>Share of the harvest that cannot be sold.</summary>
    public required double UnsaleableShare { get; init; }

    /// <summary>Lightest saleable shoot, g fresh.</summary>
    public double SaleableFreshGramsLow { get; init; }

    /// <summary>Heaviest saleable shoot, g fresh.</summary>
    public double SaleableFreshGramsHigh { get; init; }

    /// <summary>Usual cells a square metre in the nursery.</summary>
    public double NurseryPlantsPerSquareMetre { get; init; }

    /// <summary>Usual plants a square metre in the transplant trough.</summary>
    public double TroughPlantsPerSquareMetre { get; init; }

    /// <summary>Usual plants a square metre at final spacing.</summary>
    public double FinalPlantsPerSquareMetre { get; init; }

    /// <summary>Usual days in the nursery, from sowing.</summary>
    public double NurseryDays { get; init; }

    /// <summary>Usual days in the trough.</summary>
    public double TroughDays { get; init; }

    /// <summary>Usual days at final spacing.</summary>
    public double FinalDays { get; init; }

    /// <summary>What cold kills of it; null for what stands in the nursery only.</summary>
    public ColdTolerance? Cold { get; init; }

    /// <summary>What it has as a fruiting crop; null for one that is sold whole.</summary>
    public FruitParameters? Fruit { get; init; }

    /// <summary>Reads a crop from its data.</summary>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A unit is not the expected one.</exception>
    public static CropParameters From(ParameterSet set) => OfGrowth(set) with
    {
        SeedlingDryGrams = set.Get("seedlingDryMass", "g"),
        RootShare = set.Get("rootShare", "1"),
        NurseryCullShare = set.Get("nurseryCull", "1"),
        TransplantLossShare = set.Get("transplantLoss", "1"),
        GrowingLossShare = set.Get("growingLoss", "1"),
        SaleableFreshGramsLow = set.Get("saleableLow", "g"),
        SaleableFreshGramsHigh = set.Get("saleableHigh", "g"),
        NurseryPlantsPerSquareMetre = set.Get("nurserySpacing", "plants/m2"),
        TroughPlantsPerSquareMetre = set.Get("troughSpacing", "plants/m2"),
        FinalPlantsPerSquareMetre = set.Get("finalSpacing", "plants/m2"),
        NurseryDays = set.Get("nurseryDays", "d"),
        TroughDays = set.Get("troughDays", "d"),
        FinalDays = set.Get("finalDays", "d"),
        Cold = ColdTolerance.From(set),
        Fruit = FruitParameters.From(set),
    };

    /// <summary>Reads what growth, germination and nutrition of any plant need.</summary>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A unit is not the expected one.</exception>
    public static CropParameters OfGrowth(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new CropParameters
        {
            Name = set.Name,
            Title = set.Title,
            LightUseEfficiencyGramsPerMole = set.Get("lightUseEfficiency", "g/mol"),
            HalfSaturationMicromolesPerSquareMetreSecond = set.Get("lightHalfSaturation", "umol/m2/s"),
            RelativeGrowthRateMaximumPerDay = set.Get("relativeGrowthRateMaximum", "1/d"),
            EarlyLightCaptureSquareMetresPerGram = set.Get("earlyLightCapture", "m2/g"),
            AirMinimumCelsius = set.Get("airMinimum", "°C"),
            AirOptimumCelsius = set.Get("airOptimum", "°C"),
            AirMaximumCelsius = set.Get("airMaximum", "°C"),
            EmergenceDaysAtTwentyCelsius = set.Get("emergenceDaysAt20C", "d"),
            DryMatterContent = set.Get("dryMatterContent", "1"),
            TissueGramsPerGramDry = Tissue(set),
            CriticalNitrogenPercentAtOneTonne = set.Get("criticalNitrogenCoefficient", "% DM"),
            CriticalNitrogenExponent = set.Get("criticalNitrogenExponent", "1"),
            LeafAreaSquareMetresPerGram = set.Get("leafAreaRatio", "m2/g"),
            LeafAreaIndexCap = set.Get("leafAreaIndexCap", "1"),
            RootTemperatureFactor = RootTemperature(set),
            SaltThresholdMillisiemensPerCentimetre = set.Get("saltThreshold", "mS/cm"),
            SaltSlopePerMillisiemens = set.Get("saltSlope", "1/(mS/cm)"),
            Germination = GerminationOf(set),
            SeedLotShare = set.Get("seedLotShare", "1"),
            UnsaleableShare = set.Get("unsaleable", "1"),
        };
    }

    private static ElementGrams Tissue(ParameterSet set) => new(
        set.Get("tissueNitrogen", "% DM") / PercentPerUnit,
        set.Get("tissuePhosphorus", "% DM") / PercentPerUnit,
        set.Get("tissuePotassium", "% DM") / PercentPerUnit,
        set.Get("tissueCalcium", "% DM") / PercentPerUnit,
        set.Get("tissueMagnesium", "% DM") / PercentPerUnit,
        Sodium: 0,
        Chloride: 0,
        set.Get("tissueSulfur", "% DM") / PercentPerUnit,
        set.Get("tissueIron", "mg/kg DM") / MilligramsPerKilogramPerUnit);

    private static LineTable RootTemperature(ParameterSet set) => new(
        [
            set.Get("rootColdStop", "°C"), set.Get("rootCool", "°C"), set.Get("rootBestFrom", "°C"), set.Get("rootBestTo", "°C"),
            set.Get("rootWarm", "°C"), set.Get("rootHot", "°C"), set.Get("rootHeatStop", "°C"),
        ],
        [0, set.Get("rootCoolFactor", "1"), 1, 1, set.Get("rootWarmFactor", "1"), set.Get("rootHotFactor", "1"), 0]);

    private static GerminationTable GerminationOf(ParameterSet set)
    {
        Span<double> share = stackalloc double[GerminationTable.Count];
        Span<double> days = stackalloc double[GerminationTable.Count];
        for (int i = 0; i < GerminationTable.Count; i++)
        {
            int celsius = 5 * (i + 1);
            share[i] = set.Get($"germinationShareAt{celsius}C", "1");
            days[i] = set.Get($"germinationDaysAt{celsius}C", "d");
        }

        return new GerminationTable(share, days);
    }
}
