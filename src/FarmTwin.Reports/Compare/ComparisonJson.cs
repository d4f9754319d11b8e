using System.Text.Json;
using System.Text.Json.Serialization;
using FarmTwin.Farm;
using FarmTwin.Reports.Json;
using FarmTwin.Studies.Compare;
using FarmTwin.Studies.Outcomes;

namespace FarmTwin.Reports.Compare;

/// <summary>A comparison as JSON.</summary>
public static class ComparisonJson
{
    private static readonly ComparisonJsonContext Context = new(SummaryJson.Options());

    /// <summary>The text, ending with a line feed.</summary>
    public static string Write(SideBySide comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var file = new ComparisonFile(
            comparison.Seed, comparison.Days, comparison.Start, comparison.Currency, Entry(comparison.Reference), [.. comparison.Others.Select(o => Entry(o))]);
        return JsonSerializer.Serialize(file, Context.ComparisonFile) + "\n";
    }

    private static ComparedFarmEntry Entry(ComparedFarm farm) => new(
        farm.Name, farm.Title, farm.Dead, Headlines.All.Select((h, i) => (h.Key, farm.Outcome.Figures[i])).ToDictionary(f => f.Key, f => f.Item2, StringComparer.Ordinal));

    private static ComparedPairEntry Entry(ComparedPair pair) => new(
        Entry(pair.Farm),
        [.. pair.Partings.Select(Entry)],
        pair.Sign is null ? null : Entry(pair.Sign),
        pair.ActingReason,
        [.. pair.Ways.Select(w => new WayEntry(w.Key, w.InWords, [.. w.Acts.Select(a => new ActEntry(
            a.When, a.Delay, (double)a.Seconds / UnitConstants.SecondsPerDay, a.FishSaved, a.FishKgSaved, a.HeadsSaved, a.CropKgSaved, a.MoneySaved, a.WorstClosure))]))]);

    private static PartingEntry Entry(LineParting parting) => new(
        parting.Line.Key, parting.Line.Sheet, parting.Line.Title, parting.Line.Unit, parting.Day, parting.Line.Shown(parting.Reference), parting.Line.Shown(parting.Other), parting.IsWarning);
}

internal sealed record ComparisonFile(ulong Seed, int Days, DateOnly Start, string Currency, ComparedFarmEntry Reference, IReadOnlyList<ComparedPairEntry> Others);

internal sealed record ComparedFarmEntry(string Name, string Title, double FishDied, IReadOnlyDictionary<string, double> Figures);

internal sealed record ComparedPairEntry(
    ComparedFarmEntry Farm, IReadOnlyList<PartingEntry> Partings, PartingEntry? FirstSign, string Acting, IReadOnlyList<WayEntry> Ways);

internal sealed record PartingEntry(string Line, string Sheet, string What, string Unit, int Day, double Reference, double Other, bool Worries);

internal sealed record WayEntry(string Way, string InWords, IReadOnlyList<ActEntry> Acts);

internal sealed record ActEntry(string When, double DaysAfterTheSign, double Day, double FishSaved, double FishSavedKg, double FirstGradeHeadsSaved, double CropsSavedKg, double MoneySaved, double WorstClosure);

/// <summary>The shapes that are written.</summary>
[JsonSerializable(typeof(ComparisonFile))]
internal sealed partial class ComparisonJsonContext : JsonSerializerContext;
