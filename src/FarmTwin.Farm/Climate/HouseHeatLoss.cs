namespace FarmTwin.Farm.Climate;

/// <summary>Design heat loss of a house with shut vents: conduction, infiltration, perimeter.</summary>
/// <remarks>Method of ANSI/ASAE EP406.4 and NRAES-33 (from memory of the sources, not re-read).</remarks>
public static class HouseHeatLoss
{
    /// <summary>Heat to warm a cubic metre of air by a kelvin as the method rounds it, Wh/(m3 K) (0.018 Btu/(ft3 °F)).</summary>
    public const double AirHeatWattHoursPerCubicMetreKelvin = 0.335;

    /// <summary>Loss by infiltration, W/K.</summary>
    /// <param name="airChangesPerHour">1/h.</param>
    /// <param name="volumeCubicMetres">m3.</param>
    public static double InfiltrationWattsPerKelvin(double airChangesPerHour, double volumeCubicMetres) =>
        AirHeatWattHoursPerCubicMetreKelvin * airChangesPerHour * volumeCubicMetres;

    /// <summary>Loss along the perimeter, W/K.</summary>
    /// <param name="wattsPerMetreKelvin">W/(m K).</param>
    /// <param name="perimeterMetres">m.</param>
    public static double PerimeterWattsPerKelvin(double wattsPerMetreKelvin, double perimeterMetres) =>
        wattsPerMetreKelvin * perimeterMetres;

    /// <summary>Ventilation that holds a house some kelvin above the outside, conduction neglected, m3/s per m2 of floor.</summary>
    /// <param name="radiationWattsPerSquareMetre">Global radiation outside, W/m2.</param>
    /// <param name="transmission">Solar transmission, 0 to 1.</param>
    /// <param name="latentShare">Share of the sun that leaves as vapour, 0.2 nearly empty to 0.5 full canopy.</param>
    /// <param name="riseKelvin">Inside above outside, K, above 0.</param>
    /// <param name="heatCapacityJoulesPerCubicMetreKelvin">Of the air, J/(m3 K), about 1200.</param>
    public static double VentilationPerFloorArea(double radiationWattsPerSquareMetre, double transmission, double latentShare,
        double riseKelvin, double heatCapacityJoulesPerCubicMetreKelvin) =>
        (1 - latentShare) * transmission * radiationWattsPerSquareMetre
            / (heatCapacityJoulesPerCubicMetreKelvin * riseKelvin);
}
