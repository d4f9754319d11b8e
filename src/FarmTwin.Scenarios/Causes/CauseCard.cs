using FarmTwin.Farm.Description;

namespace FarmTwin.Scenarios.Causes;

/// <summary>What a scenario teaches: a cause, the signs by which it shows, and the remedy.</summary>
/// <remarks>
/// Stands under the key <c>cause</c> of a scenario that extends a base farm: the scenario is the farm with the cause, its parent the farm
/// without it, and <c>remedy.changes</c> what is done about it. A run of the scenario ignores the card.
/// </remarks>
public sealed record CauseCard
{
    /// <summary>Number in the list of causes and effects.</summary>
    [Input("chain", "Number in the list of causes and effects", Low = 1, High = 99)]
    public required int Chain { get; init; }

    /// <summary>The cause.</summary>
    [Input("cause", "The cause, in a few words")]
    public required string Cause { get; init; }

    /// <summary>The effect.</summary>
    [Input("effect", "What it leads to")]
    public required string Effect { get; init; }

    /// <summary>What the scenario does to bring it about.</summary>
    [Input("event", "What this scenario does to bring it about")]
    public string Event { get; init; } = string.Empty;

    /// <summary>Whether the twin can show it.</summary>
    [Input("inReach", "Whether the twin can show it")]
    public bool InReach { get; init; } = true;

    /// <summary>Why it cannot, or what of it is left out.</summary>
    [Input("limits", "Why the twin cannot show it, or what of it is left out")]
    public string Limits { get; init; } = string.Empty;

    /// <summary>Signs, the earliest first.</summary>
    [Input("signs", "By what it shows, the earliest first")]
    public IReadOnlyDictionary<string, CauseSign> Signs { get; init; } = new Dictionary<string, CauseSign>();

    /// <summary>What to do about it.</summary>
    [Input("remedy", "What to do about it")]
    public CauseRemedy? Remedy { get; init; }
}

/// <summary>One sign: a figure of the daily table (or a count of events) beyond a limit within some days.</summary>
public sealed record CauseSign
{
    /// <summary>What a person sees.</summary>
    [Input("about", "What a person sees")]
    public required string About { get; init; }

    /// <summary>Column of the daily table.</summary>
    [Input("column", "A column of days.csv")]
    public string? Column { get; init; }

    /// <summary>Kind of event to count.</summary>
    [Input("event", "Or a kind of line in events.csv, counted")]
    public string? Event { get; init; }

    /// <summary>Which figure of the column within the days.</summary>
    [Input("take", "Which figure of the column within the days")]
    public SignMeasure Take { get; init; } = SignMeasure.Highest;

    /// <summary>From this day.</summary>
    [Input("from", "From this day", Unit = "d", Low = 0, High = 3660)]
    public double FromDay { get; init; }

    /// <summary>Up to this day.</summary>
    [Input("to", "Up to and with this day", Unit = "d", Low = 0, High = 3660)]
    public required double ToDay { get; init; }

    /// <summary>It shows above this.</summary>
    [Input("above", "It shows above this, in the unit of the column", Unit = "1")]
    public double? Above { get; init; }

    /// <summary>It shows below this.</summary>
    [Input("below", "It shows below this, in the unit of the column", Unit = "1")]
    public double? Below { get; init; }

    /// <summary>With the remedy it is gone from this day on.</summary>
    [Input("goneFrom", "With the remedy it no longer shows from this day on; the first day when left out", Unit = "d", Low = 0, High = 3660)]
    public double? GoneFromDay { get; init; }

    /// <summary>With the remedy it is judged up to this day.</summary>
    [Input("goneTo", "With the remedy it is judged up to this day; the last day when left out", Unit = "d", Low = 0, High = 3660)]
    public double? GoneToDay { get; init; }

    /// <summary>Whether a figure lies on the side on which the sign shows.</summary>
    /// <param name="figure">In the unit of the column; not a number never shows.</param>
    public bool ShowsAt(double figure) => Above is { } above ? figure > above : figure < Below;
}

/// <summary>What is done about a cause.</summary>
public sealed record CauseRemedy
{
    /// <summary>In words.</summary>
    [Input("about", "What is done")]
    public required string About { get; init; }
}

/// <summary>A figure of a column over some days.</summary>
public enum SignMeasure
{
    /// <summary>Highest daily value.</summary>
    Highest,

    /// <summary>Lowest daily value.</summary>
    Lowest,

    /// <summary>Mean of the daily values.</summary>
    Mean,

    /// <summary>Sum of the daily values.</summary>
    Total,

    /// <summary>Value of the last day.</summary>
    Last,

    /// <summary>Last value less the first.</summary>
    Rise,
}
