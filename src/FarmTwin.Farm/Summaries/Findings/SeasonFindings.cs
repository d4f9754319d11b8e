using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>The findings of a season with what they propose.</summary>
public static class SeasonFindings
{
    /// <summary>The same findings, in the same order, as in <see cref="SeasonSummary.Findings"/>.</summary>
    /// <param name="season">The season.</param>
    /// <param name="summary">Its summary.</param>
    /// <param name="library">The library that it was assembled from.</param>
    public static IReadOnlyList<Finding> Of(Season season, SeasonSummary summary, FarmLibrary library) =>
        FindingList.Of(season, summary, new RecordView(season), SummaryBands.From(library));
}
