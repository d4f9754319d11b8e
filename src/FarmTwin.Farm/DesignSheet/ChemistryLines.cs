using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Base a week with the loops apart and joined, and days until sodium matters.</summary>
internal static class ChemistryLines
{
    private const string Group = "Alkalinity and salt";
    private const string UsualBase = "potassium-bicarbonate";

    public static IEnumerable<SheetLine> Of(DesignCase design) => (design.HasFish ? Bases(design) : []).Concat(Sodium(design));

    // A balance of charges: what feed, source water and plants bring and take, with all nitrogen as nitrate. So the half of the
    // nitrifiers' alkalinity that excretion of ammonia brought, and what plants give back, need no factors of their own.
    private static IEnumerable<SheetLine> Bases(DesignCase design)
    {
        double fishShare = design.FishLoop.Sum(b => design.Parts.Basins[b].VolumeLitres) / design.WaterLitres;
        double source = Alkalinity.EquivalentsFromCalciumCarbonate(design.TopUpLitresPerDay * design.Farm.SourceWater.AlkalinityMilligramsPerLitre);
        ElementGrams dissolved = design.Busiest.Dissolved * design.SteadyShare;
        yield return Base(design, "apart", "base a week, loops apart", Equivalents(dissolved) + (source * fishShare), joined: false);
        if (design.Farm.Coupling is { Way: not CouplingWay.Never })
        {
            double returned = design.Parts.Mineralizers.Length > 0 ? design.Bands.Get("solidsReturned", "1") : 0;
            ElementGrams all = dissolved + (design.Busiest.Solids * (design.SteadyShare * returned));
            ElementGrams plants = new CropDemand(design).SettledGramsPerDay();
            all = all.WithNitrogen(all.Nitrogen * design.Bands.Get("nitrogenKept", "1"));

            // Plants that want more than there is take what there is.
            plants *= plants.Nitrogen > 0 ? Math.Min(1, all.Nitrogen / plants.Nitrogen) : 0;
            yield return Base(design, "joined", "base a week, joined", Equivalents(all) - Equivalents(plants) + source, joined: true);
        }
    }

    private static double Equivalents(ElementGrams grams)
    {
        Ions ions = new(
            Na: grams.Sodium / UnitConstants.AtomicWeight.Sodium,
            K: grams.Potassium / UnitConstants.AtomicWeight.Potassium,
            Ca: grams.Calcium / UnitConstants.AtomicWeight.Calcium,
            Mg: grams.Magnesium / UnitConstants.AtomicWeight.Magnesium,
            Cl: grams.Chloride / UnitConstants.AtomicWeight.Chlorine,
            NitrateN: grams.Nitrogen / UnitConstants.AtomicWeight.Nitrogen,
            NitriteN: 0,
            SulfateS: grams.Sulfur / UnitConstants.AtomicWeight.Sulfur,
            P: grams.Phosphorus / UnitConstants.AtomicWeight.Phosphorus,
            TAN: 0);
        return Alkalinity.EquivalentsPerLitre(in ions);
    }

    private static SheetLine Base(DesignCase design, string key, string name, double equivalentsPerDay, bool joined)
    {
        KeyValuePair<string, DosingDescription>[] rules = [.. design.Farm.Dosing.Where(d => d.Value is KeepAlkalinity
            && !(joined ? d.Value.EndsWhenCoupled || d.Value.EndsWhenOpened : d.Value.BeginsWhenCoupled))];
        string product = rules.Length > 0 ? rules[^1].Value.With[0] : UsualBase;
        double need = Math.Max(0, -equivalentsPerDay) * UnitConstants.GramsCalciumCarbonatePerEquivalent;
        double grams = UnitConstants.DaysPerWeek * BaseDose.GramsForRise(design.Parts.Supplements[product], need * UnitConstants.GramsPerKilogram, 1);
        return new SheetLine
        {
            Group = Group,
            Key = $"base.{key}",
            Name = name,
            Value = grams,
            Unit = "g/wk",
            Source = design.Bands.SourceOf("nitrogenKept"),
            Verdict = rules.Length > 0 || need <= 0 ? Verdict.Fine : Verdict.Act,
            Advice = need <= 0 ? "The source water brings enough alkalinity: pH will creep up where plants take nitrate."
                : rules.Length == 0 ? $"As {product}. No rule keeps the alkalinity: pH will fall and the films will stop."
                : $"All of it as {product}; {need:0} g/d as CaCO3 beyond what the source brings.",
        };
    }

    private static IEnumerable<SheetLine> Sodium(DesignCase design)
    {
        double topUp = design.TopUpLitresPerDay;
        double source = design.Farm.SourceWater.SodiumMilligramsPerLitre;
        double feed = (design.Busiest.Dissolved.Sodium + design.Busiest.Solids.Sodium) * design.SteadyShare * UnitConstants.GramsPerKilogram;
        double inflow = (source * topUp) + feed;
        double drawn = design.Parts.Plants.SodiumUptakeShare * design.Bands.Get("transpiredShare", "1") * topUp;
        double limit = design.Reading.Sodium.Watch;
        double days = source >= limit ? 0 : inflow > 0 ? SaltBuildUp.DaysToLimit(source, limit, inflow, 1, design.WaterLitres, drawn) : double.PositiveInfinity;
        double soon = design.Bands.Get("saltSoon", "d");
        bool soda = design.Farm.Dosing.Values.OfType<KeepAlkalinity>().Any(d => d.With.Any(w => design.Parts.Supplements[w].SodiumGramsPerKilogram > 0));
        yield return new SheetLine
        {
            Group = Group,
            Key = "sodium",
            Name = $"days until sodium is at {limit:0} mg/L",
            Value = days,
            Unit = "d",
            Low = soon,
            Source = design.Bands.SourceOf("saltSoon"),
            Verdict = soda ? Verdict.Watch : Judge.More(days, 0, soon),
            Advice = $"Top-up {topUp:0} L/d with {source:0} mg/L, feed {feed / UnitConstants.GramsPerKilogram:0.0} g/d; it would rest at {(drawn > 0 ? SaltBuildUp.EquilibriumMilligramsPerLitre(inflow, 1, drawn) : double.PositiveInfinity):0} mg/L."
                + (soda ? " A base with sodium is dosed besides: it is not counted, and plants suffer from it." : string.Empty)
                + (days < soon ? " Find softer source water (never from a softener), rain water, or change some water each season." : string.Empty),
        };
    }
}
