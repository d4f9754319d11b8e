namespace FarmTwin.Studies.Faults;

/// <summary>What a fault did, read from its beginning until some hours after it was mended.</summary>
public sealed record FaultHarm
{
    /// <summary>Lowest oxygen of a stocked tank, mg/L; not a number where no fish were there.</summary>
    public required double LowestOxygenMgPerL { get; init; }

    /// <summary>Minutes until the first stocked tank was at 4 mg/L; null where none was.</summary>
    public required double? MinutesTo4MgPerL { get; init; }

    /// <summary>The same for 3 mg/L.</summary>
    public required double? MinutesTo3MgPerL { get; init; }

    /// <summary>The same for 2 mg/L.</summary>
    public required double? MinutesTo2MgPerL { get; init; }

    /// <summary>Coldest water of a stocked tank, °C; not a number where no fish were there.</summary>
    public required double ColdestFishWaterC { get; init; }

    /// <summary>Minutes until fish water was so cold that fish eat nothing; null where it was not.</summary>
    public required double? MinutesToChill { get; init; }

    /// <summary>Minutes until the first fish was dead of it; null where none died.</summary>
    public required double? MinutesToFirstDeath { get; init; }

    /// <summary>Fish that died of it.</summary>
    public required double FishDied { get; init; }

    /// <summary>Plants that died of cold beyond those of the season without the fault, and most that stood dry or in water without oxygen for too long.</summary>
    public required double PlantsHarmed { get; init; }

    /// <summary>Water that ran over a brim, L.</summary>
    public required double SpilledL { get; init; }

    /// <summary>Minutes until somebody saw it; null where nobody did.</summary>
    public required double? MinutesToFound { get; init; }

    /// <summary>Who or what found it; empty where nobody did.</summary>
    public required string FoundBy { get; init; }

    /// <summary>Minutes until it was over; null where it was ended by the study after a week.</summary>
    public required double? MinutesToMended { get; init; }

    /// <summary>Whether fish were harmed: one dead, oxygen at gasping, water too cold to eat.</summary>
    public required bool HarmsFish { get; init; }

    /// <summary>Whether fish or plants were harmed.</summary>
    public bool IsHarm => HarmsFish || PlantsHarmed > 0;
}

/// <summary>What sounded first, and what came of it.</summary>
/// <param name="Alarm">The alarm.</param>
/// <param name="MinutesToRaised">Minutes from the fault until it was raised.</param>
/// <param name="MinutesToAnswered">Until somebody took it on; null where nobody did.</param>
/// <param name="MinutesToArrived">Until somebody stood before it; null where nobody came.</param>
/// <param name="By">Who; empty where nobody did.</param>
public sealed record FaultAlarm(string Alarm, double MinutesToRaised, double? MinutesToAnswered, double? MinutesToArrived, string By);

/// <summary>A backup of the scenario that ran.</summary>
/// <param name="Name">The backup.</param>
/// <param name="Hours">How long it ran.</param>
/// <param name="RanOut">Whether it ran out.</param>
public sealed record BackupRun(string Name, double Hours, bool RanOut);

/// <summary>What a fault cost until the end of the season, against the season without it.</summary>
/// <param name="Fish">Fish that died more.</param>
/// <param name="FirstGradeHeads">First-grade heads fewer.</param>
/// <param name="CropKg">Crops fit for sale, kg fewer.</param>
/// <param name="Money">Margin less; null where the scenario has no prices.</param>
public sealed record FaultLoss(double Fish, double FirstGradeHeads, double CropKg, double? Money);
