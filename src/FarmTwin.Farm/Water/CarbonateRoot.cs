namespace FarmTwin.Farm.Water;

/// <summary>As <see cref="CarbonateState"/>, with the activity of H in place of pH: a step needs no logarithm until its end.</summary>
internal readonly record struct CarbonateRoot(double Hydrogen, double CarbonDioxideMolesPerLitre, double SlopeOfCarbonDioxide);
