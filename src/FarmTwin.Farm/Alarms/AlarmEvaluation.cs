using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Alarms;

/// <summary>Moves the alarms of a probe on at each sample: conditions, delays, deadbands, states.</summary>
/// <remarks>What it finds is written on the board as changes; people are told in an event, never in a step.</remarks>
internal sealed class AlarmEvaluation
{
    private const double Soonest = 60;

    private readonly FarmContext _farm;
    private readonly AlarmParts _parts;
    private readonly long[] _flatSeconds;

    public AlarmEvaluation(FarmContext farm)
    {
        _farm = farm;
        _parts = farm.Parts.Alarms;
        _flatSeconds = [.. _parts.Probes.Select(p => (long)(p.FlatLineHours * UnitConstants.SecondsPerHour))];
    }

    /// <summary>Shelves, suppresses and resumes alarms as the moment demands.</summary>
    public void SetInhibitions(long seconds)
    {
        AlarmBoard board = _farm.State.Alarms;
        bool fish = AnyFish();
        bool isDead = !_parts.Box.Battery && !_farm.State.Equipment.MainsOn;
        for (int i = 0; i < _parts.Points.Length; i++)
        {
            AlarmPoint point = _parts.Points[i];
            AlarmState state = board.States[i];
            AlarmState wanted = isDead ? AlarmState.OutOfService
                : IsShelved(point, seconds) ? AlarmState.Shelved
                : IsSuppressed(i, point, fish) ? AlarmState.SuppressedByDesign
                : AlarmState.Normal;
            if (AlarmMachine.IsInhibited(state) && state != wanted)
            {
                state = AlarmMachine.Next(state, AlarmInput.Resume, point.Latching);
            }

            // A standing alarm may be shelved by a person, or die with its box, but no rule takes it out of sight.
            if (wanted is AlarmState.Shelved or AlarmState.OutOfService && state != wanted)
            {
                Leave(i, seconds);
                state = AlarmMachine.Next(state, wanted == AlarmState.Shelved ? AlarmInput.Shelve : AlarmInput.TakeOut, point.Latching);
            }
            else if (wanted == AlarmState.SuppressedByDesign && state == AlarmState.Normal)
            {
                state = AlarmMachine.Next(state, AlarmInput.Suppress, point.Latching);
            }

            if (AlarmMachine.IsInhibited(state))
            {
                board.OnSince[i] = -1;
                board.OffSince[i] = -1;
            }

            board.States[i] = state;
        }
    }

    /// <summary>Evaluates the alarms of a probe at a sample.</summary>
    public void Evaluate(int probe, long seconds, double truth)
    {
        bool fault = IsFaulty(probe, seconds);
        foreach (int i in _parts.PointsOfProbe[probe])
        {
            if (!AlarmMachine.IsInhibited(_farm.State.Alarms.States[i]))
            {
                Evaluate(i, seconds, truth, fault);
            }
        }
    }

    /// <summary>Whether a probe's readings between two values would leave all its alarms at rest.</summary>
    public bool IsClear(int probe, double low, double high)
    {
        ProbeParameters model = _parts.Probes[probe];
        if (low <= model.LowEnd || high >= model.HighEnd)
        {
            return false;
        }

        AlarmBoard board = _farm.State.Alarms;
        double rate = _farm.State.Probes.RatePerHour[probe];
        foreach (int i in _parts.PointsOfProbe[probe])
        {
            if (AlarmMachine.IsInhibited(board.States[i]))
            {
                continue;
            }

            AlarmPoint point = _parts.Points[i];
            if (AlarmMachine.IsActive(board.States[i]) || board.OnSince[i] >= 0 || point.IsMetBy(low, rate) || point.IsMetBy(high, rate))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a mean reading lies beyond a limit whose alarm is at rest.</summary>
    public bool IsBeyond(int probe, double mean)
    {
        foreach (int i in _parts.PointsOfProbe[probe])
        {
            AlarmState state = _farm.State.Alarms.States[i];
            if (!AlarmMachine.IsInhibited(state) && !AlarmMachine.IsActive(state) && _parts.Points[i].IsMetBy(mean, 0))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether an alarm of a probe waits for the end of its on-delay.</summary>
    public bool AnyTimerRuns(int probe)
    {
        foreach (int i in _parts.PointsOfProbe[probe])
        {
            if (_farm.State.Alarms.OnSince[i] >= 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Seconds until the mean reading reaches a limit of a probe at a slope, or an on-delay runs out; not below a minute.</summary>
    public double SecondsToNext(int probe, double mean, double slopePerSecond, long now)
    {
        AlarmBoard board = _farm.State.Alarms;
        double soonest = double.PositiveInfinity;
        foreach (int i in _parts.PointsOfProbe[probe])
        {
            AlarmPoint point = _parts.Points[i];
            if (AlarmMachine.IsInhibited(board.States[i]) || AlarmMachine.IsActive(board.States[i]))
            {
                continue;
            }

            if (board.OnSince[i] >= 0)
            {
                soonest = Math.Min(soonest, board.OnSince[i] + point.OnDelaySeconds - now);
            }
            else if (point.Condition is AlarmCondition.High or AlarmCondition.Low)
            {
                double way = point.Condition == AlarmCondition.High ? point.Limit - mean : mean - point.Limit;
                double speed = point.Condition == AlarmCondition.High ? slopePerSecond : -slopePerSecond;
                soonest = way <= 0 ? 0 : speed > 0 ? Math.Min(soonest, way / speed) : soonest;
            }
        }

        return Math.Max(Soonest, soonest);
    }

    private void Evaluate(int i, long seconds, double truth, bool fault)
    {
        AlarmBoard board = _farm.State.Alarms;
        ProbeState probes = _farm.State.Probes;
        AlarmPoint point = _parts.Points[i];
        double reading = probes.Reading[point.Probe];
        double rate = probes.RatePerHour[point.Probe];
        bool isFaultPoint = point.Condition == AlarmCondition.SensorFault;

        // What a faulty probe says of the process counts neither for an alarm nor for its return.
        bool met = isFaultPoint ? fault : !fault && point.IsMetBy(reading, rate);
        bool left = isFaultPoint ? !fault : !fault && point.IsLeftBy(reading, rate);
        if (!AlarmMachine.IsActive(board.States[i]))
        {
            board.OnSince[i] = !met ? -1 : board.OnSince[i] < 0 ? seconds : board.OnSince[i];
            if (met && seconds - board.OnSince[i] >= point.OnDelaySeconds)
            {
                board.States[i] = AlarmMachine.Next(board.States[i], AlarmInput.Occurs, point.Latching);
                board.OnSince[i] = -1;
                board.OffSince[i] = -1;
                board.Changes.Add(new AlarmChange(i, seconds, true, reading, truth, IsFalse(point, truth)));
            }

            return;
        }

        board.OffSince[i] = !left ? -1 : board.OffSince[i] < 0 ? seconds : board.OffSince[i];
        if (left && seconds - board.OffSince[i] >= point.OffDelaySeconds)
        {
            Leave(i, seconds);
        }
    }

    private void Leave(int i, long seconds)
    {
        AlarmBoard board = _farm.State.Alarms;
        if (AlarmMachine.IsActive(board.States[i]))
        {
            AlarmPoint point = _parts.Points[i];
            board.States[i] = AlarmMachine.Next(board.States[i], AlarmInput.Returns, point.Latching);
            board.OffSince[i] = -1;
            ProbeState probes = _farm.State.Probes;
            board.Changes.Add(new AlarmChange(i, seconds, false, probes.Reading[point.Probe], probes.Truth[point.Probe], false));
        }
    }

    private bool IsFaulty(int probe, long seconds)
    {
        ProbeState probes = _farm.State.Probes;
        ProbeParameters model = _parts.Probes[probe];
        return probes.Reading[probe] <= model.LowEnd || probes.Reading[probe] >= model.HighEnd
            || (_flatSeconds[probe] > 0 && seconds - probes.MovedSeconds[probe] >= _flatSeconds[probe]);
    }

    // Noise or drift alone raised it: the truth lies more than the deadband (of a rate: half the limit) on the good side.
    private bool IsFalse(AlarmPoint point, double truth)
    {
        ProbeState probes = _farm.State.Probes;
        double rate = probes.TrueRatePerHour[point.Probe];
        return point.Condition switch
        {
            AlarmCondition.High => truth < point.Limit - point.Deadband,
            AlarmCondition.Low => truth > point.Limit + point.Deadband,
            AlarmCondition.Rising => rate < point.Limit / 2,
            AlarmCondition.Falling => -rate < point.Limit / 2,
            _ => !probes.Stuck[point.Probe] && probes.ExtraPerWeek[point.Probe] == 0,
        };
    }

    private bool IsSuppressed(int i, AlarmPoint point, bool fish)
    {
        int faultPoint = _parts.FaultPointOfProbe[point.Probe];
        return (point.WhileFish && !fish)
            || (i != faultPoint && faultPoint >= 0 && AlarmMachine.IsActive(_farm.State.Alarms.States[faultPoint]))
            || ProbeTruth.HangsDry(_farm, point.Probe);
    }

    private static bool IsShelved(AlarmPoint point, long seconds)
    {
        for (int i = 0; i < point.Shelved.Count; i++)
        {
            if (point.Shelved[i].Holds(seconds))
            {
                return true;
            }
        }

        return false;
    }

    private bool AnyFish()
    {
        // Fish in quarantine do not live in the water that is watched.
        for (int b = 0; b < _farm.State.Cohorts.Length; b++)
        {
            if (_farm.State.Cohorts[b].Count > 0 && _farm.Parts.Basins[b].Use != Description.BasinUse.Quarantine)
            {
                return true;
            }
        }

        return false;
    }
}
