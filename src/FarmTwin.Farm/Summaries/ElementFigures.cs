using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the nutrients one by one.</summary>
internal static class ElementFigures
{
    private static readonly string[] Supplies = ["feed", "sourceWater", "dosing"];

    public static Dictionary<string, ElementSummary> Of(
        Season season, RecordView record, IReadOnlyDictionary<string, LedgerSummary> ledgers, SummaryBands bands)
    {
        int planted = FirstPlanted(season);
        var elements = new Dictionary<string, ElementSummary>(StringComparer.Ordinal);
        foreach (int element in Stress.Nutritive)
        {
            string name = Element.Names[element];
            double[] water = record.Days(Column(element));
            (double? low, double? high) = bands.Nutrient(element);
            LoggedEvent? first = season.Log.Events.FirstOrDefault(
                e => e.What == "deficiency" && e.Note.StartsWith(name + ":", StringComparison.Ordinal));
            NutritionState nutrition = season.State.Growing.Nutrition;
            elements[name] = new ElementSummary
            {
                SuppliedG = Supplies.ToDictionary(d => d, d => ledgers[name].Doors.TryGetValue(d, out DoorFlow? flow) ? flow.In : 0, StringComparer.Ordinal),
                NeededG = nutrition.NeededGrams[element],
                TakenG = nutrition.TakenGrams[element],
                LowestMgPerL = Extreme(water, planted, highest: false),
                HighestMgPerL = Extreme(water, planted, highest: true),
                EndMgPerL = water.Length > 0 ? water[^1] : double.NaN,
                BandLow = low,
                BandHigh = high,
                DaysBelow = water.Skip(planted).Count(c => c < low),
                DaysAbove = water.Skip(planted).Count(c => c > high),
                DaysShort = nutrition.DaysShort[element],
                FirstShortDay = first is null ? null : Math.Floor(FarmWork.DayOf(first.Seconds)),
                FirstShortCrop = first?.Where,
            };
        }

        return elements;
    }

    /// <summary>The column of a nutrient in the plant loop.</summary>
    public static string Column(int element) => element switch
    {
        Element.Nitrogen => "nitrate_plant_loop_mgN_per_L",
        Element.Sulfur => "sulfate_plant_loop_mgS_per_L",
        _ => $"{Element.Names[element]}_plant_loop_mg_per_L",
    };

    private static int FirstPlanted(Season season) =>
        season.Log.Events.FirstOrDefault(e => e.What is "transplant" or "plant boards" or "set out") is { } planted
            ? (int)FarmWork.DayOf(planted.Seconds)
            : int.MaxValue;

    private static PeakReading? Extreme(double[] days, int from, bool highest)
    {
        int best = -1;
        for (int day = from; day < days.Length; day++)
        {
            if (double.IsFinite(days[day]) && (best < 0 || (highest ? days[day] > days[best] : days[day] < days[best])))
            {
                best = day;
            }
        }

        return best < 0 ? null : new PeakReading(days[best], best);
    }
}
