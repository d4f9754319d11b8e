namespace FarmTwin.Engine.Tests.Time;

/// <summary>One or more quantities that a given one-step formula advances; time unit = <see cref="SecondsPerUnit"/> seconds.</summary>
internal sealed class ScalarModel(double[] start, Action<double[], double> step, double secondsPerUnit, long longestStepSeconds)
    : IHybridModel, IGuardedModel, IRewindable
{
    private readonly double[] _marked = new double[start.Length];

    public double[] State { get; } = [.. start];

    public double SecondsPerUnit { get; } = secondsPerUnit;

    public Func<double[], double> Guarded { get; init; } = state => state[0];

    public List<(long Time, int Kind, double Value)> Fired { get; } = [];

    public List<(long Time, double Value)> Recorded { get; } = [];

    public List<(long From, long To)> Steps { get; } = [];

    public Action<CalendarEntry, Simulation>? OnFire { get; init; }

    public long LongestStepSeconds { get; } = longestStepSeconds;

    public void Advance(long fromSeconds, long toSeconds)
    {
        step(State, (toSeconds - fromSeconds) / SecondsPerUnit);
        Steps.Add((fromSeconds, toSeconds));
    }

    public void Fire(in CalendarEntry entry, Simulation simulation)
    {
        Fired.Add((entry.TimeSeconds, entry.Kind, entry.Value));
        OnFire?.Invoke(entry, simulation);
    }

    public void Record(long timeSeconds) => Recorded.Add((timeSeconds, State[0]));

    public double GuardValue(int guard) => Guarded(State);

    public void Mark() => State.CopyTo(_marked, 0);

    public void Rewind() => _marked.CopyTo(State, 0);

    /// <summary>Runs alone to a time in units, without records.</summary>
    public ScalarModel Run(double units)
    {
        Alone().RunTo((long)Math.Round(units * SecondsPerUnit));
        return this;
    }

    public Simulation Alone() => new(this, new SimulationOptions { RecordIntervalSeconds = 0 });
}
