using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Equipment;

/// <summary>The motors of water and air: what they draw, and the heat that a pump leaves in the water.</summary>
public sealed class PumpsAndBlowers
{
    private readonly FarmContext _farm;
    private readonly double[] _pipeWatts;
    private readonly int[] _pipeTo;
    private readonly double[] _blowerWatts;
    private readonly int[] _blowerOfBasin;

    /// <summary>Makes them.</summary>
    public PumpsAndBlowers(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        PumpHeatWatts = new double[farm.Parts.Basins.Length];
        _pipeWatts = [.. farm.Parts.Farm.Pipes.Values.Select(p => p.PowerWatts)];
        _pipeTo = [.. farm.Parts.Farm.Pipes.Values.Select(p => farm.Parts.BasinIndex(p.To))];
        string[] blowers = [.. farm.Parts.Farm.Blowers.Keys];
        _blowerWatts = [.. farm.Parts.Farm.Blowers.Values.Select(b => b.PowerWatts)];
        _blowerOfBasin = [.. farm.Parts.Basins.Select(b => b.Blower is null ? -1 : Array.IndexOf(blowers, b.Blower))];
    }

    /// <summary>Power of the pumps, with those of the water heaters, W.</summary>
    public double PumpWatts { get; private set; }

    /// <summary>Heat of the pumps into each basin, W.</summary>
    public double[] PumpHeatWatts { get; }

    /// <summary>Power of the blowers, W: a blower runs while any of its basins takes air.</summary>
    public double BlowerWatts { get; private set; }

    /// <summary>Runs pumps and blowers as they stand now.</summary>
    public void Run()
    {
        PumpWatts = 0;
        Array.Clear(PumpHeatWatts);
        for (int p = 0; p < _pipeWatts.Length; p++)
        {
            double watts = _pipeWatts[p] * _farm.Running.Pump[p];
            PumpWatts += watts;
            PumpHeatWatts[_pipeTo[p]] += watts * _farm.Parts.Practice.PumpHeatShare;
        }

        for (int h = 0; h < _farm.Parts.Heaters.Length; h++)
        {
            PumpWatts += _farm.Parts.Heaters[h].PowerWatts * _farm.Running.WaterHeater[h];
        }

        BlowerWatts = 0;
        for (int k = 0; k < _blowerWatts.Length; k++)
        {
            double share = 0;
            double all = 0;
            for (int b = 0; b < _blowerOfBasin.Length; b++)
            {
                if (_blowerOfBasin[b] == k)
                {
                    all += _farm.Parts.Basins[b].AirLitresPerMinute;
                    share += _farm.Parts.Basins[b].AirLitresPerMinute * Math.Min(1, _farm.State.Basins.AirShare[b]);
                }
            }

            BlowerWatts += _farm.Running.Blower[k] * (all > 0 ? _blowerWatts[k] * share / all : _blowerWatts[k]);
        }
    }

    /// <summary>Books the step's power.</summary>
    public void Commit()
    {
        double kilowattHours = _farm.Step.Hours / UnitConstants.GramsPerKilogram;
        _farm.State.Totals.PumpKilowattHours += PumpWatts * kilowattHours;
        _farm.State.Totals.BlowerKilowattHours += BlowerWatts * kilowattHours;
    }
}
