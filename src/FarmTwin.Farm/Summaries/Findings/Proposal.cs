using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>A change of the farm that a finding proposes, so that it can be tried before it is believed.</summary>
/// <param name="Words">What is changed, as read after "Tried with" ("15% fewer boards of lettuce in those stages of the plan").</param>
/// <param name="Change">The farm with the change; the season is then played anew under the same seed.</param>
/// <param name="Figures">What to look at before and after; the first is what the change is for.</param>
public sealed record Proposal(string Words, Func<FarmDescription, FarmDescription> Change, IReadOnlyList<ProposalFigure> Figures);

/// <summary>A figure that shows whether a proposal helped.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Unit">Its unit; empty for a day or a count that needs none.</param>
/// <param name="LessIsBetter">Whether less is better.</param>
/// <param name="Read">Reads it from a summary; null where the season has none.</param>
public sealed record ProposalFigure(string Name, string Unit, bool LessIsBetter, Func<SeasonSummary, double?> Read);
