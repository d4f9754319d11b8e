using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Heat, doses and salt.</summary>
internal static class SupplyFindings
{
    private const double DaysOfYear = 365;

    public static void Add(FindingList list)
    {
        Heat(list);
        Doses(list);
        Salt(list, "Sodium", list.Summary.Water.Sodium, "change some water, or choose feed and supplements with less salt");
        Salt(list, "Chloride", list.Summary.Water.Chloride, "change some water; nitrate or sulfate salts instead of chlorides");
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

    private static void Salt(FindingList list, string name, SaltSummary? salt, string cure)
    {
        if (salt is null || salt.Watch.Day is null)
        {
            return;
        }

        string limit = salt.Limit.Day is { } day
            ? $"{(salt.Limit.Projected ? "the limit" : "it passed the limit")} of {salt.Limit.MgPerL:0} on {list.Date(day)}"
            : salt.RestsAtMgPerL is { } rest ? $"it would come to rest at {rest:0}" : "the limit is far";
        if (!salt.Watch.Projected)
        {
            list.Add(salt.Caution.Projected || salt.Caution.Day is null ? 59 : 69, $"{name} of the plant loop passed {salt.Watch.MgPerL:0} mg/L on "
                + $"{list.Date(salt.Watch.Day.Value)} and ends at {salt.EndMgPerL:0}; {limit}: {cure}.");
        }
        else
        {
            list.Add(salt.Watch.Day < list.Summary.Days + DaysOfYear ? 46 : 30, $"{name} of the plant loop ends at {salt.EndMgPerL:0} mg/L; at this rate it passes "
                + $"{salt.Watch.MgPerL:0} on {list.Date(salt.Watch.Day.Value)}, {limit}: {cure}.");
        }
    }
}
