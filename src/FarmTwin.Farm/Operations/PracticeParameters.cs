using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Operations;

/// <summary>Numbers of daily practice and of plain hardware that no single process owns.</summary>
public sealed record PracticeParameters
{
    /// <summary>NH3-N at which whoever feeds halves the ration, mg N/L.</summary>
    public required double FeedHalvedAmmonia { get; init; }

    /// <summary>NH3-N at which feed is withheld, mg N/L.</summary>
    public required double FeedStoppedAmmonia { get; init; }

    /// <summary>TAN at which feed is withheld, mg N/L.</summary>
    public required double FeedStoppedTan { get; init; }

    /// <summary>Nitrite at which the ration is halved, mg N/L.</summary>
    public required double FeedHalvedNitrite { get; init; }

    /// <summary>Nitrite at which feed is withheld, mg N/L.</summary>
    public required double FeedStoppedNitrite { get; init; }

    /// <summary>Oxygen below which the ration is halved, mg/L.</summary>
    public required double FeedHalvedOxygen { get; init; }

    /// <summary>Oxygen below which feed is withheld, mg/L.</summary>
    public required double FeedStoppedOxygen { get; init; }

    /// <summary>Share of the global radiation on an open water surface that warms it.</summary>
    public required double SolarAbsorption { get; init; }

    /// <summary>Share of a pump's electric power that warms its water.</summary>
    public required double PumpHeatShare { get; init; }

    /// <summary>Evaporation of a bubbling surface over that of a still one.</summary>
    public required double BubblingEvaporation { get; init; }

    /// <summary>Largest share of a size class that a bed of one mixed cell is taken to capture a pass.</summary>
    public required double LargestCapture { get; init; }

    /// <summary>Oxygen below which fish take up less than they need, mg/L.</summary>
    public required double FishOxygenLimit { get; init; }

    /// <summary>Half-saturation of the breakdown of solids for oxygen, mg/L.</summary>
    public required double SolidsOxygenHalfSaturation { get; init; }

    /// <summary>Hours over which a dose is given.</summary>
    public required double DosingHours { get; init; }

    /// <summary>Dry mass of a square metre of crop at which its roots carry their full film surface, g.</summary>
    public required double FullRootDryGrams { get; init; }

    /// <summary>Largest rise of pH by one dose of base.</summary>
    public required double LargestPHRise { get; init; }

    /// <summary>pH up to which a dose of base may lift the water at once: below it next to no ammonia is un-ionized.</summary>
    public required double PHRaisedFreely { get; init; }

    /// <summary>Days between sample weighings.</summary>
    public required double WeighEveryDays { get; init; }

    /// <summary>Days of daily water tests after fish came or valves were opened.</summary>
    public required double TestDailyDays { get; init; }

    /// <summary>Oxygen below which the clock goes to minutes, mg/L.</summary>
    public required double FineStepOxygen { get; init; }

    /// <summary>Oxygen above which it may return, mg/L.</summary>
    public required double CoarseStepOxygen { get; init; }

    /// <summary>Fresh degradable solids in settled, half digested sludge: volatile share used for denitrification.</summary>
    public required double SludgeVolatileShare { get; init; }

    /// <summary>TAN of a tank at which the coupling ramp is held, mg N/L.</summary>
    public required double RampStopsTan { get; init; }

    /// <summary>Nitrite of a tank at which the coupling ramp is held, mg N/L.</summary>
    public required double RampStopsNitrite { get; init; }

    /// <summary>Oxygen below which the coupling ramp is held, mg/L.</summary>
    public required double RampStopsOxygen { get; init; }

    /// <summary>Most that the fish's pH may change from a day to the next after the valves are opened.</summary>
    public required double CouplingMostPHStep { get; init; }

    /// <summary>A ramp is held when the fish's water fell by more than this in a day, K/d.</summary>
    public required double RampStopsCooling { get; init; }

    /// <summary>Last day of the week on which a coupling is begun where people must be there for two days, 1 = Monday.</summary>
    public required double LastStartWeekday { get; init; }

    /// <summary>Fed days before a filter with fish in it may count as cycled.</summary>
    public required double CycledLeastFedDays { get; init; }

    /// <summary>Quiet days on end for that.</summary>
    public required double CycledQuietDays { get; init; }

    /// <summary>TAN and nitrite that count as quiet, mg N/L.</summary>
    public required double CycledQuietLevel { get; init; }

    /// <summary>Age, as a multiple of the nursery time, at which seedlings that found no room are discarded.</summary>
    public required double SeedlingsTooOld { get; init; }

    /// <summary>Seedlings over those of the best seed bed below which a sowing counts as poor.</summary>
    public required double PoorGermination { get; init; }

    /// <summary>Share of a batch that may have died before its tank is stocked again without asking why.</summary>
    public required double RestockMostDeaths { get; init; }

    /// <summary>Reads them.</summary>
    public static PracticeParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new PracticeParameters
        {
            FeedHalvedAmmonia = set.Get("feedHalvedAmmonia", "mg N/L"),
            FeedStoppedAmmonia = set.Get("feedStoppedAmmonia", "mg N/L"),
            FeedStoppedTan = set.Get("feedStoppedTan", "mg N/L"),
            FeedHalvedNitrite = set.Get("feedHalvedNitrite", "mg N/L"),
            FeedStoppedNitrite = set.Get("feedStoppedNitrite", "mg N/L"),
            FeedHalvedOxygen = set.Get("feedHalvedOxygen", "mg/L"),
            FeedStoppedOxygen = set.Get("feedStoppedOxygen", "mg/L"),
            SolarAbsorption = set.Get("solarAbsorption", "1"),
            PumpHeatShare = set.Get("pumpHeatShare", "1"),
            BubblingEvaporation = set.Get("bubblingEvaporation", "1"),
            LargestCapture = set.Get("largestCapture", "1"),
            FishOxygenLimit = set.Get("fishOxygenLimit", "mg/L"),
            SolidsOxygenHalfSaturation = set.Get("solidsOxygenHalfSaturation", "mg/L"),
            DosingHours = set.Get("dosingTime", "h"),
            FullRootDryGrams = set.Get("fullRootDryMass", "g/m2"),
            LargestPHRise = set.Get("largestPHRise", "1"),
            PHRaisedFreely = set.Get("pHRaisedFreely", "1"),
            WeighEveryDays = set.Get("weighEvery", "d"),
            TestDailyDays = set.Get("testDaily", "d"),
            FineStepOxygen = set.Get("fineStepOxygen", "mg/L"),
            CoarseStepOxygen = set.Get("coarseStepOxygen", "mg/L"),
            RampStopsTan = set.Get("rampStopsTan", "mg N/L"),
            RampStopsNitrite = set.Get("rampStopsNitrite", "mg N/L"),
            RampStopsOxygen = set.Get("rampStopsOxygen", "mg/L"),
            CouplingMostPHStep = set.Get("couplingMostPHStep", "1"),
            RampStopsCooling = set.Get("rampStopsCooling", "K/d"),
            LastStartWeekday = set.Get("lastStartWeekday", "1"),
            CycledLeastFedDays = set.Get("cycledLeastFedDays", "d"),
            CycledQuietDays = set.Get("cycledQuietDays", "d"),
            CycledQuietLevel = set.Get("cycledQuietLevel", "mg N/L"),
            SeedlingsTooOld = set.Get("seedlingsTooOld", "1"),
            PoorGermination = set.Get("poorGermination", "1"),
            RestockMostDeaths = set.Get("restockMostDeaths", "1"),
            SludgeVolatileShare = set.Get("sludgeVolatileShare", "1"),
        };
    }
}
