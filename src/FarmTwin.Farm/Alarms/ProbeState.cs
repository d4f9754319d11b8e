namespace FarmTwin.Farm.Alarms;

/// <summary>What the probes read and how true they are. Copied whole for a snapshot.</summary>
public sealed class ProbeState
{
    /// <summary>Makes the state of new probes, not yet in the water.</summary>
    public ProbeState(int probes)
    {
        Truth = new double[probes];
        Lagged = new double[probes];
        Reading = new double[probes];
        Bias = new double[probes];
        CalibratedSeconds = new long[probes];
        Calibrations = new int[probes];
        ExtraPerWeek = new double[probes];
        ExtraSinceSeconds = new long[probes];
        Stuck = new bool[probes];
        MovedSeconds = new long[probes];
        MarkReading = new double[probes];
        MarkTruth = new double[probes];
        RatePerHour = new double[probes];
        TrueRatePerHour = new double[probes];
        Array.Fill(Lagged, double.NaN);
        Array.Fill(Reading, double.NaN);
        Array.Fill(MarkReading, double.NaN);
    }

    /// <summary>What is there to be read, at the end of the last step, in the probe's unit.</summary>
    public double[] Truth { get; }

    /// <summary>The truth as the probe's lag lets it through.</summary>
    public double[] Lagged { get; }

    /// <summary>The last sample; not a number before the first.</summary>
    public double[] Reading { get; }

    /// <summary>Bias that the last calibration left.</summary>
    public double[] Bias { get; }

    /// <summary>When each was last calibrated, s.</summary>
    public long[] CalibratedSeconds { get; }

    /// <summary>How often each was calibrated.</summary>
    public int[] Calibrations { get; }

    /// <summary>Extra drift of a probe that went wrong, a week.</summary>
    public double[] ExtraPerWeek { get; }

    /// <summary>Since when it goes wrong, s.</summary>
    public long[] ExtraSinceSeconds { get; }

    /// <summary>Whether its reading stands still.</summary>
    public bool[] Stuck { get; }

    /// <summary>When its reading last moved, s.</summary>
    public long[] MovedSeconds { get; }

    /// <summary>Reading at the last mark of the rate.</summary>
    public double[] MarkReading { get; }

    /// <summary>Truth at the last mark of the rate.</summary>
    public double[] MarkTruth { get; }

    /// <summary>Rate over the last period, an hour.</summary>
    public double[] RatePerHour { get; }

    /// <summary>True rate over the last period, an hour.</summary>
    public double[] TrueRatePerHour { get; }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(ProbeState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.Truth.CopyTo(Truth, 0);
        other.Lagged.CopyTo(Lagged, 0);
        other.Reading.CopyTo(Reading, 0);
        other.Bias.CopyTo(Bias, 0);
        other.CalibratedSeconds.CopyTo(CalibratedSeconds, 0);
        other.Calibrations.CopyTo(Calibrations, 0);
        other.ExtraPerWeek.CopyTo(ExtraPerWeek, 0);
        other.ExtraSinceSeconds.CopyTo(ExtraSinceSeconds, 0);
        other.Stuck.CopyTo(Stuck, 0);
        other.MovedSeconds.CopyTo(MovedSeconds, 0);
        other.MarkReading.CopyTo(MarkReading, 0);
        other.MarkTruth.CopyTo(MarkTruth, 0);
        other.RatePerHour.CopyTo(RatePerHour, 0);
        other.TrueRatePerHour.CopyTo(TrueRatePerHour, 0);
    }
}
