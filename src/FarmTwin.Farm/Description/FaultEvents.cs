namespace FarmTwin.Farm.Description;

/// <summary>A piece of equipment that breaks on a date.</summary>
/// <remarks>
/// It is mended a fixed time after it broke, or else when somebody has found it and had the time: who answers an alarm, or who makes
/// the morning round.
/// </remarks>
public abstract record FaultEvent : PlannedEvent
{
    /// <summary>Hours after which it is mended whatever happens; when left out, somebody must find it.</summary>
    [Input("repairAfter", "Time after which it is mended whatever happens; left out, somebody must find it and mend it", Unit = "h", Low = 0, High = 10000)]
    public double? RepairAfterHours { get; init; }
}

/// <summary>The mains fail.</summary>
[Kind("mains-cut", "The mains fail: everything stops that no backup feeds. Nobody on the farm can mend it")]
public sealed record MainsCut : FaultEvent;

/// <summary>The mains come back.</summary>
[Kind("mains-return", "The mains come back")]
public sealed record MainsReturn : PlannedEvent;

/// <summary>A pump stops.</summary>
[Kind("pump-fails", "The pump of a pipe stops")]
public sealed record PumpFails : FaultEvent
{
    /// <summary>The pumped pipe.</summary>
    [Input("pipe", "The pumped pipe", Of = "pipes")]
    public required string Pipe { get; init; }
}

/// <summary>A blower stops.</summary>
[Kind("blower-fails", "A blower stops")]
public sealed record BlowerFails : FaultEvent
{
    /// <summary>The blower.</summary>
    [Input("blower", "The blower", Of = "blowers")]
    public required string Blower { get; init; }
}

/// <summary>A heater goes out.</summary>
[Kind("heater-fails", "A heater of the water goes out, or that of the air")]
public sealed record HeaterFails : FaultEvent
{
    /// <summary>The heater of the water; that of the air when left out.</summary>
    [Input("heater", "The heater of the water; that of the house air when left out", Of = "waterHeaters")]
    public string? Heater { get; init; }
}

/// <summary>Lamps go dark.</summary>
[Kind("lamp-fails", "Lamps go dark")]
public sealed record LampFails : FaultEvent
{
    /// <summary>The lamps; the nursery's when left out.</summary>
    [Input("lamp", "The lamps over the rafts; those of the nursery when left out", Of = "lamps")]
    public string? Lamp { get; init; }
}

/// <summary>A lamp timer sticks.</summary>
[Kind("lamp-timer-fails", "The timer of lamps sticks: they burn day and night")]
public sealed record LampTimerFails : FaultEvent
{
    /// <summary>The lamps; the nursery's when left out.</summary>
    [Input("lamp", "The lamps over the rafts; those of the nursery when left out", Of = "lamps")]
    public string? Lamp { get; init; }
}

/// <summary>A valve sticks.</summary>
[Kind("valve-sticks", "A valve sticks: it no longer follows its setting")]
public sealed record ValveSticks : FaultEvent
{
    /// <summary>The valve.</summary>
    [Input("valve", "The valve", Of = "valves")]
    public required string Valve { get; init; }

    /// <summary>Exchange at which it sticks, L/h each way; where it stands when left out.</summary>
    [Input("at", "Exchange each way at which it sticks, 0 for closed; where it stands when left out", Unit = "L/h", Low = 0, High = 1e6)]
    public double? FlowLitresPerHour { get; init; }
}

/// <summary>An air line clogs.</summary>
[Kind("air-line-clogs", "The air line or diffusers of a basin clog, bit by bit")]
public sealed record AirLineClogs : FaultEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Share of its air that is lost in the end.</summary>
    [Input("loses", "Share of the basin's air that is lost in the end", Unit = "1", Low = 0, High = 1)]
    public required double LostShare { get; init; }

    /// <summary>Days that the clogging takes; at once when 0.</summary>
    [Input("over", "Time that the clogging takes", Unit = "d", Low = 0, High = 1000)]
    public double OverDays { get; init; }
}

/// <summary>How a drain, siphon or standpipe fails.</summary>
public enum DrainFailure
{
    /// <summary>Blocked: the basin fills to the brim and runs over.</summary>
    Full,

    /// <summary>Stays open: the basin runs nearly empty.</summary>
    Empty,
}

/// <summary>A siphon, standpipe or return fails.</summary>
[Kind("siphon-sticks", "A siphon, standpipe or return sticks: the basin fills to its brim and runs over, or runs nearly empty")]
public sealed record SiphonSticks : FaultEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin whose way out sticks", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Full or empty.</summary>
    [Input("leaves", "Whether the basin is left full or empty")]
    public DrainFailure Leaves { get; init; } = DrainFailure.Full;
}

/// <summary>A leak.</summary>
[Kind("leak", "A basin loses water out of the farm; a float valve hides it")]
public sealed record Leak : FaultEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Loss, L/h.</summary>
    [Input("flow", "Water lost", Unit = "L/h", Low = 0, High = 1e5)]
    public required double LitresPerHour { get; init; }
}

/// <summary>How a float valve sticks.</summary>
public enum FloatValveFailure
{
    /// <summary>Lets nothing in.</summary>
    Shut,

    /// <summary>Never closes.</summary>
    Open,
}

/// <summary>A float valve sticks.</summary>
[Kind("float-valve-fails", "A float valve sticks: shut, it lets no water in; open, it never stops")]
public sealed record FloatValveFails : FaultEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin whose float valve it is", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Shut or open.</summary>
    [Input("sticks", "Whether it sticks shut or open")]
    public required FloatValveFailure Sticks { get; init; }
}
