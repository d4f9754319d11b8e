using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Water;

/// <summary>How fast the fish's water may change temperature when two loops are joined.</summary>
/// <param name="LargestCelsiusPerHour">°C/h.</param>
/// <param name="LargestCelsiusPerDay">°C/d.</param>
public sealed record ExchangeParameters(double LargestCelsiusPerHour, double LargestCelsiusPerDay)
{
    /// <summary>Reads the values from the set "water".</summary>
    /// <param name="set">The parameter set.</param>
    public static ExchangeParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new ExchangeParameters(
            set.Get("largestTemperatureChangePerHour", "K/h"),
            set.Get("largestTemperatureChangePerDay", "K/d"));
    }
}
