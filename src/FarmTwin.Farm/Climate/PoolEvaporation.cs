namespace FarmTwin.Farm.Climate;

/// <summary>Older evaporation laws of swimming pools, kept as referees for <see cref="WaterSurface"/>.</summary>
/// <remarks>Both are for disturbed or windy water; still indoor water gives about half. Not used in a season.</remarks>
public static class PoolEvaporation
{
    /// <summary>The law of Carrier (1918) as the ASHRAE Handbook gives it, kg/(m2 h).</summary>
    /// <param name="waterCelsius">°C.</param>
    /// <param name="vapourPressureKilopascal">Of the air, kPa.</param>
    /// <param name="airSpeedMetresPerSecond">Over the water, m/s.</param>
    /// <param name="activityFactor">0.5 for still water, 1 for a public pool.</param>
    public static double CarrierKilogramsPerSquareMetreHour(
        double waterCelsius, double vapourPressureKilopascal, double airSpeedMetresPerSecond, double activityFactor)
    {
        double latentKilojoules = 1000 * Psychrometrics.LatentHeatMegajoulesPerKilogram(waterCelsius);
        double deficit = Psychrometrics.SaturationPressureKilopascal(waterCelsius) - vapourPressureKilopascal;
        return UnitConstants.SecondsPerHour * activityFactor * (0.089 + (0.0782 * airSpeedMetresPerSecond)) * deficit
            / latentKilojoules;
    }

    /// <summary>The engineers' form (25 + 19 v)(xs - x), kg/(m2 h); about twice what still water gives.</summary>
    /// <param name="saturatedRatio">Humidity ratio at saturation at the water's temperature, kg/kg.</param>
    /// <param name="airRatio">Humidity ratio of the air, kg/kg.</param>
    /// <param name="airSpeedMetresPerSecond">Over the water, m/s.</param>
    public static double EngineersKilogramsPerSquareMetreHour(
        double saturatedRatio, double airRatio, double airSpeedMetresPerSecond) =>
        (25 + (19 * airSpeedMetresPerSecond)) * (saturatedRatio - airRatio);
}
