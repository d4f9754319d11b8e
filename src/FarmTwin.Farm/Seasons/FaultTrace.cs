using FarmTwin.Engine;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>A row a step while a fault is open and for some hours after: by the minute where it matters.</summary>
/// <remarks>After two days of an open fault a row an hour is kept. Faults at one time share their rows.</remarks>
public sealed class FaultTrace
{
    private const long FineSeconds = 2 * UnitConstants.SecondsPerDay;
    private const long HourSeconds = 3600;
    private readonly FarmContext _farm;
    private readonly List<(RecordedColumn Column, Func<double> Value)> _columns = [];
    private readonly double[] _dead;
    private long _last = -1;

    /// <summary>Prepares the trace of a farm.</summary>
    public FaultTrace(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        FarmParts parts = farm.Parts;
        Basins basins = farm.State.Basins;
        _dead = new double[parts.Basins.Length];
        Add("second", "s", () => _last);
        Add("mains_on", "1", () => farm.State.Equipment.MainsOn ? 1 : 0);
        for (int i = 0; i < parts.Basins.Length; i++)
        {
            int b = i;
            string name = parts.BasinNames[b];
            switch (parts.Basins[b].Use)
            {
                case BasinUse.FishTank:
                    Add($"oxygen_{name}_mg_per_L", "mg/L", () => basins.MilligramsPerLitre(b, Substance.Oxygen));
                    Add($"carbon_dioxide_{name}_mg_per_L", "mg/L", () => basins.CarbonDioxideMoles[b] * UnitConstants.CarbonDioxideMilligramsPerMole);
                    Add($"ammonia_unionized_{name}_mgN_per_L", "mg N/L", () => basins.MilligramsPerLitre(b, Substance.Tan)
                        * Ammonia.UnionizedFraction(basins.PH[b], basins.Celsius[b]));
                    Add($"water_{name}_C", "°C", () => basins.Celsius[b]);
                    Add($"inflow_{name}_L_per_h", "L/h", () => Inflow(b));
                    Add($"level_{name}_L", "L", () => basins.Litres[b]);
                    Add($"died_{name}", "fish", () => _dead[b]);
                    break;
                case BasinUse.Filter:
                    Add($"oxygen_{name}_mg_per_L", "mg/L", () => basins.MilligramsPerLitre(b, Substance.Oxygen));
                    Add($"tan_{name}_mgN_per_L", "mg N/L", () => basins.MilligramsPerLitre(b, Substance.Tan));
                    break;
                case BasinUse.FishSump or BasinUse.PlantSump:
                    Add($"level_{name}_L", "L", () => basins.Litres[b]);
                    break;
                default:
                    break;
            }
        }

        Add("spilled_L", "L", () => farm.State.Totals.SpilledLitres);
        Add("leaked_L", "L", () => farm.State.Totals.LeakedLitres);
        Rows = new Recorder([.. _columns.Select(c => c.Column)]);
    }

    /// <summary>The rows; the first column holds the second of the season.</summary>
    public Recorder Rows { get; }

    /// <summary>Adds a row, unless there is one for this second, or the fault is old and the hour not full.</summary>
    /// <param name="seconds">Now.</param>
    public void Add(long seconds)
    {
        long latest = long.MinValue;
        foreach (Fault fault in _farm.State.Faults)
        {
            latest = Math.Max(latest, Math.Max(fault.BeganSeconds, fault.MendedSeconds));
        }

        if (seconds == _last || (seconds - latest > FineSeconds && seconds % HourSeconds != 0))
        {
            return;
        }

        _last = seconds;
        for (int i = 0; i < _columns.Count; i++)
        {
            Rows.Accumulate(i, _columns[i].Value(), 0);
        }

        Rows.CloseRow();
    }

    /// <summary>Counts the dead of a step.</summary>
    public void CountDead()
    {
        for (int b = 0; b < _dead.Length; b++)
        {
            _dead[b] += _farm.Died[b];
        }
    }

    /// <summary>Takes over another trace.</summary>
    public void CopyFrom(FaultTrace other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Rows.CopyFrom(other.Rows);
        other._dead.CopyTo(_dead, 0);
        _last = other._last;
    }

    private void Add(string name, string unit, Func<double> value) =>
        _columns.Add((new RecordedColumn(name, unit, ColumnKind.Instant), value));

    private double Inflow(int basin)
    {
        double flow = 0;
        for (int p = 0; p < _farm.Network.EdgeFlow.Length; p++)
        {
            flow += _farm.Network.To(p) == basin ? _farm.Network.EdgeFlow[p] : 0;
        }

        return flow;
    }
}
