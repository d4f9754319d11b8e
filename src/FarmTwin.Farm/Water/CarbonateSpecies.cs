namespace FarmTwin.Farm.Water;

/// <summary>What inorganic carbon is present as at a pH, mol/L.</summary>
/// <param name="CarbonDioxideMolesPerLitre">Dissolved CO2 with H2CO3.</param>
/// <param name="BicarbonateMolesPerLitre">HCO3.</param>
/// <param name="CarbonateMolesPerLitre">CO3.</param>
public readonly record struct CarbonateSpecies(
    double CarbonDioxideMolesPerLitre, double BicarbonateMolesPerLitre, double CarbonateMolesPerLitre)
{
    /// <summary>The species at a pH.</summary>
    /// <param name="inorganicCarbonMolesPerLitre">Total inorganic carbon, mol/L.</param>
    /// <param name="pH">pH as a meter reads it.</param>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="ionicStrength">mol/L.</param>
    public static CarbonateSpecies At(double inorganicCarbonMolesPerLitre, double pH, in CarbonateConstants constants, double ionicStrength)
    {
        var k = new EffectiveConstants(in constants, ionicStrength);
        double h = Math.Exp(-pH * CarbonateConstants.LogarithmOfTen);
        double scale = inorganicCarbonMolesPerLitre / ((h * (h + k.K1)) + k.K1K2);
        return new CarbonateSpecies(h * h * scale, k.K1 * h * scale, k.K1K2 * scale);
    }
}
