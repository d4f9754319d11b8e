using FarmTwin.Reports.Html;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Sensitivity;

namespace FarmTwin.Reports.StudyReport;

/// <summary>Bars of what moves a figure, the strongest on top.</summary>
internal static class DriverPicture
{
    private const double Width = 740;
    private const double RowHeight = 22;
    private const double Words = 330;
    private const double Middle = 520;
    private const double Half = 180;
    private const double Top = 34;
    private const int Most = 12;

    /// <summary>The picture for one figure; null where nothing can be seen to move it.</summary>
    public static HtmlFigure? Of(StudyResult result, int index)
    {
        Headline headline = Headlines.All[result.LookAt[index]];
        Driver[] drivers = [.. result.Drivers.Where(d => double.IsFinite(d.Correlations[index])).OrderByDescending(d => Math.Abs(d.Correlations[index])).Take(Most)];
        if (drivers.Length == 0)
        {
            return null;
        }

        Driver first = drivers[0];
        string title = $"What moves {headline.Title}: most of all {Name(first)}";
        string words = string.Join("; ", drivers.Select(d => $"{Name(d)} {d.Correlations[index]:+0.00;−0.00}")) + ".";
        var svg = new SvgPicture($"drivers-{headline.Key.Replace('_', '-').ToLowerInvariant()}", Width, Top + (drivers.Length * RowHeight) + 12, title, words);
        svg.Text("with more of it, less", Middle - Half, 14, 11.5).Text("with more of it, more", Middle + Half, 14, 11.5, "end");
        svg.Line(Middle, 20, Middle, Top + (drivers.Length * RowHeight), "stroke=\"#333\"");
        for (int i = 0; i < drivers.Length; i++)
        {
            double y = Top + (i * RowHeight);
            double length = drivers[i].Correlations[index] * Half;
            string fill = drivers[i].IsUnknown ? "fill=\"#ffffff\" stroke=\"#0072B2\" stroke-width=\"1.5\"" : "fill=\"#0072B2\"";
            svg.Rect(Math.Min(Middle, Middle + length), y - 12, Math.Max(1, Math.Abs(length)), 14, fill);
            svg.Text(Name(drivers[i]), Words, y, 12, "end");
            svg.Text($"{drivers[i].Correlations[index]:+0.00;−0.00}", length < 0 ? Middle + 6 : Middle - 6, y, 11.5, length < 0 ? "start" : "end");
        }

        return new HtmlFigure(svg.ToString(), title,
            "Rank correlation over all runs, from −1 to 1. Full bars: what the plan chooses. Open bars: what nobody knows beforehand.", words, "drivers.csv");
    }

    /// <summary>A driver as a reader sees it: of a parameter's path its last word.</summary>
    public static string Name(Driver driver) => driver.IsUnknown ? Plain(driver.Name[(driver.Name.LastIndexOf('/') + 1)..]) : driver.Name;

    private static string Plain(string name) => string.Concat(name.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"));
}
