using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Crowding, deaths, withheld feed, quarantine and mishaps.</summary>
internal static class HusbandryFindings
{
    public static void Add(FindingList list)
    {
        Density(list);
        Welfare(list);
        Mishaps(list);
    }

    private static void Density(FindingList list)
    {
        if (list.Summary.Fish.PeakDensityKgPerM3 is not { } peak || peak.Value <= list.Bands.DensitySmall)
        {
            return;
        }

        (double weight, string verdict) = peak.Value > list.Bands.DensityExpert
            ? (93, $"above {list.Bands.DensityExpert:0}, where experts with oxygen and backup stop: sell earlier, or fewer fish")
            : peak.Value > list.Bands.DensityFirstYear
                ? (84, $"above the {list.Bands.DensityFirstYear:0} of a first year: sell earlier, or fewer fish, and have the backup tested")
                : (44, $"above the {list.Bands.DensitySmall:0} that a small farm without oxygen holds easily: minutes, not hours, without air");
        list.Add(weight, $"{list.Summary.Fish.DensestTank} stood densest on {list.Day(peak.Day)} at {peak.Value:0} kg/m3, {verdict}.",
            peak.Value > list.Bands.DensityFirstYear ? FishProposals.SoldLighter(list) : null);
    }

    private static void Welfare(FindingList list)
    {
        FishSummary fish = list.Summary.Fish;
        if (fish.HighDeathTankDays > 0)
        {
            (double first, double last, _) = list.Span("deaths to act on");
            list.Add(94, $"On {fish.HighDeathTankDays:0} days a tank lost more than is let pass (half a percent or three fish a day), {list.Day(first)} to {list.Day(last)}: "
                + "find the cause before the next delivery.");
        }

        if (fish.FeedWithheldTankDays > 0)
        {
            (double first, double last, _) = list.Span("feed withheld");
            list.Add(73, $"Feed was withheld on {fish.FeedWithheldTankDays:0} days of single tanks, {list.Day(first)} to {list.Day(last)}: each is a welfare event; "
                + "stock later or feed less before it comes to that.");
        }

        HusbandryState husbandry = list.Season.State.Husbandry;
        if (husbandry.QuarantinesProlonged > 0)
        {
            (double first, _, _) = list.Span("quarantine prolonged");
            list.Add(81, $"A quarantine was prolonged {husbandry.QuarantinesProlonged:0} times, first on {list.Day(first)}, because fish died unexplained: ask a fish health professional.");
        }
        else if (husbandry.QuarantinesEnded > 0)
        {
            list.Add(33, $"{husbandry.QuarantinesEnded:0} deliveries passed quarantine; {husbandry.QuarantineChangedLitres / UnitConstants.LitresPerCubicMetre:0.0} m3 of its water were changed.");
        }
    }

    private static void Mishaps(FindingList list)
    {
        HusbandryState husbandry = list.Season.State.Husbandry;
        if (husbandry.DutiesMissed > 0)
        {
            (double first, _, int times) = list.Span("chores missed");
            list.Add(72, $"{husbandry.DutiesMissed:0} chores were missed in {times} spells, first from {list.Day(first)} on: train a second person before stocking.");
        }

        Told(list, 91, "chlorinated top-up", "Chlorine came with the top-up water", "carbon or thiosulfate before the float valves, and a test strip at each refill");
        Told(list, 91, "pesticide", "Plants were sprayed", "keep the valves shut for two weeks; beneficial insects leave nothing in the water");
        Told(list, 69, "wash too hard", "A filter was washed so hard that film came off", "wash gently, never all filters at once");
        Told(list, 69, "decant early", "A mineralization tank was decanted early", "wait for the settling, and test TAN and nitrite first");
        if (list.Season.State.Algae.MostGrams > 0 && list.Span("uncover water") is (var uncovered, _, > 0))
        {
            list.Add(55, $"Water stood in the light from {list.Day(uncovered)} on and grew up to {list.Season.State.Algae.MostGrams:0} g of algae (dry): oxygen and pH swing with the sun; cover it.");
        }
    }

    private static void Told(FindingList list, double weight, string what, string sentence, string remedy)
    {
        (double first, _, int count) = list.Span(what);
        if (count == 0)
        {
            return;
        }

        double[] died = list.Record.Days("fish_died");
        double after = died.Skip((int)first).Take(DaysAfter).Sum();
        double[] nitrite = list.Record.Days("nitrite_fish_loop_mgN_per_L");
        double peak = nitrite.Skip((int)first).Take(DaysAfter).DefaultIfEmpty(0).Max();
        list.Add(weight, $"{sentence} on {list.Day(first)}: {after:0} fish died and nitrite rose to {peak:0.0} mg N/L in the {DaysAfter} days after; {remedy}.");
    }

    private const int DaysAfter = 7;
}
