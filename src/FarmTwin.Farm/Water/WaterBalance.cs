using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Equipment;

namespace FarmTwin.Farm.Water;

/// <summary>Solves the balances of a step on the pipe network, block by block of substances.</summary>
/// <remarks>Workspace of one run, not thread-safe.</remarks>
public sealed class WaterBalance
{
    private readonly FlowNetwork _network;
    private readonly FlowMatrix _matrix;
    private readonly LaneSystem _ions;
    private readonly LaneSystem _solids;
    private readonly double[] _turnover;
    private double _perHour;

    /// <summary>Makes the systems of a network.</summary>
    public WaterBalance(FlowNetwork network)
    {
        ArgumentNullException.ThrowIfNull(network);
        _network = network;
        _matrix = new FlowMatrix(network.Plan);
        _ions = new LaneSystem(network.Plan);
        _solids = new LaneSystem(network.Plan);
        _turnover = new double[network.Plan.NodeCount];
    }

    /// <summary>Sets what all substances of the step share: call once, when flows and volumes are known.</summary>
    public void Open(WaterStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        _perHour = 1 / step.Hours;
        for (int b = 0; b < _turnover.Length; b++)
        {
            _turnover[b] = Turnover(b, step.Hours);
        }

        _matrix.Set(_turnover, _network.EdgeFlow);
    }

    /// <summary>What the balance of one substance begins with: V₀ c₀/dt + s, g/h, of each basin; 0 where there is no water.</summary>
    public void Gather(Basins basins, WaterStep step, int substance, Span<double> right)
    {
        ArgumentNullException.ThrowIfNull(basins);
        ArgumentNullException.ThrowIfNull(step);
        double[] grams = basins.Grams;
        double[] source = step.Source;
        double[] turnover = _turnover;
        for (int b = 0; b < turnover.Length; b++)
        {
            int at = WaterStep.At(b, substance);
            right[b] = turnover[b] > 0 ? (grams[at] * _perHour) + source[at] : 0;
        }
    }

    /// <summary>Solves one substance.</summary>
    /// <param name="loss">First-order losses of each basin, L/h.</param>
    /// <param name="right">As <see cref="Gather"/> gives it, and what has been added to its sources since.</param>
    /// <param name="solution">The concentrations, g/L.</param>
    public void SolveOne(ReadOnlySpan<double> loss, ReadOnlySpan<double> right, Span<double> solution) => _matrix.Solve(loss, right, solution);

    /// <summary>Solves the ions.</summary>
    public void SolveIons(Basins basins, WaterStep step) => Solve(_ions, basins, step, Substance.FirstIon);

    /// <summary>Solves the suspended solids.</summary>
    public void SolveSolids(Basins basins, WaterStep step) => Solve(_solids, basins, step, Substance.FirstSolidsClass);

    /// <summary>Volume over time plus outflow, L/h: the part of the diagonal that all substances share; 0 for a dry basin.</summary>
    public double Turnover(int basin, double hours) => _network.LitresAfter[basin] > 0
        ? (_network.LitresAfter[basin] / hours) + _network.Outflow(basin) + _network.Spill[basin] + _network.Leak[basin]
        : 0;

    /// <summary>Puts the solved concentrations into the basins as masses; what lies in a dry basin stays.</summary>
    public void Commit(Basins basins, WaterStep step)
    {
        ArgumentNullException.ThrowIfNull(basins);
        ArgumentNullException.ThrowIfNull(step);
        for (int b = 0; b < step.BasinCount; b++)
        {
            double litres = _network.LitresAfter[b];
            if (litres <= 0)
            {
                continue;
            }

            int row = WaterStep.At(b, 0);
            for (int i = row; i < row + Substance.Columns; i += Fours.Width)
            {
                (Vector256.Create(step.Concentration, i) * litres).CopyTo(basins.Grams, i);
            }
        }
    }

    private void Solve(LaneSystem system, Basins basins, WaterStep step, int first)
    {
        ReadOnlySpan<double> allGrams = basins.Grams;
        ReadOnlySpan<double> allSources = step.Source;
        for (int b = 0; b < _turnover.Length; b++)
        {
            // A dry basin begins with nothing and gets nothing.
            int column = WaterStep.At(b, first);
            double perHour = _turnover[b] > 0 ? _perHour : 0;
            double given = _turnover[b] > 0 ? 1 : 0;
            Span<double> right = system.RightHandSide.AsSpan(b * LaneSystem.Lanes, LaneSystem.Lanes);
            ReadOnlySpan<double> grams = allGrams.Slice(column, LaneSystem.Lanes);
            ReadOnlySpan<double> source = allSources.Slice(column, LaneSystem.Lanes);
            for (int i = 0; i < LaneSystem.Lanes; i += Fours.Width)
            {
                ((Vector256.Create(grams[i..]) * perHour) + (Vector256.Create(source[i..]) * given)).CopyTo(right[i..]);
            }
        }

        system.Solve(_matrix, step.Loss.AsSpan(first), step.Concentration.AsSpan(first), Substance.Columns);
    }
}
