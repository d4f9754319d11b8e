namespace FarmTwin.Farm.Water;

/// <summary>How fast calcite grows on, and dissolves from, a surface.</summary>
/// <remarks>
/// Plummer, Wigley and Parkhurst 1978: forward rate k1 {H} + k2 {CO2} + k3 of a bare surface; net rate with the affinity term of
/// Parkhurst and Appelo 1999, forward × (Ω^(2/3) − 1). Phosphate covers the sites at which calcite grows (House 1987; Plant and House
/// 2002): Langmuir, half at a few µmol/L. Pure, allocation free.
/// </remarks>
public static class CalciteKinetics
{
    private const double TwoThirds = 2.0 / 3;
    private const double WarmBranchKelvin = 298.15;

    // mmol/(cm² s) into mol/(m² h).
    private const double MolesPerSquareMetreHour = 1e-3 * 1e4 * UnitConstants.SecondsPerHour;

    /// <summary>Rate at which a bare calcite surface dissolves in water free of calcium carbonate, mol/(m² h).</summary>
    /// <param name="celsius">5–60 °C.</param>
    /// <param name="hydrogen">Activity of H.</param>
    /// <param name="carbonDioxideMolesPerLitre">Dissolved CO2, mol/L.</param>
    public static double ForwardMolesPerSquareMetreHour(double celsius, double hydrogen, double carbonDioxideMolesPerLitre)
    {
        double kelvin = celsius + UnitConstants.ZeroCelsiusInKelvin;
        return AcidTerm(kelvin, hydrogen) + CarbonicTerm(kelvin, carbonDioxideMolesPerLitre) + WaterTerm(kelvin);
    }

    /// <summary>Share of the growth that phosphate leaves, 0–1.</summary>
    /// <param name="phosphorusMilligramsPerLitre">Dissolved phosphate, mg P/L.</param>
    /// <param name="parameters">Parameters.</param>
    public static double ShareLeftByPhosphate(double phosphorusMilligramsPerLitre, MineralParameters parameters) =>
        1 / (1 + (phosphorusMilligramsPerLitre / parameters.CalcitePhosphateHalfMilligramsPerLitre));

    /// <summary>What a litre loses to growing calcite (or, below zero, gains from dissolving) in a step, mol/L, at the saturation of the
    /// step's end.</summary>
    /// <remarks>
    /// x = r dt (Ω(x)^(2/3) − 1) by one Newton step from x = 0. The right side falls and is convex in x, so the step ends short of the
    /// root: no step, however long, carries the water past saturation. The slope of ln Ω is that of closed water, which is steeper
    /// than that of water which gives its carbon dioxide to the air meanwhile.
    /// </remarks>
    /// <param name="forwardMolesPerLitre">Forward rate × surface × step over the volume, mol/L.</param>
    /// <param name="saturationRatio">Ω at the start, above 0.</param>
    /// <param name="slopePerMole">−d ln Ω/dx of closed water, L/mol, above 0.</param>
    public static double ExchangedMolesPerLitre(double forwardMolesPerLitre, double saturationRatio, double slopePerMole)
    {
        double power = Math.Pow(saturationRatio, TwoThirds);
        return forwardMolesPerLitre * (power - 1) / (1 + (forwardMolesPerLitre * TwoThirds * power * slopePerMole));
    }

    /// <summary>−d ln Ω/dx of closed water as calcite leaves it (x mol/L, with as much carbon and twice the alkalinity), L/mol.</summary>
    /// <param name="ions">The water, mol/L.</param>
    /// <param name="carbonMolesPerLitre">Its inorganic carbon, mol/L.</param>
    /// <param name="pH">Its pH.</param>
    /// <param name="constants">Constants at its temperature.</param>
    public static double SlopePerMole(in Ions ions, double carbonMolesPerLitre, double pH, in CarbonateConstants constants) => SlopePerMole(
        in ions, carbonMolesPerLitre, CarbonateSystem.HydrogenOf(pH), new EffectiveConstants(in constants, IonicStrength.MolesPerLitre(in ions)));

    internal static double SlopePerMole(in Ions ions, double carbonMolesPerLitre, double hydrogen, in EffectiveConstants k)
    {
        double inverse = 1 / ((hydrogen * (hydrogen + k.K1)) + k.K1K2);
        double carbonate = k.K1K2 * inverse;
        double charges = (k.K1 * hydrogen * inverse) + (2 * carbonate);
        double phosphate = k.Phosphate / (hydrogen + k.Phosphate);
        double ammonia = k.Ammonium / (hydrogen + k.Ammonium);
        double buffer = (carbonMolesPerLitre * (charges + (2 * carbonate) - (charges * charges)))
            + (k.Water / hydrogen) + (hydrogen * k.InverseGamma1)
            + (ions.P * phosphate * (1 - phosphate)) + (ions.TAN * ammonia * (1 - ammonia));
        return (1 / ions.Ca) + (1 / carbonMolesPerLitre) + ((2 - charges) * (2 - charges) / buffer);
    }

    /// <summary>Saturation ratio of calcite, γ2² [Ca][CO3]/Ksp.</summary>
    internal static double SaturationRatio(
        double calciumMolesPerLitre, double carbonMolesPerLitre, double hydrogen, in EffectiveConstants k, double solubilityProduct)
    {
        double gamma2 = 1 / (k.InverseGamma1 * k.InverseGamma1 * k.InverseGamma1 * k.InverseGamma1);
        double carbonate = carbonMolesPerLitre * k.K1K2 / ((hydrogen * (hydrogen + k.K1)) + k.K1K2);
        return gamma2 * gamma2 * calciumMolesPerLitre * carbonate / solubilityProduct;
    }

    private static double AcidTerm(double kelvin, double hydrogen) => MolesPerSquareMetreHour * Power(0.198 - (444 / kelvin)) * hydrogen;

    private static double CarbonicTerm(double kelvin, double carbonDioxide) =>
        MolesPerSquareMetreHour * Power(2.84 - (2177 / kelvin)) * carbonDioxide;

    private static double WaterTerm(double kelvin) =>
        MolesPerSquareMetreHour * Power(kelvin < WarmBranchKelvin ? -5.86 - (317 / kelvin) : -1.10 - (1737 / kelvin));

    private static double Power(double logarithm) => Math.Exp(logarithm * CarbonateConstants.LogarithmOfTen);
}
