namespace FarmTwin.Engine;

/// <summary>A copy of a simulation's own state: time, calendar, guards, routines.</summary>
/// <remarks>
/// Not the model's state: the model saves its own beside it. Opaque and never changed after it was made, so it may be restored any
/// number of times and shared between threads.
/// </remarks>
public sealed class SimulationState
{
    internal SimulationState(long timeSeconds, bool startIsPending, Calendar calendar, GuardSet guards, RoutineSet routines)
    {
        TimeSeconds = timeSeconds;
        StartIsPending = startIsPending;
        Calendar = calendar.Clone();
        Guards = new GuardSet();
        Guards.CopyFrom(guards);
        Routines = new RoutineSet(Calendar);
        Routines.CopyFrom(routines);
    }

    /// <summary>The simulated time at which it was saved, in seconds.</summary>
    public long TimeSeconds { get; }

    internal bool StartIsPending { get; }

    internal Calendar Calendar { get; }

    internal GuardSet Guards { get; }

    internal RoutineSet Routines { get; }
}
