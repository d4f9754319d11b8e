using CsCheck;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Engine.Tests.Transport;

public class EliminationPlanTests
{
    /// <summary>A farm's network: hubs joined in a ring, each with leaves that draw from it and return to it.</summary>
    private static (int From, int To)[] StarsOfHubs(int hubs, int leaves)
    {
        var edges = new List<(int, int)>();
        for (int hub = 0; hub < hubs; hub++)
        {
            if (hubs > 1)
            {
                edges.Add((hub, (hub + 1) % hubs));
            }

            for (int leaf = 0; leaf < leaves; leaf++)
            {
                int node = hubs + (hub * leaves) + leaf;
                edges.Add((hub, node));
                edges.Add((node, hub));
            }
        }

        return [.. edges];
    }

    [Theory]
    [InlineData(1, 40, 0)]
    [InlineData(2, 20, 0)]
    [InlineData(3, 30, 1)]
    [InlineData(4, 25, 4)]
    [InlineData(6, 25, 8)]
    public void Stars_of_hubs_fill_in_no_more_than_their_ring_of_hubs(int hubs, int leaves, int most)
    {
        (int From, int To)[] edges = StarsOfHubs(hubs, leaves);
        var plan = new EliminationPlan(hubs * (leaves + 1), edges);
        int stored = plan.NodeCount + edges.Distinct().Count();
        Assert.InRange(plan.SlotCount - stored, 0, most);
    }

    [Fact]
    public void A_tree_of_pipes_fills_in_nothing() => Gen.Int[2, 40].SelectMany(n => Gen.Int[0, 1_000_000].Array[n]).Sample(parents =>
    {
        var edges = new List<(int, int)>();
        for (int node = 1; node < parents.Length; node++)
        {
            int parent = parents[node] % node;
            edges.Add((parent, node));
            edges.Add((node, parent));
        }

        return new EliminationPlan(parents.Length, edges).SlotCount == parents.Length + edges.Count;
    }, iter: 300, threads: 1);

    [Fact]
    public void Parallel_pipes_share_an_entry() =>
        Assert.Equal(3, new EliminationPlan(2, [(0, 1), (0, 1), (0, 1)]).SlotCount);

    [Theory]
    [InlineData(0, 2)]
    [InlineData(-1, 0)]
    [InlineData(1, 1)]
    public void A_pipe_out_of_the_network_or_back_to_its_own_start_is_refused(int from, int to) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new EliminationPlan(2, [(from, to)]));

    [Fact]
    public void A_network_has_at_least_a_node() => Assert.Throws<ArgumentOutOfRangeException>(() => new EliminationPlan(0, []));
}
