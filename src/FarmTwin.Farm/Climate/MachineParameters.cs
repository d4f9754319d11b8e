using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Climate;

/// <summary>Defaults for lamps, pumps, blowers, pads and the thermostat where a farm's description is silent.</summary>
/// <param name="LampEfficacyMicromolesPerJoule">PAR photons per joule of electricity, µmol/J.</param>
/// <param name="LampUtilisation">Share of the photons that lands on the crop.</param>
/// <param name="PumpEfficiency">Wire to water of a small pump.</param>
/// <param name="BlowerEfficiency">Wire to air of a small blower.</param>
/// <param name="DiffuserLossKilopascal">Pressure lost in air pipe and diffuser, kPa.</param>
/// <param name="PadEffectiveness">Of an evaporative pad.</param>
/// <param name="ThermostatHysteresisKelvin">Between on and off, K.</param>
/// <param name="ThermostatLeastOnMinutes">Shortest time on, min.</param>
/// <param name="HeatPumpWaterFlowAboveKelvin">How far a heat pump's flow lies above the water it heats, K.</param>
/// <param name="HeatPumpAirFlowAboveKelvin">How far a heat pump's flow lies above the air it heats, K.</param>
public sealed record MachineParameters(
    double LampEfficacyMicromolesPerJoule,
    double LampUtilisation,
    double PumpEfficiency,
    double BlowerEfficiency,
    double DiffuserLossKilopascal,
    double PadEffectiveness,
    double ThermostatHysteresisKelvin,
    double ThermostatLeastOnMinutes,
    double HeatPumpWaterFlowAboveKelvin,
    double HeatPumpAirFlowAboveKelvin)
{
    /// <summary>Reads the parameters from the set <c>processes/climate</c>.</summary>
    /// <param name="set">The set.</param>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A parameter has another unit.</exception>
    public static MachineParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new MachineParameters(
            set.Get("lampEfficacy", "µmol/J"),
            set.Get("lampUtilisation", "1"),
            set.Get("pumpEfficiency", "1"),
            set.Get("blowerEfficiency", "1"),
            set.Get("diffuserLoss", "kPa"),
            set.Get("padEffectiveness", "1"),
            set.Get("thermostatHysteresis", "K"),
            set.Get("thermostatLeastOn", "min"),
            set.Get("heatPumpWaterFlow", "K"),
            set.Get("heatPumpAirFlow", "K"));
    }
}
