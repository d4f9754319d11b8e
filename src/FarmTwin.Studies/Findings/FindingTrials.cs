using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Summaries.Findings;

namespace FarmTwin.Studies.Findings;

/// <summary>Plays a season again with what its findings propose, before anybody is told to do it.</summary>
public static class FindingTrials
{
    // Less than a fiftieth is within what an hour's shift of one event does to a season.
    private const double Noticeable = 0.02;

    /// <summary>The trials of a season's findings, in their order; each proposal alone, under the season's seed and replicate.</summary>
    /// <remarks>The result does not depend on how many threads play.</remarks>
    /// <param name="season">The season, played to its end.</param>
    /// <param name="summary">Its summary.</param>
    /// <param name="library">The library that it was assembled from.</param>
    /// <param name="threads">How many trials may be played at once, from 1.</param>
    public static IReadOnlyList<FindingTrial> Of(Season season, SeasonSummary summary, FarmLibrary library, int threads)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(summary);
        Finding[] findings = [.. SeasonFindings.Of(season, summary, library).Where(f => f.Proposal is not null)];

        // Two findings may propose the same: it is played once.
        Proposal[] played = [.. findings.Select(f => f.Proposal!).DistinctBy(p => p.Words)];
        var summaries = new SeasonSummary[played.Length];
        Parallel.For(0, played.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => summaries[i] = Play(season, library, played[i]));
        return [.. findings.Select(f => Compare(f, summary, summaries[Array.FindIndex(played, p => p.Words == f.Proposal!.Words)]))];
    }

    private static SeasonSummary Play(Season season, FarmLibrary library, Proposal proposal)
    {
        var other = new Season(proposal.Change(season.Parts.Farm), library, season.Seed, season.Replicate);
        other.Advance(season.NowSeconds);
        return SeasonSummary.Of(other, library, string.Empty);
    }

    private static FindingTrial Compare(Finding finding, SeasonSummary before, SeasonSummary after)
    {
        Proposal proposal = finding.Proposal!;

        TrialFigure[] figures = [.. proposal.Figures.Select(f => new TrialFigure(f.Name, f.Unit, f.Read(before), f.Read(after)))];
        bool helped = Better(proposal.Figures[0], figures[0]);
        string shown = string.Join("; ", figures.Where(f => f.Before is not null || f.After is not null).Select(Words));
        string verdict = !helped ? "it does not help here" : Price(proposal, figures) is { } price ? $"it helps, at the price of {price}" : "it helps";
        return new FindingTrial(finding.Sentence, proposal.Words, helped, figures, $"Tried with {proposal.Words}: {shown}; {verdict}.");
    }

    // What became noticeably worse while the complaint became better.
    private static string? Price(Proposal proposal, TrialFigure[] figures)
    {
        string[] worse = [.. Enumerable.Range(1, figures.Length - 1).Where(i => Better(proposal.Figures[i] with { LessIsBetter = !proposal.Figures[i].LessIsBetter }, figures[i])).Select(i => figures[i].Name)];
        return worse.Length == 0 ? null : string.Join(" and ", worse);
    }

    private static bool Better(ProposalFigure asked, TrialFigure figure)
    {
        if (figure.Before is not { } before || figure.After is not { } after)
        {
            // A day that never came is worse than any that did.
            return figure.After is not null && figure.Before is null;
        }

        double gain = asked.LessIsBetter ? before - after : after - before;
        return gain > Noticeable * Math.Abs(before);
    }

    private static string Words(TrialFigure figure) =>
        $"{figure.Name} {Number(figure.Before)} to {Number(figure.After)}{(figure.Unit.Length > 0 ? " " + figure.Unit : string.Empty)}";

    private static string Number(double? value) => value is not { } number ? "never" : Math.Abs(number) < 10 ? $"{number:0.##}" : $"{number:0}";
}
