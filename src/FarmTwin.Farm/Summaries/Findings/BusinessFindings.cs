namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Hours and money.</summary>
internal static class BusinessFindings
{
    private const double Notable = 0.02;

    public static void Add(FindingList list)
    {
        Hours(list);
        Unsold(list);
        if (list.Summary.Money is { } money)
        {
            Cash(list, money);
            Margin(list, money);
            Prices(list, money);
        }
    }

    private static void Hours(FindingList list)
    {
        LabourSummary labour = list.Summary.Labour;
        if (labour.BusiestWeek is not { } week || labour.BusiestWeekHours is not { } most)
        {
            return;
        }

        double from = (week - 1) * UnitConstants.DaysPerWeek;
        Business.WeekRecord record = list.Season.Record.Weeks;
        string heaviest = string.Join(", ", Business.ChoreTimes.Kinds
            .Select(k => (k.Key, Hours: record.Column(Business.WeekRecord.ChoreColumn(k))[week - 1]))
            .OrderByDescending(c => c.Hours).Take(4).Select(c => $"{Words(c.Key)} {c.Hours:0.0} h"));
        if (labour.HoursThereAWeek is { } there && most > there)
        {
            list.Add(72, $"Week {week} (from {list.Day(from)}) needs {most:0} h of work and {there:0} h are there; {labour.WeeksShort.Count} weeks are short. "
                + $"That week: {heaviest}. Help on those days, fewer trips, or less planted.");
        }
        else
        {
            list.Add(33, $"An ordinary week takes {labour.OrdinaryWeekHours:0} h of work, the busiest {most:0} h (week {week}, from {list.Day(from)}); "
                + $"that week: {heaviest}.");
        }
    }

    private static void Unsold(FindingList list)
    {
        foreach ((string name, SalesSummary sales) in list.Summary.Sales)
        {
            if (sales.Unsold > Notable * sales.Offered)
            {
                int first = sales.UnsoldByWeek.ToList().FindIndex(u => u > 0);
                string since = first < 0 ? "at the end" : $"from {list.Day(first * UnitConstants.DaysPerWeek)} on";
                list.Add(66, $"{sales.Unsold:0} of {sales.Offered:0} {sales.Unit} of {name} found no buyer in time and went to compost, {since}: "
                    + "sow less for those weeks, or find another buyer before they are sown.");
            }
        }

        (double start, double last, int times) = list.Span("fish not wanted");
        if (times > 0)
        {
            list.Add(64, $"Fish that were ready stayed in their tanks because the week's demand was met, {times} times from {list.Day(start)} to {list.Day(last)}: "
                + "they eat on and the tank fills; find buyers before stocking.");
        }
    }

    private static void Cash(FindingList list, MoneySummary money)
    {
        if (money.LowestCash < 0)
        {
            list.Add(84, $"Cash falls below nothing and is lowest on {list.Day(money.LowestCashDay)} at {Amount(money.LowestCash, money)}: "
                + $"bring {Amount(-money.LowestCash, money)} more, and a reserve on top.");
        }
        else
        {
            list.Add(52, $"Cash is lowest on {list.Day(money.LowestCashDay)} at {Amount(money.LowestCash, money)}, from {Amount(money.OpeningCash, money)} at the start.");
        }
    }

    private static void Margin(FindingList list, MoneySummary money)
    {
        string hour = money.EarnedPerHour is { } earned ? $"; an hour of work earned {earned:0.00} {money.Currency}" : string.Empty;
        list.Add(money.MarginAfterWear < 0 ? 70 : 51, $"In {list.Summary.Days:0} days the farm sold for {Amount(money.Income, money)} and spent {Amount(money.Costs, money)}: "
            + $"a margin of {Amount(money.Margin, money)}, {Amount(money.MarginAfterWear, money)} after wear{hour}.");
    }

    private static void Prices(FindingList list, MoneySummary money)
    {
        var bad = new List<string>();
        var poor = new List<string>();
        foreach ((string name, UnitCost unit) in money.Products)
        {
            if (unit.CostPerUnit is { } cost && unit.BroughtPerUnit is { } brought && brought < cost)
            {
                string one = unit.Unit == "kg" ? "kg" : unit.Unit.TrimEnd('s');
                bool paysItself = brought >= unit.DirectCostPerUnit;
                (paysItself ? poor : bad).Add($"{name} ({(paysItself ? cost : unit.DirectCostPerUnit):0.00} for {brought:0.00} {money.Currency} a {one})");
            }
        }

        if (bad.Count > 0)
        {
            list.Add(61, $"Over {list.Summary.Days:0} days, what they alone take is not paid by {string.Join(", ", bad)}: raise the price, heat less, or do without.");
        }

        if (poor.Count > 0)
        {
            list.Add(49, $"Over {list.Summary.Days:0} days, a share of hours, fixed costs and wear is not paid by {string.Join(", ", poor)}: "
                + "worth growing only as long as better crops have no use for the place and the hours.");
        }
    }

    private static string Amount(double amount, MoneySummary money) => $"{amount:0} {money.Currency}";

    private static string Words(string key) => string.Concat(key.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"));
}
