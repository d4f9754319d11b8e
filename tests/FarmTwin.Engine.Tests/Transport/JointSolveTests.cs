using Xunit.Abstractions;

namespace FarmTwin.Engine.Tests.Transport;

/// <summary>The heart of the stepping: what acts within minutes is solved at once, so an hour's step tells what a minute's does.</summary>
public class JointSolveTests(ITestOutputHelper output)
{
    private const int Hours = 72;
    private static readonly double[][] Truth = ToyLoop.RungeKutta(Hours);

    [Theory]
    [InlineData(60, 0.06, 0.15)]
    [InlineData(15, 0.02, 0.04)]
    [InlineData(1, 0.002, 0.003)]
    public void The_joint_solve_tells_ammonia_and_oxygen_as_Runge_Kutta_does_at_any_step(int minutes, double tanWithin, double oxygenWithin)
    {
        double[][] course = ToyLoop.Joint(minutes / 60.0, Hours);
        double tan = 0;
        double oxygen = 0;
        for (int hour = 24; hour <= Hours; hour++)
        {
            tan = Math.Max(tan, Math.Abs(ToyLoop.TanOf(course[hour]) - ToyLoop.TanOf(Truth[hour])));
            oxygen = Math.Max(oxygen, Math.Abs(ToyLoop.OxygenOf(course[hour]) - ToyLoop.OxygenOf(Truth[hour])));
        }

        output.WriteLine($"{minutes} min: TAN within {tan:0.0000}, oxygen within {oxygen:0.0000} mg/L");
        Assert.InRange(tan, 0, tanWithin);
        Assert.InRange(oxygen, 0, oxygenWithin);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(15)]
    [InlineData(1)]
    public void The_day_s_means_are_one_ammonia_and_one_oxygen_at_all_three_steps(int minutes)
    {
        double[][] course = ToyLoop.Joint(minutes / 60.0, Hours);
        double tan = course[(Hours - 23)..].Average(ToyLoop.TanOf);
        double oxygen = course[(Hours - 23)..].Average(ToyLoop.OxygenOf);
        output.WriteLine($"{minutes} min: mean TAN {tan:0.000}, mean oxygen {oxygen:0.000} mg/L");
        Assert.InRange(tan, 1.1, 1.3);
        Assert.InRange(oxygen, 5.9, 6.1);
        Assert.Equal(Truth[(Hours - 23)..].Average(ToyLoop.TanOf), tan, 0.01);
        Assert.Equal(Truth[(Hours - 23)..].Average(ToyLoop.OxygenOf), oxygen, 0.02);
    }

    [Fact]
    public void The_error_falls_with_the_step_in_the_first_order()
    {
        double[] errors = [.. new[] { 30.0, 15, 7.5, 3.75, 1.875 }.Select(minutes => Error(ToyLoop.Joint(minutes / 60, Hours)))];
        for (int i = 1; i < errors.Length; i++)
        {
            double order = Math.Log2(errors[i - 1] / errors[i]);
            output.WriteLine($"error {errors[i]:0.000000} mg/L, observed order {order:0.000}");
            Assert.InRange(order, 0.85, 1.15);
        }
    }

    [Fact]
    public void One_process_after_another_is_absurd_at_an_hour()
    {
        double[] error = [.. new[] { 60.0, 15, 1 }.Select(minutes => Error(ToyLoop.OneAfterAnother(minutes / 60, Hours)))];
        double[] tan = [.. new[] { 60.0, 15, 1 }.Select(m => ToyLoop.TanOf(ToyLoop.OneAfterAnother(m / 60, Hours)[^1]))];
        double[] oxygen = [.. new[] { 60.0, 15, 1 }.Select(m => ToyLoop.OxygenOf(ToyLoop.OneAfterAnother(m / 60, Hours)[^1]))];
        output.WriteLine($"60/15/1 min: TAN {string.Join(" / ", tan.Select(t => t.ToString("0.00")))}, oxygen {string.Join(" / ", oxygen.Select(t => t.ToString("0.00")))} mg/L; largest errors {string.Join(" / ", error.Select(t => t.ToString("0.00")))}");
        Assert.True(error[0] > 10 * Error(ToyLoop.Joint(1, Hours)), $"split at an hour is off by {error[0]} mg/L");
        Assert.True(error[0] > 1);
    }

    // Largest difference of tank TAN or oxygen from Runge-Kutta at the whole hours after the first day, mg/L.
    private static double Error(double[][] course)
    {
        double error = 0;
        for (int hour = 24; hour <= Hours; hour++)
        {
            error = Math.Max(error, Math.Abs(ToyLoop.TanOf(course[hour]) - ToyLoop.TanOf(Truth[hour])));
            error = Math.Max(error, Math.Abs(ToyLoop.OxygenOf(course[hour]) - ToyLoop.OxygenOf(Truth[hour])));
        }

        return error;
    }
}
