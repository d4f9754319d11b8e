using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>What somebody does who stands before the alarm box: acknowledges, tests by hand, puts probes right, mends what is broken, stops the feed.</summary>
public sealed class Attendance : FarmWork
{
    private readonly ProbeProcess _probes;
    private readonly FaultWork _faults;

    /// <summary>Makes it.</summary>
    public Attendance(FarmContext farm, FarmLog log, ProbeProcess probes, FaultWork faults)
        : base(farm, log)
    {
        _probes = probes;
        _faults = faults;
    }

    /// <summary>Sees to everything that stands.</summary>
    /// <param name="seconds">Now.</param>
    /// <param name="person">Who; −1 where nobody is described.</param>
    public void Attend(long seconds, int person)
    {
        AlarmBoard board = State.Alarms;
        string by = person < 0 ? "the morning round" : Parts.Alarms.PeopleNames[person];
        foreach (AlarmIncident incident in board.Incidents)
        {
            if (incident.ArrivedSeconds < 0)
            {
                incident.ArrivedSeconds = seconds;
                incident.AnsweredSeconds = incident.AnsweredSeconds < 0 ? seconds : incident.AnsweredSeconds;
                incident.AnsweredBy = incident.AnsweredBy < 0 ? person : incident.AnsweredBy;
                Log.Add(seconds, "alarm attended", Parts.Alarms.Points[incident.Point].Name, (seconds - incident.RaisedSeconds) / UnitConstants.SecondsPerMinute,
                    "min after it was raised", $"by {by}: {WhatIsFound(incident, seconds)}");
            }
        }

        if (person >= 0)
        {
            _faults.Attend(seconds, by);
        }

        for (int i = 0; i < board.States.Length; i++)
        {
            bool latching = Parts.Alarms.Points[i].Latching;
            board.States[i] = AlarmMachine.Next(board.States[i], AlarmInput.Acknowledge, latching);
            board.States[i] = AlarmMachine.Next(board.States[i], AlarmInput.Reset, latching);
        }
    }

    // The hand meter settles whether it was the process or the probe; a probe that lied is put right at once.
    private string WhatIsFound(AlarmIncident incident, long seconds)
    {
        AlarmPoint point = Parts.Alarms.Points[incident.Point];
        string probe = Parts.Alarms.ProbeNames[point.Probe];
        if (point.Condition != AlarmCondition.SensorFault && !incident.IsFalse)
        {
            return PutThermostatsRight(point, seconds) is { } wrong ? wrong
                : incident.ReturnedSeconds >= 0 ? "it had returned by itself" : point.Card;
        }

        double offset = _probes.Offset(point.Probe, seconds);
        bool stuck = State.Probes.Stuck[point.Probe];
        _probes.Calibrate(point.Probe, seconds);
        return stuck
            ? $"probe '{probe}' stood still and was replaced"
            : $"false alarm: by the hand meter probe '{probe}' was {offset:+0.##;-0.##} off; it was calibrated";
    }

    // Water that is truly too warm or too cold sends the hand meter to the probe that the heater goes by.
    private string? PutThermostatsRight(AlarmPoint point, long seconds)
    {
        if (Parts.Alarms.Quantities[point.Probe] != ProbeQuantity.WaterTemperature)
        {
            return null;
        }

        foreach (WaterHeaterDescription heater in Parts.Heaters)
        {
            if (heater.Thermostat is { } name && Parts.Alarms.ProbeIndex(name) is var probe
                && (State.Probes.Stuck[probe] || Math.Abs(_probes.Offset(probe, seconds)) > Parts.Alarms.Parameters.NoticedErrorKelvin))
            {
                double offset = _probes.Offset(probe, seconds);
                _probes.Calibrate(probe, seconds);
                return $"the heater's probe '{name}' was {offset:+0.#;-0.#} K off; it was calibrated";
            }
        }

        return null;
    }
}
