namespace FarmTwin.Farm.Water;

/// <summary>The fall of oxygen in a tank after its air has stopped, at a constant demand, in closed form.</summary>
/// <remarks>
/// dC/dt = K (C* - C) - R. Fish breathe less below 2-3 mg/L: the form then errs on the safe side. For design sheets and checks; a
/// season's own outage is stepped.
/// </remarks>
public static class OxygenDepletion
{
    /// <summary>Oxygen after a time, mg/L; negative once it is used up.</summary>
    /// <param name="startMilligramsPerLitre">Oxygen when the air stops, mg/L.</param>
    /// <param name="saturationMilligramsPerLitre">Saturation, mg/L.</param>
    /// <param name="demandMilligramsPerLitrePerHour">Demand of fish, bacteria and solids, mg/(L h).</param>
    /// <param name="surfaceRatePerHour">What the surface still gives, K = KL A/V, 1/h; zero allowed.</param>
    /// <param name="hours">Time, h.</param>
    public static double MilligramsPerLitreAfter(double startMilligramsPerLitre, double saturationMilligramsPerLitre,
        double demandMilligramsPerLitrePerHour, double surfaceRatePerHour, double hours)
    {
        if (surfaceRatePerHour <= 0)
        {
            return startMilligramsPerLitre - (demandMilligramsPerLitrePerHour * hours);
        }

        double end = saturationMilligramsPerLitre - (demandMilligramsPerLitrePerHour / surfaceRatePerHour);
        return end + ((startMilligramsPerLitre - end) * Math.Exp(-surfaceRatePerHour * hours));
    }

    /// <summary>Hours until oxygen has fallen to a level: zero if it is there, infinity if the surface holds it above.</summary>
    /// <param name="startMilligramsPerLitre">Oxygen when the air stops, mg/L.</param>
    /// <param name="criticalMilligramsPerLitre">The level, mg/L.</param>
    /// <param name="saturationMilligramsPerLitre">Saturation, mg/L.</param>
    /// <param name="demandMilligramsPerLitrePerHour">Demand, mg/(L h).</param>
    /// <param name="surfaceRatePerHour">K, 1/h; zero allowed.</param>
    public static double HoursTo(double startMilligramsPerLitre, double criticalMilligramsPerLitre, double saturationMilligramsPerLitre,
        double demandMilligramsPerLitrePerHour, double surfaceRatePerHour)
    {
        if (startMilligramsPerLitre <= criticalMilligramsPerLitre)
        {
            return 0;
        }

        if (surfaceRatePerHour <= 0)
        {
            return demandMilligramsPerLitrePerHour > 0
                ? (startMilligramsPerLitre - criticalMilligramsPerLitre) / demandMilligramsPerLitrePerHour
                : double.PositiveInfinity;
        }

        double end = saturationMilligramsPerLitre - (demandMilligramsPerLitrePerHour / surfaceRatePerHour);
        return end >= criticalMilligramsPerLitre
            ? double.PositiveInfinity
            : Math.Log((startMilligramsPerLitre - end) / (criticalMilligramsPerLitre - end)) / surfaceRatePerHour;
    }
}
