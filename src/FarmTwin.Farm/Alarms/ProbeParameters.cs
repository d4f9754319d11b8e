using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Alarms;

/// <summary>How true a probe reads.</summary>
public sealed record ProbeParameters
{
    /// <summary>Standard deviation of a reading, in the probe's unit.</summary>
    public required double Noise { get; init; }

    /// <summary>Standard deviation of a reading as a share of it.</summary>
    public required double RelativeNoise { get; init; }

    /// <summary>Drift in a week since the last calibration, in the probe's unit; each probe drifts one way.</summary>
    public required double DriftPerWeek { get; init; }

    /// <summary>Standard deviation of the bias that a calibration leaves, in the probe's unit.</summary>
    public required double CalibrationError { get; init; }

    /// <summary>Time constant of its answer, s.</summary>
    public required double LagSeconds { get; init; }

    /// <summary>Smallest step of its display, in the probe's unit; 0 for none.</summary>
    public required double Resolution { get; init; }

    /// <summary>Below this no sound probe reads, in the probe's unit.</summary>
    public required double LowEnd { get; init; }

    /// <summary>Above this no sound probe reads, in the probe's unit.</summary>
    public required double HighEnd { get; init; }

    /// <summary>A reading that has not moved for so long is that of a dead probe, h; 0 for one that may stand still.</summary>
    public required double FlatLineHours { get; init; }

    /// <summary>Time between samples, s.</summary>
    public required double SampleSeconds { get; init; }

    /// <summary>Time between calibrations, d.</summary>
    public required double CalibrateEveryDays { get; init; }

    /// <summary>Reads them.</summary>
    /// <param name="set">The entry of the library.</param>
    /// <param name="quantity">What the probe reads, which sets the units.</param>
    public static ProbeParameters From(ParameterSet set, ProbeQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(set);
        string unit = ProbeQuantities.Unit(quantity);
        string difference = ProbeQuantities.DifferenceUnit(quantity);
        return new ProbeParameters
        {
            Noise = set.Get("noise", difference),
            RelativeNoise = set.Get("relativeNoise", "1"),
            DriftPerWeek = set.Get("drift", difference == "1" ? "1/wk" : $"{difference}/wk"),
            CalibrationError = set.Get("calibrationError", difference),
            LagSeconds = set.Get("lag", "s"),
            Resolution = set.Get("resolution", difference),
            LowEnd = set.Get("lowEnd", unit),
            HighEnd = set.Get("highEnd", unit),
            FlatLineHours = set.Get("flatLine", "h"),
            SampleSeconds = set.Get("sampling", "s"),
            CalibrateEveryDays = set.Get("calibrateEvery", "d"),
        };
    }
}
