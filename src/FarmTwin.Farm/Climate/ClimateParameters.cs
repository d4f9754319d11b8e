using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Climate;

/// <summary>Everything that <c>processes/climate</c> holds, by part.</summary>
/// <param name="ParShare">PAR share of global radiation.</param>
/// <param name="Weather">For the weather generator.</param>
/// <param name="House">For the air of the house.</param>
/// <param name="Water">For water surfaces, walls and exchangers.</param>
/// <param name="CropCarbonShare">Carbon in the dry matter of crops.</param>
/// <param name="CropRespiredShare">Share of the carbon that plants fix which they respire within the day.</param>
/// <param name="Machines">Defaults of lamps, pumps, blowers and thermostats.</param>
public sealed record ClimateParameters(
    double ParShare,
    WeatherParameters Weather,
    HouseAirParameters House,
    WaterHeatParameters Water,
    double CropCarbonShare,
    double CropRespiredShare,
    MachineParameters Machines)
{
    /// <summary>Reads all parts from the set <c>processes/climate</c>.</summary>
    /// <param name="set">The set.</param>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A parameter has another unit.</exception>
    public static ClimateParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new ClimateParameters(
            set.Get("parShare", "1"),
            WeatherParameters.From(set),
            HouseAirParameters.From(set),
            WaterHeatParameters.From(set),
            set.Get("cropCarbon", "1"),
            set.Get("cropRespired", "1"),
            MachineParameters.From(set));
    }
}
