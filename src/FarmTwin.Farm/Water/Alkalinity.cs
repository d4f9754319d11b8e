namespace FarmTwin.Farm.Water;

/// <summary>Titration alkalinity from the ions: it is derived, never carried, so that no process can count it twice.</summary>
/// <remarks>
/// Explicit conservative form, Wolf-Gladrow, Zeebe, Klaas, Körtzinger and Dickson 2007, Marine Chemistry 106:287-300 (from
/// memory of the source; the per-mole effects after Soetaert et al. 2007). Silicate, organic acids and the charge of iron
/// chelates are left out (under 0.1 meq/L).
/// </remarks>
public static class Alkalinity
{
    /// <summary>Alkalinity, eq/L. May be negative: such water holds free mineral acid.</summary>
    /// <param name="ions">mol/L.</param>
    public static double EquivalentsPerLitre(in Ions ions) =>
        ions.Na + ions.K + (2 * (ions.Ca + ions.Mg)) + ions.TAN
        - ions.Cl - ions.NitrateN - ions.NitriteN - (2 * ions.SulfateS) - ions.P;

    /// <summary>Alkalinity as a test kit prints it, mg/L as CaCO3.</summary>
    /// <param name="equivalentsPerLitre">eq/L.</param>
    public static double MilligramsCalciumCarbonatePerLitre(double equivalentsPerLitre) =>
        equivalentsPerLitre * UnitConstants.GramsCalciumCarbonatePerEquivalent * UnitConstants.GramsPerKilogram;

    /// <summary>Alkalinity in eq/L from mg/L as CaCO3.</summary>
    /// <param name="milligramsCalciumCarbonatePerLitre">mg/L as CaCO3.</param>
    public static double EquivalentsFromCalciumCarbonate(double milligramsCalciumCarbonatePerLitre) =>
        milligramsCalciumCarbonatePerLitre / (UnitConstants.GramsCalciumCarbonatePerEquivalent * UnitConstants.GramsPerKilogram);
}
