namespace FarmTwin.Farm.Equipment;

/// <summary>Head that a flow needs in a full pipe: lift, friction along it, fittings. Pure.</summary>
/// <remarks>
/// Darcy and Weisbach with the explicit friction factor of Swamee and Jain (1976), Journal of the Hydraulics Division, ASCE
/// 102(5):657-664 (from memory of the source, not re-read), within 1 % of Colebrook's for Re 5e3 to 1e8; 64/Re where the flow is laminar.
/// </remarks>
public static class PipeHead
{
    private const double Gravity = 9.80665;

    /// <summary>Reynolds number below which the flow is laminar.</summary>
    private const double LaminarBelow = 2300;

    /// <summary>Viscosity of water at 20 °C, m²/s: on the safe side in warm water.</summary>
    private const double KinematicViscosity = 1.004e-6;

    // Swamee and Jain: f = 0.25 / [log10(k/(3.7 D) + 5.74/Re^0.9)]^2.
    private const double Numerator = 0.25;
    private const double RoughnessDivisor = 3.7;
    private const double ReynoldsFactor = 5.74;
    private const double ReynoldsExponent = 0.9;
    private const double LaminarNumerator = 64;

    /// <summary>Mean velocity, m/s.</summary>
    /// <param name="flowLitresPerHour">Flow, L/h.</param>
    /// <param name="boreMetres">Inner diameter, m, above 0.</param>
    public static double MetresPerSecond(double flowLitresPerHour, double boreMetres) =>
        flowLitresPerHour / UnitConstants.LitresPerCubicMetre / UnitConstants.SecondsPerHour / (Math.PI * boreMetres * boreMetres / 4);

    /// <summary>Darcy's friction factor.</summary>
    /// <param name="velocityMetresPerSecond">m/s, above 0.</param>
    /// <param name="boreMetres">m, above 0.</param>
    /// <param name="roughnessMetres">Equivalent roughness, m, 0 or more.</param>
    public static double FrictionFactor(double velocityMetresPerSecond, double boreMetres, double roughnessMetres)
    {
        double reynolds = velocityMetresPerSecond * boreMetres / KinematicViscosity;
        if (reynolds < LaminarBelow)
        {
            return LaminarNumerator / reynolds;
        }

        double logarithm = Math.Log10((roughnessMetres / (RoughnessDivisor * boreMetres)) + (ReynoldsFactor / Math.Pow(reynolds, ReynoldsExponent)));
        return Numerator / (logarithm * logarithm);
    }

    /// <summary>Head lost along a straight pipe, m.</summary>
    /// <param name="flowLitresPerHour">Flow, L/h; none loses nothing.</param>
    /// <param name="lengthMetres">m.</param>
    /// <param name="boreMetres">m, above 0.</param>
    /// <param name="roughnessMetres">m.</param>
    public static double FrictionMetres(double flowLitresPerHour, double lengthMetres, double boreMetres, double roughnessMetres)
    {
        double velocity = MetresPerSecond(flowLitresPerHour, boreMetres);
        return velocity <= 0 ? 0
            : FrictionFactor(velocity, boreMetres, roughnessMetres) * lengthMetres / boreMetres * velocity * velocity / (2 * Gravity);
    }

    /// <summary>Head that a pump of some electric power lifts a flow to, m.</summary>
    /// <param name="watts">Electric power, W.</param>
    /// <param name="efficiency">Wire to water.</param>
    /// <param name="flowLitresPerHour">Flow, L/h, above 0.</param>
    public static double MetresOfPower(double watts, double efficiency, double flowLitresPerHour) =>
        watts * efficiency * UnitConstants.SecondsPerHour / (flowLitresPerHour * Gravity);
}
