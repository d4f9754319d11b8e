using FarmTwin.Reports.Comparison;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Sensitivity;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Reports.StudyReport;

/// <summary>Writes what a finished study is read by.</summary>
public static class StudyReportFiles
{
    private const int MostPointsDrawn = 8;

    /// <summary>Writes it beside the study's journal; the bytes do not depend on threads or on how often the study was stopped.</summary>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public static void Write(string folder, StudyResult result, string version, bool plots)
    {
        ArgumentNullException.ThrowIfNull(result);
        BatchTables.Runs(result.Batch).Write(folder, "runs");
        Points(result).Write(folder, "points");
        Drivers(result).Write(folder, "drivers");
        IReadOnlyList<Figure> figures = plots && result.Shares.Count <= MostPointsDrawn ? ComparisonFigures.Of(result.Batch) : [];
        if (figures.Count > 0)
        {
            BatchTables.Weeks(result.Batch).Write(folder, "weeks");
            BatchTables.Figures(result.Batch).Write(folder, "figures");
        }

        FigureFiles.Write(folder, figures);
        WholeFile.Write(Path.Combine(folder, "study.html"), StudyPage.Of(result, figures, version));
    }

    /// <summary>A row a point: what it is set to, median and band of each figure looked at, farms in trouble.</summary>
    public static DataTable Points(StudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        int[] points = [.. Enumerable.Range(0, result.Shares.Count)];
        DataTable table = new DataTable().Add("plan", points.Select(ComparisonFigures.Letter));
        for (int f = 0; f < result.Study.Factors.Count; f++)
        {
            int factor = f;
            table.Add(result.Study.Factors[f].Name, points.Select(p => result.Label(p, factor)));
        }

        foreach (int figure in result.LookAt)
        {
            Band[] bands = [.. points.Select(p => result.Batch.BandOf(p, figure))];
            string key = Headlines.All[figure].Key;
            table.Add($"{key}_low_10_percent", bands.Select(b => b.Low)).Add($"{key}_median", bands.Select(b => b.Median)).Add($"{key}_high_90_percent", bands.Select(b => b.High));
        }

        return table.Add("in_trouble", points.Select(p => (double)result.Batch.InTrouble(p))).Add("replicates", points.Select(_ => (double)result.Batch.Batch.RunsOfAPlan));
    }

    /// <summary>A row an input or unknown: its rank correlation with each figure looked at and, of a screening, its elementary effects.</summary>
    public static DataTable Drivers(StudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        DataTable table = new DataTable()
            .Add("what", result.Drivers.Select(d => d.Name))
            .Add("is", result.Drivers.Select(d => d.IsUnknown ? "unknown" : "chosen"));
        for (int i = 0; i < result.LookAt.Count; i++)
        {
            int index = i;
            string key = Headlines.All[result.LookAt[i]].Key;
            table.Add($"{key}_rank_correlation", result.Drivers.Select(d => d.Correlations[index]));
            if (result.Effects.Count > 0)
            {
                int factors = result.Study.Factors.Count;
                table.Add($"{key}_mean_size", result.Drivers.Select((_, d) => d < factors ? result.Effects[index][d].MeanSize : double.NaN));
                table.Add($"{key}_spread", result.Drivers.Select((_, d) => d < factors ? result.Effects[index][d].Spread : double.NaN));
            }
        }

        return table;
    }
}
