namespace FarmTwin.Farm.Description;

/// <summary>What steps in when the mains fail.</summary>
/// <remarks>A battery and an oxygen valve start by themselves; a generator starts by itself or waits for a person.</remarks>
public abstract record BackupDescription;

/// <summary>An air pump on a battery.</summary>
[Kind("battery-air", "An air pump on a battery: starts by itself when the blowers lose their power")]
public sealed record BatteryAir : BackupDescription
{
    /// <summary>Basins it feeds.</summary>
    [Input("basins", "The basins it feeds", Of = "basins")]
    public required IReadOnlyList<string> Basins { get; init; }

    /// <summary>Share of their normal air.</summary>
    [Input("share", "Share of their normal air that it gives", Unit = "1", Low = 0.01, High = 1)]
    public required double AirShare { get; init; }

    /// <summary>Power it draws, W.</summary>
    [Input("power", "Power that its air pump draws", Unit = "W", Low = 0.1, High = 1e5)]
    public required double PowerWatts { get; init; }

    /// <summary>Energy of the battery, Wh.</summary>
    [Input("battery", "Energy of the battery as labelled", Unit = "Wh", Low = 1, High = 1e7)]
    public required double BatteryWattHours { get; init; }

    /// <summary>Share of it that may be drawn.</summary>
    [Input("usable", "Share of it that may be drawn: half of a lead battery, most of a lithium one", Unit = "1", Low = 0.1, High = 1)]
    public double UsableShare { get; init; } = 0.5;

    /// <summary>Share of what is drawn that reaches the pump.</summary>
    [Input("efficiency", "Share of what is drawn that reaches the pump", Unit = "1", Low = 0.3, High = 1)]
    public double Efficiency { get; init; } = 0.85;

    /// <summary>Hours to charge it full again.</summary>
    [Input("recharge", "Time to charge it full again", Unit = "h", Low = 0.5, High = 100)]
    public double RechargeHours { get; init; } = 12;

    /// <summary>Whether it also starts when its basins lose their air while the mains are on.</summary>
    [Input("pressureSwitch", "Whether it also starts when its basins lose their air though the mains are on")]
    public bool PressureSwitch { get; init; }
}

/// <summary>A generator.</summary>
[Kind("generator", "A generator: feeds what it is wired to, for as long as its fuel lasts")]
public sealed record Generator : BackupDescription
{
    /// <summary>Largest load, kW.</summary>
    [Input("power", "Largest load", Unit = "kW", Low = 0.1, High = 1000)]
    public required double PowerKilowatts { get; init; }

    /// <summary>Hours that its fuel lasts.</summary>
    [Input("fuelTime", "Time that its fuel lasts", Unit = "h", Low = 0.1, High = 1000)]
    public required double FuelHours { get; init; }

    /// <summary>Whether it starts by itself.</summary>
    [Input("startsByItself", "Whether it starts by itself; else a person must be there")]
    public bool StartsByItself { get; init; }

    /// <summary>Minutes from the cut, or from the person's arrival, until it carries the load.</summary>
    [Input("startsAfter", "Time from the cut, or from a person's arrival, until it carries the load", Unit = "min", Low = 0, High = 600)]
    public double StartMinutes { get; init; } = 5;

    /// <summary>Whether it feeds the blowers.</summary>
    [Input("blowers", "Whether it feeds the blowers")]
    public bool FeedsBlowers { get; init; } = true;

    /// <summary>Whether it feeds the pumps.</summary>
    [Input("pumps", "Whether it feeds the pumps")]
    public bool FeedsPumps { get; init; } = true;

    /// <summary>Whether it feeds the water heaters and their circulation.</summary>
    [Input("waterHeaters", "Whether it feeds the heaters of the water and their circulation")]
    public bool FeedsWaterHeaters { get; init; }

    /// <summary>Whether it feeds air heater, fans and vents.</summary>
    [Input("house", "Whether it feeds the air heater, the fans and the vents")]
    public bool FeedsHouse { get; init; }

    /// <summary>Whether it feeds the lamps.</summary>
    [Input("lamps", "Whether it feeds the lamps and the nursery")]
    public bool FeedsLamps { get; init; }
}

/// <summary>Oxygen through a valve that opens when it loses its power.</summary>
[Kind("oxygen-valve", "Oxygen from a cylinder through a valve that the mains hold shut: it opens by itself when they fail")]
public sealed record OxygenValve : BackupDescription
{
    /// <summary>Tanks it feeds.</summary>
    [Input("basins", "The tanks it feeds", Of = "basins")]
    public required IReadOnlyList<string> Basins { get; init; }

    /// <summary>Oxygen to each tank, g/h.</summary>
    [Input("flow", "Oxygen to each tank", Unit = "g/h", Low = 0.1, High = 1e5)]
    public required double GramsPerHour { get; init; }

    /// <summary>Share of it that dissolves.</summary>
    [Input("dissolves", "Share of it that dissolves: a third to a half through fine diffusers in a shallow tank", Unit = "1", Low = 0.01, High = 1)]
    public double DissolvedShare { get; init; } = 0.4;

    /// <summary>Oxygen in the cylinder, kg.</summary>
    [Input("cylinder", "Oxygen in the cylinder", Unit = "kg", Low = 0.01, High = 1e5)]
    public required double CylinderKilograms { get; init; }
}
