namespace FarmTwin.Farm.Water;

/// <summary>Oxygen that water holds in equilibrium with moist air.</summary>
/// <remarks>
/// Benson and Krause 1984, Limnology and Oceanography 29:620-632, in the form used by Standard Methods and the USGS.
/// 0-40 °C, salinity 0-40 g/kg. Pure functions, safe on any thread.
/// </remarks>
public static class OxygenSaturation
{
    /// <summary>Air pressure at an elevation in the standard atmosphere, atm.</summary>
    /// <param name="elevationMetres">Metres above sea level, -500 to 5000.</param>
    public static double PressureAtmospheres(double elevationMetres) =>
        Math.Exp(5.25 * Math.Log(1 - (elevationMetres / 44300)));

    /// <summary>Dissolved oxygen at saturation, mg/L.</summary>
    /// <param name="temperatureCelsius">Water temperature, 0-40 °C.</param>
    /// <param name="pressureAtmospheres">Air pressure, atm.</param>
    /// <param name="salinityGramsPerKilogram">Salinity, 0-40 g/kg; about 6e-4 of the conductivity in µS/cm, and negligible in
    /// farm water.</param>
    public static double MilligramsPerLitre(double temperatureCelsius, double pressureAtmospheres, double salinityGramsPerKilogram = 0)
    {
        double kelvin = temperatureCelsius + UnitConstants.ZeroCelsiusInKelvin;
        double r = 1 / kelvin;
        double logarithm = -139.34411 + (r * (1.575701e5 + (r * (-6.642308e7 + (r * (1.243800e10 - (r * 8.621949e11)))))));
        logarithm -= salinityGramsPerKilogram * (0.017674 - (r * (10.754 - (r * 2140.7))));
        double atOneAtmosphere = Math.Exp(logarithm);
        double vapour = WaterVapourAtmospheres(temperatureCelsius);
        double theta = 9.75e-4 + (temperatureCelsius * (-1.426e-5 + (temperatureCelsius * 6.436e-8)));
        return atOneAtmosphere * (pressureAtmospheres - vapour) * (1 - (theta * pressureAtmospheres)) / ((1 - vapour) * (1 - theta));
    }

    /// <summary>Vapour pressure of water at its surface, atm (the fit that belongs to the oxygen equation).</summary>
    /// <param name="temperatureCelsius">Water temperature, 0-40 °C.</param>
    public static double WaterVapourAtmospheres(double temperatureCelsius)
    {
        double r = 1 / (temperatureCelsius + UnitConstants.ZeroCelsiusInKelvin);
        return Math.Exp(11.8571 - (r * (3840.70 + (r * 216961))));
    }
}
