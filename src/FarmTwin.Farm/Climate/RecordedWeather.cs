namespace FarmTwin.Farm.Climate;

/// <summary>The weather of a season out of a year on file, begun at the season's date and repeated year after year.</summary>
/// <remarks>There is no chance in it: every seed and every replicate meets the same weather. A 29 February has the weather of the
/// day before it. Whether a day is wet is not known from these files and counts as dry.</remarks>
public sealed class RecordedWeather : SeasonWeather
{
    /// <summary>Lays the year along the season.</summary>
    /// <param name="year">The year.</param>
    /// <param name="site">Where the farm stands: for sunrise and sunset.</param>
    /// <param name="start">Date of day 0.</param>
    /// <param name="days">Days from day 0 on, above 0.</param>
    /// <param name="warmerKelvin">Added to every temperature, K; vapour that the colder air cannot hold is left out.</param>
    /// <exception cref="ArgumentException">The year has not 8,760 hours.</exception>
    public RecordedWeather(WeatherYear year, WeatherSite site, DateOnly start, int days, double warmerKelvin = 0)
        : base(start, days)
    {
        ArgumentNullException.ThrowIfNull(year);
        if (year.Hours.Count != WeatherYear.HourCount)
        {
            throw new ArgumentException($"A year of weather has {WeatherYear.HourCount} hours; this one has {year.Hours.Count}.", nameof(year));
        }

        for (int slot = 0; slot < DaysAround.Length; slot++)
        {
            DateOnly date = start.AddDays(slot - 1);
            int first = WeatherYear.DayOf(date.Month, date.Day) * HoursADay;
            double highest = double.NegativeInfinity;
            double lowest = double.PositiveInfinity;
            double radiation = 0;
            double vapour = 0;
            for (int hour = 0; hour < HoursADay; hour++)
            {
                HourlyWeather read = year.Hours[first + hour];
                double celsius = read.TemperatureCelsius + warmerKelvin;
                var weather = read with
                {
                    TemperatureCelsius = celsius,
                    VapourPressureKilopascal = Math.Min(read.VapourPressureKilopascal, Psychrometrics.SaturationPressureKilopascal(celsius)),
                };
                highest = Math.Max(highest, celsius);
                lowest = Math.Min(lowest, celsius);
                radiation += weather.RadiationWattsPerSquareMetre * UnitConstants.SecondsPerHour / 1e6;
                vapour += weather.VapourPressureKilopascal / HoursADay;
                if (slot > 0 && slot <= days)
                {
                    Hours[((slot - 1) * HoursADay) + hour] = weather;
                }
            }

            (double sunrise, double sunset) = SunClock.SunriseSunset(
                date.DayOfYear, site.LatitudeDegrees, site.LongitudeEastDegrees, site.TimeZoneHours);
            DaysAround[slot] = new DailyWeather(date, false, highest, lowest, radiation, vapour, sunrise, sunset);
        }
    }
}
