using FarmTwin.Farm.Operations;
using FarmTwin.Reports.Comparison;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.Screen;
using FarmTwin.Studies.Coupling;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Reports.CouplingReport;

/// <summary>The coupling plan: what to do and why, every day and way, the ramp day by day, abort rules, the go/no-go sheet.</summary>
public static class CouplingPage
{
    private const int Width = 80;

    /// <summary>The page on the screen.</summary>
    public static IReadOnlyList<string> Screen(CouplingStudyResult result, string folder)
    {
        ArgumentNullException.ThrowIfNull(result);
        var lines = new List<string> { $"{result.Plan.Farm.Title}: when to open the valves; {result.Replicates} replicates", new('-', Width) };
        foreach (string sentence in result.Advice().Sentences)
        {
            lines.AddRange(ScreenPage.Wrap(sentence, Width - 2).Select((line, i) => (i == 0 ? "* " : "  ") + line));
        }

        lines.Add(new string('-', Width));
        lines.Add("Day   share that keeps every gate and limit      lowest plant  coldest  heater");
        lines.Add($"      {string.Join("  ", CouplingOption.All.Where(o => o.Opens).Select(o => $"{o.Key,-9}"))}  gates    nitrate, mg/L  fish, °C  share");
        foreach (int day in result.Days)
        {
            CouplingCandidate ramp = result.At(day, "ramp");
            lines.Add($"{day,-5} {string.Join("  ", CouplingOption.All.Where(o => o.Opens).Select(o => $"{result.At(day, o.Key).Kept,-9:0%}"))}  {ramp.GatesHeld,-8:0%} {Worst(ramp, "nitrate").Median,-14:0}{Worst(ramp, "coldest").Median,-9:0.0} {Worst(ramp, "heater").Median:0%}"
                + (ramp.Binds.Count > 0 && ramp.Kept < 1 ? $"  {ramp.Binds[0].What}" : string.Empty));
        }

        lines.Add($"Files   {folder}: coupling.html, coupling.json, coupling.csv, plots/");
        return lines;
    }

    /// <summary>The page to hand over.</summary>
    public static string Html(CouplingStudyResult result, IReadOnlyList<Figure> figures, string version)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(figures);
        CouplingAdvice advice = result.Advice();
        int day = advice.FirstDay ?? result.Days[^1];
        CouplingCandidate chosen = result.At(day, advice.Option?.Key ?? "ramp");
        var page = new HtmlPage("When to open the valves", $"{result.Plan.Farm.Title}. {result.Replicates} replicates with their own weather and their own draw of what nobody knows") { HasContents = true };
        HtmlSection what = page.Section("What to do");
        what.Lead(advice.Sentences[0]).List(advice.Sentences.Skip(1));
        HtmlSection plots = page.Section("By day and way");
        foreach (Figure figure in figures)
        {
            plots.Figure(HtmlFigure.Of(figure));
        }

        Candidates(plots, result);
        Ramp(page.Section("The valve day by day"), result, chosen, advice);
        Abort(page.Section("When to stop"), result);
        Sheet(page.Section("Go or no-go", newPage: true), result, chosen);
        Tried(page.Section("What would bring the day forward"), result);
        page.Section("Read this before you act").List((IEnumerable<string>)[
            "A forecast opens no valve: the readings on the day do. Test the real water of both loops first.",
            "Open in daylight, early in the week, with somebody there for the next two days, the backup tested and the fish fed lightly.",
            "Never join loops while the plants stand treated with soap, copper or a pesticide, or the fish with salt or medicine.",
            "A simulation is not an engineering design; it does not know disease, root rot or a mistake in the pipes.",
        ]);
        page.Section("How it was made").Definitions([
            ("Program", $"FarmTwin {version}"), ("Scenario", result.Plan.Hash[..Math.Min(12, result.Plan.Hash.Length)]), ("Seed", $"{result.Seed}"),
            ("Method", $"each replicate is played apart; from every day a branch is played {result.WindowDays} days on in every way, from the same water"),
        ]);
        return page.ToString();
    }

    private static void Candidates(HtmlSection section, CouplingStudyResult result)
    {
        var table = new HtmlTable($"Worst of the {result.WindowDays} days after: medians", HtmlColumn.Words("day"), HtmlColumn.Words("way"), HtmlColumn.Number("keeps all", "%"),
            HtmlColumn.Number("plant nitrate", "mg N/L"), HtmlColumn.Number("coldest", "°C"), HtmlColumn.Number("fall", "K/d"), HtmlColumn.Number("pH step"), HtmlColumn.Number("TAN", "mg N/L"), HtmlColumn.Number("heater", "%"), HtmlColumn.Number("crops", "kg"), HtmlColumn.Words("breaks first"));
        foreach (CouplingCandidate c in result.Candidates.Where(c => c.Option.Key != "apart"))
        {
            table.Row($"{c.Day}", c.Option.Key, $"{100 * c.Kept:0}", $"{Worst(c, "nitrate").Median:0}", $"{Worst(c, "coldest").Median:0.0}",
                $"{Worst(c, "fall-day").Median:0.0}", $"{Worst(c, "pH-day").Median:0.00}", $"{Worst(c, "tan").Median:0.00}", $"{100 * Worst(c, "heater").Median:0}", $"{c.CropKilograms.Median:+0;−0;0}", c.Binds.Count > 0 && c.Kept < 1 ? c.Binds[0].What : "nothing");
        }

        section.Table(table);
    }

    private static void Ramp(HtmlSection section, CouplingStudyResult result, CouplingCandidate chosen, CouplingAdvice advice)
    {
        section.Paragraph(advice.Option is null ? "No day of the range can be advised; this is what the ramp would be." : $"Opened on day {chosen.Day} ({result.Plan.Farm.Start.AddDays(chosen.Day):d MMM}), {chosen.Option.Words}; medians of the replicates, capped by degrees an hour and by what the heater has to spare.");
        var table = new HtmlTable("Valve, each way", HtmlColumn.Words("day"), HtmlColumn.Words("date"), HtmlColumn.Number("flow", "L/h"));
        double full = result.Plan.Farm.Coupling!.FullFlowLitresPerHour;
        for (int d = 0; d < chosen.Valve.Length; d++)
        {
            table.Row($"{chosen.Day + d}", $"{result.Plan.Farm.Start.AddDays(chosen.Day + d):ddd d MMM}", $"{chosen.Valve[d]:0}");
            if (chosen.Valve[d] >= full - 1)
            {
                break;
            }
        }

        section.Table(table);
    }

    private static void Abort(HtmlSection section, CouplingStudyResult result)
    {
        section.Paragraph("Halve the flow, go two steps back and wait three days if any of these is seen after the opening:");
        section.List(CouplingLimit.All.Select((l, i) => (l, result.Limits[i])).Where(x => x.l.Key is not ("heater" or "ramp-held" or "deaths"))
            .Select(x => $"{x.l.Name} {(x.l.IsUpper ? "above" : "below")} {x.Item2:0.##}{(x.l.Unit.Length > 0 ? " " + x.l.Unit : string.Empty)}").Append("fish that do not come to feed, or die without a reason that is known"));
    }

    private static void Sheet(HtmlSection section, CouplingStudyResult result, CouplingCandidate chosen)
    {
        section.Paragraph($"Expected on day {chosen.Day}: medians of {result.Replicates} replicates. Fill in what you measure; one no is a no.");
        var table = new HtmlTable("Gates on the day", HtmlColumn.Words("gate"), HtmlColumn.Number("expected"), HtmlColumn.Number("must be"), HtmlColumn.Words("unit"), HtmlColumn.Words("measured"), HtmlColumn.Words("go"));
        foreach (GateReading gate in chosen.Gates.Where(g => g.Gate is not (CouplingGates.Weekday or CouplingGates.Treatment or CouplingGates.Pesticide)))
        {
            bool below = gate.Gate is CouplingGates.Tan or CouplingGates.Nitrite or CouplingGates.PlantTan or CouplingGates.Sodium;
            table.Row(SheetName(gate), ComparisonFigures.Number(gate.Value), $"{(below ? "below" : "from")} {gate.Limit:0.##}", gate.Unit, "________", "yes / no");
        }

        section.Table(table);
        section.Ticks((IEnumerable<Inline>)[
            "Monday to Wednesday, and somebody is there for the next two days", "No treatment or salt in either loop for two weeks", "No spray, soap or copper on the plants for two weeks",
            "Backup air tested today with the main breaker pulled, with oxygen at hand", "Both sumps at their marks; overflow path free", "Probes checked against a hand meter this week",
        ]);
        section.Paragraph("Date ____________   Decision  go / no-go   Name ______________________   Signature ______________________");
    }

    // Gates are named by what holds them back; on the sheet by what is read.
    private static string SheetName(GateReading gate) => gate.Gate switch
    {
        CouplingGates.Feed => "feed over the plan's steady feed",
        CouplingGates.Days => "days on end of good water and feed",
        CouplingGates.Deaths => "days without unexplained deaths",
        CouplingGates.Oxygen => "lowest oxygen of both loops",
        _ => gate.Name,
    };

    private static void Tried(HtmlSection section, CouplingStudyResult result)
    {
        var table = new HtmlTable("First day on which every gate holds, by replicates", HtmlColumn.Words("change"), HtmlColumn.Number("median", "day"), HtmlColumn.Words("four of five"), HtmlColumn.Number("never"));
        foreach (Easing easing in result.Eased)
        {
            Band day = easing.FirstDay;
            table.Row(easing.Words.Length == 0 ? "the plan as it stands" : easing.Words, day.Count > 0 ? $"{day.Median:0}" : "never", day.Count > 0 ? $"{day.Low:0} to {day.High:0}" : "never", $"{day.Missing}");
        }

        section.Table(table);
    }

    private static Band Worst(CouplingCandidate candidate, string limit) => candidate.Worst[CouplingLimit.All.ToList().FindIndex(l => l.Key == limit)];
}
