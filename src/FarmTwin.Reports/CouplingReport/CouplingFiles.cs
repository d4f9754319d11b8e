using System.Text.Json;
using System.Text.Json.Serialization;
using FarmTwin.Reports.Json;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Coupling;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Reports.CouplingReport;

/// <summary>Writes what a coupling study is read by.</summary>
public static class CouplingFiles
{
    private static readonly CouplingJsonContext Context = new(SummaryJson.Options());

    /// <summary>Writes coupling.html, coupling.json, coupling.csv, coupling.parquet and plots.</summary>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public static void Write(string folder, CouplingStudyResult result, string version)
    {
        ArgumentNullException.ThrowIfNull(result);
        Directory.CreateDirectory(folder);
        IReadOnlyList<Figure> figures = CouplingFigures.Of(result);
        FigureFiles.Write(folder, figures);
        Table(result).Write(folder, "coupling");
        WholeFile.Write(Path.Combine(folder, "coupling.json"), Json(result));
        WholeFile.Write(Path.Combine(folder, "coupling.html"), CouplingPage.Html(result, figures, version));
    }

    /// <summary>The advice and the candidates as JSON, ending with a line feed.</summary>
    public static string Json(CouplingStudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        CouplingAdvice advice = result.Advice();
        var file = new CouplingFile(
            result.Plan.Farm.Title, result.Seed, result.Replicates, result.WindowDays, advice.Option?.Key, advice.FirstDay, advice.LastDay, advice.Fallback.Key, advice.Sentences,
            [.. result.Candidates.Select(c => new CouplingFileCandidate(c.Day, c.Option.Key, c.Kept, c.GatesHeld, c.LimitsHeld, [.. c.Binds.Select(b => new CouplingFileBreak(b.What, b.Share))],
                CouplingLimit.All.Select((l, i) => (l.Key, c.Worst[i])).ToDictionary(x => x.Key, x => x.Item2, StringComparer.Ordinal), c.CropKilograms, c.Heads, c.HeatKilowattHours))]);
        return JsonSerializer.Serialize(file, Context.CouplingFile) + "\n";
    }

    /// <summary>A row a day and way.</summary>
    public static DataTable Table(CouplingStudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        IReadOnlyList<CouplingCandidate> all = result.Candidates;
        DataTable table = new DataTable()
            .Add("day", all.Select(c => (double)c.Day)).Add("way", all.Select(c => c.Option.Key)).Add("share_keeps_all", all.Select(c => c.Kept))
            .Add("share_gates_hold", all.Select(c => c.GatesHeld)).Add("share_limits_hold", all.Select(c => c.LimitsHeld)).Add("breaks_first", all.Select(c => c.Binds.Count > 0 ? c.Binds[0].What : string.Empty));
        for (int l = 0; l < CouplingLimit.All.Count; l++)
        {
            int limit = l;
            string key = CouplingLimit.All[l].Key.Replace('-', '_');
            table.Add($"{key}_low_10_percent", all.Select(c => c.Worst[limit].Low)).Add($"{key}_median", all.Select(c => c.Worst[limit].Median)).Add($"{key}_high_90_percent", all.Select(c => c.Worst[limit].High));
        }

        return table.Add("crops_kg_against_apart", all.Select(c => c.CropKilograms.Median)).Add("heads_against_apart", all.Select(c => c.Heads.Median)).Add("water_heat_kWh_against_apart", all.Select(c => c.HeatKilowattHours.Median));
    }
}

/// <summary>The file.</summary>
internal sealed record CouplingFile(
    string Title, ulong Seed, int Replicates, int WindowDays, string? Way, int? FirstDay, int? LastDay, string Fallback, IReadOnlyList<string> Advice, IReadOnlyList<CouplingFileCandidate> Candidates);

/// <summary>A candidate in it.</summary>
internal sealed record CouplingFileCandidate(
    int Day, string Way, double ShareKeepsAll, double ShareGatesHold, double ShareLimitsHold, IReadOnlyList<CouplingFileBreak> Breaks, IReadOnlyDictionary<string, Band> Worst,
    Band CropsKgAgainstApart, Band HeadsAgainstApart, Band WaterHeatKWhAgainstApart);

/// <summary>What broke, and in what share of the replicates.</summary>
internal sealed record CouplingFileBreak(string What, double Share);

/// <summary>The shapes that are written.</summary>
[JsonSerializable(typeof(CouplingFile))]
internal sealed partial class CouplingJsonContext : JsonSerializerContext;
