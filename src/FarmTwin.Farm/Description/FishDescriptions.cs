namespace FarmTwin.Farm.Description;

/// <summary>How fish are fed.</summary>
public sealed record FeedingDescription
{
    /// <summary>The feed.</summary>
    [Input("feed", "The feed", LibraryFolder = "feeds")]
    public string Feed { get; init; } = "tilapia-32";

    /// <summary>Clock hours of the meals.</summary>
    [Input("meals", "Clock hours of the meals", Unit = "h", Low = 0, High = 23.99)]
    public IReadOnlyList<double> MealHours { get; init; } = [8, 12, 16];

    /// <summary>Share of the appetite that is offered.</summary>
    [Input("ration", "Share of the appetite that is offered", Unit = "1", Low = 0, High = 3)]
    public double RationShare { get; init; } = 1;

    /// <summary>Share of the offered feed that is not eaten even by hungry fish.</summary>
    [Input("uneaten", "Share of the offered feed that hungry fish leave", Unit = "1", Low = 0, High = 0.5)]
    public double UneatenShare { get; init; } = 0.03;

    /// <summary>Largest feed in the whole farm, kg/d; none when left out.</summary>
    [Input("most", "Most feed of the whole farm in a day", Unit = "kg/d", Low = 0, High = 1000)]
    public double? MostKilogramsPerDay { get; init; }

    /// <summary>Whether the feeder cuts or withholds feed on bad water.</summary>
    [Input("heedWater", "Whether whoever feeds tests the water and cuts or withholds feed when it is bad")]
    public bool HeedWater { get; init; } = true;

    /// <summary>Whether a feeder gives the meals.</summary>
    [Input("byFeeder", "Whether a feeder gives the meals, so that nobody need be on site")]
    public bool ByFeeder { get; init; }

    /// <summary>Days over which the ration of newly stocked fish rises to full.</summary>
    [Input("settleIn", "Time over which the ration of new fish rises to full", Unit = "d", Low = 0, High = 90)]
    public double SettleInDays { get; init; } = 14;

    /// <summary>Ration on the first day, share of the appetite.</summary>
    [Input("firstRation", "Ration of the first day, share of the appetite", Unit = "1", Low = 0, High = 1)]
    public double FirstRationShare { get; init; } = 0.3;
}

/// <summary>Ammonium dosing until the filter is cycled.</summary>
public sealed record FishlessStartDescription
{
    /// <summary>The basin dosed.</summary>
    [Input("basin", "The basin that is dosed; the dose is reckoned over its whole loop", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Dosed to this TAN, mg N/L.</summary>
    [Input("dose", "TAN after a dose", Unit = "mg N/L", Low = 0.1, High = 20)]
    public double DoseMilligramsNPerLitre { get; init; } = 3;

    /// <summary>Dosed again when TAN is below this.</summary>
    [Input("redoseBelowTan", "Dosed again when TAN is below this", Unit = "mg N/L", Low = 0, High = 10)]
    public double RedoseBelowTan { get; init; } = 1;

    /// <summary>and nitrite is below this.</summary>
    [Input("redoseBelowNitrite", "and nitrite is below this", Unit = "mg N/L", Low = 0, High = 50)]
    public double RedoseBelowNitrite { get; init; } = 5;

    /// <summary>The supplement.</summary>
    [Input("with", "The supplement", LibraryFolder = "supplements")]
    public string With { get; init; } = "ammonium-chloride";

    /// <summary>The filter counts as cycled when this challenge is gone within a day, mg N/L.</summary>
    [Input("challenge", "The filter counts as cycled when a dose of this is nitrified within a day, twice", Unit = "mg N/L", Low = 0.1, High = 10)]
    public double ChallengeMilligramsNPerLitre { get; init; } = 2;

    /// <summary>"gone" means below this TAN and nitrite, mg N/L.</summary>
    [Input("challengeClear", "What counts as nitrified: TAN and nitrite both below this", Unit = "mg N/L", Low = 0.01, High = 2)]
    public double ChallengeClearMilligramsNPerLitre { get; init; } = 0.25;

    /// <summary>Longest time, d.</summary>
    [Input("longest", "Given up after", Unit = "d", Low = 1, High = 365)]
    public double LongestDays { get; init; } = 120;
}

/// <summary>A batch of fish from delivery to sale.</summary>
public sealed record StockingDescription
{
    /// <summary>Species.</summary>
    [Input("fish", "The fish", LibraryFolder = "fish")]
    public string Fish { get; init; } = "nile-tilapia";

    /// <summary>Growth of the strain over the library's.</summary>
    [Input("strainRate", "Growth rate of this strain on this site over that of the fish's file: set it from weigh-ins", Unit = "1", Low = 0.3, High = 2)]
    public double StrainRate { get; init; } = 1;

    /// <summary>Its feed; the farm's feed when left out.</summary>
    [Input("feed", "Its feed; the one of 'feeding' when left out", LibraryFolder = "feeds")]
    public string? Feed { get; init; }

    /// <summary>The tank.</summary>
    [Input("tank", "The tank", Of = "basins")]
    public required string Tank { get; init; }

    /// <summary>Number of deliveries in which it comes.</summary>
    [Input("deliveries", "Number of deliveries over which the fish come, in equal parts", Low = 1, High = 52)]
    public int Deliveries { get; init; } = 1;

    /// <summary>Time between them, d.</summary>
    [Input("deliveriesEvery", "Time between those deliveries", Unit = "d", Low = 1, High = 365)]
    public double DeliveriesEveryDays { get; init; } = 14;

    /// <summary>How they are carried and let in.</summary>
    [Input("transport", "How the fish are carried and let in; left out, they come in water like the tank's")]
    public TransportDescription? Transport { get; init; }

    /// <summary>Quarantine before the tank.</summary>
    [Input("quarantine", "Where they are watched before they go to the tank; left out, they go straight in")]
    public QuarantineStayDescription? Quarantine { get; init; }

    /// <summary>Number of fish.</summary>
    [Input("number", "Number of fish", Low = 1, High = 1000000)]
    public required int Number { get; init; }

    /// <summary>Mean weight, g.</summary>
    [Input("weight", "Mean weight at delivery", Unit = "g", Low = 0.1, High = 5000)]
    public required double MeanGrams { get; init; }

    /// <summary>Coefficient of variation of the weight.</summary>
    [Input("spread", "Coefficient of variation of the weight", Unit = "1", Low = 0.01, High = 0.6)]
    public double CoefficientOfVariation { get; init; } = 0.12;

    /// <summary>Days after the filter is cycled, or after day 0 without a fishless start.</summary>
    [Input("after", "Delivered this long after the filter is cycled (after day 0 where 'waitForCycle' is false)", Unit = "d", Low = 0, High = 3660)]
    public double AfterDays { get; init; } = 2;

    /// <summary>Whether the delivery waits for the filter.</summary>
    [Input("waitForCycle", "Whether the delivery waits until the filter is cycled")]
    public bool WaitForCycle { get; init; } = true;

    /// <summary>Sold from this weight, g.</summary>
    [Input("sellFrom", "Fish are sold from this weight", Unit = "g", Low = 1, High = 10000)]
    public double SellFromGrams { get; init; } = 500;

    /// <summary>Most fish sold a week.</summary>
    [Input("lot", "Most fish sold in a week; the largest go first", Low = 1, High = 1000000)]
    public int LotPerWeek { get; init; } = 12;

    /// <summary>Tank is emptied when no more are left.</summary>
    [Input("clearBelow", "The tank is emptied when no more fish than this are left", Low = 0, High = 1000000)]
    public int ClearBelow { get; init; } = 5;

    /// <summary>Restocked this long after it is empty, d; never when left out.</summary>
    [Input("restockAfter", "The same batch is delivered again this long after the tank is empty; never when left out", Unit = "d", Low = 0, High = 365)]
    public double? RestockAfterDays { get; init; }
}
