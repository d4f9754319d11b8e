using FarmTwin.Engine.Tests.Time;

namespace FarmTwin.Engine.Tests.Events;

public class GuardTests
{
    [Fact]
    public void A_guard_fires_once_and_rearms_only_when_the_value_has_returned_by_the_band()
    {
        // At 10 s a step, the watched value; rising through 5 with a band of 2.
        double[] values = [0, 4.9, 5, 6, 4, 5.5, 3.1, 7, 3, 5, 5];
        Assert.Equal([20L, 90L], Trips(values, new Guard("rising", 5, 2, GuardDirection.Rising, 1)));
        double[] mirrored = [.. values.Select(v => -v)];
        Assert.Equal([20L, 90L], Trips(mirrored, new Guard("falling", -5, 2, GuardDirection.Falling, 1)));
    }

    [Fact]
    public void A_band_of_zero_rearms_only_on_the_other_side_of_the_level()
    {
        double[] values = [4, 5, 5, 5, 4.999, 5, 5];
        Assert.Equal([10L, 50L], Trips(values, new Guard("bare", 5, 0, GuardDirection.Rising, 1)));
    }

    [Fact]
    public void A_condition_that_holds_at_the_start_fires_at_the_start() =>
        Assert.Equal([0L], Trips([9, 9, 9], new Guard("start", 5, 1, GuardDirection.Rising, 1)));

    [Fact]
    public void The_event_carries_guard_argument_and_value()
    {
        CalendarEntry seen = default;
        var model = new ScalarModel([0], (s, h) => s[0] += h, 1, 10) { OnFire = (entry, _) => seen = entry };
        var simulation = new Simulation(model, new SimulationOptions { GuardPhase = 4, RecordIntervalSeconds = 0 });
        simulation.Guards.Add(new Guard("never", 1e9, 0, GuardDirection.Rising, 8));
        simulation.Guards.Add(new Guard("soon", 25, 0, GuardDirection.Rising, 9) { Argument = 6 });
        simulation.RunTo(60);
        Assert.Equal((30L, 4, 9, 1, 6, 30.0), (seen.TimeSeconds, seen.Phase, seen.Kind, seen.Argument0, seen.Argument1, seen.Value));
        Assert.True(simulation.Guards.IsArmed(0));
        Assert.False(simulation.Guards.IsArmed(1));
    }

    [Fact]
    public void A_localised_guard_ends_the_step_at_the_first_second_and_the_next_step_returns_to_the_grid()
    {
        var model = new ScalarModel([0], (s, h) => s[0] += h, 1, 100);
        Simulation simulation = model.Alone();
        simulation.Guards.Add(new Guard("fine", 123.4, 0, GuardDirection.Rising, 1) { Localise = true });
        simulation.Guards.Add(new Guard("finer", 110, 0, GuardDirection.Rising, 2) { Localise = true });
        simulation.Guards.Add(new Guard("coarse", 150, 0, GuardDirection.Rising, 3));
        simulation.RunTo(300);
        Assert.Equal([(110L, 2), (124L, 1), (200L, 3)], model.Fired.Select(f => (f.Time, f.Kind)));
        Assert.Equal(300, model.State[0]);
    }

    [Fact]
    public void Guards_can_be_moved_and_taken_out_of_use()
    {
        var model = new ScalarModel([0], (s, h) => s[0] += h, 1, 10);
        Simulation simulation = model.Alone();
        int guard = simulation.Guards.Add(new Guard("moved", 25, 0, GuardDirection.Rising, 1));
        int off = simulation.Guards.Add(new Guard("off", 15, 0, GuardDirection.Rising, 2));
        simulation.Guards.SetLevel(guard, 45);
        simulation.Guards.Disable(off);
        simulation.RunTo(60);
        Assert.Equal([(50L, 1)], model.Fired.Select(f => (f.Time, f.Kind)));
        simulation.Guards.Enable(off);
        simulation.RunTo(100);
        Assert.Equal([(50L, 1), (70L, 2)], model.Fired.Select(f => (f.Time, f.Kind)));
    }

    [Fact]
    public void Guards_that_trip_one_another_without_end_are_an_error_that_names_one()
    {
        // Each guard's event throws the value across the other's level.
        ScalarModel? model = null;
        model = new ScalarModel([0], (_, _) => { }, 1, 10)
        {
            OnFire = (entry, _) => model!.State[0] = entry.Kind == 1 ? -10 : 10,
        };
        Simulation simulation = model.Alone();
        simulation.Guards.Add(new Guard("high", 5, 1, GuardDirection.Rising, 1));
        simulation.Guards.Add(new Guard("low", -5, 1, GuardDirection.Falling, 2));
        simulation.Calendar.Schedule(20, 0, 2);
        string message = Assert.Throws<InvalidOperationException>(() => simulation.RunTo(100)).Message;
        Assert.Contains("at 20 s after 100 rounds", message, StringComparison.Ordinal);
        Assert.Contains("high", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_guard_that_the_model_cannot_serve_is_an_error()
    {
        var simulation = new Simulation(new QueueModel(1, 0, _ => 1, _ => 1));
        simulation.Guards.Add(new Guard("x", 5, 1, GuardDirection.Rising, 1));
        Assert.Contains(
            "no values", Assert.Throws<InvalidOperationException>(() => simulation.RunTo(10)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_quantity_that_does_not_exist_may_be_infinite_and_never_fires()
    {
        double[] values = [double.PositiveInfinity, double.PositiveInfinity, 3, double.PositiveInfinity, 3];
        Assert.Equal([20L, 40L], Trips(values, new Guard("dry", 4, 0.5, GuardDirection.Falling, 1)));
    }

    [Fact]
    public void A_value_that_is_not_a_number_and_an_impossible_guard_are_errors()
    {
        var model = new ScalarModel([double.NaN], (_, _) => { }, 1, 10);
        Simulation simulation = model.Alone();
        simulation.Guards.Add(new Guard("oxygen", 5, 1, GuardDirection.Falling, 1));
        Assert.Contains("oxygen", Assert.Throws<InvalidOperationException>(() => simulation.RunTo(10)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => simulation.Guards.Add(new Guard("x", double.NaN, 1, GuardDirection.Falling, 1)));
        Assert.Throws<ArgumentException>(() => simulation.Guards.Add(new Guard("x", 1, -1, GuardDirection.Falling, 1)));
        Assert.ThrowsAny<ArgumentException>(() => simulation.Guards.Add(default));
    }

    private static IEnumerable<long> Trips(double[] values, Guard guard)
    {
        int index = 0;
        var model = new ScalarModel([values[0]], (s, _) => s[0] = values[++index], 1, 10);
        Simulation simulation = model.Alone();
        simulation.Guards.Add(guard);
        simulation.RunTo((values.Length - 1) * 10);
        return model.Fired.Select(f => f.Time);
    }
}
