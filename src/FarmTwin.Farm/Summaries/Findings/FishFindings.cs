using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>What the fish met, and what came of them.</summary>
internal static class FishFindings
{
    public static void Add(FindingList list)
    {
        FishSummary fish = list.Summary.Fish;
        if (fish.FirstDeliveryDay is null)
        {
            return;
        }

        LoopPeaks peaks = list.Summary.Water.WithFish;
        Toxic(list, "Nitrite", peaks.NitriteMgNPerL, list.Bands.NitriteHigh, "nitrite", "halve the feed and raise chloride");
        Toxic(list, "TAN", peaks.TanMgNPerL, list.Bands.TanHigh, "tan", "halve the feed until the filter follows");
        if (peaks.UnionizedAmmoniaMgNPerL is { } ammonia && ammonia.Value > list.Bands.UnionizedAmmoniaHigh)
        {
            list.Add(96, $"Unionized ammonia reached {ammonia.Value:0.000} mg N/L on {list.Day(ammonia.Day)}, above "
                + $"{list.Bands.UnionizedAmmoniaHigh:0.00}: withhold feed and do not raise the pH.");
        }

        Oxygen(list, peaks.LowestOxygenMgPerL, fish);
        CarbonDioxide(list, peaks.HighestCarbonDioxideMgPerL);
        Trade(list, fish);
        Cold(list);
    }

    private static void Toxic(FindingList list, string name, PeakReading? peak, double high, string band, string remedy)
    {
        if (peak is null)
        {
            return;
        }

        int hours = list.Summary.Water.HoursOutsideBand[band].HoursAbove;
        list.Add(hours > 0 ? 92 : 40, hours > 0
            ? $"{name} with fish was highest on {list.Day(peak.Day)} at {peak.Value:0.00} mg N/L and above {high:0.0#} for {hours} hours: {remedy}."
            : $"{name} with fish was highest on {list.Day(peak.Day)} at {peak.Value:0.00} mg N/L and never above {high:0.0#}.",
            hours > 0 ? FishProposals.Fewer(list, ProposalFigures.HoursAbove(band, band == "tan" ? name : band)) : null);
    }

    private static void Oxygen(FindingList list, PeakReading? lowest, FishSummary fish)
    {
        if (lowest is null)
        {
            return;
        }

        double[] biomass = list.Record.Days("fish_biomass_kg");
        double standing = lowest.Day < biomass.Length ? biomass[(int)lowest.Day] : fish.StandingKg;
        int hours = list.Summary.Water.HoursOutsideBand["oxygen"].HoursBelow;
        string margin = hours > 0
            ? $"below {list.Bands.OxygenLow:0.0} for {hours} hours in all: more air, or fewer fish at a time"
            : $"{lowest.Value - list.Bands.OxygenLow:0.0} above the limit of {list.Bands.OxygenLow:0.0}";
        list.Add(hours > 0 ? 95 : 45, $"Oxygen of the worst tank was lowest on {list.Day(lowest.Day)} at {lowest.Value:0.0} mg/L with "
            + $"{standing:0} kg of fish, {margin}.", hours > 0 ? FishProposals.MoreTankAir(ProposalFigures.HoursBelow("oxygen", "oxygen")) : null);
    }

    private static void CarbonDioxide(FindingList list, PeakReading? highest)
    {
        int hours = list.Summary.Water.HoursOutsideBand["carbonDioxide"].HoursAbove;
        if (highest is not null && hours > 0)
        {
            list.Add(83, $"Carbon dioxide in the tanks was above {list.Bands.CarbonDioxideHigh:0} mg/L for {hours} hours, highest on "
                + $"{list.Day(highest.Day)} at {highest.Value:0}: strip it with more air through the tanks.",
                FishProposals.MoreTankAir(ProposalFigures.HoursAbove("carbonDioxide", "carbon dioxide")));
        }
    }

    private static void Trade(FindingList list, FishSummary fish)
    {
        if (fish.FirstSaleDay is { } sale)
        {
            string wait = fish.DaysFromDeliveryToFirstSale is { } days ? $", {days:0} days after they were delivered" : string.Empty;
            list.Add(58, $"The first fish were sold on {list.Day(sale)}{wait}; {fish.HarvestedKg:0} kg in all at {fish.MeanWeightSoldG:0} g, "
                + $"{fish.StandingKg:0} kg stand at the end.");
        }
        else
        {
            list.Add(57, $"No fish was ready for sale by the end: {fish.StandingKg:0.0} kg stand after {list.Record.DayCount} days.");
        }

        if (fish.Survival < 0.9)
        {
            double[] died = list.Record.Days("fish_died");
            int worst = Array.IndexOf(died, died.Max());
            list.Add(97, $"{fish.Died:0} of the {fish.Delivered:0} fish delivered died, {died[worst]:0} of them on {list.Day(worst)}, most of {Cause(list, worst)}.");
        }

        if (fish.FeedWithheldKg > 0.02 * fish.FeedKg && fish.FeedKg > 0)
        {
            list.Add(75, $"{fish.FeedWithheldKg:0.0} kg of feed were withheld because of the water, {fish.FeedWithheldKg / fish.FeedKg:0%} of what was fed.");
        }
    }

    // The largest hazard of the day on which most died, with the reading that shows it.
    private static string Cause(FindingList list, int day)
    {
        double[] deaths = list.Season.State.Husbandry.Deaths.WorstDay;
        return HazardsPerHour.Causes[Array.IndexOf(deaths, deaths.Max())] switch
        {
            "cold" => "cold: mend the heat and keep a second way of heating",
            "heat" => "heat: shade, and cooler water",
            "oxygen" => $"want of oxygen (down to {list.Record.Days("oxygen_tanks_lowest_mg_per_L")[day]:0.0} mg/L): air that runs without the mains",
            "ammonia" => $"ammonia (up to {list.Record.Days("ammonia_unionized_tanks_highest_mgN_per_L")[day]:0.000} mg/L NH3-N): no feed, no base, fresh water",
            "nitrite" => $"nitrite ({list.Record.Days("nitrite_fish_loop_mgN_per_L")[day]:0.0} mg/L NO2-N): no feed, and chloride",
            "chlorine" => "chlorine of the source water: neutralise it",
            "pesticide" => "spray that dripped into the water: never over open water",
            "handling" => "handling, or the shock of the move: temper slowly, move fewer at a time",
            _ => "what happens in good care too",
        };
    }

    private static void Cold(FindingList list)
    {
        BandHours water = list.Summary.Water.HoursOutsideBand["fishWater"];
        ReadingRange range = list.Summary.Water.TemperatureC["fishWaterWithFish"];
        if (water.HoursBelow > 0 && range.Lowest is { } coldest)
        {
            list.Add(78, $"Fish water was below {list.Bands.FishWaterLow:0} °C for {water.HoursBelow} hours with fish, coldest on "
                + $"{list.Day(coldest.Day)} at {coldest.Value:0.0} °C: slower growth; more heat, or a slower ramp.");
        }

        if (water.HoursAbove > 0 && range.Highest is { } warmest)
        {
            list.Add(79, $"Fish water was above {list.Bands.FishWaterHigh:0} °C for {water.HoursAbove} hours, warmest on "
                + $"{list.Day(warmest.Day)} at {warmest.Value:0.0} °C: shade the house and feed in the morning.");
        }
    }
}
