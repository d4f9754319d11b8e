namespace FarmTwin.Farm.Climate;

/// <summary>Clock times of sunrise, noon and sunset, and the sun's zenith angle: for placing lamp hours on the clock.</summary>
/// <remarks>
/// "General solar position calculations" of the NOAA Global Monitoring Division (low-accuracy set; about a minute for sunrise,
/// 0.3° for the zenith). Upper limb with refraction, zenith 90.833°, so the day is some minutes longer than
/// <see cref="SolarGeometry.DayLengthHours"/>. Longitudes are degrees EAST; times are hours of local standard time, never
/// daylight time. Polar day reaches from noon less 12 h to noon plus 12 h; in polar night both are noon.
/// </remarks>
public static class SunClock
{
    private const double SunriseZenithDegrees = 90.833;
    private const double Radian = Math.PI / 180;

    /// <summary>Sunrise and sunset, hours of local standard time.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    /// <param name="longitudeEastDegrees">Degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    public static (double SunriseHours, double SunsetHours) SunriseSunset(
        int dayOfYear, double latitudeDegrees, double longitudeEastDegrees, double timeZoneHours)
    {
        double noon = NoonHours(dayOfYear, longitudeEastDegrees, timeZoneHours);
        double latitude = latitudeDegrees * Radian;
        double declination = Declination(dayOfYear, 12);
        double cosine = (Math.Cos(SunriseZenithDegrees * Radian) / (Math.Cos(latitude) * Math.Cos(declination)))
            - (Math.Tan(latitude) * Math.Tan(declination));
        double half = Math.Acos(Math.Clamp(cosine, -1, 1)) / Radian / 15;
        return (noon - half, noon + half);
    }

    /// <summary>Solar noon, hours of local standard time.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="longitudeEastDegrees">Degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    public static double NoonHours(int dayOfYear, double longitudeEastDegrees, double timeZoneHours) =>
        12 - (longitudeEastDegrees / 15) + timeZoneHours - (EquationOfTimeMinutes(dayOfYear, 12) / 60);

    /// <summary>Equation of time, min: what a sundial is ahead of the mean sun.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="clockHours">Hour of the day, 0 to 24.</param>
    public static double EquationOfTimeMinutes(int dayOfYear, double clockHours)
    {
        double g = FractionalYear(dayOfYear, clockHours);
        return 229.18 * (0.000075 + (0.001868 * Math.Cos(g)) - (0.032077 * Math.Sin(g))
            - (0.014615 * Math.Cos(2 * g)) - (0.040849 * Math.Sin(2 * g)));
    }

    /// <summary>Solar declination of this set, rad.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="clockHours">Hour of the day, 0 to 24.</param>
    public static double Declination(int dayOfYear, double clockHours)
    {
        double g = FractionalYear(dayOfYear, clockHours);
        return 0.006918 - (0.399912 * Math.Cos(g)) + (0.070257 * Math.Sin(g)) - (0.006758 * Math.Cos(2 * g))
            + (0.000907 * Math.Sin(2 * g)) - (0.002697 * Math.Cos(3 * g)) + (0.00148 * Math.Sin(3 * g));
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
        double declination = Declination(dayOfYear, clockHours);
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
        double declination = Declination(dayOfYear, clockHours);
        double hourAngle = HourAngleRadians(dayOfYear, clockHours, longitudeEastDegrees, timeZoneHours);
        double fromSouth = Math.Atan2(
            Math.Sin(hourAngle), (Math.Cos(hourAngle) * Math.Sin(latitude)) - (Math.Tan(declination) * Math.Cos(latitude)));
        return ((fromSouth / Radian) + 180 + 360) % 360;
    }

    private static double HourAngleRadians(int dayOfYear, double clockHours, double longitudeEastDegrees, double timeZoneHours)
    {
        double solarHours = clockHours - timeZoneHours + (longitudeEastDegrees / 15)
            + (EquationOfTimeMinutes(dayOfYear, clockHours) / 60);
        return (solarHours - 12) * Math.PI / 12;
    }

    private static double FractionalYear(int dayOfYear, double clockHours) =>
        2 * Math.PI / 365 * (dayOfYear - 1 + ((clockHours - 12) / 24));
}
