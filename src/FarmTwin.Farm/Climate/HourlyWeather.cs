namespace FarmTwin.Farm.Climate;

/// <summary>The weather of one clock hour, means over the hour.</summary>
/// <param name="TemperatureCelsius">°C.</param>
/// <param name="RadiationWattsPerSquareMetre">Global radiation on a horizontal surface, W/m2.</param>
/// <param name="VapourPressureKilopascal">kPa, not above saturation.</param>
/// <param name="WindMetresPerSecond">m/s.</param>
public readonly record struct HourlyWeather(
    double TemperatureCelsius,
    double RadiationWattsPerSquareMetre,
    double VapourPressureKilopascal,
    double WindMetresPerSecond);
