namespace FarmTwin.Farm.Equipment;

/// <summary>Groups of consumers that a generator may be wired to.</summary>
public enum PowerLoad
{
    /// <summary>Blowers.</summary>
    Blowers,

    /// <summary>Pumps between basins; electric float valves.</summary>
    Pumps,

    /// <summary>Heaters of the water: burner, circulation.</summary>
    WaterHeaters,

    /// <summary>Air heater, fans, vents.</summary>
    House,

    /// <summary>Lamps and the nursery.</summary>
    Lamps,
}
