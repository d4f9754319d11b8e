namespace FarmTwin.Farm.Water;

/// <summary>The published equations behind <see cref="CarbonateConstants"/>: decadic logarithms at a temperature in
/// kelvin.</summary>
/// <remarks>
/// Carbonate and calcite: Plummer and Busenberg 1982, Geochimica et Cosmochimica Acta 46:1011-1040 (Henry and calcite
/// coefficients
/// from memory of the source, not re-read). Water: Harned and Owen as in Stumm and Morgan (from memory, not re-read). Phosphate:
/// 7.207 at 25 °C with 0.99 kcal/mol (PHREEQC database). Dilute fresh water, 0-50 °C. Slow; used to build a table.
/// </remarks>
internal static class EquilibriumEquations
{
    private const double JoulesPerCalorie = 4.184;
    private const double PhosphateEnthalpyJoulesPerMole = 990 * JoulesPerCalorie;
    private const double PhosphatePKAt25 = 7.207;
    private const double KelvinAt25 = 298.15;

    public static double LogK1(double kelvin) =>
        -356.3094 - (0.06091964 * kelvin) + (21834.37 / kelvin) + (126.8339 * Math.Log10(kelvin)) - (1684915 / (kelvin * kelvin));

    public static double LogK2(double kelvin) =>
        -107.8871 - (0.03252849 * kelvin) + (5151.79 / kelvin) + (38.92561 * Math.Log10(kelvin)) - (563713.9 / (kelvin * kelvin));

    public static double LogHenry(double kelvin) =>
        108.3865 + (0.01985076 * kelvin) - (6919.53 / kelvin) - (40.45154 * Math.Log10(kelvin)) + (669365 / (kelvin * kelvin));

    public static double LogCalcite(double kelvin) =>
        -171.9065 - (0.077993 * kelvin) + (2839.319 / kelvin) + (71.595 * Math.Log10(kelvin));

    public static double LogWater(double kelvin) => -((4470.99 / kelvin) - 6.0875 + (0.01706 * kelvin));

    public static double LogPhosphate(double kelvin) =>
        -PhosphatePKAt25 + (PhosphateEnthalpyJoulesPerMole
            / (CarbonateConstants.LogarithmOfTen * UnitConstants.GasConstantJoulePerMoleKelvin) * ((1 / KelvinAt25) - (1 / kelvin)));

    public static double LogAmmonium(double kelvin) => -Ammonia.PKa(kelvin - UnitConstants.ZeroCelsiusInKelvin);

    /// <summary>
    /// The Debye-Hückel A, decadic: 1.8248e6 / (dielectric constant × kelvin)^1.5, with the dielectric constant of
    /// Malmberg and Maryott 1956 (both from memory, not re-read); 0.507, 0.512 and 0.516 at 20, 25 and 30 °C.
    /// </summary>
    public static double DebyeHuckel(double kelvin)
    {
        double t = kelvin - UnitConstants.ZeroCelsiusInKelvin;
        double dielectric = 87.740 + (t * (-0.40008 + (t * (9.398e-4 - (t * 1.410e-6)))));
        return 1.8248e6 / Math.Pow(dielectric * kelvin, 1.5);
    }
}
