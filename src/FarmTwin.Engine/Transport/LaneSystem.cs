using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FarmTwin.Engine.Transport;

/// <summary>
/// One implicit balance of a flow network, solved for sixteen substances ("lanes") side by side:
/// (V₁/dt + Q_out + k) c₁ − Σ Q_in c₁,upstream = V₀ c₀/dt + s.
/// </summary>
/// <remarks>
/// All lanes share the flows (<see cref="FlowMatrix"/>); each has its own loss coefficients k and sources s. Every column's diagonal
/// exceeds the sum of its other entries by V₁/dt + k, so the matrix is an M-matrix: elimination needs no pivoting, and with sources
/// that are not negative no concentration is negative, at any flow and any step. A node without water is left out of the balance (its
/// concentration is 0 and it must have neither flows nor sources). The arithmetic of a lane does not depend on its neighbours. Four
/// vectors go through the elimination together: what one waits for, another fills. Workspace, not thread-safe: one a run. Nothing is
/// allocated after construction.
/// </remarks>
public sealed class LaneSystem
{
    /// <summary>Number of substances.</summary>
    public const int Lanes = 4 * Fours.Width;

    private const nuint Second = Fours.Width;
    private const nuint Third = 2 * Fours.Width;
    private const nuint Fourth = 3 * Fours.Width;

    private readonly EliminationPlan _plan;
    private readonly BackSubstitution[][] _back;
    private readonly double[] _entries;
    private readonly double[] _solution;

    /// <summary>Makes a workspace for a network.</summary>
    /// <param name="plan">The network's elimination plan.</param>
    public LaneSystem(EliminationPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _plan = plan;
        _back = [.. plan.PivotColumns];
        _entries = new double[plan.SlotCount * Lanes];
        _solution = new double[plan.NodeCount * Lanes];
        RightHandSide = new double[plan.NodeCount * Lanes];
    }

    /// <summary>V₀ c₀/dt + s, [node × lanes + lane]; set before and used up by each solve.</summary>
    public double[] RightHandSide { get; }

    /// <summary>Solves for all lanes.</summary>
    /// <param name="matrix">What all substances share, of the same plan.</param>
    /// <param name="loss">First-order losses k, [node × stride + lane].</param>
    /// <param name="solution">The concentrations, [node × stride + lane].</param>
    /// <param name="stride">Distance between the rows of two nodes, at least the number of lanes.</param>
    public void Solve(FlowMatrix matrix, ReadOnlySpan<double> loss, Span<double> solution, int stride)
    {
        ArgumentNullException.ThrowIfNull(matrix);
        ArgumentOutOfRangeException.ThrowIfLessThan(stride, Lanes);
        Spread(matrix.Shared, loss, stride);
        Eliminate();
        Substitute(solution, stride);
    }

    // Every entry is the same for all lanes but for the losses on the diagonal.
    private void Spread(ReadOnlySpan<double> shared, ReadOnlySpan<double> loss, int stride)
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(_entries);
        for (int slot = 0; slot < shared.Length; slot++)
        {
            Vector256<double> value = Vector256.Create(shared[slot]);
            nuint at = (nuint)(slot * Lanes);
            value.StoreUnsafe(ref entries, at);
            value.StoreUnsafe(ref entries, at + Second);
            value.StoreUnsafe(ref entries, at + Third);
            value.StoreUnsafe(ref entries, at + Fourth);
        }

        int[] diagonal = _plan.DiagonalSlots;
        for (int node = 0; node < diagonal.Length; node++)
        {
            ref double own = ref MemoryMarshal.GetReference(loss.Slice(node * stride, Lanes));
            Vector256<double> value = Vector256.Create(shared[diagonal[node]]);
            nuint at = (nuint)(diagonal[node] * Lanes);
            (value + Vector256.LoadUnsafe(ref own)).StoreUnsafe(ref entries, at);
            (value + Vector256.LoadUnsafe(ref own, Second)).StoreUnsafe(ref entries, at + Second);
            (value + Vector256.LoadUnsafe(ref own, Third)).StoreUnsafe(ref entries, at + Third);
            (value + Vector256.LoadUnsafe(ref own, Fourth)).StoreUnsafe(ref entries, at + Fourth);
        }
    }

    // As in FlowMatrix: each pivot is inverted once, and its inverse kept in its place for the back substitution.
    private void Eliminate()
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(_entries);
        ref double right = ref MemoryMarshal.GetArrayDataReference(RightHandSide);
        ReadOnlySpan<EntryUpdate> updates = _plan.Updates;
        ReadOnlySpan<EliminationStep> steps = _plan.Steps;
        int[] order = _plan.Order;
        int next = 0;
        for (int position = 0; position < order.Length; position++)
        {
            nuint pivot = (nuint)(_plan.DiagonalSlots[order[position]] * Lanes);
            Vector256<double> inverse1 = Vector256<double>.One / Vector256.LoadUnsafe(ref entries, pivot);
            Vector256<double> inverse2 = Vector256<double>.One / Vector256.LoadUnsafe(ref entries, pivot + Second);
            Vector256<double> inverse3 = Vector256<double>.One / Vector256.LoadUnsafe(ref entries, pivot + Third);
            Vector256<double> inverse4 = Vector256<double>.One / Vector256.LoadUnsafe(ref entries, pivot + Fourth);
            inverse1.StoreUnsafe(ref entries, pivot);
            inverse2.StoreUnsafe(ref entries, pivot + Second);
            inverse3.StoreUnsafe(ref entries, pivot + Third);
            inverse4.StoreUnsafe(ref entries, pivot + Fourth);
            nuint rightPivot = (nuint)(order[position] * Lanes);
            int end = _plan.StepEnds[position];
            foreach (ref readonly EliminationStep step in steps[next..end])
            {
                nuint slot = (nuint)(step.Slot * Lanes);
                Vector256<double> factor1 = inverse1 * Vector256.LoadUnsafe(ref entries, slot);
                Vector256<double> factor2 = inverse2 * Vector256.LoadUnsafe(ref entries, slot + Second);
                Vector256<double> factor3 = inverse3 * Vector256.LoadUnsafe(ref entries, slot + Third);
                Vector256<double> factor4 = inverse4 * Vector256.LoadUnsafe(ref entries, slot + Fourth);
                foreach (ref readonly EntryUpdate update in updates[step.FirstUpdate..step.EndUpdate])
                {
                    Subtract(ref entries, (nuint)(update.Target * Lanes), ref entries, (nuint)(update.PivotEntry * Lanes), factor1, factor2, factor3, factor4);
                }

                Subtract(ref right, (nuint)(step.Row * Lanes), ref right, rightPivot, factor1, factor2, factor3, factor4);
            }

            next = end;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Subtract(
        ref double targets,
        nuint target,
        ref double values,
        nuint value,
        Vector256<double> factor1,
        Vector256<double> factor2,
        Vector256<double> factor3,
        Vector256<double> factor4)
    {
        (Vector256.LoadUnsafe(ref targets, target) - (factor1 * Vector256.LoadUnsafe(ref values, value))).StoreUnsafe(ref targets, target);
        (Vector256.LoadUnsafe(ref targets, target + Second) - (factor2 * Vector256.LoadUnsafe(ref values, value + Second)))
            .StoreUnsafe(ref targets, target + Second);
        (Vector256.LoadUnsafe(ref targets, target + Third) - (factor3 * Vector256.LoadUnsafe(ref values, value + Third)))
            .StoreUnsafe(ref targets, target + Third);
        (Vector256.LoadUnsafe(ref targets, target + Fourth) - (factor4 * Vector256.LoadUnsafe(ref values, value + Fourth)))
            .StoreUnsafe(ref targets, target + Fourth);
    }

    private void Substitute(Span<double> solution, int stride)
    {
        ref double entries = ref MemoryMarshal.GetArrayDataReference(_entries);
        ref double right = ref MemoryMarshal.GetArrayDataReference(RightHandSide);
        ref double solved = ref MemoryMarshal.GetArrayDataReference(_solution);
        int[] order = _plan.Order;
        for (int position = order.Length - 1; position >= 0; position--)
        {
            int node = order[position];
            nuint row = (nuint)(node * Lanes);
            Vector256<double> value1 = Vector256.LoadUnsafe(ref right, row);
            Vector256<double> value2 = Vector256.LoadUnsafe(ref right, row + Second);
            Vector256<double> value3 = Vector256.LoadUnsafe(ref right, row + Third);
            Vector256<double> value4 = Vector256.LoadUnsafe(ref right, row + Fourth);
            foreach (BackSubstitution column in _back[position])
            {
                nuint slot = (nuint)(column.Slot * Lanes);
                nuint other = (nuint)(column.Node * Lanes);
                value1 -= Vector256.LoadUnsafe(ref entries, slot) * Vector256.LoadUnsafe(ref solved, other);
                value2 -= Vector256.LoadUnsafe(ref entries, slot + Second) * Vector256.LoadUnsafe(ref solved, other + Second);
                value3 -= Vector256.LoadUnsafe(ref entries, slot + Third) * Vector256.LoadUnsafe(ref solved, other + Third);
                value4 -= Vector256.LoadUnsafe(ref entries, slot + Fourth) * Vector256.LoadUnsafe(ref solved, other + Fourth);
            }

            nuint pivot = (nuint)(_plan.DiagonalSlots[node] * Lanes);
            value1 *= Vector256.LoadUnsafe(ref entries, pivot);
            value2 *= Vector256.LoadUnsafe(ref entries, pivot + Second);
            value3 *= Vector256.LoadUnsafe(ref entries, pivot + Third);
            value4 *= Vector256.LoadUnsafe(ref entries, pivot + Fourth);
            value1.StoreUnsafe(ref solved, row);
            value2.StoreUnsafe(ref solved, row + Second);
            value3.StoreUnsafe(ref solved, row + Third);
            value4.StoreUnsafe(ref solved, row + Fourth);
            ref double result = ref MemoryMarshal.GetReference(solution.Slice(node * stride, Lanes));
            value1.StoreUnsafe(ref result);
            value2.StoreUnsafe(ref result, Second);
            value3.StoreUnsafe(ref result, Third);
            value4.StoreUnsafe(ref result, Fourth);
        }
    }
}
