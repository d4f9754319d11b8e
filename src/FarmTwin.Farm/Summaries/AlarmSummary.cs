namespace FarmTwin.Farm.Summaries;

/// <summary>The alarms of a season.</summary>
public sealed record AlarmSummary
{
    /// <summary>Alarms raised.</summary>
    public required int Raised { get; init; }

    /// <summary>By priority: "high", "medium", "low".</summary>
    public required IReadOnlyDictionary<string, AlarmPriorityFigures> ByPriority { get; init; }

    /// <summary>Alarms that noise or drift of a probe alone raised.</summary>
    public required int False { get; init; }

    /// <summary>Alarms of the probes themselves.</summary>
    public required int SensorFaults { get; init; }

    /// <summary>Alarms that stand at the end.</summary>
    public required IReadOnlyList<string> Standing { get; init; }

    /// <summary>Times that the box closed the coupling valve.</summary>
    public required int ValveClosings { get; init; }

    /// <summary>Tests of all alarms.</summary>
    public required int Tests { get; init; }

    /// <summary>Calibrations of probes.</summary>
    public required int Calibrations { get; init; }

    /// <summary>Chores that were missed because nobody was on site, by chore.</summary>
    public required IReadOnlyDictionary<string, int> MissedChores { get; init; }

    /// <summary>Every alarm raised, in order.</summary>
    public required IReadOnlyList<AlarmRow> List { get; init; }
}

/// <summary>Alarms of one priority.</summary>
/// <param name="Raised">Raised.</param>
/// <param name="False">Of these, false.</param>
/// <param name="Unanswered">Never answered until the end.</param>
/// <param name="MedianMinutesToAnswer">Median time until somebody took it on; null without one.</param>
/// <param name="LongestMinutesToAnswer">Longest.</param>
/// <param name="LongestMinutesToArrive">Longest time until somebody stood before it.</param>
public sealed record AlarmPriorityFigures(
    int Raised, int False, int Unanswered, double? MedianMinutesToAnswer, double? LongestMinutesToAnswer, double? LongestMinutesToArrive);

/// <summary>One alarm raised. Moments are local standard time, year-month-day and clock; null for what has not come.</summary>
public sealed record AlarmRow
{
    /// <summary>The alarm.</summary>
    public required string Alarm { get; init; }

    /// <summary>Its priority.</summary>
    public required string Priority { get; init; }

    /// <summary>When it was raised.</summary>
    public required string Raised { get; init; }

    /// <summary>The day, from day 0.</summary>
    public required double Day { get; init; }

    /// <summary>What the probe read.</summary>
    public required double Reading { get; init; }

    /// <summary>What was there.</summary>
    public required double Truth { get; init; }

    /// <summary>Unit of both; empty for pH and shares.</summary>
    public required string Unit { get; init; }

    /// <summary>Whether noise or drift alone raised it.</summary>
    public required bool IsFalse { get; init; }

    /// <summary>When the box first dialled.</summary>
    public required string? FirstCall { get; init; }

    /// <summary>Calls that nobody took.</summary>
    public required int MissedCalls { get; init; }

    /// <summary>Who took it on.</summary>
    public required string? AnsweredBy { get; init; }

    /// <summary>Minutes until somebody took it on.</summary>
    public required double? MinutesToAnswer { get; init; }

    /// <summary>Minutes until somebody stood before it.</summary>
    public required double? MinutesToArrive { get; init; }

    /// <summary>When the value had returned.</summary>
    public required string? Returned { get; init; }

    /// <summary>Hours until it had returned.</summary>
    public required double? HoursStanding { get; init; }
}
