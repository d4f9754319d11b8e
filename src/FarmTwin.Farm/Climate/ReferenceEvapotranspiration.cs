namespace FarmTwin.Farm.Climate;

/// <summary>The FAO-56 reference evapotranspiration with its radiation terms, daily and hourly.</summary>
/// <remarks>
/// Allen, Pereira, Raes &amp; Smith (1998), FAO Irrigation and Drainage Paper 56. Per square metre of ground under a short,
/// well-watered grass; multiply by crop coefficient and planted area. Radiation in MJ/m2 per day or hour, vapour pressures and
/// psychrometric constant in kPa and kPa/K, temperatures in °C, wind at 2 m in m/s.
/// </remarks>
public static class ReferenceEvapotranspiration
{
    /// <summary>Share of the sun that the reference surface keeps (1 less its albedo of 0.23).</summary>
    public const double AbsorbedShare = 0.77;

    // FAO-56 prints K = °C + 273.16 and these constants of Stefan and Boltzmann.
    private const double FaoKelvin = 273.16;
    private const double StefanBoltzmannDaily = 4.903e-9;
    private const double StefanBoltzmannHourly = 2.043e-10;
    private const double MillimetresPerMegajoule = 0.408;

    /// <summary>Reference evapotranspiration of a day, mm/d (Eq 6).</summary>
    /// <param name="meanCelsius">Mean of the day's extremes, °C.</param>
    /// <param name="netRadiation">MJ/(m2 d).</param>
    /// <param name="soilHeat">MJ/(m2 d), about 0 over a day.</param>
    /// <param name="windMetresPerSecond">At 2 m, m/s.</param>
    /// <param name="saturationKilopascal">Mean of the saturation pressures at the day's extremes, kPa (Eq 12).</param>
    /// <param name="vapourPressureKilopascal">Actual, kPa.</param>
    /// <param name="gamma">Psychrometric constant, kPa/K.</param>
    public static double DailyMillimetres(double meanCelsius, double netRadiation, double soilHeat, double windMetresPerSecond,
        double saturationKilopascal, double vapourPressureKilopascal, double gamma) =>
        Combination(900, meanCelsius, netRadiation - soilHeat, windMetresPerSecond,
            saturationKilopascal - vapourPressureKilopascal, gamma);

    /// <summary>Reference evapotranspiration of an hour, mm/h (Eq 53), saturation taken at the hour's temperature.</summary>
    /// <param name="celsius">Mean of the hour, °C.</param>
    /// <param name="netRadiation">MJ/(m2 h).</param>
    /// <param name="soilHeat">MJ/(m2 h), see <see cref="HourlySoilHeat"/>.</param>
    /// <param name="windMetresPerSecond">At 2 m, m/s.</param>
    /// <param name="vapourPressureKilopascal">Actual, kPa.</param>
    /// <param name="gamma">Psychrometric constant, kPa/K.</param>
    public static double HourlyMillimetres(double celsius, double netRadiation, double soilHeat, double windMetresPerSecond,
        double vapourPressureKilopascal, double gamma) =>
        Combination(37, celsius, netRadiation - soilHeat, windMetresPerSecond,
            Psychrometrics.SaturationPressureKilopascal(celsius) - vapourPressureKilopascal, gamma);

    /// <summary>Soil heat flux of an hour (Eq 45 and 46), unit of the net radiation.</summary>
    /// <param name="netRadiation">Net radiation of the hour.</param>
    /// <param name="night">Whether the sun is down.</param>
    public static double HourlySoilHeat(double netRadiation, bool night) => (night ? 0.5 : 0.1) * netRadiation;

    /// <summary>Net shortwave radiation Rns (Eq 38), unit of the global radiation.</summary>
    /// <param name="globalRadiation">Global radiation.</param>
    public static double NetShortwave(double globalRadiation) => AbsorbedShare * globalRadiation;

    /// <summary>Net longwave loss of a day Rnl, MJ/(m2 d) (Eq 39).</summary>
    /// <param name="maximumCelsius">°C.</param>
    /// <param name="minimumCelsius">°C.</param>
    /// <param name="vapourPressureKilopascal">kPa.</param>
    /// <param name="clearness">Global over clear-sky radiation; held within 0.3 and 1.</param>
    public static double NetLongwaveDaily(
        double maximumCelsius, double minimumCelsius, double vapourPressureKilopascal, double clearness)
    {
        double hot = Math.Pow(maximumCelsius + FaoKelvin, 4);
        double cold = Math.Pow(minimumCelsius + FaoKelvin, 4);
        return StefanBoltzmannDaily * 0.5 * (hot + cold) * LongwaveFactors(vapourPressureKilopascal, clearness);
    }

    /// <summary>Net longwave loss of an hour, MJ/(m2 h) (Eq 39 with the hourly constant).</summary>
    /// <param name="celsius">°C.</param>
    /// <param name="vapourPressureKilopascal">kPa.</param>
    /// <param name="clearness">Global over clear-sky radiation, that of late afternoon at night; held within 0.3 and 1.</param>
    public static double NetLongwaveHourly(double celsius, double vapourPressureKilopascal, double clearness) =>
        StefanBoltzmannHourly * Math.Pow(celsius + FaoKelvin, 4) * LongwaveFactors(vapourPressureKilopascal, clearness);

    /// <summary>Clear-sky global radiation Rso (Eq 37), unit of the extraterrestrial radiation.</summary>
    /// <param name="extraterrestrial">Ra.</param>
    /// <param name="elevationMetres">m.</param>
    public static double ClearSky(double extraterrestrial, double elevationMetres) =>
        (0.75 + (2e-5 * elevationMetres)) * extraterrestrial;

    /// <summary>Global radiation from sunshine hours (Eq 35, Angstrom coefficients 0.25 and 0.50).</summary>
    /// <param name="extraterrestrial">Ra.</param>
    /// <param name="sunshineHours">h, 0 to the day length.</param>
    /// <param name="dayLengthHours">h.</param>
    public static double FromSunshine(double extraterrestrial, double sunshineHours, double dayLengthHours) =>
        (0.25 + (0.50 * Math.Clamp(sunshineHours / dayLengthHours, 0, 1))) * extraterrestrial;

    /// <summary>Global radiation from the day's range of temperature (Eq 50, Hargreaves), capped by the clear sky.</summary>
    /// <param name="extraterrestrial">Ra, MJ/(m2 d).</param>
    /// <param name="maximumCelsius">°C.</param>
    /// <param name="minimumCelsius">°C, not above the maximum.</param>
    /// <param name="elevationMetres">m.</param>
    /// <param name="coefficient">0.16 inland, 0.19 near the coast, K^-0.5.</param>
    public static double FromTemperatures(double extraterrestrial, double maximumCelsius, double minimumCelsius,
        double elevationMetres, double coefficient = 0.16) =>
        Math.Min(coefficient * Math.Sqrt(maximumCelsius - minimumCelsius) * extraterrestrial,
            ClearSky(extraterrestrial, elevationMetres));

    /// <summary>Wind at 2 m from wind at another height, m/s (Eq 47).</summary>
    /// <param name="windMetresPerSecond">At the height, m/s.</param>
    /// <param name="heightMetres">m, above 0.1.</param>
    public static double WindAtTwoMetres(double windMetresPerSecond, double heightMetres) =>
        windMetresPerSecond * 4.87 / Math.Log((67.8 * heightMetres) - 5.42);

    private static double Combination(
        double coefficient, double celsius, double available, double wind, double deficit, double gamma)
    {
        double slope = Psychrometrics.Slope(celsius);
        return ((MillimetresPerMegajoule * slope * available) + (gamma * coefficient / (celsius + 273) * wind * deficit))
            / (slope + (gamma * (1 + (0.34 * wind))));
    }

    private static double LongwaveFactors(double vapourPressureKilopascal, double clearness) =>
        (0.34 - (0.14 * Math.Sqrt(vapourPressureKilopascal))) * ((1.35 * Math.Clamp(clearness, 0.3, 1)) - 0.35);
}
