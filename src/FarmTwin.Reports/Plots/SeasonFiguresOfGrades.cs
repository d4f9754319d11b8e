using FarmTwin.Farm.Summaries;

namespace FarmTwin.Reports.Plots;

/// <content>Grades of the heads, and the microgreens.</content>
public sealed partial class SeasonFigures
{
    private const int DaysOfWeek = 7;

    private Figure? Grades()
    {
        string[] crops = [.. _summary.Crops.Where(c => c.Value.HeadsHarvested > 0).OrderByDescending(c => c.Value.HarvestedKg).Take(2).Select(c => c.Key)];
        if (crops.Length == 0)
        {
            return null;
        }

        CropSummary main = _summary.Crops[crops[0]];
        double first = main.SaleableHeads / main.HeadsHarvested;
        (string reason, double heads) = main.NotFirstGrade.Select(r => (r.Key, r.Value)).MaxBy(r => r.Value);
        string words = reason switch
        {
            "light" => "too light",
            "heavy" => "too heavy",
            "tipBurn" => "tip burn",
            "heat" => "scorched",
            "cold" => "spoilt by cold",
            _ => reason,
        };
        return Make("grades", $"{first:0%} of {main.HeadsHarvested:0} {crops[0]} heads are first grade; the commonest fault of the others: {words} ({heads:0} heads)",
            $"Heads a week by grade. {Period}",
            $" {string.Join("; ", crops.Select(c => $"{c}: {_summary.Crops[c].SaleableHeads:0} first, {_summary.Crops[c].SecondGradeHeads:0} second grade, {_summary.Crops[c].UnsaleableHeads:0} unsaleable"))}.",
            [
                .. crops.Select(c => new FigurePanel($"{c}, heads a week",
                    [
                        Weeks("first grade", $"first_grade_{c}", 0), Weeks("second grade", $"second_grade_{c}", 1), Weeks("unsaleable", $"unsaleable_{c}", 2),
                    ], [])),
            ]);
    }

    private Figure? Microgreens()
    {
        string[] kinds = [.. _summary.Nursery.Microgreens.Where(m => m.Value.TraysCut > 0).OrderByDescending(m => m.Value.HarvestedKg).Take(5).Select(m => m.Key)];
        if (kinds.Length == 0)
        {
            return null;
        }

        double kilograms = _summary.Nursery.Microgreens.Values.Sum(m => m.HarvestedKg);
        double trays = _summary.Nursery.Microgreens.Values.Sum(m => m.TraysCut);
        return Make("microgreens", $"Microgreens: {trays:0} trays, {kilograms:0} kg for sale; {kinds[0]} brings most, {_summary.Nursery.Microgreens[kinds[0]].MeanTrayG:0} g a tray",
            $"Above: fresh weight fit for sale, kg a week, by kind. Below: places taken at the end of each day. {Period}",
            $" {string.Join("; ", kinds.Select(k => $"{k}: {_summary.Nursery.Microgreens[k].HarvestedKg:0.0} kg"))}.",
            [
                new FigurePanel("kg a week", [.. kinds.Select((k, i) => Weeks(k, $"saleable_{k}_kg", i))], []),
                new FigurePanel("places", [Line("microgreens", "nursery_microgreen_places", 0), Line("seedlings", "nursery_seedling_places", 1)], []),
            ]);
    }

    // Sums of whole weeks, at their middle.
    private FigureLine Weeks(string label, string column, int style)
    {
        double[] values = _record.Days(column);
        int weeks = values.Length / DaysOfWeek;
        double[] days = [.. Enumerable.Range(0, weeks).Select(w => (w * DaysOfWeek) + (DaysOfWeek / 2.0))];
        double[] sums = [.. Enumerable.Range(0, weeks).Select(w => values.AsSpan(w * DaysOfWeek, DaysOfWeek).ToArray().Sum())];
        return new FigureLine(label, days, sums, style, Marked: true);
    }
}
