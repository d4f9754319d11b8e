namespace FarmTwin.Farm.Climate;

/// <summary>Closed forms for a power failure: how long the oxygen lasts, how fast water cools.</summary>
/// <remarks>Own calculations, for design sheets and as checks of a stepped season. Exchange at the still surface is left out
/// of the oxygen: at farm densities it adds less than a minute.</remarks>
public static class PowerOutage
{
    /// <summary>Minutes until the oxygen falls from one level to another while the fish go on breathing.</summary>
    /// <param name="volumeLitres">Water, L.</param>
    /// <param name="fishKilograms">Fish, kg, above 0.</param>
    /// <param name="oxygenUseMilligramsPerKilogramHour">Oxygen use, mg/(kg h), above 0; the high one after a meal.</param>
    /// <param name="fromMilligramsPerLitre">Oxygen at the start, mg/L.</param>
    /// <param name="toMilligramsPerLitre">Critical oxygen, mg/L, not above the start.</param>
    public static double MinutesToOxygen(double volumeLitres, double fishKilograms, double oxygenUseMilligramsPerKilogramHour,
        double fromMilligramsPerLitre, double toMilligramsPerLitre) =>
        60 * (fromMilligramsPerLitre - toMilligramsPerLitre) * volumeLitres
            / (fishKilograms * oxygenUseMilligramsPerKilogramHour);

    /// <summary>Time constant of a cooling body of water, h.</summary>
    /// <param name="volumeLitres">Water, L (taken as kg).</param>
    /// <param name="conductanceWattsPerKelvin">All losses, W/K, above 0.</param>
    public static double CoolingTimeConstantHours(double volumeLitres, double conductanceWattsPerKelvin) =>
        volumeLitres * HeatExchanger.WaterSpecificHeat / (conductanceWattsPerKelvin * UnitConstants.SecondsPerHour);

    /// <summary>Temperature of unheated water after some hours in air of constant temperature, °C.</summary>
    /// <param name="waterCelsius">At the start, °C.</param>
    /// <param name="airCelsius">°C.</param>
    /// <param name="timeConstantHours">From <see cref="CoolingTimeConstantHours"/>, h.</param>
    /// <param name="hours">h.</param>
    public static double TemperatureAfter(double waterCelsius, double airCelsius, double timeConstantHours, double hours) =>
        airCelsius + ((waterCelsius - airCelsius) * Math.Exp(-hours / timeConstantHours));
}
