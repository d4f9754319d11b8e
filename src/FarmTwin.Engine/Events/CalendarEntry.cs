namespace FarmTwin.Engine;

/// <summary>One event of a calendar: when, in which phase, and what, as plain numbers.</summary>
/// <remarks>
/// Not a closure: an entry holds a kind and its arguments and nothing that refers to a run, so that a calendar can be copied and
/// a season branched. What a kind means is the model's business. A value type: safe to copy and share.
/// </remarks>
/// <param name="TimeSeconds">Whole seconds of the simulated clock.</param>
/// <param name="Phase">The rank within an instant; lower fires first.</param>
/// <param name="Sequence">The ordinal of scheduling, from 1; resolves ties.</param>
/// <param name="Kind">What kind of event, as numbered by the model.</param>
/// <param name="Argument0">First argument, as the kind defines it.</param>
/// <param name="Argument1">Second argument, as the kind defines it.</param>
/// <param name="Value">A real argument, as the kind defines it.</param>
public readonly record struct CalendarEntry(
    long TimeSeconds, int Phase, long Sequence, int Kind, int Argument0, int Argument1, double Value);
