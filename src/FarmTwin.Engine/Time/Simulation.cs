namespace FarmTwin.Engine;

/// <summary>The loop that runs a model through time: step, events phase by phase, guards, record.</summary>
/// <remarks>
/// <para>Not a clock of real time and not an integrator: whole seconds of simulated time, and the model steps itself. A step ends at
/// the next event, record or horizon, or at the next whole multiple of the model's longest step, whichever comes first; so steps
/// fall back on the same grid after an event. A horizon off that grid cuts a step, as an event would.</para>
/// <para>At an instant: events in the order (phase, sequence); guards, with their events, until none trips; events of later phases;
/// record. Nothing is allocated per step once the calendar's capacity suffices.</para>
/// <para>Times are any <see cref="long"/> seconds. Not safe for use by several threads at once; several simulations may run side by
/// side. After an exception from a run the state is that of an unfinished instant: restore a snapshot or discard it.</para>
/// </remarks>
public sealed class Simulation
{
    private readonly IHybridModel _model;
    private readonly IGuardedModel? _guardedModel;
    private readonly IRewindable? _rewindableModel;
    private readonly SimulationOptions _options;
    private bool _startIsPending = true;
    private bool _isRunning;

    /// <summary>Makes a simulation that stands at its start; the events of the start fire in the first run.</summary>
    /// <param name="model">The model; may also be an <see cref="IGuardedModel"/> and an <see cref="IRewindable"/>.</param>
    /// <param name="options">Settings; null for the defaults.</param>
    /// <exception cref="ArgumentException">A negative record interval, or a limit below 1.</exception>
    public Simulation(IHybridModel model, SimulationOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        _options = options ?? new SimulationOptions();
        if (_options.RecordIntervalSeconds < 0 || _options.MostGuardRounds < 1 || _options.MostEventsPerInstant < 1)
        {
            throw new ArgumentException("The record interval must be 0 or more and the limits at least 1.", nameof(options));
        }

        _model = model;
        _guardedModel = model as IGuardedModel;
        _rewindableModel = model as IRewindable;
        NowSeconds = _options.StartSeconds;
        Calendar = new Calendar();
        Calendar.AdvanceTo(NowSeconds);
        Guards = new GuardSet();
        Routines = new RoutineSet(Calendar);
    }

    /// <summary>The present simulated time, in seconds.</summary>
    public long NowSeconds { get; private set; }

    /// <summary>The events to come. Schedule and cancel on it; taking events from it is the simulation's business.</summary>
    public Calendar Calendar { get; }

    /// <summary>The guards.</summary>
    public GuardSet Guards { get; }

    /// <summary>The repeating duties.</summary>
    public RoutineSet Routines { get; }

    /// <summary>Runs to a horizon, the events at the horizon included.</summary>
    /// <param name="horizonSeconds">Not before <see cref="NowSeconds"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The horizon is past.</exception>
    /// <exception cref="InvalidOperationException">
    /// Called from within a run; the model cannot serve the guards; its longest step is below 1 s; a cascade does not end.
    /// </exception>
    public void RunTo(long horizonSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(horizonSeconds, NowSeconds);
        RefuseWhileRunning();
        _isRunning = true;
        try
        {
            // The start, or what was scheduled at this instant from outside since it was fired.
            if (_startIsPending || (Calendar.TryPeek(out CalendarEntry due) && due.TimeSeconds == NowSeconds))
            {
                _startIsPending = false;
                FireInstant();
            }

            while (NowSeconds < horizonSeconds)
            {
                NowSeconds = Step(NowSeconds, StepEnd(horizonSeconds));
                Calendar.AdvanceTo(NowSeconds);
                FireInstant();
            }
        }
        finally
        {
            _isRunning = false;
        }
    }

    /// <summary>Copies time, calendar, guards and routines; save the model's state beside it.</summary>
    /// <exception cref="InvalidOperationException">Called from within a run.</exception>
    public SimulationState Save()
    {
        RefuseWhileRunning();
        return new SimulationState(NowSeconds, _startIsPending, Calendar, Guards, Routines);
    }

    /// <summary>Returns to a saved state, also one saved by another simulation of an equal model; restore the model's beside it.</summary>
    /// <exception cref="InvalidOperationException">Called from within a run.</exception>
    public void Restore(SimulationState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        RefuseWhileRunning();
        NowSeconds = state.TimeSeconds;
        _startIsPending = state.StartIsPending;
        Calendar.CopyFrom(state.Calendar);
        Guards.CopyFrom(state.Guards);
        Routines.CopyFrom(state.Routines);
    }

    /// <summary>
    /// Goes to the instant of a state that was saved by another simulation with a schedule of its own: what this one has scheduled up to
    /// then is skipped, its routines stand at their next time after it, and those of the other's pending events that are wanted are added.
    /// </summary>
    /// <remarks>Only in a simulation that has not been run yet. Ties are fired by this simulation's own schedule first.</remarks>
    /// <param name="state">The other's state; not changed.</param>
    /// <param name="isWanted">Which of its pending events are added: those that arose on the way, not those of its own schedule.</param>
    /// <exception cref="InvalidOperationException">This simulation has been run.</exception>
    public void TakeOver(SimulationState state, Func<CalendarEntry, bool> isWanted)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(isWanted);
        if (!_startIsPending)
        {
            throw new InvalidOperationException("Only a simulation that has not been run can take over another's state.");
        }

        while (Calendar.TryPeek(out CalendarEntry past) && past.TimeSeconds <= state.TimeSeconds)
        {
            Calendar.TryPop(out CalendarEntry skipped);
            Routines.Rearm(skipped);
        }

        NowSeconds = state.TimeSeconds;
        _startIsPending = state.StartIsPending;
        Calendar.AdvanceTo(NowSeconds);
        Calendar.CloseInstant();
        Calendar others = state.Calendar.Clone();
        while (others.TryPop(out CalendarEntry entry))
        {
            if (isWanted(entry))
            {
                Calendar.Schedule(entry.TimeSeconds, entry.Phase, entry.Kind, entry.Argument0, entry.Argument1, entry.Value);
            }
        }

        Guards.CopyFrom(state.Guards);
    }

    private static long NextMultiple(long time, long interval)
    {
        long past = time % interval;
        long rest = interval - (past < 0 ? past + interval : past);
        return time > 0 && rest > long.MaxValue - time ? long.MaxValue : time + rest;
    }

    private long StepEnd(long horizonSeconds)
    {
        long longest = _model.LongestStepSeconds;
        if (longest < 1)
        {
            throw new InvalidOperationException($"The model allows a longest step of {longest} s at {NowSeconds} s; the least is 1 s.");
        }

        long end = Math.Min(horizonSeconds, NextMultiple(NowSeconds, longest));
        if (_options.RecordIntervalSeconds > 0)
        {
            end = Math.Min(end, NextMultiple(NowSeconds, _options.RecordIntervalSeconds));
        }

        return Calendar.TryPeek(out CalendarEntry next) ? Math.Min(end, next.TimeSeconds) : end;
    }

    private long Step(long from, long to)
    {
        if (!Guards.HasLocalised || !Guards.AnyLocalisedArmed())
        {
            _model.Advance(from, to);
            return to;
        }

        IGuardedModel guarded = RequireGuardedModel();
        IRewindable rewindable = _rewindableModel
            ?? throw new InvalidOperationException("A guard is to be localised, but the model cannot be rewound.");
        rewindable.Mark();
        _model.Advance(from, to);
        if (!Guards.AnyLocalisedHolds(guarded, to))
        {
            return to;
        }

        // Bisection: at `before` no localised guard holds, at `holds` one does.
        long before = from;
        long holds = to;
        long stateAt = to;
        while (holds - before > 1)
        {
            long middle = before + ((holds - before) / 2);
            rewindable.Rewind();
            _model.Advance(from, middle);
            stateAt = middle;
            if (Guards.AnyLocalisedHolds(guarded, middle))
            {
                holds = middle;
            }
            else
            {
                before = middle;
            }
        }

        if (stateAt != holds)
        {
            rewindable.Rewind();
            _model.Advance(from, holds);
        }

        return holds;
    }

    private void FireInstant()
    {
        int budget = _options.MostEventsPerInstant;
        FireThrough(_options.GuardPhase, ref budget);
        if (Guards.Count > 0)
        {
            SettleGuards(ref budget);
        }

        FireThrough(int.MaxValue, ref budget);
        bool fired = budget < _options.MostEventsPerInstant;
        if (fired || (_options.RecordIntervalSeconds > 0 && NowSeconds % _options.RecordIntervalSeconds == 0))
        {
            Calendar.AdvanceToPhase(int.MaxValue);
            _model.Record(NowSeconds);
            if (Calendar.TryPeek(out CalendarEntry late) && late.TimeSeconds == NowSeconds)
            {
                throw new InvalidOperationException(
                    $"The model scheduled an event of kind {late.Kind} at {NowSeconds} s while that instant was being recorded.");
            }
        }

        Calendar.CloseInstant();
    }

    private void SettleGuards(ref int budget)
    {
        IGuardedModel guarded = RequireGuardedModel();
        for (int round = 1; ; round++)
        {
            int tripped = Guards.Evaluate(guarded, Calendar, NowSeconds, _options.GuardPhase);
            if (tripped < 0)
            {
                return;
            }

            if (round > _options.MostGuardRounds)
            {
                throw new InvalidOperationException(
                    $"Guards still trip one another at {NowSeconds} s after {_options.MostGuardRounds} rounds (last: "
                    + $"{Guards[tripped].Name}); widen a re-arm band or let its event act later.");
            }

            FireThrough(_options.GuardPhase, ref budget);
        }
    }

    private void FireThrough(int lastPhase, ref int budget)
    {
        while (Calendar.TryPeek(out CalendarEntry next) && next.TimeSeconds == NowSeconds && next.Phase <= lastPhase)
        {
            if (--budget < 0)
            {
                throw new InvalidOperationException(
                    $"More than {_options.MostEventsPerInstant} events at {NowSeconds} s (next: kind {next.Kind}, phase {next.Phase}).");
            }

            Calendar.TryPop(out CalendarEntry entry);
            Routines.Rearm(entry);
            _model.Fire(entry, this);
        }
    }

    private IGuardedModel RequireGuardedModel() => _guardedModel
        ?? throw new InvalidOperationException("There are guards, but the model gives no values for them to watch.");

    private void RefuseWhileRunning()
    {
        if (_isRunning)
        {
            throw new InvalidOperationException("A simulation cannot be run, saved or restored from within its own run.");
        }
    }
}
