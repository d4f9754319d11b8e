namespace FarmTwin.Farm.Summaries;

/// <summary>The nursery of a season; zeros and empty lists for a farm without one.</summary>
public sealed record NurserySummary
{
    /// <summary>Places for trays.</summary>
    public required int Places { get; init; }

    /// <summary>Seedlings that could stand at once if all places were for them.</summary>
    public required int Cells { get; init; }

    /// <summary>Most places that seedlings took at the end of a day.</summary>
    public required PeakReading? SeedlingPlaces { get; init; }

    /// <summary>Most places that microgreens took at the end of a day.</summary>
    public required PeakReading? MicrogreenPlaces { get; init; }

    /// <summary>Mean share of the places that were taken.</summary>
    public required double MeanShareTaken { get; init; }

    /// <summary>Electricity of each tier's lamps, kWh, by number from 1.</summary>
    public required IReadOnlyDictionary<string, double> KWhByTier { get; init; }

    /// <summary>Days on which its plants got less water than they asked for.</summary>
    public required double DryDays { get; init; }

    /// <summary>Sowings of seed whose seedlings came up short because of the temperature of the seed bed.</summary>
    public required int PoorSowings { get; init; }

    /// <summary>Days on which microgreens stood in water that fish live in, or that decants reach.</summary>
    public required double MicrogreenDaysInFishWater { get; init; }

    /// <summary>Microgreens by name.</summary>
    public required IReadOnlyDictionary<string, MicrogreenSummary> Microgreens { get; init; }
}

/// <summary>One kind of microgreens of a season.</summary>
public sealed record MicrogreenSummary
{
    /// <summary>Trays sown.</summary>
    public required double TraysSown { get; init; }

    /// <summary>Trays cut.</summary>
    public required double TraysCut { get; init; }

    /// <summary>Trays that found no place.</summary>
    public required double TraysRefused { get; init; }

    /// <summary>Trays on which nothing came up in time.</summary>
    public required double TraysFailed { get; init; }

    /// <summary>Seed sown, kg.</summary>
    public required double SeedKg { get; init; }

    /// <summary>Fresh weight that can be sold, kg.</summary>
    public required double HarvestedKg { get; init; }

    /// <summary>Mean fresh weight of a tray cut, g; null where none was.</summary>
    public required double? MeanTrayG { get; init; }

    /// <summary>Lightest and heaviest tray of a cut, g.</summary>
    public required ReadingRange TrayG { get; init; }

    /// <summary>Day of the first cut; null where there was none.</summary>
    public required double? FirstHarvestDay { get; init; }
}
