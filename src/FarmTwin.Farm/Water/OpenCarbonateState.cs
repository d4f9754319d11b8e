namespace FarmTwin.Farm.Water;

/// <summary>The carbonate system solved at a given alkalinity and dissolved carbon dioxide.</summary>
/// <param name="PH">pH as a meter reads it.</param>
/// <param name="InorganicCarbonMolesPerLitre">Total inorganic carbon, mol/L.</param>
public readonly record struct OpenCarbonateState(double PH, double InorganicCarbonMolesPerLitre);
