namespace FarmTwin.Farm.Summaries;

/// <summary>What was harvested, sold and not sold of a product, in the unit in which it is sold.</summary>
public sealed record SalesSummary
{
    /// <summary>kg, heads or trays.</summary>
    public required string Unit { get; init; }

    /// <summary>Harvested and offered.</summary>
    public required double Offered { get; init; }

    /// <summary>Sold.</summary>
    public required double Sold { get; init; }

    /// <summary>Kept as long as it would, not sold, and gone to compost.</summary>
    public required double Unsold { get; init; }

    /// <summary>Waits in the cold store at the end.</summary>
    public required double Waiting { get; init; }

    /// <summary>Day of the first sale; null where nothing was sold.</summary>
    public required double? FirstSaleDay { get; init; }

    /// <summary>Sold in each full week.</summary>
    public required IReadOnlyList<double> SoldByWeek { get; init; }

    /// <summary>Gone to compost unsold in each full week.</summary>
    public required IReadOnlyList<double> UnsoldByWeek { get; init; }
}

/// <summary>Money of a season, in the currency of the scenario.</summary>
public sealed record MoneySummary
{
    /// <summary>The currency, as the scenario writes it.</summary>
    public required string Currency { get; init; }

    /// <summary>Cash on day 0.</summary>
    public required double OpeningCash { get; init; }

    /// <summary>Cash at the end.</summary>
    public required double ClosingCash { get; init; }

    /// <summary>Income.</summary>
    public required double Income { get; init; }

    /// <summary>Running costs: all but first costs.</summary>
    public required double Costs { get; init; }

    /// <summary>Income less running costs.</summary>
    public required double Margin { get; init; }

    /// <summary>First costs paid.</summary>
    public required double FirstCosts { get; init; }

    /// <summary>Wear of what was built, over the days that passed.</summary>
    public required double Wear { get; init; }

    /// <summary>Margin less wear.</summary>
    public required double MarginAfterWear { get; init; }

    /// <summary>(Margin + wages paid) / all hours: what an hour of work earned; null where nobody worked.</summary>
    public required double? EarnedPerHour { get; init; }

    /// <summary>Lowest cash of any day's end.</summary>
    public required double LowestCash { get; init; }

    /// <summary>Its day.</summary>
    public required double LowestCashDay { get; init; }

    /// <summary>Cash at the end of each full week.</summary>
    public required IReadOnlyList<double> CashByWeek { get; init; }

    /// <summary>Income by product.</summary>
    public required IReadOnlyDictionary<string, double> IncomeByProduct { get; init; }

    /// <summary>Costs by account, first costs among them; an account without a posting is left out.</summary>
    public required IReadOnlyDictionary<string, double> CostByAccount { get; init; }

    /// <summary>What a unit of each product cost and brought.</summary>
    public required IReadOnlyDictionary<string, UnitCost> Products { get; init; }
}

/// <summary>What a unit of a product cost to make, and what it brought.</summary>
/// <param name="Unit">kg, heads or trays. A kilogram of fish is one of sold + standing − delivered live weight.</param>
/// <param name="Cost">All costs charged to the product, wear among them.</param>
/// <param name="DirectCostPerUnit">Of that, what would not be spent without it: fish their feed, young, packing, warm water and air; crops their seed, packing, warm house and lamps.</param>
/// <param name="CostPerUnit">Cost of a unit; null where none was made.</param>
/// <param name="BroughtPerUnit">Income of a unit sold; null where none was sold.</param>
/// <param name="Hours">Hours that served it alone.</param>
/// <param name="BroughtPerSquareMetreWeek">Income of a crop over its raft area and the days that passed; null where it has no lane.</param>
public sealed record UnitCost(string Unit, double Cost, double? DirectCostPerUnit, double? CostPerUnit, double? BroughtPerUnit, double Hours,
    double? BroughtPerSquareMetreWeek);
