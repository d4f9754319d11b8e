using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FarmTwin.Engine.Transport;

/// <summary>
/// One implicit balance of a flow network, solved for several substances ("lanes") side by side:
/// (V₁/dt + Q_out + k) c₁ − Σ Q_in c₁,upstream = V₀ c₀/dt + s.
/// </summary>
/// <remarks>
/// All lanes share the flows; each has its own loss coefficients k and sources s. Every column's diagonal exceeds the sum of its
/// other entries by V₁/dt + k, so the matrix is an M-matrix: elimination needs no pivoting, and with sources that are not
/// negative no concentration is negative, at any flow and any step. A node without water is left out of the balance (its
/// concentration is 0 and it must have no flows). Lanes are processed four at a time in one vector; the arithmetic of a lane
/// does not depend on its neighbours. Workspace, not thread-safe: one a run. Nothing is allocated after construction.
/// </remarks>
public sealed class LaneSystem
{
    private const int LanesPerVector = 4;

    private readonly EliminationPlan _plan;
    private readonly int _vectors;
    private readonly double[] _entries;
    private readonly BackSubstitution[][] _back;

    /// <summary>Makes a workspace for a network.</summary>
    /// <param name="plan">The network's elimination plan.</param>
    /// <param name="lanes">Number of substances, a multiple of four.</param>
    public LaneSystem(EliminationPlan plan, int lanes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (lanes < LanesPerVector || lanes % LanesPerVector != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(lanes), lanes, "Lanes come in fours; leave the rest unused.");
        }

        _plan = plan;
        Lanes = lanes;
        _vectors = lanes / LanesPerVector;
        _entries = new double[plan.SlotCount * lanes];
        _back = [.. plan.PivotColumns];
        Diagonal = new double[plan.NodeCount * lanes];
        RightHandSide = new double[plan.NodeCount * lanes];
        Solution = new double[plan.NodeCount * lanes];
    }

    /// <summary>Number of lanes.</summary>
    public int Lanes { get; }

    /// <summary>V₁/dt + Q_out + k, [node × lanes + lane]; 0 marks a node without water.</summary>
    public double[] Diagonal { get; }

    /// <summary>V₀ c₀/dt + s, [node × lanes + lane].</summary>
    public double[] RightHandSide { get; }

    /// <summary>The solved concentrations, [node × lanes + lane].</summary>
    public double[] Solution { get; }

    /// <summary>Solves for all lanes.</summary>
    /// <param name="edgeFlows">Volume flow of each edge of the plan, in the plan's order, not negative.</param>
    public void Solve(ReadOnlySpan<double> edgeFlows)
    {
        Assemble(edgeFlows);
        Eliminate();
        Substitute();
    }

    /// <summary>Solves for all lanes on a matrix that was set for this step; <see cref="Diagonal"/> then holds the losses k alone, which are added to it.</summary>
    /// <param name="matrix">The shared part, of the same plan.</param>
    public void Solve(FlowMatrix matrix)
    {
        ArgumentNullException.ThrowIfNull(matrix);
        Spread(matrix.Shared);
        Eliminate();
        Substitute();
    }

    // Every entry is the same for all lanes but for the losses on the diagonal.
    private void Spread(ReadOnlySpan<double> shared)
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(_entries);
        for (int slot = 0; slot < shared.Length; slot++)
        {
            Vector256<double> value = Vector256.Create(shared[slot]);
            nuint start = (nuint)(slot * Lanes);
            for (int v = 0; v < _vectors; v++)
            {
                value.StoreUnsafe(ref entries, start + (nuint)(v * LanesPerVector));
            }
        }

        ref double losses = ref MemoryMarshal.GetArrayDataReference(Diagonal);
        for (int node = 0; node < _plan.NodeCount; node++)
        {
            ref double entry = ref Unsafe.Add(ref entries, _plan.DiagonalSlots[node] * Lanes);
            ref double loss = ref Unsafe.Add(ref losses, node * Lanes);
            for (int v = 0; v < _vectors; v++)
            {
                nuint offset = (nuint)(v * LanesPerVector);
                (Vector256.LoadUnsafe(ref entry, offset) + Vector256.LoadUnsafe(ref loss, offset)).StoreUnsafe(ref entry, offset);
            }
        }
    }

    private void Assemble(ReadOnlySpan<double> edgeFlows)
    {
        Array.Clear(_entries);
        for (int node = 0; node < _plan.NodeCount; node++)
        {
            int slot = _plan.DiagonalSlots[node] * Lanes;
            int start = node * Lanes;
            for (int lane = 0; lane < Lanes; lane++)
            {
                double value = Diagonal[start + lane];
                _entries[slot + lane] = value > 0 ? value : 1;
            }
        }

        for (int edge = 0; edge < _plan.EdgeSlots.Length; edge++)
        {
            double flow = edgeFlows[edge];
            if (flow > 0)
            {
                Span<double> entry = _entries.AsSpan(_plan.EdgeSlots[edge] * Lanes, Lanes);
                for (int lane = 0; lane < entry.Length; lane++)
                {
                    entry[lane] -= flow;
                }
            }
        }
    }

    // As in FlowMatrix: each pivot is inverted once, and its inverse kept in its place for the back substitution.
    private void Eliminate()
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(_entries);
        ref double right = ref MemoryMarshal.GetArrayDataReference(RightHandSide);
        EntryUpdate[] updates = _plan.Updates;
        EliminationStep[] steps = _plan.Steps;
        int next = 0;
        for (int position = 0; position < _plan.NodeCount; position++)
        {
            int node = _plan.Order[position];
            int end = _plan.StepEnds[position];
            ref double pivot = ref Unsafe.Add(ref entries, _plan.DiagonalSlots[node] * Lanes);
            ref double rightPivot = ref Unsafe.Add(ref right, node * Lanes);
            for (int v = 0; v < _vectors; v++)
            {
                nuint offset = (nuint)(v * LanesPerVector);
                Vector256<double> inverse = Vector256<double>.One / Vector256.LoadUnsafe(ref pivot, offset);
                inverse.StoreUnsafe(ref pivot, offset);
                Vector256<double> rightOfPivot = Vector256.LoadUnsafe(ref rightPivot, offset);
                for (int s = next; s < end; s++)
                {
                    ref readonly EliminationStep step = ref steps[s];
                    Vector256<double> factor = inverse * Vector256.LoadUnsafe(ref Unsafe.Add(ref entries, step.Slot * Lanes), offset);
                    for (int u = step.FirstUpdate; u < step.EndUpdate; u++)
                    {
                        ref double target = ref Unsafe.Add(ref entries, updates[u].Target * Lanes);
                        ref double entry = ref Unsafe.Add(ref entries, updates[u].PivotEntry * Lanes);
                        (Vector256.LoadUnsafe(ref target, offset) - (factor * Vector256.LoadUnsafe(ref entry, offset)))
                            .StoreUnsafe(ref target, offset);
                    }

                    ref double rightRow = ref Unsafe.Add(ref right, step.Row * Lanes);
                    (Vector256.LoadUnsafe(ref rightRow, offset) - (factor * rightOfPivot)).StoreUnsafe(ref rightRow, offset);
                }
            }

            next = end;
        }
    }

    private void Substitute()
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(_entries);
        ref double right = ref MemoryMarshal.GetArrayDataReference(RightHandSide);
        ref double solution = ref MemoryMarshal.GetArrayDataReference(Solution);
        for (int position = _plan.NodeCount - 1; position >= 0; position--)
        {
            int node = _plan.Order[position];
            BackSubstitution[] columns = _back[position];
            for (int v = 0; v < _vectors; v++)
            {
                nuint offset = (nuint)(v * LanesPerVector);
                Vector256<double> value = Vector256.LoadUnsafe(ref Unsafe.Add(ref right, node * Lanes), offset);
                for (int c = 0; c < columns.Length; c++)
                {
                    value -= Vector256.LoadUnsafe(ref Unsafe.Add(ref entries, columns[c].Slot * Lanes), offset)
                        * Vector256.LoadUnsafe(ref Unsafe.Add(ref solution, columns[c].Node * Lanes), offset);
                }

                (value * Vector256.LoadUnsafe(ref Unsafe.Add(ref entries, _plan.DiagonalSlots[node] * Lanes), offset))
                    .StoreUnsafe(ref Unsafe.Add(ref solution, node * Lanes), offset);
            }
        }
    }
}
