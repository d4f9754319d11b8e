namespace FarmTwin.Farm.Climate;

/// <summary>Where the sun stands, and what it would send without an atmosphere: FAO-56 Eq 21 to 34.</summary>
/// <remarks>
/// Allen, Pereira, Raes &amp; Smith (1998), FAO Irrigation and Drainage Paper 56, chapter 3. Geometric sun (no refraction): for
/// clock sunrise use <see cref="SunClock"/>. Longitudes are degrees EAST here; the paper's are degrees west. Latitudes are
/// degrees, north positive; days of the year run from 1 to 366. Beyond the polar circles the sunset angle is held at 0 or pi.
/// </remarks>
public static class SolarGeometry
{
    /// <summary>Solar constant, MJ/(m2 min).</summary>
    public const double SolarConstantMegajoulesPerSquareMetreMinute = 0.0820;

    /// <summary>Inverse relative distance from the earth to the sun (Eq 23).</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    public static double InverseDistance(int dayOfYear) => 1 + (0.033 * Math.Cos(2 * Math.PI * dayOfYear / 365));

    /// <summary>Solar declination, rad (Eq 24).</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    public static double Declination(int dayOfYear) => 0.409 * Math.Sin((2 * Math.PI * dayOfYear / 365) - 1.39);

    /// <summary>Sunset hour angle, rad, 0 (polar night) to pi (polar day) (Eq 25).</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    public static double SunsetHourAngle(int dayOfYear, double latitudeDegrees) =>
        Math.Acos(Math.Clamp(-Math.Tan(latitudeDegrees * Math.PI / 180) * Math.Tan(Declination(dayOfYear)), -1, 1));

    /// <summary>Geometric day length, h (Eq 34).</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    public static double DayLengthHours(int dayOfYear, double latitudeDegrees) =>
        24 / Math.PI * SunsetHourAngle(dayOfYear, latitudeDegrees);

    /// <summary>Extraterrestrial radiation of a day on a horizontal surface, MJ/(m2 d) (Eq 21).</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    public static double ExtraterrestrialDaily(int dayOfYear, double latitudeDegrees)
    {
        double sunset = SunsetHourAngle(dayOfYear, latitudeDegrees);
        return ExtraterrestrialBetween(dayOfYear, latitudeDegrees, -sunset, sunset);
    }

    /// <summary>Extraterrestrial radiation of a period of clock time, MJ/m2 (Eq 28 to 31), clipped to sunrise and sunset.</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="latitudeDegrees">-90 to 90.</param>
    /// <param name="longitudeEastDegrees">Site, degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    /// <param name="midpointHours">Middle of the period, hours of local standard time.</param>
    /// <param name="periodHours">Length of the period, h, above 0 and at most 24.</param>
    public static double ExtraterrestrialPeriod(int dayOfYear, double latitudeDegrees, double longitudeEastDegrees,
        double timeZoneHours, double midpointHours, double periodHours)
    {
        double middle = HourAngle(dayOfYear, longitudeEastDegrees, timeZoneHours, midpointHours);
        double half = Math.PI * periodHours / 24;
        double sunset = SunsetHourAngle(dayOfYear, latitudeDegrees);
        double sum = 0;

        // Where clock and sun differ much, a clock day holds the edge of the neighbouring sun day too.
        for (int turn = -1; turn <= 1; turn++)
        {
            double shift = 2 * Math.PI * turn;
            double from = Math.Max(middle - half + shift, -sunset);
            double to = Math.Min(middle + half + shift, sunset);
            if (to > from)
            {
                sum += ExtraterrestrialBetween(dayOfYear, latitudeDegrees, from, to);
            }
        }

        return sum;
    }

    /// <summary>Solar time angle of a clock time, rad, 0 at solar noon (Eq 31).</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="longitudeEastDegrees">Site, degrees east.</param>
    /// <param name="timeZoneHours">Local standard time less UTC, h.</param>
    /// <param name="clockHours">Hours of local standard time.</param>
    public static double HourAngle(int dayOfYear, double longitudeEastDegrees, double timeZoneHours, double clockHours) =>
        Math.PI / 12
            * (clockHours + (longitudeEastDegrees / 15) - timeZoneHours + SeasonalCorrectionHours(dayOfYear) - 12);

    /// <summary>Seasonal correction for solar time, h (Eq 32 and 33).</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    public static double SeasonalCorrectionHours(int dayOfYear)
    {
        double b = 2 * Math.PI * (dayOfYear - 81) / 364;
        return (0.1645 * Math.Sin(2 * b)) - (0.1255 * Math.Cos(b)) - (0.025 * Math.Sin(b));
    }

    private static double ExtraterrestrialBetween(int dayOfYear, double latitudeDegrees, double from, double to)
    {
        double latitude = latitudeDegrees * Math.PI / 180;
        double declination = Declination(dayOfYear);
        return 12 * 60 / Math.PI * SolarConstantMegajoulesPerSquareMetreMinute * InverseDistance(dayOfYear)
            * (((to - from) * Math.Sin(latitude) * Math.Sin(declination))
                + (Math.Cos(latitude) * Math.Cos(declination) * (Math.Sin(to) - Math.Sin(from))));
    }
}
