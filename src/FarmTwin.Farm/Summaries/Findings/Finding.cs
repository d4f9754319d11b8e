namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>A sentence about a season and, where it proposes a change that can be played, the change.</summary>
/// <param name="Sentence">Day, number, cause, what to do.</param>
/// <param name="Proposal">The change; null where the sentence proposes none, or one that is not in the farm's description.</param>
public sealed record Finding(string Sentence, Proposal? Proposal);
