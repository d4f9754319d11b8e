using FarmTwin.Reports.Screen;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Reports.Comparison;

/// <summary>A batch as a page of text on the screen.</summary>
public static class ComparisonScreen
{
    private const int Width = 80;

    private static readonly string[] Keys =
    [
        "cycled_day", "coupled_day", "first_fish_sale_day", "fish_sold_kg", "fish_survival_share", "crops_kg", "first_grade_heads",
        "peak_nitrite_with_fish_mgN_per_L", "lowest_oxygen_with_fish_mg_per_L", "labour_h", "first_cost", "margin",
    ];

    /// <summary>Its lines.</summary>
    /// <param name="result">The finished batch.</param>
    /// <param name="folder">Where its files are.</param>
    public static IReadOnlyList<string> Of(BatchResult result, string folder)
    {
        ArgumentNullException.ThrowIfNull(result);
        int plans = result.Batch.Plans.Count;
        var lines = new List<string> { $"{plans} {(plans == 1 ? "plan" : "plans")}, {result.Batch.RunsOfAPlan} replicates each", new('-', Width) };
        foreach (string sentence in Verdict.Of(result))
        {
            lines.AddRange(ScreenPage.Wrap(sentence, Width - 2).Select((line, i) => (i == 0 ? "* " : "  ") + line));
        }

        lines.Add(new string('-', Width));
        for (int p = 0; p < plans; p++)
        {
            lines.Add($"Plan {ComparisonFigures.Letter(p)}  {result.Batch.Plans[p].Name}: {result.InTrouble(p)} of {result.Batch.RunsOfAPlan} in trouble");
            IReadOnlyList<FigureDifference> against = result.Against(p);
            foreach (string key in Keys)
            {
                FigureDifference row = against[Headlines.IndexOf(key)];
                if (row.Band.Count > 0)
                {
                    lines.Add(Row(result, row, p));
                }
            }
        }

        lines.Add($"Files   {folder}: comparison.html, runs.csv, figures.csv, weeks.csv (and .parquet), plots/");
        return lines;
    }

    private static string Row(BatchResult result, FigureDifference row, int plan)
    {
        Band band = row.Band;
        string unit = ComparisonFigures.Unit(result, row.Figure);
        string name = $"  {row.Figure.Title}{(unit.Length > 0 ? $", {unit}" : string.Empty)}";
        string values = $"{ComparisonFigures.Number(band.Median),8} ({ComparisonFigures.Number(band.Low)} to {ComparisonFigures.Number(band.High)})";
        string never = band.Missing > 0 ? $" never in {band.Missing}" : string.Empty;
        string difference = plan == 0 || row.Difference.Unpaired > row.Difference.Pairs ? string.Empty : !row.StandsOut ? "  =" : row.Difference.Mean > 0 ? $"  +{ComparisonFigures.Number(row.Difference.Mean)}" : $"  -{ComparisonFigures.Number(-row.Difference.Mean)}";
        return $"{name,-38}{values}{never}{difference}";
    }
}
