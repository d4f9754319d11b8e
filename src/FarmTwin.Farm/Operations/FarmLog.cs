namespace FarmTwin.Farm.Operations;

/// <summary>One line of the event record.</summary>
/// <param name="Seconds">When, seconds of the season.</param>
/// <param name="What">The kind of event, in a word or two ("wash", "deliver fish").</param>
/// <param name="Where">The part it happened to.</param>
/// <param name="Amount">How much.</param>
/// <param name="Unit">Unit of the amount; empty where there is none.</param>
/// <param name="Note">What it did, or why it did not happen.</param>
public sealed record LoggedEvent(long Seconds, string What, string Where, double Amount, string Unit, string Note);

/// <summary>The event record: what was done and what happened, in order.</summary>
public sealed class FarmLog
{
    private readonly List<LoggedEvent> _events = [];

    /// <summary>The lines.</summary>
    public IReadOnlyList<LoggedEvent> Events => _events;

    /// <summary>Adds a line.</summary>
    public void Add(long seconds, string what, string where, double amount, string unit, string note) =>
        _events.Add(new LoggedEvent(seconds, what, where, amount, unit, note));

    /// <summary>Takes over the lines of another record.</summary>
    public void CopyFrom(FarmLog other)
    {
        ArgumentNullException.ThrowIfNull(other);
        _events.Clear();
        _events.AddRange(other._events);
    }
}
