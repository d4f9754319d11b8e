namespace FarmTwin.Engine;

/// <summary>A threshold on a continuous value that fires an event when it is reached.</summary>
/// <remarks>
/// <para>Not a comparison made by hand in a step: it fires once, at a whole second at which the condition holds, and only re-arms
/// when the value has returned past the level by <see cref="RearmBand"/>, so that a value which hovers does not chatter.</para>
/// <para>The event carries the guard's id as first argument, <see cref="Argument"/> as second, and the value as seen. A value type:
/// safe to copy and share. The default value has no name and is refused by <see cref="GuardSet.Add"/>.</para>
/// </remarks>
/// <param name="Name">For messages.</param>
/// <param name="Level">The level, in the unit of the guarded value; finite.</param>
/// <param name="RearmBand">How far past the level the value must return before the guard is armed again; 0 or more.</param>
/// <param name="Direction">From which side.</param>
/// <param name="Kind">The kind of the event that it fires.</param>
public readonly record struct Guard(string Name, double Level, double RearmBand, GuardDirection Direction, int Kind)
{
    /// <summary>Second argument of the event, as the kind defines it.</summary>
    public int Argument { get; init; }

    /// <summary>
    /// Whether a step in which the condition became true is redone shorter, to end at the first whole second at which it holds.
    /// Needs a model that implements <see cref="IRewindable"/>. False: it fires at the end of the step.
    /// </summary>
    public bool Localise { get; init; }

    /// <summary>Whether a value has reached the level.</summary>
    public bool Holds(double value) => Direction == GuardDirection.Rising ? value >= Level : value <= Level;

    /// <summary>Whether a value has returned far enough for the guard to be armed again.</summary>
    public bool Rearms(double value) =>
        !Holds(value) && (Direction == GuardDirection.Rising ? value <= Level - RearmBand : value >= Level + RearmBand);
}
