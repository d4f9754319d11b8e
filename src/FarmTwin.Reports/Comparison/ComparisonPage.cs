using FarmTwin.Reports.Html;
using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Statistics;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Reports.Comparison;

/// <summary><c>comparison.html</c>: what the plans bring, how sure that is, and what nobody knows.</summary>
public static class ComparisonPage
{
    private static readonly (string Title, string[] Keys)[] Groups =
    [
        ("Dates", ["cycled_day", "first_fish_day", "valves_opened_day", "coupled_day", "first_crop_day", "first_fish_sale_day"]),
        ("Fish", ["fish_sold_kg", "fish_peak_kg", "fish_fed_kg", "fcr", "fish_survival_share"]),
        ("Crops", ["crops_kg", "first_grade_heads", "heads_below_grade", "lowest_plant_nitrate_mgN_per_L"]),
        ("Water", ["peak_tan_with_fish_mgN_per_L", "peak_nitrite_with_fish_mgN_per_L", "nitrite_above_band_h", "lowest_oxygen_with_fish_mg_per_L", "coldest_fish_water_C", "final_plant_nitrate_mgN_per_L", "top_up_L_per_day"]),
        ("Energy and work", ["heat_kWh", "electricity_kWh", "labour_h", "busiest_week_h"]),
        ("Money", ["first_cost", "income", "costs", "margin", "margin_after_wear", "lowest_cash"]),
    ];

    /// <summary>The page.</summary>
    /// <param name="result">The finished batch.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="version">Version of the program.</param>
    public static string Of(BatchResult result, IReadOnlyList<Figure> figures, string version)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(figures);
        BatchPlan batch = result.Batch;
        int plans = batch.Plans.Count;
        var page = new HtmlPage(
            plans == 1 ? $"One plan, {batch.RunsOfAPlan} times" : $"{plans} plans side by side",
            $"{batch.Plans[0].Farm.LengthDays:0} days from {batch.Plans[0].Farm.Start:d MMMM yyyy}, {batch.RunsOfAPlan} replicates of each plan under the same weather and the same unknowns")
        { HasContents = true };
        page.Section("In short").List(Verdict.Of(result));
        Plans(page.Section("The plans"), result);
        HtmlSection figuresOf = page.Section("Figures");
        foreach ((string title, string[] keys) in Groups)
        {
            Group(figuresOf.Section(title), result, title, keys);
        }

        HtmlSection plots = page.Section("Plots");
        foreach (Figure figure in figures)
        {
            plots.Figure(HtmlFigure.Of(figure));
        }

        Trouble(page.Section("Farms in trouble"), result);
        Unknowns(page.Section("What nobody knows beforehand"), result);
        page.Section("Read this before you act")
            .List((IEnumerable<string>)[
                "A simulation is not an engineering design. Loads, gas, electricity and backup need a licensed designer and local codes.",
                "Replicates hold what weather and the unknowns above do. They do not hold disease, breeding, theft, a market that fails, or a mistake in the scenario.",
                "Do not stock fish on a forecast: test the real water, and keep the backup ready. Non-native fish need a permit.",
                "A difference that does not stand out is no difference to act on; more replicates may show it, or show that there is none.",
            ]);
        page.Section("How it was made").Definitions(
        [
            ("Program", $"FarmTwin {version}"), ("Seeds", string.Join(", ", batch.Seeds)), ("Replicates", $"{batch.Replicates} under each seed, from 1"),
            ("Scenarios", string.Join("; ", batch.Plans.Select((p, i) => $"{ComparisonFigures.Letter(i)} {p.Hash[..Math.Min(12, p.Hash.Length)]}"))),
            ("Ledgers", $"every ledger of every run closes; the worst error is {result.WorstClosure:0.0e0} of what went through"),
            ("Bands", "10 % to 90 % of the replicates; median between them"),
            ("Stands out", "the paired difference to plan A over the replicates is unlikely under none: below 5 % by Wilcoxon's signed ranks, exact, corrected by Holm for all figures looked at"),
        ]);
        return page.ToString();
    }

    private static void Plans(HtmlSection section, BatchResult result)
    {
        var table = new HtmlTable("The plans", HtmlColumn.Words("plan"), HtmlColumn.Words("file"), HtmlColumn.Words("what it is"), HtmlColumn.Words("farms in trouble"));
        for (int p = 0; p < result.Batch.Plans.Count; p++)
        {
            FarmPlan plan = result.Batch.Plans[p];
            table.Row(ComparisonFigures.Letter(p), plan.Name, plan.Farm.Title, $"{result.InTrouble(p)} of {result.Batch.RunsOfAPlan}");
        }

        section.Table(table);
    }

    private static void Group(HtmlSection section, BatchResult result, string title, string[] keys)
    {
        int plans = result.Batch.Plans.Count;
        var table = new HtmlTable($"{title}: median and middle 80 %", [HtmlColumn.Words("figure"), .. Enumerable.Range(0, plans).Select(p => HtmlColumn.Words($"plan {ComparisonFigures.Letter(p)}"))]);
        IReadOnlyList<FigureDifference>[] against = [.. Enumerable.Range(0, plans).Select(p => result.Against(p))];
        foreach (string key in keys)
        {
            int f = Headlines.IndexOf(key);
            if (Enumerable.Range(0, plans).All(p => against[p][f].Band.Count == 0))
            {
                continue;
            }

            string unit = ComparisonFigures.Unit(result, Headlines.All[f]);
            table.Row([$"{Headlines.All[f].Title}{(unit.Length > 0 ? $", {unit}" : string.Empty)}", .. Enumerable.Range(0, plans).Select(p => Cell(against[p][f], p))]);
        }

        section.Table(table);
    }

    private static Inline Cell(FigureDifference row, int plan)
    {
        Band band = row.Band;
        if (band.Count == 0)
        {
            return "never";
        }

        Inline cell = Inline.Strong(ComparisonFigures.Number(band.Median));
        if (band.High - band.Low > 0.005 * Math.Abs(band.Median))
        {
            cell += Inline.Small($" ({ComparisonFigures.Number(band.Low)} to {ComparisonFigures.Number(band.High)})");
        }

        if (band.Missing > 0)
        {
            cell += Inline.Small($" never in {band.Missing}");
        }

        // Over the replicates in which the day came in both, a plan that mostly never gets there looks early: no difference is shown then.
        if (plan > 0 && row.StandsOut && row.Difference.Unpaired == 0)
        {
            string way = row.Figure.Wanted == Wanted.Neither ? string.Empty : row.IsBetter ? ", better" : ", worse";
            cell += Inline.Text($" {Signed(row.Difference.Mean)}{way}");
        }

        return cell;
    }

    private static string Signed(double value) => (value < 0 ? "−" : "+") + ComparisonFigures.Number(Math.Abs(value));

    private static void Trouble(HtmlSection section, BatchResult result)
    {
        var table = new HtmlTable("Runs in trouble, by plan and cause", HtmlColumn.Words("plan"), HtmlColumn.Words("replicates"), HtmlColumn.Words("the first of them"));
        for (int p = 0; p < result.Batch.Plans.Count; p++)
        {
            if (result.InTrouble(p) > 0)
            {
                int first = Enumerable.Range(p * result.Batch.RunsOfAPlan, result.Batch.RunsOfAPlan).First(r => result.Troubles[r] is not null);
                table.Row($"{ComparisonFigures.Letter(p)} {result.Batch.Plans[p].Name}", $"{result.InTrouble(p)} of {result.Batch.RunsOfAPlan}", result.Troubles[first]!);
            }
        }

        section.Table(table);
        section.Paragraph(table.RowCount == 0 ? "No run of any plan was in trouble: no more than a twentieth of the fish died of other causes than the usual." : string.Empty);
    }

    private static void Unknowns(HtmlSection section, BatchResult result)
    {
        section.Paragraph("Apart from the weather, every replicate draws these anew, half of the draws below the usual value and half above it; two plans meet the same draws.");
        var table = new HtmlTable("What is drawn", HtmlColumn.Words("figure"), HtmlColumn.Number("low"), HtmlColumn.Number("usual"), HtmlColumn.Number("high"), HtmlColumn.Words("unit"));
        foreach (Unknown unknown in result.Batch.Plans.SelectMany(p => p.Unknowns).DistinctBy(u => (u.Name, u.Middle)).OrderBy(u => u.Name, StringComparer.Ordinal))
        {
            table.Row(unknown.About, Plain(unknown.Low), Plain(unknown.Middle), Plain(unknown.High), unknown.Unit);
        }

        section.Table(table);
    }

    private static string Plain(double value) => $"{value:0.#####}";
}
