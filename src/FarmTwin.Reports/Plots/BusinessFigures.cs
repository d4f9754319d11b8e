using FarmTwin.Farm;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Reports.Plots;

/// <summary>Hours and money by week.</summary>
internal static class BusinessFigures
{
    private const string Data = "weeks.csv";
    private const double Thousand = 1000;

    /// <summary>Hours a week: what they serve, and all of them against the hours that are there.</summary>
    public static Figure? Work(Season season, SeasonSummary summary, string period, IReadOnlyList<FigureEvent> events)
    {
        WeekRecord record = season.Record.Weeks;
        LabourSummary labour = summary.Labour;
        if (record.Weeks.RowCount < 2 || labour.BusiestWeek is not { } busiest)
        {
            return null;
        }

        double[] days = MiddleOfWeeks(record.Weeks.RowCount);
        var lines = new List<FigureLine>();
        int style = 0;
        foreach ((string area, double _) in labour.HoursByArea.Where(a => a.Value > 0).OrderByDescending(a => a.Value).Take(5))
        {
            var sum = new double[days.Length];
            foreach (ChoreKind kind in ChoreTimes.Kinds.Where(k => k.Area.ToString().Equals(area, StringComparison.OrdinalIgnoreCase)))
            {
                double[] hours = record.Column(WeekRecord.ChoreColumn(kind));
                for (int w = 0; w < sum.Length; w++)
                {
                    sum[w] += hours[w];
                }
            }

            lines.Add(new FigureLine(area, days, sum, style++));
        }

        string there = labour.HoursThereAWeek is { } limit
            ? labour.WeeksShort.Count > 0 ? $"; {labour.WeeksShort.Count} weeks need more than the {limit:0} h that are there" : $", {limit:0} h are there"
            : string.Empty;
        FigureBand[] bands = labour.HoursThereAWeek is { } hoursThere ? [new FigureBand(double.NegativeInfinity, hoursThere, $"hours that are there: {hoursThere:0}")] : [];
        string title = $"An ordinary week takes {labour.OrdinaryWeekHours:0} h of work, the busiest (week {busiest}) {labour.BusiestWeekHours:0} h{there}";
        return new Figure("work", title, $"Above: all work, hours a week. Below: the same by what it serves. {period}",
            $"{title}. {string.Join(", ", labour.HoursByArea.Where(a => a.Value > 0).Select(a => $"{a.Key} {a.Value:0} h"))}.",
            summary.Start, summary.Days - 1,
            [
                new FigurePanel("all work, h a week", [new FigureLine("all work", days, record.Column("hours_h"), 0, Marked: true)], bands),
                new FigurePanel("by use, h a week", lines, []),
            ], events, Data);
    }

    /// <summary>Cash at the end of each week, and what came in and went out.</summary>
    public static Figure? Cash(Season season, SeasonSummary summary, string period, IReadOnlyList<FigureEvent> events)
    {
        WeekRecord record = season.Record.Weeks;
        if (summary.Money is not { } money || record.Weeks.RowCount < 2)
        {
            return null;
        }

        double[] middle = MiddleOfWeeks(record.Weeks.RowCount);
        double[] ends = [.. middle.Select(d => d + (UnitConstants.DaysPerWeek / 2))];
        double[] cash = record.Column("cash");
        double[] costs = RunningCosts(season, record);
        string title = $"Cash is lowest on day {money.LowestCashDay:0} at {money.LowestCash:0} {money.Currency} and ends at {money.ClosingCash:0}; "
            + $"the margin is {money.Margin:0}, {money.MarginAfterWear:0} after wear";
        return new Figure("cash", title,
            $"Above: cash at the end of each week, thousands of {money.Currency}. Below: income and running costs a week, {money.Currency} (without what was paid to build the farm). {period}",
            $"{title}. Income {money.Income:0}, running costs {money.Costs:0}, first costs {money.FirstCosts:0}.",
            summary.Start, summary.Days - 1,
            [
                new FigurePanel($"cash, 1,000 {money.Currency}", [new FigureLine("cash", ends, [.. cash.Select(c => c / Thousand)], 0)], []),
                new FigurePanel($"{money.Currency} a week", [new FigureLine("income", middle, record.Column("income"), 2), new FigureLine("running costs", middle, costs, 1)], []),
            ], events, Data);
    }

    private static double[] RunningCosts(Season season, WeekRecord record)
    {
        double[] costs = record.Column("costs");
        foreach (Account account in season.Parts.Accounts.All.Where(a => a.Centre == CostCentre.FirstCost && a.Price > 0))
        {
            double[] first = record.Column(WeekRecord.CostColumn(account));
            for (int w = 0; w < costs.Length; w++)
            {
                costs[w] -= first[w];
            }
        }

        return costs;
    }

    private static double[] MiddleOfWeeks(int weeks) =>
        [.. Enumerable.Range(0, weeks).Select(w => (w + 0.5) * UnitConstants.DaysPerWeek)];
}
