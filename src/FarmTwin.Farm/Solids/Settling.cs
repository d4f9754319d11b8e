namespace FarmTwin.Farm.Solids;

/// <summary>How particles sink in still water: Stokes' law and what it implies for a settling time or a settler.</summary>
public static class Settling
{
    private const double StandardGravity = 9.80665;

    // Viscosity of water, 2.414e-5 × 10^(247.8/(T − 140)) Pa s with T in kelvin (Vogel form, from memory of the source, not
    // re-read): 1.138e-3 at 15 °C and 0.890e-3 at 25 °C.
    private const double ViscosityFactor = 2.414e-5;
    private const double ViscosityExponentKelvin = 247.8;
    private const double ViscosityOffsetKelvin = 140;

    // Stokes' law: v = g Δρ d²/(18 µ), at particle Reynolds numbers below 1.
    private const double StokesDivisor = 18;

    /// <summary>Dynamic viscosity of water, Pa s, 0–50 °C.</summary>
    public static double ViscosityPascalSeconds(double temperatureCelsius) =>
        ViscosityFactor * Math.Pow(10, ViscosityExponentKelvin / (temperatureCelsius + UnitConstants.ZeroCelsiusInKelvin - ViscosityOffsetKelvin));

    /// <summary>Settling velocity, m/h.</summary>
    /// <param name="diameterMetres">Particle diameter, m.</param>
    /// <param name="excessDensityKilogramsPerCubicMetre">Particle density above water's, kg/m³.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    public static double VelocityMetresPerHour(double diameterMetres, double excessDensityKilogramsPerCubicMetre, double temperatureCelsius) =>
        StandardGravity * excessDensityKilogramsPerCubicMetre * diameterMetres * diameterMetres
            / (StokesDivisor * ViscosityPascalSeconds(temperatureCelsius)) * UnitConstants.SecondsPerHour;

    /// <summary>Smallest particle that reaches the floor, m.</summary>
    /// <param name="depthMetres">Settling depth, m.</param>
    /// <param name="hours">Settling time, h.</param>
    /// <param name="excessDensityKilogramsPerCubicMetre">Particle density above water's, kg/m³.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    public static double CriticalDiameterMetres(
        double depthMetres, double hours, double excessDensityKilogramsPerCubicMetre, double temperatureCelsius) =>
        Math.Sqrt(StokesDivisor * ViscosityPascalSeconds(temperatureCelsius) * depthMetres
            / (hours * UnitConstants.SecondsPerHour * StandardGravity * excessDensityKilogramsPerCubicMetre));

    /// <summary>Surface loading of a settler, m/h: particles that sink faster are kept.</summary>
    /// <param name="flowLitresPerHour">Flow, L/h.</param>
    /// <param name="areaSquareMetres">Plan area, m².</param>
    public static double SurfaceLoadingMetresPerHour(double flowLitresPerHour, double areaSquareMetres) =>
        flowLitresPerHour / UnitConstants.LitresPerCubicMetre / areaSquareMetres;
}
