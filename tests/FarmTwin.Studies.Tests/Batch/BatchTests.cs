using FarmTwin.Farm.Library;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Studies.Tests.Batch;

public sealed class BatchTests : IDisposable
{
    private static readonly FarmLibrary Library = ShippedLibrary.Library;
    private static readonly FarmPlan First = ShippedScenarios.Plan("first-season", 25);
    private static readonly FarmPlan Overstocked = ShippedScenarios.Plan("overstocked", 25);
    private readonly string _folder = Directory.CreateTempSubdirectory("farmtwin-batch").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Results_are_the_same_with_1_2_4_and_8_threads()
    {
        var batch = new BatchPlan([First, Overstocked], [1, 2], 2);
        string one = Played(batch, "1", 1);
        Assert.Equal(one, Played(batch, "2", 2));
        Assert.Equal(one, Played(batch, "4", 4));
        Assert.Equal(one, Played(batch, "8", 8));
    }

    [Fact]
    public void A_batch_that_was_torn_anywhere_goes_on_to_the_same_result_and_plays_nothing_twice()
    {
        var batch = new BatchPlan([First], [1], 3);
        string whole = Played(batch, "whole", 1);
        byte[] journal = File.ReadAllBytes(Path.Combine(_folder, "whole", RunJournal.FileName));
        int[] ends = [.. Enumerable.Range(0, journal.Length).Where(i => journal[i] == '\n')];
        Assert.Equal(4, ends.Length);
        foreach (int length in new[] { 0, 10, ends[0], ends[0] + 1, ends[0] + 100, ends[1] - 1, ends[1] + 1, ends[2] + 5, journal.Length - 1, journal.Length })
        {
            string folder = Path.Combine(_folder, $"torn {length}");
            Directory.CreateDirectory(folder);
            File.WriteAllBytes(Path.Combine(folder, RunJournal.FileName), journal[..length]);
            int kept = Math.Max(0, ends.Count(e => e < length) - 1);
            var played = new List<BatchRun>();
            Assert.Equal(whole, Played(batch, $"torn {length}", 1, played));
            Assert.Equal(3 - kept, played.Count);
            Assert.Equal(journal, File.ReadAllBytes(Path.Combine(folder, RunJournal.FileName)));
        }
    }

    [Fact]
    public void A_stopped_batch_goes_on_where_it_was()
    {
        var batch = new BatchPlan([First, Overstocked], [1], 2);
        using var stop = new CancellationTokenSource();
        using (var runner = new BatchRunner(Library, "test"))
        {
            Assert.Throws<OperationCanceledException>(() => runner.Run(batch, Path.Combine(_folder, "stopped"), 1, p =>
            {
                if (p.Done == 2)
                {
                    stop.Cancel();
                }
            }, null, stop.Token));
        }

        var played = new List<BatchRun>();
        Assert.Equal(Played(batch, "straight", 1), Played(batch, "stopped", 1, played));
        Assert.Equal(2, played.Count);
    }

    [Fact]
    public void More_replicates_and_plans_later_play_only_what_is_new()
    {
        Played(new BatchPlan([First], [1], 1), "grown", 1);
        var played = new List<BatchRun>();
        Played(new BatchPlan([First, Overstocked], [1], 2), "grown", 1, played);
        Assert.Equal(3, played.Count);
    }

    [Fact]
    public void Two_batches_in_one_folder_refuse_each_other()
    {
        string folder = Path.Combine(_folder, "shared");
        using (RunJournal.Open(folder, "engine"))
        {
            BatchFolderException refused = Assert.Throws<BatchFolderException>(() => RunJournal.Open(folder, "engine"));
            Assert.Contains("another batch is working in this folder", refused.Message, StringComparison.Ordinal);
        }

        RunJournal.Open(folder, "engine").Dispose();
    }

    [Fact]
    public void Runs_of_another_engine_or_a_damaged_line_are_refused_with_a_cure()
    {
        var batch = new BatchPlan([First], [1], 2);
        Played(batch, "old", 1);
        using var other = new BatchRunner(Library, "another version");
        Assert.Contains("--out", Assert.Throws<BatchFolderException>(() => other.Run(batch, Path.Combine(_folder, "old"), 1)).Message, StringComparison.Ordinal);
        string path = Path.Combine(_folder, "old", RunJournal.FileName);
        byte[] bytes = File.ReadAllBytes(path);
        bytes[Array.IndexOf(bytes, (byte)'\n') + 40] ^= 1;
        File.WriteAllBytes(path, bytes);
        using var same = new BatchRunner(Library, "test");
        Assert.Contains("damaged", Assert.Throws<BatchFolderException>(() => same.Run(batch, Path.Combine(_folder, "old"), 1)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_against_its_own_copy_differs_by_nothing()
    {
        var copy = new FarmPlan("copy", First.Farm, "copy", Library);
        using var runner = new BatchRunner(Library, "test");
        BatchResult result = runner.Run(new BatchPlan([First, copy], [1], 3), Path.Combine(_folder, "copy"), 2);
        Assert.All(result.Against(1), d =>
        {
            Assert.False(d.StandsOut);
            Assert.True(d.Difference.Pairs == 0 || d.Difference is { Mean: 0, ShareHigher: 0.5 });
        });
        Assert.InRange(result.WorstClosure, 0, 1e-9);
    }

    [Fact]
    public void Plans_of_one_name_are_refused() =>
        Assert.Contains("Two plans are called", Assert.Throws<ArgumentException>(() => new BatchPlan([First, First], [1], 1)).Message, StringComparison.Ordinal);

    [Fact]
    public void The_error_of_the_first_piece_in_order_is_the_one_thrown()
    {
        InvalidOperationException error = Assert.Throws<InvalidOperationException>(() => ParallelRuns.Play<int>(4, 4, i => throw new InvalidOperationException($"{i}")));
        Assert.Equal("0", error.Message);
        Assert.Equal([0, 1, 4, 9], ParallelRuns.Play(4, 3, i => i * i));
    }

    // Everything that a result holds, as text.
    private string Played(BatchPlan batch, string folder, int threads, List<BatchRun>? played = null)
    {
        using var runner = new BatchRunner(Library, "test");
        BatchResult result = runner.Run(batch, Path.Combine(_folder, folder), threads, null, played is null ? null : (run, _) => played.Add(run));
        return string.Join('\n', batch.Runs.Select((r, i) => $"{r} {string.Join(' ', result.FiguresOf(i))} {result.Troubles[i]}"))
            + string.Join('\n', Enumerable.Range(0, batch.Plans.Count).SelectMany(p => result.Weeks(p)).SelectMany(w => w).Select(c => string.Join(' ', c)))
            + string.Join('\n', Enumerable.Range(0, batch.Plans.Count).SelectMany(p => result.Against(p)).Select(d => $"{d.Figure.Key} {d.Band} {d.Difference} {d.Chance}"));
    }
}
