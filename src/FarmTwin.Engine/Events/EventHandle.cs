namespace FarmTwin.Engine;

/// <summary>Names a scheduled event so that it can be cancelled.</summary>
/// <remarks>
/// Not a reference: it stays valid in a copy of the calendar. It belongs to the calendar's history: a handle obtained after a
/// snapshot must not be used once that snapshot is restored, so a model keeps its handles in the state that it saves. The default
/// value names no event. A value type: safe to copy and share.
/// </remarks>
/// <param name="Key">The key under which the event stands.</param>
/// <param name="Slot">Where the calendar keeps track of it.</param>
public readonly record struct EventHandle(CalendarKey Key, int Slot);
