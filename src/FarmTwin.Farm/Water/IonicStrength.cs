namespace FarmTwin.Farm.Water;

/// <summary>Ionic strength of a water, mol/L.</summary>
public static class IonicStrength
{
    private const double MolesPerLitrePerMicrosiemens = 1.6e-5;

    /// <summary>I = ½ Σ z² c of the ions, with bicarbonate taken as large as the alkalinity (whatever closes the charge counts
    /// once).</summary>
    /// <remarks>Needs no pH, so it can be known before pH is solved; below pH 8.5 within 3 % of the sum over species.</remarks>
    /// <param name="ions">mol/L.</param>
    public static double MolesPerLitre(in Ions ions) =>
        0.5 * (ions.Na + ions.K + ions.TAN + ions.Cl + ions.NitrateN + ions.NitriteN + ions.P
            + (4 * (ions.Ca + ions.Mg + ions.SulfateS)) + Math.Abs(Alkalinity.EquivalentsPerLitre(in ions)));

    /// <summary>The rule I = 1.6e-5 × conductivity, for water of which only a meter reading is known.</summary>
    /// <remarks>As in water chemistry textbooks; fresh water; within about 20 %.</remarks>
    /// <param name="microsiemensPerCentimetre">Conductivity at 25 °C, µS/cm.</param>
    public static double FromConductivity(double microsiemensPerCentimetre) => MolesPerLitrePerMicrosiemens * microsiemensPerCentimetre;
}
