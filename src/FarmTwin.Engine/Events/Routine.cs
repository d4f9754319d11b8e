namespace FarmTwin.Engine;

/// <summary>A repeating duty: an event at a start, and again after every interval.</summary>
/// <remarks>
/// Not a weekly timetable: days of the week and lists of hours are several routines. A value type: safe to copy and share.
/// </remarks>
/// <param name="StartSeconds">When it is first due; not in the past when it is added.</param>
/// <param name="IntervalSeconds">How long until it is due again; above 0.</param>
/// <param name="Phase">The phase in which it fires.</param>
/// <param name="Kind">The kind of the event that it fires.</param>
public readonly record struct Routine(long StartSeconds, long IntervalSeconds, int Phase, int Kind)
{
    /// <summary>First argument of the event.</summary>
    public int Argument0 { get; init; }

    /// <summary>Second argument of the event.</summary>
    public int Argument1 { get; init; }

    /// <summary>Real argument of the event.</summary>
    public double Value { get; init; }
}
