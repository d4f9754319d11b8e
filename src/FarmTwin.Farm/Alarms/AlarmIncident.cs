namespace FarmTwin.Farm.Alarms;

/// <summary>One time that an alarm was raised, and what came of it. Times are seconds of the season; −1 for what has not come.</summary>
public sealed class AlarmIncident
{
    /// <summary>The alarm.</summary>
    public required int Point { get; init; }

    /// <summary>When it was raised.</summary>
    public required long RaisedSeconds { get; init; }

    /// <summary>The reading that raised it.</summary>
    public required double Reading { get; init; }

    /// <summary>The truth at that moment.</summary>
    public required double Truth { get; init; }

    /// <summary>Whether the truth was more than the deadband away from the limit: noise or drift alone raised it.</summary>
    public required bool IsFalse { get; init; }

    /// <summary>When the box first dialled.</summary>
    public long FirstCallSeconds { get; set; } = -1;

    /// <summary>Calls that nobody took.</summary>
    public int MissedCalls { get; set; }

    /// <summary>When somebody took it on: on the phone or on site.</summary>
    public long AnsweredSeconds { get; set; } = -1;

    /// <summary>Who; −1 for nobody, or where nobody is described.</summary>
    public int AnsweredBy { get; set; } = -1;

    /// <summary>When somebody stood before it.</summary>
    public long ArrivedSeconds { get; set; } = -1;

    /// <summary>When the value had returned.</summary>
    public long ReturnedSeconds { get; set; } = -1;

    /// <summary>A copy.</summary>
    public AlarmIncident Clone() => (AlarmIncident)MemberwiseClone();
}

/// <summary>An alarm was raised or has returned, and nobody has been told yet.</summary>
/// <param name="Point">The alarm.</param>
/// <param name="Seconds">When.</param>
/// <param name="Raised">Whether it was raised; else it returned.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Truth">The truth.</param>
/// <param name="IsFalse">Whether the truth does not bear it out.</param>
public readonly record struct AlarmChange(int Point, long Seconds, bool Raised, double Reading, double Truth, bool IsFalse);
