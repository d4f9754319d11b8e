using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Outcomes;

/// <summary>What a study keeps of a season: small, whatever the season's length.</summary>
/// <param name="Figures">The headline figures, in the order of <see cref="Headlines.All"/>; not a number where there is none.</param>
/// <param name="Weeks">The curves, [curve][week], in the order of <see cref="WeeklySeries.All"/>.</param>
/// <param name="WorstClosure">The largest closure error of any ledger, as a share of its throughput.</param>
/// <param name="Trouble">What went so badly wrong that the owner would call; null where nothing did.</param>
public sealed record SeasonOutcome(double[] Figures, double[][] Weeks, double WorstClosure, string? Trouble)
{
    /// <summary>Takes it from a season as it stands.</summary>
    /// <param name="season">The season, played.</param>
    /// <param name="library">The library that it was assembled from.</param>
    public static SeasonOutcome Of(Season season, FarmLibrary library)
    {
        SeasonSummary summary = SeasonSummary.Of(season, library, string.Empty);
        var record = new RecordView(season);
        return new SeasonOutcome(
            [.. Headlines.All.Select(h => h.Read(summary, record))],
            WeeklySeries.Of(season, record),
            summary.Ledgers.Values.Max(l => l.Closure),
            Outcomes.Trouble.Of(summary));
    }

    /// <summary>A headline figure.</summary>
    /// <param name="key">Its key in <see cref="Headlines.All"/>.</param>
    public double this[string key] => Figures[Headlines.IndexOf(key)];
}
