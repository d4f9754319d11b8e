using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the nutrients.</summary>
internal static class NutrientFigures
{
    public static NutrientSummary Of(
        Season season, RecordView record, IReadOnlyDictionary<string, LedgerSummary> ledgers, SummaryBands bands)
    {
        LedgerSummary nitrogen = ledgers["nitrogen"];
        var sources = new Dictionary<string, double>(StringComparer.Ordinal) { ["openingStock"] = nitrogen.Opening };
        var sinks = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach ((string door, DoorFlow flow) in nitrogen.Doors)
        {
            Add(sources, door, flow.In);
            Add(sinks, door, flow.Out);
        }

        AddStocks(season, nitrogen.Closing, sinks);
        var dosed = new Dictionary<string, double>(StringComparer.Ordinal);
        int index = 0;
        foreach (string supplement in season.Parts.Supplements.Keys)
        {
            Add(dosed, supplement, season.State.Operations.DosedGrams[index++]);
        }

        return new NutrientSummary
        {
            NitrogenSources = Shares(sources),
            NitrogenSinks = Shares(sinks),
            Elements = ElementFigures.Of(season, record, ledgers, bands),
            NitrifiedG = season.State.Totals.NitrifiedGrams,
            DosedG = dosed,
        };
    }

    // Water, sludge, beads and fish are read off the state; the plants hold what is left of the measured closing stock.
    private static void AddStocks(Season season, double closing, Dictionary<string, double> sinks)
    {
        FarmState state = season.State;
        double dissolved = 0;
        double suspended = 0;
        double sludge = 0;
        double fish = 0;
        for (int b = 0; b < state.Basins.Count; b++)
        {
            dissolved += state.Basins.Grams[WaterStep.At(b, Substance.Tan)] + state.Basins.Grams[WaterStep.At(b, Substance.Nitrite)]
                + state.Basins.Grams[WaterStep.At(b, Substance.Nitrate)];
            double solids = state.Basins.Grams[WaterStep.At(b, Substance.FirstSolidsElement + Element.Nitrogen)];
            bool isSludge = season.Parts.Basins[b].Use is BasinUse.Mineralizer or BasinUse.HoldingTank;
            sludge += isSludge ? solids : 0;
            suspended += isSludge ? 0 : solids;
            foreach (Cohort cohort in state.Cohorts[b])
            {
                fish += cohort.Elements(season.Parts.Species[cohort.SpeciesIndex]).Nitrogen;
            }
        }

        double beads = 0;
        foreach (Solids.BedState bed in state.Beds)
        {
            beads += bed.ElementGrams[Element.Nitrogen];
        }

        Add(sinks, "inWater", dissolved);
        Add(sinks, "inSuspendedSolids", suspended);
        Add(sinks, "inSludge", sludge);
        Add(sinks, "onBeads", beads);
        Add(sinks, "inFish", fish);
        Add(sinks, "inPlants", closing - dissolved - suspended - sludge - beads - fish);
    }

    private static void Add(Dictionary<string, double> amounts, string name, double grams)
    {
        if (grams > 0)
        {
            amounts[name] = grams;
        }
    }

    private static Dictionary<string, NutrientShare> Shares(Dictionary<string, double> grams)
    {
        double total = grams.Values.Sum();
        return grams.ToDictionary(
            g => g.Key, g => new NutrientShare(g.Value, total > 0 ? g.Value / total : 0), StringComparer.Ordinal);
    }
}
