namespace FarmTwin.Engine;

/// <summary>Where an event stands in the order of a calendar: by time, then phase, then the order of scheduling.</summary>
/// <remarks>
/// The runtime's heap does not keep the order of equal keys; the sequence number makes every key different, so that ties are
/// resolved first in, first out, the same way on every run. A value type: safe to copy and share.
/// </remarks>
/// <param name="TimeSeconds">Whole seconds of the simulated clock.</param>
/// <param name="Phase">The rank within an instant; lower fires first.</param>
/// <param name="Sequence">The ordinal of scheduling, from 1.</param>
public readonly record struct CalendarKey(long TimeSeconds, int Phase, long Sequence) : IComparable<CalendarKey>
{
    /// <summary>Compares by time, then phase, then sequence.</summary>
    public int CompareTo(CalendarKey other)
    {
        if (TimeSeconds != other.TimeSeconds)
        {
            return TimeSeconds < other.TimeSeconds ? -1 : 1;
        }

        if (Phase != other.Phase)
        {
            return Phase < other.Phase ? -1 : 1;
        }

        return Sequence.CompareTo(other.Sequence);
    }

    /// <summary>Whether <paramref name="left"/> comes before <paramref name="right"/>.</summary>
    public static bool operator <(CalendarKey left, CalendarKey right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> comes after <paramref name="right"/>.</summary>
    public static bool operator >(CalendarKey left, CalendarKey right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> does not come after <paramref name="right"/>.</summary>
    public static bool operator <=(CalendarKey left, CalendarKey right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> does not come before <paramref name="right"/>.</summary>
    public static bool operator >=(CalendarKey left, CalendarKey right) => left.CompareTo(right) >= 0;
}
