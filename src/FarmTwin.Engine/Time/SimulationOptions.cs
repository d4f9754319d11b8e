namespace FarmTwin.Engine;

/// <summary>The fixed settings of a simulation. Immutable: safe to share.</summary>
public sealed record SimulationOptions
{
    /// <summary>The time at which it begins, in seconds. Default 0.</summary>
    public long StartSeconds { get; init; }

    /// <summary>
    /// The phase in which guards are looked at and their events fire, in the model's own numbering. Default 1000: after all others.
    /// </summary>
    /// <remarks>
    /// Events in later phases fire after the guards have settled, and the guards do not look at their effects before the next step.
    /// </remarks>
    public int GuardPhase { get; init; } = 1000;

    /// <summary>A record is due at each whole multiple of this, in seconds. Default 3600; 0 for none.</summary>
    public long RecordIntervalSeconds { get; init; } = 3600;

    /// <summary>How many rounds of guards may follow one another at one instant before it is an error. Default 100.</summary>
    public int MostGuardRounds { get; init; } = 100;

    /// <summary>How many events may fire at one instant before it is an error. Default 1,000,000.</summary>
    public int MostEventsPerInstant { get; init; } = 1_000_000;
}
