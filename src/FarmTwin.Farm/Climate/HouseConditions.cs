namespace FarmTwin.Farm.Climate;

/// <summary>What acts on the air of a house during one step.</summary>
/// <param name="OutsideCelsius">Outside air, °C.</param>
/// <param name="RadiationWattsPerSquareMetre">Global radiation outside, mean of the step, W/m2.</param>
/// <param name="OutsideVapourPressureKilopascal">kPa.</param>
/// <param name="WindMetresPerSecond">m/s.</param>
/// <param name="LampWatts">Electric power of lamps in the house, W.</param>
/// <param name="MotorWatts">Electric power of pumps, blowers and fans that ends in the air, W.</param>
/// <param name="WaterConductanceWattsPerKelvin">Sum of sensible conductance times area of all water bodies, W/K.</param>
/// <param name="WaterCelsius">Mean of the water temperatures weighted with that conductance, °C; any number where there is none.</param>
/// <param name="TranspirationKilogramsPerHour">Water that the plants give off, kg/h: its latent heat is taken from the air.</param>
/// <param name="EvaporationKilogramsPerHour">Water that evaporates from basins, kg/h: its latent heat is the water's.</param>
/// <param name="FloorCelsius">Floor at the start of the step, °C.</param>
/// <param name="DurationHours">Length of the step, h, above 0.</param>
/// <param name="Night">Whether the thermal screen's hours run.</param>
public readonly record struct HouseConditions(
    double OutsideCelsius,
    double RadiationWattsPerSquareMetre,
    double OutsideVapourPressureKilopascal,
    double WindMetresPerSecond,
    double LampWatts,
    double MotorWatts,
    double WaterConductanceWattsPerKelvin,
    double WaterCelsius,
    double TranspirationKilogramsPerHour,
    double EvaporationKilogramsPerHour,
    double FloorCelsius,
    double DurationHours,
    bool Night)
{
    /// <summary>Share of the heater's capacity at hand, 0 (failed, no fuel, no power) to 1.</summary>
    public double HeaterShare { get; init; } = 1;

    /// <summary>Share of the ventilation at hand, 0 (fans without power) to 1.</summary>
    public double VentShare { get; init; } = 1;

    /// <summary>Share of the pad at hand, 0 (no power, no water) to 1.</summary>
    public double PadShare { get; init; } = 1;

    /// <summary>Share of the sun taken by shade, 0 to 1.</summary>
    public double ShadeShare { get; init; }
}
