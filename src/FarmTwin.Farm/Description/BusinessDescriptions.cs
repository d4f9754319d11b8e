namespace FarmTwin.Farm.Description;

/// <summary>Who works on the farm, and how long.</summary>
public sealed record LabourDescription
{
    /// <summary>Hours a week of each who works on the farm, by name.</summary>
    [Input("perWeek", "Hours a week of each who works on the farm, by name", Unit = "h", Low = 0, High = 168)]
    public IReadOnlyDictionary<string, double> HoursPerWeek { get; init; } = new Dictionary<string, double>();
}

/// <summary>What things cost and what is paid for them. Every figure is the user's own; the program knows no prices.</summary>
public sealed record PricesDescription
{
    /// <summary>Money at hand on day 0.</summary>
    [Input("openingCash", "Money at hand on day 0, before anything is paid", Unit = "money", Low = 0, High = 1e9)]
    public double OpeningCash { get; init; }

    /// <summary>What is sold, by the name of the crop, the microgreen or the fish.</summary>
    [Input("products", "What is sold and for how much, by the name of the crop or of the fish in the library")]
    public IReadOnlyDictionary<string, ProductPrice> Products { get; init; } = new Dictionary<string, ProductPrice>();

    /// <summary>Feed, a kilogram.</summary>
    [Input("feed", "Price of feed", Unit = "money/kg", Low = 0, High = 1000)]
    public double FeedPerKilogram { get; init; }

    /// <summary>Feeds that cost otherwise, a kilogram, by name.</summary>
    [Input("feeds", "Price of a feed, by its name in the library, where it differs from 'feed'", Unit = "money/kg", LibraryFolder = "feeds", Low = 0, High = 1000)]
    public IReadOnlyDictionary<string, double> Feeds { get; init; } = new Dictionary<string, double>();

    /// <summary>Young fish, each, by species.</summary>
    [Input("fingerlings", "Price of a young fish, by the name of the fish in the library", Unit = "money/fish", LibraryFolder = "fish", Low = 0, High = 1000)]
    public IReadOnlyDictionary<string, double> Fingerlings { get; init; } = new Dictionary<string, double>();

    /// <summary>Seed with its plug, a cell, by crop.</summary>
    [Input("seed", "Price of seed with its plug, a cell, by crop", Unit = "money/cell", Of = "crops", Low = 0, High = 100)]
    public IReadOnlyDictionary<string, double> Seed { get; init; } = new Dictionary<string, double>();

    /// <summary>Supplements, a kilogram of the product as bought.</summary>
    [Input("supplements", "Price of a supplement, the product as bought", Unit = "money/kg", LibraryFolder = "supplements", Low = 0, High = 10000)]
    public IReadOnlyDictionary<string, double> Supplements { get; init; } = new Dictionary<string, double>();

    /// <summary>Source water, a cubic metre.</summary>
    [Input("sourceWater", "Price of source water", Unit = "money/m3", Low = 0, High = 1000)]
    public double WaterPerCubicMetre { get; init; }

    /// <summary>Fuels by name.</summary>
    [Input("fuels", "Price of each fuel, by its name in the library", LibraryFolder = "fuels")]
    public IReadOnlyDictionary<string, FuelPrice> Fuels { get; init; } = new Dictionary<string, FuelPrice>();

    /// <summary>Electricity, a kilowatt-hour.</summary>
    [Input("electricity", "Price of electricity", Unit = "money/kWh", Low = 0, High = 10)]
    public double ElectricityPerKilowattHour { get; init; }

    /// <summary>Wage of an hour, with what the employer pays on top of it.</summary>
    [Input("wage", "What an hour of paid work costs; left out, all work is the owner's own and unpaid", Unit = "money/h", Low = 0, High = 1000)]
    public double WagePerHour { get; init; }

    /// <summary>Hours a week that the owner works unpaid.</summary>
    [Input("unpaidHours", "Hours a week that are the owner's own and unpaid; work beyond them is paid", Unit = "h", Low = 0, High = 168)]
    public double UnpaidHoursPerWeek { get; init; }

    /// <summary>Costs that come every week whatever is done, by name.</summary>
    [Input("fixed", "Costs that come every week whatever is done, by name", Unit = "money/wk", Low = 0, High = 1e6)]
    public IReadOnlyDictionary<string, double> FixedPerWeek { get; init; } = new Dictionary<string, double>();

    /// <summary>What the farm cost to build, by item.</summary>
    [Input("firstCosts", "What the farm costs to build, by item; kept apart from the running costs")]
    public IReadOnlyDictionary<string, FirstCost> FirstCosts { get; init; } = new Dictionary<string, FirstCost>();
}

/// <summary>The price of a fuel, in the unit in which it is sold: one of the three.</summary>
public sealed record FuelPrice
{
    /// <summary>By volume, a litre.</summary>
    [Input("perVolume", "Price of a fuel sold by volume", Unit = "money/L", Low = 0, High = 100)]
    public double? PerLitre { get; init; }

    /// <summary>By energy (higher heating value), a kilowatt-hour.</summary>
    [Input("perEnergy", "Price of a fuel sold by its energy (higher heating value)", Unit = "money/kWh", Low = 0, High = 10)]
    public double? PerKilowattHour { get; init; }

    /// <summary>By mass, a kilogram.</summary>
    [Input("perMass", "Price of a fuel sold by mass", Unit = "money/kg", Low = 0, High = 100)]
    public double? PerKilogram { get; init; }
}

/// <summary>A part of what the farm cost to build.</summary>
public sealed record FirstCost
{
    /// <summary>What it cost.</summary>
    [Input("cost", "What it cost", Unit = "money", Low = 0, High = 1e9)]
    public required double Cost { get; init; }

    /// <summary>The day it is paid.</summary>
    [Input("paid", "The day on which it is paid", Unit = "d", Low = 0, High = 3660)]
    public double PaidDay { get; init; }

    /// <summary>Years that it lasts; without them no wear is reckoned.</summary>
    [Input("life", "How long it lasts: its cost is spread evenly over that time; left out, no wear is reckoned", Unit = "yr", Low = 0.25, High = 100)]
    public double? LifeYears { get; init; }
}

/// <summary>What a product sells for, how much of it can be sold, and how long it keeps.</summary>
public abstract record ProductPrice
{
    /// <summary>Days that unsold goods keep in the cold store.</summary>
    [Input("keeps", "How long unsold goods keep in the cold store before they go to compost", Unit = "d", Low = 0, High = 60)]
    public double KeepsDays { get; init; } = 5;

    /// <summary>Share of the goods that is second grade.</summary>
    [Input("secondGrade", "Share of the goods that is second grade", Unit = "1", Low = 0, High = 1)]
    public double SecondGradeShare { get; init; }

    /// <summary>Price of second grade as a share of the full price.</summary>
    [Input("secondGradePrice", "Price of second grade as a share of the full price", Unit = "1", Low = 0, High = 1)]
    public double SecondGradePriceShare { get; init; } = 0.5;

    /// <summary>Price of a unit.</summary>
    public abstract double PricePerUnit { get; }

    /// <summary>Units that can be sold a week; infinite where there is no limit.</summary>
    public abstract double DemandPerWeek { get; }

    /// <summary>Packing of a unit.</summary>
    public abstract double PackingPerUnit { get; }
}

/// <summary>Sold by the head.</summary>
[Kind("sell-by-head", "Sold by the head")]
public sealed record SoldByHead : ProductPrice
{
    /// <summary>Price of a head.</summary>
    [Input("price", "Price of a head", Unit = "money/head", Low = 0, High = 1000)]
    public required double PerHead { get; init; }

    /// <summary>Heads that can be sold a week.</summary>
    [Input("demand", "Heads that can be sold a week; no limit when left out", Unit = "heads/wk", Low = 0, High = 1e6)]
    public double? HeadsPerWeek { get; init; }

    /// <summary>Packing of a head.</summary>
    [Input("packing", "Sleeve, box and label of a head", Unit = "money/head", Low = 0, High = 100)]
    public double PackingPerHead { get; init; }

    /// <inheritdoc/>
    public override double PricePerUnit => PerHead;

    /// <inheritdoc/>
    public override double DemandPerWeek => HeadsPerWeek ?? double.PositiveInfinity;

    /// <inheritdoc/>
    public override double PackingPerUnit => PackingPerHead;
}

/// <summary>Sold by weight.</summary>
[Kind("sell-by-weight", "Sold by weight")]
public sealed record SoldByWeight : ProductPrice
{
    /// <summary>Price of a kilogram.</summary>
    [Input("price", "Price of a kilogram", Unit = "money/kg", Low = 0, High = 10000)]
    public required double PerKilogram { get; init; }

    /// <summary>Kilograms that can be sold a week.</summary>
    [Input("demand", "Weight that can be sold a week; no limit when left out", Unit = "kg/wk", Low = 0, High = 1e6)]
    public double? KilogramsPerWeek { get; init; }

    /// <summary>Packing of a kilogram.</summary>
    [Input("packing", "Packing of a kilogram", Unit = "money/kg", Low = 0, High = 100)]
    public double PackingPerKilogram { get; init; }

    /// <inheritdoc/>
    public override double PricePerUnit => PerKilogram;

    /// <inheritdoc/>
    public override double DemandPerWeek => KilogramsPerWeek ?? double.PositiveInfinity;

    /// <inheritdoc/>
    public override double PackingPerUnit => PackingPerKilogram;
}

/// <summary>Sold by the tray.</summary>
[Kind("sell-by-tray", "Sold by the tray")]
public sealed record SoldByTray : ProductPrice
{
    /// <summary>Price of a tray.</summary>
    [Input("price", "Price of a tray", Unit = "money/tray", Low = 0, High = 1000)]
    public required double PerTray { get; init; }

    /// <summary>Trays that can be sold a week.</summary>
    [Input("demand", "Trays that can be sold a week; no limit when left out", Unit = "trays/wk", Low = 0, High = 1e6)]
    public double? TraysPerWeek { get; init; }

    /// <summary>Packing of a tray.</summary>
    [Input("packing", "Packing of a tray", Unit = "money/tray", Low = 0, High = 100)]
    public double PackingPerTray { get; init; }

    /// <inheritdoc/>
    public override double PricePerUnit => PerTray;

    /// <inheritdoc/>
    public override double DemandPerWeek => TraysPerWeek ?? double.PositiveInfinity;

    /// <inheritdoc/>
    public override double PackingPerUnit => PackingPerTray;
}
