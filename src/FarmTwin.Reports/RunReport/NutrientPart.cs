using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;

namespace FarmTwin.Reports.RunReport;

/// <summary>Where the nitrogen went, what each element did, and that every ledger closes.</summary>
internal static class NutrientPart
{
    public static void Add(HtmlSection section, SeasonSummary summary)
    {
        if (NitrogenPicture.Of(summary) is { } picture)
        {
            section.Figure(picture);
        }

        var elements = new HtmlTable("Elements in the plants' water", HtmlColumn.Words("element"), HtmlColumn.Number("by feed", "g"), HtmlColumn.Number("by doses", "g"), HtmlColumn.Number("by source water", "g"),
            HtmlColumn.Number("taken up", "g"), HtmlColumn.Number("at the end", "mg/L"), HtmlColumn.Number("days short"));
        foreach ((string name, ElementSummary element) in summary.Nutrients.Elements)
        {
            elements.Row(Say.Capital(name), Say.Number(element.SuppliedG.GetValueOrDefault("feed")), Say.Number(element.SuppliedG.GetValueOrDefault("dosing")),
                Say.Number(element.SuppliedG.GetValueOrDefault("sourceWater")), Say.Number(element.TakenG), Say.Number(element.EndMgPerL), Say.Count(element.DaysShort));
        }

        section.Section("Element by element").Table(elements);
        var ledgers = new HtmlTable("Ledgers: what came in went out or is still there", HtmlColumn.Words("ledger"), HtmlColumn.Words("unit"), HtmlColumn.Number("at first"), HtmlColumn.Number("in"),
            HtmlColumn.Number("out"), HtmlColumn.Number("at the end"), HtmlColumn.Words("closes"));
        const double LargestClosure = 1e-9;
        foreach ((string name, LedgerSummary ledger) in summary.Ledgers)
        {
            ledgers.Row(Say.Capital(name), ledger.Unit, Say.Number(ledger.Opening), Say.Number(ledger.In), Say.Number(ledger.Out), Say.Number(ledger.Closing),
                ledger.Closure < LargestClosure ? "yes" : $"off by {ledger.Closure:0.0e0} of its throughput");
        }

        section.Section("Nothing is lost").Paragraph("Every ledger is kept by itself: in less out must be the change of what is there. \"Closes\" means to less than a billionth of what passed.").Table(ledgers);
    }
}
