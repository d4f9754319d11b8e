namespace FarmTwin.Farm.Summaries;

/// <summary>The solids of a season, and what came back of them.</summary>
public sealed record SolidsSummary
{
    /// <summary>Solids carried from the filters to mineralization, kg dry matter.</summary>
    public required double CarriedKg { get; init; }

    /// <summary>Nitrogen in them, g.</summary>
    public required double CarriedNitrogenG { get; init; }

    /// <summary>That nitrogen as a share of the feed's; null without feed.</summary>
    public required double? CarriedShareOfFeedNitrogen { get; init; }

    /// <summary>Washes.</summary>
    public required double Washes { get; init; }

    /// <summary>Washes put off because no tank could take the sludge.</summary>
    public required double WashesPutOff { get; init; }

    /// <summary>Decants.</summary>
    public required double Decants { get; init; }

    /// <summary>Decants refused by a gate.</summary>
    public required int DecantsRefused { get; init; }

    /// <summary>Clear water decanted, L.</summary>
    public required double DecantedL { get; init; }

    /// <summary>Dissolved nitrogen returned with it, g.</summary>
    public required double ReturnedNitrogenG { get; init; }

    /// <summary>Dissolved phosphorus returned with it, g.</summary>
    public required double ReturnedPhosphorusG { get; init; }

    /// <summary>Dissolved potassium returned with it, g.</summary>
    public required double ReturnedPotassiumG { get; init; }

    /// <summary>Returned nitrogen as a share of the feed's; null without feed.</summary>
    public required double? ReturnedShareOfFeedNitrogen { get; init; }

    /// <summary>Thick sludge taken to compost, kg dry matter.</summary>
    public required double CompostedKg { get; init; }

    /// <summary>Day on which sludge first went to compost; null where none did.</summary>
    public required double? FirstCompostDay { get; init; }

    /// <summary>Times that sludge went to compost.</summary>
    public required int CompostTrips { get; init; }
}
