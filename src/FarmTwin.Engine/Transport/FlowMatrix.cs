using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace FarmTwin.Engine.Transport;

/// <summary>What all substances of a step share: V₁/dt + Q_out on the diagonal, −Q between the nodes. Solves one substance at a time.</summary>
/// <remarks>
/// Set once a step; each solve copies it, adds its own losses to the diagonal, and eliminates. The same M-matrix and the same
/// guarantees as <see cref="LaneSystem"/>. Workspace, not thread-safe: one a run. Nothing is allocated after construction.
/// </remarks>
public sealed class FlowMatrix
{
    private readonly EliminationPlan _plan;
    private readonly BackSubstitution[][] _back;
    private readonly double[] _shared;
    private readonly double[] _entries;
    private readonly double[] _right;
    private readonly double[] _inverse;

    /// <summary>Makes a workspace for a network.</summary>
    public FlowMatrix(EliminationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _plan = plan;
        _back = [.. plan.PivotColumns];
        _shared = new double[plan.SlotCount];
        _entries = new double[plan.SlotCount];
        _right = new double[plan.NodeCount];
        _inverse = new double[plan.NodeCount];
    }

    /// <summary>The shared entries by slot of the plan.</summary>
    internal ReadOnlySpan<double> Shared => _shared;

    /// <summary>Sets the shared part of a step.</summary>
    /// <param name="turnover">V₁/dt + Q_out of each node; 0 marks a node without water, which is left out.</param>
    /// <param name="edgeFlows">Volume flow of each edge of the plan, not negative.</param>
    public void Set(ReadOnlySpan<double> turnover, ReadOnlySpan<double> edgeFlows)
    {
        Array.Clear(_shared);
        for (int node = 0; node < turnover.Length; node++)
        {
            _shared[_plan.DiagonalSlots[node]] = turnover[node] > 0 ? turnover[node] : 1;
        }

        int[] slots = _plan.EdgeSlots;
        for (int edge = 0; edge < slots.Length; edge++)
        {
            _shared[slots[edge]] -= edgeFlows[edge];
        }
    }

    /// <summary>Solves one substance.</summary>
    /// <param name="loss">First-order losses k of each node.</param>
    /// <param name="right">V₀ c₀/dt + s of each node.</param>
    /// <param name="solution">The concentrations.</param>
    public void Solve(ReadOnlySpan<double> loss, ReadOnlySpan<double> right, Span<double> solution)
    {
        double[] entries = _entries;
        double[] rightSide = _right;
        int[] diagonal = _plan.DiagonalSlots;
        _shared.CopyTo(entries, 0);
        right[..rightSide.Length].CopyTo(rightSide);
        for (int node = 0; node < rightSide.Length; node++)
        {
            entries[diagonal[node]] += loss[node];
        }

        Eliminate(entries, rightSide);
        Substitute(entries, rightSide, solution);
    }

    // A pivot serves all rows below it and the back substitution: it is inverted once, since dividing costs ten times a product. The
    // slots of a plan lie within its arrays by construction, so that nothing need be looked up twice.
    private void Eliminate(double[] entriesOfAll, double[] rightOfAll)
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(entriesOfAll);
        ref double rightSide = ref MemoryMarshal.GetArrayDataReference(rightOfAll);
        ref double inverses = ref MemoryMarshal.GetArrayDataReference(_inverse);
        ReadOnlySpan<EliminationStep> steps = _plan.Steps;
        ReadOnlySpan<EntryUpdate> updates = _plan.Updates;
        int[] order = _plan.Order;
        int[] diagonal = _plan.DiagonalSlots;
        int[] ends = _plan.StepEnds;
        int next = 0;
        for (int position = 0; position < order.Length; position++)
        {
            int pivot = order[position];
            double inverse = 1 / Unsafe.Add(ref entries, diagonal[pivot]);
            double rightOfPivot = Unsafe.Add(ref rightSide, pivot);
            Unsafe.Add(ref inverses, pivot) = inverse;
            int end = ends[position];
            foreach (ref readonly EliminationStep step in steps[next..end])
            {
                double factor = Unsafe.Add(ref entries, step.Slot) * inverse;
                foreach (ref readonly EntryUpdate update in updates[step.FirstUpdate..step.EndUpdate])
                {
                    Unsafe.Add(ref entries, update.Target) -= factor * Unsafe.Add(ref entries, update.PivotEntry);
                }

                Unsafe.Add(ref rightSide, step.Row) -= factor * rightOfPivot;
            }

            next = end;
        }
    }

    private void Substitute(double[] entriesOfAll, double[] rightOfAll, Span<double> solution)
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(entriesOfAll);
        ref double rightSide = ref MemoryMarshal.GetArrayDataReference(rightOfAll);
        int[] order = _plan.Order;
        for (int position = order.Length - 1; position >= 0; position--)
        {
            int node = order[position];
            double value = Unsafe.Add(ref rightSide, node);
            foreach (ref readonly BackSubstitution column in _back[position].AsSpan())
            {
                // The right side of a row is done with once its value is known.
                value -= Unsafe.Add(ref entries, column.Slot) * Unsafe.Add(ref rightSide, column.Node);
            }

            value *= _inverse[node];
            Unsafe.Add(ref rightSide, node) = value;
            solution[node] = value;
        }
    }
}
