namespace FarmTwin.Farm.Summaries;

/// <summary>The water of a season. Peaks are hourly means: a loop's is the mean over its basins, a tank figure the worst tank's.</summary>
public sealed record WaterSummary
{
    /// <summary>Sodium of the plants' water and when it matters; null in a season too short to tell.</summary>
    public required SaltSummary? Sodium { get; init; }

    /// <summary>The same for chloride.</summary>
    public required SaltSummary? Chloride { get; init; }

    /// <summary>Day on which the filter counted as cycled; null where it did not.</summary>
    public required double? CycledDay { get; init; }

    /// <summary>Day on which the valves were first opened; null where they were not.</summary>
    public required double? OpenedDay { get; init; }

    /// <summary>Day from which the loops were fully coupled; null where they were not.</summary>
    public required double? CoupledDay { get; init; }

    /// <summary>Times that the ramp was broken off.</summary>
    public required double RampAborts { get; init; }

    /// <summary>Gates that held the valves back, with the mornings each did, counted from the first feeding; longest first.</summary>
    public required IReadOnlyList<GateDelay> RefusedGates { get; init; }

    /// <summary>Highest TAN of the fish loop in the whole season, mg N/L.</summary>
    public required double PeakTanMgNPerL { get; init; }

    /// <summary>Highest nitrite of the fish loop in the whole season, mg N/L.</summary>
    public required double PeakNitriteMgNPerL { get; init; }

    /// <summary>Highest unionized ammonia of a tank in the whole season, mg N/L.</summary>
    public required double PeakUnionizedAmmoniaMgNPerL { get; init; }

    /// <summary>Peaks while no fish had been delivered or none was left.</summary>
    public required LoopPeaks BeforeFish { get; init; }

    /// <summary>Peaks while there were fish.</summary>
    public required LoopPeaks WithFish { get; init; }

    /// <summary>Lowest oxygen of the worst tank in the whole season, mg/L.</summary>
    public required double LowestOxygenMgPerL { get; init; }

    /// <summary>The day of it.</summary>
    public required double LowestOxygenDay { get; init; }

    /// <summary>Nitrate at the end by loop (fishLoop, plantLoop), mg N/L.</summary>
    public required IReadOnlyDictionary<string, double> FinalNitrateMgNPerL { get; init; }

    /// <summary>Lowest and highest pH by loop.</summary>
    public required IReadOnlyDictionary<string, ReadingRange> LoopPH { get; init; }

    /// <summary>Lowest and highest temperature, °C: fishWater, plantWater, houseAir, outside.</summary>
    public required IReadOnlyDictionary<string, ReadingRange> TemperatureC { get; init; }

    /// <summary>Hours outside each band; what counts for fish is counted while there are fish.</summary>
    public required IReadOnlyDictionary<string, BandHours> HoursOutsideBand { get; init; }

    /// <summary>Source water after the first filling, L.</summary>
    public required double TopUpL { get; init; }

    /// <summary>Source water after the first filling, L/d.</summary>
    public required double TopUpLPerDay { get; init; }

    /// <summary>What a test kit shows at the end, by loop.</summary>
    public required IReadOnlyDictionary<string, TestKitReading> TestKitAtEnd { get; init; }
}

/// <summary>Peaks of one part of the season; null where that part has no hour.</summary>
/// <param name="TanMgNPerL">TAN of the fish loop, mg N/L.</param>
/// <param name="NitriteMgNPerL">Nitrite of the fish loop, mg N/L.</param>
/// <param name="UnionizedAmmoniaMgNPerL">Unionized ammonia of the worst tank, mg N/L.</param>
/// <param name="LowestOxygenMgPerL">Oxygen of the worst tank, mg/L.</param>
/// <param name="HighestCarbonDioxideMgPerL">Carbon dioxide, mean of the tanks, mg/L.</param>
public sealed record LoopPeaks(
    PeakReading? TanMgNPerL, PeakReading? NitriteMgNPerL, PeakReading? UnionizedAmmoniaMgNPerL, PeakReading? LowestOxygenMgPerL,
    PeakReading? HighestCarbonDioxideMgPerL);

/// <summary>A gate and how long it held the valves back.</summary>
/// <param name="Gate">The gate in words.</param>
/// <param name="Days">Mornings on which it did, alone or with others.</param>
public sealed record GateDelay(string Gate, int Days);

/// <summary>Time outside a band.</summary>
/// <param name="Low">Low end; null where there is none.</param>
/// <param name="High">High end; null where there is none.</param>
/// <param name="Unit">Unit of the ends.</param>
/// <param name="HoursBelow">Hours below.</param>
/// <param name="HoursAbove">Hours above.</param>
/// <param name="HoursCounted">Hours looked at.</param>
public sealed record BandHours(double? Low, double? High, string Unit, int HoursBelow, int HoursAbove, int HoursCounted);

/// <summary>What a client's test kit and meter show: ions, not nitrogen.</summary>
/// <param name="NitrateMgNO3PerL">Nitrate as NO3, mg/L.</param>
/// <param name="NitriteMgNO2PerL">Nitrite as NO2, mg/L.</param>
/// <param name="AmmoniumMgNH4PerL">All ammonia as NH4, mg/L.</param>
/// <param name="TdsPpm">Dissolved solids of a meter on the 0.5 scale, ppm; null where no conductivity is recorded.</param>
public sealed record TestKitReading(double NitrateMgNO3PerL, double NitriteMgNO2PerL, double AmmoniumMgNH4PerL, double? TdsPpm);
