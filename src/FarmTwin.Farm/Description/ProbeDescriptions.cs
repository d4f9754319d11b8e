using FarmTwin.Farm.Alarms;

namespace FarmTwin.Farm.Description;

/// <summary>A probe.</summary>
public sealed record ProbeDescription
{
    /// <summary>What it reads.</summary>
    [Input("quantity", "What it reads")]
    public required ProbeQuantity Quantity { get; init; }

    /// <summary>The basin in which it hangs; none for a probe of the air.</summary>
    [Input("basin", "The basin in which it hangs; left out for a probe of the house air", Of = "basins")]
    public string? Basin { get; init; }

    /// <summary>The entry of the library that says how true it reads; a usual probe of its kind when left out.</summary>
    [Input("model", "How true it reads: an entry of the library; a usual probe of its kind when left out", LibraryFolder = "probes")]
    public string? Model { get; init; }

    /// <summary>Time between samples, min; the library's when left out.</summary>
    [Input("sample", "Time between samples; the library's when left out", Unit = "min", Low = 1, High = 60)]
    public double? SampleMinutes { get; init; }

    /// <summary>Time between calibrations, d; the library's when left out.</summary>
    [Input("calibrate", "Time between calibrations against a hand meter or a buffer; the library's when left out", Unit = "d", Low = 1, High = 3660)]
    public double? CalibrateEveryDays { get; init; }
}

/// <summary>A probe goes wrong.</summary>
[Kind("probe-drifts", "A probe goes wrong: it drifts away or stands still, until somebody finds it and calibrates or replaces it")]
public sealed record ProbeDrifts : PlannedEvent
{
    /// <summary>The probe.</summary>
    [Input("probe", "The probe", Of = "probes")]
    public required string Probe { get; init; }

    /// <summary>Whether its reading stands still.</summary>
    [Input("stuck", "Whether its reading stands still")]
    public bool Stuck { get; init; }

    /// <summary>Extra drift of a pH probe.</summary>
    [Input("pH", "Extra drift of a pH probe", Unit = "/d", Low = -5, High = 5)]
    public double? PHPerDay { get; init; }

    /// <summary>Extra drift of a temperature probe, K/d.</summary>
    [Input("temperature", "Extra drift of a temperature probe", Unit = "K/d", Low = -20, High = 20)]
    public double? KelvinPerDay { get; init; }

    /// <summary>Extra drift of an oxygen probe, mg/(L d).</summary>
    [Input("oxygen", "Extra drift of an oxygen probe", Unit = "mg/L/d", Low = -20, High = 20)]
    public double? MilligramsPerLitreDay { get; init; }

    /// <summary>Extra drift of a conductivity probe, µS/(cm d).</summary>
    [Input("conductivity", "Extra drift of a conductivity probe", Unit = "µS/cm/d", Low = -5000, High = 5000)]
    public double? MicrosiemensPerCentimetreDay { get; init; }

    /// <summary>Extra drift of a level probe, shares of the normal level a day.</summary>
    [Input("level", "Extra drift of a level probe, share of the normal level", Unit = "/d", Low = -2, High = 2)]
    public double? LevelPerDay { get; init; }

    /// <summary>The extra drift of a probe of a quantity, in its unit a day; 0 where none is stated.</summary>
    /// <exception cref="DescriptionException">The drift stated is that of another quantity, or nothing is wrong with it.</exception>
    public double PerDay(ProbeQuantity quantity)
    {
        double? suits = quantity switch
        {
            ProbeQuantity.PH => PHPerDay,
            ProbeQuantity.Conductivity => MicrosiemensPerCentimetreDay,
            ProbeQuantity.Oxygen => MilligramsPerLitreDay,
            ProbeQuantity.Level => LevelPerDay,
            _ => KelvinPerDay,
        };
        int stated = Count(PHPerDay) + Count(KelvinPerDay) + Count(MilligramsPerLitreDay) + Count(MicrosiemensPerCentimetreDay) + Count(LevelPerDay);
        return stated == Count(suits) && (Stuck || suits is not null)
            ? suits ?? 0
            : throw new DescriptionException(
                $"The event that lets probe '{Probe}' go wrong must say that it is stuck, or how fast it drifts; it reads {ProbeQuantities.Words(quantity)}.");

        static int Count(double? value) => value is null ? 0 : 1;
    }
}
