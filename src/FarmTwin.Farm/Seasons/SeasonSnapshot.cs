using FarmTwin.Engine;
using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.Seasons;

/// <summary>A saved state of a season. Opaque: made by <see cref="Season.Save"/>, used by <see cref="Season.Restore"/> and <see cref="Season.TakeOver"/>, any number of times.</summary>
public sealed class SeasonSnapshot
{
    internal SeasonSnapshot(FarmParts parts, FarmState state, FarmLog log, SeasonRecord record, SimulationState simulation, double[] edgeFlow)
    {
        Parts = parts;
        State = state;
        Log = log;
        Record = record;
        Simulation = simulation;
        EdgeFlow = edgeFlow;
    }

    /// <summary>When it was saved, seconds of the season.</summary>
    public long TimeSeconds => Simulation.TimeSeconds;

    internal FarmParts Parts { get; }

    internal FarmState State { get; }

    internal FarmLog Log { get; }

    internal SeasonRecord Record { get; }

    internal SimulationState Simulation { get; }

    internal double[] EdgeFlow { get; }
}
