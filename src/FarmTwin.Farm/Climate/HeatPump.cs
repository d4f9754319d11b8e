namespace FarmTwin.Farm.Climate;

/// <summary>Heat given by an air-source heat pump for the electricity it draws.</summary>
/// <remarks>
/// Staffell, Brett, Brandon &amp; Hawkes (2012), A review of domestic heat pumps, Energy &amp; Environmental Science 5:9291 (the regression as
/// quoted by public energy models, second hand): COP = 6.81 − 0.121 ΔT + 0.000630 ΔT², ΔT from the outside air to the flow, 15 to 60 K; defrosting is in
/// it. Another machine is taken to follow the same curve through its own rating point.
/// </remarks>
public static class HeatPump
{
    private const double LeastKelvin = 15;
    private const double MostKelvin = 60;

    // The usual rating point of air-to-water machines: 7 °C outside, flow at 35 °C.
    private const double RatingKelvin = 28;

    /// <summary>Coefficient of performance of the surveyed machines.</summary>
    /// <param name="liftKelvin">Flow less outside air, K; held at 15 and 60, between which the regression was made.</param>
    public static double CoefficientOfPerformance(double liftKelvin)
    {
        double lift = Math.Clamp(liftKelvin, LeastKelvin, MostKelvin);
        return 6.81 - (0.121 * lift) + (0.000630 * lift * lift);
    }

    /// <summary>Coefficient of performance of a machine with a rating, at any lift.</summary>
    /// <param name="rated">At 7 °C outside and a flow of 35 °C, above 0.</param>
    /// <param name="liftKelvin">Flow less outside air, K.</param>
    public static double CoefficientOfPerformance(double rated, double liftKelvin) =>
        rated * CoefficientOfPerformance(liftKelvin) / CoefficientOfPerformance(RatingKelvin);
}
