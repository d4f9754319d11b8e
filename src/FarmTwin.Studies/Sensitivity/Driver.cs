namespace FarmTwin.Studies.Sensitivity;

/// <summary>How much an input, or a number that nobody knows, moves the figures.</summary>
/// <param name="Name">The factor's or the unknown's name.</param>
/// <param name="IsUnknown">Whether it is drawn and not chosen.</param>
/// <param name="Correlations">Rank correlation with each figure looked at; not a number where there is none to see.</param>
public sealed record Driver(string Name, bool IsUnknown, IReadOnlyList<double> Correlations);
