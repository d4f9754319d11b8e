using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Equipment;

/// <summary>How a lamp group stands.</summary>
public enum LampCondition
{
    /// <summary>It follows its timer.</summary>
    Well,

    /// <summary>It stays dark.</summary>
    Dark,

    /// <summary>Its timer sticks: it burns day and night.</summary>
    BurnsOn,
}

/// <summary>How the way out of a basin stands.</summary>
public enum DrainCondition
{
    /// <summary>It holds the normal level.</summary>
    Well,

    /// <summary>Blocked: the basin fills to the brim.</summary>
    Blocked,

    /// <summary>It stays open: the basin runs nearly empty.</summary>
    StaysOpen,
}

/// <summary>How a float valve stands.</summary>
public enum FloatValveCondition
{
    /// <summary>It keeps the level.</summary>
    Well,

    /// <summary>It lets nothing in.</summary>
    StuckShut,

    /// <summary>It never closes.</summary>
    StuckOpen,
}

/// <summary>What is well and what is broken among the equipment, and whether there is mains power. Changes in events only.</summary>
/// <remarks>What runs because of it is worked out by <see cref="RunningEquipment"/>.</remarks>
public sealed class EquipmentState
{
    /// <summary>Makes the state of equipment in order.</summary>
    /// <param name="parts">The farm.</param>
    /// <param name="valves">Number of valves.</param>
    public EquipmentState(FarmParts parts, int valves)
    {
        ArgumentNullException.ThrowIfNull(parts);
        FarmDescription farm = parts.Farm;
        PumpBroken = new bool[farm.Pipes.Count];
        PumpRan = new bool[farm.Pipes.Count];
        Array.Fill(PumpRan, true);
        BlowerBroken = new bool[farm.Blowers.Count];
        WaterHeaterBroken = new bool[farm.WaterHeaters.Count];
        Lamps = new LampCondition[farm.Lamps.Count];
        ValveStuckAt = new double[valves];
        Array.Fill(ValveStuckAt, double.NaN);
        Drains = new DrainCondition[parts.Basins.Length];
        FloatValves = new FloatValveCondition[parts.Basins.Length];
        LeakLitresPerHour = new double[parts.Basins.Length];
        AirLost = new double[parts.Basins.Length];
        AirLostSince = new long[parts.Basins.Length];
        AirLostOver = new long[parts.Basins.Length];
        Backups = new BackupState[farm.Backups.Count];
        for (int i = 0; i < Backups.Length; i++)
        {
            Backups[i] = BackupState.Full;
        }
    }

    /// <summary>Whether there is mains power.</summary>
    public bool MainsOn { get; set; } = true;

    /// <summary>Pumps that are broken, by pipe.</summary>
    public bool[] PumpBroken { get; }

    /// <summary>Pumps that ran when the equipment last changed, by pipe: those that then stop let their water back.</summary>
    public bool[] PumpRan { get; }

    /// <summary>Blowers that are broken.</summary>
    public bool[] BlowerBroken { get; }

    /// <summary>Heaters of the water that are broken.</summary>
    public bool[] WaterHeaterBroken { get; }

    /// <summary>Whether the heater of the house air is broken.</summary>
    public bool AirHeaterBroken { get; set; }

    /// <summary>Lamps over the rafts.</summary>
    public LampCondition[] Lamps { get; }

    /// <summary>Lamps of the nursery.</summary>
    public LampCondition NurseryLamps { get; set; }

    /// <summary>Exchange at which a valve is stuck, L/h; not a number while it follows its setting.</summary>
    public double[] ValveStuckAt { get; }

    /// <summary>Ways out of the basins.</summary>
    public DrainCondition[] Drains { get; }

    /// <summary>Float valves by basin.</summary>
    public FloatValveCondition[] FloatValves { get; }

    /// <summary>Leaks by basin, L/h.</summary>
    public double[] LeakLitresPerHour { get; }

    /// <summary>Share of a basin's air that its clogging line loses in the end; 0 while it is clean.</summary>
    public double[] AirLost { get; }

    /// <summary>When the clogging began, seconds.</summary>
    public long[] AirLostSince { get; }

    /// <summary>How long it takes, seconds.</summary>
    public long[] AirLostOver { get; }

    /// <summary>Backups, in the order of the description.</summary>
    public BackupState[] Backups { get; }

    /// <summary>Share of a basin's air that its line lets through now.</summary>
    public double AirLineShare(int basin, long seconds)
    {
        if (AirLost[basin] <= 0)
        {
            return 1;
        }

        double progress = AirLostOver[basin] > 0 ? Math.Clamp((double)(seconds - AirLostSince[basin]) / AirLostOver[basin], 0, 1) : 1;
        return 1 - (AirLost[basin] * progress);
    }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(EquipmentState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        MainsOn = other.MainsOn;
        other.PumpBroken.CopyTo(PumpBroken, 0);
        other.PumpRan.CopyTo(PumpRan, 0);
        other.BlowerBroken.CopyTo(BlowerBroken, 0);
        other.WaterHeaterBroken.CopyTo(WaterHeaterBroken, 0);
        AirHeaterBroken = other.AirHeaterBroken;
        other.Lamps.CopyTo(Lamps, 0);
        NurseryLamps = other.NurseryLamps;
        other.ValveStuckAt.CopyTo(ValveStuckAt, 0);
        other.Drains.CopyTo(Drains, 0);
        other.FloatValves.CopyTo(FloatValves, 0);
        other.LeakLitresPerHour.CopyTo(LeakLitresPerHour, 0);
        other.AirLost.CopyTo(AirLost, 0);
        other.AirLostSince.CopyTo(AirLostSince, 0);
        other.AirLostOver.CopyTo(AirLostOver, 0);
        other.Backups.CopyTo(Backups, 0);
    }
}
