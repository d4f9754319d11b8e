using FarmTwin.Farm.Alarms;

namespace FarmTwin.Farm.Description;

/// <summary>How pressing an alarm is.</summary>
public enum AlarmPriority
{
    /// <summary>Shown on the box; whoever is next on site sees to it.</summary>
    Low,

    /// <summary>Sounded and phoned out.</summary>
    Medium,

    /// <summary>Sounded and phoned out; harm within the hour.</summary>
    High,
}

/// <summary>An alarm on a probe. What is left out is taken from the library's defaults for the quantity.</summary>
public abstract record AlarmDescription
{
    /// <summary>The probe.</summary>
    [Input("probe", "The probe that it watches", Of = "probes")]
    public required string Probe { get; init; }

    /// <summary>How long the condition must hold, s.</summary>
    [Input("onDelay", "How long the condition must hold before the alarm is raised", Unit = "s", Low = 0, High = 86400)]
    public double? OnDelaySeconds { get; init; }

    /// <summary>How long the value must be back, s.</summary>
    [Input("offDelay", "How long the value must be back by the deadband before the alarm returns", Unit = "s", Low = 0, High = 86400)]
    public double? OffDelaySeconds { get; init; }

    /// <summary>How pressing it is.</summary>
    [Input("priority", "How pressing it is; low ones are not phoned out")]
    public AlarmPriority? Priority { get; init; }

    /// <summary>Whether it stays until it is reset.</summary>
    [Input("latching", "Whether it stays, after the value has returned, until a person resets it")]
    public bool Latching { get; init; }

    /// <summary>Whether it is kept quiet while there are no fish.</summary>
    [Input("whileFish", "Whether it is kept quiet while the farm has no fish")]
    public bool WhileFish { get; init; }

    /// <summary>Whether it closes the coupling valve.</summary>
    [Input("decouples", "Whether it closes the coupling valve, where the alarm box does so at all")]
    public bool Decouples { get; init; } = true;

    /// <summary>Periods in which it is shelved.</summary>
    [Input("shelved", "Periods in which it is shelved")]
    public IReadOnlyDictionary<string, PeriodDescription> Shelved { get; init; } = new Dictionary<string, PeriodDescription>();

    /// <summary>The limits as stated, in the probe's unit.</summary>
    internal abstract StatedLimits Limits { get; }

    /// <summary>Whether it can watch a probe of a quantity.</summary>
    internal abstract bool Suits(ProbeQuantity quantity);
}

/// <summary>Limits as stated: in the unit of the probe, the rate in that unit an hour; null where nothing is stated.</summary>
internal readonly record struct StatedLimits(double? Above, double? Below, double? RisingPerHour, double? FallingPerHour, double? Deadband);

/// <summary>Whole days from one to another.</summary>
public sealed record PeriodDescription
{
    /// <summary>First day.</summary>
    [Input("from", "First day", Unit = "d", Low = 0, High = 3660)]
    public double FromDay { get; init; }

    /// <summary>The day on which it is over.</summary>
    [Input("until", "The day on which it is over", Unit = "d", Low = 0, High = 3660)]
    public required double UntilDay { get; init; }

    /// <summary>Whether a time lies in it.</summary>
    internal bool Holds(long seconds) => seconds >= FromDay * UnitConstants.SecondsPerDay && seconds < UntilDay * UnitConstants.SecondsPerDay;
}

/// <summary>Watches a pH.</summary>
[Kind("watch-ph", "Watches a pH")]
public sealed record WatchPH : AlarmDescription
{
    /// <summary>High limit.</summary>
    [Input("above", "Raised at or above this", Unit = "1", Low = 3, High = 12)]
    public double? Above { get; init; }

    /// <summary>Low limit.</summary>
    [Input("below", "Raised at or below this", Unit = "1", Low = 3, High = 12)]
    public double? Below { get; init; }

    /// <summary>Deadband.</summary>
    [Input("deadband", "How far the value must come back", Unit = "1", Low = 0, High = 2)]
    public double? Deadband { get; init; }

    internal override StatedLimits Limits => new(Above, Below, null, null, Deadband);

    internal override bool Suits(ProbeQuantity quantity) => quantity == ProbeQuantity.PH;
}

/// <summary>Watches a conductivity.</summary>
[Kind("watch-conductivity", "Watches a conductivity")]
public sealed record WatchConductivity : AlarmDescription
{
    /// <summary>High limit, µS/cm.</summary>
    [Input("above", "Raised at or above this", Unit = "µS/cm", Low = 0, High = 20000)]
    public double? Above { get; init; }

    /// <summary>Low limit, µS/cm.</summary>
    [Input("below", "Raised at or below this", Unit = "µS/cm", Low = 0, High = 20000)]
    public double? Below { get; init; }

    /// <summary>Deadband, µS/cm.</summary>
    [Input("deadband", "How far the value must come back", Unit = "µS/cm", Low = 0, High = 2000)]
    public double? Deadband { get; init; }

    internal override StatedLimits Limits => new(Above, Below, null, null, Deadband);

    internal override bool Suits(ProbeQuantity quantity) => quantity == ProbeQuantity.Conductivity;
}

/// <summary>Watches a temperature of water or air.</summary>
[Kind("watch-temperature", "Watches a temperature of water or air")]
public sealed record WatchTemperature : AlarmDescription
{
    /// <summary>High limit, °C.</summary>
    [Input("above", "Raised at or above this", Unit = "°C", Low = -40, High = 60)]
    public double? Above { get; init; }

    /// <summary>Low limit, °C.</summary>
    [Input("below", "Raised at or below this", Unit = "°C", Low = -40, High = 60)]
    public double? Below { get; init; }

    /// <summary>Fastest rise, K/h.</summary>
    [Input("rising", "Raised when it rises at least so fast", Unit = "K/h", Low = 0, High = 50)]
    public double? Rising { get; init; }

    /// <summary>Fastest fall, K/h.</summary>
    [Input("falling", "Raised when it falls at least so fast", Unit = "K/h", Low = 0, High = 50)]
    public double? Falling { get; init; }

    /// <summary>Deadband, K.</summary>
    [Input("deadband", "How far the value must come back", Unit = "K", Low = 0, High = 10)]
    public double? Deadband { get; init; }

    internal override StatedLimits Limits => new(Above, Below, Rising, Falling, Deadband);

    internal override bool Suits(ProbeQuantity quantity) => quantity is ProbeQuantity.WaterTemperature or ProbeQuantity.AirTemperature;
}

/// <summary>Watches dissolved oxygen.</summary>
[Kind("watch-oxygen", "Watches dissolved oxygen")]
public sealed record WatchOxygen : AlarmDescription
{
    /// <summary>Low limit, mg/L.</summary>
    [Input("below", "Raised at or below this", Unit = "mg/L", Low = 0, High = 20)]
    public double? Below { get; init; }

    /// <summary>Deadband, mg/L.</summary>
    [Input("deadband", "How far the value must come back", Unit = "mg/L", Low = 0, High = 5)]
    public double? Deadband { get; init; }

    internal override StatedLimits Limits => new(null, Below, null, null, Deadband);

    internal override bool Suits(ProbeQuantity quantity) => quantity == ProbeQuantity.Oxygen;
}

/// <summary>Watches the mains.</summary>
[Kind("watch-mains", "Watches the mains by a relay: raised while they are off")]
public sealed record WatchMains : AlarmDescription
{
    internal override StatedLimits Limits => default;

    internal override bool Suits(ProbeQuantity quantity) => quantity == ProbeQuantity.Mains;
}

/// <summary>Watches a water level.</summary>
[Kind("watch-level", "Watches a water level, as a share of the basin's normal level: flood and low water")]
public sealed record WatchLevel : AlarmDescription
{
    /// <summary>High limit, share of the normal level.</summary>
    [Input("above", "Raised at or above this share of the normal level", Unit = "1", Low = 0, High = 3)]
    public double? Above { get; init; }

    /// <summary>Low limit, share of the normal level.</summary>
    [Input("below", "Raised at or below this share of the normal level", Unit = "1", Low = 0, High = 3)]
    public double? Below { get; init; }

    /// <summary>Deadband, share of the normal level.</summary>
    [Input("deadband", "How far the value must come back", Unit = "1", Low = 0, High = 1)]
    public double? Deadband { get; init; }

    internal override StatedLimits Limits => new(Above, Below, null, null, Deadband);

    internal override bool Suits(ProbeQuantity quantity) => quantity == ProbeQuantity.Level;
}
