using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

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
    public static double ForwardMolesPerSquareMetreHour(double celsius, double hydrogen, double carbonDioxideMolesPerLitre) =>
        ForwardMolesPerSquareMetreHour(
            Vector256.Create(celsius), Vector256.Create(hydrogen), Vector256.Create(carbonDioxideMolesPerLitre)).ToScalar();

    /// <summary>The same of four surfaces.</summary>
    internal static Vector256<double> ForwardMolesPerSquareMetreHour(
        Vector256<double> celsius, Vector256<double> hydrogen, Vector256<double> carbonDioxideMolesPerLitre)
    {
        Vector256<double> kelvin = celsius + Vector256.Create(UnitConstants.ZeroCelsiusInKelvin);
        Vector256<double> inverse = Vector256<double>.One / kelvin;
        Vector256<double> water = Vector256.ConditionalSelect(
            Vector256.LessThan(kelvin, Vector256.Create(WarmBranchKelvin)), Rate(-5.86, 317, inverse), Rate(-1.10, 1737, inverse));
        return (Rate(0.198, 444, inverse) * hydrogen) + (Rate(2.84, 2177, inverse) * carbonDioxideMolesPerLitre) + water;
    }

    /// <summary>Share of the growth that phosphate leaves, 0–1.</summary>
    /// <param name="phosphorusMilligramsPerLitre">Dissolved phosphate, mg P/L.</param>
    /// <param name="parameters">Parameters.</param>
    public static double ShareLeftByPhosphate(double phosphorusMilligramsPerLitre, MineralParameters parameters) =>
        ShareLeftByPhosphate(Vector256.Create(phosphorusMilligramsPerLitre), parameters).ToScalar();

    /// <summary>The same of four waters.</summary>
    internal static Vector256<double> ShareLeftByPhosphate(Vector256<double> phosphorusMilligramsPerLitre, MineralParameters parameters)
    {
        Vector256<double> half = Vector256.Create(parameters.CalcitePhosphateHalfMilligramsPerLitre);
        return half / (half + phosphorusMilligramsPerLitre);
    }

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
    public static double ExchangedMolesPerLitre(double forwardMolesPerLitre, double saturationRatio, double slopePerMole) =>
        ExchangedMolesPerLitre(
            Vector256.Create(forwardMolesPerLitre), Vector256.Create(saturationRatio), Vector256.Create(slopePerMole)).ToScalar();

    /// <summary>The same of four waters.</summary>
    internal static Vector256<double> ExchangedMolesPerLitre(
        Vector256<double> forwardMolesPerLitre, Vector256<double> saturationRatio, Vector256<double> slopePerMole)
    {
        Vector256<double> power = FourFunctions.Exp(TwoThirds * FourFunctions.Log(saturationRatio));
        return forwardMolesPerLitre * (power - Vector256<double>.One)
            / (Vector256<double>.One + (forwardMolesPerLitre * TwoThirds * power * slopePerMole));
    }

    /// <summary>−d ln Ω/dx of closed water as calcite leaves it (x mol/L, with as much carbon and twice the alkalinity), L/mol.</summary>
    /// <param name="ions">The water, mol/L.</param>
    /// <param name="carbonMolesPerLitre">Its inorganic carbon, mol/L.</param>
    /// <param name="pH">Its pH.</param>
    /// <param name="constants">Constants at its temperature.</param>
    public static double SlopePerMole(in Ions ions, double carbonMolesPerLitre, double pH, in CarbonateConstants constants) => SlopePerMole(
        new CarbonateLanes(
            default, Vector256.Create(ions.P), Vector256.Create(ions.TAN),
            new EffectiveLanes(new ConstantLanes(in constants), Vector256.Create(IonicStrength.MolesPerLitre(in ions)))),
        Vector256.Create(ions.Ca),
        Vector256.Create(carbonMolesPerLitre),
        Vector256.Create(CarbonateSystem.HydrogenOf(pH))).ToScalar();

    /// <summary>The same of four waters.</summary>
    internal static Vector256<double> SlopePerMole(
        in CarbonateLanes water, Vector256<double> calciumMolesPerLitre, Vector256<double> carbonMolesPerLitre, Vector256<double> hydrogen)
    {
        ref readonly EffectiveLanes k = ref water.Constants;
        Vector256<double> one = Vector256<double>.One;
        Vector256<double> inverse = one / ((hydrogen * (hydrogen + k.K1)) + k.K1K2);
        Vector256<double> carbonate = k.K1K2 * inverse;
        Vector256<double> charges = (k.K1 * hydrogen * inverse) + (carbonate + carbonate);
        Vector256<double> phosphate = k.Phosphate / (hydrogen + k.Phosphate);
        Vector256<double> ammonia = k.Ammonium / (hydrogen + k.Ammonium);
        Vector256<double> buffer = (carbonMolesPerLitre * (charges + (carbonate + carbonate) - (charges * charges)))
            + (k.Water / hydrogen) + (hydrogen * k.InverseGamma1)
            + (water.Phosphorus * phosphate * (one - phosphate)) + (water.Tan * ammonia * (one - ammonia));
        Vector256<double> missing = Vector256.Create(2.0) - charges;
        return (one / calciumMolesPerLitre) + (one / carbonMolesPerLitre) + (missing * missing / buffer);
    }

    /// <summary>Saturation ratio of calcite in four waters, γ2² [Ca][CO3]/Ksp.</summary>
    internal static Vector256<double> SaturationRatio(
        Vector256<double> calciumMolesPerLitre,
        Vector256<double> carbonMolesPerLitre,
        Vector256<double> hydrogen,
        in EffectiveLanes k,
        Vector256<double> solubilityProduct)
    {
        Vector256<double> inverseSquare = k.InverseGamma1 * k.InverseGamma1;
        Vector256<double> inverseGamma2 = inverseSquare * inverseSquare;
        return calciumMolesPerLitre * carbonMolesPerLitre * k.K1K2
            / (inverseGamma2 * inverseGamma2 * ((hydrogen * (hydrogen + k.K1)) + k.K1K2) * solubilityProduct);
    }

    // A rate constant log10 k = a − b/T in mol/(m² h).
    private static Vector256<double> Rate(double a, double b, Vector256<double> inverseKelvin) =>
        MolesPerSquareMetreHour * FourFunctions.Exp(CarbonateConstants.LogarithmOfTen * (Vector256.Create(a) - (b * inverseKelvin)));
}
