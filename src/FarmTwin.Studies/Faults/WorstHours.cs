using FarmTwin.Farm;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Faults;

/// <summary>The worst hours of a season for a part to break, read from the season in which nothing breaks.</summary>
/// <remarks>An hour is none (null) where the season never has what would be lost: no fish, no crop, no frost to speak of.</remarks>
public sealed class WorstHours
{
    // What is broken must be found, mended and its harm seen before the season ends.
    private const int DaysBeforeTheEnd = 4;
    private const int DaysOfWeek = 7;
    private const double EveningHour = 18;
    private const double AfterTheRoundHour = 8;

    // Fish take most oxygen some hours after a meal: the night's low is looked for within these.
    private const int HoursAfterTheMeal = 6;

    /// <summary>Reads them.</summary>
    /// <param name="season">The season without faults, played to its end.</param>
    public WorstHours(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        var record = new RecordView(season);
        int days = Math.Max(0, record.DayCount - DaysBeforeTheEnd);
        double[] fish = record.Days("fish_biomass_kg");
        bool[] stocked = [.. fish.Select(b => b > 0)];
        bool[] planted = [.. Enumerable.Range(0, record.DayCount).Select(d => season.Parts.CropNames.Any(c =>
            record.Days($"standing_{c}_plants")[d] > 0 || record.Days($"bed_plants_{c}")[d] > 0))];
        double[] coldest = record.Days("outside_air_lowest_C");
        AfterFeeding = Best(fish, days, stocked) is { } full ? FedHour(season, record, full, fish[full]) : null;
        ColdWithFish = Night(record, coldest, days, stocked, "while fish are there");
        ColdWithPlants = Night(record, coldest, days, planted, "while plants stand");
        double[] light = [.. record.Days("daylight_at_crop_mol_per_m2").Select((l, d) => l + record.Days("lamp_light_at_crop_mol_per_m2")[d])];
        double[] week = [.. light.Select((_, d) => d + DaysOfWeek <= light.Length ? light.Skip(d).Take(DaysOfWeek).Average() : double.NaN)];
        Darkest = Best([.. week.Select(w => -w)], days, planted) is { } dark
            ? new WorstHour(FarmWork.At(dark, AfterTheRoundHour), $"the darkest week with plants ({week[dark]:0.0} mol/m² a day), after the morning round") : null;
        Brightest = Best(week, days, planted) is { } bright
            ? new WorstHour(FarmWork.At(bright, AfterTheRoundHour), $"the brightest week with plants ({week[bright]:0.0} mol/m² a day), after the morning round") : null;
        double[] drunk = record.Days("source_water_L");
        bool[] any = [.. drunk.Select((_, d) => d > DaysOfWeek)];
        Thirstiest = Best(drunk, days, any) is { } dry
            ? new WorstHour(FarmWork.At(dry, AfterTheRoundHour), $"the day on which most is topped up ({drunk[dry]:0} L), after the morning round") : null;
    }

    /// <summary>After the last meal of the day with most fish.</summary>
    public WorstHour? AfterFeeding { get; }

    /// <summary>The evening before the coldest night with fish.</summary>
    public WorstHour? ColdWithFish { get; }

    /// <summary>The evening before the coldest night with plants.</summary>
    public WorstHour? ColdWithPlants { get; }

    /// <summary>The week in which plants get least light.</summary>
    public WorstHour? Darkest { get; }

    /// <summary>The week in which they get most.</summary>
    public WorstHour? Brightest { get; }

    /// <summary>The day on which most water is topped up.</summary>
    public WorstHour? Thirstiest { get; }

    private static WorstHour FedHour(Season season, RecordView record, int day, double kilograms)
    {
        int meal = (int)Math.Ceiling(season.Parts.Farm.Feeding.MealHours.DefaultIfEmpty(EveningHour).Max());
        double[] oxygen = record.Hours("oxygen_tanks_mg_per_L");
        int best = meal;
        for (int hour = meal; hour <= meal + HoursAfterTheMeal && (day * UnitConstants.HoursPerDay) + hour < oxygen.Length; hour++)
        {
            int row = (int)(day * UnitConstants.HoursPerDay) + hour;
            best = oxygen[row] < oxygen[(int)(day * UnitConstants.HoursPerDay) + best] ? hour : best;
        }

        // The row of an hour is its mean; what breaks at its end breaks at the low.
        return new WorstHour(FarmWork.At(day, 0) + ((best + 1) * (long)UnitConstants.SecondsPerHour),
            $"after the last meal of the day with most fish ({kilograms:0} kg)");
    }

    private static WorstHour? Night(RecordView record, double[] coldest, int days, bool[] counts, string what) =>
        Best([.. coldest.Select(c => -c)], days, counts) is > 0 and var day
            ? new WorstHour(FarmWork.At(day - 1, EveningHour), $"the evening before the coldest night {what} ({record.DayInWords(day)}, down to {coldest[day]:0} °C outside)")
            : null;

    private static int? Best(double[] values, int days, bool[] counts)
    {
        int? best = null;
        for (int d = 0; d < days; d++)
        {
            if (counts[d] && double.IsFinite(values[d]) && (best is null || values[d] > values[best.Value]))
            {
                best = d;
            }
        }

        return best;
    }
}
