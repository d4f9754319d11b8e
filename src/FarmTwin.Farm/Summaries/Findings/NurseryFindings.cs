using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>What the nursery met: seed that lay too warm, trays without a place, dry trays, fish water on what is eaten raw.</summary>
internal static class NurseryFindings
{
    public static void Add(FindingList list)
    {
        NurserySummary nursery = list.Summary.Nursery;
        if (nursery.MicrogreenDaysInFishWater > 0)
        {
            list.Add(82, $"Microgreens stood on {nursery.MicrogreenDaysInFishWater:0} days in water that fish live in or that the decants of their sludge reach: they are cut and eaten raw "
                + "with the stem that stood in it. Give the nursery a reservoir of its own with drinking water, and keep fish water off what is cut.");
        }

        if (nursery.PoorSowings > 0)
        {
            (double from, double to, int sowings) = list.Span("poor germination");
            LoggedEvent worst = list.Season.Log.Events.Where(e => e.What == "poor germination").MinBy(e => e.Amount)!;
            list.Add(64, $"Seed came up badly in {sowings} sowings, {list.Day(from)} to {list.Day(to)}: {worst.Where} down to {worst.Amount:0%}, {worst.Note}. "
                + "Let the trays germinate in a cool place ('germinateAt') and bring them to the tiers when they are up.", CropProposals.CoolGermination(list));
        }

        if (nursery.DryDays > 0)
        {
            list.Add(63, $"The trays of the nursery ran dry on {nursery.DryDays:0} days: water more often, or more each time.");
        }

        (double first, double last, int full) = list.Span("nursery full");
        if (full > 0)
        {
            list.Add(61, $"{full} sowings, {list.Day(first)} to {list.Day(last)}, found too few places in the nursery ({nursery.Places} places): "
                + "sow less at a time, spread the sowings over the week, or give them another tier.");
        }

        Crowded(list);
        foreach ((string name, MicrogreenSummary kind) in nursery.Microgreens.OrderByDescending(m => m.Value.HarvestedKg).Take(1))
        {
            if (kind.TraysCut > 0)
            {
                double all = nursery.Microgreens.Values.Sum(m => m.HarvestedKg);
                double trays = nursery.Microgreens.Values.Sum(m => m.TraysCut);
                list.Add(50, $"Microgreens: {trays:0} trays cut, {all:0} kg for sale, most of it {name} ({kind.MeanTrayG:0} g a tray); "
                    + $"the places of the nursery were taken to {nursery.MeanShareTaken:0%} on the mean.");
            }
        }
    }

    // Seed beyond the crowding density is mostly wasted, and damps off.
    private static void Crowded(FindingList list)
    {
        for (int k = 0; k < list.Season.Parts.MicrogreenPlans.Length; k++)
        {
            MicrogreenParameters kind = list.Season.Parts.Microgreens[k];
            double tray = list.Season.Parts.Farm.Nursery!.TraySquareMetres;
            double density = (list.Season.Parts.MicrogreenPlans[k].SeedGramsPerTray ?? (kind.SeedGramsPerSquareMetre * tray)) / tray;
            if (density > kind.CrowdingFromGramsPerSquareMetre)
            {
                list.Add(58, $"{list.Season.Parts.MicrogreenNames[k]} is sown at {density:0} g/m², above {kind.CrowdingFromGramsPerSquareMetre:0} where shoots crowd each other: "
                    + $"{1 - (kind.BearingSeed(density) / density):0%} of the seed bears nothing and dense trays damp off; sow {kind.CrowdingFromGramsPerSquareMetre * tray:0} g a tray.");
            }
        }
    }
}
