using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Solids;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Films against the ammonia load, washes against beads and mineralization tank.</summary>
internal static class FilterLines
{
    private const string Group = "Filter and solids";

    // Beyond this the sheet says "more than".
    private const double MostMilligramsPerLitre = 20;

    public static IEnumerable<SheetLine> Of(DesignCase design) =>
        design.HasFish ? Films(design).Concat(Washes(design)).Concat(Mineralizers(design)) : [];

    /// <summary>Days between washes of a filter: its plan's, or sooner when the flow falls and somebody has come to look.</summary>
    /// <param name="design">The design.</param>
    /// <param name="filter">Index of the filter.</param>
    /// <param name="feedShare">Feed over that of the busiest day.</param>
    public static double WashIntervalDays(DesignCase design, int filter, double feedShare)
    {
        BeadFilterDescription beads = design.Parts.Filters[filter];
        double load = design.Parts.Solids.HalfFlowLoadKilogramsPerCubicMetre * ((1 / beads.WashAtFlowShare) - 1);
        double solids = feedShare * design.Busiest.SolidsDryGrams / UnitConstants.GramsPerKilogram / design.Parts.Filters.Length;
        double clogged = solids > 0
            ? (load * beads.BeadsLitres / UnitConstants.LitresPerCubicMetre / solids) + design.Bands.Get("washWait", "d")
            : double.PositiveInfinity;
        return Math.Min(beads.WashEveryDays, clogged);
    }

    private static IEnumerable<SheetLine> Films(DesignCase design)
    {
        DesignBands bands = design.Bands;
        var loop = new LoopOxygen(design, design.Fish.BusiestDay);
        int[] filters = design.Parts.FilterBasin;

        // Too little air is told on its own lines, and must be mended before the films are judged.
        double oxygen = Math.Max(
            bands.Get("oxygenAct", "mg/L"),
            filters.Length > 0 ? filters.Average(f => loop.MilligramsPerLitre[f]) : design.Tanks.Average(t => loop.MilligramsPerLitre[t]));
        var films = new FilmLoad(design.Parts.Nitrification, new FilmConditions(
            design.HoldCelsius, bands.Get("designPH", "1"), oxygen, 0, bands.Get("designAlkalinity", "mg/L")));
        double area = design.FishLoop.Sum(b => design.Parts.Basins[b].WettedSquareMetres)
            + design.Parts.Filters.Select((f, i) => design.Parts.FilterMedia[i].PackedAreaSquareMetres(f.BeadsLitres)).Sum();
        double load = design.Busiest.TanGrams / area;
        double tanHigh = design.Reading.TanHigh;
        double margin = bands.Get("biofilterMargin", "1");
        double capacity = films.FluxGramsPerSquareMetreDay(NitrifierPopulation.AmmoniaOxidizers, tanHigh) / load;
        yield return new SheetLine
        {
            Group = Group,
            Key = "films.capacity",
            Name = $"films over load at TAN {tanHigh:0.#} mg N/L",
            Value = capacity,
            Low = margin,
            Source = bands.SourceOf("biofilterMargin"),
            Verdict = Judge.More(capacity, 1, margin),
            Advice = $"{area:0} m2 of grown film, {design.Busiest.TanGrams:0} g N a day, {load:0.00} g/m2/d; up to {capacity * design.Busiest.FeedGrams / UnitConstants.GramsPerKilogram:0.00} kg of feed a day."
                + (capacity < 1 ? " More beads or less feed." : string.Empty),
        };
        double nitrite = films.ConcentrationFor(NitrifierPopulation.NitriteOxidizers, load, MostMilligramsPerLitre);
        double gate = design.Farm.Coupling is { Way: not CouplingWay.Never } coupling ? coupling.Gates.NitriteMilligramsNPerLitre : design.Reading.NitriteHigh;
        yield return new SheetLine
        {
            Group = Group,
            Key = "films.nitrite",
            Name = "nitrite that they hold at that load",
            Value = nitrite,
            Unit = "mg N/L",
            High = gate,
            Source = bands.SourceOf("designPH"),
            Verdict = Judge.Less(nitrite, gate, 2 * gate),
            Advice = nitrite > gate ? "Keep chloride in the water (10 mg for each mg of nitrite N), and open the valves before this feed is reached." : string.Empty,
        };
    }

    private static IEnumerable<SheetLine> Washes(DesignCase design)
    {
        for (int f = 0; f < design.Parts.Filters.Length; f++)
        {
            double days = WashIntervalDays(design, f, 1);
            double kilograms = days * design.Busiest.SolidsDryGrams / design.Parts.Filters.Length / design.Parts.Filters[f].BeadsLitres;
            double full = design.Parts.Solids.FullLoadKilogramsPerCubicMetre;
            yield return new SheetLine
            {
                Group = Group,
                Key = $"wash.{design.Parts.FilterNames[f]}",
                Name = $"between washes at most feed, {design.Parts.FilterNames[f]}",
                Value = days,
                Unit = "d",
                Low = 1,
                Source = "practice-capture",
                Verdict = Judge.More(days, 1.0 / 2, 1),
                Advice = kilograms > full ? $"Its beads then hold {kilograms:0.0} kg/m3, above {full:0.0}: nitrification suffers; wash sooner."
                    : days < 1 ? "More than one wash a day at the busiest feed: let the flow fall further, or fit more beads or a settler." : string.Empty,
            };
        }
    }

    private static IEnumerable<SheetLine> Mineralizers(DesignCase design)
    {
        double wanted = design.Bands.Get("washTankDays", "d");
        double reserve = design.Bands.Get("washTankReserve", "1");
        for (int m = 0; m < design.Parts.Mineralizers.Length; m++)
        {
            MineralizerDescription tank = design.Parts.Mineralizers[m];
            double litres = Enumerable.Range(0, design.Parts.Filters.Length).Where(f => design.Parts.Filters[f].SludgeTo == tank.Basin)
                .Sum(f => design.Parts.Filters[f].WashWaterLitres / WashIntervalDays(design, f, design.SteadyShare));
            double volume = design.Farm.Basins[tank.Basin].VolumeLitres;
            double days = litres > 0 ? volume / (1 + reserve) / litres : double.PositiveInfinity;
            yield return new SheetLine
            {
                Group = Group,
                Key = $"mineralizer.{tank.Basin}",
                Name = $"wash water that {tank.Basin} holds",
                Value = days,
                Unit = "d",
                Low = wanted,
                Source = design.Bands.SourceOf("washTankDays"),
                Verdict = Judge.More(days, wanted / 2, wanted),
                Advice = $"{litres:0} L of wash water a day at the steady feed into {volume:0} L, a fifth kept free."
                    + (days < wanted ? $" {wanted:0} days need {wanted * litres * (1 + reserve):0} L; with less, washes wait while it settles." : string.Empty),
            };
        }

        if (design.Parts.Filters.Length > 0 && design.Parts.Mineralizers.Length == 0)
        {
            yield return new SheetLine
            {
                Group = Group,
                Key = "mineralizer.none",
                Name = "mineralization tank",
                Source = design.Bands.SourceOf("solidsReturned"),
                Verdict = Verdict.Watch,
                Advice = "There is none: the solids' share of the nutrients leaves with the sludge.",
            };
        }
    }
}
