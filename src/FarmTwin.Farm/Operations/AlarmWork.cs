using FarmTwin.Engine;
using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>What follows when an alarm is raised: the valve closes, the sounder and the phone tree go, somebody comes.</summary>
public sealed class AlarmWork : FarmWork
{
    private readonly ProbeProcess _probes;
    private readonly Attendance _attendance;
    private readonly CouplingWork _coupling;
    private readonly AlarmParts _parts;
    private readonly long _escalate;

    /// <summary>Makes it.</summary>
    public AlarmWork(FarmContext farm, FarmLog log, ProbeProcess probes, CouplingWork coupling, FaultWork faults)
        : base(farm, log)
    {
        _probes = probes;
        _coupling = coupling;
        _attendance = new Attendance(farm, log, probes, faults);
        _parts = Parts.Alarms;
        People = new PeopleCalendar(_parts.People, Parts.Farm.Start);
        _escalate = Minutes(_parts.Box.EscalateMinutes ?? _parts.Parameters.EscalateAfterMinutes);
    }

    /// <summary>Who is on site when.</summary>
    public PeopleCalendar People { get; }

    /// <summary>Tells of what the step found.</summary>
    public void Announce(long seconds, Simulation simulation)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        AlarmBoard board = State.Alarms;
        bool raised = false;
        foreach (AlarmChange change in board.Changes)
        {
            AlarmPoint point = _parts.Points[change.Point];
            string unit = ProbeQuantities.Unit(_parts.Quantities[point.Probe]);
            if (!change.Raised)
            {
                if (board.LastOf(change.Point) is { } incident)
                {
                    incident.ReturnedSeconds = change.Seconds;
                }

                Log.Add(seconds, "alarm returned", point.Name, change.Reading, unit == "1" ? string.Empty : unit, At(change.Seconds, seconds).TrimStart());
                continue;
            }

            board.Incidents.Add(new AlarmIncident
            {
                Point = change.Point,
                RaisedSeconds = change.Seconds,
                Reading = change.Reading,
                Truth = change.Truth,
                IsFalse = change.IsFalse,
            });
            Log.Add(seconds, "alarm", point.Name, change.Reading, unit == "1" ? string.Empty : unit,
                $"{Words(point.Priority)} priority{At(change.Seconds, seconds)}: {point.Card}");
            raised = true;
            if (point.Decouples && _parts.Box.FailDecoupled)
            {
                _coupling.CloseForAlarm(seconds, point.Name);
            }
        }

        board.Changes.Clear();
        if (raised)
        {
            Summon(seconds, simulation);
        }

        NoteStanding(seconds);
    }

    /// <summary>The next call of the phone tree.</summary>
    public void Call(int place, int round, long seconds, Simulation simulation)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        AlarmBoard board = State.Alarms;
        AlarmIncident[] open = [.. board.Incidents.Where(i => i.AnsweredSeconds < 0 && _parts.Points[i.Point].Priority > AlarmPriority.Low)];
        if (open.Length == 0)
        {
            board.Calling = false;
            return;
        }

        if (!_parts.Box.OwnLine && !State.Equipment.MainsOn)
        {
            if (place == 0 && round == 0)
            {
                Log.Add(seconds, "alarm box cannot dial", _parts.Points[open[0].Point].Name, 0, "calls", "its phone line needs the mains, and they are off");
            }

            simulation.Calendar.Schedule(
                seconds + Minutes(_parts.Parameters.RoundPauseMinutes), FarmPhase.Guard, (int)FarmEventKind.AlarmCall, 0, round + 1);
            return;
        }

        int person = _parts.CallOrder[place];
        foreach (AlarmIncident incident in open)
        {
            incident.FirstCallSeconds = incident.FirstCallSeconds < 0 ? seconds : incident.FirstCallSeconds;
        }

        if (People.Answers(person, seconds))
        {
            board.Calling = false;
            board.ArrivesAt[person] = seconds + Minutes(_parts.People[person].TravelMinutes);
            foreach (AlarmIncident incident in open)
            {
                incident.AnsweredSeconds = seconds;
                incident.AnsweredBy = person;
            }

            Log.Add(seconds, "alarm answered", _parts.PeopleNames[person], (seconds - open[0].RaisedSeconds) / UnitConstants.SecondsPerMinute,
                "min after it was raised", $"is there in {_parts.People[person].TravelMinutes:0} min");
            simulation.Calendar.Schedule(board.ArrivesAt[person], FarmPhase.Guard, (int)FarmEventKind.AlarmArrival, person);
            return;
        }

        foreach (AlarmIncident incident in open)
        {
            incident.MissedCalls++;
        }

        bool last = place + 1 == _parts.CallOrder.Length;
        if (last && round == 0)
        {
            Log.Add(seconds, "alarm unanswered", _parts.Points[open[0].Point].Name, _parts.CallOrder.Length, "calls",
                "nobody of the phone tree answered; the box goes on calling");
        }

        long pause = last ? Minutes(_parts.Parameters.RoundPauseMinutes) : 0;
        simulation.Calendar.Schedule(
            seconds + _escalate + pause, FarmPhase.Guard, (int)FarmEventKind.AlarmCall, last ? 0 : place + 1, last ? round + 1 : round);
    }

    /// <summary>Somebody who may be on site by now looks at the box.</summary>
    public void Look(long seconds, Simulation simulation)
    {
        int person = People.SomebodyOnSite(seconds, State.Alarms.VisitUntil);
        if (person >= 0)
        {
            Attend(seconds, person);
        }
        else if (State.Alarms.Incidents.Any(i => i.AnsweredSeconds < 0))
        {
            Summon(seconds, simulation);
        }
    }

    /// <summary>A person who was called is there.</summary>
    public void Arrive(int person, long seconds)
    {
        State.Alarms.ArrivesAt[person] = -1;
        State.Alarms.VisitUntil[person] = seconds + Minutes(_parts.Parameters.VisitMinutes);
        Spend(Chore.AnswerAlarm, (2 * _parts.People[person].TravelMinutes) + _parts.Parameters.VisitMinutes);
        Attend(seconds, person);
    }

    /// <summary>The morning's look at the box, the probes that are due, the monthly test; the valve, if all has been quiet.</summary>
    public void MorningRound(long seconds)
    {
        if (_parts.Probes.Length == 0)
        {
            return;
        }

        Attend(seconds, People.SomebodyOnSite(seconds, State.Alarms.VisitUntil));
        for (int p = 0; p < _parts.Probes.Length; p++)
        {
            if (DayOf(seconds - State.Probes.CalibratedSeconds[p]) >= _parts.Probes[p].CalibrateEveryDays)
            {
                double offset = _probes.Offset(p, seconds);
                _probes.Calibrate(p, seconds);
                Spend(Chore.CalibrateProbe, 1);
                string unit = ProbeQuantities.DifferenceUnit(_parts.Quantities[p]);
                Log.Add(seconds, "calibrate probe", _parts.ProbeNames[p], offset, unit == "1" ? string.Empty : unit, "off before it was calibrated");
            }
        }

        Test(seconds);
        double reopenAfter = _parts.Box.ReopenAfterHours ?? _parts.Parameters.ReopenAfterHours;
        AlarmBoard board = State.Alarms;
        if (board.ClosedSinceSeconds >= 0 && board.QuietSinceSeconds >= 0
            && seconds - Math.Max(board.QuietSinceSeconds, board.ClosedSinceSeconds) >= reopenAfter * UnitConstants.SecondsPerHour)
        {
            _coupling.ReopenAfterAlarm(seconds, _parts.Parameters.ReopenSharePerDay);
        }
    }

    private void Attend(long seconds, int person)
    {
        _attendance.Attend(seconds, person);
        NoteStanding(seconds);
    }

    private void Test(long seconds)
    {
        AlarmBoard board = State.Alarms;
        if (_parts.Points.Length == 0 || DayOf(seconds - board.TestedSeconds) < (_parts.Box.TestEveryDays ?? _parts.Parameters.TestEveryDays))
        {
            return;
        }

        board.TestedSeconds = seconds;
        board.Tests++;
        Spend(Chore.TestAlarms, 1);
        Log.Add(seconds, "test alarms", "farm", _parts.Points.Length, "alarms", "each raised by hand, phoned out to the whole tree, and acknowledged");
        for (int p = 0; p < _parts.Probes.Length; p++)
        {
            if (State.Probes.Stuck[p])
            {
                _probes.Calibrate(p, seconds);
                Log.Add(seconds, "replace probe", _parts.ProbeNames[p], 1, "probe", "the test of the alarms found that it stood still");
            }
        }
    }

    // Whoever is on site hears the sounder; else the box dials; and whoever comes next by hours finds it anyway.
    private void Summon(long seconds, Simulation simulation)
    {
        AlarmBoard board = State.Alarms;
        if (!People.HasPeople)
        {
            return;
        }

        if (People.SomebodyOnSite(seconds, board.VisitUntil) >= 0)
        {
            simulation.Calendar.Schedule(seconds + Minutes(_parts.Parameters.SoundHeardMinutes), FarmPhase.Guard, (int)FarmEventKind.AlarmLook);
            return;
        }

        if (People.NextOnSite(seconds) is >= 0 and var next)
        {
            simulation.Calendar.Schedule(next, FarmPhase.Guard, (int)FarmEventKind.AlarmLook);
        }

        if (!board.Calling && _parts.CallOrder.Length > 0)
        {
            board.Calling = true;
            simulation.Calendar.Schedule(
                seconds + (long)_parts.Parameters.DialAfterSeconds, FarmPhase.Guard, (int)FarmEventKind.AlarmCall, 0, 0);
        }
    }

    private void NoteStanding(long seconds)
    {
        AlarmBoard board = State.Alarms;
        bool quiet = true;
        for (int i = 0; i < board.States.Length; i++)
        {
            AlarmState state = board.States[i];
            quiet &= !_parts.Points[i].Decouples || state == AlarmState.Normal || AlarmMachine.IsInhibited(state);
        }

        board.QuietSinceSeconds = !quiet ? -1 : board.QuietSinceSeconds < 0 ? seconds : board.QuietSinceSeconds;
    }

    private static string Words(AlarmPriority priority) => priority switch
    {
        AlarmPriority.High => "high",
        AlarmPriority.Medium => "medium",
        _ => "low",
    };

    private static string At(long when, long now) => when == now ? string.Empty : $" since {TimeSpan.FromSeconds(when % UnitConstants.SecondsPerDay):hh\\:mm}";

    private static long Minutes(double minutes) => (long)Math.Round(minutes * UnitConstants.SecondsPerMinute);
}
