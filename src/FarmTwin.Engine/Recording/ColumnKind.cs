namespace FarmTwin.Engine;

/// <summary>What a recorded column states about its interval.</summary>
public enum ColumnKind
{
    /// <summary>The last value given.</summary>
    Instant,

    /// <summary>The time-weighted mean; values of no duration do not count.</summary>
    Mean,

    /// <summary>The lowest value given.</summary>
    Minimum,

    /// <summary>The highest value given.</summary>
    Maximum,

    /// <summary>The sum of the amounts given, whatever their duration; 0 if there was none.</summary>
    Sum,
}
