using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Equipment;

/// <summary>What runs just now: what the equipment's state, the mains and the backups together leave of every flow, air and light.</summary>
/// <remarks>Worked out anew after every event and at the start of every step; holds no state of its own. Nothing is allocated.</remarks>
public sealed class RunningEquipment
{
    // A basin whose standpipe stays open keeps this share of its water: what stands below the pipe's foot.
    private const double LeftInEmptyBasin = 0.05;

    private readonly FarmParts _parts;
    private readonly FarmState _state;
    private readonly FlowNetwork _network;
    private readonly BackupDescription[] _backups;
    private readonly int[] _blowerOf;
    private readonly int[][] _backupBasins;
    private readonly bool[] _pumped;

    /// <summary>Makes it for a farm.</summary>
    public RunningEquipment(FarmParts parts, FarmState state, FlowNetwork network)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(network);
        _parts = parts;
        _state = state;
        _network = network;
        string[] blowers = [.. parts.Farm.Blowers.Keys];
        _blowerOf = [.. parts.Basins.Select(b => b.Blower is null ? -1 : Array.IndexOf(blowers, b.Blower))];
        _backups = [.. parts.Farm.Backups.Values];
        _backupBasins = [.. _backups.Select(b => (b switch
        {
            BatteryAir battery => battery.Basins,
            OxygenValve oxygen => oxygen.Basins,
            _ => [],
        }).Select(parts.BasinIndex).ToArray())];
        _pumped = [.. parts.Farm.Pipes.Values.Select(p => p.Drive == PipeDrive.Pump)];
        Pump = new double[_pumped.Length];
        Blower = new double[blowers.Length];
        Air = new double[parts.Basins.Length];
        Oxygen = new double[parts.Basins.Length];
        WaterHeater = new double[parts.Heaters.Length];
        ValveFlow = new double[network.ValveNames.Length];
        Refresh(0);
    }

    /// <summary>Share of its flow at which each pump runs, by pipe: 0 or 1; 0 for a pipe without a pump.</summary>
    public double[] Pump { get; }

    /// <summary>Share of its power at which each blower runs.</summary>
    public double[] Blower { get; }

    /// <summary>Share of its air that each basin gets, before what its own valve lets through (<see cref="Water.Basins.AirShare"/>).</summary>
    public double[] Air { get; }

    /// <summary>Pure oxygen that dissolves in each basin, g/h.</summary>
    public double[] Oxygen { get; }

    /// <summary>Share of its output that each heater of the water can give.</summary>
    public double[] WaterHeater { get; }

    /// <summary>Share of its output that the heater of the air can give.</summary>
    public double AirHeater { get; private set; } = 1;

    /// <summary>Share of the ventilation that works.</summary>
    public double Vents { get; private set; } = 1;

    /// <summary>Whether the lamps have power.</summary>
    public bool LampsPowered { get; private set; } = true;

    /// <summary>Share of a step in which lamps burn: as their timer would have them, unless they or it are broken, or without power.</summary>
    /// <param name="lamps">How the lamps stand.</param>
    /// <param name="byTimer">Share by the timer, 0 to 1.</param>
    public double LampShare(LampCondition lamps, double byTimer) => !LampsPowered || lamps == LampCondition.Dark ? 0
        : lamps == LampCondition.BurnsOn ? 1
        : byTimer;

    /// <summary>Exchange through each valve in the step, L/h each way.</summary>
    public double[] ValveFlow { get; }

    /// <summary>Exchange through a valve as it stands now, L/h each way: as set, or where it is stuck.</summary>
    public double ExchangeOf(int valve) => double.IsNaN(_state.Equipment.ValveStuckAt[valve])
        ? _state.ValveFlow[valve]
        : _state.Equipment.ValveStuckAt[valve];

    /// <summary>Whether consumers have power, from the mains or a running generator.</summary>
    public bool IsPowered(PowerLoad load)
    {
        if (_state.Equipment.MainsOn)
        {
            return true;
        }

        for (int i = 0; i < _backups.Length; i++)
        {
            if (_state.Equipment.Backups[i].Phase == BackupPhase.Running && _backups[i] is Generator generator && Feeds(generator, load))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a generator is wired to consumers.</summary>
    public static bool Feeds(Generator generator, PowerLoad load)
    {
        ArgumentNullException.ThrowIfNull(generator);
        return load switch
        {
            PowerLoad.Blowers => generator.FeedsBlowers,
            PowerLoad.Pumps => generator.FeedsPumps,
            PowerLoad.WaterHeaters => generator.FeedsWaterHeaters,
            PowerLoad.House => generator.FeedsHouse,
            PowerLoad.Lamps => generator.FeedsLamps,
            _ => throw new ArgumentOutOfRangeException(nameof(load)),
        };
    }

    /// <summary>Basins that a backup serves; none for a generator.</summary>
    public int[] BasinsOf(int backup) => _backupBasins[backup];

    /// <summary>Whether the blower of a basin turns (a basin with air but no blower named counts as fed by one in order).</summary>
    public bool BlowerTurns(int basin) => _blowerOf[basin] < 0 ? IsPowered(PowerLoad.Blowers) : Blower[_blowerOf[basin]] > 0;

    /// <summary>Whether pumped pipes feed a basin and none of them runs.</summary>
    public bool FlowIsOff(int basin)
    {
        bool fed = false;
        for (int p = 0; p < _pumped.Length; p++)
        {
            if (_pumped[p] && _network.To(p) == basin)
            {
                fed = true;
                if (Pump[p] > 0 && _network.EdgeFlow[p] > 0)
                {
                    return false;
                }
            }
        }

        return fed;
    }

    /// <summary>Works out what runs.</summary>
    /// <param name="seconds">Now.</param>
    public void Refresh(long seconds)
    {
        EquipmentState equipment = _state.Equipment;
        bool pumps = IsPowered(PowerLoad.Pumps);
        bool blowers = IsPowered(PowerLoad.Blowers);
        bool house = IsPowered(PowerLoad.House);
        bool heaters = IsPowered(PowerLoad.WaterHeaters);
        LampsPowered = IsPowered(PowerLoad.Lamps);
        AirHeater = house && !equipment.AirHeaterBroken ? 1 : 0;
        Vents = house ? 1 : _parts.Farm.House.VentilationWithoutPower;
        for (int p = 0; p < Pump.Length; p++)
        {
            Pump[p] = _pumped[p] && pumps && !equipment.PumpBroken[p] ? 1 : 0;
        }

        for (int k = 0; k < Blower.Length; k++)
        {
            Blower[k] = blowers && !equipment.BlowerBroken[k] ? 1 : 0;
        }

        for (int h = 0; h < WaterHeater.Length; h++)
        {
            WaterHeater[h] = heaters && !equipment.WaterHeaterBroken[h] ? 1 : 0;
        }

        for (int v = 0; v < ValveFlow.Length; v++)
        {
            ValveFlow[v] = ExchangeOf(v);
        }

        for (int b = 0; b < Air.Length; b++)
        {
            double blower = _blowerOf[b] < 0 ? (blowers ? 1 : 0) : Blower[_blowerOf[b]];
            Air[b] = blower > 0 ? blower * equipment.AirLineShare(b, seconds) : 0;
            Oxygen[b] = 0;
            bool opens = pumps || !_parts.Basins[b].FloatValveNeedsPower;
            _network.FloatValves[b] = equipment.FloatValves[b] == FloatValveCondition.Well && !opens
                ? FloatValveCondition.StuckShut
                : equipment.FloatValves[b];
            _network.DrainBlocked[b] = equipment.Drains[b] == DrainCondition.Blocked;
            _network.LevelShare[b] = equipment.Drains[b] == DrainCondition.StaysOpen ? LeftInEmptyBasin : 1;
            _network.LeakWanted[b] = equipment.LeakLitresPerHour[b];
        }

        for (int i = 0; i < _backups.Length; i++)
        {
            if (equipment.Backups[i].Phase == BackupPhase.Running)
            {
                AddBackup(i);
            }
        }
    }

    private void AddBackup(int backup)
    {
        foreach (int b in _backupBasins[backup])
        {
            switch (_backups[backup])
            {
                case BatteryAir battery:
                    Air[b] = Math.Max(Air[b], battery.AirShare);
                    break;
                case OxygenValve oxygen:
                    Oxygen[b] += oxygen.GramsPerHour * oxygen.DissolvedShare;
                    break;
                default:
                    break;
            }
        }
    }
}
