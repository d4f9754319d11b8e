namespace FarmTwin.Engine.Transport;

/// <summary>The order in which the nodes of a flow network are eliminated, and where the eliminations write: found once a network.</summary>
/// <remarks>
/// A farm's network is a few hubs with leaves. Eliminating the node of least degree first (Markowitz; Tinney &amp; Walker 1967,
/// Proc. IEEE 55:1801) removes the leaves before the hubs and leaves almost no fill. No pivoting is needed: the systems solved
/// on it are column diagonally dominant (<see cref="LaneSystem"/>). Immutable; safe to share between threads.
/// </remarks>
public sealed class EliminationPlan
{
    private readonly Dictionary<(int Row, int Column), int> _slots = [];

    /// <summary>Plans the elimination of a network.</summary>
    /// <param name="nodeCount">Number of nodes, at least 1.</param>
    /// <param name="edges">Directed edges (from, to) between nodes 0..nodeCount-1; parallel edges are allowed.</param>
    /// <exception cref="ArgumentOutOfRangeException">An edge ends outside the network or on its own start.</exception>
    public EliminationPlan(int nodeCount, IReadOnlyList<(int From, int To)> edges)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(nodeCount, 1);
        ArgumentNullException.ThrowIfNull(edges);
        NodeCount = nodeCount;
        var neighbours = new HashSet<int>[nodeCount];
        for (int node = 0; node < nodeCount; node++)
        {
            neighbours[node] = [];
            Slot(node, node);
        }

        EdgeSlots = new int[edges.Count];
        EdgeFrom = new int[edges.Count];
        for (int edge = 0; edge < edges.Count; edge++)
        {
            (int from, int to) = edges[edge];
            if ((uint)from >= (uint)nodeCount || (uint)to >= (uint)nodeCount || from == to)
            {
                throw new ArgumentOutOfRangeException(nameof(edges), edges[edge], "An edge joins two different nodes of the network.");
            }

            EdgeFrom[edge] = from;
            EdgeSlots[edge] = Slot(to, from);
            neighbours[from].Add(to);
            neighbours[to].Add(from);
        }

        Order = OrderByDegree(neighbours);
        StepEnds = new int[nodeCount];
        (Steps, Updates) = Symbolic();
        SlotCount = _slots.Count;
        DiagonalSlots = [.. Enumerable.Range(0, nodeCount).Select(n => _slots[(n, n)])];
    }

    /// <summary>Number of nodes.</summary>
    public int NodeCount { get; }

    /// <summary>Number of stored matrix entries, fill included.</summary>
    public int SlotCount { get; }

    /// <summary>Nodes in the order of their elimination.</summary>
    internal int[] Order { get; }

    internal int[] DiagonalSlots { get; }

    internal int[] EdgeSlots { get; }

    internal int[] EdgeFrom { get; }

    /// <summary>One entry for each (pivot, row below it) pair, in elimination order.</summary>
    internal EliminationStep[] Steps { get; }

    /// <summary>For each position of <see cref="Order"/>: where the steps of that pivot end and those of the next begin.</summary>
    internal int[] StepEnds { get; }

    /// <summary>The entry updates of the steps, one after another.</summary>
    internal EntryUpdate[] Updates { get; }

    private int Slot(int row, int column)
    {
        if (!_slots.TryGetValue((row, column), out int slot))
        {
            slot = _slots.Count;
            _slots.Add((row, column), slot);
        }

        return slot;
    }

    private static int[] OrderByDegree(HashSet<int>[] neighbours)
    {
        var graph = neighbours.Select(n => new HashSet<int>(n)).ToArray();
        var order = new int[graph.Length];
        var left = Enumerable.Range(0, graph.Length).ToHashSet();
        for (int position = 0; position < order.Length; position++)
        {
            int next = left.OrderBy(n => graph[n].Count).ThenBy(n => n).First();
            order[position] = next;
            left.Remove(next);
            foreach (int a in graph[next])
            {
                graph[a].Remove(next);
                graph[a].UnionWith(graph[next].Where(b => b != a));
            }
        }

        return order;
    }

    private (EliminationStep[] Steps, EntryUpdate[] Updates) Symbolic()
    {
        var steps = new List<EliminationStep>();
        var updates = new List<EntryUpdate>();
        for (int position = 0; position < NodeCount; position++)
        {
            int pivot = Order[position];
            int[] later = Order[(position + 1)..];
            int[] columns = [.. later.Where(c => _slots.ContainsKey((pivot, c)))];
            foreach (int row in later.Where(r => _slots.ContainsKey((r, pivot))))
            {
                int first = updates.Count;
                foreach (int column in columns)
                {
                    updates.Add(new EntryUpdate(Slot(row, column), _slots[(pivot, column)]));
                }

                steps.Add(new EliminationStep(row, _slots[(row, pivot)], first, updates.Count));
            }

            StepEnds[position] = steps.Count;
            PivotColumns.Add([.. columns.Select(c => new BackSubstitution(_slots[(pivot, c)], c))]);
        }

        return ([.. steps], [.. updates]);
    }

    /// <summary>For each position of <see cref="Order"/>: the later columns of that pivot's row.</summary>
    internal List<BackSubstitution[]> PivotColumns { get; } = [];
}

/// <summary>Row <paramref name="Row"/> loses its entry in the pivot's column; the updates of the other entries follow.</summary>
internal readonly record struct EliminationStep(int Row, int Slot, int FirstUpdate, int EndUpdate);

/// <summary>Entry <paramref name="Target"/> loses factor × entry <paramref name="PivotEntry"/>.</summary>
internal readonly record struct EntryUpdate(int Target, int PivotEntry);

/// <summary>An entry of the upper triangle and the node whose value it multiplies.</summary>
internal readonly record struct BackSubstitution(int Slot, int Node);
