namespace FarmTwin.Farm.Equipment;

/// <summary>What can break.</summary>
public enum FaultKind
{
    /// <summary>The mains.</summary>
    Mains,

    /// <summary>The pump of a pipe.</summary>
    Pump,

    /// <summary>A blower.</summary>
    Blower,

    /// <summary>A heater of the water.</summary>
    WaterHeater,

    /// <summary>The heater of the house air.</summary>
    AirHeater,

    /// <summary>Lamps that stay dark.</summary>
    Lamp,

    /// <summary>Lamps that burn on.</summary>
    LampTimer,

    /// <summary>A valve that no longer follows its setting.</summary>
    Valve,

    /// <summary>The air line of a basin.</summary>
    AirLine,

    /// <summary>The way out of a basin: siphon, standpipe, return.</summary>
    Drain,

    /// <summary>A leak of a basin.</summary>
    Leak,

    /// <summary>A float valve.</summary>
    FloatValve,
}
