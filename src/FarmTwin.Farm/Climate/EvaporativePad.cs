namespace FarmTwin.Farm.Climate;

/// <summary>A wet pad that cools the air drawn into a house.</summary>
public static class EvaporativePad
{
    /// <summary>Air behind the pad, °C.</summary>
    /// <param name="airCelsius">Before the pad, °C.</param>
    /// <param name="wetBulbCelsius">Wet bulb before the pad, °C.</param>
    /// <param name="effectiveness">0.75 to 0.85 in practice.</param>
    public static double LeavingCelsius(double airCelsius, double wetBulbCelsius, double effectiveness) =>
        airCelsius - (effectiveness * (airCelsius - wetBulbCelsius));

    /// <summary>Water evaporated by the pad, kg/h.</summary>
    /// <param name="dryAirKilogramsPerSecond">Dry air through the pad, kg/s.</param>
    /// <param name="leavingRatio">Humidity ratio behind the pad, kg/kg.</param>
    /// <param name="enteringRatio">Humidity ratio before the pad, kg/kg.</param>
    public static double WaterKilogramsPerHour(double dryAirKilogramsPerSecond, double leavingRatio, double enteringRatio) =>
        UnitConstants.SecondsPerHour * dryAirKilogramsPerSecond * (leavingRatio - enteringRatio);
}
