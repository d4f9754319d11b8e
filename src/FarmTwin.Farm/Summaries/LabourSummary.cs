namespace FarmTwin.Farm.Summaries;

/// <summary>People's hours of a season.</summary>
public sealed record LabourSummary
{
    /// <summary>All hours.</summary>
    public required double Hours { get; init; }

    /// <summary>Hours by chore; a chore that was never done is left out.</summary>
    public required IReadOnlyDictionary<string, double> HoursByChore { get; init; }

    /// <summary>Hours by what they served: plants, fish, water, rounds, sales.</summary>
    public required IReadOnlyDictionary<string, double> HoursByArea { get; init; }

    /// <summary>Hours of the ordinary week: the median of the full weeks; null where none has passed.</summary>
    public required double? OrdinaryWeekHours { get; init; }

    /// <summary>Hours of the busiest full week.</summary>
    public required double? BusiestWeekHours { get; init; }

    /// <summary>The busiest week, from 1.</summary>
    public required int? BusiestWeek { get; init; }

    /// <summary>Hours a week that the people on the farm have; null where nobody is described.</summary>
    public required double? HoursThereAWeek { get; init; }

    /// <summary>Weeks, from 1, that need more.</summary>
    public required IReadOnlyList<int> WeeksShort { get; init; }
}
