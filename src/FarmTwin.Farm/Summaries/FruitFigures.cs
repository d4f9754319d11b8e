using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the fruiting crops.</summary>
internal static class FruitFigures
{
    private const int Week = 7;

    /// <summary>The fruit of a crop; null for one that bears none.</summary>
    public static FruitSummary? Of(Season season, RecordView record, int crop)
    {
        if (season.Parts.Crops[crop].Fruit is not { } fruit)
        {
            return null;
        }

        string name = season.Parts.CropNames[crop];
        FruitTally tally = season.State.Growing.Fruit[crop];
        int[] beds = [.. Enumerable.Range(0, season.Parts.Beds.Length).Where(b => season.Parts.BedCrop[b] == crop)];
        double area = beds.Sum(b => season.Parts.Beds[b].AreaSquareMetres);
        double saleable = season.State.Growing.SaleableGrams[crop] / UnitConstants.GramsPerKilogram;
        double[] picked = record.Days($"picked_{name}_kg");
        double? first = DayOf(Array.FindIndex(picked, kg => kg > 0));
        double? last = DayOf(Array.FindLastIndex(picked, kg => kg > 0));
        double[] weekly = Weekly(record.Days($"saleable_{name}_kg"));
        int best = weekly.Length > 0 ? Array.IndexOf(weekly, weekly.Max()) : -1;
        double kilograms = tally.PickedGrams / UnitConstants.GramsPerKilogram;
        return new FruitSummary
        {
            PlantsSetOut = tally.PlantsSetOut,
            SetOutDay = DayOf(Array.FindIndex(record.Days($"bed_plants_{name}"), n => n > 0)),
            FirstPickDay = first,
            LastPickDay = last,
            PickedKg = kilograms,
            BedSquareMetres = area,
            SaleableKgPerM2 = area > 0 ? saleable / area : 0,
            SaleableKgPerWeek = first is { } f && last is { } l ? saleable / Math.Max(1, (l - f) / Week) : null,
            WeeksWithPicks = picked.Select((kg, day) => (kg, day)).Where(p => p.kg > 0).Select(p => p.day / Week).Distinct().Count(),
            BestWeekKg = best >= 0 && weekly[best] > 0 ? new PeakReading(weekly[best], best * Week) : null,
            BlossomEndRotKg = tally.BlossomEndRotGrams / UnitConstants.GramsPerKilogram,
            OverripeKg = tally.OverripeGrams / UnitConstants.GramsPerKilogram,
            LostKg = tally.LostGrams / UnitConstants.GramsPerKilogram,
            OnPlantsKg = beds.Sum(b => fruit.FreshGrams(season.State.Growing.Beds[b].Plants.Fruit?.DryGrams ?? 0)) / UnitConstants.GramsPerKilogram,
            PrunedDryKg = tally.PrunedDryGrams / UnitConstants.GramsPerKilogram,
            GramsPerKg = new Dictionary<string, double>(StringComparer.Ordinal)
            {
                ["nitrogen"] = kilograms > 0 ? tally.PickedElements.Nitrogen / kilograms : 0,
                ["phosphorus"] = kilograms > 0 ? tally.PickedElements.Phosphorus / kilograms : 0,
                ["potassium"] = kilograms > 0 ? tally.PickedElements.Potassium / kilograms : 0,
                ["calcium"] = kilograms > 0 ? tally.PickedElements.Calcium / kilograms : 0,
            },
            NitrogenRemovedGPerM2Day = tally.SquareMetreDays > 0 ? tally.PickedElements.Nitrogen / tally.SquareMetreDays : null,
            PlantsLostToWater = beds.Sum(b => season.State.Growing.Beds[b].PlantsLost),
            LowestOxygenMgPerL = LowestOxygen(season, record, beds),
        };
    }

    /// <summary>Sums of whole weeks, counted from day 0.</summary>
    private static double[] Weekly(double[] days) =>
        [.. Enumerable.Range(0, days.Length / Week).Select(w => days.AsSpan(w * Week, Week).ToArray().Sum())];

    private static double? DayOf(int index) => index >= 0 ? index : null;

    private static PeakReading? LowestOxygen(Season season, RecordView record, int[] beds)
    {
        PeakReading? lowest = null;
        foreach (int b in beds)
        {
            double[] oxygen = record.Days($"oxygen_{season.Parts.BedNames[b]}_mg_per_L");
            double[] planted = record.Days($"plants_{season.Parts.BedNames[b]}");
            for (int day = 0; day < oxygen.Length; day++)
            {
                lowest = planted[day] > 0 && (lowest is null || oxygen[day] < lowest.Value) ? new PeakReading(oxygen[day], day) : lowest;
            }
        }

        return lowest;
    }
}
