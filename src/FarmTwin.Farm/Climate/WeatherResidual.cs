namespace FarmTwin.Farm.Climate;

/// <summary>Standardised departures of a day's maximum, minimum and radiation: a first-order autoregression.</summary>
/// <remarks>
/// Richardson (1981), Water Resources Research 17:182-190; coefficients of Richardson &amp; Wright (1984), WGEN, USDA ARS-8. Public
/// codes store the two matrices by columns; read by rows they lose unit variance, which a test would show.
/// </remarks>
/// <param name="Maximum">Of the daily maximum.</param>
/// <param name="Minimum">Of the daily minimum.</param>
/// <param name="Radiation">Of the daily radiation.</param>
public readonly record struct WeatherResidual(double Maximum, double Minimum, double Radiation)
{
    /// <summary>The next day's residual.</summary>
    /// <param name="first">Standard normal.</param>
    /// <param name="second">Standard normal.</param>
    /// <param name="third">Standard normal.</param>
    public WeatherResidual Next(double first, double second, double third) => new(
        (0.567 * Maximum) + (0.086 * Minimum) - (0.002 * Radiation) + (0.781 * first),
        (0.253 * Maximum) + (0.504 * Minimum) - (0.050 * Radiation) + (0.328 * first) + (0.637 * second),
        (-0.006 * Maximum) - (0.039 * Minimum) + (0.244 * Radiation) + (0.238 * first) - (0.341 * second)
            + (0.873 * third));
}
