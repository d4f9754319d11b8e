namespace FarmTwin.Farm.Plants;

/// <summary>The water at the roots, as the plants see it at midnight.</summary>
/// <param name="TemperatureCelsius">Water temperature, °C.</param>
/// <param name="OxygenMilligramsPerLitre">Dissolved oxygen, mg/L.</param>
/// <param name="ConductivityMillisiemensPerCentimetre">EC at 25 °C, mS/cm.</param>
/// <param name="PH">pH; recorded with the rest, growth itself does not depend on it (iron's availability does).</param>
/// <param name="NitrateMilligramsNPerLitre">Nitrate, mg N/L.</param>
/// <param name="TanMilligramsNPerLitre">Ammonium and ammonia, mg N/L.</param>
/// <param name="PhosphorusMilligramsPerLitre">Phosphate, mg P/L.</param>
/// <param name="PotassiumMilligramsPerLitre">mg K/L.</param>
/// <param name="CalciumMilligramsPerLitre">mg Ca/L.</param>
/// <param name="MagnesiumMilligramsPerLitre">mg Mg/L.</param>
/// <param name="SulfurMilligramsPerLitre">Sulfate, mg S/L.</param>
/// <param name="AvailableIronMilligramsPerLitre">Chelated iron times its available share (<see cref="Iron.AvailableShare"/>),
/// mg Fe/L.</param>
/// <param name="SodiumMilligramsPerLitre">mg Na/L.</param>
/// <param name="ChlorideMilligramsPerLitre">mg Cl/L.</param>
/// <param name="WaterFactor">Share of the roots that the water reaches, 0–1; 1 on a raft.</param>
public readonly record struct RootZone(
    double TemperatureCelsius,
    double OxygenMilligramsPerLitre,
    double ConductivityMillisiemensPerCentimetre,
    double PH,
    double NitrateMilligramsNPerLitre,
    double TanMilligramsNPerLitre,
    double PhosphorusMilligramsPerLitre,
    double PotassiumMilligramsPerLitre,
    double CalciumMilligramsPerLitre,
    double MagnesiumMilligramsPerLitre,
    double SulfurMilligramsPerLitre,
    double AvailableIronMilligramsPerLitre,
    double SodiumMilligramsPerLitre = 0,
    double ChlorideMilligramsPerLitre = 0,
    double WaterFactor = 1);
