namespace FarmTwin.Farm.Climate;

/// <summary>Evaporation and heat loss of an open, undisturbed water surface indoors.</summary>
/// <remarks>
/// Shah's law for undisturbed pools: natural convection of air made light by vapour, or the diffusion floor, whichever is
/// larger (Shah 2002, HVAC&amp;R Research 8(1):125-142, constants from Shah 2014, ASHRAE Transactions 120(2); from memory of the
/// source, not re-read; the 2002 abstract states a mean deviation of 18 %). Convection follows by the Bowen ratio, radiation by
/// emissivity 0.95. Air temperatures 0 to 45 °C, water 0 to 70 °C, no wind. Condensation on colder water is left out.
/// </remarks>
public static class WaterSurface
{
    // Shah: E = 35 rho_w (rho_r - rho_w)^(1/3) (W_w - W_r), or 0.00005 (p_w - p_r) with p in Pa; kg/(m2 h).
    private const double NaturalConvection = 35;
    private const double DiffusionPerKilopascal = 0.05;

    // Bowen ratio, kPa/K at 100 kPa.
    private const double BowenKilopascalPerKelvin = 0.062;

    private const double WaterEmissivity = 0.95;
    private const double StefanBoltzmann = 5.670374419e-8;
    private const double WattsPerMegajouleHour = 1e6 / UnitConstants.SecondsPerHour;
    private const double LatentHeatSlope = -0.002361;
    private const double DryAirGasConstant = 0.28705;

    /// <summary>Exchange with air whose surrounding surfaces are as warm as it is.</summary>
    /// <param name="waterCelsius">Water at the surface, °C.</param>
    /// <param name="airCelsius">Air, °C.</param>
    /// <param name="vapourPressureKilopascal">Vapour pressure of the air, kPa.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    /// <param name="activityFactor">Multiplies evaporation and convection: 1 still, 1.5 to 2 bubbled.</param>
    public static SurfaceExchange At(double waterCelsius, double airCelsius, double vapourPressureKilopascal,
        double pressureKilopascal, double activityFactor) =>
        At(waterCelsius, airCelsius, vapourPressureKilopascal, pressureKilopascal, activityFactor, airCelsius);

    /// <summary>Exchange with air and with surfaces of another temperature.</summary>
    /// <param name="waterCelsius">Water at the surface, °C.</param>
    /// <param name="airCelsius">Air, °C.</param>
    /// <param name="vapourPressureKilopascal">Vapour pressure of the air, kPa.</param>
    /// <param name="pressureKilopascal">Air pressure, kPa.</param>
    /// <param name="activityFactor">Multiplies evaporation and convection: 1 still, 1.5 to 2 bubbled.</param>
    /// <param name="surroundingsCelsius">Mean temperature of the surfaces that the water sees, °C.</param>
    public static SurfaceExchange At(double waterCelsius, double airCelsius, double vapourPressureKilopascal,
        double pressureKilopascal, double activityFactor, double surroundingsCelsius)
    {
        double saturation = Psychrometrics.SaturationPressureKilopascal(waterCelsius);
        double saturationSlope = Psychrometrics.Slope(waterCelsius, saturation);
        double waterKelvin = waterCelsius + UnitConstants.ZeroCelsiusInKelvin;
        double densityAtWater = Psychrometrics.DryAirDensity(waterCelsius, saturation, pressureKilopascal);
        double densityOfRoom = Psychrometrics.DryAirDensity(airCelsius, vapourPressureKilopascal, pressureKilopascal);

        // Transfer per kPa, so that convection by the Bowen ratio has a limit where the two vapour pressures meet:
        // W_w - W_r = 0.622 P (p_w - p_r) / ((P - p_w)(P - p_r)) exactly.
        double transfer = DiffusionPerKilopascal;
        double transferSlope = 0;
        double buoyancy = densityOfRoom - densityAtWater;
        if (buoyancy > 0 && saturation > vapourPressureKilopascal)
        {
            double natural = NaturalConvection * Psychrometrics.WaterToAirMassRatio * pressureKilopascal * densityAtWater
                * Math.Cbrt(buoyancy)
                / ((pressureKilopascal - saturation) * (pressureKilopascal - vapourPressureKilopascal));
            if (natural > transfer)
            {
                double densitySlope = (-saturationSlope / (DryAirGasConstant * waterKelvin)) - (densityAtWater / waterKelvin);
                transfer = natural;
                transferSlope = natural * ((densitySlope / densityAtWater) - (densitySlope / (3 * buoyancy))
                    + (saturationSlope / (pressureKilopascal - saturation)));
            }
        }

        transfer *= activityFactor;
        transferSlope *= activityFactor;
        double latentHeat = WattsPerMegajouleHour * Psychrometrics.LatentHeatMegajoulesPerKilogram(waterCelsius);
        double latentHeatSlope = WattsPerMegajouleHour * LatentHeatSlope;
        double deficit = saturation - vapourPressureKilopascal;
        double evaporation = 0;
        double latentSlope = 0;
        if (deficit > 0)
        {
            evaporation = transfer * deficit;
            latentSlope = (latentHeat * ((transferSlope * deficit) + (transfer * saturationSlope)))
                + (latentHeatSlope * evaporation);
        }

        double bowen = BowenKilopascalPerKelvin * pressureKilopascal / 100;
        double difference = waterCelsius - airCelsius;
        double convective = latentHeat * transfer * bowen * difference;
        double convectiveSlope = bowen
            * ((latentHeat * transfer) + (difference * ((latentHeat * transferSlope) + (latentHeatSlope * transfer))));

        double surroundingsKelvin = surroundingsCelsius + UnitConstants.ZeroCelsiusInKelvin;
        double waterCubed = waterKelvin * waterKelvin * waterKelvin;
        double radiative = WaterEmissivity * StefanBoltzmann * ((waterCubed * waterKelvin)
            - (surroundingsKelvin * surroundingsKelvin * surroundingsKelvin * surroundingsKelvin));
        double radiativeSlope = 4 * WaterEmissivity * StefanBoltzmann * waterCubed;

        double latent = latentHeat * evaporation;
        return new SurfaceExchange(evaporation, latent + convective + radiative,
            latentSlope + convectiveSlope + radiativeSlope, latent, convective, radiative);
    }
}
