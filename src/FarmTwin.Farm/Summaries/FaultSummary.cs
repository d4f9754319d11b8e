namespace FarmTwin.Farm.Summaries;

/// <summary>One fault of a season: when, how long, what it did. What happened from its beginning to a few hours after its end is put down to it;
/// during a cut of the mains, to the cut alone.</summary>
public sealed record FaultSummary
{
    /// <summary>What broke ("Mains", "Pump").</summary>
    public required string Kind { get; init; }

    /// <summary>The part.</summary>
    public required string Where { get; init; }

    /// <summary>Day on which it began.</summary>
    public required double Day { get; init; }

    /// <summary>Clock hour at which it began.</summary>
    public required double Hour { get; init; }

    /// <summary>Minutes until somebody saw it; null where nobody has.</summary>
    public required double? MinutesToFound { get; init; }

    /// <summary>Who or what saw it; empty where nobody has.</summary>
    public required string FoundBy { get; init; }

    /// <summary>Minutes until it was mended; null where it is still open.</summary>
    public required double? MinutesToMended { get; init; }

    /// <summary>The tanks that held fish when it began, by name.</summary>
    public required IReadOnlyDictionary<string, FaultTankSummary> Tanks { get; init; }

    /// <summary>Fish that died.</summary>
    public required double FishLost { get; init; }

    /// <summary>Their weight, kg.</summary>
    public required double FishLostKg { get; init; }

    /// <summary>Water over a brim, L.</summary>
    public required double SpilledL { get; init; }

    /// <summary>Water leaked, L.</summary>
    public required double LeakedL { get; init; }

    /// <summary>Hours that a filter stood without flow, the longest.</summary>
    public required double FilterWithoutFlowHours { get; init; }

    /// <summary>Hours that the worst filter's water was without oxygen.</summary>
    public required double FilterWithoutOxygenHours { get; init; }

    /// <summary>Most plants that stood dry, or in water without oxygen, for longer than roots bear.</summary>
    public required double PlantsAtRisk { get; init; }

    /// <summary>The smallest backup that would have kept the tanks at 4 mg/L, by arithmetic; null where air and power were not lost, or no tank fell that far.</summary>
    public required SmallestBackup? SmallestBackup { get; init; }
}

/// <summary>A stocked tank through a fault.</summary>
/// <param name="FishKg">Fish when it began, kg.</param>
/// <param name="StartOxygenUseMgPerKgH">Oxygen that they then took, mg/(kg h).</param>
/// <param name="LowestOxygenMgPerL">Lowest oxygen, mg/L; null where the tank ran dry.</param>
/// <param name="MinutesTo4MgPerL">Minutes until oxygen first fell to 4 mg/L; null where it did not.</param>
/// <param name="MinutesTo3MgPerL">The same for 3 mg/L.</param>
/// <param name="MinutesTo2MgPerL">The same for 2 mg/L.</param>
/// <param name="HighestCarbonDioxideMgPerL">Highest carbon dioxide, mg/L.</param>
/// <param name="HighestUnionizedAmmoniaMgNPerL">Highest un-ionized ammonia, mg N/L.</param>
/// <param name="LowestWaterC">Coldest water, °C.</param>
/// <param name="FishLost">Fish that died.</param>
public sealed record FaultTankSummary(
    double FishKg,
    double StartOxygenUseMgPerKgH,
    double? LowestOxygenMgPerL,
    double? MinutesTo4MgPerL,
    double? MinutesTo3MgPerL,
    double? MinutesTo2MgPerL,
    double HighestCarbonDioxideMgPerL,
    double HighestUnionizedAmmoniaMgNPerL,
    double LowestWaterC,
    double FishLost);

/// <summary>What would have carried the fish over a loss of air, each by itself.</summary>
/// <param name="AirShareOfNormal">Share of the tanks' normal air that holds 4 mg/L; above 1 where air alone does not.</param>
/// <param name="AirPumpWatts">Power of that air at the blower's own rate, W.</param>
/// <param name="BatteryWattHours">A lead battery for the time it lasted, half of it usable, 85 % to the pump, Wh.</param>
/// <param name="OxygenGramsPerHour">Oxygen to feed all tanks together, 40 % of it dissolving, g/h.</param>
/// <param name="OxygenKilograms">For the time it lasted, kg.</param>
/// <param name="GeneratorKilowatts">Load of pumps and blowers, kW.</param>
/// <param name="GeneratorWithinMinutes">Minutes within which it must carry the load: until the first tank is at 3 mg/L.</param>
public sealed record SmallestBackup(
    double AirShareOfNormal,
    double AirPumpWatts,
    double BatteryWattHours,
    double OxygenGramsPerHour,
    double OxygenKilograms,
    double GeneratorKilowatts,
    double? GeneratorWithinMinutes);

/// <summary>A backup through the season.</summary>
/// <param name="Starts">Times that it took the load.</param>
/// <param name="RanHours">Hours that it ran.</param>
/// <param name="FullHours">Hours that it runs from full.</param>
/// <param name="TimesEmpty">Times that it ran out.</param>
/// <param name="EnergyKWh">Energy that a battery's air pump took, kWh; 0 for others.</param>
/// <param name="OxygenKg">Oxygen that left the cylinder, kg; 0 for others.</param>
public sealed record BackupSummary(int Starts, double RanHours, double FullHours, int TimesEmpty, double EnergyKWh, double OxygenKg);
