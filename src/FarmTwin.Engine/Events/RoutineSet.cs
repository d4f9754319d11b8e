namespace FarmTwin.Engine;

/// <summary>The repeating duties of a simulation.</summary>
/// <remarks>
/// Not a second calendar: each routine has just its next event on the simulation's calendar, and is re-armed when that event is
/// taken, before the model sees it, so that the model may stop it. Ids count from 0 and are not used again. Part of the simulation's
/// snapshot. Not safe for use by several threads at once.
/// </remarks>
public sealed class RoutineSet
{
    private readonly Calendar _calendar;
    private readonly Dictionary<long, int> _routineOfSequence = new(16);
    private Routine[] _routines = new Routine[8];
    private EventHandle[] _next = new EventHandle[8];

    internal RoutineSet(Calendar calendar) => _calendar = calendar;

    /// <summary>How many routines were added, stopped ones included.</summary>
    public int Count { get; private set; }

    /// <summary>Starts a routine.</summary>
    /// <returns>Its id.</returns>
    /// <exception cref="ArgumentException">The interval is not above 0.</exception>
    /// <exception cref="InvalidOperationException">The start is in the past, or in a past phase of the instant being fired.</exception>
    public int Add(Routine routine)
    {
        if (routine.IntervalSeconds <= 0)
        {
            throw new ArgumentException(
                $"A routine of kind {routine.Kind} needs an interval above 0 s, not {routine.IntervalSeconds} s.", nameof(routine));
        }

        EventHandle first = Schedule(routine, routine.StartSeconds);
        if (Count == _routines.Length)
        {
            Array.Resize(ref _routines, 2 * Count);
            Array.Resize(ref _next, 2 * Count);
        }

        _routines[Count] = routine;
        _next[Count] = first;
        _routineOfSequence[first.Key.Sequence] = Count;
        return Count++;
    }

    /// <summary>Ends a routine: its pending event is cancelled.</summary>
    /// <returns>False if it was stopped before.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such routine.</exception>
    public bool Stop(int routine)
    {
        if (!IsRunning(routine))
        {
            return false;
        }

        _calendar.Cancel(_next[routine]);
        _routineOfSequence.Remove(_next[routine].Key.Sequence);
        _next[routine] = default;
        return true;
    }

    /// <summary>Whether a routine has not been stopped.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such routine.</exception>
    public bool IsRunning(int routine)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(routine);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(routine, Count);
        return _next[routine] != default;
    }

    /// <summary>When a running routine is due next, in seconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such routine.</exception>
    /// <exception cref="InvalidOperationException">It was stopped.</exception>
    public long NextSeconds(int routine) => IsRunning(routine)
        ? _next[routine].Key.TimeSeconds
        : throw new InvalidOperationException($"Routine {routine} was stopped.");

    /// <summary>If the event just taken is a routine's, puts its next one on the calendar.</summary>
    internal void Rearm(in CalendarEntry fired)
    {
        if (Count > 0 && _routineOfSequence.Remove(fired.Sequence, out int routine))
        {
            EventHandle next = Schedule(_routines[routine], checked(fired.TimeSeconds + _routines[routine].IntervalSeconds));
            _next[routine] = next;
            _routineOfSequence[next.Key.Sequence] = routine;
        }
    }

    internal void CopyFrom(RoutineSet other)
    {
        if (_routines.Length < other.Count)
        {
            _routines = new Routine[other._routines.Length];
            _next = new EventHandle[other._routines.Length];
        }

        Array.Copy(other._routines, _routines, other.Count);
        Array.Copy(other._next, _next, other.Count);
        Count = other.Count;
        _routineOfSequence.Clear();
        foreach (KeyValuePair<long, int> pair in other._routineOfSequence)
        {
            _routineOfSequence[pair.Key] = pair.Value;
        }
    }

    private EventHandle Schedule(in Routine routine, long time) => _calendar.Schedule(
        time, routine.Phase, routine.Kind, routine.Argument0, routine.Argument1, routine.Value);
}
