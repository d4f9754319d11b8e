using FarmTwin.Farm.Fish;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Fish;

public class MetabolismTests
{
    private static readonly FishParameters Nile = FishLibrary.Nile;

    [Fact]
    public void Oxygen_carbon_dioxide_and_growth_do_not_depend_on_the_step()
    {
        ConstantTank hour = Run(1);
        foreach (double step in new[] { 0.25, 1 / 60.0 })
        {
            ConstantTank fine = Run(step);
            Assert.Equal(hour.OxygenGrams, fine.OxygenGrams, hour.OxygenGrams * 1e-11);
            Assert.Equal(hour.CarbonGrams, fine.CarbonGrams, hour.CarbonGrams * 1e-11);
            Assert.Equal(hour.Cohort.MeanGrams, fine.Cohort.MeanGrams, hour.Cohort.MeanGrams * 1e-11);
            Assert.Equal(hour.Cohort.FedGrams, fine.Cohort.FedGrams, hour.Cohort.FedGrams * 1e-11);

            // The nitrogen of fasting tissue is spread evenly within a step: the only trace of the step.
            Assert.Equal(hour.TanGrams, fine.TanGrams, hour.TanGrams * 1e-7);
        }

        static ConstantTank Run(double stepHours)
        {
            var tank = new ConstantTank(Nile, FishLibrary.Clean(26), 45, 50) { StepHours = stepHours };
            tank.Run(40);
            return tank;
        }
    }

    [Fact]
    public void An_impulse_through_two_stages_follows_its_closed_form()
    {
        const double k = 0.25;
        double first = 1;
        double second = 0;
        double released = 0;
        double mean = 0;
        for (int i = 0; i < 400; i++)
        {
            double part = TwoStageLag.Advance(ref first, ref second, k, 0, 1);
            mean += part * (i + 0.5);
            released += part;
            double age = k * (i + 1);
            Assert.Equal(1 - (Math.Exp(-age) * (1 + age)), released, 12);
        }

        Assert.Equal(2 / k, mean, 0.02);
    }

    [Fact]
    public void A_constant_inflow_through_two_stages_matches_a_fine_integration()
    {
        double first = 0.3;
        double second = 0.7;
        double released = TwoStageLag.Advance(ref first, ref second, 0.25, 0.1, 5);
        double[][] path = [.. MathNet.Numerics.OdeSolvers.RungeKutta.FourthOrder(
            MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense([0.3, 0.7, 0]), 0, 5, 2001,
            (_, y) => MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(
                [0.1 - (0.25 * y[0]), 0.25 * (y[0] - y[1]), 0.25 * y[1]])).Select(v => v.ToArray())];
        Assert.Equal(path[^1][0], first, 10);
        Assert.Equal(path[^1][1], second, 10);
        Assert.Equal(path[^1][2], released, 10);
    }

    [Fact]
    public void A_starved_fish_loses_weight_as_the_fine_integration_says()
    {
        var cohort = new Cohort("c", 0, 1, 100, 0, 0);
        StepResult step = Metabolism.Step(cohort, Nile, 240, FishLibrary.Clean(25));
        double[] path = [.. MathNet.Numerics.OdeSolvers.RungeKutta.FourthOrder(
            100.0, 0, 10, 2001, (_, w) => -Nile.ConversionGramsPerGram * Feeding.MaintenanceGramsPerDay(Nile, w, 25))];
        Assert.Equal(path[^1], cohort.MeanGrams, 8);
        Assert.Equal(100 - cohort.MeanGrams, step.WeightLossGrams, 10);
        Assert.Equal(step.WeightLossGrams * 0.024, step.TanGrams + cohort.DissolvedNitrogenFirstStageGrams + cohort.DissolvedNitrogenSecondStageGrams, 12);
        Assert.Equal(step.WeightLossGrams * 0.003, step.Dissolved.Potassium, 12);
    }

    [Theory]
    [InlineData(new[] { 8, 12, 16 }, 1.62, 17, 7)]
    [InlineData(new[] { 9 }, 2.07, 12, 8)]
    public void The_coarse_lag_has_the_printed_peak(int[] meals, double peakOverMean, int peakHour, int lowHour)
    {
        var hours = new List<double>();
        PrintedRun.Run(Nile, 300, 10, FishLibrary.Clean(28), 1, 1, meals, hours);
        AssertDiel(hours, peakOverMean, peakOverMean * 0.03, peakHour, lowHour);
    }

    [Theory]
    [InlineData(new[] { 8, 12, 16 }, 1.614, 18, 7)]
    [InlineData(new[] { 9 }, 2.047, 12, 8)]
    public void The_exact_lag_peaks_later_after_three_meals_and_lower(int[] meals, double peakOverMean, int peakHour, int lowHour)
    {
        var tank = new ConstantTank(Nile, FishLibrary.Clean(28), 1, 300) { MealHours = meals };
        tank.Run(10);
        AssertDiel(tank.TanByHour, peakOverMean, 0.001, peakHour, lowHour);
    }

    [Fact]
    public void Hourly_feeding_gives_a_flat_day()
    {
        var tank = new ConstantTank(Nile, FishLibrary.Clean(28), 1, 300) { MealHours = [.. Enumerable.Range(0, 24)] };
        tank.Run(10);
        double[] day = [.. tank.TanByHour.TakeLast(24)];
        Assert.InRange(day.Max() / day.Min(), 1, 1.02);
    }

    [Fact]
    public void A_preview_tells_what_the_step_does_and_changes_nothing()
    {
        var cohort = new Cohort("c", 0, 45, 120, 0.12, 0);
        Feeding.Meal(cohort, Nile, FishLibrary.Feed, 80, 0.5, 0.03, FishLibrary.Clean(27));
        Cohort before = cohort.Clone();
        StepResult preview = Metabolism.Preview(cohort, Nile, 0.7, FishLibrary.Clean(27));
        Assert.Equivalent(before, cohort, strict: true);
        Assert.Equal(preview, Metabolism.Step(cohort, Nile, 0.7, FishLibrary.Clean(27)));
        cohort.CopyFrom(before);
        Assert.Equivalent(before, cohort, strict: true);
    }

    [Fact]
    public void Resting_oxygen_of_a_hundred_gram_fish_is_125_milligrams_a_kilogram_and_hour()
    {
        var cohort = new Cohort("c", 0, 1, 100, 0, 0);
        StepResult step = Metabolism.Step(cohort, Nile, 0.01, FishLibrary.Clean(28));
        Assert.Equal(125, step.OxygenDemandGrams * 1000 / 0.1 / 0.01, 1.0);
        Assert.Equal(1.375, step.CarbonDioxideCarbonGrams * UnitConstants.CarbonDioxidePerCarbon / step.OxygenDemandGrams, 0.001);
    }

    [Fact]
    public void The_published_regression_is_a_low_bound_and_refuses_what_was_not_tested()
    {
        Assert.Equal(227.0, OxygenCheck.RegressionMilligramsPerKilogramHour(100, 28), 0.1);
        Assert.Equal(460.6, OxygenCheck.RegressionMilligramsPerKilogramHour(3, 28), 0.1);
        Assert.Throws<ArgumentOutOfRangeException>(() => OxygenCheck.RegressionMilligramsPerKilogramHour(300, 28));
        Assert.Throws<ArgumentOutOfRangeException>(() => OxygenCheck.RegressionMilligramsPerKilogramHour(100, 20));
    }

    [Theory]
    [InlineData(6, 1, 400, 60, 12.5)]
    [InlineData(6, 1, 400, 20, 37.5)]
    [InlineData(6, 3, 300, 20, 30)]
    public void Minutes_without_air_follow_from_density(double from, double to, double use, double density, double minutes) =>
        Assert.Equal(minutes, OxygenCheck.MinutesToOxygen(from, to, use, density), 9);

    [Fact]
    public void Maintenance_of_carp_between_12_and_30_degrees_has_a_Q10_of_2_4()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Read("fish-carp-maintenance").Rows;
        double ratio = Number(rows[^1], "maintenancePercent") / Number(rows[0], "maintenancePercent");
        double q10 = Math.Pow(ratio, 10 / (Number(rows[^1], "celsius") - Number(rows[0], "celsius")));
        Assert.Equal(2.38, q10, 0.05);
        Assert.InRange(Nile.MaintenanceQ10, 2.0, 2.4);
    }

    [Fact]
    public void A_step_and_a_meal_allocate_nothing()
    {
        var cohort = new Cohort("c", 0, 45, 120, 0.12, 0);
        FishWater water = FishLibrary.Clean(27);
        Live(10);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Live(1000);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);

        void Live(int times)
        {
            for (int i = 0; i < times; i++)
            {
                Feeding.Meal(cohort, Nile, FishLibrary.Feed, 1, 0.1, 0.03, water);
                Metabolism.Preview(cohort, Nile, 1, water);
                Metabolism.Step(cohort, Nile, 1, water);
                Survival.Step(cohort, Nile, 1, water);
            }
        }
    }

    private static void AssertDiel(List<double> hours, double peakOverMean, double tolerance, int peakHour, int lowHour)
    {
        double[] day = [.. hours.TakeLast(24)];
        Assert.Equal(peakOverMean, day.Max() / day.Average(), tolerance);
        Assert.Equal(peakHour, Array.IndexOf(day, day.Max()));
        Assert.Equal(lowHour, Array.IndexOf(day, day.Min()));
    }
}
