using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Alarms;

/// <summary>Samples every probe through a step, and has its alarms evaluated at each sample.</summary>
/// <remarks>
/// The truth moves in a straight line through a step, so every sample inside it is known afterwards, at its own moment. Where no
/// sample could touch a limit (the band of bias and seven standard deviations lies clear of all) only the last one is drawn.
/// </remarks>
public sealed class ProbeProcess
{
    private const double SurelyWithin = 7;

    private static readonly long[] StepGrid = [1800, 900, 600, 300, 180, 120, 60];

    private readonly FarmContext _farm;
    private readonly RandomStreams _streams;
    private readonly AlarmParts _parts;
    private readonly AlarmEvaluation _alarms;
    private readonly double[] _truthBefore;
    private readonly double[] _driftPerWeek;
    private readonly long[] _interval;
    private readonly long _mark;

    /// <summary>Makes it, and calibrates every probe for the first time.</summary>
    public ProbeProcess(FarmContext farm, RandomStreams streams)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _streams = streams;
        _parts = farm.Parts.Alarms;
        _alarms = new AlarmEvaluation(farm);
        int probes = _parts.Probes.Length;
        _truthBefore = new double[probes];
        _driftPerWeek = [.. Enumerable.Range(0, probes).Select(p => ProbeKernel.DriftSign(streams, p) * _parts.Probes[p].DriftPerWeek)];
        _interval = [.. _parts.Probes.Select(p => Math.Max(1, (long)p.SampleSeconds))];
        _mark = (long)Math.Round(_parts.Parameters.RatePeriodHours * UnitConstants.SecondsPerHour);
        for (int p = 0; p < probes; p++)
        {
            SetBias(p);
        }
    }

    /// <summary>Looks at the truth at the start of a step, after the events of that moment.</summary>
    public void Begin()
    {
        ProbeState state = _farm.State.Probes;
        for (int p = 0; p < _truthBefore.Length; p++)
        {
            _truthBefore[p] = ProbeTruth.Of(_farm, p);
            if (double.IsNaN(state.Lagged[p]))
            {
                state.Lagged[p] = _truthBefore[p];
            }
        }
    }

    /// <summary>How long the next step may be so that every alarm comes on time: shorter before a limit, and after an event beyond one.</summary>
    public long LongestStepSeconds()
    {
        ProbeState state = _farm.State.Probes;
        for (int p = 0; p < _truthBefore.Length; p++)
        {
            double truth = ProbeTruth.Of(_farm, p);
            if (truth != state.Truth[p] && !state.Stuck[p] && _alarms.IsBeyond(p, truth + state.Bias[p]))
            {
                return StepGrid[^1];
            }
        }

        return _farm.State.Alarms.StepCapSeconds;
    }

    /// <summary>Takes the samples of a step.</summary>
    public void Commit(long from, long to)
    {
        if (_truthBefore.Length == 0)
        {
            return;
        }

        AlarmBoard board = _farm.State.Alarms;
        _alarms.SetInhibitions(from);
        double cap = double.PositiveInfinity;
        for (int p = 0; p < _truthBefore.Length; p++)
        {
            Samples(p, from, to);
            cap = Math.Min(cap, Cap(p, from, to));
        }

        board.StepCapSeconds = long.MaxValue;
        for (int i = 0; i < StepGrid.Length && board.StepCapSeconds > cap; i++)
        {
            board.StepCapSeconds = StepGrid[i];
        }
    }

    /// <summary>Calibrates, cleans or replaces a probe: nothing is wrong with it any more but the error of the calibration.</summary>
    public void Calibrate(int probe, long seconds)
    {
        ProbeState state = _farm.State.Probes;
        state.Calibrations[probe]++;
        state.CalibratedSeconds[probe] = seconds;
        state.ExtraPerWeek[probe] = 0;
        state.Stuck[probe] = false;
        state.MovedSeconds[probe] = seconds;
        SetBias(probe);
    }

    /// <summary>What the last sample is wrong by, without noise: bias and drift, in the probe's unit.</summary>
    public double Offset(int probe, long seconds)
    {
        ProbeState state = _farm.State.Probes;
        double extra = state.ExtraPerWeek[probe] == 0 ? 0 : ProbeKernel.Drift(state.ExtraPerWeek[probe], seconds - state.ExtraSinceSeconds[probe]);
        return state.Bias[probe] + ProbeKernel.Drift(_driftPerWeek[probe], seconds - state.CalibratedSeconds[probe]) + extra;
    }

    private void SetBias(int probe)
    {
        ProbeState state = _farm.State.Probes;
        state.Bias[probe] = _parts.Probes[probe].CalibrationError * ProbeKernel.Bias(_streams, probe, state.Calibrations[probe]);
    }

    private void Samples(int p, long from, long to)
    {
        ProbeState state = _farm.State.Probes;
        ProbeParameters probe = _parts.Probes[p];
        double truth = ProbeTruth.Of(_farm, p);
        double slope = (truth - _truthBefore[p]) / (to - from);
        double lagged = ProbeKernel.Lagged(state.Lagged[p], _truthBefore[p], slope, to - from, probe.LagSeconds);
        bool quiet = IsQuiet(p, truth, lagged, from, to);
        for (long t = ((from / _interval[p]) + 1) * _interval[p]; t <= to; t += _interval[p])
        {
            if (quiet && t % _mark != 0 && t + _interval[p] <= to)
            {
                continue;
            }

            double now = _truthBefore[p] + (slope * (t - from));
            double seen = ProbeKernel.Lagged(state.Lagged[p], _truthBefore[p], slope, t - from, probe.LagSeconds);
            Sample(p, t, now, seen, quiet);
            _alarms.Evaluate(p, t, now);
            quiet = quiet && !_alarms.AnyTimerRuns(p);
        }

        state.Lagged[p] = lagged;
        state.Truth[p] = truth;
    }

    private void Sample(int p, long t, double truth, double seen, bool quiet)
    {
        ProbeState state = _farm.State.Probes;
        ProbeParameters probe = _parts.Probes[p];
        if (!state.Stuck[p])
        {
            double value = seen + Offset(p, t);
            value += (probe.Noise + (probe.RelativeNoise * Math.Abs(value))) * ProbeKernel.Noise(_streams, p, t / _interval[p]);
            double reading = ProbeKernel.Quantised(value, probe.Resolution);

            // Samples that were passed over moved too: a probe whose noise moves its display is never flat in between.
            if (reading != state.Reading[p] || quiet)
            {
                state.MovedSeconds[p] = t;
            }

            state.Reading[p] = reading;
        }

        if (t % _mark == 0)
        {
            double hours = _mark / UnitConstants.SecondsPerHour;
            bool known = !double.IsNaN(state.MarkReading[p]);
            state.RatePerHour[p] = known ? (state.Reading[p] - state.MarkReading[p]) / hours : 0;
            state.TrueRatePerHour[p] = known ? (truth - state.MarkTruth[p]) / hours : 0;
            state.MarkReading[p] = state.Reading[p];
            state.MarkTruth[p] = truth;
        }
    }

    // Whether no sample of the step can touch a limit: then only the last one need be drawn.
    private bool IsQuiet(int p, double truth, double lagged, long from, long to)
    {
        ProbeState state = _farm.State.Probes;
        ProbeParameters probe = _parts.Probes[p];
        if (state.Stuck[p] || probe.Noise + (probe.RelativeNoise * Math.Abs(truth)) < probe.Resolution / 2)
        {
            return false;
        }

        double offsetBefore = Offset(p, from);
        double offset = Offset(p, to);
        double low = Math.Min(Math.Min(_truthBefore[p], truth), Math.Min(state.Lagged[p], lagged)) + Math.Min(offsetBefore, offset);
        double high = Math.Max(Math.Max(_truthBefore[p], truth), Math.Max(state.Lagged[p], lagged)) + Math.Max(offsetBefore, offset);
        double scatter = (SurelyWithin * (probe.Noise + (probe.RelativeNoise * Math.Max(Math.Abs(low), Math.Abs(high))))) + probe.Resolution;
        return _alarms.IsClear(p, low - scatter, high + scatter);
    }

    // Seconds until the mean reading reaches a limit at its present slope, or until an on-delay runs out.
    private double Cap(int p, long from, long to)
    {
        ProbeState state = _farm.State.Probes;
        if (state.Stuck[p])
        {
            return double.PositiveInfinity;
        }

        double slope = (state.Truth[p] - _truthBefore[p]) / (to - from);
        return _alarms.SecondsToNext(p, state.Lagged[p] + Offset(p, to), slope, to);
    }
}
