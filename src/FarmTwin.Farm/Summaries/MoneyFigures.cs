using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of sales and money.</summary>
internal static class MoneyFigures
{
    private const double DaysPerYear = 365;

    public static IReadOnlyDictionary<string, SalesSummary> Sales(Season season)
    {
        Products products = season.Parts.Products;
        TradeState trade = season.State.Trade;
        var sales = new Dictionary<string, SalesSummary>(StringComparer.Ordinal);
        for (int p = 0; p < products.Count; p++)
        {
            int product = p;
            sales.Add(products.Names[p], new SalesSummary
            {
                Unit = products.UnitOf(p),
                Offered = trade.Offered[p],
                Sold = trade.Sold[p],
                Unsold = trade.Unsold[p],
                Waiting = trade.Store[p].Sum(l => products.Measure(product, l.Pieces, l.Kilograms)),
                FirstSaleDay = SeasonSummary.DayOrNull(trade.FirstSaleDay[p]),
                SoldByWeek = season.Record.Weeks.Column(WeekRecord.SoldColumn(products, p)),
                UnsoldByWeek = season.Record.Weeks.Column(WeekRecord.UnsoldColumn(products, p)),
            });
        }

        return sales;
    }

    public static MoneySummary? Of(Season season)
    {
        if (season.Parts.Farm.Prices is not { } prices)
        {
            return null;
        }

        MoneyState money = season.State.Money;
        IReadOnlyList<Account> accounts = season.Parts.Accounts.All;
        double firstCosts = 0;
        double wages = 0;
        var income = new Dictionary<string, double>(StringComparer.Ordinal);
        var costs = new Dictionary<string, double>(StringComparer.Ordinal);
        for (int a = 0; a < accounts.Count; a++)
        {
            double paid = money.Ledger.TotalOutBy(a);
            firstCosts += accounts[a].Centre == CostCentre.FirstCost ? paid : 0;
            wages += accounts[a].Name == Accounts.Wages ? paid : 0;
            if (accounts[a].Centre == CostCentre.Sales)
            {
                income.Add(season.Parts.Products.Names[accounts[a].Product], money.Ledger.TotalInBy(a));
            }
            else if (paid > 0)
            {
                costs.Add(DoorFlow.Key(accounts[a].Name), paid);
            }
        }

        double running = money.Ledger.TotalOut - firstCosts;
        double margin = money.Ledger.TotalIn - running;
        double wear = prices.FirstCosts.Values.Sum(c => c.LifeYears is { } years ? c.Cost / years * Math.Max(0, money.DaysClosed - c.PaidDay) / DaysPerYear : 0);
        double hours = season.State.Labour.Hours;
        return new MoneySummary
        {
            Currency = season.Parts.Farm.Currency,
            OpeningCash = money.Ledger.OpeningStock,
            ClosingCash = money.Cash,
            Income = money.Ledger.TotalIn,
            Costs = running,
            Margin = margin,
            FirstCosts = firstCosts,
            Wear = wear,
            MarginAfterWear = margin - wear,
            EarnedPerHour = hours > 0 ? (margin + wages) / hours : null,
            LowestCash = money.LowestCash,
            LowestCashDay = money.LowestCashDay,
            CashByWeek = season.Record.Weeks.Column("cash"),
            IncomeByProduct = income,
            CostByAccount = costs,
            Products = UnitCosts(season, wear),
        };
    }

    // Direct costs, and a share of the rest by the hours that each product takes alone.
    private static Dictionary<string, UnitCost> UnitCosts(Season season, double wear)
    {
        Products products = season.Parts.Products;
        TradeState trade = season.State.Trade;
        var cost = new double[products.Count];
        double[] hours = [.. Enumerable.Range(0, products.Count).Select(season.State.Labour.HoursFor)];
        IReadOnlyList<Account> accounts = season.Parts.Accounts.All;
        for (int a = 0; a < accounts.Count; a++)
        {
            double paid = season.State.Money.Ledger.TotalOutBy(a);
            switch (accounts[a].Centre)
            {
                case CostCentre.Product:
                    cost[accounts[a].Product] += paid;
                    break;
                case CostCentre.Fish:
                    Share(paid, products.IsFish);
                    break;
                case CostCentre.Crops:
                    Share(paid, p => !products.IsFish(p));
                    break;
                default:
                    break;
            }
        }

        double[] direct = [.. cost];
        for (int a = 0; a < accounts.Count; a++)
        {
            if (accounts[a].Centre == CostCentre.Shared)
            {
                Share(season.State.Money.Ledger.TotalOutBy(a), _ => true);
            }
        }

        Share(wear, _ => true);
        var units = new Dictionary<string, UnitCost>(StringComparer.Ordinal);
        for (int p = 0; p < products.Count; p++)
        {
            double made = products.IsFish(p) ? GrownKilograms(season, p) : trade.Sold[p];
            units.Add(products.Names[p], new UnitCost(
                products.UnitOf(p), cost[p], made > 0 ? direct[p] / made : null, made > 0 ? cost[p] / made : null, trade.Sold[p] > 0 ? trade.Income[p] / trade.Sold[p] : null, hours[p],
                ValueDensity.PerSquareMetreWeek(trade.Income[p], LaneArea(season, p), season.State.Money.DaysClosed)));
        }

        return units;

        void Share(double amount, Func<int, bool> bears)
        {
            double all = 0;
            for (int p = 0; p < products.Count; p++)
            {
                all += bears(p) ? hours[p] : 0;
            }

            for (int p = 0; all > 0 && p < products.Count; p++)
            {
                cost[p] += bears(p) ? amount * hours[p] / all : 0;
            }
        }
    }

    private static double LaneArea(Season season, int product) => season.Parts.Farm.Lanes.Values
        .Where(l => l.Crop == season.Parts.Products.Names[product])
        .Sum(l => l.Boards * l.BoardSquareMetres);

    // Sold + standing − delivered, kg.
    private static double GrownKilograms(Season season, int species)
    {
        double grams = season.State.Trade.SoldKilograms[species] * UnitConstants.GramsPerKilogram;
        foreach (Cohort cohort in season.State.Cohorts.SelectMany(c => c).Where(c => c.SpeciesIndex == species))
        {
            grams += cohort.BiomassGrams;
        }

        for (int s = 0; s < season.Parts.Stocking.Length; s++)
        {
            StockingDescription batch = season.Parts.Stocking[s];
            grams -= season.Parts.SpeciesOfStocking[s] == species ? (double)season.State.Operations.Delivered[s] * batch.Number * batch.MeanGrams : 0;
        }

        return grams / UnitConstants.GramsPerKilogram;
    }
}
