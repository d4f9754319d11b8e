using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Alarms;

/// <summary>What raises an alarm.</summary>
public enum AlarmCondition
{
    /// <summary>The reading is at or above the limit.</summary>
    High,

    /// <summary>The reading is at or below the limit.</summary>
    Low,

    /// <summary>It rises at least so fast.</summary>
    Rising,

    /// <summary>It falls at least so fast.</summary>
    Falling,

    /// <summary>The reading is out of range or stands still: the probe, not the process.</summary>
    SensorFault,
}

/// <summary>One alarm: one limit of one probe. A description with several limits makes several.</summary>
public sealed record AlarmPoint
{
    /// <summary>Name: the description's, and which limit ("tank-warmth low").</summary>
    public required string Name { get; init; }

    /// <summary>The probe.</summary>
    public required int Probe { get; init; }

    /// <summary>What raises it.</summary>
    public required AlarmCondition Condition { get; init; }

    /// <summary>The limit, in the probe's unit; for a rate in that unit an hour; not used by a sensor fault.</summary>
    public double Limit { get; init; }

    /// <summary>How far the value must come back, in the unit of the limit.</summary>
    public double Deadband { get; init; }

    /// <summary>How long the condition must hold, s.</summary>
    public required long OnDelaySeconds { get; init; }

    /// <summary>How long the value must be back, s.</summary>
    public required long OffDelaySeconds { get; init; }

    /// <summary>How pressing it is.</summary>
    public required AlarmPriority Priority { get; init; }

    /// <summary>Whether it stays until it is reset.</summary>
    public bool Latching { get; init; }

    /// <summary>Whether it is kept quiet while there are no fish.</summary>
    public bool WhileFish { get; init; }

    /// <summary>Whether it closes the coupling valve.</summary>
    public bool Decouples { get; init; }

    /// <summary>What is left of the feed while it stands and somebody knows of it: 1 all, 0.5 half, 0 none.</summary>
    public double FeedShare { get; init; } = 1;

    /// <summary>Periods in which it is shelved.</summary>
    public IReadOnlyList<PeriodDescription> Shelved { get; init; } = [];

    /// <summary>What a person does about it.</summary>
    public required string Card { get; init; }

    /// <summary>Whether a value meets the limit.</summary>
    public bool IsMetBy(double value, double ratePerHour) => Condition switch
    {
        AlarmCondition.High => value >= Limit,
        AlarmCondition.Low => value <= Limit,
        AlarmCondition.Rising => ratePerHour >= Limit,
        AlarmCondition.Falling => -ratePerHour >= Limit,
        _ => false,
    };

    /// <summary>Whether a value is back by the deadband.</summary>
    public bool IsLeftBy(double value, double ratePerHour) => Condition switch
    {
        AlarmCondition.High => value < Limit - Deadband,
        AlarmCondition.Low => value > Limit + Deadband,
        AlarmCondition.Rising => ratePerHour < Limit - Deadband,
        AlarmCondition.Falling => -ratePerHour < Limit - Deadband,
        _ => false,
    };
}
