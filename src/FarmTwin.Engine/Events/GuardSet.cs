namespace FarmTwin.Engine;

/// <summary>The guards of a simulation and whether each is armed.</summary>
/// <remarks>
/// Not a schedule: guards are looked at after each step and after the events of an instant. All are evaluated on the same state,
/// then the events of those that tripped fire in the order of their ids. Ids count from 0. Part of the simulation's snapshot.
/// Not safe for use by several threads at once.
/// </remarks>
public sealed class GuardSet
{
    private Guard[] _guards = new Guard[8];
    private bool[] _armed = new bool[8];
    private bool[] _enabled = new bool[8];
    private int _localisedCount;

    internal GuardSet()
    {
    }

    /// <summary>How many guards there are, enabled or not.</summary>
    public int Count { get; private set; }

    /// <summary>The guard of an id.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such guard.</exception>
    public Guard this[int guard] => _guards[Checked(guard)];

    internal bool HasLocalised => _localisedCount > 0;

    /// <summary>Adds a guard, enabled and armed: it fires at its first evaluation if the condition holds then.</summary>
    /// <returns>Its id: 0, 1, 2, …</returns>
    /// <exception cref="ArgumentException">No name, a level that is not finite, or a negative band.</exception>
    public int Add(Guard guard)
    {
        ArgumentException.ThrowIfNullOrEmpty(guard.Name, nameof(guard));
        Check(guard);
        if (Count == _guards.Length)
        {
            Array.Resize(ref _guards, 2 * Count);
            Array.Resize(ref _armed, 2 * Count);
            Array.Resize(ref _enabled, 2 * Count);
        }

        _guards[Count] = guard;
        _armed[Count] = true;
        _enabled[Count] = true;
        _localisedCount += guard.Localise ? 1 : 0;
        return Count++;
    }

    /// <summary>Whether a guard would fire if its condition held.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such guard.</exception>
    public bool IsArmed(int guard) => _armed[Checked(guard)] && _enabled[guard];

    /// <summary>Moves a guard's level (a set-point was changed); whether it is armed stays as it was.</summary>
    /// <exception cref="ArgumentException">There is no such guard, or the level is not finite.</exception>
    public void SetLevel(int guard, double level)
    {
        Guard changed = _guards[Checked(guard)] with { Level = level };
        Check(changed);
        _guards[guard] = changed;
    }

    /// <summary>Takes a guard into use again, armed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such guard.</exception>
    public void Enable(int guard)
    {
        if (!_enabled[Checked(guard)])
        {
            _enabled[guard] = true;
            _armed[guard] = true;
        }
    }

    /// <summary>Takes a guard out of use: its value is no longer asked for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such guard.</exception>
    public void Disable(int guard) => _enabled[Checked(guard)] = false;

    /// <summary>Re-arms what has returned; schedules the events of armed guards whose condition holds, and disarms them.</summary>
    /// <returns>The id of the last guard that tripped, or -1.</returns>
    internal int Evaluate(IGuardedModel model, Calendar calendar, long timeSeconds, int phase)
    {
        int tripped = -1;
        for (int i = 0; i < Count; i++)
        {
            if (!_enabled[i])
            {
                continue;
            }

            ref readonly Guard guard = ref _guards[i];
            double value = ValueOf(model, i, timeSeconds);
            if (!_armed[i])
            {
                _armed[i] = guard.Rearms(value);
            }
            else if (guard.Holds(value))
            {
                _armed[i] = false;
                calendar.Schedule(timeSeconds, phase, guard.Kind, i, guard.Argument, value);
                tripped = i;
            }
        }

        return tripped;
    }

    internal bool AnyLocalisedArmed()
    {
        for (int i = 0; i < Count; i++)
        {
            if (_guards[i].Localise && _armed[i] && _enabled[i])
            {
                return true;
            }
        }

        return false;
    }

    internal bool AnyLocalisedHolds(IGuardedModel model, long timeSeconds)
    {
        for (int i = 0; i < Count; i++)
        {
            if (_guards[i].Localise && _armed[i] && _enabled[i] && _guards[i].Holds(ValueOf(model, i, timeSeconds)))
            {
                return true;
            }
        }

        return false;
    }

    internal void CopyFrom(GuardSet other)
    {
        if (_guards.Length < other.Count)
        {
            _guards = new Guard[other._guards.Length];
            _armed = new bool[other._guards.Length];
            _enabled = new bool[other._guards.Length];
        }

        Array.Copy(other._guards, _guards, other.Count);
        Array.Copy(other._armed, _armed, other.Count);
        Array.Copy(other._enabled, _enabled, other.Count);
        Count = other.Count;
        _localisedCount = other._localisedCount;
    }

    private static void Check(in Guard guard)
    {
        if (!double.IsFinite(guard.Level) || guard.RearmBand is not (>= 0 and < double.PositiveInfinity))
        {
            throw new ArgumentException(
                $"Guard {guard.Name} needs a finite level and a re-arm band of 0 or more, not {guard.Level} and {guard.RearmBand}.",
                nameof(guard));
        }
    }

    private double ValueOf(IGuardedModel model, int guard, long timeSeconds)
    {
        double value = model.GuardValue(guard);
        if (double.IsNaN(value))
        {
            throw new InvalidOperationException($"The value watched by guard {_guards[guard].Name} is not a number at {timeSeconds} s.");
        }

        return value;
    }

    private int Checked(int guard)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(guard);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(guard, Count);
        return guard;
    }
}
