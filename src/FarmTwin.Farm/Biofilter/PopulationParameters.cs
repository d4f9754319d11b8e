namespace FarmTwin.Farm.Biofilter;

/// <summary>Growth kinetics of one nitrifier population at 20 °C.</summary>
/// <param name="MaximumGrowthRatePerDay">Largest specific growth rate at 20 °C, 1/d.</param>
/// <param name="YieldGramsCodPerGramN">Biomass formed, g COD per g N oxidized.</param>
/// <param name="DecayRatePerDay">Decay at 20 °C, 1/d.</param>
/// <param name="HalfSaturationMilligramsNPerLitre">Half-saturation for the nitrogen form it oxidizes, mg N/L.</param>
/// <param name="OxygenHalfSaturationMilligramsPerLitre">Half-saturation for oxygen, mg/L.</param>
/// <param name="ActivationEnergyKilojoulesPerMole">Arrhenius activation energy of growth, kJ/mol.</param>
/// <param name="AmmoniaInhibitionMilligramsNPerLitre">Un-ionized ammonia that halves growth, mg N/L.</param>
/// <param name="MaximumBiomassGramsCodPerSquareMetre">Biomass of a full film, g COD/m²: capacity of a full film × yield / growth rate.</param>
public sealed record PopulationParameters(
    double MaximumGrowthRatePerDay,
    double YieldGramsCodPerGramN,
    double DecayRatePerDay,
    double HalfSaturationMilligramsNPerLitre,
    double OxygenHalfSaturationMilligramsPerLitre,
    double ActivationEnergyKilojoulesPerMole,
    double AmmoniaInhibitionMilligramsNPerLitre,
    double MaximumBiomassGramsCodPerSquareMetre);
