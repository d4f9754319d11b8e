using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Reports.Comparison;

/// <summary>What a comparison comes to, in sentences.</summary>
public static class Verdict
{
    private const double Often = 0.1;

    /// <summary>The sentences, heaviest first.</summary>
    public static IReadOnlyList<string> Of(BatchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var sentences = new List<string>();
        int plans = result.Batch.Plans.Count;
        int n = result.Batch.RunsOfAPlan;
        for (int p = 0; p < plans; p++)
        {
            if (result.InTrouble(p) > Often * n)
            {
                sentences.Add($"{Capital(Name(result, p))} comes to grief in {result.InTrouble(p)} of {n} replicates: do not build on it as it stands.");
            }
        }

        string money = result.Batch.Plans.All(x => x.Farm.Prices is not null) ? "margin" : "crops_kg";
        Best(result, money, sentences);
        Best(result, "fish_sold_kg", sentences);
        if (money == "margin")
        {
            Best(result, "crops_kg", sentences);
        }

        Lowest(result, "peak_nitrite_with_fish_mgN_per_L", sentences);
        if (plans == 1)
        {
            foreach (string key in new[] { "coupled_day", "first_fish_sale_day" })
            {
                int f = Headlines.IndexOf(key);
                Band band = result.BandOf(0, f);
                sentences.Add(band.Count == 0 ? $"{Capital(Headlines.All[f].Title)}: never."
                    : $"{Capital(Headlines.All[f].Title)} on day {band.Median:0}, in four of five replicates between day {band.Low:0} and {band.High:0}{(band.Missing > 0 ? $"; never in {band.Missing}" : string.Empty)}.");
            }
        }

        if (result.Batch.RunsOfAPlan < 10)
        {
            sentences.Add($"{n} replicates are few: take 20 or more before a decision.");
        }

        return sentences;
    }

    /// <summary>The plans that do not come to grief in more than a tenth of their runs: no other is a plan, however cheap dead fish are to feed. All where none is sound.</summary>
    public static IReadOnlyList<int> Sound(BatchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        int[] all = [.. Enumerable.Range(0, result.Batch.Plans.Count)];
        int[] sound = [.. all.Where(p => result.InTrouble(p) <= Often * result.Batch.RunsOfAPlan)];
        return sound.Length > 0 ? sound : all;
    }

    // The plan with the best median, in how many replicates it beats each other plan, and what it differs by from the next.
    private static void Best(BatchResult result, string key, List<string> sentences)
    {
        int f = Headlines.IndexOf(key);
        Headline headline = Headlines.All[f];
        string unit = ComparisonFigures.Unit(result, headline);
        (int plan, Band band)[] order = [.. Sound(result).Select(p => (p, result.BandOf(p, f))).Where(b => b.Item2.Count > 0)
            .OrderByDescending(b => headline.Wanted == Wanted.Less ? -b.Item2.Median : b.Item2.Median)];
        if (order.Length == 0)
        {
            return;
        }

        (int best, Band bestBand) = order[0];
        string own = $"{Number(bestBand.Median)} {unit} ({Number(bestBand.Low)} to {Number(bestBand.High)} in four of five replicates)";
        if (order.Length == 1)
        {
            sentences.Add($"{Capital(headline.Title)}: {own}.");
            return;
        }

        (int next, Band nextBand) = order[1];
        FigureDifference against = result.Against(best, next)[f];
        double share = headline.Wanted == Wanted.Less ? 1 - against.Difference.ShareHigher : against.Difference.ShareHigher;
        sentences.Add(against.StandsOut
            ? $"{Capital(headline.Title)} is best with {Name(result, best)}: {own}; ahead of the next, {Name(result, next)} at {Number(nextBand.Median)}, in {share:0%} of the replicates."
            : $"{Capital(headline.Title)} does not part the best two, {Name(result, best)} with {own} and {Name(result, next)} with {Number(nextBand.Median)}: the difference is within the noise.");
    }

    private static void Lowest(BatchResult result, string key, List<string> sentences)
    {
        int f = Headlines.IndexOf(key);
        Band[] bands = [.. Enumerable.Range(0, result.Batch.Plans.Count).Select(p => result.BandOf(p, f))];
        int worst = -1;
        for (int p = 0; p < bands.Length; p++)
        {
            worst = bands[p].Count > 0 && (worst < 0 || bands[p].High > bands[worst].High) ? p : worst;
        }

        if (worst >= 0)
        {
            sentences.Add($"Nitrite with fish is highest with {Name(result, worst)}: {Number(bands[worst].Median)} mg N/L by the median, and above {Number(bands[worst].High)} in one replicate of ten.");
        }
    }

    private static string Name(BatchResult result, int plan) => result.Batch.Plans.Count == 1 ? "the plan" : $"plan {ComparisonFigures.Letter(plan)} ({result.Batch.Plans[plan].Name})";

    private static string Number(double value) => ComparisonFigures.Number(value);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
