namespace FarmTwin.Engine.Tests.Time;

public class ContinuousTests
{
    private const double SecondsPerUnit = 1e9;

    [Fact]
    public void Exact_steps_give_the_closed_forms()
    {
        int checks = 0;
        foreach (var row in PublishedTable.Read(PublishedTable.ClosedForms).Rows.Where(r => r["problem"] != "monod"))
        {
            string problem = row["problem"];
            var model = new ScalarModel(OneStepFormulas.Start(problem), OneStepFormulas.Exact(problem), SecondsPerUnit, 100_000_000);
            model.Run(PublishedTable.Number(row, "time"));
            double value = model.State[Index(problem, row["quantity"])];
            Assert.Equal(1, value / PublishedTable.Number(row, "value"), 1e-12);
            checks++;
        }

        Assert.Equal(15, checks);
    }

    [Fact]
    public void Backward_Euler_steps_converge_to_every_closed_form_with_order_one() =>
        HoldOrder(OneStepFormulas.BackwardEuler, order: 1, tolerance: 0.05);

    [Fact]
    public void Trapezoid_steps_converge_to_every_closed_form_with_order_two() =>
        HoldOrder(OneStepFormulas.Trapezoid, order: 2, tolerance: 0.05);

    [Fact]
    public void Implicit_steps_of_the_chain_conserve_its_mass_and_stay_positive_at_any_step()
    {
        foreach (long step in (long[])[1_000_000, 300_000_000, 7_000_000_000])
        {
            var model = new ScalarModel(
                OneStepFormulas.Start("chain"), OneStepFormulas.BackwardEuler("chain"), SecondsPerUnit, step).Run(20);
            Assert.Equal(100, model.State.Sum(), 1e-10);
            Assert.All(model.State, s => Assert.True(s >= 0));
        }
    }

    [Fact]
    public void The_intermediate_of_the_chain_peaks_where_it_must()
    {
        var row = PublishedTable.Read(PublishedTable.ClosedForms).Rows.Single(r => r["time"].StartsWith("3.05", StringComparison.Ordinal));
        var model = new ScalarModel(OneStepFormulas.Start("chain"), OneStepFormulas.Exact("chain"), 1e6, 500_000)
        {
            Guarded = s => (0.5 * s[0]) - (0.2 * s[1]),
        };
        Simulation simulation = model.Alone();
        simulation.Guards.Add(new Guard("peak", 0, 1, GuardDirection.Falling, 7) { Localise = true });
        simulation.RunTo(10_000_000);
        Assert.Equal((long)Math.Ceiling(PublishedTable.Number(row, "time") * 1e6), Assert.Single(model.Fired).Time);
    }

    [Fact]
    public void A_square_wave_switched_by_events_settles_to_its_periodic_solution()
    {
        var rows = PublishedTable.Read(PublishedTable.SwitchedAndCrossing).Rows;
        double input = 0;
        void Step(double[] s, double hours)
        {
            // The input changes in events only, so within a step it is constant and the step is exact.
            double level = input / 0.1;
            s[0] = level + ((s[0] - level) * Math.Exp(-0.1 * hours));
        }

        var model = new ScalarModel([0], Step, 3600, 3600) { OnFire = (entry, _) => input = entry.Value };
        var simulation = new Simulation(model, new SimulationOptions { RecordIntervalSeconds = 0 });
        const long day = 86_400;
        simulation.Routines.Add(new Routine(0, day, 0, 1) { Value = 1 });
        simulation.Routines.Add(new Routine(day / 2, day, 0, 2) { Value = 0 });
        simulation.RunTo(30 * day);
        Assert.Equal(1, Value(model, 30 * day) / Published("trough"), 1e-12);
        Assert.Equal(1, Value(model, (30 * day) - (day / 2)) / Published("peak"), 1e-12);

        double Published(string quantity) => PublishedTable.Number(rows.Single(r => r["quantity"] == quantity), "value");
        static double Value(ScalarModel model, long time) => model.Recorded.Single(r => r.Time == time).Value;
    }

    [Theory]
    [InlineData(1e3)]
    [InlineData(1e5)]
    [InlineData(1e9)]
    public void Decay_crosses_its_level_at_the_first_whole_second_at_which_it_holds(double secondsPerUnit)
    {
        var row = PublishedTable.Read(PublishedTable.SwitchedAndCrossing).Rows.Single(r => r["quantity"] == "crossing");
        var model = new ScalarModel([100], (s, h) => s[0] *= Math.Exp(-0.5 * h), secondsPerUnit, (long)(secondsPerUnit / 2));
        Simulation simulation = model.Alone();
        simulation.Guards.Add(new Guard("ten", 10, 1, GuardDirection.Falling, 7) { Localise = true });
        simulation.RunTo((long)(10 * secondsPerUnit));
        (long time, int kind, double value) = Assert.Single(model.Fired);
        Assert.Equal((long)Math.Ceiling(PublishedTable.Number(row, "value") * secondsPerUnit), time);
        Assert.Equal(7, kind);
        Assert.InRange(value, 10 * (1 - (0.5 / secondsPerUnit)), 10);
        Assert.Equal(1, model.State[0] / (100 * Math.Exp(-5)), 1e-12);
    }

    private static void HoldOrder(Func<string, Action<double[], double>> formula, double order, double tolerance)
    {
        foreach (var row in PublishedTable.Read(PublishedTable.ClosedForms).Rows)
        {
            string problem = row["problem"];
            double time = PublishedTable.Number(row, "time");
            double Error(int steps)
            {
                // A time unit that makes every step the same whole number of seconds.
                double secondsPerUnit = steps * 1000 / time;
                var model = new ScalarModel(OneStepFormulas.Start(problem), formula(problem), secondsPerUnit, 1000).Run(time);
                Assert.Equal(steps, model.Steps.Count);
                return Math.Abs(model.State[Index(problem, row["quantity"])] - PublishedTable.Number(row, "value"));
            }

            double observed = Math.Log2(Error(200) / Error(400));
            Assert.True(
                Math.Abs(observed - order) < tolerance,
                $"{problem} {row["quantity"]} at {time}: observed order {observed}");
        }
    }

    // Only the chain has more than one quantity.
    private static int Index(string problem, string quantity) => problem is "chain" or "equal" ? quantity[0] - 'A' : 0;
}
