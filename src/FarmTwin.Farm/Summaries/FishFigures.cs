using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the fish.</summary>
internal static class FishFigures
{
    private const double GramsPerKilogram = UnitConstants.GramsPerKilogram;

    public static FishSummary Of(Season season, RecordView record)
    {
        FarmTotals totals = season.State.Totals;
        var byTank = new Dictionary<string, double>(StringComparer.Ordinal);
        double standing = 0;
        for (int b = 0; b < season.State.Cohorts.Length; b++)
        {
            if (season.Parts.Basins[b].Use is Description.BasinUse.FishTank or Description.BasinUse.Quarantine)
            {
                double kilograms = season.State.Cohorts[b].Sum((Cohort c) => c.BiomassGrams) / GramsPerKilogram;
                byTank.Add(season.Parts.BasinNames[b], kilograms);
                standing += kilograms;
            }
        }

        double gained = ((totals.FishSoldGrams + totals.FishDiedGrams - totals.FishDeliveredGrams) / GramsPerKilogram) + standing;
        (PeakReading? density, string? densest) = Density(season, record);
        (double? delivered, double? sold) = Sales(season.Log);
        return new FishSummary
        {
            FeedKg = totals.FeedGrams / GramsPerKilogram,
            FeedWithheldKg = totals.FeedWithheldGrams / GramsPerKilogram,
            GainedKg = gained,
            HarvestedKg = totals.FishSoldGrams / GramsPerKilogram,
            StandingKg = standing,
            StandingKgByTank = byTank,
            PeakStandingKg = PeakDay(record.Days("fish_biomass_kg")),
            Fcr = gained > 0 ? totals.FeedGrams / GramsPerKilogram / gained : null,
            Survival = totals.FishDelivered > 0 ? 1 - (totals.FishDied / totals.FishDelivered) : null,
            Delivered = totals.FishDelivered,
            Sold = totals.FishSold,
            Died = totals.FishDied,
            Deaths = HazardsPerHour.Causes.Select((cause, i) => (cause, i)).ToDictionary(c => c.cause, c => season.State.Husbandry.Deaths.Season[c.i], StringComparer.Ordinal),
            // Less than one fish sold is rounding of a population that is counted in expectation.
            MeanWeightSoldG = totals.FishSold >= 1 ? totals.FishSoldGrams / totals.FishSold : null,
            FirstDeliveryDay = delivered,
            FirstSaleDay = sold,
            DaysFromDeliveryToFirstSale = double.IsNaN(season.State.Operations.FirstSoldAfterDays) ? null : season.State.Operations.FirstSoldAfterDays,
            PeakDensityKgPerM3 = density,
            DensestTank = densest,
            FeedWithheldTankDays = season.State.Husbandry.WithheldTankDays,
            HighDeathTankDays = season.State.Husbandry.HighDeathTankDays,
            QuarantinesEnded = season.State.Husbandry.QuarantinesEnded,
            SteadyFeedKgPerDay = season.SteadyFeedGramsPerDay / GramsPerKilogram,
        };
    }

    private static (double? Delivered, double? Sold) Sales(FarmLog log)
    {
        double? first = null;
        foreach (LoggedEvent line in log.Events)
        {
            double day = Math.Floor(FarmWork.DayOf(line.Seconds));
            if (line.What == "deliver fish")
            {
                first ??= day;
            }
            else if (line.What == "sell fish")
            {
                return (first, day);
            }
        }

        return (first, null);
    }

    private static (PeakReading? Peak, string? Tank) Density(Season season, RecordView record)
    {
        PeakReading? peak = null;
        string? tank = null;
        for (int b = 0; b < season.Parts.Basins.Length; b++)
        {
            if (season.Parts.Basins[b].Use != Description.BasinUse.FishTank
                || PeakDay(record.Days($"biomass_{season.Parts.BasinNames[b]}_kg")) is not { } heaviest)
            {
                continue;
            }

            double density = heaviest.Value * UnitConstants.LitresPerCubicMetre / season.Parts.Basins[b].VolumeLitres;
            if (peak is null || density > peak.Value)
            {
                peak = new PeakReading(density, heaviest.Day);
                tank = season.Parts.BasinNames[b];
            }
        }

        return (peak, tank);
    }

    private static PeakReading? PeakDay(double[] days)
    {
        int best = -1;
        for (int i = 0; i < days.Length; i++)
        {
            best = days[i] > 0 && (best < 0 || days[i] > days[best]) ? i : best;
        }

        return best < 0 ? null : new PeakReading(days[best], best);
    }
}
