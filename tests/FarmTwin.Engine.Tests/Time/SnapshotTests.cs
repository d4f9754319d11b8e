namespace FarmTwin.Engine.Tests.Time;

public class SnapshotTests
{
    private const ulong Seed = 20260301;
    private const long Day = 86_400;

    [Theory]
    [InlineData(0)]
    [InlineData(10 * Day)]
    [InlineData((30 * Day) + 3600)]
    public void Going_on_from_a_snapshot_equals_running_through_bit_for_bit(long middle)
    {
        var through = new MixedModel(Seed);
        MixedModel.Start(through).RunTo(60 * Day);

        var model = new MixedModel(Seed);
        Simulation simulation = MixedModel.Start(model);
        simulation.RunTo(middle);
        SimulationState state = simulation.Save();
        var saved = new MixedModel(Seed);
        saved.CopyFrom(model);

        simulation.RunTo(60 * Day);
        AssertSame(through, model);

        // Branch twice from the one snapshot: in the same simulation, and in another.
        simulation.Restore(state);
        model.CopyFrom(saved);
        Assert.Equal(middle, simulation.NowSeconds);
        simulation.RunTo(60 * Day);
        AssertSame(through, model);

        var elsewhere = new MixedModel(Seed);
        Simulation other = MixedModel.Start(elsewhere);
        other.RunTo(3 * Day);
        other.Restore(state);
        elsewhere.CopyFrom(saved);
        other.RunTo(60 * Day);
        AssertSame(through, elsewhere);
    }

    [Fact]
    public void A_snapshot_before_the_start_still_fires_the_start()
    {
        var model = SimulationTests.Still();
        Simulation simulation = model.Alone();
        simulation.Calendar.Schedule(0, 0, 1);
        SimulationState state = simulation.Save();
        simulation.RunTo(10);
        simulation.Restore(state);
        simulation.RunTo(10);
        Assert.Equal([0L, 0L], model.Fired.Select(f => f.Time));
    }

    [Fact]
    public void A_snapshot_is_not_changed_by_what_comes_after_it()
    {
        var model = SimulationTests.Still();
        Simulation simulation = model.Alone();
        int routine = simulation.Routines.Add(new Routine(10, 10, 0, 1));
        int guard = simulation.Guards.Add(new Guard("level", 5, 0, GuardDirection.Rising, 2));
        simulation.RunTo(20);
        SimulationState state = simulation.Save();
        simulation.Routines.Stop(routine);
        simulation.Guards.Disable(guard);
        simulation.Calendar.Schedule(25, 0, 9);
        simulation.RunTo(100);
        simulation.Restore(state);
        Assert.True(simulation.Routines.IsRunning(routine));
        Assert.True(simulation.Guards.IsArmed(guard));
        Assert.Equal(1, simulation.Calendar.Count);
        model.Fired.Clear();
        simulation.RunTo(40);
        Assert.Equal([30L, 40L], model.Fired.Select(f => f.Time));
    }

    [Fact]
    public void Another_seed_gives_another_history_and_the_same_seed_the_same()
    {
        ulong Run(ulong seed)
        {
            var model = new MixedModel(seed);
            MixedModel.Start(model).RunTo(30 * Day);
            return model.Digest;
        }

        Assert.Equal(Run(Seed), Run(Seed));
        Assert.NotEqual(Run(Seed), Run(Seed + 1));
    }

    [Fact]
    public void A_step_with_events_guards_routines_records_and_ledger_allocates_nothing()
    {
        var model = new MixedModel(Seed);
        Simulation simulation = MixedModel.Start(model);
        simulation.RunTo(30 * Day);
        int events = model.EventCount;
        long before = GC.GetAllocatedBytesForCurrentThread();
        simulation.RunTo(130 * Day);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(model.EventCount - events > 3000);
        Assert.InRange(model.ClosureError, 0, 1e-12);
        Assert.False(double.IsNaN(model.LastRow[0]));
    }

    private static void AssertSame(MixedModel expected, MixedModel actual)
    {
        Assert.Equal(expected.EventCount, actual.EventCount);
        Assert.Equal(expected.Digest, actual.Digest);
        Assert.Equal(expected.LastRow.ToArray(), actual.LastRow.ToArray());
    }
}
