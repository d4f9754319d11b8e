namespace FarmTwin.Engine.Tests.Time;

public class SimulationTests
{
    [Fact]
    public void Events_at_the_start_and_at_the_horizon_fire_and_later_ones_wait()
    {
        var model = Still();
        Simulation simulation = model.Alone();
        simulation.Calendar.Schedule(0, 0, 1);
        simulation.Calendar.Schedule(100, 0, 2);
        simulation.Calendar.Schedule(101, 0, 3);
        simulation.RunTo(100);
        Assert.Equal([1, 2], model.Fired.Select(f => f.Kind));
        Assert.Equal(100, simulation.NowSeconds);
        simulation.RunTo(101);
        Assert.Equal([1, 2, 3], model.Fired.Select(f => f.Kind));
        Assert.Throws<ArgumentOutOfRangeException>(() => simulation.RunTo(100));
    }

    [Fact]
    public void A_step_ends_at_each_event_record_and_horizon_and_falls_back_on_its_grid()
    {
        var model = Still(longestStep: 600);
        var simulation = new Simulation(model, new SimulationOptions { RecordIntervalSeconds = 900 });
        simulation.Calendar.Schedule(650, 0, 1);
        simulation.RunTo(2000);
        Assert.Equal([600, 650, 900, 1200, 1800, 2000], model.Steps.Select(s => s.To));
        Assert.Equal([0, 650, 900, 1800], model.Recorded.Select(r => r.Time));
        Assert.Equal(model.Steps.Skip(1).Select(s => s.From), model.Steps.SkipLast(1).Select(s => s.To));
    }

    [Fact]
    public void The_grid_and_the_clock_work_before_time_zero_too()
    {
        var model = Still(longestStep: 600);
        var simulation = new Simulation(model, new SimulationOptions { StartSeconds = -700, RecordIntervalSeconds = 0 });
        simulation.RunTo(100);
        Assert.Equal([-600, 0, 100], model.Steps.Select(s => s.To));
    }

    [Fact]
    public void The_grid_does_not_overflow_at_the_end_of_time()
    {
        var model = Still(longestStep: long.MaxValue);
        var simulation = new Simulation(
            model, new SimulationOptions { StartSeconds = long.MaxValue - 10, RecordIntervalSeconds = 0 });
        simulation.RunTo(long.MaxValue);
        Assert.Equal([long.MaxValue], model.Steps.Select(s => s.To));
    }

    [Fact]
    public void Scheduling_while_the_instant_is_being_recorded_is_an_error()
    {
        Simulation? simulation = null;
        simulation = new Simulation(new RecordingModel(() => simulation!.Calendar.Schedule(simulation.NowSeconds, 5, 66)));
        Assert.Contains(
            "kind 66", Assert.Throws<InvalidOperationException>(() => simulation.RunTo(10)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_model_chooses_each_step_from_its_own_state()
    {
        var model = new VariableStepModel();
        new Simulation(model, new SimulationOptions { RecordIntervalSeconds = 0 }).RunTo(7200);
        Assert.Equal([3600, 3660, 3720, 3780, 7200], model.Ends);
    }

    [Fact]
    public void An_instant_fires_phase_by_phase_then_guards_then_later_phases_then_the_record()
    {
        var log = new List<string>();
        var model = new LoggingModel(log);
        var simulation = new Simulation(model, new SimulationOptions { GuardPhase = 4, RecordIntervalSeconds = 10 });
        simulation.Guards.Add(new Guard("level", 1, 0, GuardDirection.Rising, 100));
        simulation.Calendar.Schedule(10, 5, 50);
        simulation.Calendar.Schedule(10, 3, 30);
        simulation.Calendar.Schedule(10, 0, 1);
        simulation.Calendar.Schedule(10, 3, 31);
        simulation.RunTo(10);
        Assert.Equal(["record 0", "advance 0-10", "1", "30", "31", "100", "50", "record 10"], log);
    }

    [Fact]
    public void An_event_that_schedules_into_an_earlier_phase_of_its_instant_is_an_error()
    {
        var model = Still((entry, simulation) => simulation.Calendar.Schedule(entry.TimeSeconds, entry.Phase - 1, 77));
        Simulation simulation = model.Alone();
        simulation.Calendar.Schedule(10, 3, 1);
        string message = Assert.Throws<InvalidOperationException>(() => simulation.RunTo(20)).Message;
        Assert.Contains("kind 77", message, StringComparison.Ordinal);
        Assert.Contains("10 s into phase 2", message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_instant_may_be_reopened_from_outside_after_a_run()
    {
        var model = Still();
        Simulation simulation = model.Alone();
        simulation.Calendar.Schedule(100, 5, 1);
        simulation.RunTo(100);
        EventHandle handle = simulation.Calendar.Schedule(100, 0, 2);
        EventHandle withdrawn = simulation.Calendar.Schedule(100, 0, 3);
        Assert.True(simulation.Calendar.Cancel(withdrawn));
        simulation.RunTo(200);
        Assert.Equal([(100L, 1), (100L, 2)], model.Fired.Select(f => (f.Time, f.Kind)));
        Assert.False(simulation.Calendar.Cancel(handle));
        Assert.Throws<InvalidOperationException>(() => simulation.Calendar.Schedule(199, 0, 1));
    }

    [Fact]
    public void An_event_that_does_nothing_changes_nothing()
    {
        var (plain, disturbed) = (Decay(), Decay());
        plain.Alone().RunTo(100_000);
        Simulation simulation = disturbed.Alone();
        for (int i = 0; i <= 100; i++)
        {
            simulation.Calendar.Schedule(i * 1000, i % 5, i);
        }

        simulation.RunTo(100_000);
        Assert.Equal(101, disturbed.Fired.Count);
        Assert.Equal(plain.State[0], disturbed.State[0], 0.0);

        // Off the step grid an event cuts a step in two; an exact step then differs by rounding only.
        var cut = Decay();
        Simulation between = cut.Alone();
        between.Calendar.Schedule(12_345, 0, 1);
        between.RunTo(100_000);
        Assert.Equal(1, cut.State[0] / plain.State[0], 1e-14);
    }

    [Fact]
    public void Running_from_within_a_run_and_endless_instants_are_errors()
    {
        var reentrant = Still((_, simulation) => simulation.RunTo(50));
        Simulation first = reentrant.Alone();
        first.Calendar.Schedule(10, 0, 1);
        Assert.Throws<InvalidOperationException>(() => first.RunTo(20));

        var endless = Still((entry, simulation) => simulation.Calendar.Schedule(entry.TimeSeconds, entry.Phase, entry.Kind));
        Simulation second = endless.Alone();
        second.Calendar.Schedule(10, 0, 5);
        string message = Assert.Throws<InvalidOperationException>(() => second.RunTo(20)).Message;
        Assert.Contains("kind 5", message, StringComparison.Ordinal);

        Assert.Throws<InvalidOperationException>(() => Still(longestStep: 0).Alone().RunTo(1));
    }

    [Fact]
    public void A_routine_repeats_until_it_is_stopped_also_from_its_own_event()
    {
        var model = Still((entry, simulation) =>
        {
            if (entry.TimeSeconds == 70)
            {
                Assert.True(simulation.Routines.Stop(0));
            }
        });
        Simulation simulation = model.Alone();
        int routine = simulation.Routines.Add(new Routine(10, 20, 2, 4) { Argument0 = 1, Argument1 = 2, Value = 3 });
        int other = simulation.Routines.Add(new Routine(15, 50, 2, 5));
        Assert.Equal(10, simulation.Routines.NextSeconds(routine));
        simulation.RunTo(1000);
        Assert.Equal([10, 30, 50, 70], model.Fired.Where(f => f.Kind == 4).Select(f => f.Time));
        Assert.Equal(20, model.Fired.Count(f => f.Kind == 5));
        Assert.False(simulation.Routines.IsRunning(routine));
        Assert.False(simulation.Routines.Stop(routine));
        Assert.True(simulation.Routines.Stop(other));
        Assert.Equal(0, simulation.Calendar.Count);
        Assert.Throws<ArgumentException>(() => simulation.Routines.Add(new Routine(2000, 0, 0, 0)));
        Assert.Throws<InvalidOperationException>(() => simulation.Routines.Add(new Routine(5, 10, 0, 0)));
    }

    internal static ScalarModel Still(Action<CalendarEntry, Simulation>? onFire = null, long longestStep = 3600) =>
        new([0], (_, _) => { }, 1, longestStep) { OnFire = onFire };

    private static ScalarModel Decay() => new([100], (s, h) => s[0] *= Math.Exp(-1e-5 * h), 1, 1000);

    private sealed class VariableStepModel : IHybridModel
    {
        public List<long> Ends { get; } = [];

        public long LongestStepSeconds => Ends.Count is 0 or > 3 ? 3600 : 60;

        public void Advance(long fromSeconds, long toSeconds) => Ends.Add(toSeconds);

        public void Fire(in CalendarEntry entry, Simulation simulation)
        {
        }

        public void Record(long timeSeconds)
        {
        }
    }

    private sealed class RecordingModel(Action onRecord) : IHybridModel
    {
        public long LongestStepSeconds => 3600;

        public void Advance(long fromSeconds, long toSeconds)
        {
        }

        public void Fire(in CalendarEntry entry, Simulation simulation)
        {
        }

        public void Record(long timeSeconds) => onRecord();
    }

    private sealed class LoggingModel(List<string> log) : IHybridModel, IGuardedModel
    {
        private double _level;

        public long LongestStepSeconds => 3600;

        public void Advance(long fromSeconds, long toSeconds) => log.Add($"advance {fromSeconds}-{toSeconds}");

        public void Fire(in CalendarEntry entry, Simulation simulation)
        {
            log.Add($"{entry.Kind}");
            _level = entry.Kind == 1 ? 2 : _level;
        }

        public double GuardValue(int guard) => _level;

        public void Record(long timeSeconds) => log.Add($"record {timeSeconds}");
    }
}
