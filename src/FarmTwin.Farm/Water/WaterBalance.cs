using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Equipment;

namespace FarmTwin.Farm.Water;

/// <summary>Solves the balances of a step on the pipe network, block by block of substances.</summary>
/// <remarks>Workspace of one run, not thread-safe.</remarks>
public sealed class WaterBalance
{
    private readonly FlowNetwork _network;
    private readonly LaneSystem _single;
    private readonly LaneSystem _ions;
    private readonly LaneSystem _solids;

    /// <summary>Makes the systems of a network.</summary>
    public WaterBalance(FlowNetwork network)
    {
        ArgumentNullException.ThrowIfNull(network);
        _network = network;
        _single = new LaneSystem(network.Plan, 4);
        _ions = new LaneSystem(network.Plan, Substance.IonColumns);
        _solids = new LaneSystem(network.Plan, Substance.SolidsColumns);
    }

    /// <summary>Solves one substance.</summary>
    public void SolveOne(Basins basins, WaterStep step, int substance) => Solve(_single, basins, step, substance, 1);

    /// <summary>Solves the ions.</summary>
    public void SolveIons(Basins basins, WaterStep step) => Solve(_ions, basins, step, Substance.FirstIon, Substance.IonColumns);

    /// <summary>Solves the suspended solids.</summary>
    public void SolveSolids(Basins basins, WaterStep step) =>
        Solve(_solids, basins, step, Substance.FirstSolidsClass, Substance.SolidsColumns);

    /// <summary>Volume over time plus outflow, L/h: the part of the diagonal that all substances share; 0 for a dry basin.</summary>
    public double Turnover(int basin, double hours) => _network.LitresAfter[basin] > 0
        ? (_network.LitresAfter[basin] / hours) + _network.Outflow(basin) + _network.Spill[basin]
        : 0;

    /// <summary>Puts the solved concentrations of a block of substances into the basins as masses.</summary>
    public void Commit(Basins basins, WaterStep step, int firstSubstance, int count)
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

            int start = WaterStep.At(b, firstSubstance);
            for (int i = start; i < start + count; i++)
            {
                basins.Grams[i] = step.Concentration[i] * litres;
            }
        }
    }

    private void Solve(LaneSystem system, Basins basins, WaterStep step, int first, int count)
    {
        double perHour = 1 / step.Hours;
        for (int b = 0; b < step.BasinCount; b++)
        {
            double turnover = Turnover(b, step.Hours);
            int lane = b * system.Lanes;
            int column = WaterStep.At(b, first);
            if (turnover <= 0)
            {
                system.Diagonal.AsSpan(lane, system.Lanes).Clear();
                system.RightHandSide.AsSpan(lane, system.Lanes).Clear();
                continue;
            }

            for (int i = 0; i < count; i++)
            {
                system.Diagonal[lane + i] = turnover + step.Loss[column + i];
                system.RightHandSide[lane + i] = (basins.Grams[column + i] * perHour) + step.Source[column + i];
            }

            for (int i = count; i < system.Lanes; i++)
            {
                system.Diagonal[lane + i] = turnover;
                system.RightHandSide[lane + i] = 0;
            }
        }

        system.Solve(_network.EdgeFlow);
        for (int b = 0; b < step.BasinCount; b++)
        {
            system.Solution.AsSpan(b * system.Lanes, count).CopyTo(step.Concentration.AsSpan(WaterStep.At(b, first), count));
        }
    }
}
