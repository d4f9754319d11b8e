namespace FarmTwin.Farm.Summaries;

/// <summary>The fish of a season.</summary>
public sealed record FishSummary
{
    /// <summary>Feed offered, kg as fed.</summary>
    public required double FeedKg { get; init; }

    /// <summary>Feed withheld because of the water, kg.</summary>
    public required double FeedWithheldKg { get; init; }

    /// <summary>Live weight sold + standing + dead − delivered, kg.</summary>
    public required double GainedKg { get; init; }

    /// <summary>Live weight sold, kg.</summary>
    public required double HarvestedKg { get; init; }

    /// <summary>Live weight standing at the end, kg.</summary>
    public required double StandingKg { get; init; }

    /// <summary>Standing at the end by tank, kg.</summary>
    public required IReadOnlyDictionary<string, double> StandingKgByTank { get; init; }

    /// <summary>Greatest standing weight at the end of a day, kg, and its day; null without fish.</summary>
    public required PeakReading? PeakStandingKg { get; init; }

    /// <summary>Feed offered / <see cref="GainedKg"/>; null where nothing was gained.</summary>
    public required double? Fcr { get; init; }

    /// <summary>1 − died / delivered; null where none was delivered.</summary>
    public required double? Survival { get; init; }

    /// <summary>Fish delivered.</summary>
    public required double Delivered { get; init; }

    /// <summary>Fish sold.</summary>
    public required double Sold { get; init; }

    /// <summary>Fish that died.</summary>
    public required double Died { get; init; }

    /// <summary>Fish that died, by cause: usual, cold, heat, oxygen, ammonia, nitrite, handling, chlorine, pesticide.</summary>
    public required IReadOnlyDictionary<string, double> Deaths { get; init; }

    /// <summary>Mean weight of the fish sold, g; null where none was sold.</summary>
    public required double? MeanWeightSoldG { get; init; }

    /// <summary>Day of the first delivery; null where there was none.</summary>
    public required double? FirstDeliveryDay { get; init; }

    /// <summary>Day of the first sale; null where there was none.</summary>
    public required double? FirstSaleDay { get; init; }

    /// <summary>Days from the delivery of the fish that were sold first to their sale, quarantine included; null where none were sold.</summary>
    public required double? DaysFromDeliveryToFirstSale { get; init; }

    /// <summary>Densest that a tank stood at the end of a day, kg/m³, and its day; null without fish.</summary>
    public required PeakReading? PeakDensityKgPerM3 { get; init; }

    /// <summary>The tank of that density; null without fish.</summary>
    public required string? DensestTank { get; init; }

    /// <summary>Days of single tanks on which feed was withheld: each one a welfare event.</summary>
    public required double FeedWithheldTankDays { get; init; }

    /// <summary>Days of single tanks on which so many died that it is reported and acted on.</summary>
    public required double HighDeathTankDays { get; init; }

    /// <summary>Batches that ended their quarantine.</summary>
    public required double QuarantinesEnded { get; init; }

    /// <summary>Feed that the stocking plan settles to, kg/d.</summary>
    public required double SteadyFeedKgPerDay { get; init; }
}
