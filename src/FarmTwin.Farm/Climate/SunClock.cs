namespace FarmTwin.Farm.Climate;

/// <summary>Clock times of sunrise, noon and sunset, and the sun's zenith angle: for placing lamp hours on the clock.</summary>
/// <remarks>
/// Low-precision solar coordinates of the Astronomical Almanac (0.01° between 1950 and 2050; from memory of the source). They want a
/// date; here the day of the year stands for its mean over the leap-year cycle around 2026, which costs at most 0.15° near the
/// equinoxes, half a minute of sunrise at 40°. The day-of-year series of Spencer (1971), often used for this, has drifted by
/// nine tenths of a day since its epoch and is up to 2.8 min off at 40°. Upper limb with refraction, zenith 90.833°, so the day is some minutes longer than
/// <see cref="SolarGeometry.DayLengthHours"/>. Longitudes are degrees EAST; times are hours of local standard time, never
/// daylight time. Polar day reaches from noon less 12 h to noon plus 12 h; in polar night both are noon.
/// </remarks>
public static class SunClock
{
    private const double SunriseZenithDegrees = 90.833;
    private const double Radian = Math.PI / 180;

    // Days from noon of 1 January 2000 (UT) to the first midnight of the mean year of the cycle 2024 to 2027.
    private const double DaysToMeanYear = 9496.375;

    /// <summary>Sunrise and sunset, hours of local standard time.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    /// <param name="longitudeEastDegrees">Degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    public static (double SunriseHours, double SunsetHours) SunriseSunset(
        int dayOfYear, double latitudeDegrees, double longitudeEastDegrees, double timeZoneHours)
    {
        double noon = NoonHours(dayOfYear, longitudeEastDegrees, timeZoneHours);
        double half = HalfDayHours(dayOfYear, noon - timeZoneHours, latitudeDegrees);

        // Once more with the declination of the event itself, which moves by up to 0.1° between noon and dusk.
        double rise = noon - HalfDayHours(dayOfYear, noon - half - timeZoneHours, latitudeDegrees);
        double set = noon + HalfDayHours(dayOfYear, noon + half - timeZoneHours, latitudeDegrees);
        return (rise, set);
    }

    /// <summary>Solar noon, hours of local standard time.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="longitudeEastDegrees">Degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    public static double NoonHours(int dayOfYear, double longitudeEastDegrees, double timeZoneHours) =>
        12 - (longitudeEastDegrees / 15) + timeZoneHours
            - (EquationOfTimeMinutes(dayOfYear, 12 - (longitudeEastDegrees / 15)) / 60);

    /// <summary>Equation of time, min: what a sundial is ahead of the mean sun.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="universalHours">Hour of the day, UT.</param>
    public static double EquationOfTimeMinutes(int dayOfYear, double universalHours)
    {
        double days = DaysSinceEpoch(dayOfYear, universalHours);
        double longitude = EclipticLongitude(days);
        double obliquity = Obliquity(days);
        double rightAscension = Math.Atan2(Math.Cos(obliquity) * Math.Sin(longitude), Math.Cos(longitude)) / Radian;
        double difference = MeanLongitudeDegrees(days) - rightAscension;
        return 4 * (difference - (360 * Math.Round(difference / 360)));
    }

    /// <summary>Solar declination, rad.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="universalHours">Hour of the day, UT.</param>
    public static double Declination(int dayOfYear, double universalHours)
    {
        double days = DaysSinceEpoch(dayOfYear, universalHours);
        return Math.Asin(Math.Sin(Obliquity(days)) * Math.Sin(EclipticLongitude(days)));
    }

    /// <summary>Zenith angle of the sun's centre without refraction, degrees.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="clockHours">Local standard time, h.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    /// <param name="longitudeEastDegrees">Degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    public static double ZenithDegrees(
        int dayOfYear, double clockHours, double latitudeDegrees, double longitudeEastDegrees, double timeZoneHours)
    {
        double latitude = latitudeDegrees * Radian;
        double declination = Declination(dayOfYear, clockHours - timeZoneHours);
        double hourAngle = HourAngleRadians(dayOfYear, clockHours, longitudeEastDegrees, timeZoneHours);
        double cosine = (Math.Sin(latitude) * Math.Sin(declination))
            + (Math.Cos(latitude) * Math.Cos(declination) * Math.Cos(hourAngle));
        return Math.Acos(Math.Clamp(cosine, -1, 1)) / Radian;
    }

    /// <summary>Direction of the sun, degrees clockwise from north.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="clockHours">Local standard time, h.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    /// <param name="longitudeEastDegrees">Degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    public static double AzimuthDegrees(
        int dayOfYear, double clockHours, double latitudeDegrees, double longitudeEastDegrees, double timeZoneHours)
    {
        double latitude = latitudeDegrees * Radian;
        double declination = Declination(dayOfYear, clockHours - timeZoneHours);
        double hourAngle = HourAngleRadians(dayOfYear, clockHours, longitudeEastDegrees, timeZoneHours);
        double fromSouth = Math.Atan2(
            Math.Sin(hourAngle), (Math.Cos(hourAngle) * Math.Sin(latitude)) - (Math.Tan(declination) * Math.Cos(latitude)));
        return ((fromSouth / Radian) + 180 + 360) % 360;
    }

    private static double HourAngleRadians(int dayOfYear, double clockHours, double longitudeEastDegrees, double timeZoneHours)
    {
        double solarHours = clockHours - timeZoneHours + (longitudeEastDegrees / 15)
            + (EquationOfTimeMinutes(dayOfYear, clockHours - timeZoneHours) / 60);
        return (solarHours - 12) * Math.PI / 12;
    }

    private static double HalfDayHours(int dayOfYear, double universalHours, double latitudeDegrees)
    {
        double latitude = latitudeDegrees * Radian;
        double declination = Declination(dayOfYear, universalHours);
        double cosine = (Math.Cos(SunriseZenithDegrees * Radian) / (Math.Cos(latitude) * Math.Cos(declination)))
            - (Math.Tan(latitude) * Math.Tan(declination));
        return Math.Acos(Math.Clamp(cosine, -1, 1)) / Radian / 15;
    }

    private static double DaysSinceEpoch(int dayOfYear, double universalHours) =>
        DaysToMeanYear + dayOfYear - 1 + (universalHours / 24);

    private static double MeanLongitudeDegrees(double days) => 280.459 + (0.98564736 * days);

    private static double EclipticLongitude(double days)
    {
        double anomaly = (357.529 + (0.98560028 * days)) * Radian;
        return (MeanLongitudeDegrees(days) + (1.915 * Math.Sin(anomaly)) + (0.020 * Math.Sin(2 * anomaly))) * Radian;
    }

    private static double Obliquity(double days) => (23.439 - (0.00000036 * days)) * Radian;
}
