namespace FarmTwin.Farm.Water;

/// <summary>The carbonate system solved at a given alkalinity and inorganic carbon.</summary>
/// <param name="PH">pH as a meter reads it (activity). NaN if an input was NaN; 2 or 12.5 if the water lies beyond.</param>
/// <param name="CarbonDioxideMolesPerLitre">Dissolved carbon dioxide, mol/L.</param>
/// <param name="SlopeOfCarbonDioxide">
/// dCO2/dDIC at fixed alkalinity, a pure number from 0 to 1: in CO2 = CO2₀ + slope (DIC - DIC₀) it makes the stripping of
/// carbon linear. The ratio CO2/DIC in its place does not converge.
/// </param>
public readonly record struct CarbonateState(double PH, double CarbonDioxideMolesPerLitre, double SlopeOfCarbonDioxide);
