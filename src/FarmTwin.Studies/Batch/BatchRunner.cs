using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Studies.Batch;

/// <summary>Plays a batch into a folder: what is finished there is not played again, what is not is played on all threads.</summary>
public sealed class BatchRunner(FarmLibrary library, string programVersion) : IDisposable
{
    private RunJournal? _journal;

    /// <summary>Plays what is not yet finished.</summary>
    /// <param name="batch">The batch. Every plan is assembled once before anything is written, so that one that cannot be played is refused.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="threads">How many seasons at once, from 1.</param>
    /// <param name="progress">Told after every run.</param>
    /// <param name="played">Given every season that is played, on the thread that played it, before it counts as finished; for daily tables.</param>
    /// <param name="cancellation">Stops after the runs that are being played; the folder can be gone on with.</param>
    /// <returns>The result; to be used while this runner is open.</returns>
    /// <exception cref="BatchFolderException">Another batch works there, or its runs are of another engine.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BatchResult Run(
        BatchPlan batch, string folder, int threads, Action<BatchProgress>? progress = null, Action<BatchRun, Season>? played = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(batch);
        foreach (FarmPlan plan in batch.Plans)
        {
            plan.Begin(batch.Seeds[0], 1);
        }

        _journal?.Dispose();
        _journal = RunJournal.Open(folder, $"version {programVersion}; library {LibraryHash.Of(library)}");
        RunJournal journal = _journal;

        // Replicate by replicate over all plans: a batch that is stopped has some of everything.
        // Two plans that are the same farm under two names are played once.
        BatchRun[] open = [.. batch.Runs.Where(r => !Finished(r)).DistinctBy(r => (batch.Plans[r.Plan].Hash, r.Seed, r.Replicate))
            .OrderBy(r => r.Replicate).ThenBy(r => r.Seed).ThenBy(r => r.Plan)];
        int earlier = batch.Runs.Count(Finished);
        int done = earlier;
        int inTrouble = batch.Runs.Count(r => Finished(r) && journal.Read(batch.Plans[r.Plan].Hash, r.Seed, r.Replicate).Trouble is not null);
        progress?.Invoke(new BatchProgress(done, earlier + open.Length, earlier, inTrouble));
        bool[] troubled = new bool[open.Length];
        ParallelRuns.Each(open.Length, threads, Play, Tell, cancellation);
        return new BatchResult(batch, journal);

        bool Finished(BatchRun r) => journal.Has(batch.Plans[r.Plan].Hash, r.Seed, r.Replicate);

        void Play(int i)
        {
            BatchRun run = open[i];
            FarmPlan plan = batch.Plans[run.Plan];
            Season season = plan.Play(run.Seed, run.Replicate);
            SeasonOutcome outcome = SeasonOutcome.Of(season, library);
            played?.Invoke(run, season);
            journal.Add(plan.Hash, run.Seed, run.Replicate, outcome);
            troubled[i] = outcome.Trouble is not null;
        }

        void Tell(int i)
        {
            done++;
            inTrouble += troubled[i] ? 1 : 0;
            progress?.Invoke(new BatchProgress(done, earlier + open.Length, earlier, inTrouble));
        }
    }

    /// <summary>Lets the folder go.</summary>
    public void Dispose() => _journal?.Dispose();
}
