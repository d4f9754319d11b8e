namespace FarmTwin.Farm.Climate;

/// <summary>Electric power of pumps and blowers.</summary>
public static class MovingAirAndWater
{
    private const double WaterDensity = 998;
    private const double Gravity = 9.80665;
    private const double AirGasConstant = 287;

    // (k - 1) / k of diatomic air as the blower formula prints it.
    private const double AdiabaticExponent = 0.283;

    /// <summary>Electric power of a pump, W.</summary>
    /// <param name="flowLitresPerHour">L/h, 0 or more.</param>
    /// <param name="headMetres">Head with losses, m, 0 or more.</param>
    /// <param name="efficiency">Wire to water, 0.15 to 0.45 for small pumps.</param>
    public static double PumpPowerWatts(double flowLitresPerHour, double headMetres, double efficiency) =>
        WaterDensity * Gravity * headMetres * flowLitresPerHour
            / (UnitConstants.LitresPerCubicMetre * UnitConstants.SecondsPerHour * efficiency);

    /// <summary>Electric power of a blower by adiabatic compression, W.</summary>
    /// <param name="flowKilogramsPerSecond">Air, kg/s, 0 or more.</param>
    /// <param name="inletCelsius">Air at the inlet, °C.</param>
    /// <param name="inletKilopascal">Absolute pressure at the inlet, kPa.</param>
    /// <param name="outletKilopascal">Absolute pressure at the outlet, kPa, not below the inlet's.</param>
    /// <param name="efficiency">Wire to air, 0.3 to 0.6 for small blowers; 1 for the ideal.</param>
    public static double BlowerPowerWatts(double flowKilogramsPerSecond, double inletCelsius, double inletKilopascal,
        double outletKilopascal, double efficiency) =>
        flowKilogramsPerSecond * AirGasConstant * (inletCelsius + UnitConstants.ZeroCelsiusInKelvin)
            / (AdiabaticExponent * efficiency)
            * (Math.Pow(outletKilopascal / inletKilopascal, AdiabaticExponent) - 1);

    /// <summary>The same in the form of US wastewater practice, ideal, hp: a check on <see cref="BlowerPowerWatts"/>.</summary>
    /// <param name="flowStandardCubicFeetPerMinute">scfm.</param>
    /// <param name="inletRankine">Air at the inlet, °R.</param>
    /// <param name="inletPsi">Absolute, psi.</param>
    /// <param name="outletPsi">Absolute, psi.</param>
    public static double IdealBlowerHorsepower(
        double flowStandardCubicFeetPerMinute, double inletRankine, double inletPsi, double outletPsi) =>
        flowStandardCubicFeetPerMinute * inletRankine / (8130 * AdiabaticExponent)
            * (Math.Pow(outletPsi / inletPsi, AdiabaticExponent) - 1);

    /// <summary>Pressure that a blower must give to bubble at a depth, kPa above the air.</summary>
    /// <param name="depthMetres">Water above the diffuser, m.</param>
    /// <param name="lossKilopascal">Loss in pipe and diffuser, kPa, about 2 to 5.</param>
    public static double DiffuserPressureKilopascal(double depthMetres, double lossKilopascal) =>
        (WaterDensity * Gravity * depthMetres / 1000) + lossKilopascal;
}
