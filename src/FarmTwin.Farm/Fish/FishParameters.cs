using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Fish;

/// <summary>A species, strain and site: every number of the fish model.</summary>
/// <remarks>Immutable; safe to share between threads. Values, ranges and sources stand in the library file of the species.</remarks>
/// <param name="GrowthCoefficient">Growth of the cube root of weight at the best temperature when fed to appetite, g^(1/3)/d. The strain and site dial.</param>
/// <param name="FingerlingGrowthShare">Growth coefficient of fingerlings over the general one.</param>
/// <param name="FingerlingGrams">Weight below which fish count as fingerlings, g.</param>
/// <param name="LargeGrowthShare">Growth coefficient of large fish over the general one.</param>
/// <param name="LargeGrams">Weight above which fish count as large for growth, g.</param>
/// <param name="ConversionGramsPerGram">Gain per gram eaten above maintenance, g/g.</param>
/// <param name="MaintenanceGramsPerDay">Feed that holds weight at 28 °C, g/kg^0.8/d.</param>
/// <param name="MaintenanceQ10">Factor on maintenance and resting respiration per 10 °C.</param>
/// <param name="MinimumGrowthCelsius">Lower end of the temperature bell, °C.</param>
/// <param name="OptimumGrowthCelsius">Best temperature, °C.</param>
/// <param name="MaximumGrowthCelsius">Upper end of the temperature bell, °C.</param>
/// <param name="FeedingStopsCelsius">At and below it nothing is eaten, °C.</param>
/// <param name="FeedingFullCelsius">From it up appetite is no longer held back by cold as such, °C.</param>
/// <param name="ProteinDigestibility">Share of eaten protein that is digested, 0–1.</param>
/// <param name="StageConstantPerHour">Rate of each of the two stages between a meal and its ammonia and oxygen, 1/h.</param>
/// <param name="RestingOxygenGramsPerDay">Oxygen of unfed fish at 28 °C, g O2/kg^0.8/d.</param>
/// <param name="FeedingOxygenGramsPerGram">Oxygen for handling a meal, g O2 per g eaten.</param>
/// <param name="RespiratoryQuotient">CO2 breathed out per O2 breathed in, mol/mol.</param>
/// <param name="FaecalDryGramsPerGram">Dry faecal solids, g per g eaten.</param>
/// <param name="TissueGramsPerKilogram">Content of the nine elements of whole fish, g per kg live weight.</param>
/// <param name="BaseMortalityPerDay">Death rate in good care, 1/d.</param>
/// <param name="SmallFishCriticalOxygenMilligramsPerLitre">Oxygen below which small fish eat and grow less, mg/L.</param>
/// <param name="SmallFishGrams">Weight up to which that holds, g.</param>
/// <param name="LargeFishCriticalOxygenMilligramsPerLitre">Oxygen below which large fish eat and grow less, mg/L.</param>
/// <param name="LargeFishGrams">Weight from which that holds, g.</param>
/// <param name="ConversionCriticalOxygenMilligramsPerLitre">Oxygen below which feed is converted worse, mg/L.</param>
/// <param name="ConversionOxygenExponent">Exponent of that fall.</param>
/// <param name="AmmoniaNoEffectMilligramsNPerLitre">Un-ionized ammonia below which growth is whole, mg N/L.</param>
/// <param name="AmmoniaNoGrowthMilligramsNPerLitre">Un-ionized ammonia above which there is no growth, mg N/L.</param>
/// <param name="NitrateNoEffectMilligramsNPerLitre">Nitrate below which growth is whole, mg N/L.</param>
/// <param name="NitrateSpanMilligramsNPerLitre">Nitrate above that which would stop growth on a straight line, mg N/L.</param>
/// <param name="NitrateLowestFactor">Floor of that line, 0–1.</param>
/// <param name="ColdLimitCelsius">Below it fish die of cold, °C.</param>
/// <param name="ColdHazardPerHourSquareKelvin">Death rate per square of the degrees below, 1/(h K²).</param>
/// <param name="HeatLimitCelsius">Above it fish die of heat, °C.</param>
/// <param name="HeatHazardPerHourSquareKelvin">Death rate per square of the degrees above, 1/(h K²).</param>
/// <param name="LowOxygenMilligramsPerLitre">Below it fish begin to suffocate, mg/L.</param>
/// <param name="LowOxygenHazardPerHour">Death rate there, 1/h.</param>
/// <param name="VeryLowOxygenMilligramsPerLitre">Below it they suffocate fast, mg/L.</param>
/// <param name="VeryLowOxygenHazardPerHour">Death rate there, 1/h.</param>
/// <param name="AmmoniaLethalSmallMilligramsNPerLitre">Un-ionized ammonia that kills half of the small fish in 96 h, mg N/L.</param>
/// <param name="AmmoniaLethalSmallGrams">Weight of those, g.</param>
/// <param name="AmmoniaLethalLargeMilligramsNPerLitre">Un-ionized ammonia that kills half of the larger fish in 96 h, mg N/L.</param>
/// <param name="AmmoniaLethalLargeGrams">Weight of those, g.</param>
/// <param name="NitriteLethalLowMilligramsNPerLitre">Nitrite that kills half in 96 h at the low chloride level, mg N/L.</param>
/// <param name="NitriteLowChlorideMilligramsPerLitre">The low chloride level, mg/L.</param>
/// <param name="NitriteLethalHighMilligramsNPerLitre">Nitrite that kills half in 96 h at the high chloride level, mg N/L.</param>
/// <param name="NitriteHighChlorideMilligramsPerLitre">The high chloride level, mg/L.</param>
/// <param name="ChlorineLethalMilligramsPerLitre">Total residual chlorine that kills half in 96 h, mg/L.</param>
/// <param name="LethalSteepness">Power of concentration over lethal concentration in the death rate by ammonia, nitrite and chlorine.</param>
/// <param name="HandlingMortality">Share that dies of grading or moving, 0–1.</param>
/// <param name="HandlingDays">Days over which they die.</param>
/// <param name="HandlingColdCelsius">Below it handling costs more, °C.</param>
/// <param name="HandlingColdMultiplier">Factor on the handling death rate there.</param>
/// <param name="SpreadDrift">Rise of the coefficient of variation per unit of ln(weight).</param>
public sealed record FishParameters(
    double GrowthCoefficient,
    double FingerlingGrowthShare,
    double FingerlingGrams,
    double LargeGrowthShare,
    double LargeGrams,
    double ConversionGramsPerGram,
    double MaintenanceGramsPerDay,
    double MaintenanceQ10,
    double MinimumGrowthCelsius,
    double OptimumGrowthCelsius,
    double MaximumGrowthCelsius,
    double FeedingStopsCelsius,
    double FeedingFullCelsius,
    double ProteinDigestibility,
    double StageConstantPerHour,
    double RestingOxygenGramsPerDay,
    double FeedingOxygenGramsPerGram,
    double RespiratoryQuotient,
    double FaecalDryGramsPerGram,
    ElementGrams TissueGramsPerKilogram,
    double BaseMortalityPerDay,
    double SmallFishCriticalOxygenMilligramsPerLitre,
    double SmallFishGrams,
    double LargeFishCriticalOxygenMilligramsPerLitre,
    double LargeFishGrams,
    double ConversionCriticalOxygenMilligramsPerLitre,
    double ConversionOxygenExponent,
    double AmmoniaNoEffectMilligramsNPerLitre,
    double AmmoniaNoGrowthMilligramsNPerLitre,
    double NitrateNoEffectMilligramsNPerLitre,
    double NitrateSpanMilligramsNPerLitre,
    double NitrateLowestFactor,
    double ColdLimitCelsius,
    double ColdHazardPerHourSquareKelvin,
    double HeatLimitCelsius,
    double HeatHazardPerHourSquareKelvin,
    double LowOxygenMilligramsPerLitre,
    double LowOxygenHazardPerHour,
    double VeryLowOxygenMilligramsPerLitre,
    double VeryLowOxygenHazardPerHour,
    double AmmoniaLethalSmallMilligramsNPerLitre,
    double AmmoniaLethalSmallGrams,
    double AmmoniaLethalLargeMilligramsNPerLitre,
    double AmmoniaLethalLargeGrams,
    double NitriteLethalLowMilligramsNPerLitre,
    double NitriteLowChlorideMilligramsPerLitre,
    double NitriteLethalHighMilligramsNPerLitre,
    double NitriteHighChlorideMilligramsPerLitre,
    double ChlorineLethalMilligramsPerLitre,
    double LethalSteepness,
    double HandlingMortality,
    double HandlingDays,
    double HandlingColdCelsius,
    double HandlingColdMultiplier,
    double SpreadDrift)
{
    /// <summary>Reads a species from its parameter set.</summary>
    /// <param name="set">The species file.</param>
    /// <param name="cautiousAmmonia">Whether growth follows the harsher of the two published ammonia responses.</param>
    /// <param name="strainRate">Growth of this strain on this site over that of the file, above 0.</param>
    public static FishParameters From(ParameterSet set, bool cautiousAmmonia = false, double strainRate = 1) => new(
        GrowthCoefficient: strainRate * set.Get("growthCoefficient", "g^(1/3)/d"),
        FingerlingGrowthShare: set.Get("fingerlingGrowthShare", "1"),
        FingerlingGrams: set.Get("fingerlingGrams", "g"),
        LargeGrowthShare: set.Get("largeGrowthShare", "1"),
        LargeGrams: set.Get("largeGrams", "g"),
        ConversionGramsPerGram: set.Get("conversion", "g/g"),
        MaintenanceGramsPerDay: set.Get("maintenance", "g/kg^0.8/d"),
        MaintenanceQ10: set.Get("maintenanceQ10", "1"),
        MinimumGrowthCelsius: set.Get("minimumGrowthTemperature", "°C"),
        OptimumGrowthCelsius: set.Get("optimumGrowthTemperature", "°C"),
        MaximumGrowthCelsius: set.Get("maximumGrowthTemperature", "°C"),
        FeedingStopsCelsius: set.Get("feedingStopsTemperature", "°C"),
        FeedingFullCelsius: set.Get("feedingFullTemperature", "°C"),
        ProteinDigestibility: set.Get("proteinDigestibility", "1"),
        StageConstantPerHour: set.Get("stageConstant", "1/h"),
        RestingOxygenGramsPerDay: set.Get("restingOxygen", "g/kg^0.8/d"),
        FeedingOxygenGramsPerGram: set.Get("feedingOxygen", "g/g"),
        RespiratoryQuotient: set.Get("respiratoryQuotient", "mol/mol"),
        FaecalDryGramsPerGram: set.Get("faecalDrySolids", "g/g"),
        TissueGramsPerKilogram: new ElementGrams(
            Nitrogen: set.Get("tissueNitrogen", "g/kg"),
            Phosphorus: set.Get("tissuePhosphorus", "g/kg"),
            Potassium: set.Get("tissuePotassium", "g/kg"),
            Calcium: set.Get("tissueCalcium", "g/kg"),
            Magnesium: set.Get("tissueMagnesium", "g/kg"),
            Sodium: set.Get("tissueSodium", "g/kg"),
            Chloride: set.Get("tissueChlorine", "g/kg"),
            Sulfur: set.Get("tissueSulfur", "g/kg"),
            Iron: set.Get("tissueIron", "g/kg")),
        BaseMortalityPerDay: set.Get("baseMortality", "1/d"),
        SmallFishCriticalOxygenMilligramsPerLitre: set.Get("smallFishCriticalOxygen", "mg/L"),
        SmallFishGrams: set.Get("smallFishWeight", "g"),
        LargeFishCriticalOxygenMilligramsPerLitre: set.Get("largeFishCriticalOxygen", "mg/L"),
        LargeFishGrams: set.Get("largeFishWeight", "g"),
        ConversionCriticalOxygenMilligramsPerLitre: set.Get("conversionCriticalOxygen", "mg/L"),
        ConversionOxygenExponent: set.Get("conversionOxygenExponent", "1"),
        AmmoniaNoEffectMilligramsNPerLitre: set.Get(cautiousAmmonia ? "cautiousAmmoniaNoEffect" : "ammoniaNoEffect", "mg N/L"),
        AmmoniaNoGrowthMilligramsNPerLitre: set.Get(cautiousAmmonia ? "cautiousAmmoniaNoGrowth" : "ammoniaNoGrowth", "mg N/L"),
        NitrateNoEffectMilligramsNPerLitre: set.Get("nitrateNoEffect", "mg N/L"),
        NitrateSpanMilligramsNPerLitre: set.Get("nitrateSpan", "mg N/L"),
        NitrateLowestFactor: set.Get("nitrateLowestFactor", "1"),
        ColdLimitCelsius: set.Get("coldLimit", "°C"),
        ColdHazardPerHourSquareKelvin: set.Get("coldHazard", "1/(h K2)"),
        HeatLimitCelsius: set.Get("heatLimit", "°C"),
        HeatHazardPerHourSquareKelvin: set.Get("heatHazard", "1/(h K2)"),
        LowOxygenMilligramsPerLitre: set.Get("lowOxygen", "mg/L"),
        LowOxygenHazardPerHour: set.Get("lowOxygenHazard", "1/h"),
        VeryLowOxygenMilligramsPerLitre: set.Get("veryLowOxygen", "mg/L"),
        VeryLowOxygenHazardPerHour: set.Get("veryLowOxygenHazard", "1/h"),
        AmmoniaLethalSmallMilligramsNPerLitre: set.Get("ammoniaLethalSmall", "mg N/L"),
        AmmoniaLethalSmallGrams: set.Get("ammoniaLethalSmallWeight", "g"),
        AmmoniaLethalLargeMilligramsNPerLitre: set.Get("ammoniaLethalLarge", "mg N/L"),
        AmmoniaLethalLargeGrams: set.Get("ammoniaLethalLargeWeight", "g"),
        NitriteLethalLowMilligramsNPerLitre: set.Get("nitriteLethalLowChloride", "mg N/L"),
        NitriteLowChlorideMilligramsPerLitre: set.Get("nitriteLowChloride", "mg/L"),
        NitriteLethalHighMilligramsNPerLitre: set.Get("nitriteLethalHighChloride", "mg N/L"),
        NitriteHighChlorideMilligramsPerLitre: set.Get("nitriteHighChloride", "mg/L"),
        ChlorineLethalMilligramsPerLitre: set.Get("chlorineLethal", "mg/L"),
        LethalSteepness: set.Get("lethalSteepness", "1"),
        HandlingMortality: set.Get("handlingMortality", "1"),
        HandlingDays: set.Get("handlingDays", "d"),
        HandlingColdCelsius: set.Get("handlingColdLimit", "°C"),
        HandlingColdMultiplier: set.Get("handlingColdMultiplier", "1"),
        SpreadDrift: set.Get("spreadDrift", "1"));

    /// <summary>The elements in some live weight, g.</summary>
    public ElementGrams TissueOf(double grams) => TissueGramsPerKilogram * (grams / UnitConstants.GramsPerKilogram);

    /// <summary>The growth coefficient at a weight, g^(1/3)/d: fingerlings and large fish may have their own.</summary>
    public double GrowthCoefficientAt(double grams) => GrowthCoefficient
        * (grams < FingerlingGrams ? FingerlingGrowthShare : grams > LargeGrams ? LargeGrowthShare : 1);
}
