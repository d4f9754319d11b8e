namespace FarmTwin.Farm.Summaries;

/// <summary>How a salt that nobody wants (sodium, chloride) builds up in the plants' water, and when it matters.</summary>
public sealed record SaltSummary
{
    /// <summary>At the end of the season, mg/L.</summary>
    public required double EndMgPerL { get; init; }

    /// <summary>Mean rise over the last days that were looked at, mg/L a day.</summary>
    public required double RisePerDay { get; init; }

    /// <summary>Days that were looked at: since the loops are one, at most a year.</summary>
    public required int DaysLookedAt { get; init; }

    /// <summary>Where it would come to rest if things went on so, mg/L.</summary>
    public required double? RestsAtMgPerL { get; init; }

    /// <summary>Day on which it passed or will pass the watch level; null where it does not within ten years.</summary>
    public required SaltDate Watch { get; init; }

    /// <summary>The same for the level at which sensitive crops suffer.</summary>
    public required SaltDate Caution { get; init; }

    /// <summary>The same for the limit.</summary>
    public required SaltDate Limit { get; init; }
}

/// <summary>When a level is passed.</summary>
/// <param name="MgPerL">The level, mg/L.</param>
/// <param name="Day">Day of the season, which may lie beyond its end.</param>
/// <param name="Date">The date.</param>
/// <param name="Projected">Whether it lies beyond the season's end.</param>
public sealed record SaltDate(double MgPerL, double? Day, DateOnly? Date, bool Projected);
