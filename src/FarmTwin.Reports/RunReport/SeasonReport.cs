using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Plots;

namespace FarmTwin.Reports.RunReport;

/// <summary>report.html: a season as it is handed to a client.</summary>
public static class SeasonReport
{
    /// <summary>Makes the page.</summary>
    /// <param name="season">The season.</param>
    /// <param name="summary">Its summary.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="library">The library, for what nobody knows beforehand.</param>
    public static string Of(Season season, SeasonSummary summary, IReadOnlyList<Figure> figures, FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(figures);
        // The drawing of the figures takes longest; they do not touch each other.
        Dictionary<string, HtmlFigure> drawn = figures.AsParallel().Select(f => (f.Name, Figure: HtmlFigure.Of(f))).ToDictionary(f => f.Name, f => f.Figure, StringComparer.Ordinal);
        var page = new HtmlPage(summary.Title, $"{summary.Days:0.##} days from {summary.Start:d MMMM yyyy}, computed before the first fish is stocked") { HasContents = true };
        Verdict(page.Section("In short"), summary);
        Dates(page.Section("Key dates"), summary);
        LimitsPart.Add(page.Section("Limits: what was broken, and how long"), summary);
        Show(page.Section("Fish, nitrate and yield"), drawn, "biomass", "nitrate", "yield", "grades", "microgreens");
        NutrientPart.Add(page.Section("Where the nutrients went"), summary);
        Show(page.Section("The water"), drawn, "tan-nitrite", "oxygen", "ph", "temperature");
        FarmPart.AddCropsAndFish(page.Section("What the farm brings"), summary);
        HtmlSection means = page.Section("Energy, work and money");
        FarmPart.AddMeans(means, summary);
        Show(means, drawn, "work", "cash");
        HtmlSection alarms = page.Section("Faults and alarms");
        FarmPart.AddAlarms(alarms, summary);
        Show(alarms, drawn, FaultFigure.Name);
        NetworkPart.Add(page.Section("How the water runs", newPage: true), season.Parts.Farm);
        BasisPart.AddAssumptions(page.Section("What this rests on", newPage: true), season.Parts.Farm, library);
        page.Section("Cautions").List(summary.Cautions).List(BasisPart.Standing);
        BasisPart.AddManifest(page.Section("How to make these numbers again"), summary);
        return page.Footer("A simulation is not an engineering design: loads, gas, electricity, structures and backup need a licensed designer.").ToString();
    }

    private static void Verdict(HtmlSection section, SeasonSummary summary)
    {
        FishSummary fish = summary.Fish;
        string crops = string.Join(", ", summary.Crops.Where(c => c.Value.HarvestedKg > 0).OrderByDescending(c => c.Value.HarvestedKg).Take(3).Select(c => $"{Say.Number(c.Value.HarvestedKg)} kg of {Say.Words(c.Key)}"));
        double trays = summary.Nursery.Microgreens.Values.Sum(m => m.HarvestedKg);
        string brought = string.Join(", ", new[]
        {
            fish.HarvestedKg > 0 ? $"{Say.Number(fish.HarvestedKg)} kg of fish" : string.Empty, crops, trays > 0 ? $"{Say.Number(trays)} kg of microgreens" : string.Empty,
        }.Where(t => t.Length > 0));
        string lead = brought.Length > 0 ? $"In {summary.Days:0} days the farm brings {brought} to market." : $"In {summary.Days:0} days the farm brings nothing to market.";
        if (fish.Survival is { } survival)
        {
            lead += $" {Say.Share(survival)} of the fish survive.";
        }

        if (summary.Money is { } money)
        {
            lead += $" Running costs of {Say.Number(money.Costs)} {money.Currency} stand against an income of {Say.Number(money.Income)}: "
                + (money.Margin >= 0 ? $"{Say.Number(money.Margin)} are left" : $"{Say.Number(-money.Margin)} are missing")
                + (money.Wear > 0 ? $", and after the wear of what was built {(money.MarginAfterWear >= 0 ? $"{Say.Number(money.MarginAfterWear)} are left" : $"{Say.Number(-money.MarginAfterWear)} are missing")}." : ".");
        }

        section.Lead(lead);
        if (summary.Findings.Count > 0)
        {
            section.Section("What was found, and what to do").Steps(summary.Findings.Select(f => Finding(summary, f)));
        }
    }

    // What a finding proposes stands with what came of playing it.
    private static Inline Finding(SeasonSummary summary, string finding) =>
        summary.Trials.FirstOrDefault(t => t.Finding == finding) is { } trial ? Inline.Text(finding + " ") + Inline.Small(trial.Says) : Inline.Text(finding);

    private static void Dates(HtmlSection section, SeasonSummary summary)
    {
        if (SeasonStrip.Of(summary) is { } strip)
        {
            section.Figure(strip);
        }

        Inline On(double? day) => day is { } d ? $"day {d:0}, {summary.Start.AddDays((int)d):d MMMM yyyy}" : "not in this season";
        var rows = new List<(string Term, Inline Value)>
        {
            ("Filter cycled", On(summary.Water.CycledDay)), ("First fish", On(summary.Fish.FirstDeliveryDay)), ("Valves first opened", On(summary.Water.OpenedDay)),
            ("Loops fully coupled", On(summary.Water.CoupledDay)), ("First fish sold", On(summary.Fish.FirstSaleDay)),
        };
        rows.AddRange(summary.Crops.Where(c => c.Value.FirstHarvestDay is not null).OrderBy(c => c.Value.FirstHarvestDay).Select(c => ($"First {Say.Words(c.Key)}", On(c.Value.FirstHarvestDay))));
        section.Definitions(rows);
    }

    private static void Show(HtmlSection section, Dictionary<string, HtmlFigure> drawn, params string[] names)
    {
        foreach (string name in names)
        {
            if (drawn.TryGetValue(name, out HtmlFigure? figure))
            {
                section.Figure(figure);
            }
        }
    }
}
