namespace FarmTwin.Farm.Summaries;

/// <summary>What came of a finding's proposal when the season was played again with it, under the same seed.</summary>
/// <param name="Finding">The finding's sentence.</param>
/// <param name="Change">What was changed.</param>
/// <param name="Helped">Whether the first figure became noticeably better.</param>
/// <param name="Figures">Figures before and after; the first is what the change is for.</param>
/// <param name="Says">All of that in a sentence.</param>
public sealed record FindingTrial(string Finding, string Change, bool Helped, IReadOnlyList<TrialFigure> Figures, string Says);

/// <summary>A figure before and after a change; null where the season has none.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Unit">Its unit; empty where it needs none.</param>
/// <param name="Before">In the season itself.</param>
/// <param name="After">In the season with the change.</param>
public sealed record TrialFigure(string Name, string Unit, double? Before, double? After);
