namespace FarmTwin.Farm.Water;

/// <summary>Ionic strength of a water, mol/L.</summary>
public static class IonicStrength
{
    /// <summary>I = ½ Σ z² c of the ions, with bicarbonate taken as large as the alkalinity (whatever closes the charge counts
    /// once).</summary>
    /// <remarks>Needs no pH, so it can be known before pH is solved; below pH 8.5 within 3 % of the sum over species.</remarks>
    /// <param name="ions">mol/L.</param>
    public static double MolesPerLitre(in Ions ions) =>
        0.5 * (ions.Na + ions.K + ions.TAN + ions.Cl + ions.NitrateN + ions.NitriteN + ions.P
            + (4 * (ions.Ca + ions.Mg + ions.SulfateS)) + Math.Abs(Alkalinity.EquivalentsPerLitre(in ions)));
}
