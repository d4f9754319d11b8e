using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;

namespace FarmTwin.Reports.RunReport;

/// <summary>Where the nitrogen came from and where it went: streams as wide as their grams, from the doors of its ledger.</summary>
internal static class NitrogenPicture
{
    private const double Width = 760;
    private const double Top = 24;
    private const double Full = 300;
    private const double Gap = 17;
    private const double Trace = 0.004;
    private const double LeftBar = 178;
    private const double RightBar = 560;
    private const double Bar = 14;

    private static readonly string[] Fills = ["#9cc3de", "#a8d5ba", "#e8c9a0", "#d3bfd8", "#d9d9d9", "#c7dbe6"];

    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["openingStock"] = "first filling", ["sourceWater"] = "source water", ["feed"] = "fish feed", ["fishDelivered"] = "young fish", ["seed"] = "seed",
        ["dosing"] = "doses", ["fishSold"] = "fish sold", ["deadFish"] = "dead fish", ["cropHarvest"] = "crops sold", ["cropCompost"] = "crop waste",
        ["denitrification"] = "lost as gas", ["sludgeCompost"] = "sludge to compost", ["spill"] = "spilled", ["inWater"] = "left in the water",
        ["inSuspendedSolids"] = "left in loose solids", ["inSludge"] = "left in sludge", ["onBeads"] = "left in the filter", ["inFish"] = "left in fish", ["inPlants"] = "left in plants",
        ["rest"] = "traces",
    };

    /// <summary>The picture; null where no nitrogen came in.</summary>
    public static HtmlFigure? Of(SeasonSummary summary)
    {
        List<(string Name, double Share)> sources = Kept(summary.Nutrients.NitrogenSources);
        List<(string Name, double Share)> sinks = Kept(summary.Nutrients.NitrogenSinks);
        if (sources.Count == 0 || sinks.Count == 0)
        {
            return null;
        }

        double grams = summary.Nutrients.NitrogenSources.Values.Sum(s => s.G);
        string title = $"Of {grams / 1000:0.0} kg of nitrogen, {Told(sinks[0])}" + (sinks.Count > 1 ? $" and {Told(sinks[1])}" : string.Empty);
        string words = $"It came from {string.Join(", ", sources.Select(Told))}. It went: {string.Join(", ", sinks.Select(Told))}.";
        double height = Top + Full + (Gap * Math.Max(sources.Count, sinks.Count)) + 10;
        var picture = new SvgPicture("nitrogen", Width, height, title, words);
        double leftTop = Top + ((height - Top - Full - (Gap * (sources.Count - 1))) / 2);
        double rightTop = Top + ((height - Top - Full - (Gap * (sinks.Count - 1))) / 2);
        double middle = (height - Full + Top) / 2;
        picture.Text("came in", LeftBar, 14, 12.5, "end", "font-weight=\"600\" fill=\"#1a1a1a\"").Text("the farm's water", (LeftBar + RightBar) / 2, 14, 12.5, "middle", "font-weight=\"600\" fill=\"#1a1a1a\"")
            .Text("went or stayed", RightBar + Bar, 14, 12.5, "start", "font-weight=\"600\" fill=\"#1a1a1a\"");
        Side(picture, sources, LeftBar, leftTop, middle, isLeft: true, grams);
        Side(picture, sinks, RightBar, rightTop, middle, isLeft: false, grams);
        picture.Rect(((LeftBar + RightBar) / 2) - (Bar / 2), middle, Bar, Full, "fill=\"#0072b2\"");
        return new HtmlFigure(picture.ToString(), title, "Nitrogen of the whole season; streams as wide as their share, grams beside them.", words, "summary.json");
    }

    private static void Side(SvgPicture picture, List<(string Name, double Share)> streams, double bar, double top, double middle, bool isLeft, double grams)
    {
        double centre = (LeftBar + RightBar) / 2;
        double at = middle;
        double y = top;
        for (int i = 0; i < streams.Count; i++)
        {
            (string name, double share) = streams[i];
            double thick = share * Full;
            (double x1, double x2) = isLeft ? (bar + Bar, centre - (Bar / 2)) : (centre + (Bar / 2), bar);
            (double from, double to) = isLeft ? (y, at) : (at, y);
            double bend = (x1 + x2) / 2;
            string N(double v) => SvgPicture.Number(v);
            picture.Path($"M{N(x1)} {N(from)}C{N(bend)} {N(from)} {N(bend)} {N(to)} {N(x2)} {N(to)}V{N(to + thick)}C{N(bend)} {N(to + thick)} {N(bend)} {N(from + thick)} {N(x1)} {N(from + thick)}Z",
                $"fill=\"{Fills[i % Fills.Length]}\" stroke=\"#444444\" stroke-width=\"0.5\"");
            picture.Rect(bar, y, Bar, Math.Max(1, thick), "fill=\"#444444\"");
            double baseline = y + (thick / 2) + 4;
            string text = $"{Names.GetValueOrDefault(name, Say.Words(name))} {Say.Number(share * grams)} g, {Say.Share(share)}";
            picture.Text(text, isLeft ? bar - 6 : bar + Bar + 6, baseline, 11.5, isLeft ? "end" : "start", "fill=\"#1a1a1a\"");
            at += thick;
            y += thick + Gap;
        }
    }

    // Traces are told together: a line too thin to see needs no name of its own.
    private static List<(string Name, double Share)> Kept(IReadOnlyDictionary<string, NutrientShare> shares)
    {
        List<(string Name, double Share)> kept = [.. shares.Where(s => s.Value.Share >= Trace).OrderByDescending(s => s.Value.Share).Select(s => (s.Key, s.Value.Share))];
        double rest = shares.Values.Where(s => s.Share < Trace).Sum(s => s.Share);
        if (kept.Count > 0 && rest > 0)
        {
            kept.Add(("rest", rest));
        }

        return kept;
    }

    private static string Told((string Name, double Share) stream) => $"{Names.GetValueOrDefault(stream.Name, Say.Words(stream.Name))} {Say.Share(stream.Share)}";
}
