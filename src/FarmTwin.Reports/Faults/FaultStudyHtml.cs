using FarmTwin.Reports.Html;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>The faults of a farm as a page that is printed and hung up: what to back up first, and why.</summary>
public static class FaultStudyHtml
{
    /// <summary>The page.</summary>
    public static string Of(FaultStudyResult study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var page = new HtmlPage($"{study.Title}: what breaks", FormattableString.Invariant(
            $"Each part at its worst hour of {study.Days:0} days from {study.Start:d MMM yyyy}; the mains stay off for {study.OutageHours:0.#} h; seed {study.Seed}"));
        FaultRow[] harmful = [.. study.Rows.Where(r => r.Harm.IsHarm)];
        HtmlSection first = page.Section("In short");
        first.Lead(Short(study, harmful));
        first.Paragraph(FaultStudyPage.People(study));
        var table = new HtmlTable("Faults that harm fish or plants, the worst first",
            HtmlColumn.Words("what breaks"), HtmlColumn.Number("to 4/3/2 mg/L", "min"),
            HtmlColumn.Number("first dead", "min"), HtmlColumn.Number("fish"), HtmlColumn.Number("plants"), HtmlColumn.Number("found", "h"), HtmlColumn.Number("lost", study.Currency));
        foreach (FaultRow row in harmful)
        {
            table.Row(FaultStudyPage.Named(row), Levels(row.Harm),
                Minutes(row.Harm.MinutesToFirstDeath), Count(row.Harm.FishDied), Count(row.Harm.PlantsHarmed),
                row.Harm.MinutesToFound is { } found ? FormattableString.Invariant($"{found / 60:0.0}") : "–", row.Loss.Money is { } money ? FormattableString.Invariant($"{money:0}") : "–");
        }

        first.Table(table);
        if (FaultStudyFigure.Of(study) is { } figure)
        {
            first.Figure(HtmlFigure.Of(figure));
        }

        HtmlSection each = page.Section("Fault by fault", newPage: true);
        foreach ((FaultRow row, FaultRow[] likewise) in FaultStudyPage.Grouped(harmful))
        {
            HtmlSection one = each.Section(FaultStudyPage.Named(row));
            one.Paragraph(FormattableString.Invariant($"On {FaultWords.When(study, row)}, {row.Case.Hour.Why}."));
            one.Paragraph(FaultWords.Harm(row));
            one.Paragraph(FaultWords.Answer(study, row));
            one.Paragraph(FaultWords.Ran(row));
            one.Paragraph(FaultWords.Loss(study, row));
            IReadOnlyList<string> backups = FaultWords.Backups(row);
            one.Paragraph(FaultStudyPage.Likewise(likewise));
            if (backups.Count > 0)
            {
                one.Paragraph(Inline.Strong("Smallest backup of each kind that saves it"));
                one.List(backups);
            }
        }

        page.Section("What harms neither fish nor plants, but costs").List(study.Rows.Where(FaultWords.Costs).Select(r => $"{FaultStudyPage.Named(r)}. {FaultWords.Harm(r)} {FaultWords.Loss(study, r)}"));
        page.Section("What is found and mended before it matters").List(FaultStudyPage.Harmless(study));
        page.Section("Not tried").List(study.NotTried);
        page.Section("How it was done").List(
        [
            "One season is played without faults. Each fault is a branch of it at the hour that is worst for the part, by the minute; it is mended when somebody has found it and had the time, or after a week.",
            "\"Saves\" means: no fish dead, no stocked tank down to 3 mg/L of oxygen, no water so cold that fish stop eating, no plant lost, beyond the season without the fault.",
            "Sizes are the smallest of steps that can be bought (air 5 % of the tanks' normal air, half an hour, 2 g/h of oxygen a tank, one minute, 5 % of a standby); the step below was tried and does not save. They hold for this hour and this season: buy the next size up, and test it under load every month.",
            "Money counts to the season's end: a fault close to it has cost less by then than it will.",
        ]);
        page.Section("Cautions").Note("Before anything else", "Oxygen feeds fire, generators kill by exhaust gas indoors, and mains work near water is for an electrician. A filter that stood without flow is drained to the sludge tank before its pump runs again.");
        page.Footer("Numbers: faults.csv and faults.json beside this page.");
        return page.ToString();
    }

    private static string Short(FaultStudyResult study, FaultRow[] harmful)
    {
        if (harmful.Length == 0)
        {
            return "Nothing that was tried harms fish or plants before it is found and mended.";
        }

        FaultRow worst = harmful[0];
        string backup = worst.Backups.FirstOrDefault(b => b.Saves) is { } saves ? $" The smallest backup that saves it: {saves.InWords}." : string.Empty;
        return FormattableString.Invariant($"{harmful.Length} of {study.Rows.Count} faults do harm. The worst is {FaultStudyPage.Named(worst)}: ")
            + FaultWords.Harm(worst) + backup;
    }

    private static Inline Levels(FaultHarm harm) => harm.MinutesTo4MgPerL is null ? "–"
        : Minutes(harm.MinutesTo4MgPerL) + "/" + Minutes(harm.MinutesTo3MgPerL) + "/" + Minutes(harm.MinutesTo2MgPerL);

    private static Inline Minutes(double? minutes) => minutes is { } m ? FormattableString.Invariant($"{m:0}") : "–";

    private static Inline Count(double number) => number > 0 ? FormattableString.Invariant($"{number:0}") : "–";
}
