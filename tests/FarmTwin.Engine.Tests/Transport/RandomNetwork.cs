using CsCheck;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Engine.Tests.Transport;

/// <summary>A flow network with random edges, flows, losses, sources and dry nodes, set up for one step.</summary>
internal sealed class RandomNetwork
{
    private const int Lanes = LaneSystem.Lanes;

    private RandomNetwork(int nodes, (int From, int To)[] edges, double[] flows, double[] volumeOverTime, double[] loss, double[] right)
    {
        Nodes = nodes;
        Edges = edges;
        Flows = flows;
        VolumeOverTime = volumeOverTime;
        Loss = loss;
        Right = right;
    }

    /// <summary>Up to twelve nodes and thirty edges, parallel ones among them; a fifth of the nodes are dry.</summary>
    public static Gen<RandomNetwork> Any => Gen.Select(Gen.Int[1, 12], Gen.Int[0, 30], Gen.Int[0, int.MaxValue]).Select(
        (nodes, edges, seed) => Make(nodes, edges, seed, largestTurnovers: 1000));

    /// <summary>The same with a billion turnovers a step.</summary>
    public static Gen<RandomNetwork> Torrential => Gen.Select(Gen.Int[2, 12], Gen.Int[2, 30], Gen.Int[0, int.MaxValue]).Select(
        (nodes, edges, seed) => Make(nodes, edges, seed, largestTurnovers: 1e9));

    public int Nodes { get; }

    public (int From, int To)[] Edges { get; }

    public double[] Flows { get; }

    /// <summary>V₁/dt by node; 0 for a dry one.</summary>
    public double[] VolumeOverTime { get; }

    /// <summary>k, [node × lanes + lane].</summary>
    public double[] Loss { get; }

    /// <summary>V₀ c₀/dt + s, [node × lanes + lane].</summary>
    public double[] Right { get; }

    /// <summary>V₁/dt + Q_out; 0 for a dry node.</summary>
    public double TurnoverOf(int node)
    {
        double outflow = 0;
        for (int e = 0; e < Edges.Length; e++)
        {
            outflow += Edges[e].From == node ? Flows[e] : 0;
        }

        return VolumeOverTime[node] > 0 ? VolumeOverTime[node] + outflow : 0;
    }

    /// <summary>What all lanes share.</summary>
    public FlowMatrix Matrix()
    {
        var matrix = new FlowMatrix(new EliminationPlan(Nodes, Edges));
        matrix.Set([.. Enumerable.Range(0, Nodes).Select(TurnoverOf)], Flows);
        return matrix;
    }

    /// <summary>The concentrations, [node × lanes + lane].</summary>
    public double[] Solve() => Solve(new LaneSystem(new EliminationPlan(Nodes, Edges)));

    /// <summary>The same by a system that may have solved others before.</summary>
    public double[] Solve(LaneSystem system)
    {
        var solution = new double[Right.Length];
        Right.CopyTo(system.RightHandSide, 0);
        system.Solve(Matrix(), Loss, solution, LaneSystem.Lanes);
        return solution;
    }

    public override string ToString() => $"{Nodes} nodes, {Edges.Length} edges, {VolumeOverTime.Count(v => v <= 0)} dry";

    private static RandomNetwork Make(int nodes, int edgeCount, int seed, double largestTurnovers)
    {
        var random = new Random(seed);
        double[] volume = [.. Enumerable.Range(0, nodes).Select(_ => random.NextDouble() < 0.2 ? 0 : Math.Pow(10, 4 * random.NextDouble()))];
        (int, int)[] edges = nodes < 2 ? [] : [.. Enumerable.Range(0, edgeCount).Select(_ => Pair(random, nodes))];
        double[] flows = [.. edges.Select(e => volume[e.Item1] <= 0 || volume[e.Item2] <= 0 || random.NextDouble() < 0.1
            ? 0
            : volume[e.Item1] * Math.Pow(largestTurnovers, random.NextDouble()) / edgeCount)];
        double[] loss = [.. Enumerable.Range(0, nodes * Lanes).Select(_ => random.NextDouble() < 0.3 ? 0 : 1000 * random.NextDouble())];
        double[] right = [.. Enumerable.Range(0, nodes * Lanes).Select(i =>
            volume[i / Lanes] <= 0 || random.NextDouble() < 0.2 ? 0 : 1000 * random.NextDouble())];
        return new RandomNetwork(nodes, edges, flows, volume, loss, right);
    }

    private static (int From, int To) Pair(Random random, int nodes)
    {
        int from = random.Next(nodes);
        int to = random.Next(nodes - 1);
        return (from, to >= from ? to + 1 : to);
    }
}
