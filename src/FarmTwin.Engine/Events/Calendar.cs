namespace FarmTwin.Engine;

/// <summary>The events to come, in the order (time, phase, sequence).</summary>
/// <remarks>
/// <para>Not a clock by itself: it knows the instant that it has reached only so as to refuse events that could no longer fire in
/// order. Times are any <see cref="long"/> seconds; at equal time and phase events fire first in, first out.</para>
/// <para>Cancelling is lazy: the entry is skipped when it comes up, and the heap is rebuilt when cancelled entries outnumber live
/// ones. Nothing is allocated once the capacity suffices. Not safe for use by several threads at once.</para>
/// </remarks>
public sealed class Calendar
{
    // Below this many cancelled entries a rebuild costs more than it frees.
    private const int FewestCancelledForRebuild = 64;

    private readonly PriorityQueue<Payload, CalendarKey> _queue;
    private readonly List<(Payload Payload, CalendarKey Key)> _kept = [];

    // Each entry of the heap owns a slot, which holds its sequence number while it is pending and 0 once it is cancelled: so a
    // handle can be checked, also a second time, without searching the heap.
    private long[] _sequenceOfSlot;
    private int[] _freeSlots;
    private int _freeSlotCount;
    private int _cancelledCount;
    private long _nextSequence = 1;

    // The phase is int.MinValue while no event of the instant is being fired.
    private long _reachedSeconds = long.MinValue;
    private int _reachedPhase = int.MinValue;

    /// <summary>Makes an empty calendar.</summary>
    /// <param name="capacity">How many pending events to make room for; it grows when needed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is negative.</exception>
    public Calendar(int capacity = 64)
    {
        _queue = new PriorityQueue<Payload, CalendarKey>(capacity);
        _sequenceOfSlot = new long[Math.Max(1, capacity)];
        _freeSlots = new int[_sequenceOfSlot.Length];
        FreeFrom(0);
    }

    /// <summary>How many events are pending; cancelled ones are not counted.</summary>
    public int Count => _queue.Count - _cancelledCount;

    /// <summary>The instant reached, in seconds: of the last event taken, or to which a simulation has moved the calendar.</summary>
    /// <remarks><see cref="long.MinValue"/> in a new calendar.</remarks>
    public long ReachedSeconds => _reachedSeconds;

    /// <summary>Puts an event on the calendar.</summary>
    /// <param name="time">When, in seconds; not before <see cref="ReachedSeconds"/>.</param>
    /// <param name="phase">In which phase of that instant; at the instant being fired, not before the phase being fired.</param>
    /// <param name="kind">What kind of event.</param>
    /// <param name="argument0">First argument.</param>
    /// <param name="argument1">Second argument.</param>
    /// <param name="value">A real argument.</param>
    /// <returns>What <see cref="Cancel"/> takes.</returns>
    /// <exception cref="InvalidOperationException">The time is past, or the phase of the instant being fired is.</exception>
    public EventHandle Schedule(long time, int phase, int kind, int argument0 = 0, int argument1 = 0, double value = 0)
    {
        if (time <= _reachedSeconds && (time < _reachedSeconds || phase < _reachedPhase))
        {
            throw TooLate(time, phase, kind);
        }

        if (_freeSlotCount == 0)
        {
            GrowSlots();
        }

        var key = new CalendarKey(time, phase, _nextSequence++);
        int slot = _freeSlots[--_freeSlotCount];
        _sequenceOfSlot[slot] = key.Sequence;
        _queue.Enqueue(new Payload(kind, argument0, argument1, slot, value), key);
        return new EventHandle(key, slot);
    }

    /// <summary>Withdraws a pending event.</summary>
    /// <returns>False, and nothing changes, if it has fired, was cancelled before, or the handle is the default one.</returns>
    public bool Cancel(EventHandle handle)
    {
        if (handle.Key.Sequence <= 0
            || (uint)handle.Slot >= (uint)_sequenceOfSlot.Length
            || _sequenceOfSlot[handle.Slot] != handle.Key.Sequence)
        {
            return false;
        }

        _sequenceOfSlot[handle.Slot] = 0;
        _cancelledCount++;
        if (_cancelledCount >= FewestCancelledForRebuild && _cancelledCount > _queue.Count / 2)
        {
            Rebuild();
        }

        return true;
    }

    /// <summary>Looks at the next event without taking it.</summary>
    /// <returns>False if none is pending.</returns>
    public bool TryPeek(out CalendarEntry entry)
    {
        while (_queue.TryPeek(out Payload payload, out CalendarKey key))
        {
            if (IsPending(payload, key))
            {
                entry = Join(payload, key);
                return true;
            }

            _queue.Dequeue();
            Discard(payload);
        }

        entry = default;
        return false;
    }

    /// <summary>Takes the next event; the calendar has then reached its time and phase.</summary>
    /// <returns>False if none is pending.</returns>
    public bool TryPop(out CalendarEntry entry)
    {
        while (_queue.TryDequeue(out Payload payload, out CalendarKey key))
        {
            if (IsPending(payload, key))
            {
                _sequenceOfSlot[payload.Slot] = 0;
                _freeSlots[_freeSlotCount++] = payload.Slot;
                _reachedSeconds = key.TimeSeconds;
                _reachedPhase = key.Phase;
                entry = Join(payload, key);
                return true;
            }

            Discard(payload);
        }

        entry = default;
        return false;
    }

    /// <summary>Becomes a copy of another calendar: same pending events, same handles, same instant reached.</summary>
    public void CopyFrom(Calendar other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (ReferenceEquals(this, other))
        {
            return;
        }

        _queue.Clear();
        _queue.EnsureCapacity(other._queue.Count);
        foreach ((Payload payload, CalendarKey key) in other._queue.UnorderedItems)
        {
            _queue.Enqueue(payload, key);
        }

        if (_sequenceOfSlot.Length != other._sequenceOfSlot.Length)
        {
            _sequenceOfSlot = new long[other._sequenceOfSlot.Length];
            _freeSlots = new int[other._freeSlots.Length];
        }

        Array.Copy(other._sequenceOfSlot, _sequenceOfSlot, _sequenceOfSlot.Length);
        Array.Copy(other._freeSlots, _freeSlots, _freeSlots.Length);
        _freeSlotCount = other._freeSlotCount;
        _cancelledCount = other._cancelledCount;
        _nextSequence = other._nextSequence;
        _reachedSeconds = other._reachedSeconds;
        _reachedPhase = other._reachedPhase;
    }

    /// <summary>A copy that shares nothing with this calendar.</summary>
    public Calendar Clone()
    {
        var copy = new Calendar(_queue.Count);
        copy.CopyFrom(this);
        return copy;
    }

    /// <summary>Moves on to an instant at which nothing has fired yet.</summary>
    internal void AdvanceTo(long time)
    {
        if (time > _reachedSeconds)
        {
            _reachedSeconds = time;
            _reachedPhase = int.MinValue;
        }
    }

    /// <summary>Refuses further events at this instant in a phase before <paramref name="phase"/>.</summary>
    internal void AdvanceToPhase(int phase) => _reachedPhase = Math.Max(_reachedPhase, phase);

    /// <summary>Ends the firing of an instant: what is scheduled at it from now on, in any phase, fires when it is fired again.</summary>
    internal void CloseInstant() => _reachedPhase = int.MinValue;

    private static CalendarEntry Join(in Payload payload, CalendarKey key) => new(
        key.TimeSeconds, key.Phase, key.Sequence, payload.Kind, payload.Argument0, payload.Argument1, payload.Value);

    private bool IsPending(in Payload payload, CalendarKey key) => _sequenceOfSlot[payload.Slot] == key.Sequence;

    private void Discard(in Payload cancelled)
    {
        _cancelledCount--;
        _freeSlots[_freeSlotCount++] = cancelled.Slot;
    }

    private void GrowSlots()
    {
        int used = _sequenceOfSlot.Length;
        Array.Resize(ref _sequenceOfSlot, 2 * used);
        Array.Resize(ref _freeSlots, 2 * used);
        FreeFrom(used);
    }

    private void FreeFrom(int firstSlot)
    {
        for (int slot = _sequenceOfSlot.Length - 1; slot >= firstSlot; slot--)
        {
            _freeSlots[_freeSlotCount++] = slot;
        }
    }

    private InvalidOperationException TooLate(long time, int phase, int kind) => new(
        time < _reachedSeconds
            ? $"An event of kind {kind} was scheduled at {time} s, phase {phase}, but the calendar has reached {_reachedSeconds} s."
            : $"An event of kind {kind} was scheduled at {time} s into phase {phase}, but phase {_reachedPhase} of that instant is "
            + "being fired already; schedule it into a later phase or a later second.");

    private void Rebuild()
    {
        _kept.Clear();
        foreach ((Payload payload, CalendarKey key) in _queue.UnorderedItems)
        {
            if (IsPending(payload, key))
            {
                _kept.Add((payload, key));
            }
            else
            {
                Discard(payload);
            }
        }

        _queue.Clear();
        foreach ((Payload payload, CalendarKey key) in _kept)
        {
            _queue.Enqueue(payload, key);
        }
    }

    // The key holds time, phase and sequence already: the heap moves 48 bytes an entry instead of 72.
    private readonly record struct Payload(int Kind, int Argument0, int Argument1, int Slot, double Value);
}
