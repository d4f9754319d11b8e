using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the nursery.</summary>
internal static class NurseryFigures
{
    public static NurserySummary Of(Season season, RecordView record)
    {
        FarmParts parts = season.Parts;
        NurseryState nursery = season.State.Growing.Nursery;
        int places = parts.Tiers.Count * (parts.Farm.Nursery?.TraysPerTier ?? 0);
        double[] seedlings = record.Days("nursery_seedling_places");
        double[] microgreens = record.Days("nursery_microgreen_places");
        double taken = 0;
        for (int day = 0; day < seedlings.Length; day++)
        {
            taken += places > 0 ? (seedlings[day] + microgreens[day]) / places / seedlings.Length : 0;
        }

        return new NurserySummary
        {
            Places = places,
            Cells = places * (parts.Farm.Nursery?.CellsPerTray ?? 0),
            SeedlingPlaces = Highest(seedlings),
            MicrogreenPlaces = Highest(microgreens),
            MeanShareTaken = taken,
            KWhByTier = nursery.TierKilowattHours.Select((k, t) => (k, t)).ToDictionary(p => $"{p.t + 1}", p => p.k, StringComparer.Ordinal),
            DryDays = nursery.DryDays,
            PoorSowings = season.Log.Events.Count(e => e.What == "poor germination"),
            MicrogreenDaysInFishWater = nursery.FishWaterDays,
            Microgreens = parts.MicrogreenNames.Select((name, kind) => (name, Of(nursery, record, name, kind)))
                .ToDictionary(p => p.name, p => p.Item2, StringComparer.Ordinal),
        };
    }

    private static MicrogreenSummary Of(NurseryState nursery, RecordView record, string name, int kind)
    {
        double[] trays = record.Days($"trays_{name}");
        double[] weights = record.Days($"tray_weight_{name}_g");
        PeakReading? lightest = null;
        PeakReading? heaviest = null;
        double? first = null;
        for (int day = 0; day < trays.Length; day++)
        {
            if (trays[day] > 0)
            {
                first ??= day;
                lightest = lightest is null || weights[day] < lightest.Value ? new PeakReading(weights[day], day) : lightest;
                heaviest = heaviest is null || weights[day] > heaviest.Value ? new PeakReading(weights[day], day) : heaviest;
            }
        }

        return new MicrogreenSummary
        {
            TraysSown = nursery.TraysSown[kind],
            TraysCut = nursery.TraysCut[kind],
            TraysRefused = nursery.TraysRefused[kind],
            TraysFailed = nursery.TraysFailed[kind],
            SeedKg = nursery.SeedGrams[kind] / UnitConstants.GramsPerKilogram,
            HarvestedKg = nursery.SoldGrams[kind] / UnitConstants.GramsPerKilogram,
            MeanTrayG = nursery.TraysCut[kind] > 0 ? nursery.CutGrams[kind] / nursery.TraysCut[kind] : null,
            TrayG = new ReadingRange(lightest, heaviest),
            FirstHarvestDay = first,
        };
    }

    private static PeakReading? Highest(double[] values)
    {
        int best = -1;
        for (int day = 0; day < values.Length; day++)
        {
            best = double.IsFinite(values[day]) && (best < 0 || values[day] > values[best]) ? day : best;
        }

        return best < 0 ? null : new PeakReading(values[best], best);
    }
}
