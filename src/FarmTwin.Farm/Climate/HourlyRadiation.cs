namespace FarmTwin.Farm.Climate;

/// <summary>Shares out a day's global radiation among its clock hours.</summary>
/// <remarks>
/// Collares-Pereira &amp; Rabl (1979), Solar Energy 22:155-164 (from memory of the source, not re-read). Its formula gives the
/// ratio at an instant; here it is integrated over each clock hour in closed form, cut at sunrise and sunset, and rescaled so
/// that the shares of a day sum to one (the formula itself sums to about 1.002).
/// </remarks>
public static class HourlyRadiation
{
    private const double SixtyDegrees = Math.PI / 3;

    /// <summary>Ratio of an hour's radiation to the day's, for the instant at an hour angle, before rescaling (per hour).</summary>
    /// <param name="hourAngle">Rad from solar noon; beyond sunset the ratio is 0.</param>
    /// <param name="sunsetHourAngle">Rad, 0 to pi.</param>
    public static double RatioAt(double hourAngle, double sunsetHourAngle)
    {
        if (Math.Abs(hourAngle) >= sunsetHourAngle)
        {
            return 0;
        }

        double a = 0.409 + (0.5016 * Math.Sin(sunsetHourAngle - SixtyDegrees));
        double b = 0.6609 - (0.4767 * Math.Sin(sunsetHourAngle - SixtyDegrees));
        return Math.PI / 24 * (a + (b * Math.Cos(hourAngle))) * (Math.Cos(hourAngle) - Math.Cos(sunsetHourAngle))
            / (Math.Sin(sunsetHourAngle) - (sunsetHourAngle * Math.Cos(sunsetHourAngle)));
    }

    /// <summary>Writes the share of the day's radiation that falls in each clock hour of local standard time; they sum to 1.</summary>
    /// <remarks>In polar night every share is 0.</remarks>
    /// <param name="shares24">Receives 24 shares; share i is that of the hour from i to i + 1.</param>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    /// <param name="longitudeEastDegrees">Degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    public static void Split(
        Span<double> shares24, int dayOfYear, double latitudeDegrees, double longitudeEastDegrees, double timeZoneHours)
    {
        double sunset = SolarGeometry.SunsetHourAngle(dayOfYear, latitudeDegrees);
        double midnight = SolarGeometry.HourAngle(dayOfYear, longitudeEastDegrees, timeZoneHours, 0);
        double a = 0.409 + (0.5016 * Math.Sin(sunset - SixtyDegrees));
        double b = 0.6609 - (0.4767 * Math.Sin(sunset - SixtyDegrees));
        double sum = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            double share = 0;
            for (int turn = -1; turn <= 1; turn++)
            {
                double from = Math.Max(midnight + (Math.PI / 12 * hour) + (2 * Math.PI * turn), -sunset);
                double to = Math.Min(midnight + (Math.PI / 12 * (hour + 1)) + (2 * Math.PI * turn), sunset);
                if (to > from)
                {
                    share += Primitive(to, sunset, a, b) - Primitive(from, sunset, a, b);
                }
            }

            shares24[hour] = Math.Max(share, 0);
            sum += shares24[hour];
        }

        double scale = sum > 0 ? 1 / sum : 0;
        for (int hour = 0; hour < 24; hour++)
        {
            shares24[hour] *= scale;
        }
    }

    // Integral of (a + b cos w)(cos w - cos ws) dw.
    private static double Primitive(double w, double sunset, double a, double b)
    {
        double cosineSunset = Math.Cos(sunset);
        return ((a - (b * cosineSunset)) * Math.Sin(w)) - (a * cosineSunset * w)
            + (b * ((0.5 * w) + (0.25 * Math.Sin(2 * w))));
    }
}
