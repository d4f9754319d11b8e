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

    /// <summary>Days over which the ration of newly stocked fish rises to full.</summary>
    [Input("settleIn", "Time over which the ration of new fish rises to full", Unit = "d", Low = 0, High = 90)]
    public double SettleInDays { get; init; } = 14;

    /// <summary>Ration on the first day, share of the appetite.</summary>
    [Input("firstRation", "Ration of the first day, share of the appetite", Unit = "1", Low = 0, High = 1)]
    public double FirstRationShare { get; init; } = 0.3;
}

/// <summary>A standing rule: test a basin, and dose supplements in turn until a quantity is kept over its whole loop.</summary>
public abstract record DosingDescription
{
    /// <summary>The basin tested and dosed.</summary>
    [Input("basin", "The basin that is tested and dosed", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Supplements used in turn, dose by dose.</summary>
    [Input("with", "Supplements, used in turn", LibraryFolder = "supplements")]
    public required IReadOnlyList<string> With { get; init; }

    /// <summary>Days between tests.</summary>
    [Input("every", "Time between tests", Unit = "d", Low = 0.25, High = 365)]
    public double EveryDays { get; init; } = 1;

    /// <summary>First day.</summary>
    [Input("from", "First day", Unit = "d", Low = 0, High = 3660)]
    public double FromDay { get; init; }

    /// <summary>Last day; to the end when left out.</summary>
    [Input("until", "Last day; to the end when left out", Unit = "d", Low = 0, High = 3660)]
    public double? UntilDay { get; init; }

    /// <summary>Whether it ends when the coupling valve is first opened.</summary>
    [Input("endsWhenOpened", "Whether it ends when the coupling valve is first opened")]
    public bool EndsWhenOpened { get; init; }

    /// <summary>Whether it ends when the loops are fully coupled.</summary>
    [Input("endsWhenCoupled", "Whether it ends when the loops are fully coupled")]
    public bool EndsWhenCoupled { get; init; }

    /// <summary>Whether it begins only when the loops are fully coupled.</summary>
    [Input("beginsWhenCoupled", "Whether it begins only when the loops are fully coupled")]
    public bool BeginsWhenCoupled { get; init; }
}

/// <summary>Keeps alkalinity above a floor with bases.</summary>
[Kind("keep-alkalinity", "Doses bases when alkalinity is below a floor")]
public sealed record KeepAlkalinity : DosingDescription
{
    /// <summary>The floor, mg/L as CaCO3.</summary>
    [Input("at", "Dosed when a test shows less than this", Unit = "mg/L as CaCO3", Low = 0, High = 500)]
    public required double AtMilligramsPerLitre { get; init; }

    /// <summary>Dosed up to this, mg/L as CaCO3.</summary>
    [Input("upTo", "Dosed up to this", Unit = "mg/L as CaCO3", Low = 0, High = 500)]
    public required double UpToMilligramsPerLitre { get; init; }

    /// <summary>Largest rise of one dose, mg/L as CaCO3.</summary>
    [Input("mostPerDose", "Largest rise by one dose", Unit = "mg/L as CaCO3", Low = 0.1, High = 200)]
    public double MostPerDose { get; init; } = 20;
}

/// <summary>Keeps nitrate above a floor.</summary>
[Kind("keep-nitrate", "Doses nutrients when nitrate is below a floor")]
public sealed record KeepNitrate : DosingDescription
{
    /// <summary>The floor, mg N/L.</summary>
    [Input("at", "Dosed when a test shows less than this", Unit = "mg N/L", Low = 0, High = 500)]
    public required double AtMilligramsNPerLitre { get; init; }

    /// <summary>Dosed up to this, mg N/L.</summary>
    [Input("upTo", "Dosed up to this", Unit = "mg N/L", Low = 0, High = 500)]
    public required double UpToMilligramsNPerLitre { get; init; }
}

/// <summary>Elements that a rule can keep in solution.</summary>
public enum KeptElement
{
    /// <summary>Phosphorus.</summary>
    Phosphorus,

    /// <summary>Potassium.</summary>
    Potassium,

    /// <summary>Calcium.</summary>
    Calcium,

    /// <summary>Magnesium.</summary>
    Magnesium,

    /// <summary>Sulfur, as sulfate.</summary>
    Sulfur,

    /// <summary>Chelated iron.</summary>
    Iron,

    /// <summary>Chloride.</summary>
    Chloride,
}

/// <summary>Keeps an element above a floor.</summary>
[Kind("keep-element", "Doses a supplement when an element is below a floor")]
public sealed record KeepElement : DosingDescription
{
    /// <summary>The element.</summary>
    [Input("element", "The element")]
    public required KeptElement Element { get; init; }

    /// <summary>The floor, mg/L of the element.</summary>
    [Input("at", "Dosed when a test shows less than this, as the element", Unit = "mg/L", Low = 0, High = 1000)]
    public required double AtMilligramsPerLitre { get; init; }

    /// <summary>Dosed up to this, mg/L of the element.</summary>
    [Input("upTo", "Dosed up to this, as the element", Unit = "mg/L", Low = 0, High = 1000)]
    public required double UpToMilligramsPerLitre { get; init; }
}

/// <summary>Keeps pH below a ceiling with acid.</summary>
[Kind("hold-pH", "Doses acid when pH is above a ceiling")]
public sealed record HoldPH : DosingDescription
{
    /// <summary>The ceiling.</summary>
    [Input("above", "Dosed when a test shows more than this", Unit = "1", Low = 5, High = 9)]
    public required double AbovePH { get; init; }

    /// <summary>Dosed down to this.</summary>
    [Input("downTo", "Dosed down to this", Unit = "1", Low = 5, High = 9)]
    public required double DownToPH { get; init; }

    /// <summary>Largest fall of alkalinity by one dose, mg/L as CaCO3.</summary>
    [Input("mostPerDose", "Largest fall of alkalinity by one dose", Unit = "mg/L as CaCO3", Low = 0.1, High = 200)]
    public double MostPerDose { get; init; } = 20;
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

    /// <summary>The tank.</summary>
    [Input("tank", "The tank", Of = "basins")]
    public required string Tank { get; init; }

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

/// <summary>How the valves are opened.</summary>
public enum CouplingWay
{
    /// <summary>Never.</summary>
    Never,

    /// <summary>All at once.</summary>
    AtOnce,

    /// <summary>By a ramp of daily steps.</summary>
    Ramp,
}

/// <summary>When and how the two loops are joined.</summary>
public sealed record CouplingDescription
{
    /// <summary>The valve.</summary>
    [Input("valve", "The valve that joins the loops", Of = "valves")]
    public required string Valve { get; init; }

    /// <summary>How.</summary>
    [Input("way", "How it is opened")]
    public CouplingWay Way { get; init; } = CouplingWay.Ramp;

    /// <summary>A fixed day; when the gates hold if left out.</summary>
    [Input("onDay", "A fixed day; left out, the valve opens when the gates hold", Unit = "d", Low = 0, High = 3660)]
    public double? OnDay { get; init; }

    /// <summary>Not before this day.</summary>
    [Input("notBefore", "Not before this day", Unit = "d", Low = 0, High = 3660)]
    public double NotBeforeDay { get; init; }

    /// <summary>Exchange when fully open, L/h each way.</summary>
    [Input("fullFlow", "Exchange each way when fully open", Unit = "L/h", Low = 1, High = 1e6)]
    public required double FullFlowLitresPerHour { get; init; }

    /// <summary>Daily exchange of the ramp's steps, share of the fish loop's water.</summary>
    [Input("ramp", "Exchange of the ramp's days, as shares of the fish loop's water a day", Unit = "1", Low = 0, High = 50)]
    public IReadOnlyList<double> RampShares { get; init; } = [0.03, 0.05, 0.1, 0.1, 0.2, 0.2, 0.5, 0.5, 1, 2, 4, 8];

    /// <summary>Fastest change of the fish's temperature, K/h.</summary>
    [Input("fastestCooling", "Fastest change of the fish's water", Unit = "K/h", Low = 0.05, High = 10)]
    public double FastestKelvinPerHour { get; init; } = 1;

    /// <summary>Days that a ramp waits after it was held.</summary>
    [Input("holdFor", "Time that the ramp waits after bad water or cooling held it", Unit = "d", Low = 0, High = 30)]
    public double HoldDays { get; init; } = 3;

    /// <summary>The gates.</summary>
    [Input("gates", "What must hold before the valve is opened")]
    public CouplingGatesDescription Gates { get; init; } = new();
}

/// <summary>What must hold before the valve opens. Defaults: whole-farm practice as corrected by trial seasons.</summary>
public sealed record CouplingGatesDescription
{
    /// <summary>Fish loop TAN below, mg N/L.</summary>
    [Input("tan", "TAN of the fish loop stays below", Unit = "mg N/L", Low = 0, High = 20)]
    public double TanMilligramsNPerLitre { get; init; } = 1;

    /// <summary>Fish loop nitrite below, mg N/L.</summary>
    [Input("nitrite", "Nitrite of the fish loop stays below", Unit = "mg N/L", Low = 0, High = 20)]
    public double NitriteMilligramsNPerLitre { get; init; } = 0.8;

    /// <summary>for so many days, d.</summary>
    [Input("days", "for so many days on end", Unit = "d", Low = 0, High = 60)]
    public double Days { get; init; } = 7;

    /// <summary>while feed is at least this share of the plan's steady feed.</summary>
    [Input("feed", "while the feed is at least this share of the plan's steady feed", Unit = "1", Low = 0, High = 2)]
    public double FeedShare { get; init; } = 0.3;

    /// <summary>Predicted mixed nitrate, mg N/L.</summary>
    [Input("mixedNitrate", "Predicted nitrate after mixing is at least this, unless bridging nutrients go on", Unit = "mg N/L", Low = 0, High = 500)]
    public double MixedNitrateMilligramsNPerLitre { get; init; } = 12;

    /// <summary>Predicted mixed alkalinity, mg/L as CaCO3.</summary>
    [Input("mixedAlkalinity", "Predicted alkalinity after mixing is at least this", Unit = "mg/L as CaCO3", Low = 0, High = 300)]
    public double MixedAlkalinityMilligramsPerLitre { get; init; } = 25;

    /// <summary>Ammonium of the plant loop below, mg N/L.</summary>
    [Input("plantTan", "TAN of the plant loop is below", Unit = "mg N/L", Low = 0, High = 100)]
    public double PlantTanMilligramsNPerLitre { get; init; } = 1.5;

    /// <summary>Oxygen of both loops, mg/L.</summary>
    [Input("oxygen", "Oxygen of both loops is at least", Unit = "mg/L", Low = 0, High = 12)]
    public double OxygenMilligramsPerLitre { get; init; } = 5;

    /// <summary>Sodium of the plant loop below, mg/L.</summary>
    [Input("sodium", "Sodium of the plant loop is below", Unit = "mg/L", Low = 0, High = 2000)]
    public double SodiumMilligramsPerLitre { get; init; } = 100;

    /// <summary>Days without unexplained deaths.</summary>
    [Input("quietDays", "Days on end with no more than base mortality", Unit = "d", Low = 0, High = 90)]
    public double QuietDays { get; init; } = 14;

    /// <summary>Whether the valve is opened from Monday to Wednesday only.</summary>
    [Input("earlyInWeek", "Opened from Monday to Wednesday only, so that people are there for the next two days")]
    public bool EarlyInWeek { get; init; } = true;
}

/// <summary>An event on a date.</summary>
public abstract record PlannedEvent
{
    /// <summary>The day, from day 0.</summary>
    [Input("day", "The day, from day 0", Unit = "d", Low = 0, High = 3660)]
    public required double Day { get; init; }

    /// <summary>Clock hour.</summary>
    [Input("hour", "Clock hour", Unit = "h", Low = 0, High = 23.99)]
    public double Hour { get; init; } = 9;
}

/// <summary>Sets the exchange through a valve.</summary>
[Kind("set-valve", "Sets the exchange through a valve")]
public sealed record SetValve : PlannedEvent
{
    /// <summary>The valve.</summary>
    [Input("valve", "The valve", Of = "valves")]
    public required string Valve { get; init; }

    /// <summary>Exchange each way, L/h.</summary>
    [Input("flow", "Exchange each way", Unit = "L/h", Low = 0, High = 1e6)]
    public required double FlowLitresPerHour { get; init; }
}

/// <summary>Doses a supplement.</summary>
[Kind("dose", "Doses a supplement into a basin")]
public sealed record Dose : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>The supplement.</summary>
    [Input("supplement", "The supplement", LibraryFolder = "supplements")]
    public required string Supplement { get; init; }

    /// <summary>Amount, g.</summary>
    [Input("amount", "Amount", Unit = "g", Low = 0, High = 1e6)]
    public required double Grams { get; init; }
}

/// <summary>Sets the temperature a water heater holds.</summary>
[Kind("set-heater", "Sets the temperature that a water heater holds")]
public sealed record SetHeater : PlannedEvent
{
    /// <summary>The heater.</summary>
    [Input("heater", "The heater", Of = "waterHeaters")]
    public required string Heater { get; init; }

    /// <summary>Temperature, °C.</summary>
    [Input("hold", "Temperature", Unit = "°C", Low = 0, High = 40)]
    public required double HoldCelsius { get; init; }
}

/// <summary>Changes the ration of all tanks.</summary>
[Kind("set-ration", "Changes the share of the appetite that is offered")]
public sealed record SetRation : PlannedEvent
{
    /// <summary>Share of the appetite.</summary>
    [Input("ration", "Share of the appetite", Unit = "1", Low = 0, High = 3)]
    public required double RationShare { get; init; }
}

/// <summary>Grades a tank: the larger fish are moved to another.</summary>
[Kind("grade", "Grades a tank: fish above a weight are moved to another tank")]
public sealed record GradeFish : PlannedEvent
{
    /// <summary>The tank.</summary>
    [Input("tank", "The tank", Of = "basins")]
    public required string Tank { get; init; }

    /// <summary>Where the larger go.</summary>
    [Input("to", "Where the larger fish go", Of = "basins")]
    public required string To { get; init; }

    /// <summary>The cut, g.</summary>
    [Input("above", "Fish above this weight are moved", Unit = "g", Low = 0.1, High = 10000)]
    public required double AboveGrams { get; init; }
}

/// <summary>Harvests all fish of a tank.</summary>
[Kind("harvest-fish", "Harvests the fish of a tank above a weight")]
public sealed record HarvestFish : PlannedEvent
{
    /// <summary>The tank.</summary>
    [Input("tank", "The tank", Of = "basins")]
    public required string Tank { get; init; }

    /// <summary>Above this weight, g.</summary>
    [Input("above", "Fish above this weight", Unit = "g", Low = 0, High = 10000)]
    public double AboveGrams { get; init; }
}

/// <summary>Turns the air of a basin's blower off or on.</summary>
[Kind("set-air", "Sets the share of a basin's air that flows")]
public sealed record SetAir : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Share of the normal air.</summary>
    [Input("share", "Share of the normal air", Unit = "1", Low = 0, High = 5)]
    public required double Share { get; init; }
}

/// <summary>Changes part of a basin's water for source water.</summary>
[Kind("change-water", "Moves part of a basin's water to another basin and fills up from the source")]
public sealed record ChangeWater : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Where the water goes; out of the farm when left out.</summary>
    [Input("to", "Where the old water goes; out of the farm, to a soil crop, when left out", Of = "basins")]
    public string? To { get; init; }

    /// <summary>Amount, L.</summary>
    [Input("amount", "Amount", Unit = "L", Low = 0, High = 1e6)]
    public required double Litres { get; init; }
}

/// <summary>Draws or takes off shade.</summary>
[Kind("set-shade", "Sets the share of the light that shade keeps out")]
public sealed record SetShade : PlannedEvent
{
    /// <summary>Share kept out.</summary>
    [Input("share", "Share of the light kept out", Unit = "1", Low = 0, High = 0.9)]
    public required double Share { get; init; }
}
