namespace FarmTwin.Farm.DesignSheet;

/// <summary>Air against oxygen and carbon dioxide: every tank on its fullest day, the loop on its busiest, at the hour after a meal.</summary>
internal static class AirLines
{
    private const string Group = "Air";

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        if (!design.HasFish)
        {
            yield break;
        }

        DesignBands bands = design.Bands;
        double low = design.Reading.OxygenLow;
        double act = bands.Get("oxygenAct", "mg/L");
        double mostCarbonDioxide = design.Reading.CarbonDioxideHigh;
        double actCarbonDioxide = bands.Get("carbonDioxideAct", "mg/L");
        double worst = 0;
        foreach (int tank in design.Tanks)
        {
            var loop = new LoopOxygen(design, design.Fish.FullestDay(tank));
            double oxygen = loop.MilligramsPerLitre[tank];
            worst = Math.Max(worst, loop.CarbonDioxideMilligramsPerLitre[tank]);
            yield return new SheetLine
            {
                Group = Group,
                Key = $"oxygen.{design.Parts.BasinNames[tank]}",
                Name = $"oxygen after a meal, {design.Parts.BasinNames[tank]}",
                Value = Math.Max(0, oxygen),
                Unit = "mg/L",
                Low = low,
                Source = bands.SourceOf("oxygenAct"),
                Verdict = Judge.More(oxygen, act, low),
                Advice = oxygen < low
                    ? $"Its fish take {loop.DemandGramsPerHour(tank):0.0} g/h when fullest: more air, deeper or finer diffusers, more flow, or smaller and more frequent meals."
                    : string.Empty,
            };
        }

        var busiest = new LoopOxygen(design, design.Fish.BusiestDay);
        double supply = busiest.SupplyOverDemand(low);
        double need = design.FishLoop.Sum(busiest.DemandGramsPerHour);
        yield return new SheetLine
        {
            Group = Group,
            Key = "air.loop",
            Name = $"air over need at {low:0.#} mg/L, fish loop",
            Value = supply,
            Low = 1,
            Source = bands.SourceOf("oxygenAct"),
            Verdict = Judge.More(supply, busiest.SupplyOverDemand(act) >= 1 ? 0 : double.PositiveInfinity, 1),
            Advice = supply < 1 ? $"Fish and filter take {need:0} g of oxygen an hour after the meal: the blower and its diffusers are too small." : $"Fish and filter take {need:0} g of oxygen an hour after the meal.",
        };
        yield return new SheetLine
        {
            Group = Group,
            Key = "carbonDioxide",
            Name = "carbon dioxide, worst tank",
            Value = worst,
            Unit = "mg/L",
            High = mostCarbonDioxide,
            Source = bands.SourceOf("carbonDioxideAct"),
            Verdict = Judge.Less(worst, mostCarbonDioxide, actCarbonDioxide),
            Advice = worst > mostCarbonDioxide ? "Fine bubbles strip it poorly: coarse bubbles, a splashing return, more air." : string.Empty,
        };
    }
}
