using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Alarms;

/// <summary>What each water heater in truth holds: where its thermostat reads a probe, the set-point less what the probe is wrong by.</summary>
/// <remarks>
/// The noise of single samples evens out over a step and is left out. A probe that stands still below the set-point keeps the
/// heater on without end; one that stands still above it keeps it off.
/// </remarks>
public sealed class Thermostats
{
    private readonly FarmContext _farm;
    private readonly ProbeProcess _probes;
    private readonly int[] _probe;

    /// <summary>Makes them.</summary>
    /// <exception cref="DescriptionException">The probe is not a temperature probe in the heater's basin.</exception>
    public Thermostats(FarmContext farm, ProbeProcess probes)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _probes = probes;
        _probe = [.. farm.Parts.Farm.WaterHeaters.Select(h => ProbeOf(h.Key, h.Value))];
    }

    /// <summary>Temperature that a heater holds in its basin, °C.</summary>
    public double HoldCelsius(int heater, long seconds)
    {
        double hold = _farm.State.HeaterHold[heater];
        int probe = _probe[heater];
        if (probe < 0)
        {
            return hold;
        }

        // No set-point lies above the hot loop, none below freezing: on without end, and off.
        return !_farm.State.Probes.Stuck[probe] ? hold - _probes.Offset(probe, seconds)
            : _farm.State.Probes.Reading[probe] < hold ? _farm.Parts.Heaters[heater].HotLoopCelsius : 0;
    }

    private int ProbeOf(string name, WaterHeaterDescription heater)
    {
        if (heater.Thermostat is null)
        {
            return -1;
        }

        AlarmParts parts = _farm.Parts.Alarms;
        int probe = parts.ProbeIndex(heater.Thermostat);
        return parts.Quantities[probe] == ProbeQuantity.WaterTemperature && parts.ProbeBasin[probe] == _farm.Parts.BasinIndex(heater.Basin)
            ? probe
            : throw new DescriptionException(
                $"waterHeaters.{name}: its thermostat must be a probe of the water temperature in basin '{heater.Basin}', which '{heater.Thermostat}' is not.");
    }
}
