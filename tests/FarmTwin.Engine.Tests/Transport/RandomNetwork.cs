using CsCheck;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Engine.Tests.Transport;

/// <summary>A flow network with random edges, flows, losses, sources and dry nodes, set up for one step.</summary>
internal sealed class RandomNetwork
{
    private RandomNetwork(int nodes, int lanes, (int From, int To)[] edges, double[] flows, double[] volumeOverTime, double[] loss, double[] right)
    {
        Nodes = nodes;
        Lanes = lanes;
        Edges = edges;
        Flows = flows;
        VolumeOverTime = volumeOverTime;
        Loss = loss;
        Right = right;
    }

    /// <summary>Up to twelve nodes and thirty edges, parallel ones among them; a fifth of the nodes are dry.</summary>
    public static Gen<RandomNetwork> Any => Gen.Select(Gen.Int[1, 12], Gen.Int[1, 2], Gen.Int[0, 30], Gen.Int[0, int.MaxValue]).Select(
        (nodes, blocks, edges, seed) => Make(nodes, 4 * blocks, edges, seed, largestTurnovers: 1000));

    /// <summary>The same with a billion turnovers a step.</summary>
    public static Gen<RandomNetwork> Torrential => Gen.Select(Gen.Int[2, 12], Gen.Int[2, 30], Gen.Int[0, int.MaxValue]).Select(
        (nodes, edges, seed) => Make(nodes, 4, edges, seed, largestTurnovers: 1e9));

    public int Nodes { get; }

    public int Lanes { get; }

    public (int From, int To)[] Edges { get; }

    public double[] Flows { get; }

    /// <summary>V₁/dt by node; 0 for a dry one.</summary>
    public double[] VolumeOverTime { get; }

    /// <summary>k, [node × lanes + lane].</summary>
    public double[] Loss { get; }

    /// <summary>V₀ c₀/dt + s, [node × lanes + lane].</summary>
    public double[] Right { get; }

    public double DiagonalOf(int node, int lane)
    {
        if (VolumeOverTime[node] <= 0)
        {
            return 0;
        }

        double outflow = 0;
        for (int e = 0; e < Edges.Length; e++)
        {
            outflow += Edges[e].From == node ? Flows[e] : 0;
        }

        return VolumeOverTime[node] + outflow + Loss[(node * Lanes) + lane];
    }

    public LaneSystem Solve()
    {
        var system = new LaneSystem(new EliminationPlan(Nodes, Edges), Lanes);
        Fill(system);
        system.Solve(Flows);
        return system;
    }

    /// <summary>Writes the step into a system; <paramref name="onlyLane"/> leaves every other lane at 1 and 0.</summary>
    public void Fill(LaneSystem system, int onlyLane = -1)
    {
        for (int node = 0; node < Nodes; node++)
        {
            for (int lane = 0; lane < system.Lanes; lane++)
            {
                int of = onlyLane < 0 ? lane : onlyLane;
                bool used = onlyLane < 0 || lane == 0;
                int at = (node * system.Lanes) + lane;
                system.Diagonal[at] = used ? DiagonalOf(node, of) : 1;
                system.RightHandSide[at] = used ? Right[(node * Lanes) + of] : 0;
            }
        }
    }

    public override string ToString() => $"{Nodes} nodes, {Edges.Length} edges, {VolumeOverTime.Count(v => v <= 0)} dry";

    private static RandomNetwork Make(int nodes, int lanes, int edgeCount, int seed, double largestTurnovers)
    {
        var random = new Random(seed);
        double[] volume = [.. Enumerable.Range(0, nodes).Select(_ => random.NextDouble() < 0.2 ? 0 : Math.Pow(10, 4 * random.NextDouble()))];
        (int, int)[] edges = nodes < 2 ? [] : [.. Enumerable.Range(0, edgeCount).Select(_ => Pair(random, nodes))];
        double[] flows = [.. edges.Select(e => volume[e.Item1] <= 0 || volume[e.Item2] <= 0 || random.NextDouble() < 0.1
            ? 0
            : volume[e.Item1] * Math.Pow(largestTurnovers, random.NextDouble()) / edgeCount)];
        double[] loss = [.. Enumerable.Range(0, nodes * lanes).Select(_ => random.NextDouble() < 0.3 ? 0 : 1000 * random.NextDouble())];
        double[] right = [.. Enumerable.Range(0, nodes * lanes).Select(i =>
            volume[i / lanes] <= 0 || random.NextDouble() < 0.2 ? 0 : 1000 * random.NextDouble())];
        return new RandomNetwork(nodes, lanes, edges, flows, volume, loss, right);
    }

    private static (int From, int To) Pair(Random random, int nodes)
    {
        int from = random.Next(nodes);
        int to = random.Next(nodes - 1);
        return (from, to >= from ? to + 1 : to);
    }
}
