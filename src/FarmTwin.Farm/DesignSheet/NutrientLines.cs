using FarmTwin.Farm.Description;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>N, K, Ca, Mg and Fe that feed and source water bring to the plants, over what the planned crops take.</summary>
/// <remarks>This decides whether the feed suits the plant area, not the feed ratio.</remarks>
internal static class NutrientLines
{
    private const string Group = "Nutrients";

    private static readonly (int Element, string Name, KeptElement? Kept)[] Judged =
    [
        (Element.Nitrogen, "nitrogen", null), (Element.Potassium, "potassium", KeptElement.Potassium), (Element.Calcium, "calcium", KeptElement.Calcium),
        (Element.Magnesium, "magnesium", KeptElement.Magnesium), (Element.Iron, "iron", KeptElement.Iron),
    ];

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        ElementGrams demand = new CropDemand(design).SettledGramsPerDay();
        if (demand.Nitrogen <= 0)
        {
            yield break;
        }

        ElementGrams supply = SupplyGramsPerDay(design);
        double enough = design.Bands.Get("supplyEnough", "1");
        double meagre = design.Bands.Get("supplyMeagre", "1");
        foreach ((int element, string name, KeptElement? kept) in Judged)
        {
            double ratio = supply[element] / demand[element];
            string? rule = RuleFor(design, element, kept);
            double missing = Math.Max(0, demand[element] - supply[element]) * UnitConstants.DaysPerWeek;
            yield return new SheetLine
            {
                Group = Group,
                Key = $"supply.{name}",
                Name = $"{name}, supply over demand",
                Value = ratio,
                Low = enough,
                Source = design.Bands.SourceOf("supplyEnough"),
                Verdict = rule is not null ? Verdict.Fine : Judge.More(ratio, meagre, enough),
                Advice = $"{Amount(supply[element])} a day for {Amount(demand[element])}."
                    + (ratio >= enough ? element == Element.Nitrogen && ratio > 2 * enough ? " Nitrate will rise: room for more plants." : string.Empty
                        : rule is not null ? $" The rule '{rule}' must bring {Amount(missing)} a week."
                        : ratio >= meagre ? $" At full harvest {Amount(missing)} a week come from what the water holds: watch it, and keep a dosing rule ready."
                        : $" Nothing in the plan brings the other {Amount(missing)} a week: add a dosing rule" + (element == Element.Nitrogen ? ", more fish, or fewer plants." : ".")),
            };
        }
    }

    /// <summary>What the steady feed and the top-up bring, g/d.</summary>
    public static ElementGrams SupplyGramsPerDay(DesignCase design)
    {
        double returned = design.Parts.Mineralizers.Length > 0 ? design.Bands.Get("solidsReturned", "1") : 0;
        ElementGrams feed = (design.Busiest.Dissolved + (design.Busiest.Solids * returned)) * design.SteadyShare;
        SourceWaterDescription water = design.Farm.SourceWater;
        double topUp = design.TopUpLitresPerDay / UnitConstants.GramsPerKilogram;
        feed = feed with { Iron = feed.Iron * design.Bands.Get("ironUseful", "1") };
        return feed.WithNitrogen((feed.Nitrogen * design.Bands.Get("nitrogenKept", "1")) + (topUp * water.NitrateMilligramsNPerLitre))
            + new ElementGrams(0, 0, topUp * water.PotassiumMilligramsPerLitre, topUp * water.CalciumMilligramsPerLitre,
                topUp * water.MagnesiumMilligramsPerLitre, 0, 0, 0, 0);
    }

    // A rule counts when it is in force in the farm as it settles: joined where the plan joins the loops, apart where not.
    private static string? RuleFor(DesignCase design, int element, KeptElement? kept)
    {
        bool joined = design.Farm.Coupling is { Way: not CouplingWay.Never };
        return design.Farm.Dosing
            .Where(d => (joined ? !d.Value.EndsWhenCoupled && !d.Value.EndsWhenOpened : !d.Value.BeginsWhenCoupled)
                && (d.Value.UntilDay ?? design.Farm.LengthDays) >= design.SettledFrom
                && LoopUses.Plant.Contains(design.Farm.Basins[d.Value.Basin].Use) | (joined && LoopUses.Fish.Contains(design.Farm.Basins[d.Value.Basin].Use)))
            .Where(d => d.Value switch
            {
                KeepNitrate => element == Element.Nitrogen,
                KeepElement keeps => keeps.Element == kept,
                KeepAlkalinity => d.Value.With.Any(w => Brings(design.Parts.Supplements[w], element)),
                _ => false,
            })
            .OrderBy(d => d.Value is KeepAlkalinity)
            .Select(d => d.Key).FirstOrDefault();
    }

    private static bool Brings(Supplement supplement, int element) => element switch
    {
        Element.Potassium => supplement.PotassiumGramsPerKilogram > 0,
        Element.Calcium => supplement.CalciumGramsPerKilogram > 0,
        Element.Magnesium => supplement.MagnesiumGramsPerKilogram > 0,
        _ => false,
    };

    private static string Amount(double grams) => grams < 1 ? $"{grams * UnitConstants.GramsPerKilogram:0} mg" : $"{grams:0.0} g";
}
