using FarmTwin.Engine.Chance;

namespace FarmTwin.Farm.Climate;

/// <summary>Daily and hourly weather of a season, drawn from monthly normals.</summary>
/// <remarks>
/// After WGEN (Richardson 1981; Richardson &amp; Wright 1984): wet and dry days by a Markov chain, maximum, minimum and radiation by
/// a joint autoregression. Every draw is keyed by (seed, replicate, calendar date), and the chain runs up from a fixed number
/// of days before, so a date's weather does not depend on when the season starts or how long it is. All hours are made at
/// construction; look-ups neither compute nor allocate. Immutable afterwards: safe to share between threads.
/// </remarks>
public sealed class WeatherGenerator : SeasonWeather
{
    // After this many days the memory of the first (0.65 a day at most) is below the rounding of a double.
    private const int SpinUpDays = 128;

    private const uint WetEntity = 0;
    private const uint FirstResidualEntity = 1;
    private const uint FirstWindEntity = 16;
    private const double LeastDailyRangeKelvin = 1;

    // Mean of a Weibull variate of shape 2 over its scale: Gamma(1.5).
    private const double WeibullMean = 0.88622692545275801;
    private const double WindiestHour = 14.5;

    private readonly WeatherSite _site;
    private readonly WeatherParameters _parameters;
    private readonly RandomStreams _streams;
    private readonly uint _process = StableHash.Of("weather");
    private readonly SeasonalCurve _maximum;
    private readonly SeasonalCurve _minimum;
    private readonly SeasonalCurve _maximumDeviation;
    private readonly SeasonalCurve _minimumDeviation;
    private readonly SeasonalCurve _radiation;
    private readonly SeasonalCurve _wetFraction;
    private readonly SeasonalCurve _wind;

    /// <summary>Draws a season.</summary>
    /// <param name="normals">Monthly normals.</param>
    /// <param name="site">Where.</param>
    /// <param name="streams">Seed and replicate.</param>
    /// <param name="parameters">The process's parameters.</param>
    /// <param name="start">Date of day 0, at least half a year after 1 January of year 1.</param>
    /// <param name="days">Days from day 0 on, above 0.</param>
    /// <exception cref="ArgumentException">A list of normals has not twelve values.</exception>
    public WeatherGenerator(MonthlyNormals normals, WeatherSite site, RandomStreams streams, ClimateParameters parameters,
        DateOnly start, int days)
        : base(start, days)
    {
        ArgumentNullException.ThrowIfNull(normals);
        ArgumentNullException.ThrowIfNull(parameters);
        _site = site;
        _streams = streams;
        _parameters = parameters.Weather;
        _maximum = new SeasonalCurve(normals.MaximumCelsius);
        _minimum = new SeasonalCurve(normals.MinimumCelsius);
        _maximumDeviation = new SeasonalCurve(normals.MaximumDeviationKelvin);
        _minimumDeviation = new SeasonalCurve(normals.MinimumDeviationKelvin);
        _radiation = new SeasonalCurve(normals.RadiationMegajoulesPerSquareMetre);
        _wetFraction = new SeasonalCurve(normals.WetDayFraction);
        _wind = new SeasonalCurve(normals.WindMetresPerSecond);

        FillDays();
        FillHours();
    }

    private void FillDays()
    {
        bool wet = false;
        var residual = default(WeatherResidual);
        int first = Start.DayNumber - 1 - SpinUpDays;
        for (int dayNumber = first; dayNumber < first + SpinUpDays + DaysAround.Length; dayNumber++)
        {
            var date = DateOnly.FromDayNumber(dayNumber);
            uint ordinal = (uint)dayNumber;
            double fraction = Math.Clamp(_wetFraction.At(date), 0, 1);
            wet = _streams.Uniform(_process, WetEntity, ordinal)
                < (wet ? WetDayChain.WetAfterWet(fraction) : WetDayChain.WetAfterDry(fraction));
            residual = residual.Next(
                _streams.Normal(_process, FirstResidualEntity, ordinal),
                _streams.Normal(_process, FirstResidualEntity + 1, ordinal),
                _streams.Normal(_process, FirstResidualEntity + 2, ordinal));
            int slot = dayNumber - first - SpinUpDays;
            if (slot >= 0)
            {
                DaysAround[slot] = MakeDay(date, wet, fraction, residual);
            }
        }
    }

    private DailyWeather MakeDay(DateOnly date, bool wet, double fraction, in WeatherResidual residual)
    {
        // Wet days are cooler; the spread within each kind is what the total spread leaves.
        double cooling = _parameters.WetDayCoolingKelvin;
        double deviation = Math.Max(0, _maximumDeviation.At(date));
        double between = fraction * (1 - fraction) * cooling * cooling;
        double within = Math.Sqrt(Math.Max((deviation * deviation) - between, 0.25 * deviation * deviation));
        double maximum = _maximum.At(date) + (cooling * (wet ? fraction - 1 : fraction)) + (within * residual.Maximum);
        double minimum = _minimum.At(date) + (Math.Max(0, _minimumDeviation.At(date)) * residual.Minimum);
        minimum = Math.Min(minimum, maximum - LeastDailyRangeKelvin);

        double ratio = _parameters.WetDayRadiationRatio;
        double dryMean = _radiation.At(date) / (1 - fraction + (fraction * ratio));
        double mean = wet ? ratio * dryMean : dryMean;
        double spread = wet ? _parameters.WetDayRadiationDeviation : _parameters.DryDayRadiationDeviation;
        double greatest = _parameters.GreatestClearness
            * SolarGeometry.ExtraterrestrialDaily(date.DayOfYear, _site.LatitudeDegrees);
        double radiation = Math.Clamp(
            mean * (1 + (spread * residual.Radiation)), _parameters.LeastClearnessShare * greatest, greatest);

        (double sunrise, double sunset) = SunClock.SunriseSunset(
            date.DayOfYear, _site.LatitudeDegrees, _site.LongitudeEastDegrees, _site.TimeZoneHours);
        double vapour = Psychrometrics.SaturationPressureKilopascal(minimum - _parameters.DewPointDepressionKelvin);
        return new DailyWeather(date, wet, maximum, minimum, radiation, vapour, sunrise, sunset);
    }

    private void FillHours()
    {
        Span<double> shares = stackalloc double[HoursADay];
        for (int slot = 1; slot < DaysAround.Length - 1; slot++)
        {
            ref readonly DailyWeather day = ref DaysAround[slot];
            HourlyRadiation.Split(
                shares, day.Date.DayOfYear, _site.LatitudeDegrees, _site.LongitudeEastDegrees, _site.TimeZoneHours);
            double meanWind = Math.Max(0, _wind.At(day.Date));
            for (int hour = 0; hour < HoursADay; hour++)
            {
                double temperature = TemperatureAt(slot, hour + 0.5);
                double vapour = Math.Min(
                    day.VapourPressureKilopascal, Psychrometrics.SaturationPressureKilopascal(temperature));
                Hours[((slot - 1) * HoursADay) + hour] = new HourlyWeather(
                    temperature,
                    shares[hour] * day.RadiationMegajoulesPerSquareMetre * 1e6 / UnitConstants.SecondsPerHour,
                    vapour,
                    WindAt(meanWind, day.Date, hour));
            }
        }
    }

    private double TemperatureAt(int slot, double clockHours)
    {
        ref readonly DailyWeather day = ref DaysAround[slot];
        if (clockHours < day.SunriseHours + _parameters.MinimumLagHours)
        {
            return NightAt(DaysAround[slot - 1], day, clockHours + HoursADay);
        }

        return clockHours > day.SunsetHours
            ? NightAt(day, DaysAround[slot + 1], clockHours)
            : DiurnalTemperature.ByDay(
                clockHours, day.SunriseHours, day.SunsetHours, day.MinimumCelsius, day.MaximumCelsius, _parameters);
    }

    private double NightAt(in DailyWeather before, in DailyWeather after, double clockHoursOfBefore)
    {
        double sunsetCelsius = DiurnalTemperature.ByDay(before.SunsetHours, before.SunriseHours, before.SunsetHours,
            before.MinimumCelsius, before.MaximumCelsius, _parameters);

        // In polar day there is no night; a thousandth of an hour keeps the quotient finite.
        double night = Math.Max(1e-3, after.SunriseHours + _parameters.MinimumLagHours + HoursADay - before.SunsetHours);
        return DiurnalTemperature.ByNight(clockHoursOfBefore - before.SunsetHours, night, sunsetCelsius,
            after.MinimumCelsius, _parameters.NightDecay);
    }

    private double WindAt(double mean, DateOnly date, int hour)
    {
        double uniform = _streams.Uniform(_process, FirstWindEntity + (uint)hour, (uint)date.DayNumber);
        double diurnal = 1 + (_parameters.WindDiurnalShare * Math.Cos(Math.PI / 12 * (hour + 0.5 - WindiestHour)));
        return mean * diurnal / WeibullMean * Math.Sqrt(-Math.Log(uniform));
    }
}
