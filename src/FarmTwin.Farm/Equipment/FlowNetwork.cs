using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Equipment;

/// <summary>The pipes of a farm: from pumps, levels and valves to the flow in every pipe and the volume of every basin.</summary>
/// <remarks>
/// Pumps set their flow. A basin without a pump overflows at its normal level and passes on what comes in; a basin from which a
/// pump draws is a sump: its level varies, a float valve fills it up, and it overflows at the brim. Volumes are exact:
/// V₁ = V₀ + dt (in − out − loss + top-up − spill). A valved overflow pipe from one sump to another is a level line: while its valve is
/// open it carries what stands above the normal level. Coupled and decoupled are settings of one network's valves. Workspace of one
/// run, not thread-safe; nothing is allocated after construction.
/// </remarks>
public sealed class FlowNetwork
{
    // A pump stops drawing when this share of the normal volume is left, so that it never runs dry.
    private const double DryShare = 0.02;

    private readonly BasinDescription[] _basins;
    private readonly int[] _from;
    private readonly int[] _to;
    private readonly bool[] _pumped;
    private readonly double[] _setFlow;
    private readonly int[] _valve;
    private readonly bool[] _isSump;

    // The first overflow pipe without a valve of each basin, or -1.
    private readonly int[] _plain;
    private readonly int[] _order;
    private readonly double[] _outflow;
    private readonly double[] _inflow;
    private readonly double[] _pumpFactor;
    private readonly double[] _valveTotals;

    /// <summary>Reads the network of a farm.</summary>
    /// <param name="farm">The farm's description.</param>
    /// <exception cref="DescriptionException">The pipes do not make a network that can be computed.</exception>
    public FlowNetwork(FarmDescription farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        string[] basinNames = [.. farm.Basins.Keys];
        PipeNames = [.. farm.Pipes.Keys];
        ValveNames = [.. farm.Valves.Keys];
        PipeDescription[] pipes = [.. farm.Pipes.Values];
        _basins = [.. farm.Basins.Values];
        _from = [.. pipes.Select(p => Array.IndexOf(basinNames, p.From))];
        _to = [.. pipes.Select(p => Array.IndexOf(basinNames, p.To))];
        if (Array.Find(PipeNames, n => farm.Pipes[n].From == farm.Pipes[n].To) is { } circle)
        {
            throw new DescriptionException(
                $"pipes.{circle}: the pipe leads from '{farm.Pipes[circle].From}' back to itself; name another basin under 'from' or 'to'.");
        }

        _pumped = [.. pipes.Select(p => p.Drive == PipeDrive.Pump)];
        _setFlow = [.. pipes.Select(p => p.FlowLitresPerHour)];
        _valve = [.. pipes.Select(p => p.Valve is null ? -1 : Array.IndexOf(ValveNames, p.Valve))];
        _isSump = [.. Enumerable.Range(0, _basins.Length).Select(b => Pipes.Any(p => _pumped[p] && _from[p] == b))];
        _plain = [.. Enumerable.Range(0, _basins.Length).Select(b => Array.FindIndex(
            pipes, p => p.From == basinNames[b] && p.Drive != PipeDrive.Pump && p.Valve is null))];
        NormalLitres = [.. _basins.Select(b => b.VolumeLitres)];
        BrimLitres = [.. _basins.Select(b => b.BrimLitres ?? (b.VolumeLitres * 1.1))];
        _order = OverflowOrder(basinNames);
        CheckValves(basinNames);
        Plan = new EliminationPlan(_basins.Length, [.. Pipes.Select(p => (_from[p], _to[p]))]);
        EdgeFlow = new double[pipes.Length];
        PumpShare = new double[pipes.Length];
        Array.Fill(PumpShare, 1);
        int count = _basins.Length;
        _outflow = new double[count];
        _inflow = new double[count];
        _pumpFactor = new double[count];
        _valveTotals = new double[ValveNames.Length * count];
        LitresAfter = new double[count];
        TopUp = new double[count];
        Spill = new double[count];
        Loss = new double[count];
        Leak = new double[count];
        LeakWanted = new double[count];
        FloatValves = new FloatValveCondition[count];
        DrainBlocked = new bool[count];
        LevelShare = new double[count];
        Array.Fill(LevelShare, 1);
    }

    /// <summary>Names of the pipes, in the order of <see cref="EdgeFlow"/>.</summary>
    public string[] PipeNames { get; }

    /// <summary>Names of the valves.</summary>
    public string[] ValveNames { get; }

    /// <summary>Elimination plan of the network's balances.</summary>
    public EliminationPlan Plan { get; }

    /// <summary>Flow of every pipe in this step, L/h.</summary>
    public double[] EdgeFlow { get; }

    /// <summary>Share of its set flow that each pump delivers, from the equipment's state; 1 when well.</summary>
    public double[] PumpShare { get; }

    /// <summary>How the float valve of each basin stands, from the equipment's state.</summary>
    public FloatValveCondition[] FloatValves { get; }

    /// <summary>Whether the way out of each basin is blocked, from the equipment's state.</summary>
    public bool[] DrainBlocked { get; }

    /// <summary>Share of its normal level that the way out of each basin holds, from the equipment's state; 1 when well.</summary>
    public double[] LevelShare { get; }

    /// <summary>Leak of each basin, from the equipment's state, L/h.</summary>
    public double[] LeakWanted { get; }

    /// <summary>Normal level of every basin, L: where it overflows, or its float valve holds it. The description's; a media bed's follows its outlet.</summary>
    public double[] NormalLitres { get; }

    /// <summary>Water to the brim of every basin, L.</summary>
    public double[] BrimLitres { get; }

    /// <summary>Volume of every basin at the end of the step, L.</summary>
    public double[] LitresAfter { get; }

    /// <summary>Source water let in by float valves, L/h.</summary>
    public double[] TopUp { get; }

    /// <summary>Water lost over the brim and out of the farm, L/h.</summary>
    public double[] Spill { get; }

    /// <summary>Water that really leaked out of the farm, L/h: no more than there was.</summary>
    public double[] Leak { get; }

    /// <summary>Evaporation and transpiration that really left, L/h: no more than there was.</summary>
    public double[] Loss { get; }

    private IEnumerable<int> Pipes => Enumerable.Range(0, _from.Length);

    /// <summary>The basin that a pipe leads to.</summary>
    public int To(int pipe) => _to[pipe];

    /// <summary>The basin that a pipe leaves.</summary>
    public int From(int pipe) => _from[pipe];

    /// <summary>Flow out of a basin through its pipes, L/h.</summary>
    public double Outflow(int basin) => _outflow[basin];

    /// <summary>Computes flows and volumes of a step.</summary>
    /// <param name="litres">Volumes at its start, L.</param>
    /// <param name="wantedLoss">Evaporation and transpiration of each basin, L/h.</param>
    /// <param name="valveFlow">Exchange set on each valve, L/h each way.</param>
    /// <param name="hours">Length of the step, h.</param>
    public void Solve(ReadOnlySpan<double> litres, ReadOnlySpan<double> wantedLoss, ReadOnlySpan<double> valveFlow, double hours)
    {
        Array.Fill(_pumpFactor, 1);
        for (int b = 0; b < _basins.Length; b++)
        {
            Loss[b] = Math.Min(wantedLoss[b], litres[b] / (2 * hours));
            Leak[b] = Math.Min(LeakWanted[b], Math.Max(0, (litres[b] / (2 * hours)) - Loss[b]));
        }

        // A pump that runs short takes water from the sump it feeds: limited one after another, at most once each.
        Route(litres, valveFlow, hours);
        while (LimitPumps(litres, hours))
        {
            Route(litres, valveFlow, hours);
        }

        Levels(litres, valveFlow, hours);
    }

    private void Route(ReadOnlySpan<double> litres, ReadOnlySpan<double> valveFlow, double hours)
    {
        Array.Clear(_inflow);
        Array.Clear(_outflow);
        Array.Clear(EdgeFlow);
        Array.Clear(TopUp);
        for (int b = 0; b < _basins.Length; b++)
        {
            TopUp[b] = _basins[b].FloatValve && FloatValves[b] == FloatValveCondition.StuckOpen ? _basins[b].FloatValveLitresPerHour : 0;
        }

        for (int p = 0; p < _from.Length; p++)
        {
            if (_pumped[p])
            {
                Flow(p, _setFlow[p] * PumpShare[p] * _pumpFactor[_from[p]]);
            }
        }

        foreach (int b in _order)
        {
            double level = NormalLitres[b] * LevelShare[b];
            double surplus = _inflow[b] - Loss[b] - Leak[b] + TopUp[b] + ((litres[b] - level) / hours);
            if (surplus < 0 && FloatWorks(b))
            {
                TopUp[b] = Math.Min(-surplus, _basins[b].FloatValveLitresPerHour);
            }

            _outflow[b] = 0;
            if (surplus > 0 && !DrainBlocked[b])
            {
                PassOn(b, surplus);
            }
        }

        DivideAtValves(valveFlow);
    }

    // An overflow basin hands its surplus to its pipes without a valve; what a valve takes is corrected afterwards, once the
    // surplus of all basins behind the valve is known. Valved basins end in sumps only, so nothing downstream changes.
    private void PassOn(int basin, double surplus)
    {
        if (_plain[basin] >= 0)
        {
            Flow(_plain[basin], surplus);
        }
    }

    private void DivideAtValves(ReadOnlySpan<double> valveFlow)
    {
        if (!valveFlow.ContainsAnyExceptInRange(double.NegativeInfinity, 0))
        {
            return;
        }

        Array.Clear(_valveTotals);
        for (int p = 0; p < _from.Length; p++)
        {
            if (_valve[p] >= 0 && !_isSump[_from[p]])
            {
                _valveTotals[(_valve[p] * _basins.Length) + _to[p]] += _outflow[_from[p]];
            }
        }

        for (int p = 0; p < _from.Length; p++)
        {
            if (_valve[p] < 0 || _isSump[_from[p]] || valveFlow[_valve[p]] <= 0)
            {
                continue;
            }

            double total = _valveTotals[(_valve[p] * _basins.Length) + _to[p]];
            double exchange = Math.Min(valveFlow[_valve[p]], SmallestSide(_valve[p]));
            if (total <= 0 || exchange <= 0)
            {
                continue;
            }

            double flow = _outflow[_from[p]] * exchange / total;
            int rest = _plain[_from[p]];
            double diverted = Math.Min(flow, EdgeFlow[rest]);
            EdgeFlow[rest] -= diverted;
            _inflow[_to[rest]] -= diverted;
            EdgeFlow[p] += diverted;
            _inflow[_to[p]] += diverted;
        }
    }

    // What a valve passes one way must come back the other: the poorer side sets it, or a sump would flood and the other be refilled.
    private double SmallestSide(int valve)
    {
        double smallest = double.PositiveInfinity;
        for (int p = 0; p < _from.Length; p++)
        {
            if (_valve[p] == valve && !_isSump[_from[p]])
            {
                smallest = Math.Min(smallest, _valveTotals[(valve * _basins.Length) + _to[p]]);
            }
        }

        return smallest;
    }

    private bool LimitPumps(ReadOnlySpan<double> litres, double hours)
    {
        bool limited = false;
        for (int b = 0; b < _basins.Length; b++)
        {
            if (!_isSump[b])
            {
                continue;
            }

            bool fills = _basins[b].FloatValve && FloatValves[b] != FloatValveCondition.StuckShut;
            double left = litres[b] - (NormalLitres[b] * DryShare) + (fills ? hours * _basins[b].FloatValveLitresPerHour : 0);
            double lost = Loss[b] + Leak[b];
            if (_outflow[b] > 0 && _pumpFactor[b] == 1 && left + (hours * (_inflow[b] - _outflow[b] - lost)) < 0)
            {
                // What flows in meanwhile is not counted on: it may itself be limited next.
                _pumpFactor[b] = Math.Clamp(((left / hours) - lost) / _outflow[b], 0, 1);
                limited = true;
            }
        }

        return limited;
    }

    private void Levels(ReadOnlySpan<double> litres, ReadOnlySpan<double> valveFlow, double hours)
    {
        Array.Clear(Spill);
        for (int b = 0; b < _basins.Length; b++)
        {
            double after = litres[b] + (hours * (_inflow[b] - _outflow[b] - Loss[b] - Leak[b] + TopUp[b]));
            if (_isSump[b])
            {
                if (FloatWorks(b) && after < NormalLitres[b])
                {
                    TopUp[b] = Math.Min((NormalLitres[b] - after) / hours, _basins[b].FloatValveLitresPerHour);
                    after += TopUp[b] * hours;
                }
            }

            LitresAfter[b] = after;
        }

        for (int p = 0; p < _from.Length; p++)
        {
            if (_valve[p] >= 0 && _isSump[_from[p]] && valveFlow[_valve[p]] > 0 && !DrainBlocked[_from[p]])
            {
                LevelOut(p, valveFlow[_valve[p]], hours);
            }
        }

        for (int b = 0; b < _basins.Length; b++)
        {
            if (LitresAfter[b] > BrimLitres[b])
            {
                Overflow(b, LitresAfter[b] - BrimLitres[b], hours);
            }

            LitresAfter[b] = Math.Max(0, LitresAfter[b]);
        }
    }

    private void LevelOut(int pipe, double largestFlow, double hours)
    {
        int from = _from[pipe];
        int to = _to[pipe];
        double above = LitresAfter[from] - NormalLitres[from];
        double toppedUp = FloatWorks(to) ? TopUp[to] * hours : 0;
        double there = LitresAfter[to] - toppedUp - NormalLitres[to];

        // Through an open line water runs until both surfaces stand equally far above their normal levels.
        double surface = _basins[from].SurfaceSquareMetres;
        double other = _basins[to].SurfaceSquareMetres;
        double even = ((above * other) - (there * surface)) / (surface + other);
        double moved = Math.Min(Math.Min(Math.Min(above, even), largestFlow * hours), BrimLitres[to] - LitresAfter[to]);
        if (moved <= 0)
        {
            return;
        }

        EdgeFlow[pipe] += moved / hours;
        _outflow[from] += moved / hours;
        LitresAfter[from] -= moved;
        LitresAfter[to] += moved;

        // What comes over the line need not come from the source.
        double saved = Math.Min(toppedUp, moved);
        TopUp[to] -= saved / hours;
        LitresAfter[to] -= saved;
    }

    // At the brim a sump runs over into its overflow pipe, or else out of the farm.
    private void Overflow(int basin, double excess, double hours)
    {
        LitresAfter[basin] = BrimLitres[basin];
        int pipe = _plain[basin];
        if (pipe >= 0 && _isSump[basin] && !DrainBlocked[basin])
        {
            EdgeFlow[pipe] += excess / hours;
            _outflow[basin] += excess / hours;
            LitresAfter[_to[pipe]] += excess;
            return;
        }

        Spill[basin] += excess / hours;
    }

    private bool FloatWorks(int basin) => _basins[basin].FloatValve && FloatValves[basin] == FloatValveCondition.Well;

    private void Flow(int pipe, double flow)
    {
        EdgeFlow[pipe] += flow;
        _outflow[_from[pipe]] += flow;
        _inflow[_to[pipe]] += flow;
    }

    private int[] OverflowOrder(string[] names)
    {
        var order = new List<int>();
        var state = new int[_basins.Length];
        for (int b = 0; b < _basins.Length; b++)
        {
            Visit(b);
        }

        order.Reverse();
        return [.. order];

        void Visit(int b)
        {
            if (_isSump[b] || state[b] == 2)
            {
                return;
            }

            if (state[b] == 1)
            {
                throw new DescriptionException($"pipes: water would overflow from '{names[b]}' in a circle back to itself; one of the basins on the way needs a pump.");
            }

            state[b] = 1;
            foreach (int p in Pipes.Where(p => _from[p] == b && !_pumped[p]))
            {
                Visit(_to[p]);
            }

            state[b] = 2;
            order.Add(b);
        }
    }

    private void CheckValves(string[] names)
    {
        foreach (int p in Pipes.Where(p => _valve[p] >= 0))
        {
            string pipe = PipeNames[p];
            if (_pumped[p])
            {
                throw new DescriptionException($"pipes.{pipe}: a valve diverts an overflow; put it on the overflow pipe, not on a pumped one.");
            }

            if (_isSump[_from[p]])
            {
                if (!_isSump[_to[p]])
                {
                    throw new DescriptionException($"pipes.{pipe}: a level line joins two sumps, but '{names[_to[p]]}' has no pump.");
                }

                continue;
            }

            if (!Pipes.Any(r => _from[r] == _from[p] && !_pumped[r] && _valve[r] < 0))
            {
                throw new DescriptionException($"pipes.{pipe}: '{names[_from[p]]}' needs a second overflow pipe without a valve, which takes the water while the valve is closed.");
            }

            foreach (int r in Pipes.Where(r => _from[r] == _from[p] && !_pumped[r] && !_isSump[_to[r]]))
            {
                throw new DescriptionException($"pipes.{PipeNames[r]}: a basin with a valve on its overflow must overflow into sumps, but '{names[_to[r]]}' has no pump.");
            }
        }
    }
}
