using FarmTwin.Farm.Business;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Business;

/// <summary>Money: every sum can be followed from the thing used and its price; nothing is lumped.</summary>
public class MoneyTests
{
    private const int Days = 182;
    private static readonly PricesDescription Prices = Farms.FirstSeason.Prices!;
    private static readonly Season Season = Farms.Run(Farms.FirstSeason, Days);
    private static readonly MoneySummary Money = SeasonSummary.Of(Season, ShippedLibrary.Library, "test").Money!;

    private static double Paid(string account) => Season.State.Money.Ledger.TotalOutBy(Door(Season, account));

    private static int Door(Season season, string account) =>
        season.Parts.Accounts.All.Select((a, i) => (a.Name, i)).Single(a => a.Name == account).i;

    private static double Case(string name) =>
        PublishedTable.Number(PublishedTable.Read("business-cases").Rows.Single(r => r["name"] == name), "value");

    private static double Tolerance(string name) =>
        PublishedTable.Number(PublishedTable.Read("business-cases").Rows.Single(r => r["name"] == name), "tolerance");

    [Fact]
    public void Cash_closes_from_opening_through_every_account()
    {
        MoneyState money = Season.State.Money;
        Assert.True(money.Ledger.ClosureError(money.Cash) < 1e-9);
        Assert.Equal(Money.OpeningCash + Money.Income - Money.Costs - Money.FirstCosts, Money.ClosingCash, 6);
        Assert.Equal(Money.Income, Money.IncomeByProduct.Values.Sum(), 6);
        Assert.Equal(Money.Costs + Money.FirstCosts, Money.CostByAccount.Values.Sum(), 6);
        Assert.Equal(Money.ClosingCash, Season.Record.Weeks.Column("cash")[^1], 6);
        Assert.Equal(Money.Income, Season.Record.Weeks.Column("income").Sum(), 6);
        Assert.Equal(Money.LowestCash, Farms.Days(Season, "cash").Min(), 6);
    }

    [Fact]
    public void Every_cost_is_what_was_used_times_its_price()
    {
        FarmTotals totals = Season.State.Totals;
        Assert.Equal(totals.FeedGrams / 1000 * Prices.FeedPerKilogram, Paid("feed"), 6);
        double filled = Farms.FirstSeason.Basins.Values.Sum(b => b.FirstFillingLitres);
        Assert.True(filled > 15_000);
        Assert.Equal((totals.SourceLitres + filled) / 1000 * Prices.WaterPerCubicMetre, Paid("source water"), 6);
        Assert.Equal(135 * Prices.Fingerlings["nile-tilapia"], Paid("fingerlings nile-tilapia"), 6);
        Assert.Equal(totals.PumpKilowattHours * Prices.ElectricityPerKilowattHour, Paid("power pumps"), 6);
        Assert.Equal(Days / 7.0 * Prices.FixedPerWeek["insurance"], Paid("fixed insurance"), 6);
        Assert.Equal(Prices.FirstCosts["house"].Cost, Paid("first cost house"), 9);
        Assert.Equal(Season.State.Growing.CellsSown[0] * Prices.Seed["lettuce"], Paid("seed lettuce"), 6);
        double over = Season.Record.Weeks.Column("hours_h").Sum(w => Math.Max(0, w - Prices.UnpaidHoursPerWeek));
        Assert.True(over > 0);
        Assert.Equal(over * Prices.WagePerHour, Paid("wages"), 6);
    }

    [Fact]
    public void A_batch_with_its_own_feed_is_priced_by_that_feed()
    {
        FarmDescription farm = Farms.FirstSeason with
        {
            Prices = Prices with { Feeds = new Dictionary<string, double> { ["catfish-32"] = 7 } },
            Stocking = Farms.FirstSeason.Stocking.Take(2).ToDictionary(
                s => s.Key, s => s.Value with { WaitForCycle = false, AfterDays = 5, Feed = s.Key == Farms.FirstSeason.Stocking.Keys.First() ? null : "catfish-32" }),
        };
        Season season = Farms.Run(farm, 21);
        double[] grams = season.State.Operations.FeedGrams;
        Assert.All(grams, g => Assert.True(g > 0));
        Assert.NotEqual(7, Prices.FeedPerKilogram);
        Assert.Equal(grams[0] / 1000 * Prices.FeedPerKilogram, season.State.Money.Ledger.TotalOutBy(Door(season, "feed")), 6);
        Assert.Equal(grams[1] / 1000 * 7, season.State.Money.Ledger.TotalOutBy(Door(season, "feed catfish-32")), 6);
    }

    // Two heaters of different fuels: each is paid by its own fuel's price and unit.
    [Fact]
    public void Each_heater_is_paid_by_its_own_fuel()
    {
        WaterHeaterDescription propane = Farms.FirstSeason.WaterHeaters["water"];
        FarmDescription two = Farms.FirstSeason with
        {
            WaterHeaters = new Dictionary<string, WaterHeaterDescription>
            {
                ["burner"] = propane with { OutputKilowatts = 1 },
                ["element"] = propane with { Fuel = "electricity", OutputKilowatts = 6, Efficiency = 1 },
            },
        };
        Season season = Farms.Run(two, 21);
        double[] units = season.State.Operations.HeaterUnits;
        Assert.All(units, u => Assert.True(u > 1));
        Assert.Equal(units[0] * 2.6, season.State.Money.Ledger.TotalOutBy(Door(season, "water heating burner")), 4);
        Assert.Equal(units[1] * Prices.ElectricityPerKilowattHour, season.State.Money.Ledger.TotalOutBy(Door(season, "water heating element")), 6);
        Assert.Equal(season.State.Operations.HeaterUnits.Sum(), units.Sum(), 6);
    }

    [Fact]
    public void Costs_of_the_products_and_what_nobody_bears_add_up_to_all_costs()
    {
        double charged = Money.Products.Values.Sum(p => p.Cost);
        Assert.Equal(Money.Costs + Money.Wear, charged, 6);
        Assert.All(Money.Products.Values, p => Assert.True(p.CostPerUnit is null || p.DirectCostPerUnit < p.CostPerUnit));
    }

    [Fact]
    public void What_is_harvested_above_demand_waits_and_then_goes_to_compost_and_every_ledger_closes()
    {
        FarmDescription scarce = Farms.FirstSeason with
        {
            Prices = Prices with { Products = Prices.Products.With("lettuce", p => (ProductPrice)((SoldByHead)p with { HeadsPerWeek = 60, KeepsDays = 5 })) },
        };
        Season season = Farms.Run(scarce, Days);
        int lettuce = Array.IndexOf(season.Parts.Products.Names, "lettuce");
        TradeState trade = season.State.Trade;
        double[] sold = season.Record.Weeks.Column("sold_lettuce_heads");
        Assert.True(sold.Max() <= 60 + 1e-9, $"{sold.Max()} heads were sold in a week");
        Assert.Equal(60, sold[^1], 6);
        Assert.True(trade.Unsold[lettuce] > 500);
        double waiting = trade.Store[lettuce].Sum(l => l.Pieces);
        Assert.Equal(trade.Offered[lettuce], trade.Sold[lettuce] + trade.Unsold[lettuce] + waiting, 6);
        Assert.Equal(trade.Offered[lettuce], Season.State.Trade.Offered[lettuce], 6);
        LedgerLawTests.AssertClosed(season);
        SnapshotGoesOn(scarce);
    }

    [Fact]
    public void Fish_that_nobody_wants_stay_in_their_tank()
    {
        FarmDescription scarce = Farms.FirstSeason with
        {
            Prices = Prices with { Products = Prices.Products.With("nile-tilapia", p => (ProductPrice)((SoldByWeight)p with { KilogramsPerWeek = 2 })) },
        };
        Season season = Farms.Run(scarce, Days);
        Assert.True(season.Record.Weeks.Column("sold_nile-tilapia_kg").Max() <= 2.0 + 1e-9);
        Assert.True(season.State.Totals.FishSoldGrams < Season.State.Totals.FishSoldGrams);
        Assert.Contains(season.Log.Events, e => e.What == "fish not wanted");
    }

    [Fact]
    public void Without_prices_the_same_season_has_hours_and_no_money()
    {
        Season season = Farms.Run(Farms.FirstSeason with { Prices = null }, Days);
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        Assert.Null(summary.Money);
        Assert.True(summary.Ledgers["labour"].In > 0);
        Assert.False(summary.Ledgers.ContainsKey("money"));
        Assert.Equal(Farms.Days(Season, "nitrate_plant_loop_mgN_per_L"), Farms.Days(season, "nitrate_plant_loop_mgN_per_L"));
    }

    [Fact]
    public void Second_grade_lowers_what_a_unit_brings()
    {
        // Twice: a share that the price states, and what the grading of each harvest finds.
        (double stated, Season season) = Unit(0.2, 0.5);
        (double graded, _) = Unit(0, 0.5);
        (double full, _) = Unit(0, 1);
        Assert.Equal(Prices.Products["lettuce"].PricePerUnit, full, 9);
        Assert.Equal(0.9, stated / graded, 9);
        int crop = Array.IndexOf(season.Parts.CropNames, "lettuce");
        double second = season.State.Growing.Harvest[crop].SecondHeads;
        Assert.Equal(1 - (0.5 * second / (second + season.State.Growing.Harvest[crop].FirstHeads)), graded / full, 0.02);

        (double, Season) Unit(double share, double price)
        {
            FarmDescription farm = Farms.FirstSeason with
            {
                Prices = Prices with { Products = Prices.Products.With("lettuce", p => p with { SecondGradeShare = share, SecondGradePriceShare = price }) },
            };
            Season run = Farms.Run(farm, 84);
            int lettuce = Array.IndexOf(run.Parts.Products.Names, "lettuce");
            return (run.State.Trade.Income[lettuce] / run.State.Trade.Sold[lettuce], run);
        }
    }

    [Fact]
    public void A_fuel_is_priced_by_the_unit_that_it_is_sold_in_or_by_its_energy()
    {
        FuelProperties propane = FuelProperties.From(ShippedLibrary.Library.Set("fuels", "propane"));
        Assert.Equal(2.6, Price(new FuelPrice { PerLitre = 2.6 / 3.785411784 }), 9);
        Assert.Equal(0.1 * propane.HeatMegajoulesPerUnit / 3.6, Price(new FuelPrice { PerKilowattHour = 0.1 }), 9);
        Assert.Throws<DescriptionException>(() => Price(new FuelPrice { PerKilogram = 1 }));
        Assert.Throws<DescriptionException>(() => Price(new FuelPrice { PerKilogram = 1, PerLitre = 1 }));

        double Price(FuelPrice price) =>
            Accounts.PriceOfFuel(new PricesDescription { Fuels = new Dictionary<string, FuelPrice> { ["propane"] = price } }, "propane", propane);
    }

    [Fact]
    public void A_price_for_what_the_farm_does_not_make_and_the_library_does_not_know_is_refused()
    {
        FarmDescription odd = Farms.FirstSeason with
        {
            Prices = Prices with { Products = new Dictionary<string, ProductPrice> { ["letuce"] = new SoldByHead { PerHead = 1 } } },
        };
        DescriptionException e = Assert.Throws<DescriptionException>(() => Farms.Start(odd, 1));
        Assert.Contains("letuce", e.Message, StringComparison.Ordinal);
        Assert.Contains("lettuce", e.Message, StringComparison.Ordinal);
    }

    // Love et al. (2015): a year's water and power of a raft system; the ledgers must turn them into the published rates.
    [Fact]
    public void A_year_of_power_at_the_published_price_costs_what_was_paid()
    {
        double price = Case("electricity-cost-a-year") / Case("electricity-kWh-a-year");
        Assert.Equal(Case("electricity-cost-a-kWh"), price, Tolerance("electricity-cost-a-kWh"));
        Assert.Equal(Case("source-water-litres-a-day"), Case("source-water-litres-a-year") / 365, Tolerance("source-water-litres-a-day"));
        Season season = Farms.Run(Farms.FirstSeason with { Prices = Prices with { ElectricityPerKilowattHour = price } }, 28);
        double paid = new[] { "power pumps", "power blowers", "power lamps", "power nursery" }.Sum(a => season.State.Money.Ledger.TotalOutBy(Door(season, a)));
        double used = Farms.Days(season, "electricity_kWh").Sum();
        Assert.Equal(used / Case("electricity-kWh-a-year") * Case("electricity-cost-a-year"), paid, 6);
    }

    // Bailey & Ferrarezi (2017): value = price × density / weeks.
    [Theory]
    [InlineData("low")]
    [InlineData("high")]
    public void A_square_metre_of_romaine_earns_the_published_value_a_week(string end)
    {
        double weeks = Case("romaine-weeks");
        double income = Case("romaine-plants-per-m2") * Case($"romaine-price-{end}");
        string name = $"romaine-value-{end}-per-m2-week";
        Assert.Equal(Case(name), ValueDensity.PerSquareMetreWeek(income, 1, 7 * weeks)!.Value, Tolerance(name));
    }

    private static void SnapshotGoesOn(FarmDescription farm)
    {
        const int Middle = 100;
        Season through = Farms.Run(farm, 120);
        Season season = Farms.Start(farm, 120);
        season.Advance((Middle * UnitConstants.SecondsPerDay) + (12 * 3600));
        SeasonSnapshot saved = season.Save();
        Season equal = Farms.Start(farm, 120);
        equal.Restore(saved);
        equal.AdvanceToEnd();
        SnapshotLawTests.AssertSame(through, equal);
        Assert.Equal(through.State.Money.Cash, equal.State.Money.Cash);
        Assert.Equal(through.State.Labour.Hours, equal.State.Labour.Hours);
        Assert.Equal(through.Record.Weeks.Column("unsold_lettuce_heads"), equal.Record.Weeks.Column("unsold_lettuce_heads"));
    }
}
