namespace FarmTwin.Engine;

/// <summary>A model that changes continuously between events and at once in events.</summary>
/// <remarks>
/// Not told how to integrate: it advances its own state by its own exact or implicit step. What makes a right-hand side jump (a pump
/// that stops, a lamp that is lit) changes in <see cref="Fire"/> only, never inside a step.
/// </remarks>
public interface IHybridModel
{
    /// <summary>
    /// How long the next step may be, in whole seconds from 1; asked before each step, so that the model may choose it from its state.
    /// </summary>
    long LongestStepSeconds { get; }

    /// <summary>Advances the continuous state; no event lies inside the step.</summary>
    /// <param name="fromSeconds">The present time.</param>
    /// <param name="toSeconds">The end of the step, after <paramref name="fromSeconds"/>.</param>
    void Advance(long fromSeconds, long toSeconds);

    /// <summary>Applies an event; may schedule, cancel, start and stop routines, change guards.</summary>
    /// <param name="entry">The event.</param>
    /// <param name="simulation">The simulation that fires it.</param>
    void Fire(in CalendarEntry entry, Simulation simulation);

    /// <summary>
    /// Called last at each instant at which an event fired or a record was due; must not schedule anything at that instant.
    /// </summary>
    /// <param name="timeSeconds">The present time.</param>
    void Record(long timeSeconds);
}
