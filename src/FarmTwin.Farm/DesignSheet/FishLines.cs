using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Density of every tank, harvest dates and weights by the growth law, feed against plant area, the feed gate.</summary>
internal static class FishLines
{
    private const string Group = "Fish and feed";

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        DesignBands bands = design.Bands;
        foreach (int tank in design.Tanks)
        {
            string name = design.Parts.BasinNames[tank];
            int day = design.Fish.FullestDay(tank);
            double density = design.Fish.Kilograms(tank, day) / design.Parts.Basins[tank].VolumeLitres * UnitConstants.LitresPerCubicMetre;
            bool backed = OutageLines.IsBacked(design, name);
            double most = bands.Get(backed ? "densityBacked" : "densityAlone", "kg/m3");
            yield return new SheetLine
            {
                Group = Group,
                Key = $"density.{name}",
                Name = $"most fish, {name}",
                Value = density,
                Unit = "kg/m3",
                High = most,
                Source = bands.SourceOf(backed ? "densityBacked" : "densityAlone"),
                Verdict = Judge.Less(density, most, most),
                Advice = density > most
                    ? $"{design.Fish.Kilograms(tank, day):0} kg about {design.DateOf(day):d MMM yyyy}" + (backed ? ": fewer fish, or a larger tank." : ": fewer fish, or air that does not need the mains.")
                    : string.Empty,
            };
        }

        foreach (BatchCourse course in design.Fish.Courses.GroupBy(c => c.Batch).Select(g => g.First()))
        {
            StockingDescription plan = design.Parts.Stocking[course.Batch];
            string name = design.Parts.StockingNames[course.Batch];
            yield return new SheetLine
            {
                Group = Group,
                Key = $"firstSale.{name}",
                Name = $"tank to first sale, {name}",
                Value = course.FirstSaleDay - course.DeliveredDay,
                Unit = "d",
                Source = "fish-bell-fit",
                Verdict = course.FirstSaleDay is null ? Verdict.Watch : Verdict.NoVerdict,
                Advice = course.FirstSaleDay is { } sale
                    ? $"{plan.Number / plan.Deliveries} fish in their tank about {design.DateOf(course.DeliveredDay):d MMM yyyy}, sold from {plan.SellFromGrams:0} g from {design.DateOf(sale):d MMM yyyy}"
                        + (course.EmptyDay is { } empty ? $", the last {design.DateOf(empty):d MMM yyyy}" : string.Empty) + $" (filter ready day {design.CycledDay:0}, {design.HoldCelsius:0.#} °C, fair water)."
                    : $"Not of {plan.SellFromGrams:0} g within this season.",
            };
        }

        if (!design.HasFish)
        {
            yield break;
        }

        yield return Plain("feed.steady", "feed the plan settles to", design.SteadyFeedGrams / UnitConstants.GramsPerKilogram, "kg/d", "plants-own", string.Empty);
        yield return Plain("feed.most", "feed of the busiest day", design.Busiest.FeedGrams / UnitConstants.GramsPerKilogram, "kg/d", "plants-own",
            $"{design.DateOf(design.Fish.BusiestDay):d MMM yyyy}." + (design.Fish.Capped ? " The plan's own limit of feed lies below it and is not counted here." : string.Empty));
        double area = design.CropSquareMetres;
        if (area > 0)
        {
            yield return Plain("feed.ratio", "feed for the plant area", design.SteadyFeedGrams / area, "g/m2/d", bands.SourceOf("feedRatioHigh"),
                "No verdict: farms that keep their solids and supplement K, Ca and Fe do well at 10 to 20. The nutrient lines decide.")
                with { Low = bands.Get("feedRatioLow", "g/m2/d"), High = bands.Get("feedRatioHigh", "g/m2/d") };
        }

        if (design.Farm.Coupling is { Way: not CouplingWay.Never, OnDay: null } coupling)
        {
            yield return Gate(design, coupling);
        }
    }

    private static SheetLine Gate(DesignCase design, CouplingDescription coupling)
    {
        double wanted = coupling.Gates.FeedShare * design.SteadyFeedGrams;
        int first = Enumerable.Range(0, design.Fish.Days).FirstOrDefault(d => design.Fish.FeedGrams(d) >= wanted, -1);
        return new SheetLine
        {
            Group = Group,
            Key = "gate.feed",
            Name = "the feed gate is passed on day",
            Value = first >= 0 ? first : null,
            Unit = "d",
            High = design.Fish.Days - 1,
            Source = "practice-coupling",
            Verdict = first >= 0 ? Verdict.Fine : Verdict.Act,
            Advice = first >= 0
                ? $"Valves cannot open before {design.DateOf(first):d MMM yyyy}: then the feed is {coupling.Gates.FeedShare:0%} of what the plan settles to."
                : $"The plan never feeds {coupling.Gates.FeedShare:0%} of what it settles to: the valves would stay shut. Stock earlier, or set the gate lower.",
        };
    }

    private static SheetLine Plain(string key, string name, double value, string unit, string source, string advice) => new()
    {
        Group = Group, Key = key, Name = name, Value = value, Unit = unit, Source = source, Verdict = Verdict.NoVerdict, Advice = advice,
    };
}
