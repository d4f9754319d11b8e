using CsCheck;
using FarmTwin.Engine.Transport;
using MathNet.Numerics.LinearAlgebra;

namespace FarmTwin.Engine.Tests.Transport;

public class LaneSystemTests
{
    [Fact]
    public void Any_network_solves_as_a_dense_factorization_with_pivoting_does() => RandomNetwork.Any.Sample(network =>
    {
        LaneSystem solved = network.Solve();
        for (int lane = 0; lane < network.Lanes; lane++)
        {
            Vector<double> dense = Dense(network, lane);
            double scale = dense.AbsoluteMaximum();
            for (int node = 0; node < network.Nodes; node++)
            {
                Assert.Equal(dense[node], solved.Solution[(node * network.Lanes) + lane], scale * 1e-10);
            }
        }
    }, iter: 2000, threads: 1);

    [Fact]
    public void What_enters_is_what_stays_and_what_is_lost_up_to_a_thousand_turnovers_a_step() => RandomNetwork.Any.Sample(network =>
    {
        LaneSystem solved = network.Solve();
        for (int lane = 0; lane < network.Lanes; lane++)
        {
            double entered = 0;
            double left = 0;
            for (int node = 0; node < network.Nodes; node++)
            {
                int at = (node * network.Lanes) + lane;
                entered += network.Right[at];
                left += solved.Solution[at] * (network.VolumeOverTime[node] + network.Loss[at]);
            }

            Assert.True(Math.Abs(entered - left) <= 1e-12 * entered, $"{entered:R} entered, {left:R} is there or lost");
        }
    }, iter: 2000, threads: 1);

    [Fact]
    public void Nothing_is_negative_at_a_billion_turnovers_a_step() => RandomNetwork.Torrential.Sample(network =>
        network.Solve().Solution.All(c => c >= 0 && double.IsFinite(c)), iter: 2000, threads: 1);

    [Fact]
    public void A_dry_node_stays_empty_and_disturbs_nobody() => RandomNetwork.Any.Sample(network =>
    {
        double[] solution = network.Solve().Solution;
        for (int node = 0; node < network.Nodes; node++)
        {
            for (int lane = 0; lane < network.Lanes && network.VolumeOverTime[node] <= 0; lane++)
            {
                Assert.Equal(0, solution[(node * network.Lanes) + lane]);
            }
        }
    }, iter: 500, threads: 1);

    [Fact]
    public void A_lane_is_bit_for_bit_what_it_would_be_alone() => RandomNetwork.Any.Sample(network =>
    {
        LaneSystem together = network.Solve();
        var alone = new LaneSystem(new EliminationPlan(network.Nodes, network.Edges), 4);
        for (int lane = 0; lane < network.Lanes; lane++)
        {
            network.Fill(alone, lane);
            alone.Solve(network.Flows);
            for (int node = 0; node < network.Nodes; node++)
            {
                Assert.Equal(alone.Solution[node * 4], together.Solution[(node * network.Lanes) + lane]);
            }
        }
    }, iter: 500, threads: 1);

    [Fact]
    public void A_second_solve_remembers_nothing_of_the_first() => RandomNetwork.Any.Sample(network =>
    {
        LaneSystem once = network.Solve();
        LaneSystem twice = network.Solve();
        network.Fill(twice);
        twice.Solve(network.Flows);
        Assert.Equal(once.Solution, twice.Solution);
    }, iter: 300, threads: 1);

    [Fact]
    public void Solving_allocates_nothing()
    {
        var system = new LaneSystem(new EliminationPlan(3, [(0, 1), (1, 2), (2, 0)]), 8);
        system.Diagonal.AsSpan().Fill(2);
        double[] flows = [1, 1, 1];
        system.Solve(flows);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            system.Solve(flows);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(6)]
    public void Lanes_come_in_fours(int lanes) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new LaneSystem(new EliminationPlan(1, []), lanes));

    private static Vector<double> Dense(RandomNetwork network, int lane)
    {
        Matrix<double> matrix = Matrix<double>.Build.Dense(network.Nodes, network.Nodes);
        Vector<double> right = Vector<double>.Build.Dense(network.Nodes);
        for (int node = 0; node < network.Nodes; node++)
        {
            double diagonal = network.DiagonalOf(node, lane);
            matrix[node, node] = diagonal > 0 ? diagonal : 1;
            right[node] = network.Right[(node * network.Lanes) + lane];
        }

        for (int e = 0; e < network.Edges.Length; e++)
        {
            matrix[network.Edges[e].To, network.Edges[e].From] -= network.Flows[e];
        }

        return matrix.LU().Solve(right);
    }
}
