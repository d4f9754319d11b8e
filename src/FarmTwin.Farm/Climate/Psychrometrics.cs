using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Farm.Climate;

/// <summary>Moist air: saturation, humidity ratio, enthalpy, density, dew point, wet bulb.</summary>
/// <remarks>
/// The set of Allen, Pereira, Raes &amp; Smith (1998), FAO Irrigation and Drainage Paper 56 (Tetens saturation pressure over
/// water), with the ideal-gas relations of the ASHRAE Handbook. Temperatures in °C, pressures in kPa. Meant for -20 to 60 °C
/// (over water also below freezing, where ice would give less); pure functions without state.
/// </remarks>
public static class Psychrometrics
{
    /// <summary>Ratio of the molar masses of water and dry air as FAO-56 rounds it.</summary>
    public const double WaterToAirMassRatio = 0.622;

    // Tetens (1930) as given by FAO-56 Eq 11 and 13.
    private const double TetensPressure = 0.6108;
    private const double TetensSlope = 17.27;
    private const double TetensOffset = 237.3;

    // Gas constant of dry air, kJ/(kg K); specific heats of dry air and vapour, kJ/(kg K); ASHRAE Handbook, Fundamentals, ch. 1.
    private const double DryAirGasConstant = 0.28705;
    private const double DryAirSpecificHeat = 1.006;
    private const double VapourSpecificHeat = 1.86;
    private const double VapourEnthalpyAtZero = 2501;
    private const double LiquidSpecificHeat = 4.186;

    // FAO-56 Eq 16, psychrometer with forced ventilation.
    private const double AspiratedPsychrometer = 0.000662;

    /// <summary>Saturation vapour pressure, kPa (FAO-56 Eq 11).</summary>
    /// <param name="celsius">Temperature, °C, above -237 °C.</param>
    public static double SaturationPressureKilopascal(double celsius) =>
        TetensPressure * Math.Exp(TetensSlope * celsius / (celsius + TetensOffset));

    /// <summary>The same at four temperatures.</summary>
    internal static Vector256<double> SaturationPressureKilopascal(Vector256<double> celsius) =>
        TetensPressure * FourFunctions.Exp(TetensSlope * celsius / (celsius + Vector256.Create(TetensOffset)));

    /// <summary>Slope of the saturation pressure at a temperature, kPa/K (FAO-56 Eq 13).</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double Slope(double celsius) =>
        Slope(celsius, SaturationPressureKilopascal(celsius));

    /// <summary>Slope of the saturation pressure where that pressure is known already, kPa/K.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="saturationKilopascal">Saturation pressure at that temperature, kPa.</param>
    public static double Slope(double celsius, double saturationKilopascal)
    {
        double shifted = celsius + TetensOffset;
        return TetensSlope * TetensOffset * saturationKilopascal / (shifted * shifted);
    }

    /// <summary>The same at four temperatures.</summary>
    internal static Vector256<double> Slope(Vector256<double> celsius, Vector256<double> saturationKilopascal)
    {
        Vector256<double> shifted = celsius + Vector256.Create(TetensOffset);
        return TetensSlope * TetensOffset * saturationKilopascal / (shifted * shifted);
    }

    /// <summary>Mean air pressure at an elevation, kPa (FAO-56 Eq 7).</summary>
    /// <param name="elevationMetres">Above sea level, m, below 10 km.</param>
    public static double PressureKilopascal(double elevationMetres) =>
        101.3 * Math.Pow((293 - (0.0065 * elevationMetres)) / 293, 5.26);

    /// <summary>Psychrometric constant, kPa/K (FAO-56 Eq 8).</summary>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    public static double Gamma(double pressureKilopascal) => 0.665e-3 * pressureKilopascal;

    /// <summary>Humidity ratio, kg water per kg dry air.</summary>
    /// <param name="vapourPressureKilopascal">Vapour pressure, kPa, below the air pressure.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    public static double HumidityRatio(double vapourPressureKilopascal, double pressureKilopascal) =>
        WaterToAirMassRatio * vapourPressureKilopascal / (pressureKilopascal - vapourPressureKilopascal);

    /// <summary>Vapour pressure of a humidity ratio, kPa.</summary>
    /// <param name="humidityRatio">kg water per kg dry air, not negative.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    public static double VapourPressureFromRatio(double humidityRatio, double pressureKilopascal) =>
        pressureKilopascal * humidityRatio / (WaterToAirMassRatio + humidityRatio);

    /// <summary>Enthalpy of moist air above dry air and liquid water at 0 °C, kJ per kg dry air.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidityRatio">kg water per kg dry air.</param>
    public static double Enthalpy(double celsius, double humidityRatio) =>
        (DryAirSpecificHeat * celsius) + (humidityRatio * (VapourEnthalpyAtZero + (VapourSpecificHeat * celsius)));

    /// <summary>Mass of dry air in a cubic metre of moist air, kg/m3.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="vapourPressureKilopascal">Vapour pressure, kPa.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    public static double DryAirDensity(double celsius, double vapourPressureKilopascal, double pressureKilopascal) =>
        (pressureKilopascal - vapourPressureKilopascal)
            / (DryAirGasConstant * (celsius + UnitConstants.ZeroCelsiusInKelvin));

    /// <summary>Latent heat of vaporisation, MJ/kg (Harrison 1963, as in FAO-56).</summary>
    /// <param name="celsius">Temperature of the water, °C.</param>
    public static double LatentHeatMegajoulesPerKilogram(double celsius) => 2.501 - (0.002361 * celsius);

    /// <summary>The same at four temperatures.</summary>
    internal static Vector256<double> LatentHeatMegajoulesPerKilogram(Vector256<double> celsius) => Vector256.Create(2.501) - (0.002361 * celsius);

    /// <summary>Dew point, °C (Tetens inverted).</summary>
    /// <param name="vapourPressureKilopascal">Vapour pressure, kPa, above 0.</param>
    public static double DewPoint(double vapourPressureKilopascal)
    {
        double logarithm = Math.Log(vapourPressureKilopascal / TetensPressure);
        return TetensOffset * logarithm / (TetensSlope - logarithm);
    }

    /// <summary>Vapour pressure from an aspirated psychrometer, kPa (FAO-56 Eq 15 and 16).</summary>
    /// <param name="celsius">Dry bulb, °C.</param>
    /// <param name="wetBulbCelsius">Wet bulb, °C, not above the dry bulb.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    public static double VapourPressureFromWetBulb(double celsius, double wetBulbCelsius, double pressureKilopascal) =>
        SaturationPressureKilopascal(wetBulbCelsius) - (AspiratedPsychrometer * pressureKilopascal * (celsius - wetBulbCelsius));

    /// <summary>Wet bulb of an aspirated psychrometer, °C: <see cref="VapourPressureFromWetBulb"/> solved by bisection.</summary>
    /// <remarks>The right side rises with the wet bulb, so the bracket from 60 K below to the dry bulb always holds the root.</remarks>
    /// <param name="celsius">Dry bulb, °C.</param>
    /// <param name="vapourPressureKilopascal">Vapour pressure, kPa, not above saturation.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    public static double WetBulb(double celsius, double vapourPressureKilopascal, double pressureKilopascal)
    {
        double low = celsius - 60;
        double high = celsius;
        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (low + high);
            if (VapourPressureFromWetBulb(celsius, middle, pressureKilopascal) < vapourPressureKilopascal)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return 0.5 * (low + high);
    }

    /// <summary>Humidity ratio from the thermodynamic wet bulb (adiabatic saturation; ASHRAE Handbook, Fundamentals, ch. 1).</summary>
    /// <param name="celsius">Dry bulb, °C.</param>
    /// <param name="wetBulbCelsius">Thermodynamic wet bulb, °C, from 0 °C to the dry bulb.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    public static double HumidityRatioFromThermodynamicWetBulb(double celsius, double wetBulbCelsius, double pressureKilopascal)
    {
        double saturated = HumidityRatio(SaturationPressureKilopascal(wetBulbCelsius), pressureKilopascal);
        double saturationHeat = VapourEnthalpyAtZero - ((LiquidSpecificHeat - VapourSpecificHeat) * wetBulbCelsius);
        return ((saturationHeat * saturated) - (DryAirSpecificHeat * (celsius - wetBulbCelsius)))
            / (VapourEnthalpyAtZero + (VapourSpecificHeat * celsius) - (LiquidSpecificHeat * wetBulbCelsius));
    }
}
