using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Business;

/// <summary>Sells what is harvested, as far as the week's demand goes; the rest waits in the cold store until it no longer keeps.</summary>
/// <remarks>
/// Goods in the cold store are still on the farm: they are in the closing stock of every ledger, and leave by the door of what becomes
/// of them: crop harvest when they are sold, crop compost when they are not.
/// </remarks>
public sealed class Market : FarmWork
{
    private const double LeastLogged = 0.5;

    /// <summary>Makes it.</summary>
    public Market(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
    }

    private Products Products => Parts.Products;

    private TradeState Trade => State.Trade;

    /// <summary>What goods that wait hold, added to <paramref name="stocks"/>.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        foreach (List<ProduceLot> store in farm.State.Trade.Store)
        {
            foreach (ProduceLot lot in store)
            {
                for (int e = 0; e < Element.Count; e++)
                {
                    stocks[e] += lot.Elements[e];
                }

                stocks[FarmBooks.Water] += lot.WaterLitres;
            }
        }
    }

    /// <summary>Offers a harvest for sale.</summary>
    /// <param name="product">The product.</param>
    /// <param name="pieces">Heads or trays, 0 or more.</param>
    /// <param name="grams">Fresh weight, g.</param>
    /// <param name="elements">What it is made of, g.</param>
    /// <param name="waterLitres">Water in it, L.</param>
    /// <param name="seconds">Now.</param>
    /// <param name="worth">Its price over the full price: below 1 where part of it is second grade.</param>
    public void Offer(int product, double pieces, double grams, in ElementGrams elements, double waterLitres, long seconds, double worth = 1)
    {
        var lot = new ProduceLot
        {
            Day = DayOf(seconds),
            Pieces = pieces,
            Kilograms = grams / UnitConstants.GramsPerKilogram,
            Elements = elements,
            WaterLitres = waterLitres,
            Worth = worth,
        };
        Trade.Offered[product] += Products.Measure(product, lot.Pieces, lot.Kilograms);
        Trade.Store[product].Add(lot);
        SellFromStore(product, seconds);
    }

    /// <summary>Goods are packed and driven off: one packing place to clean and one trip a day, however many crops are cut.</summary>
    public void Trip(long seconds)
    {
        double day = Math.Floor(DayOf(seconds));
        if (Trade.LastTripDay != day)
        {
            Trade.LastTripDay = day;
            Spend(Chore.CleanPacking, 1);
            Spend(Chore.DeliverGoods, 1);
        }
    }

    /// <summary>Books fish that were sold.</summary>
    public void SellFish(int species, double number, double grams, long seconds)
    {
        double kilograms = grams / UnitConstants.GramsPerKilogram;
        Trade.Offered[species] += kilograms;
        Book(species, number, kilograms, seconds);
    }

    /// <summary>Kilograms of a fish that can still be sold this week; infinite where there is no limit.</summary>
    public double FishWanted(int species) => Products.Prices[species] is { } price
        ? Math.Max(0, price.DemandPerWeek - Trade.SoldThisWeek[species])
        : double.PositiveInfinity;

    /// <summary>Clears out what no longer keeps.</summary>
    public void EndDay(long seconds)
    {
        for (int product = 0; product < Products.Count; product++)
        {
            List<ProduceLot> store = Trade.Store[product];
            double keeps = Products.Prices[product]?.KeepsDays ?? 0;
            double thrown = 0;
            while (store.Count > 0 && DayOf(seconds) - store[0].Day > keeps)
            {
                ProduceLot lot = store[0];
                store.RemoveAt(0);
                Leave(Door.CropCompost, lot);
                thrown += Products.Measure(product, lot.Pieces, lot.Kilograms);
            }

            Trade.Unsold[product] += thrown;
            if (thrown >= LeastLogged)
            {
                Log.Add(seconds, "unsold to compost", Products.Names[product], thrown, Products.UnitOf(product),
                    $"kept {keeps:0.#} days and nobody bought them: sow less, or find another buyer");
            }
        }
    }

    /// <summary>A week begins: demand is new, and what waits is sold first.</summary>
    public void NewWeek(long seconds)
    {
        Array.Clear(Trade.SoldThisWeek);
        for (int product = 0; product < Products.Count; product++)
        {
            SellFromStore(product, seconds);
        }
    }

    private void SellFromStore(int product, long seconds)
    {
        List<ProduceLot> store = Trade.Store[product];
        double demand = Products.Prices[product]?.DemandPerWeek ?? double.PositiveInfinity;
        while (store.Count > 0)
        {
            ProduceLot lot = store[0];
            double there = Products.Measure(product, lot.Pieces, lot.Kilograms);
            double wanted = demand - Trade.SoldThisWeek[product];
            if (there > 0 && wanted <= 0)
            {
                return;
            }

            ProduceLot sold = lot.Split(there > wanted ? wanted / there : 1);
            Leave(Door.CropHarvest, sold);
            Book(product, sold.Pieces, sold.Kilograms, seconds, sold.Worth);
            if (there > wanted)
            {
                return;
            }

            store.RemoveAt(0);
        }
    }

    private void Leave(int door, ProduceLot lot)
    {
        State.Books.PostElements(door, lot.Elements, -1);
        State.Books.Post(door, FarmBooks.Water, -lot.WaterLitres);
    }

    private void Book(int product, double pieces, double kilograms, long seconds, double worth = 1)
    {
        double amount = Products.Measure(product, pieces, kilograms);
        if (amount <= 0)
        {
            return;
        }

        Trade.Sold[product] += amount;
        Trade.SoldKilograms[product] += kilograms;
        Trade.SoldThisWeek[product] += amount;
        if (double.IsNaN(Trade.FirstSaleDay[product]))
        {
            Trade.FirstSaleDay[product] = Math.Floor(DayOf(seconds));
        }

        if (Products.Prices[product] is { } price)
        {
            double income = amount * price.PricePerUnit * worth * (1 - (price.SecondGradeShare * (1 - price.SecondGradePriceShare)));
            Trade.Income[product] += income;
            State.Money.Receive(product, income);
        }
    }
}
