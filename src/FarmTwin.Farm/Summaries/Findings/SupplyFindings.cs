using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Heat, doses and salt.</summary>
internal static class SupplyFindings
{
    public static void Add(FindingList list)
    {
        Heat(list);
        Doses(list);
        Sodium(list);
    }

    private static void Heat(FindingList list)
    {
        EnergySummary energy = list.Summary.Energy;
        if (energy.PeakWaterHeatKW is { } peak && energy.WaterHeaterRatedKW > 0)
        {
            double share = peak.Value / energy.WaterHeaterRatedKW;
            bool near = share >= list.Bands.HeaterNearLimit;
            list.Add(near ? 74 : 35, $"The water heater worked hardest on {list.Day(peak.Day)}: {peak.Value:0.0} kW as a day's mean, {share:0%} of its "
                + $"{energy.WaterHeaterRatedKW:0.#} kW" + (near ? ": no margin for a colder day; insulate, or a larger heater." : "."));
        }
    }

    private static void Doses(FindingList list)
    {
        var parts = new List<string>();
        foreach ((string name, double grams) in list.Summary.Nutrients.DosedG.OrderByDescending(d => d.Value).Take(4))
        {
            parts.Add(grams >= UnitConstants.GramsPerKilogram ? $"{grams / UnitConstants.GramsPerKilogram:0.0} kg of {name}" : $"{grams:0} g of {name}");
        }

        int doses = list.Season.Log.Events.Count(e => e.What is "dose" or "ammonium dose" or "challenge");
        if (parts.Count > 0)
        {
            LoggedEvent last = list.Season.Log.Events.Last(e => e.What is "dose" or "ammonium dose" or "challenge");
            list.Add(38, $"To buy: {string.Join(", ", parts)}; {doses} doses until {list.Day(Math.Floor(FarmWork.DayOf(last.Seconds)))}.");
        }
    }

    private static void Sodium(FindingList list)
    {
        double[] sodium = list.Record.Days("sodium_plant_loop_mg_per_L");
        if (sodium.Length > 0 && sodium[^1] > list.Bands.SodiumWatch)
        {
            int since = Array.FindIndex(sodium, s => s > list.Bands.SodiumWatch);
            list.Add(59, $"Sodium of the plant loop is above {list.Bands.SodiumWatch:0} mg/L from {list.Day(since)} on and ends at {sodium[^1]:0}: "
                + "change some water, or choose feed and supplements with less salt.");
        }
    }
}
