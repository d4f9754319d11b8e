namespace FarmTwin.Farm.Water;

/// <summary>The share of total ammonia nitrogen (TAN) that is un-ionized and harms fish.</summary>
/// <remarks>
/// Emerson, Russo, Lund and Thurston 1975, Journal of the Fisheries Research Board of Canada 32:2379-2383; 0-50 °C, fresh water.
/// No activity correction: at an ionic strength of 0.01 mol/L the true share is about a tenth lower, so this errs on the safe
/// side
/// and agrees with the tables that users hold. Beware of the misprint 2727.92 and of the published 32 °C column
/// (docs/model/water-ammonia.md).
/// </remarks>
public static class Ammonia
{
    /// <summary>pKa of ammonium.</summary>
    /// <param name="temperatureCelsius">Water temperature, 0-50 °C.</param>
    public static double PKa(double temperatureCelsius) =>
        0.09018 + (2729.92 / (temperatureCelsius + UnitConstants.ZeroCelsiusInKelvin));

    /// <summary>NH3-N over TAN, 0-1. Times TAN in mg N/L it gives NH3-N in mg N/L.</summary>
    /// <param name="pH">pH as a meter reads it.</param>
    /// <param name="temperatureCelsius">Water temperature, 0-50 °C.</param>
    public static double UnionizedFraction(double pH, double temperatureCelsius) =>
        1 / (1 + Math.Exp(CarbonateConstants.LogarithmOfTen * (PKa(temperatureCelsius) - pH)));
}
