using FarmTwin.Farm.Biofilter;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;

namespace FarmTwin.Farm.Tests.Biofilter;

/// <summary>The chain against SciPy's solver (recorded) and against the Runge–Kutta of MathNet.Numerics.</summary>
public sealed class OutsideSolverTests
{
    private const int Days = 60;

    public static TheoryData<string> Scenarios => ["warm", "cool-acid", "seeded"];

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void The_kernels_under_a_Runge_Kutta_at_a_small_step_give_what_SciPy_recorded(string scenario)
    {
        IReadOnlyDictionary<string, string>[] recorded = Recorded(scenario);
        Vector<double>[] course = RungeKuttaOf(scenario);
        int perDay = (course.Length - 1) / Days;
        for (int day = 0; day <= Days; day++)
        {
            string[] columns = ["tan", "nitrite", "nitrate", "x_a", "x_b"];
            for (int i = 0; i < columns.Length; i++)
            {
                double expected = PublishedTable.Number(recorded[day], columns[i]);
                Assert.True(
                    Math.Abs(course[day * perDay][i] - expected) <= 1e-9 + (1e-6 * Math.Abs(expected)),
                    $"{scenario} day {day} {columns[i]}: {course[day * perDay][i]} against {expected}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void The_hourly_joint_solve_follows_the_recorded_course(string scenario)
    {
        IReadOnlyDictionary<string, string>[] recorded = Recorded(scenario);
        StartUpCourse course = TankOf(scenario).Implicit(Days, 1);
        double tanPeak = recorded.Max(r => PublishedTable.Number(r, "tan"));
        double nitritePeak = recorded.Max(r => PublishedTable.Number(r, "nitrite"));
        Assert.InRange(course.Tan.Max() / tanPeak, 0.97, 1.03);
        Assert.InRange(course.Nitrite.Max() / nitritePeak, 0.97, 1.03);
        Assert.InRange(course.Nitrate[Days] / PublishedTable.Number(recorded[Days], "nitrate"), 0.98, 1.02);
    }

    [Fact]
    public void The_error_of_the_joint_solve_halves_with_the_step()
    {
        Vector<double>[] exact = RungeKuttaOf("warm");
        int day20 = (exact.Length - 1) / Days * 20;
        StartUpTank tank = TankOf("warm");
        double hour = Math.Abs(tank.Implicit(20, 1).Nitrite[20] - exact[day20][1]);
        double half = Math.Abs(tank.Implicit(20, 0.5).Nitrite[20] - exact[day20][1]);
        Assert.InRange(hour / half, 1.7, 2.3);
    }

    private static IReadOnlyDictionary<string, string>[] Recorded(string scenario) =>
        [.. PublishedTable.Read("filter-nitrification-chain").Rows.Where(r => r["scenario"] == scenario)];

    private static StartUpTank TankOf(string scenario) => scenario switch
    {
        "warm" => new(40, 25, 7.4, 6.5, 1e-4, 1e-4) { LoadPerDay = _ => 1 },
        "cool-acid" => new(40, 18, 6.8, 6.5, 1e-3, 1e-3) { LoadPerDay = _ => 0.5 },
        _ => new(40, 25, 7.4, 6.5, 2.51e-2, 2.51e-2) { LoadPerDay = _ => 1 },
    };

    private static Vector<double>[] RungeKuttaOf(string scenario)
    {
        StartUpTank tank = TankOf(scenario);
        Film film = FilmGrowth.AtShare(StartUpTank.Parameters, tank.StartA, tank.StartB);
        Vector<double> start = Vector<double>.Build.Dense(
            [0, 0, 0, film.AmmoniaOxidizersGramsCodPerSquareMetre, film.NitriteOxidizersGramsCodPerSquareMetre]);
        return RungeKutta.FourthOrder(start, 0, Days, (Days * 200) + 1, (t, y) => Vector<double>.Build.Dense(tank.Rates(t, y.ToArray())));
    }
}
