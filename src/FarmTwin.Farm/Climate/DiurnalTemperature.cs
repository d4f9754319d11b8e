namespace FarmTwin.Farm.Climate;

/// <summary>The course of temperature through a day: a sine by day, a decay by night.</summary>
/// <remarks>
/// Parton &amp; Logan (1981), Agricultural Meteorology 23:205-216, parameters for air at 1.5 m. The published night curve stops a tenth short of
/// the next minimum; here it is rescaled to reach it, so that the course has no step at dawn. Hours are local standard time.
/// </remarks>
public static class DiurnalTemperature
{
    /// <summary>Temperature between the morning's minimum and sunset, °C.</summary>
    /// <param name="hours">Clock time, h, from the minimum to sunset.</param>
    /// <param name="sunriseHours">h.</param>
    /// <param name="sunsetHours">h.</param>
    /// <param name="minimumCelsius">°C.</param>
    /// <param name="maximumCelsius">°C.</param>
    /// <param name="parameters">Lags.</param>
    public static double ByDay(double hours, double sunriseHours, double sunsetHours, double minimumCelsius,
        double maximumCelsius, WeatherParameters parameters)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        double dayLength = sunsetHours - sunriseHours;
        double sinceMinimum = hours - sunriseHours - parameters.MinimumLagHours;
        return minimumCelsius + ((maximumCelsius - minimumCelsius)
            * Math.Sin(Math.PI * sinceMinimum / (dayLength + (2 * parameters.MaximumLagHours))));
    }

    /// <summary>Temperature between sunset and the next minimum, °C.</summary>
    /// <param name="hoursSinceSunset">h, 0 to the night's length; outside it is held at the ends.</param>
    /// <param name="nightHours">From sunset to the next minimum, h, above 0.</param>
    /// <param name="sunsetCelsius">At sunset, °C.</param>
    /// <param name="nextMinimumCelsius">Next morning's minimum, °C.</param>
    /// <param name="decay">b.</param>
    public static double ByNight(double hoursSinceSunset, double nightHours, double sunsetCelsius, double nextMinimumCelsius,
        double decay)
    {
        double end = Math.Exp(-decay);
        double share = Math.Clamp(hoursSinceSunset / nightHours, 0, 1);
        return nextMinimumCelsius
            + ((sunsetCelsius - nextMinimumCelsius) * (Math.Exp(-decay * share) - end) / (1 - end));
    }
}
