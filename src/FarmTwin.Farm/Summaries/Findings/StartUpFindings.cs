using FarmTwin.Farm.Description;
using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>The filter brought to life, and the valves.</summary>
internal static class StartUpFindings
{
    // Nitrifiers starve for alkalinity well before it is gone, mg/L as CaCO3; common practice holds more, no source.
    private const double LeastAlkalinity = 20;

    // What brings a gate forward, in the order of the gates' bits.
    private static readonly string[] Remedies =
    [
        "feed less or wait for the filter", "feed less, or bring chloride to the fish loop, until nitrite is oxidized",
        "stock earlier or more fish, or lower the feed share of the gate", "keep feed and water steady for longer",
        "bring nitrate up before opening: feed, or bridging nutrients in the plant loop", "dose bases in the fish loop before opening",
        "let the plant loop's ammonium be used up before opening", "more air in the loop that is short of it",
        "change water of the plant loop, or choose supplements without sodium", "find out what the fish died of",
        "let the gates be reached early in a week", "the plan itself holds them back",
        "change the treated water out of the loop, and treat in quarantine only", "wait until the spray is gone; beneficial insects leave nothing in the water",
    ];

    public static void Add(FindingList list)
    {
        WaterSummary water = list.Summary.Water;
        Cycle(list, water);
        if (list.Season.Parts.Farm.Coupling is { } coupling && coupling.Way != CouplingWay.Never)
        {
            Valves(list, water);
        }
    }

    private static void Cycle(FindingList list, WaterSummary water)
    {
        if (water.CycledDay is { } cycled)
        {
            string fish = list.Summary.Fish.FirstDeliveryDay is { } first ? $"; the first fish came on {list.Day(first)}" : string.Empty;
            list.Add(50, $"The filter counted as cycled on {list.Day(cycled)}{fish}.");
        }
        else if (list.Season.Parts.Farm.FishlessStart is not null)
        {
            double[] alkalinity = list.Record.Days("alkalinity_fish_loop_mgCaCO3_per_L");
            double least = alkalinity.Min();
            string remedy = least < LeastAlkalinity
                ? $"alkalinity fell to {least:0} mg/L on {list.Day(Array.IndexOf(alkalinity, least))} and nitrification stops without it: larger doses of bicarbonate."
                : "warmer water or more mature media bring the day forward.";
            list.Add(85, $"The filter is not cycled after {list.Record.DayCount} days: TAN ends at "
                + $"{Last(list, "tan_fish_loop_mgN_per_L"):0.00} and nitrite at {Last(list, "nitrite_fish_loop_mgN_per_L"):0.00} mg N/L; {remedy}",
                least < LeastAlkalinity ? null : FishProposals.MoreMatureMedia());
        }
    }

    private static void Valves(FindingList list, WaterSummary water)
    {
        // Days on end are counted from when the others hold, and a weekday passes by itself: either is named only where it stood alone.
        string days = Operations.CouplingGateNames.Name(int.Log2((int)Operations.CouplingGates.Days));
        string weekday = Operations.CouplingGateNames.Name(int.Log2((int)Operations.CouplingGates.Weekday));
        GateDelay? longest = water.RefusedGates.FirstOrDefault(g => g.Gate != days && g.Gate != weekday) ?? (water.RefusedGates.Count > 0 ? water.RefusedGates[0] : null);
        string held = longest is null
            ? string.Empty
            : $" Held back longest by {longest.Gate}, {longest.Days} mornings from the first feeding on: {Remedy(longest.Gate)}.";
        Proposal? earlier = longest?.Gate == Operations.CouplingGateNames.Name(int.Log2((int)Operations.CouplingGates.Feed)) ? FishProposals.StockedEarlier(list) : null;
        if (water.OpenedDay is { } opened)
        {
            string full = water.CoupledDay is not { } coupled ? ", and the loops were not yet fully coupled at the end"
                : coupled > opened ? $" and the loops were fully coupled on {list.Day(coupled)}" : " at once";
            list.Add(70, $"The valves were opened on {list.Day(opened)}{full}.{held}", earlier);
        }
        else if (list.Summary.Fish.FirstDeliveryDay is not null)
        {
            list.Add(80, $"The valves are still closed after {list.Record.DayCount} days.{held}", earlier);
        }

        if (water.RampAborts > 0)
        {
            (double first, _, _) = list.Span("coupling ramp held");
            list.Add(82, $"The ramp was broken off {water.RampAborts:0} times, first on {list.Day(first)}: take smaller steps or wait for more filter.");
        }
    }

    private static string Remedy(string gate)
    {
        for (int bit = 0; bit < Remedies.Length; bit++)
        {
            if (Operations.CouplingGateNames.Name(bit) == gate)
            {
                return Remedies[bit];
            }
        }

        return "see its limit in the scenario";
    }

    private static double Last(FindingList list, string column) => list.Record.Days(column) is { Length: > 0 } days ? days[^1] : double.NaN;
}
