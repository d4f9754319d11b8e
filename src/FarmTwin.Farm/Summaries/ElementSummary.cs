namespace FarmTwin.Farm.Summaries;

/// <summary>Supply of a nutrient against what the crops wanted.</summary>
public sealed record ElementSummary
{
    /// <summary>What came in by door (feed, source water, dosing; the opening stock apart), g.</summary>
    public required IReadOnlyDictionary<string, double> SuppliedG { get; init; }

    /// <summary>What the growth of a full solution would have taken, g.</summary>
    public required double NeededG { get; init; }

    /// <summary>What the plants took, g.</summary>
    public required double TakenG { get; init; }

    /// <summary>Lowest day's mean of the plant loop since plants first stood in it, mg/L as the element.</summary>
    public required PeakReading? LowestMgPerL { get; init; }

    /// <summary>Highest day's mean, mg/L.</summary>
    public required PeakReading? HighestMgPerL { get; init; }

    /// <summary>At the end, mg/L.</summary>
    public required double EndMgPerL { get; init; }

    /// <summary>Lower end of the usual band, mg/L; null where there is none.</summary>
    public required double? BandLow { get; init; }

    /// <summary>Upper end of the usual band, mg/L.</summary>
    public required double? BandHigh { get; init; }

    /// <summary>Days below the band.</summary>
    public required int DaysBelow { get; init; }

    /// <summary>Days above the band.</summary>
    public required int DaysAbove { get; init; }

    /// <summary>Days on which some crop showed that it was short of it.</summary>
    public required int DaysShort { get; init; }

    /// <summary>Day on which a crop first showed it; null where none did.</summary>
    public required double? FirstShortDay { get; init; }

    /// <summary>The crop that did.</summary>
    public required string? FirstShortCrop { get; init; }
}
