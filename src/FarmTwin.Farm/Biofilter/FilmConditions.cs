namespace FarmTwin.Farm.Biofilter;

/// <summary>The water that a film meets during a step.</summary>
/// <param name="TemperatureCelsius">Water temperature, °C.</param>
/// <param name="PH">pH of the bulk water.</param>
/// <param name="OxygenMilligramsPerLitre">Dissolved oxygen, mg/L (the iterate of the joint solve).</param>
/// <param name="UnionizedAmmoniaMilligramsNPerLitre">NH3 as N, mg/L.</param>
/// <param name="AlkalinityMilligramsPerLitre">Alkalinity as CaCO3, mg/L.</param>
public readonly record struct FilmConditions(
    double TemperatureCelsius,
    double PH,
    double OxygenMilligramsPerLitre,
    double UnionizedAmmoniaMilligramsNPerLitre,
    double AlkalinityMilligramsPerLitre);
