using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Backups: they take over when power or air is lost, stand back when it returns, and run out.</summary>
public sealed class BackupWork : FarmWork
{
    private readonly BackupDescription[] _backups;
    private readonly string[] _names;

    /// <summary>Makes it.</summary>
    /// <exception cref="DescriptionException">A generator is wired to more than it can carry.</exception>
    public BackupWork(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
        _backups = [.. Parts.Farm.Backups.Values];
        _names = [.. Parts.Farm.Backups.Keys];
        for (int i = 0; i < _backups.Length; i++)
        {
            if (_backups[i] is Generator generator)
            {
                CheckLoad(_names[i], generator);
            }
        }
    }

    /// <summary>Running time that a full backup has, s.</summary>
    public static double FullSeconds(BackupDescription backup) => UnitConstants.SecondsPerHour * backup switch
    {
        BatteryAir battery => battery.BatteryWattHours * battery.UsableShare * battery.Efficiency / battery.PowerWatts,
        Generator generator => generator.FuelHours,
        OxygenValve oxygen => oxygen.CylinderKilograms * UnitConstants.GramsPerKilogram / (oxygen.GramsPerHour * oxygen.Basins.Count),
        _ => throw new ArgumentOutOfRangeException(nameof(backup)),
    };

    /// <summary>Starts what must start by itself, and stops what is no longer wanted. Generators first: what they feed needs no other backup.</summary>
    public void Follow(long seconds)
    {
        for (int i = 0; i < _backups.Length; i++)
        {
            if (_backups[i] is Generator)
            {
                Follow(i, seconds);
            }
        }

        Farm.Running.Refresh(seconds);
        for (int i = 0; i < _backups.Length; i++)
        {
            if (_backups[i] is not Generator)
            {
                Follow(i, seconds);
            }
        }
    }

    /// <summary>A person starts the generators that wait for one.</summary>
    public void StartByHand(long seconds, string by)
    {
        for (int i = 0; i < _backups.Length; i++)
        {
            if (_backups[i] is Generator { StartsByItself: false } generator && State.Equipment.Backups[i].Phase == BackupPhase.Ready && Wanted(i))
            {
                Log.Add(seconds, "backup called", _names[i], generator.StartMinutes, "min", $"by {by}");
                Begin(i, generator.StartMinutes * 60, seconds);
            }
        }
    }

    /// <summary>A backup takes its load, unless it has been told otherwise since.</summary>
    public void Start(int backup, int ordinal, long seconds)
    {
        BackupState state = State.Equipment.Backups[backup];
        if (state.Ordinal == ordinal && state.Phase == BackupPhase.Starting)
        {
            TakeLoad(backup, seconds);
        }
    }

    /// <summary>A backup has run out, unless it was stopped or filled since.</summary>
    public void RunOut(int backup, int ordinal, long seconds)
    {
        BackupState state = State.Equipment.Backups[backup];
        if (state.Ordinal == ordinal && state.Phase == BackupPhase.Running)
        {
            State.Equipment.Backups[backup] = state.To(BackupPhase.Empty, seconds, FullSeconds(_backups[backup]));
            Log.Add(seconds, "backup empty", _names[backup], FullSeconds(_backups[backup]) / UnitConstants.SecondsPerHour, "h",
                "it has nothing left");
        }
    }

    /// <summary>Fuel and cylinders are filled up, once the mains are on.</summary>
    public void Refill(long seconds)
    {
        for (int i = 0; i < _backups.Length; i++)
        {
            BackupState state = State.Equipment.Backups[i];
            if (_backups[i] is not BatteryAir && state.UsedSeconds > 0 && !Wanted(i))
            {
                State.Equipment.Backups[i] = state.To(BackupPhase.Ready, seconds, 0);
                Log.Add(seconds, "backup filled", _names[i], state.UsedSeconds / UnitConstants.SecondsPerHour, "h",
                    _backups[i] is Generator ? "fuel for the hours it ran" : "a full cylinder");
            }
        }
    }

    /// <summary>Counts the hours that they run.</summary>
    public void Observe(double hours)
    {
        BackupState[] states = State.Equipment.Backups;
        for (int i = 0; i < states.Length; i++)
        {
            if (states[i].Phase == BackupPhase.Running)
            {
                states[i] = states[i] with { RanHours = states[i].RanHours + hours };
            }
        }
    }

    private void Follow(int i, long seconds)
    {
        BackupState state = State.Equipment.Backups[i];
        bool wanted = Wanted(i);
        if (wanted && state.Phase == BackupPhase.Ready)
        {
            if (_backups[i] is not Generator generator)
            {
                Begin(i, 0, seconds);
            }
            else if (generator.StartsByItself)
            {
                Begin(i, generator.StartMinutes * 60, seconds);
            }
        }
        else if (!wanted && state.Phase is BackupPhase.Running or BackupPhase.Starting or BackupPhase.Empty)
        {
            double used = state.UsedSeconds + (state.Phase == BackupPhase.Running ? seconds - state.SinceSeconds : 0);
            bool empty = state.Phase == BackupPhase.Empty && _backups[i] is not BatteryAir;
            if (!empty)
            {
                State.Equipment.Backups[i] = state.To(BackupPhase.Ready, seconds, used);
            }

            if (state.Phase == BackupPhase.Running)
            {
                Log.Add(seconds, "backup stops", _names[i], (seconds - state.SinceSeconds) / UnitConstants.SecondsPerHour, "h",
                    $"{Math.Max(0, 1 - (used / FullSeconds(_backups[i]))):0%} is left");
            }
        }
    }

    // A battery has been on its charger since it last stood back.
    private void Begin(int i, double startSeconds, long seconds)
    {
        BackupState state = State.Equipment.Backups[i];
        double used = state.UsedSeconds;
        if (_backups[i] is BatteryAir battery)
        {
            double charged = (seconds - state.SinceSeconds) / (battery.RechargeHours * UnitConstants.SecondsPerHour);
            used = Math.Max(0, used - (charged * FullSeconds(battery)));
        }

        State.Equipment.Backups[i] = state.To(BackupPhase.Starting, seconds, used);
        if (startSeconds < 1)
        {
            TakeLoad(i, seconds);
        }
        else
        {
            Farm.Calendar.Schedule(seconds + (long)Math.Round(startSeconds), FarmPhase.Equipment, (int)FarmEventKind.BackupStarts,
                i, State.Equipment.Backups[i].Ordinal);
        }
    }

    private void TakeLoad(int i, long seconds)
    {
        BackupState state = State.Equipment.Backups[i];
        double left = FullSeconds(_backups[i]) - state.UsedSeconds;
        if (left < 1)
        {
            State.Equipment.Backups[i] = state.To(BackupPhase.Empty, seconds, state.UsedSeconds);
            Log.Add(seconds, "backup empty", _names[i], 0, "h", "it had nothing left");
            return;
        }

        BackupState running = state.To(BackupPhase.Running, seconds, state.UsedSeconds) with { Starts = state.Starts + 1 };
        State.Equipment.Backups[i] = running;
        Log.Add(seconds, "backup starts", _names[i], left / UnitConstants.SecondsPerHour, "h", "it can run that long");
        Farm.Calendar.Schedule(seconds + (long)Math.Floor(left), FarmPhase.Equipment, (int)FarmEventKind.BackupRunsOut, i, running.Ordinal);
    }

    // Batteries and valves hang on the blowers' circuit: a generator that feeds it makes them stand back.
    private bool Wanted(int i)
    {
        if (_backups[i] is Generator)
        {
            return !State.Equipment.MainsOn;
        }

        if (!Farm.Running.IsPowered(PowerLoad.Blowers))
        {
            return true;
        }

        if (_backups[i] is BatteryAir { PressureSwitch: true })
        {
            foreach (int basin in Farm.Running.BasinsOf(i))
            {
                if (!Farm.Running.BlowerTurns(basin))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private void CheckLoad(string name, Generator generator)
    {
        double watts = 0;
        if (generator.FeedsBlowers)
        {
            watts += Parts.Farm.Blowers.Values.Sum(b => b.PowerWatts);
        }

        if (generator.FeedsPumps)
        {
            watts += Parts.Farm.Pipes.Values.Where(p => p.Drive == PipeDrive.Pump).Sum(p => p.PowerWatts);
        }

        if (generator.FeedsWaterHeaters)
        {
            watts += Parts.Heaters.Select((h, i) => h.PowerWatts + (Parts.HeaterFuel[i].SaleUnit == "kWh" ? h.OutputKilowatts * 1000 / Parts.HeaterSource[i].Efficiency : 0)).Sum();
        }

        if (generator.FeedsLamps)
        {
            watts += Parts.Farm.Lamps.Values.Sum(l => l.Count * l.PowerWatts);
            watts += Parts.Farm.Nursery is { } nursery ? nursery.Tiers * nursery.PowerPerTierWatts : 0;
        }

        double kilowatts = watts / UnitConstants.GramsPerKilogram;
        if (kilowatts > generator.PowerKilowatts)
        {
            throw new DescriptionException(
                $"backups.{name}: the generator gives {generator.PowerKilowatts:0.##} kW, but what it is wired to takes {kilowatts:0.##} kW; "
                + "give it more 'power', or wire it to less (set 'lamps', 'waterHeaters', 'pumps' to false).");
        }
    }
}
