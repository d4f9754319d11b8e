namespace FarmTwin.Farm.Climate;

/// <summary>Lamp hours that lengthen the day: on before sunrise and after sunset.</summary>
/// <param name="HoursBeforeSunrise">Hours on before sunrise, 0 or more.</param>
/// <param name="HoursAfterSunset">Hours on after sunset, 0 or more.</param>
public readonly record struct LampSchedule(double HoursBeforeSunrise, double HoursAfterSunset)
{
    /// <summary>Lamps that never go out.</summary>
    public static LampSchedule Always => new(UnitConstants.HoursPerDay, UnitConstants.HoursPerDay);

    /// <summary>Hours that the lamps are on within a stretch of clock time.</summary>
    /// <remarks>Hours that reach over midnight count on the day on whose clock they fall. Where the night is shorter than both
    /// together they do not count twice.</remarks>
    /// <param name="fromHours">Start, hours of local standard time, 0 to 24.</param>
    /// <param name="toHours">End, not before the start and at most 24.</param>
    /// <param name="sunriseHours">Sunrise, h.</param>
    /// <param name="sunsetHours">Sunset, h.</param>
    public double LitHours(double fromHours, double toHours, double sunriseHours, double sunsetHours)
    {
        double morningStart = Math.Max(sunriseHours - HoursBeforeSunrise, sunsetHours - 24);
        double eveningEnd = Math.Min(sunsetHours + HoursAfterSunset, morningStart + 24);
        return Overlap(fromHours, toHours, morningStart, sunriseHours)
            + Overlap(fromHours, toHours, morningStart + 24, sunriseHours + 24)
            + Overlap(fromHours, toHours, sunsetHours, eveningEnd)
            + Overlap(fromHours, toHours, sunsetHours - 24, eveningEnd - 24);
    }

    /// <summary>Hours from the first light, lamp or sun, to the last, at most 24.</summary>
    /// <param name="sunriseHours">Sunrise, h.</param>
    /// <param name="sunsetHours">Sunset, h.</param>
    public double PhotoperiodHours(double sunriseHours, double sunsetHours) =>
        Math.Min(24, sunsetHours - sunriseHours + HoursBeforeSunrise + HoursAfterSunset);

    /// <summary>Hours in which one or the other is on: both lie against sunrise and sunset, so the longer covers the shorter.</summary>
    public LampSchedule Together(LampSchedule other) => new(
        Math.Max(HoursBeforeSunrise, other.HoursBeforeSunrise), Math.Max(HoursAfterSunset, other.HoursAfterSunset));

    private static double Overlap(double from, double to, double start, double end) =>
        Math.Max(0, Math.Min(to, end) - Math.Max(from, start));
}
