using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Business;

/// <summary>Whom the money of an account is charged to when the cost of a product is reckoned.</summary>
public enum CostCentre
{
    /// <summary>Income.</summary>
    Sales,

    /// <summary>All fish: what they eat, and the warmth and air of their water.</summary>
    Fish,

    /// <summary>All crops: the warmth of the house and the lamps, shared by the hours of each crop.</summary>
    Crops,

    /// <summary>One product.</summary>
    Product,

    /// <summary>The whole farm: shared by the hours that each product takes.</summary>
    Shared,

    /// <summary>What was spent to build the farm: no running cost; its wear is shared by hours.</summary>
    FirstCost,
}

/// <summary>An account: a door of the money ledger.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Centre">Whom it is charged to.</param>
/// <param name="Product">The product, where it is one product's; −1 for none.</param>
/// <param name="Price">Price of a unit of what it follows.</param>
/// <param name="Total">The running total that it follows; null for sales.</param>
public sealed record Account(string Name, CostCentre Centre, int Product, double Price, Func<FarmState, double>? Total);

/// <summary>The accounts of a farm, each cost with the running total that it follows and its price.</summary>
/// <remarks>Things are paid on the day they are used, not on the day they are bought: stocks of feed or fuel are not followed.</remarks>
public sealed class Accounts
{
    /// <summary>The account of wages.</summary>
    public const string Wages = "wages";

    private readonly List<Account> _all = [];

    /// <summary>Opens them.</summary>
    /// <param name="parts">The parts, numbered, with their products.</param>
    /// <exception cref="DescriptionException">A fuel's price is not in the unit in which it is sold.</exception>
    public Accounts(FarmParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        PricesDescription prices = parts.Farm.Prices ?? new PricesDescription();
        OpeningCash = prices.OpeningCash;
        Products products = parts.Products;
        for (int p = 0; p < products.Count; p++)
        {
            _all.Add(new Account($"sales {products.Names[p]}", CostCentre.Sales, p, 0, null));
        }

        AddProductCosts(parts, prices);
        AddSupplies(parts, prices);
        AddEnergy(parts, prices);
        Add(Wages, CostCentre.Shared, prices.WagePerHour, s => s.Money.PaidHours);
        foreach ((string name, double perWeek) in prices.FixedPerWeek)
        {
            Add($"fixed {name}", CostCentre.Shared, perWeek, s => s.Money.DaysClosed / UnitConstants.DaysPerWeek);
        }

        foreach ((string name, FirstCost item) in prices.FirstCosts)
        {
            Add($"first cost {name}", CostCentre.FirstCost, item.Cost, s => s.Money.DaysClosed > item.PaidDay ? 1 : 0);
        }
    }

    /// <summary>Every account; its place is its door. The first are the sales, in the order of the products.</summary>
    public IReadOnlyList<Account> All => _all;

    /// <summary>Money at hand on day 0.</summary>
    public double OpeningCash { get; }

    /// <summary>Price of a sale unit of a fuel.</summary>
    /// <param name="prices">The prices.</param>
    /// <param name="name">The fuel's name in the library.</param>
    /// <param name="fuel">The fuel.</param>
    /// <returns>0 where no price is stated.</returns>
    /// <exception cref="DescriptionException">The price is stated in none or several units, or in one that does not fit.</exception>
    public static double PriceOfFuel(PricesDescription prices, string name, FuelProperties fuel)
    {
        ArgumentNullException.ThrowIfNull(prices);
        ArgumentNullException.ThrowIfNull(fuel);
        if (!prices.Fuels.TryGetValue(name, out FuelPrice? price))
        {
            return fuel.SaleUnit == "kWh" ? prices.ElectricityPerKilowattHour : 0;
        }

        double?[] stated = [price.PerLitre, price.PerKilowattHour, price.PerKilogram];
        if (stated.Count(s => s is not null) != 1)
        {
            throw new DescriptionException($"prices.fuels.{name}: state one price: perVolume, perEnergy or perMass.");
        }

        return (price, fuel.SaleUnit) switch
        {
            ({ PerKilowattHour: { } energy }, _) => energy * fuel.HeatMegajoulesPerUnit / UnitConstants.MegajoulesPerKilowattHour,
            ({ PerLitre: { } litre }, "gal") => litre * UnitConstants.LitresPerUsGallon,
            ({ PerLitre: { } litre }, "L") => litre,
            ({ PerLitre: { } litre }, "m3") => litre * UnitConstants.LitresPerCubicMetre,
            ({ PerKilogram: { } mass }, "kg") => mass,
            ({ PerKilogram: { } mass }, "t") => mass * UnitConstants.GramsPerKilogram,
            _ => throw new DescriptionException(
                $"prices.fuels.{name}: this fuel is reckoned by the {fuel.SaleUnit}; state its price in that unit, or as perEnergy."),
        };
    }

    private void AddProductCosts(FarmParts parts, PricesDescription prices)
    {
        Products products = parts.Products;
        for (int species = 0; species < parts.SpeciesNames.Length; species++)
        {
            int[] batches = [.. Enumerable.Range(0, parts.Stocking.Length).Where(s => parts.Stocking[s].Fish == parts.SpeciesNames[species])];
            Add($"fingerlings {parts.SpeciesNames[species]}", CostCentre.Product, prices.Fingerlings.GetValueOrDefault(parts.SpeciesNames[species]),
                s => batches.Sum(b => (double)s.Operations.Delivered[b] * parts.Stocking[b].Number / parts.Stocking[b].Deliveries), species);
        }

        for (int f = 0; f < parts.FeedNames.Length; f++)
        {
            int feed = f;
            Add(feed == 0 ? "feed" : $"feed {parts.FeedNames[feed]}", CostCentre.Fish, prices.Feeds.GetValueOrDefault(parts.FeedNames[feed], prices.FeedPerKilogram),
                s => s.Operations.FeedGrams[feed] / UnitConstants.GramsPerKilogram);
        }

        for (int crop = 0; crop < parts.CropNames.Length; crop++)
        {
            int number = crop;
            Add($"seed {parts.CropNames[crop]}", CostCentre.Product, prices.Seed.GetValueOrDefault(parts.CropNames[crop]),
                s => s.Growing.CellsSown[number], products.OfCrop(crop));
        }

        for (int p = 0; p < products.Count; p++)
        {
            int product = p;
            Add($"packing {products.Names[p]}", CostCentre.Product, products.Prices[p]?.PackingPerUnit ?? 0, s => s.Trade.Offered[product], p);
        }
    }

    private void AddSupplies(FarmParts parts, PricesDescription prices)
    {
        int supplement = 0;
        foreach (string name in parts.Supplements.Keys)
        {
            int number = supplement++;
            Add($"supplement {name}", CostCentre.Shared, prices.Supplements.GetValueOrDefault(name),
                s => s.Operations.DosedGrams[number] / UnitConstants.GramsPerKilogram);
        }

        double filled = parts.Basins.Sum(b => b.FirstFillingLitres);
        Add("source water", CostCentre.Shared, prices.WaterPerCubicMetre, s => (s.Totals.SourceLitres + s.Totals.PadLitres + filled) / UnitConstants.LitresPerCubicMetre);
    }

    private void AddEnergy(FarmParts parts, PricesDescription prices)
    {
        string[] heaters = [.. parts.Farm.WaterHeaters.Keys];
        for (int h = 0; h < heaters.Length; h++)
        {
            int heater = h;
            Add(heaters.Length == 1 ? "water heating" : $"water heating {heaters[h]}", CostCentre.Fish,
                PriceOfFuel(prices, parts.Heaters[h].Fuel, parts.HeaterFuel[h]), s => s.Operations.HeaterUnits[heater]);
        }

        if (parts.AirHeaterFuel is { } fuel)
        {
            Add("air heating", CostCentre.Crops, PriceOfFuel(prices, parts.Farm.House.AirHeater!.Fuel, fuel), s => s.Totals.AirFuelUnits);
        }

        double electricity = prices.ElectricityPerKilowattHour;
        Add("power pumps", CostCentre.Shared, electricity, s => s.Totals.PumpKilowattHours);
        Add("power blowers", CostCentre.Fish, electricity, s => s.Totals.BlowerKilowattHours);
        Add("power lamps", CostCentre.Crops, electricity, s => s.Totals.LampKilowattHours);
        Add("power fans", CostCentre.Crops, electricity, s => s.Totals.FanKilowattHours + s.Totals.PadKilowattHours);
        Add("power nursery", CostCentre.Crops, electricity, s => s.Totals.NurseryKilowattHours);
    }

    private void Add(string name, CostCentre centre, double price, Func<FarmState, double> total, int product = -1) =>
        _all.Add(new Account(name, centre, product, price, total));
}
