using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Faults: they begin, somebody finds them, they are mended; and what runs follows.</summary>
/// <remarks>
/// Whoever comes to the farm, called by an alarm or for the morning round, calls <see cref="Attend"/>. Nothing else finds a fault. A
/// fault with a fixed time of repair is mended at that time, whoever has seen it.
/// </remarks>
public sealed class FaultWork : FarmWork
{
    private const double SecondsPerMinute = 60;

    private readonly BackupWork _backups;
    private readonly PipeDescription[] _pipes;

    /// <summary>Makes it.</summary>
    public FaultWork(FarmContext farm, FarmLog log, BackupWork backups)
        : base(farm, log)
    {
        _backups = backups;
        _pipes = [.. Parts.Farm.Pipes.Values];
    }

    /// <summary>A planned fault begins.</summary>
    /// <exception cref="DescriptionException">The event names a part that this farm does not have.</exception>
    public void Begin(FaultEvent planned, long seconds)
    {
        (FaultKind kind, int part, string where) = FaultEffects.Target(Farm, planned);
        if (IsBroken(kind, part))
        {
            Log.Add(seconds, "fault", where, 0, string.Empty, "nothing new: it is broken already");
            return;
        }

        FaultEffects.Break(State, planned, kind, part, seconds);
        int number = State.Faults.Count;
        State.Faults.Add(new Fault(NameOf(planned, kind), kind, part, where, seconds, Parts.Basins.Length));
        FaultObservation.Begin(Farm, State.Faults[number]);
        Log.Add(seconds, "fault", where, 0, string.Empty, InWords(State.Faults[number]));
        if (planned.RepairAfterHours is { } hours)
        {
            MendAt(number, seconds + (long)Math.Round(hours * UnitConstants.SecondsPerHour), seconds);
        }

        Changed(seconds);
    }

    /// <summary>The mains come back.</summary>
    public void ReturnMains(long seconds)
    {
        int open = State.Faults.FindIndex(f => f.IsOpen && f.Kind == FaultKind.Mains);
        if (open >= 0)
        {
            Mended(open, seconds);
        }
        else
        {
            Log.Add(seconds, "mended", "mains", 0, string.Empty, "nothing done: the mains are on");
        }
    }

    /// <summary>A person who has arrived sees what is wrong and sets to work: one fault after another; generators are started.</summary>
    /// <remarks>Faults that a person cannot see (a small leak behind a float valve) stay open, and so does a cut of the mains.</remarks>
    /// <param name="seconds">When they are there.</param>
    /// <param name="by">Who, or what brought them ("morning round", "alarm: mains").</param>
    /// <returns>Minutes of work that it takes them; 0 where there is nothing to mend.</returns>
    public double Attend(long seconds, string by)
    {
        double minutes = 0;
        for (int number = 0; number < State.Faults.Count; number++)
        {
            Fault fault = State.Faults[number];
            if (!fault.IsOpen || fault.FoundSeconds >= 0 || !IsVisible(fault, seconds))
            {
                continue;
            }

            fault.FoundSeconds = seconds;
            fault.FoundBy = by;
            double needed = Parts.Faults.RepairMinutes[(int)fault.Kind];
            bool mends = fault.MendsAtSeconds < 0 && !double.IsNaN(needed);
            minutes += mends ? needed : 0;
            Log.Add(seconds, "fault found", fault.Where, (seconds - fault.BeganSeconds) / SecondsPerMinute, "min",
                mends ? $"by {by}; mended in {minutes:0} min" : $"by {by}; {InWords(fault)}");
            if (mends)
            {
                MendAt(number, seconds + (long)Math.Round(minutes * SecondsPerMinute), seconds);
            }
        }

        Spend(Chore.Repair, minutes);
        if (!State.Equipment.MainsOn)
        {
            _backups.StartByHand(seconds, by);
            Changed(seconds);
        }

        return minutes;
    }

    /// <summary>Everything that a person can mend is mended at once.</summary>
    /// <param name="seconds">Now.</param>
    public void MendAll(long seconds)
    {
        for (int number = 0; number < State.Faults.Count; number++)
        {
            Fault fault = State.Faults[number];
            double minutes = Parts.Faults.RepairMinutes[(int)fault.Kind];
            if (fault.IsOpen && !double.IsNaN(minutes))
            {
                if (fault.FoundSeconds < 0)
                {
                    fault.FoundSeconds = seconds;
                    fault.FoundBy = "who put it right";
                }

                Spend(Chore.Repair, minutes);
                Mended(number, seconds);
            }
        }

        Changed(seconds);
    }

    /// <summary>A fault is mended; nothing happens where it was already.</summary>
    /// <param name="number">Its number in <see cref="FarmState.Faults"/>.</param>
    /// <param name="seconds">When.</param>
    public void Mended(int number, long seconds)
    {
        Fault fault = State.Faults[number];
        if (!fault.IsOpen)
        {
            return;
        }

        FaultEffects.Mend(State, fault.Kind, fault.Part);
        fault.MendedSeconds = seconds;
        Log.Add(seconds, "mended", fault.Where, (seconds - fault.BeganSeconds) / SecondsPerMinute, "min",
            fault.Kind == FaultKind.Mains ? "the mains are back" : "works again");
        Changed(seconds);
    }

    /// <summary>Backups were added: those that start by themselves do so where power or air is lost just now.</summary>
    public void BackupsAdded(long seconds) => Changed(seconds);

    /// <summary>Looks after the backups in the morning.</summary>
    public void MorningRound(long seconds)
    {
        Attend(seconds, "morning round");
        _backups.Refill(seconds);
    }

    /// <summary>A backup takes over.</summary>
    public void BackupStarts(int backup, int ordinal, long seconds)
    {
        _backups.Start(backup, ordinal, seconds);
        Changed(seconds);
    }

    /// <summary>A backup has run out.</summary>
    public void BackupRunsOut(int backup, int ordinal, long seconds)
    {
        _backups.RunOut(backup, ordinal, seconds);
        Changed(seconds);
    }

    /// <summary>Keeps what a step did for the faults that are open, or were shortly before.</summary>
    /// <param name="seconds">The step's end.</param>
    /// <param name="hours">Its length, h.</param>
    public void Observe(long seconds, double hours)
    {
        _backups.Observe(hours);
        bool cut = IsCut(seconds);
        foreach (Fault fault in State.Faults)
        {
            if (!IsFollowed(fault, seconds))
            {
                continue;
            }

            FaultObservation.CountLeak(Farm, fault, hours);
            if (!cut || fault.Kind == FaultKind.Mains)
            {
                FaultObservation.Look(Farm, fault, seconds, hours);
            }
        }
    }

    // Asked at every step, so without a closure.
    private bool IsCut(long seconds)
    {
        foreach (Fault fault in State.Faults)
        {
            if (fault.Kind == FaultKind.Mains && IsFollowed(fault, seconds))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a fault is open, or its harm is still counted.</summary>
    public bool IsFollowed(long seconds)
    {
        foreach (Fault fault in State.Faults)
        {
            if (IsFollowed(fault, seconds))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What a fault is, in words.</summary>
    public static string InWords(Fault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        return fault.Kind switch
        {
            FaultKind.Mains => "the mains are off",
            FaultKind.Pump => "the pump has stopped",
            FaultKind.Blower => "the blower has stopped",
            FaultKind.WaterHeater => "the water heater is out",
            FaultKind.AirHeater => "the air heater is out",
            FaultKind.Lamp => "the lamps are dark",
            FaultKind.LampTimer => "the timer sticks: the lamps burn day and night",
            FaultKind.Valve => "the valve is stuck",
            FaultKind.AirLine => "the air line clogs",
            FaultKind.Drain => "the way out of the basin has failed",
            FaultKind.Leak => "water leaks out",
            FaultKind.FloatValve => "the float valve is stuck",
            _ => throw new ArgumentOutOfRangeException(nameof(fault)),
        };
    }

    private bool IsFollowed(Fault fault, long seconds) =>
        fault.IsOpen || seconds <= fault.MendedSeconds + (long)(Parts.Faults.AftermathHours * UnitConstants.SecondsPerHour);

    // What follows when anything has changed: backups take over or stand back, and pumps that stop let their water run back.
    private void Changed(long seconds)
    {
        _backups.Follow(seconds);
        RunningEquipment running = Farm.Running;
        running.Refresh(seconds);
        bool[] ran = State.Equipment.PumpRan;
        for (int p = 0; p < _pipes.Length; p++)
        {
            bool runs = running.Pump[p] > 0;
            if (ran[p] && !runs && _pipes[p].DrainBackLitres > 0 && !_pipes[p].CheckValve)
            {
                double litres = State.Basins.Move(Farm.Network.To(p), Farm.Network.From(p), _pipes[p].DrainBackLitres);
                Log.Add(seconds, "drain-back", _pipes[p].From, litres, "L", $"the pump of '{Farm.Network.PipeNames[p]}' has stopped; a check valve would hold this water");
            }

            ran[p] = runs;
        }
    }

    private void MendAt(int number, long at, long now)
    {
        State.Faults[number].MendsAtSeconds = at;
        if (at <= now)
        {
            Mended(number, now);
        }
        else
        {
            Farm.Calendar.Schedule(at, FarmPhase.Equipment, (int)FarmEventKind.FaultMended, number);
        }
    }

    private bool IsBroken(FaultKind kind, int part)
    {
        foreach (Fault fault in State.Faults)
        {
            bool sameLamps = kind is FaultKind.Lamp or FaultKind.LampTimer && fault.Kind is FaultKind.Lamp or FaultKind.LampTimer;
            if (fault.IsOpen && fault.Part == part && (fault.Kind == kind || sameLamps))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsVisible(Fault fault, long seconds) => fault.Kind switch
    {
        FaultKind.Valve => Math.Abs(State.Equipment.ValveStuckAt[fault.Part] - State.ValveFlow[fault.Part]) > 0,
        FaultKind.AirLine => 1 - State.Equipment.AirLineShare(fault.Part, seconds) >= Parts.Faults.AirLossSeenShare,
        FaultKind.Leak => State.Equipment.LeakLitresPerHour[fault.Part] >= Parts.Faults.LeakSeenLitresPerHour,
        _ => true,
    };

    private string NameOf(FaultEvent planned, FaultKind kind)
    {
        string name = Parts.Farm.Plan.FirstOrDefault(p => ReferenceEquals(p.Value, planned)).Key
            ?? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{kind}").ToLowerInvariant();
        string unique = name;
        for (int copy = 2; State.Faults.Exists(f => f.Name == unique); copy++)
        {
            unique = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name}-{copy}");
        }

        return unique;
    }
}
