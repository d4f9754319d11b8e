namespace FarmTwin.Farm.Climate;

/// <summary>The weather of one day.</summary>
/// <param name="Date">The date.</param>
/// <param name="Wet">Whether it rains or snows.</param>
/// <param name="MaximumCelsius">°C.</param>
/// <param name="MinimumCelsius">°C, at least 1 K below the maximum.</param>
/// <param name="RadiationMegajoulesPerSquareMetre">Global radiation, MJ/(m2 d).</param>
/// <param name="VapourPressureKilopascal">That of the day's dew point, kPa.</param>
/// <param name="SunriseHours">Hours of local standard time.</param>
/// <param name="SunsetHours">Hours of local standard time.</param>
public readonly record struct DailyWeather(
    DateOnly Date,
    bool Wet,
    double MaximumCelsius,
    double MinimumCelsius,
    double RadiationMegajoulesPerSquareMetre,
    double VapourPressureKilopascal,
    double SunriseHours,
    double SunsetHours);
