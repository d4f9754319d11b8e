namespace FarmTwin.Farm.Water;

/// <summary>Equal exchange between two well-mixed loops in closed form: for the coupling plan, and as the check of the stepped
/// network.</summary>
/// <remarks>
/// Holds for what nothing else adds or takes: nutrients, alkalinity, inorganic carbon, temperature without heater. pH does not
/// mix:
/// mix alkalinity and carbon, then solve. An identity, no source needed.
/// </remarks>
public static class TwoLoopExchange
{
    /// <summary>Heat that a flow carries: 4.1868 kJ/(kg K) over 3.6 kJ/Wh at 1 kg/L, in kW per L/h and K.</summary>
    private const double KilowattsPerLitreHourKelvin = 1.163e-3;

    /// <summary>The value that both loops end at.</summary>
    /// <param name="start">Values before.</param>
    /// <param name="fishLoopLitres">Water of the fish loop, L.</param>
    /// <param name="plantLoopLitres">Water of the plant loop, L.</param>
    public static double Mixed(LoopPair start, double fishLoopLitres, double plantLoopLitres) =>
        ((start.FishLoop * fishLoopLitres) + (start.PlantLoop * plantLoopLitres)) / (fishLoopLitres + plantLoopLitres);

    /// <summary>Rate at which the difference dies away, 1/h.</summary>
    /// <param name="flowLitresPerHour">Flow each way, L/h.</param>
    /// <param name="fishLoopLitres">Water of the fish loop, L.</param>
    /// <param name="plantLoopLitres">Water of the plant loop, L.</param>
    public static double RatePerHour(double flowLitresPerHour, double fishLoopLitres, double plantLoopLitres) =>
        flowLitresPerHour * ((1 / fishLoopLitres) + (1 / plantLoopLitres));

    /// <summary>Both loops after a time.</summary>
    /// <param name="start">Values before.</param>
    /// <param name="fishLoopLitres">Water of the fish loop, L.</param>
    /// <param name="plantLoopLitres">Water of the plant loop, L.</param>
    /// <param name="flowLitresPerHour">Flow each way, L/h.</param>
    /// <param name="hours">Time, h.</param>
    public static LoopPair After(
        LoopPair start, double fishLoopLitres, double plantLoopLitres, double flowLitresPerHour, double hours)
    {
        double mixed = Mixed(start, fishLoopLitres, plantLoopLitres);
        double left = Math.Exp(-RatePerHour(flowLitresPerHour, fishLoopLitres, plantLoopLitres) * hours);
        return new LoopPair(mixed + ((start.FishLoop - mixed) * left), mixed + ((start.PlantLoop - mixed) * left));
    }

    /// <summary>The largest flow at which the fish's water changes by no more than the hourly limit at first, L/h.</summary>
    /// <param name="temperatureCelsius">Temperatures before, °C; equal ones give infinity.</param>
    /// <param name="fishLoopLitres">Water of the fish loop, L.</param>
    /// <param name="largestCelsiusPerHour">The limit, K/h.</param>
    public static double LargestFlowByHourLitresPerHour(LoopPair temperatureCelsius, double fishLoopLitres, double largestCelsiusPerHour) =>
        largestCelsiusPerHour * fishLoopLitres / Math.Abs(temperatureCelsius.FishLoop - temperatureCelsius.PlantLoop);

    /// <summary>
    /// The largest flow at which an unheated fish loop changes by no more than the daily limit in 24 h, L/h: infinity where
    /// even full
    /// mixing keeps it.
    /// </summary>
    /// <param name="temperatureCelsius">Temperatures before, °C.</param>
    /// <param name="fishLoopLitres">Water of the fish loop, L.</param>
    /// <param name="plantLoopLitres">Water of the plant loop, L.</param>
    /// <param name="largestCelsiusPerDay">The limit, K/d.</param>
    public static double LargestFlowByDayLitresPerHour(
        LoopPair temperatureCelsius, double fishLoopLitres, double plantLoopLitres, double largestCelsiusPerDay)
    {
        double change = Math.Abs(temperatureCelsius.FishLoop - Mixed(temperatureCelsius, fishLoopLitres, plantLoopLitres));
        double left = 1 - (largestCelsiusPerDay / change);
        return left > 0
            ? -Math.Log(left) / UnitConstants.HoursPerDay / ((1 / fishLoopLitres) + (1 / plantLoopLitres))
            : double.PositiveInfinity;
    }

    /// <summary>Heat that holds the fish loop's temperature while plant loop water flows in, kW; negative where that water is
    /// warmer.</summary>
    /// <param name="flowLitresPerHour">Flow each way, L/h.</param>
    /// <param name="temperatureCelsius">Temperatures, °C.</param>
    public static double HeatKilowatts(double flowLitresPerHour, LoopPair temperatureCelsius) =>
        KilowattsPerLitreHourKelvin * flowLitresPerHour * (temperatureCelsius.FishLoop - temperatureCelsius.PlantLoop);

    /// <summary>The largest flow that a heater can hold, L/h: infinity where the plant loop is as warm.</summary>
    /// <param name="spareKilowatts">Heat beyond the fish loop's own loss, kW.</param>
    /// <param name="temperatureCelsius">Temperatures, °C.</param>
    public static double LargestFlowByHeatLitresPerHour(double spareKilowatts, LoopPair temperatureCelsius)
    {
        double difference = temperatureCelsius.FishLoop - temperatureCelsius.PlantLoop;
        return difference > 0 ? spareKilowatts / (KilowattsPerLitreHourKelvin * difference) : double.PositiveInfinity;
    }
}
