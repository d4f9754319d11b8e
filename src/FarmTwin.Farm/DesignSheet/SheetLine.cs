namespace FarmTwin.Farm.DesignSheet;

/// <summary>What an installer would say to a figure.</summary>
public enum Verdict
{
    /// <summary>Shown for what it is: nothing is judged by it, or something is missing.</summary>
    NoVerdict,

    /// <summary>Inside its band.</summary>
    Fine,

    /// <summary>It will do, but somebody must keep an eye on it.</summary>
    Watch,

    /// <summary>To be changed before anything is alive.</summary>
    Act,
}

/// <summary>One line of the design sheet: a figure, the band it is read against, where the band comes from, and the verdict.</summary>
public sealed record SheetLine
{
    /// <summary>Group, as the reader sees it.</summary>
    public required string Group { get; init; }

    /// <summary>Stable name for scripts ("turnover.tank-1").</summary>
    public required string Key { get; init; }

    /// <summary>Name that the reader sees.</summary>
    public required string Name { get; init; }

    /// <summary>The figure; null where it cannot be reckoned, infinite where it is never reached.</summary>
    public double? Value { get; init; }

    /// <summary>Its unit; empty for a pure number.</summary>
    public string Unit { get; init; } = string.Empty;

    /// <summary>Low end of the band; null where it is open.</summary>
    public double? Low { get; init; }

    /// <summary>High end of the band; null where it is open.</summary>
    public double? High { get; init; }

    /// <summary>Key of <c>docs/sources.json</c> that the band, or the assumption behind the figure, comes from.</summary>
    public required string Source { get; init; }

    /// <summary>The verdict.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>What it means, or what to do.</summary>
    public string Advice { get; init; } = string.Empty;
}
