using FarmTwin.Engine.Chance;

namespace FarmTwin.Farm.Alarms;

/// <summary>The arithmetic of a probe: reading = quantised(lag(truth) + bias + drift + noise).</summary>
/// <remarks>
/// The lag is exact for a truth that moves in a straight line through a step, so a reading does not depend on how the step was cut.
/// The noise is that of the reading as an installer sees it, so it is added after the lag (before it, a lag would hide most of it).
/// </remarks>
public static class ProbeKernel
{
    private const double SecondsPerWeek = 7.0 * UnitConstants.SecondsPerDay;

    // No display has more digits; what lies beyond them is the binary fraction's.
    private const int DisplayDigits = 6;

    private static readonly uint NoiseProcess = StableHash.Of("probe noise");
    private static readonly uint BiasProcess = StableHash.Of("probe bias");
    private static readonly uint DriftProcess = StableHash.Of("probe drift");

    /// <summary>Lagged value some time into a stretch in which the truth moves in a straight line.</summary>
    /// <param name="before">Lagged value at its start.</param>
    /// <param name="truth">Truth at its start.</param>
    /// <param name="slope">Change of the truth a second.</param>
    /// <param name="seconds">Time since its start, s, 0 or more.</param>
    /// <param name="lagSeconds">Time constant, s; 0 for a probe without lag.</param>
    public static double Lagged(double before, double truth, double slope, double seconds, double lagSeconds)
    {
        double now = truth + (slope * seconds);
        if (lagSeconds <= 0)
        {
            return now;
        }

        double behind = slope * lagSeconds;
        return now - behind + ((before - truth + behind) * Math.Exp(-seconds / lagSeconds));
    }

    /// <summary>Drift since the last calibration.</summary>
    public static double Drift(double perWeek, long sinceCalibrationSeconds) => perWeek * sinceCalibrationSeconds / SecondsPerWeek;

    /// <summary>The nearest step of the display.</summary>
    public static double Quantised(double value, double resolution) =>
        resolution > 0 ? Math.Round(Math.Round(value / resolution, MidpointRounding.AwayFromZero) * resolution, DisplayDigits) : value;

    /// <summary>Noise of a sample, in standard deviations: keyed by probe and sample, so the same whatever the step.</summary>
    public static double Noise(RandomStreams streams, int probe, long sample) => streams.Normal(NoiseProcess, (uint)probe, (uint)sample);

    /// <summary>Bias that a calibration leaves, in standard deviations.</summary>
    public static double Bias(RandomStreams streams, int probe, int calibration) => streams.Normal(BiasProcess, (uint)probe, (uint)calibration);

    /// <summary>Which way a probe drifts, +1 or −1.</summary>
    public static int DriftSign(RandomStreams streams, int probe) => streams.Uniform(DriftProcess, (uint)probe, 0) < 0.5 ? -1 : 1;
}
