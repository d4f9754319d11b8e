namespace FarmTwin.Studies.Faults;

/// <summary>One fault and what came of it.</summary>
/// <param name="Case">What broke and when.</param>
/// <param name="Harm">What it did, with the backups and people of the scenario.</param>
/// <param name="Alarm">What sounded first; null where nothing did.</param>
/// <param name="Ran">Backups of the scenario that ran.</param>
/// <param name="Loss">What it cost until the end of the season.</param>
/// <param name="Backups">Backups tried against it, each at its smallest size; none where nothing was harmed or none is of use.</param>
/// <param name="Oxygen">Lowest oxygen of the stocked tanks by the minute; null where it stays above 4 mg/L.</param>
/// <param name="OxygenWithBackup">The same with the first backup that saves it; null where none was found or it is not traced.</param>
/// <param name="WorstClosure">Largest closure error of any ledger after it.</param>
public sealed record FaultRow(
    FaultCase Case, FaultHarm Harm, FaultAlarm? Alarm, IReadOnlyList<BackupRun> Ran, FaultLoss Loss, IReadOnlyList<BackupOption> Backups, OxygenTrace? Oxygen, OxygenTrace? OxygenWithBackup, double WorstClosure)
{
    /// <summary>The order of a table: fish lost, then the minutes until fish gasp, then plants, then money.</summary>
    public (double Fish, double Soonness, double Plants, double Money) Severity =>
        (Math.Round(Harm.FishDied), Harm.IsHarm ? -(Harm.MinutesTo3MgPerL ?? Harm.MinutesToChill ?? double.MaxValue) : double.NegativeInfinity, Math.Round(Harm.PlantsHarmed), Loss.Money ?? 0);
}

/// <summary>Oxygen of the worst stocked tank from the beginning of a fault.</summary>
/// <param name="Minutes">Minutes since it began, [n].</param>
/// <param name="MgPerL">Lowest oxygen of the stocked tanks, mg/L, [n].</param>
public sealed record OxygenTrace(double[] Minutes, double[] MgPerL);

/// <summary>What the faults of a farm came to.</summary>
/// <param name="Title">The farm.</param>
/// <param name="Start">Day 0.</param>
/// <param name="Days">Length of the season.</param>
/// <param name="Seed">Seed of all chance.</param>
/// <param name="OutageHours">How long the mains stay off.</param>
/// <param name="HasPeople">Whether the scenario says who is there when.</param>
/// <param name="HasAlarms">Whether it has alarms.</param>
/// <param name="Currency">Currency of its prices; empty where there are none.</param>
/// <param name="Rows">The faults, the worst first.</param>
/// <param name="NotTried">What could not be tried, and why.</param>
public sealed record FaultStudyResult(
    string Title, DateOnly Start, double Days, ulong Seed, double OutageHours, bool HasPeople, bool HasAlarms, string Currency,
    IReadOnlyList<FaultRow> Rows, IReadOnlyList<string> NotTried);
