using System.Text.Json;
using System.Text.Json.Serialization;
using FarmTwin.Farm;
using FarmTwin.Farm.Operations;
using FarmTwin.Reports.Json;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>The faults of a farm as JSON, the worst first.</summary>
public static class FaultStudyJson
{
    private static readonly FaultStudyJsonContext Context = new(SummaryJson.Options());

    /// <summary>The text, ending with a line feed.</summary>
    public static string Write(FaultStudyResult study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var file = new FaultStudyFile(study.Title, study.Start, study.Days, study.Seed, study.OutageHours, study.Currency, [.. study.Rows.Select(Entry)], study.NotTried);
        return JsonSerializer.Serialize(file, Context.FaultStudyFile) + "\n";
    }

    private static FaultStudyEntry Entry(FaultRow row) => new(
        row.Case.Key, row.Case.Part, row.Case.What, Math.Floor(FarmWork.DayOf(row.Case.Hour.Seconds)),
        (double)(row.Case.Hour.Seconds % UnitConstants.SecondsPerDay) / UnitConstants.SecondsPerHour, row.Case.Hour.Why, row.Harm, row.Alarm, row.Ran, row.Loss, row.Backups, row.WorstClosure);
}

/// <summary>The file.</summary>
internal sealed record FaultStudyFile(
    string Title, DateOnly Start, double Days, ulong Seed, double OutageHours, string Currency, IReadOnlyList<FaultStudyEntry> Faults, IReadOnlyList<string> NotTried);

/// <summary>A fault in it.</summary>
internal sealed record FaultStudyEntry(
    string Fault, string Part, string What, double Day, double Hour, string WorstBecause, FaultHarm Harm, FaultAlarm? Alarm, IReadOnlyList<BackupRun> BackupsThatRan, FaultLoss Loss,
    IReadOnlyList<BackupOption> SmallestBackups, double WorstClosure);

/// <summary>The shapes that are written.</summary>
[JsonSerializable(typeof(FaultStudyFile))]
internal sealed partial class FaultStudyJsonContext : JsonSerializerContext;
