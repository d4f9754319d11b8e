namespace FarmTwin.Scenarios.Units;

/// <summary>What a text turned out to be: a value in the unit asked for, or what is wrong with it.</summary>
/// <param name="Value">The value in the unit asked for; not a number where there is a problem.</param>
/// <param name="Currency">The currency as written; null where it is no money.</param>
/// <param name="Problem">What is wrong, in a clause; null where nothing is.</param>
/// <param name="Expected">What would be right; null where nothing is wrong.</param>
/// <param name="Suggestion">The nearest right text; null where none is near.</param>
public readonly record struct QuantityReading(
    double Value, string? Currency, string? Problem, string? Expected, string? Suggestion)
{
    /// <summary>Whether the value was read.</summary>
    public bool IsRead => Problem is null;
}
