namespace FarmTwin.Farm.Water;

/// <summary>A water after a dose, all of it dissolved at once, before any gas is exchanged.</summary>
/// <param name="PHBefore">pH before.</param>
/// <param name="PH">pH after.</param>
/// <param name="AlkalinityMilligramsCalciumCarbonatePerLitre">Alkalinity after, mg/L as CaCO3.</param>
/// <param name="UnionizedAmmoniaMilligramsNPerLitreBefore">NH3-N before, mg N/L.</param>
/// <param name="UnionizedAmmoniaMilligramsNPerLitre">NH3-N after, mg N/L.</param>
/// <param name="CarbonDioxideMolesPerLitreBefore">Free carbon dioxide before, mol/L.</param>
/// <param name="KeepsHydroxideLimit">Whether the carbon dioxide bound at once stays within the allowed share of what is
/// free.</param>
public readonly record struct DosePrediction(
    double PHBefore, double PH, double AlkalinityMilligramsCalciumCarbonatePerLitre, double UnionizedAmmoniaMilligramsNPerLitreBefore,
    double UnionizedAmmoniaMilligramsNPerLitre, double CarbonDioxideMolesPerLitreBefore, bool KeepsHydroxideLimit);
