using FarmTwin.Reports.Html;
using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Compare;

namespace FarmTwin.Reports.Compare;

/// <summary>A comparison as a page to teach from: where the farms part, the first sign, what acting would have saved.</summary>
public static class ComparisonHtml
{
    private const int MostPartings = 15;

    /// <summary>The page.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="figures">Its figures.</param>
    public static string Of(SideBySide comparison, IReadOnlyList<Figure> figures)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(figures);
        var page = new HtmlPage($"{comparison.Reference.Title}, against {string.Join(" and ", comparison.Others.Select(o => o.Farm.Name))}", FormattableString.Invariant(
            $"{comparison.Days} days from {comparison.Start:d MMM yyyy} under one seed ({comparison.Seed}): the same weather for all"));
        HtmlSection first = page.Section("In short");
        foreach (ComparedPair pair in comparison.Others)
        {
            first.Lead($"{pair.Farm.Name}: {ComparisonWords.Sign(comparison, pair)} {ComparisonWords.Lesson(comparison, pair)}");
        }

        var outcomes = new HtmlTable("What the seasons came to", HtmlColumn.Words("farm"), HtmlColumn.Number("fish dead"), HtmlColumn.Number("fish sold", "kg"), HtmlColumn.Number("fish left", "kg"),
            HtmlColumn.Number("first-grade heads"), HtmlColumn.Number("crops", "kg"), HtmlColumn.Number("margin", comparison.Currency));
        foreach (ComparedFarm farm in comparison.Others.Select(o => o.Farm).Prepend(comparison.Reference))
        {
            outcomes.Row(farm.Name, Number(farm.Dead), Number(farm.Outcome["fish_sold_kg"]), Number(farm.Outcome["fish_standing_kg"]), Number(farm.Outcome["first_grade_heads"]), Number(farm.Outcome["crops_kg"]), Number(farm.Outcome["margin"]));
        }

        first.Table(outcomes);
        for (int i = 0; i < comparison.Others.Count; i++)
        {
            Pair(page, comparison, comparison.Others[i], [.. figures.Where(f => f.Name.EndsWith(FormattableString.Invariant($"-{i + 1}"), StringComparison.Ordinal))]);
        }

        page.Section("How it was done").List(
        [
            "Both farms are played under one seed. A line of the daily sheet parts them where a person would notice: by a whole colour of a test card, a degree, two dead fish; what counts as noticed is common practice without source (explain daily-sheet). Readings of kits and meters must differ two days on end.",
            "The sign to act on is the first reading that would worry on the one farm and not on the other; where none does, the first difference.",
            "Acting is a branch of the very season at 20:00 on the day of the sign, a day and three days later, played to the end. What it saves is the difference to not acting. Fish that were stocked stay stocked, and what has died stays dead.",
            "Margin counts what was sold: fish that were saved and still stand at the end have cost feed and brought nothing yet.",
            "One seed tells direction and size, not dates: batch gives bands.",
        ]);
        page.Footer("Numbers: compare.csv and compare.json beside this page.");
        return page.ToString();
    }

    private static void Pair(HtmlPage page, SideBySide comparison, ComparedPair pair, Figure[] figures)
    {
        HtmlSection section = page.Section(pair.Farm.Title, newPage: true);
        section.Paragraph(Inline.Strong("The first sign. ") + ComparisonWords.Sign(comparison, pair));
        if (pair.Ways.Count > 0)
        {
            var saved = new HtmlTable("What acting on the sign saves, against not acting", HtmlColumn.Words("way"), HtmlColumn.Words("acted"), HtmlColumn.Number("fish"), HtmlColumn.Number("fish", "kg"),
                HtmlColumn.Number("first-grade heads"), HtmlColumn.Number("crops", "kg"), HtmlColumn.Number("money", comparison.Currency));
            foreach (WayOfActing way in pair.Ways)
            {
                foreach (Act act in way.Acts)
                {
                    saved.Row(Way(way), act.When, ComparisonWords.Signed(act.FishSaved), ComparisonWords.Signed(act.FishKgSaved), ComparisonWords.Signed(act.HeadsSaved),
                        ComparisonWords.Signed(act.CropKgSaved), double.IsFinite(act.MoneySaved) ? ComparisonWords.Signed(act.MoneySaved) : "–");
                }
            }

            section.Table(saved);
            section.List(pair.Ways.Where(w => w.Key != "both").Select(w => Inline.Strong(Way(w) + ": ") + (w.Key == "asReference" ? pair.ActingReason : w.InWords[(w.InWords.IndexOf(": ", StringComparison.Ordinal) + 2)..] + ".")));
        }
        else
        {
            section.Paragraph(pair.ActingReason);
        }

        foreach (Figure figure in figures)
        {
            section.Figure(HtmlFigure.Of(figure));
        }

        var table = new HtmlTable($"Where a person sees them part, the first {Math.Min(MostPartings, pair.Partings.Count)} lines", HtmlColumn.Words("line of the daily sheet"), HtmlColumn.Number("day"),
            HtmlColumn.Words(comparison.Reference.Name), HtmlColumn.Words(pair.Farm.Name), HtmlColumn.Words("verdict"));
        foreach (LineParting parting in pair.Partings.Take(MostPartings))
        {
            table.Row($"{parting.Line.Sheet}: {parting.Line.Title}", FormattableString.Invariant($"{parting.Day}"), parting.Line.Words(parting.Reference), parting.Line.Words(parting.Other),
                parting.IsWarning ? "worries" : "–");
        }

        section.Table(table);
    }

    private static string Way(WayOfActing way) => way.Key switch { "asReference" => "as the reference", "remedy" => "the file's remedy", "care" => "emergency care", _ => "both" };

    private static Inline Number(double value) => double.IsFinite(value) ? FormattableString.Invariant($"{value:0}") : "–";
}
