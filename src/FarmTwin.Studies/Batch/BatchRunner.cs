using FarmTwin.Farm.Description;
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
    /// <param name="tables">What is kept of every season besides its figures; null for nothing. A run that lacks it is played again.</param>
    /// <param name="cancellation">Stops after the runs that are being played; the folder can be gone on with.</param>
    /// <returns>The result; to be used while this runner is open.</returns>
    /// <exception cref="DescriptionException">Plans cannot be assembled: all that is wrong, a line each; nothing was written.</exception>
    /// <exception cref="BatchFolderException">Another batch works there, or its runs are of another engine.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public BatchResult Run(
        BatchPlan batch, string folder, int threads, Action<BatchProgress>? progress = null, IRunTables? tables = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(batch);
        Assemble(batch);
        _journal?.Dispose();
        _journal = RunJournal.Open(folder, $"version {programVersion}; build {ProgramBuild.Hash}; library {LibraryHash.Of(library)}");
        RunJournal journal = _journal;

        // Replicate by replicate over all plans: a batch that is stopped has some of everything.
        // Two plans that are the same farm under two names are played once, unless each has tables of its own.
        BatchRun[] open = [.. batch.Runs.Where(r => !Finished(r)).DistinctBy(r => (tables is null ? batch.Plans[r.Plan].Hash : batch.Plans[r.Plan].Name, r.Seed, r.Replicate))
            .OrderBy(r => r.Replicate).ThenBy(r => r.Seed).ThenBy(r => r.Plan)];
        int earlier = batch.Runs.Count(Finished);
        int done = earlier;
        int inTrouble = batch.Runs.Count(r => Finished(r) && journal.Read(batch.Plans[r.Plan].Hash, r.Seed, r.Replicate).Trouble is not null);
        progress?.Invoke(new BatchProgress(done, earlier + open.Length, earlier, inTrouble));
        bool[] troubled = new bool[open.Length];
        ParallelRuns.Each(open.Length, threads, Play, Tell, cancellation);
        return new BatchResult(batch, journal);

        bool Finished(BatchRun r) => journal.Has(batch.Plans[r.Plan].Hash, r.Seed, r.Replicate) && tables?.Has(batch.Plans[r.Plan], r) != false;

        void Play(int i)
        {
            BatchRun run = open[i];
            FarmPlan plan = batch.Plans[run.Plan];
            Season season = Season(plan, run);
            SeasonOutcome outcome = SeasonOutcome.Of(season, library);
            tables?.Write(plan, run, season);
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

    // What is wrong with any plan is said at once, not one plan a start.
    private static void Assemble(BatchPlan batch)
    {
        var wrong = new List<string>();
        foreach (FarmPlan plan in batch.Plans)
        {
            try
            {
                plan.Begin(batch.Seeds[0], 1);
            }
            catch (DescriptionException e)
            {
                wrong.Add(e.Message);
            }
        }

        if (wrong.Count > 0)
        {
            throw new DescriptionException(string.Join('\n', wrong));
        }
    }

    // A season that breaks off is a fault of the program: the run is named, so that it can be played alone.
    private static Season Season(FarmPlan plan, BatchRun run)
    {
        try
        {
            return plan.Play(run.Seed, run.Replicate);
        }
        catch (Exception e) when (e is not DescriptionException)
        {
            throw new InvalidOperationException($"{plan.Name}, seed {run.Seed}, replicate {run.Replicate}: the season broke off. {e.Message}", e);
        }
    }

    /// <summary>Lets the folder go.</summary>
    public void Dispose() => _journal?.Dispose();
}
