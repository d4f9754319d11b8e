using FarmTwin.Reports.Comparison;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Plots;
using FarmTwin.Scenarios.StudyFiles;
using FarmTwin.Studies.Designs;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Sensitivity;
using FarmTwin.Studies.Statistics;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Reports.StudyReport;

/// <summary><c>study.html</c>: the question, its answer and how sure it is; what each choice does; what moves what; what nobody knows.</summary>
public static class StudyPage
{
    private const int MostPointsShown = 12;

    /// <summary>The page.</summary>
    /// <param name="result">The study, played.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="version">Version of the program.</param>
    public static string Of(StudyResult result, IReadOnlyList<Figure> figures, string version)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(figures);
        Study study = result.Study;
        var page = new HtmlPage(study.Title, $"{result.Shares.Count} plans, {result.Batch.Batch.RunsOfAPlan} replicates each: {result.Batch.Batch.Runs.Count} seasons") { HasContents = true };
        HtmlSection answer = page.Section("The answer");
        answer.Lead(study.Question);
        answer.List(Answer(result));
        Effects(page.Section("What each choice does"), result);
        Points(page.Section("The plans one by one"), result);
        HtmlSection plots = page.Section("Plots");
        foreach (Figure figure in figures)
        {
            plots.Figure(HtmlFigure.Of(figure));
        }

        HtmlSection movers = page.Section("What moves what");
        for (int i = 0; i < result.LookAt.Count; i++)
        {
            if (DriverPicture.Of(result, i) is { } picture)
            {
                movers.Figure(picture);
            }
        }

        movers.Paragraph(result.Batch.Batch.RunsOfAPlan < StudyResult.FewestDrawsToRank
            ? $"What nobody knows is not ranked here: all plans meet the same {result.Batch.Batch.RunsOfAPlan} draws, and that is too few. From {StudyResult.FewestDrawsToRank} replicates on it is." : string.Empty);
        Screening(movers, result);
        Unknown(page.Section("What nobody knows beforehand"), result);
        page.Section("Read this before you act")
            .List((IEnumerable<string>)[
                "A simulation is not an engineering design; loads, gas, electricity and backup need a licensed designer and local codes.",
                "The study knows neither disease nor the market nor the mistakes of the scenario that it starts from. Prices are those of the scenario.",
                "Do not stock fish on a forecast: test the real water. Non-native fish need a permit.",
            ]);
        page.Section("How it was made").Definitions(
        [
            ("Program", $"FarmTwin {version}"), ("Base scenario", study.Base.Replace('\\', '/')), ("Design", Design(study)), ("Seed", $"{study.Seed}"),
            ("Ledgers", $"every ledger of every run closes; the worst error is {result.Batch.WorstClosure:0.0e0} of what went through"),
        ]);
        return page.ToString();
    }

    /// <summary>The answer in sentences: the verdict over the plans, and what each choice does to the first figure looked at.</summary>
    public static IReadOnlyList<string> Answer(StudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var sentences = new List<string>();
        if (result.Shares.Count <= MostPointsShown)
        {
            sentences.AddRange(Verdict.Of(result.Batch));
        }

        for (int f = 0; f < result.Study.Factors.Count; f++)
        {
            if (ChoiceSentence(result, f) is { } sentence)
            {
                sentences.Add(sentence);
            }
        }

        int figure = result.LookAt[0];
        Band all = result.Batch.BandOf(0, figure);
        Band weather = result.WeatherAlone[0];
        Headline headline = Headlines.All[figure];
        string unit = ComparisonFigures.Unit(result.Batch, headline);
        if (all.Count > 0 && weather.Count > 0 && all.High > all.Low)
        {
            sentences.Add($"In the first plan {headline.Title} spans {Number(all.Low)} to {Number(all.High)} {unit} in four of five replicates; with the weather as the only thing unknown it would span "
                + $"{Number(weather.Low)} to {Number(weather.High)}: the rest is what nobody knows of filter, fish, feed, site and house.");
        }

        return sentences;
    }

    // What the choice does to the first figure and to grief, over all other choices.
    private static string? ChoiceSentence(StudyResult result, int factor)
    {
        StudyFactor of = result.Study.Factors[factor];
        int figure = result.LookAt[0];
        Headline headline = Headlines.All[figure];
        string unit = ComparisonFigures.Unit(result.Batch, headline);
        (int Level, Band Band, double Trouble)[] levels = [.. Enumerable.Range(0, of.Labels.Count).Select(l => (l, Band.Of(result.ValuesAt(factor, l, figure)), result.TroubleAt(factor, l))).Where(l => l.Item2.Count > 0)];
        if (levels.Length < 2 || of.Labels.Count > 6)
        {
            return null;
        }

        string told = string.Join(", ", levels.Select(l => $"{of.Labels[l.Level]}: {Number(l.Band.Median)}{(l.Trouble > 0 ? $" ({l.Trouble:0%} in trouble)" : string.Empty)}"));
        return $"By {of.Name}, {headline.Title}{(unit.Length > 0 ? $" in {unit}" : string.Empty)}: {told} (medians over all other choices).";
    }

    private static void Effects(HtmlSection section, StudyResult result)
    {
        for (int f = 0; f < result.Study.Factors.Count; f++)
        {
            int f1 = f;
            StudyFactor factor = result.Study.Factors[f];
            int[] levels = [.. Enumerable.Range(0, factor.Labels.Count).Where(l => !double.IsNaN(result.TroubleAt(f1, l)))];
            var table = new HtmlTable($"By {factor.Name}: medians over all runs with it", [HtmlColumn.Words("figure"), .. levels.Select(l => HtmlColumn.Number(Label(factor, l)))]);
            foreach (int i in result.LookAt)
            {
                string unit = ComparisonFigures.Unit(result.Batch, Headlines.All[i]);
                table.Row([$"{Headlines.All[i].Title}{(unit.Length > 0 ? $", {unit}" : string.Empty)}", .. levels.Select(l => (Inline)Number(Band.Of(result.ValuesAt(f1, l, i)).Median))]);
            }

            table.Row(["farms in trouble, %", .. levels.Select(l => (Inline)$"{100 * result.TroubleAt(f1, l):0}")]);
            section.Table(table);
        }
    }

    private static string Label(StudyFactor factor, int level) =>
        factor.IsRange ? $"{factor.LabelAt((double)level / factor.Labels.Count)} to {factor.LabelAt((level + 1.0) / factor.Labels.Count)}" : factor.Labels[level];

    private static void Points(HtmlSection section, StudyResult result)
    {
        if (result.Shares.Count > MostPointsShown)
        {
            section.Paragraph($"The {result.Shares.Count} plans stand in points.csv.");
            return;
        }

        var table = new HtmlTable("Median and middle 80 %", [HtmlColumn.Words("plan"), .. result.Study.Factors.Select(f => HtmlColumn.Words(f.Name)), .. result.LookAt.Select(i => Column(result, i) with { IsNumber = false }), HtmlColumn.Words("in trouble")]);
        for (int p = 0; p < result.Shares.Count; p++)
        {
            int point = p;
            table.Row([
                ComparisonFigures.Letter(p), .. result.Study.Factors.Select((_, f) => (Inline)result.Label(point, f)), .. result.LookAt.Select(i => Cell(result.Batch.BandOf(point, i))),
                $"{result.Batch.InTrouble(p)} of {result.Batch.Batch.RunsOfAPlan}",
            ]);
        }

        section.Table(table);
    }

    private static Inline Cell(Band band) => band.Count == 0 ? "never"
        : Inline.Strong(Number(band.Median)) + Inline.Small($" ({Number(band.Low)} to {Number(band.High)})") + (band.Missing > 0 ? Inline.Small($" never in {band.Missing}") : Inline.Empty);

    private static void Screening(HtmlSection section, StudyResult result)
    {
        for (int i = 0; i < result.Effects.Count; i++)
        {
            int index = i;
            Headline headline = Headlines.All[result.LookAt[i]];
            var table = new HtmlTable($"Screening of {headline.Title}: change over the whole range", HtmlColumn.Words("input"), HtmlColumn.Number("mean size μ*"), HtmlColumn.Number("mean μ"), HtmlColumn.Number("spread σ"), HtmlColumn.Number("steps"));
            foreach (int f in Enumerable.Range(0, result.Study.Factors.Count).OrderByDescending(f => result.Effects[index][f].MeanSize))
            {
                ElementaryEffects effect = result.Effects[i][f];
                table.Row(result.Study.Factors[f].Name, Number(effect.MeanSize), Number(effect.Mean), Number(effect.Spread), $"{effect.Count}");
            }

            section.Table(table);
        }
    }

    private static void Unknown(HtmlSection section, StudyResult result)
    {
        section.Paragraph("Apart from the weather, every replicate draws these anew, half of the draws below the usual value and half above it; all plans meet the same draws.");
        var table = new HtmlTable("What is drawn", HtmlColumn.Words("figure"), HtmlColumn.Number("low"), HtmlColumn.Number("usual"), HtmlColumn.Number("high"), HtmlColumn.Words("unit"));
        foreach (Unknown unknown in result.Batch.Batch.Plans.SelectMany(p => p.Unknowns).DistinctBy(u => (u.Name, u.Middle)).OrderBy(u => u.Name, StringComparer.Ordinal))
        {
            table.Row(unknown.About, $"{unknown.Low:0.#####}", $"{unknown.Middle:0.#####}", $"{unknown.High:0.#####}", unknown.Unit);
        }

        section.Table(table);
    }

    private static HtmlColumn Column(StudyResult result, int figure) => HtmlColumn.Number(Headlines.All[figure].Title, ComparisonFigures.Unit(result.Batch, Headlines.All[figure]));

    private static string Design(Study study) => study.Design switch
    {
        StudyDesign.All => "every combination",
        StudyDesign.LatinHypercube => "Latin hypercube",
        _ => $"screening after Morris, {study.Points} trajectories",
    };

    private static string Number(double value) => ComparisonFigures.Number(value);
}
