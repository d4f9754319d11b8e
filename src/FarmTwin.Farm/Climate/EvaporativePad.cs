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

    /// <summary>Water that the pad evaporates, kg/s: the heat that the air gives up, at the latent heat of the wet bulb.</summary>
    /// <param name="airWattsPerKelvin">Heat capacity flow of the air, W/K.</param>
    /// <param name="coolingKelvin">By how much it cools, K.</param>
    /// <param name="wetBulbCelsius">Wet bulb, °C.</param>
    public static double WaterKilogramsPerSecond(double airWattsPerKelvin, double coolingKelvin, double wetBulbCelsius) =>
        airWattsPerKelvin * coolingKelvin / (Psychrometrics.LatentHeatMegajoulesPerKilogram(wetBulbCelsius) * 1e6);
}
