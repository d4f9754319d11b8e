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
}
