namespace FarmTwin.Farm.Fish;

/// <summary>What the fish of one tank feel of their water.</summary>
/// <param name="TemperatureCelsius">Water temperature, °C.</param>
/// <param name="OxygenMilligramsPerLitre">Dissolved oxygen, mg/L.</param>
/// <param name="UnionizedAmmoniaMilligramsNPerLitre">Un-ionized ammonia NH3 as N, mg N/L; not TAN.</param>
/// <param name="NitrateMilligramsNPerLitre">Nitrate as N, mg N/L.</param>
/// <param name="NitriteMilligramsNPerLitre">Nitrite as N, mg N/L.</param>
/// <param name="ChlorideMilligramsPerLitre">Chloride, mg Cl/L.</param>
/// <param name="ChlorineMilligramsPerLitre">Total residual chlorine, mg Cl2/L.</param>
/// <param name="PesticideLethalShare">Pesticide over the level that kills half in 96 h.</param>
public readonly record struct FishWater(
    double TemperatureCelsius,
    double OxygenMilligramsPerLitre,
    double UnionizedAmmoniaMilligramsNPerLitre,
    double NitrateMilligramsNPerLitre,
    double NitriteMilligramsNPerLitre,
    double ChlorideMilligramsPerLitre,
    double ChlorineMilligramsPerLitre = 0,
    double PesticideLethalShare = 0);
