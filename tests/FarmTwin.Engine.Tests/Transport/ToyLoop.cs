using FarmTwin.Engine.Transport;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;

namespace FarmTwin.Engine.Tests.Transport;

/// <summary>
/// A fed fish tank, a filter and a sump with TAN and oxygen, solved three ways: jointly and implicitly as the farm does it, by
/// Runge-Kutta, and one process after another.
/// </summary>
/// <remarks>
/// A loop of the size of the example farm's: 0.75 kg of feed a day, of which 32 g N/kg is excreted and for which 400 g O2/kg is
/// respired, both with a daily swing; films by Best's flux law with an oxygen factor; diffusers in the tank and the sump.
/// Volumes L, flows L/h, grams and hours; concentrations g/L, shown in mg/L. Invented figures, no source.
/// </remarks>
internal static class ToyLoop
{
    public const int Tank = 0;
    private const int Filter = 1;
    private const int Sump = 2;
    private const int Nodes = 3;
    private const int OxygenAt = 3;

    private const double FlowLitresPerHour = 4800;
    private const double ExcretionGramsPerHour = 1.01;
    private const double RespirationGramsPerHour = 12.5;
    private const double Swing = 0.6;
    private const double FilmSquareMetres = 125;
    private const double TransferLitresPerHourSquareMetre = 0.43 * 1000 / 24;
    private const double CapacityGramsPerHourSquareMetre = 0.55 / 24;
    private const double HalfSaturationGramsPerLitre = 0.75e-3;
    private const double OxygenHalfSaturationGramsPerLitre = 0.6e-3;
    private const double OxygenPerNitrogen = 4.33;
    private const double SaturationGramsPerLitre = 7.9e-3;
    private const int Passes = 4;

    private static readonly double[] Litres = [4800, 250, 700];
    private static readonly double[] Aeration = [6400, 0, 2500];
    private static readonly (int From, int To)[] Pipes = [(Sump, Tank), (Tank, Filter), (Filter, Sump)];
    private static readonly double[] Start = [0.5e-3, 0.5e-3, 0.5e-3, 7e-3, 7e-3, 7e-3];

    /// <summary>State: TAN of the three basins, then oxygen, g/L, at each whole hour, by the joint solve.</summary>
    public static double[][] Joint(double stepHours, int hours)
    {
        var system = new FlowMatrix(new EliminationPlan(Nodes, Pipes));
        double[] flows = [FlowLitresPerHour, FlowLitresPerHour, FlowLitresPerHour];
        return March(stepHours, hours, (time, state) => JointStep(system, flows, state, time, stepHours));
    }

    /// <summary>The same by the classical Runge-Kutta method of MathNet.Numerics at a small step.</summary>
    public static double[][] RungeKutta(int hours)
    {
        const int stepsPerHour = 200;
        var rows = new double[hours + 1][];
        rows[0] = Start;
        for (int hour = 0; hour < hours; hour++)
        {
            Vector<double>[] course = MathNet.Numerics.OdeSolvers.RungeKutta.FourthOrder(
                Vector<double>.Build.DenseOfArray(rows[hour]), hour, hour + 1, stepsPerHour + 1, Slope);
            rows[hour + 1] = course[^1].ToArray();
        }

        return rows;
    }

    /// <summary>The same with the processes carried out one after another in each step, each exactly by itself.</summary>
    public static double[][] OneAfterAnother(double stepHours, int hours) =>
        March(stepHours, hours, (time, state) => SplitStep(state, time, stepHours));

    public static double Milligrams(double gramsPerLitre) => gramsPerLitre * 1000;

    public static double TanOf(double[] row) => Milligrams(row[Tank]);

    public static double OxygenOf(double[] row) => Milligrams(row[OxygenAt + Tank]);

    private static double[][] March(double stepHours, int hours, Action<double, double[]> step)
    {
        int perHour = (int)Math.Round(1 / stepHours);
        var rows = new double[hours + 1][];
        rows[0] = Start;
        double[] state = [.. Start];
        for (int hour = 0; hour < hours; hour++)
        {
            for (int i = 0; i < perHour; i++)
            {
                step(hour + (i * stepHours), state);
            }

            rows[hour + 1] = [.. state];
        }

        return rows;
    }

    private static void JointStep(FlowMatrix system, double[] flows, double[] state, double time, double hours)
    {
        double[] iterate = [.. state];
        for (int pass = 0; pass < Passes; pass++)
        {
            double film = FilmSquareMetres * Conductance(iterate[Filter], iterate[OxygenAt + Filter]);
            double tan = iterate[Filter];
            Solve(system, flows, state, iterate, 0, hours,
                node => node == Filter ? film : 0,
                node => node == Tank ? Excretion(time + hours) : 0);
            double used = film * iterate[Filter] * OxygenPerNitrogen / Math.Max(1e-6, iterate[OxygenAt + Filter]);
            double breathed = Respiration(time + hours) / Math.Max(1e-6, iterate[OxygenAt + Tank]);
            Solve(system, flows, state, iterate, OxygenAt, hours,
                node => Aeration[node] + (node == Filter ? used : 0) + (node == Tank ? breathed : 0),
                node => Aeration[node] * SaturationGramsPerLitre);
            if (Math.Abs(iterate[Filter] - tan) < 1e-12)
            {
                break;
            }
        }

        iterate.CopyTo(state, 0);
    }

    private static void Solve(
        FlowMatrix system, double[] flows, double[] state, double[] iterate, int offset, double hours, Func<int, double> loss, Func<int, double> source)
    {
        int[] nodes = [.. Enumerable.Range(0, Nodes)];
        var solution = new double[Nodes];
        system.Set([.. nodes.Select(node => (Litres[node] / hours) + FlowLitresPerHour)], flows);
        system.Solve(
            [.. nodes.Select(loss)],
            [.. nodes.Select(node => (Litres[node] * state[offset + node] / hours) + source(node))],
            solution);
        solution.CopyTo(iterate, offset);
    }

    private static Vector<double> Slope(double time, Vector<double> state)
    {
        var slope = new double[2 * Nodes];
        double film = FilmSquareMetres * Conductance(state[Filter], state[OxygenAt + Filter]) * state[Filter];
        for (int node = 0; node < Nodes; node++)
        {
            int upstream = node == Sump ? Filter : node == Tank ? Sump : Tank;
            double tan = FlowLitresPerHour * (state[upstream] - state[node]);
            double oxygen = (FlowLitresPerHour * (state[OxygenAt + upstream] - state[OxygenAt + node]))
                + (Aeration[node] * (SaturationGramsPerLitre - state[OxygenAt + node]));
            slope[node] = (tan + (node == Tank ? Excretion(time) : 0) - (node == Filter ? film : 0)) / Litres[node];
            slope[OxygenAt + node] = (oxygen - (node == Tank ? Respiration(time) : 0) - (node == Filter ? film * OxygenPerNitrogen : 0))
                / Litres[node];
        }

        return Vector<double>.Build.DenseOfArray(slope);
    }

    private static void SplitStep(double[] state, double time, double hours)
    {
        // Fish, air, films, pipes: each takes the whole step with what the one before left.
        state[Tank] += Excretion(time + hours) * hours / Litres[Tank];
        state[OxygenAt + Tank] = Math.Max(0, state[OxygenAt + Tank] - (Respiration(time + hours) * hours / Litres[Tank]));
        for (int node = 0; node < Nodes; node++)
        {
            double left = Math.Exp(-Aeration[node] * hours / Litres[node]);
            state[OxygenAt + node] = SaturationGramsPerLitre + ((state[OxygenAt + node] - SaturationGramsPerLitre) * left);
        }

        double rate = FilmSquareMetres * Conductance(state[Filter], state[OxygenAt + Filter]) / Litres[Filter];
        double taken = Math.Min(
            state[Filter] * (1 - Math.Exp(-rate * hours)), state[OxygenAt + Filter] / OxygenPerNitrogen);
        state[Filter] -= taken;
        state[OxygenAt + Filter] -= taken * OxygenPerNitrogen;
        double[] before = [.. state];
        for (int offset = 0; offset <= OxygenAt; offset += OxygenAt)
        {
            for (int node = 0; node < Nodes; node++)
            {
                int upstream = node == Sump ? Filter : node == Tank ? Sump : Tank;
                double share = 1 - Math.Exp(-FlowLitresPerHour * hours / Litres[node]);
                state[offset + node] = before[offset + node] + (share * (before[offset + upstream] - before[offset + node]));
            }
        }
    }

    private static double Excretion(double time) => ExcretionGramsPerHour * Daily(time);

    private static double Respiration(double time) => RespirationGramsPerHour * Daily(time);

    private static double Daily(double time) => 1 + (Swing * Math.Sin(2 * Math.PI * (time - 9) / 24));

    // Best's flux law over the concentration, L/(h m²), its capacity throttled by oxygen.
    private static double Conductance(double tan, double oxygen)
    {
        double capacity = CapacityGramsPerHourSquareMetre * oxygen / (OxygenHalfSaturationGramsPerLitre + oxygen);
        double scaled = capacity / TransferLitresPerHourSquareMetre;
        double sum = tan + HalfSaturationGramsPerLitre + scaled;
        return 2 * capacity / (sum + Math.Sqrt((sum * sum) - (4 * scaled * tan)));
    }
}
