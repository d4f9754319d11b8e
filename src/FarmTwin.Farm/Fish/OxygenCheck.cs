namespace FarmTwin.Farm.Fish;

/// <summary>A published lower bound for the fish's oxygen use, and the minutes a tank lasts without air.</summary>
public static class OxygenCheck
{
    private const double HighestGrams = 210;
    private const double LowestCelsius = 24;
    private const double HighestCelsius = 32;

    /// <summary>
    /// Oxygen use by the regression for recirculating tilapia of Scientific Reports 11:24130 (2021), mg O2/kg/h. It lies well below the
    /// model's default, and below energy closure: a bound, not a design figure.
    /// </summary>
    /// <param name="grams">Weight, 3–210 g; beyond, the regression turns upward, which is an artefact.</param>
    /// <param name="temperatureCelsius">24–32 °C, as tested.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the tested range.</exception>
    public static double RegressionMilligramsPerKilogramHour(double grams, double temperatureCelsius)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(grams, HighestGrams);
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureCelsius, LowestCelsius);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureCelsius, HighestCelsius);
        return 2014.45 + (2.75 * grams) - (165.2 * temperatureCelsius) + (0.007 * grams * grams)
            + (3.93 * temperatureCelsius * temperatureCelsius) - (0.21 * grams * temperatureCelsius);
    }

    /// <summary>Minutes until the oxygen of a tank falls to a level when nothing supplies it and only the fish breathe.</summary>
    /// <param name="fromMilligramsPerLitre">Oxygen at the start, mg/L.</param>
    /// <param name="toMilligramsPerLitre">The level, mg/L.</param>
    /// <param name="useMilligramsPerKilogramHour">Oxygen use, mg O2/kg/h, above 0.</param>
    /// <param name="kilogramsPerCubicMetre">Fish density, kg/m³, above 0.</param>
    public static double MinutesToOxygen(
        double fromMilligramsPerLitre, double toMilligramsPerLitre, double useMilligramsPerKilogramHour, double kilogramsPerCubicMetre) =>
        Math.Max(0, fromMilligramsPerLitre - toMilligramsPerLitre) * UnitConstants.LitresPerCubicMetre
        / (useMilligramsPerKilogramHour * kilogramsPerCubicMetre) * (UnitConstants.SecondsPerHour / SecondsPerMinute);

    private const double SecondsPerMinute = 60;
}
