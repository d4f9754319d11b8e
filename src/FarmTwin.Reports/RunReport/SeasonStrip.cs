using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;

namespace FarmTwin.Reports.RunReport;

/// <summary>The season as a strip: when the filter was brought to life, when fish were there, when the loops were joined, first harvests and sales, faults.</summary>
internal static class SeasonStrip
{
    private const double Width = 760;
    private const double Left = 96;
    private const double Right = 744;
    private const double Row = 27;

    /// <summary>The strip; null for a season of less than a week.</summary>
    public static HtmlFigure? Of(SeasonSummary summary)
    {
        const int LeastDays = 7;
        if (summary.Days < LeastDays)
        {
            return null;
        }

        double last = summary.Days;
        double X(double day) => Left + ((Right - Left) * day / last);
        WaterSummary water = summary.Water;
        double cycled = water.CycledDay ?? last;
        var rows = new List<(string Name, List<(double From, double To, string Words, string Fill)> Bars, List<(double Day, string Words)> Marks)>
        {
            ("filter", [(0, cycled, "cycling", "#e8c9a0"), (cycled, last, water.CycledDay is { } alive ? $"cycled, day {alive:0}" : string.Empty, "#f3e6d0")], []),
            ("fish", summary.Fish.FirstDeliveryDay is { } stocked ? [(stocked, last, $"stocked from day {stocked:0}", "#9cc3de")] : [],
                summary.Fish.FirstSaleDay is { } sale ? [(sale, $"first sold, {sale:0}")] : []),
            ("loops", [.. Loops(water, last)], []),
            ("crops", [], Spread(summary.Crops.Where(c => c.Value.FirstHarvestDay is not null).Select(c => (c.Value.FirstHarvestDay!.Value, c.Key)))),
        };
        if (summary.Faults.Count > 0)
        {
            rows.Add(("faults", [], Spread(summary.Faults.Select(f => (f.Value.Day, f.Key)))));
        }

        // Words of neighbours stand on lines of their own.
        var heights = rows.Select(r => Math.Max(1, Lanes(r.Marks, X).DefaultIfEmpty(-1).Max() + 1)).ToArray();
        double height = (heights.Sum() * Row) + (rows.Count * 5) + 34;
        string title = "The season at a glance: " + Told(summary);
        string words = string.Join("; ", rows.Select(r => $"{r.Name}: {string.Join(", ", r.Bars.Where(b => b.Words.Length > 0 && b.To > b.From).Select(b => b.Words).Concat(r.Marks.Select(m => $"{m.Words} (day {m.Day:0})")))}")) + ".";
        var picture = new SvgPicture("season", Width, height, title, words);
        double y = 4;
        for (int r = 0; r < rows.Count; r++)
        {
            double rowHeight = heights[r] * Row;
            picture.Rect(Left, y, Right - Left, rowHeight, "fill=\"#f6f6f6\"");
            picture.Text(rows[r].Name, Left - 8, y + 18, 12.5, "end", "font-weight=\"600\" fill=\"#1a1a1a\"");
            foreach ((double from, double to, string text, string fill) in rows[r].Bars.Where(b => b.To > b.From))
            {
                picture.Rect(X(from), y, X(to) - X(from), rowHeight, $"fill=\"{fill}\" stroke=\"#444444\" stroke-width=\"0.7\"");
                if (SvgPicture.Measure(text, 11.5) < X(to) - X(from) - 6)
                {
                    picture.Text(text, X(from) + 5, y + 17, 11.5, "start", "fill=\"#1a1a1a\"");
                }
            }

            int[] lanes = Lanes(rows[r].Marks, X);
            for (int m = 0; m < lanes.Length; m++)
            {
                (double day, string text) = rows[r].Marks[m];
                bool leftwards = X(day) + 8 + SvgPicture.Measure(text, 11.5) > Right;
                double line = y + (lanes[m] * Row);
                picture.Line(X(day), y, X(day), y + rowHeight, "stroke=\"#1a1a1a\" stroke-width=\"1\"");
                picture.Circle(X(day), line + 13, 4, "fill=\"#b34700\" stroke=\"#ffffff\"");
                picture.Text(text, leftwards ? X(day) - 7 : X(day) + 7, line + 17, 11.5, leftwards ? "end" : "start", "fill=\"#1a1a1a\" stroke=\"#f6f6f6\" stroke-width=\"3\" paint-order=\"stroke\"");
            }

            y += rowHeight + 5;
        }

        double step = last > 100 ? 60 : last > 30 ? 14 : 7;
        for (double day = 0; day <= last - (step / 3); day += step)
        {
            picture.Line(X(day), y - 3, X(day), y + 3, "stroke=\"#444444\" stroke-width=\"1\"");
            picture.Text(day == 0 ? "day 0" : $"{day:0}", X(day), y + 15, 11, day == 0 ? "start" : "middle", "fill=\"#1a1a1a\"");
            picture.Text($"{summary.Start.AddDays((int)day):d MMM}", X(day), y + 28, 11, day == 0 ? "start" : "middle", "fill=\"#4a4a4a\"");
        }

        return new HtmlFigure(picture.ToString(), title, string.Empty, words, "events.csv");
    }

    private static List<(double Day, string Words)> Spread(IEnumerable<(double Day, string Name)> marks) =>
        [.. marks.OrderBy(m => m.Day).Select(m => (m.Day, $"{Say.Words(m.Name)}, {m.Day:0}"))];

    private static int[] Lanes(List<(double Day, string Words)> marks, Func<double, double> x)
    {
        var lanes = new int[marks.Count];
        var taken = new List<(double From, double To, int Lane)>();
        for (int m = 0; m < marks.Count; m++)
        {
            double width = SvgPicture.Measure(marks[m].Words, 11.5) + 16;
            double at = x(marks[m].Day);
            (double from, double to) = at + width > Right ? (at - width, at + 8) : (at - 8, at + width);
            while (taken.Exists(t => t.Lane == lanes[m] && from < t.To && to > t.From))
            {
                lanes[m]++;
            }

            taken.Add((from, to, lanes[m]));
        }

        return lanes;
    }

    private static IEnumerable<(double From, double To, string Words, string Fill)> Loops(WaterSummary water, double last)
    {
        double opened = water.OpenedDay ?? last;
        double coupled = water.CoupledDay ?? last;
        yield return (0, opened, "apart", "#eeeeee");
        yield return (opened, coupled, "opening", "#e8c9a0");
        yield return (coupled, last, $"one water from day {coupled:0}", "#a8d5ba");
    }

    private static string Told(SeasonSummary summary)
    {
        string joined = summary.Water.CoupledDay is { } day ? $"the loops are one from day {day:0}" : summary.Water.OpenedDay is not null ? "the loops are not fully joined by the end" : "the valves stay closed";
        return summary.Fish.FirstSaleDay is { } sale ? $"{joined}, fish are sold from day {sale:0}" : joined;
    }
}
