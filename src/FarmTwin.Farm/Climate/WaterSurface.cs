using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

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
        SurfaceLanes same = At(
            Vector256.Create(waterCelsius), airCelsius, vapourPressureKilopascal, pressureKilopascal, Vector256.Create(activityFactor),
            surroundingsCelsius);
        return new SurfaceExchange(
            same.Evaporation.ToScalar(),
            (same.Latent + same.Convective + same.Radiative).ToScalar(),
            same.Slope.ToScalar(),
            same.Latent.ToScalar(),
            same.Convective.ToScalar(),
            same.Radiative.ToScalar());
    }

    /// <summary>The same of four waters under one air.</summary>
    internal static SurfaceLanes At(Vector256<double> waterCelsius, double airCelsius, double vapourPressureKilopascal,
        double pressureKilopascal, Vector256<double> activityFactor, double surroundingsCelsius)
    {
        Vector256<double> one = Vector256<double>.One;
        Vector256<double> zero = Vector256<double>.Zero;
        Vector256<double> pressure = Vector256.Create(pressureKilopascal);
        Vector256<double> vapour = Vector256.Create(vapourPressureKilopascal);
        Vector256<double> saturation = Psychrometrics.SaturationPressureKilopascal(waterCelsius);
        Vector256<double> saturationSlope = Psychrometrics.Slope(waterCelsius, saturation);
        Vector256<double> waterKelvin = waterCelsius + Vector256.Create(UnitConstants.ZeroCelsiusInKelvin);
        Vector256<double> densityAtWater = (pressure - saturation) / (DryAirGasConstant * waterKelvin);
        Vector256<double> densityOfRoom = Vector256.Create(
            Psychrometrics.DryAirDensity(airCelsius, vapourPressureKilopascal, pressureKilopascal));

        // Transfer per kPa, so that convection by the Bowen ratio has a limit where the two vapour pressures meet:
        // W_w - W_r = 0.622 P (p_w - p_r) / ((P - p_w)(P - p_r)) exactly.
        Vector256<double> buoyancy = densityOfRoom - densityAtWater;
        Vector256<double> rises = Vector256.GreaterThan(buoyancy, zero) & Vector256.GreaterThan(saturation, vapour);
        Vector256<double> light = Vector256.ConditionalSelect(rises, buoyancy, one);
        Vector256<double> cubeRoot = FourFunctions.Exp(FourFunctions.Log(light) / 3);
        Vector256<double> natural = NaturalConvection * Psychrometrics.WaterToAirMassRatio * pressure * densityAtWater * cubeRoot
            / ((pressure - saturation) * (pressure - vapour));
        Vector256<double> isNatural = rises & Vector256.GreaterThan(natural, Vector256.Create(DiffusionPerKilopascal));
        Vector256<double> densitySlope = -((saturationSlope / (DryAirGasConstant * waterKelvin)) + (densityAtWater / waterKelvin));
        Vector256<double> naturalSlope = natural * ((densitySlope / densityAtWater) - (densitySlope / (3 * light))
            + (saturationSlope / (pressure - saturation)));
        Vector256<double> transfer = activityFactor
            * Vector256.ConditionalSelect(isNatural, natural, Vector256.Create(DiffusionPerKilopascal));
        Vector256<double> transferSlope = activityFactor * (isNatural & naturalSlope);

        Vector256<double> latentHeat = WattsPerMegajouleHour * Psychrometrics.LatentHeatMegajoulesPerKilogram(waterCelsius);
        const double latentHeatSlope = WattsPerMegajouleHour * LatentHeatSlope;
        Vector256<double> deficit = saturation - vapour;
        Vector256<double> evaporates = Vector256.GreaterThan(deficit, zero);
        Vector256<double> evaporation = evaporates & (transfer * deficit);
        Vector256<double> latentSlope = evaporates & ((latentHeat * ((transferSlope * deficit) + (transfer * saturationSlope)))
            + (latentHeatSlope * evaporation));

        double bowen = BowenKilopascalPerKelvin * pressureKilopascal / 100;
        Vector256<double> difference = waterCelsius - Vector256.Create(airCelsius);
        Vector256<double> convective = latentHeat * transfer * bowen * difference;
        Vector256<double> convectiveSlope = bowen
            * ((latentHeat * transfer) + (difference * ((latentHeat * transferSlope) + (latentHeatSlope * transfer))));

        double surroundingsKelvin = surroundingsCelsius + UnitConstants.ZeroCelsiusInKelvin;
        Vector256<double> waterCubed = waterKelvin * waterKelvin * waterKelvin;
        Vector256<double> radiative = WaterEmissivity * StefanBoltzmann * ((waterCubed * waterKelvin)
            - Vector256.Create(surroundingsKelvin * surroundingsKelvin * surroundingsKelvin * surroundingsKelvin));
        Vector256<double> radiativeSlope = 4 * WaterEmissivity * StefanBoltzmann * waterCubed;
        return new SurfaceLanes(
            evaporation, latentSlope + convectiveSlope + radiativeSlope, latentHeat * evaporation, convective, radiative);
    }
}
