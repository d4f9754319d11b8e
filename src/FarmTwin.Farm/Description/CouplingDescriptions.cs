namespace FarmTwin.Farm.Description;

/// <summary>How the valves are opened.</summary>
public enum CouplingWay
{
    /// <summary>Never.</summary>
    Never,

    /// <summary>All at once.</summary>
    AtOnce,

    /// <summary>By a ramp of daily steps.</summary>
    Ramp,
}

/// <summary>When and how the two loops are joined.</summary>
public sealed record CouplingDescription
{
    /// <summary>The valve.</summary>
    [Input("valve", "The valve that joins the loops", Of = "valves")]
    public required string Valve { get; init; }

    /// <summary>How.</summary>
    [Input("way", "How it is opened")]
    public CouplingWay Way { get; init; } = CouplingWay.Ramp;

    /// <summary>A fixed day; when the gates hold if left out.</summary>
    [Input("onDay", "A fixed day; left out, the valve opens when the gates hold", Unit = "d", Low = 0, High = 3660)]
    public double? OnDay { get; init; }

    /// <summary>Not before this day.</summary>
    [Input("notBefore", "Not before this day", Unit = "d", Low = 0, High = 3660)]
    public double NotBeforeDay { get; init; }

    /// <summary>Exchange when fully open, L/h each way.</summary>
    [Input("fullFlow", "Exchange each way when fully open", Unit = "L/h", Low = 1, High = 1e6)]
    public required double FullFlowLitresPerHour { get; init; }

    /// <summary>Daily exchange of the ramp's steps, share of the fish loop's water.</summary>
    [Input("ramp", "Exchange of the ramp's days, as shares of the fish loop's water a day", Unit = "1", Low = 0, High = 50)]
    public IReadOnlyList<double> RampShares { get; init; } = [0.03, 0.05, 0.1, 0.1, 0.2, 0.2, 0.5, 0.5, 1, 2, 4, 8];

    /// <summary>Fastest change of the fish's temperature, K/h.</summary>
    [Input("fastestCooling", "Fastest change of the fish's water", Unit = "K/h", Low = 0.05, High = 10)]
    public double FastestKelvinPerHour { get; init; } = 1;

    /// <summary>Days that a ramp waits after it was held.</summary>
    [Input("holdFor", "Time that the ramp waits after bad water or cooling held it", Unit = "d", Low = 0, High = 30)]
    public double HoldDays { get; init; } = 3;

    /// <summary>The gates.</summary>
    [Input("gates", "What must hold before the valve is opened")]
    public CouplingGatesDescription Gates { get; init; } = new();
}

/// <summary>What must hold before the valve opens. Defaults: whole-farm practice as corrected by trial seasons.</summary>
public sealed record CouplingGatesDescription
{
    /// <summary>Fish loop TAN below, mg N/L.</summary>
    [Input("tan", "TAN of the fish loop stays below", Unit = "mg N/L", Low = 0, High = 20)]
    public double TanMilligramsNPerLitre { get; init; } = 1;

    /// <summary>Fish loop nitrite below, mg N/L.</summary>
    [Input("nitrite", "Nitrite of the fish loop stays below", Unit = "mg N/L", Low = 0, High = 20)]
    public double NitriteMilligramsNPerLitre { get; init; } = 0.8;

    /// <summary>for so many days, d.</summary>
    [Input("days", "for so many days on end", Unit = "d", Low = 0, High = 60)]
    public double Days { get; init; } = 7;

    /// <summary>while feed is at least this share of the plan's steady feed.</summary>
    [Input("feed", "while the feed is at least this share of the plan's steady feed", Unit = "1", Low = 0, High = 2)]
    public double FeedShare { get; init; } = 0.3;

    /// <summary>Predicted mixed nitrate, mg N/L.</summary>
    [Input("mixedNitrate", "Predicted nitrate after mixing is at least this, unless bridging nutrients go on", Unit = "mg N/L", Low = 0, High = 500)]
    public double MixedNitrateMilligramsNPerLitre { get; init; } = 12;

    /// <summary>Predicted mixed alkalinity, mg/L as CaCO3.</summary>
    [Input("mixedAlkalinity", "Predicted alkalinity after mixing is at least this", Unit = "mg/L as CaCO3", Low = 0, High = 300)]
    public double MixedAlkalinityMilligramsPerLitre { get; init; } = 25;

    /// <summary>Ammonium of the plant loop below, mg N/L.</summary>
    [Input("plantTan", "TAN of the plant loop is below", Unit = "mg N/L", Low = 0, High = 100)]
    public double PlantTanMilligramsNPerLitre { get; init; } = 1.5;

    /// <summary>Oxygen of both loops, mg/L.</summary>
    [Input("oxygen", "Oxygen of both loops is at least", Unit = "mg/L", Low = 0, High = 12)]
    public double OxygenMilligramsPerLitre { get; init; } = 5;

    /// <summary>Sodium of the plant loop below, mg/L.</summary>
    [Input("sodium", "Sodium of the plant loop is below", Unit = "mg/L", Low = 0, High = 2000)]
    public double SodiumMilligramsPerLitre { get; init; } = 100;

    /// <summary>Days without unexplained deaths.</summary>
    [Input("quietDays", "Days on end with no more than base mortality", Unit = "d", Low = 0, High = 90)]
    public double QuietDays { get; init; } = 14;

    /// <summary>Days since a treatment of either loop.</summary>
    [Input("treatmentDays", "Time since either loop was treated", Unit = "d", Low = 0, High = 90)]
    public double TreatmentDays { get; init; } = 14;

    /// <summary>Salt of either loop below, g/L.</summary>
    [Input("salt", "Salt (sodium chloride) of either loop is below", Unit = "g/L", Low = 0, High = 30)]
    public double SaltGramsPerLitre { get; init; } = 0.3;

    /// <summary>Days since a spray on the plants.</summary>
    [Input("sprayDays", "Time since the plants were sprayed", Unit = "d", Low = 0, High = 90)]
    public double SprayDays { get; init; } = 14;

    /// <summary>Whether the valve is opened from Monday to Wednesday only.</summary>
    [Input("earlyInWeek", "Opened from Monday to Wednesday only, so that people are there for the next two days")]
    public bool EarlyInWeek { get; init; } = true;
}
