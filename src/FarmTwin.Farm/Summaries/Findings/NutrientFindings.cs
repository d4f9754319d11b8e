using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>What the crops were short of, what stands outside its band, and doses that had to be refused.</summary>
internal static class NutrientFindings
{
    private const double WorthAWord = 0.1;

    public static void Add(FindingList list)
    {
        int order = 0;
        foreach (int element in Stress.Nutritive.ToArray().OrderBy(e => list.Summary.Nutrients.Elements[Element.Names[e]].FirstShortDay ?? double.PositiveInfinity))
        {
            ElementSummary nutrient = list.Summary.Nutrients.Elements[Element.Names[element]];
            if (nutrient.FirstShortDay is { } day)
            {
                Short(list, element, nutrient, day, order++);
            }
        }

        foreach (int element in new[] { Element.Potassium, Element.Calcium, Element.Magnesium })
        {
            OutsideBand(list, element, list.Summary.Nutrients.Elements[Element.Names[element]]);
        }

        Refused(list);
    }

    private static void Short(FindingList list, int element, ElementSummary nutrient, double day, int order)
    {
        string water = nutrient.LowestMgPerL is { } lowest ? $", {lowest.Value:0.##} mg/L at the lowest on {list.Day(lowest.Day)}" : string.Empty;
        // A few days that cost a tenth of growth are worth less than a season that costs half.
        double worst = Worst(list, element);
        double weight = 60 + (13 * Math.Min(1, (worst / 0.5) * (nutrient.DaysShort / 30.0))) - (order / 10.0);
        list.Add(weight, $"{Capital(Element.Names[element])} ran {(worst < 0.2 ? "a little " : string.Empty)}short (up to {worst:0%} of growth) on {list.Day(day)}, seen first on {nutrient.FirstShortCrop} "
            + $"({DeficiencySymptoms.Of(element)}), and on {nutrient.DaysShort} days in all{water}: {DeficiencySymptoms.Remedy(element)}.",
            Kept(element) is { } kept ? HouseProposals.MoreOf(list, kept, Element.Names[element], day) : null);
    }

    private static Description.KeptElement? Kept(int element) => element switch
    {
        Element.Phosphorus => Description.KeptElement.Phosphorus,
        Element.Potassium => Description.KeptElement.Potassium,
        Element.Calcium => Description.KeptElement.Calcium,
        Element.Magnesium => Description.KeptElement.Magnesium,
        Element.Sulfur => Description.KeptElement.Sulfur,
        Element.Iron => Description.KeptElement.Iron,
        _ => null,
    };

    private static double Worst(FindingList list, int element) => list.Season.State.Growing.Nutrition.WorstDeficiency[element];

    private static void OutsideBand(FindingList list, int element, ElementSummary nutrient)
    {
        string name = Capital(Element.Names[element]);
        double days = list.Summary.Days;
        if (nutrient.DaysAbove > WorthAWord * days && nutrient.HighestMgPerL is { } highest)
        {
            string cause = element switch
            {
                Element.Calcium => "source water, feed and carbonate bring more than leaves take; base with potassium while that is below its band",
                Element.Potassium => "more bases with potassium than leaves take; base with calcium carbonate",
                _ => "dose less",
            };
            string nitrate = list.Summary.Nutrients.Elements["nitrogen"].EndMgPerL > list.Bands.NitrateHigh
                ? " (cations balance the nitrate that piles up: more plants or less feed bring both down)" : string.Empty;
            list.Add(40, $"{name} of the plant loop was above {nutrient.BandHigh:0} mg/L on {nutrient.DaysAbove} days, highest on {list.Day(highest.Day)} at {highest.Value:0}: {cause}{nitrate}.");
        }

        if (nutrient.DaysBelow > WorthAWord * days && nutrient.LowestMgPerL is { } lowest)
        {
            list.Add(nutrient.DaysShort > 0 ? 41 : 43, $"{name} of the plant loop was below {nutrient.BandLow:0} mg/L on {nutrient.DaysBelow} days, lowest on {list.Day(lowest.Day)} at {lowest.Value:0.#}"
                + (nutrient.DaysShort > 0 ? "." : ", though no crop showed it: " + DeficiencySymptoms.Remedy(element) + "."));
        }
    }

    private static void Refused(FindingList list)
    {
        (double first, _, int count) = list.Span("dose refused");
        if (count > 0)
        {
            list.Add(65, $"{count} doses of hydroxide or carbonate were refused from {list.Day(first)} on, for want of free carbon dioxide to bind them: "
                + "use potassium bicarbonate and calcium carbonate.");
        }

        (double broken, _, int times) = list.Span("hydroxide rule broken");
        if (times > 0)
        {
            list.Add(91, $"A base was poured at once beyond the hydroxide rule on {list.Day(broken)}: {list.Season.Log.Events.First(e => e.What == "hydroxide rule broken").Note}.");
        }
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
