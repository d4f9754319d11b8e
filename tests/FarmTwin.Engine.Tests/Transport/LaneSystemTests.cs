using CsCheck;
using FarmTwin.Engine.Transport;
using MathNet.Numerics.LinearAlgebra;

namespace FarmTwin.Engine.Tests.Transport;

public class LaneSystemTests
{
    private const int Lanes = LaneSystem.Lanes;

    [Fact]
    public void Any_network_solves_as_a_dense_factorization_with_pivoting_does() => RandomNetwork.Any.Sample(network =>
    {
        double[] solved = network.Solve();
        for (int lane = 0; lane < Lanes; lane++)
        {
            Vector<double> dense = Dense(network, lane);
            double scale = dense.AbsoluteMaximum();
            for (int node = 0; node < network.Nodes; node++)
            {
                Assert.Equal(dense[node], solved[(node * Lanes) + lane], scale * 1e-10);
            }
        }
    }, iter: 2000, threads: 1);

    [Fact]
    public void What_enters_is_what_stays_and_what_is_lost_up_to_a_thousand_turnovers_a_step() => RandomNetwork.Any.Sample(network =>
    {
        double[] solved = network.Solve();
        for (int lane = 0; lane < Lanes; lane++)
        {
            double entered = 0;
            double left = 0;
            for (int node = 0; node < network.Nodes; node++)
            {
                int at = (node * Lanes) + lane;
                entered += network.Right[at];
                left += solved[at] * (network.VolumeOverTime[node] + network.Loss[at]);
            }

            Assert.True(Math.Abs(entered - left) <= 1e-12 * entered, $"{entered:R} entered, {left:R} is there or lost");
        }
    }, iter: 2000, threads: 1);

    [Fact]
    public void Nothing_is_negative_at_a_billion_turnovers_a_step() => RandomNetwork.Torrential.Sample(network =>
        network.Solve().All(c => c >= 0 && double.IsFinite(c)), iter: 2000, threads: 1);

    [Fact]
    public void A_dry_node_stays_empty_and_disturbs_nobody() => RandomNetwork.Any.Sample(network =>
    {
        double[] solution = network.Solve();
        for (int node = 0; node < network.Nodes; node++)
        {
            for (int lane = 0; lane < Lanes && network.VolumeOverTime[node] <= 0; lane++)
            {
                Assert.Equal(0, solution[(node * Lanes) + lane]);
            }
        }
    }, iter: 500, threads: 1);

    [Fact]
    public void A_lane_is_bit_for_bit_what_it_would_be_in_the_place_of_any_other() => RandomNetwork.Any.Sample(network =>
    {
        double[] solved = network.Solve();
        var system = new LaneSystem(new EliminationPlan(network.Nodes, network.Edges));
        var loss = new double[network.Loss.Length];
        var turned = new double[network.Loss.Length];
        for (int turn = 1; turn < Lanes; turn++)
        {
            for (int i = 0; i < loss.Length; i++)
            {
                int from = (i / Lanes * Lanes) + ((i + turn) % Lanes);
                loss[i] = network.Loss[from];
                system.RightHandSide[i] = network.Right[from];
            }

            system.Solve(network.Matrix(), loss, turned, Lanes);
            for (int i = 0; i < loss.Length; i++)
            {
                Assert.Equal(solved[(i / Lanes * Lanes) + ((i + turn) % Lanes)], turned[i]);
            }
        }
    }, iter: 100, threads: 1);

    [Fact]
    public void Sixteen_lanes_together_are_what_each_is_alone() => RandomNetwork.Any.Sample(network =>
    {
        double[] solved = network.Solve();
        FlowMatrix matrix = network.Matrix();
        var alone = new double[network.Nodes];
        for (int lane = 0; lane < Lanes; lane++)
        {
            double[] loss = [.. Enumerable.Range(0, network.Nodes).Select(n => network.Loss[(n * Lanes) + lane])];
            double[] right = [.. Enumerable.Range(0, network.Nodes).Select(n => network.Right[(n * Lanes) + lane])];
            matrix.Solve(loss, right, alone);
            for (int node = 0; node < network.Nodes; node++)
            {
                Assert.Equal(alone[node], solved[(node * Lanes) + lane]);
            }
        }
    }, iter: 300, threads: 1);

    [Fact]
    public void A_second_solve_remembers_nothing_of_the_first() => RandomNetwork.Any.Sample(network =>
    {
        var system = new LaneSystem(new EliminationPlan(network.Nodes, network.Edges));
        Assert.Equal(network.Solve(system), network.Solve(system));
    }, iter: 300, threads: 1);

    [Fact]
    public void Rows_may_lie_further_apart_than_their_lanes()
    {
        var plan = new EliminationPlan(2, [(0, 1)]);
        var matrix = new FlowMatrix(plan);
        matrix.Set([2, 1], [1]);
        var system = new LaneSystem(plan);
        Array.Fill(system.RightHandSide, 4);
        var solution = new double[Lanes + 20];
        system.Solve(matrix, new double[Lanes + 20], solution, 20);
        Assert.Equal(2, solution[0]);
        Assert.Equal(6, solution[20]);
        Assert.Throws<ArgumentOutOfRangeException>(() => system.Solve(matrix, new double[Lanes + 20], solution, Lanes - 1));
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        var plan = new EliminationPlan(3, [(0, 1), (1, 2), (2, 0)]);
        var system = new LaneSystem(plan);
        var matrix = new FlowMatrix(plan);
        double[] loss = new double[3 * Lanes];
        double[] solution = new double[3 * Lanes];
        matrix.Set([2, 2, 2], [1, 1, 1]);
        system.Solve(matrix, loss, solution, Lanes);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            system.Solve(matrix, loss, solution, Lanes);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static Vector<double> Dense(RandomNetwork network, int lane)
    {
        Matrix<double> matrix = Matrix<double>.Build.Dense(network.Nodes, network.Nodes);
        Vector<double> right = Vector<double>.Build.Dense(network.Nodes);
        for (int node = 0; node < network.Nodes; node++)
        {
            double turnover = network.TurnoverOf(node);
            matrix[node, node] = turnover > 0 ? turnover + network.Loss[(node * Lanes) + lane] : 1;
            right[node] = network.Right[(node * Lanes) + lane];
        }

        for (int e = 0; e < network.Edges.Length; e++)
        {
            matrix[network.Edges[e].To, network.Edges[e].From] -= network.Flows[e];
        }

        return matrix.LU().Solve(right);
    }
}
