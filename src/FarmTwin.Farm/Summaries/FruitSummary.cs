namespace FarmTwin.Farm.Summaries;

/// <summary>The fruit of one crop of a season.</summary>
public sealed record FruitSummary
{
    /// <summary>Plants set out.</summary>
    public required double PlantsSetOut { get; init; }

    /// <summary>Day of the first setting out; null where there was none.</summary>
    public required double? SetOutDay { get; init; }

    /// <summary>Day of the first pick; null where there was none.</summary>
    public required double? FirstPickDay { get; init; }

    /// <summary>Day of the last pick so far; null where there was none.</summary>
    public required double? LastPickDay { get; init; }

    /// <summary>Fresh fruit picked, sold and unsold, kg.</summary>
    public required double PickedKg { get; init; }

    /// <summary>Bed area of the crop, m².</summary>
    public required double BedSquareMetres { get; init; }

    /// <summary>Fruit fit for sale on a square metre of bed, kg/m².</summary>
    public required double SaleableKgPerM2 { get; init; }

    /// <summary>Mean of the weeks from the first to the last pick, kg fit for sale.</summary>
    public required double? SaleableKgPerWeek { get; init; }

    /// <summary>Weeks of the season, counted from day 0, in which fruit was picked.</summary>
    public required int WeeksWithPicks { get; init; }

    /// <summary>Best whole week, kg fit for sale, with its first day.</summary>
    public required PeakReading? BestWeekKg { get; init; }

    /// <summary>Picked fruit with blossom-end rot, kg.</summary>
    public required double BlossomEndRotKg { get; init; }

    /// <summary>Picked fruit that had hung too long, kg.</summary>
    public required double OverripeKg { get; init; }

    /// <summary>Fruit that went to compost unripe or with dead plants, kg.</summary>
    public required double LostKg { get; init; }

    /// <summary>Fruit that hangs at the end, kg.</summary>
    public required double OnPlantsKg { get; init; }

    /// <summary>Leaves and shoots pruned, kg dry.</summary>
    public required double PrunedDryKg { get; init; }

    /// <summary>Nitrogen, phosphorus, potassium and calcium in a kilogram of picked fruit, g.</summary>
    public required IReadOnlyDictionary<string, double> GramsPerKg { get; init; }

    /// <summary>Nitrogen that the picked fruit took out, mean over the days that the beds were planted, g/m²/d.</summary>
    public required double? NitrogenRemovedGPerM2Day { get; init; }

    /// <summary>Plants lost to dry beds or to water at the stem.</summary>
    public required double PlantsLostToWater { get; init; }

    /// <summary>Lowest daily mean of oxygen in the water that leaves a planted bed, mg/L, with its day.</summary>
    public required PeakReading? LowestOxygenMgPerL { get; init; }
}
