namespace FarmTwin.Farm.Climate;

/// <summary>A heater as the bill sees it: sale units of its fuel for a useful heat.</summary>
/// <param name="FuelName">The fuel's name in the library.</param>
/// <param name="Fuel">Its fuel.</param>
/// <param name="Efficiency">Useful heat over the fuel's; of a heat pump the rated coefficient of performance.</param>
/// <param name="FlowAboveKelvin">How far a heat pump's flow lies above what it heats, K.</param>
public sealed record HeatSource(string FuelName, FuelProperties Fuel, double Efficiency, double FlowAboveKelvin)
{
    /// <summary>Useful heat over the heat of the fuel in an hour.</summary>
    /// <param name="warmCelsius">What is heated, °C.</param>
    /// <param name="outsideCelsius">Outside air, °C: the source of a heat pump.</param>
    public double EfficiencyAt(double warmCelsius, double outsideCelsius) => Fuel.IsHeatPump
        ? HeatPump.CoefficientOfPerformance(Efficiency, warmCelsius + FlowAboveKelvin - outsideCelsius)
        : Efficiency;

    /// <summary>Sale units for a useful heat.</summary>
    /// <param name="usefulMegajoules">MJ.</param>
    /// <param name="warmCelsius">What is heated, °C.</param>
    /// <param name="outsideCelsius">Outside air, °C.</param>
    public double UnitsFor(double usefulMegajoules, double warmCelsius, double outsideCelsius) =>
        Fuel.UnitsFor(usefulMegajoules, EfficiencyAt(warmCelsius, outsideCelsius));

    /// <summary>The same heat by another fuel at its usual efficiency.</summary>
    /// <param name="name">The fuel's name.</param>
    /// <param name="fuel">The fuel.</param>
    /// <param name="water">Whether water is heated, else air.</param>
    /// <param name="parameters">For the flow of a heat pump.</param>
    public static HeatSource Usual(string name, FuelProperties fuel, bool water, MachineParameters parameters)
    {
        ArgumentNullException.ThrowIfNull(fuel);
        ArgumentNullException.ThrowIfNull(parameters);
        return new HeatSource(name, fuel, water ? fuel.WaterHeaterEfficiency : fuel.AirHeaterEfficiency,
            water ? parameters.HeatPumpWaterFlowAboveKelvin : parameters.HeatPumpAirFlowAboveKelvin);
    }
}
