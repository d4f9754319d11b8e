using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
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
        int[] places = [0, 10, ends[0], ends[0] + 1, ends[0] + 100, ends[1] - 1, ends[1] + 1, ends[2] + 5, journal.Length - 1, journal.Length];
        foreach (int length in places)
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
    public void A_journal_cut_at_any_byte_of_its_last_run_holds_the_runs_before_it_and_takes_the_last_anew()
    {
        Played(new BatchPlan([First], [1], 2), "cut", 1);
        string path = Path.Combine(_folder, "cut", RunJournal.FileName);
        byte[] whole = File.ReadAllBytes(path);
        int last = Array.LastIndexOf(whole, (byte)'\n', whole.Length - 2) + 1;
        using var runner = new BatchRunner(Library, "test");
        SeasonOutcome outcome = SeasonOutcome.Of(First.Play(1, 2), Library);
        string engine = Engine(whole);
        for (int length = last; length < whole.Length; length++)
        {
            File.WriteAllBytes(path, whole[..length]);
            using (var journal = RunJournal.Open(Path.Combine(_folder, "cut"), engine))
            {
                Assert.Equal(1, journal.Count);
                journal.Add(First.Hash, 1, 2, outcome);
            }

            Assert.Equal(whole, File.ReadAllBytes(path));
        }
    }

    [Fact]
    public void Every_plan_that_cannot_be_assembled_is_named_and_nothing_is_written()
    {
        FarmDescription farm = First.Farm with { Stocking = First.Farm.Stocking.ToDictionary(s => s.Key, s => s.Value with { Tank = "no such tank" }) };
        var batch = new BatchPlan([new FarmPlan("one", farm, "1", Library), First, new FarmPlan("two", farm, "2", Library)], [1], 1);
        using var runner = new BatchRunner(Library, "test");
        string message = Assert.Throws<DescriptionException>(() => runner.Run(batch, Path.Combine(_folder, "none"), 1)).Message;
        Assert.StartsWith("one: ", message, StringComparison.Ordinal);
        Assert.Contains("\ntwo: ", message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "none")));
    }

    [Fact]
    public void A_run_whose_tables_are_missing_is_played_for_them_and_written_down_once()
    {
        var batch = new BatchPlan([First], [1], 2);
        string without = Played(batch, "tables", 1);
        byte[] journal = File.ReadAllBytes(Path.Combine(_folder, "tables", RunJournal.FileName));
        using var runner = new BatchRunner(Library, "test");
        var wanting = new PlayedRuns([]) { Missing = r => r.Replicate == 2 };
        runner.Run(batch, Path.Combine(_folder, "tables"), 1, null, wanting);
        runner.Dispose();
        Assert.Equal([new BatchRun(0, 1, 2)], wanting.Runs);
        Assert.Equal(journal, File.ReadAllBytes(Path.Combine(_folder, "tables", RunJournal.FileName)));
        Assert.Equal(without, Played(batch, "tables", 1));
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

    // The engine line of a journal's first line, between its form and its figures.
    private static string Engine(byte[] journal)
    {
        string header = System.Text.Encoding.UTF8.GetString(journal, 0, Array.IndexOf(journal, (byte)'\n'));
        int from = header.IndexOf("; ", StringComparison.Ordinal) + 2;
        return header[from..header.IndexOf("; figures", StringComparison.Ordinal)];
    }

    private sealed class PlayedRuns(List<BatchRun> runs) : IRunTables
    {
        public List<BatchRun> Runs => runs;

        public Func<BatchRun, bool> Missing { get; init; } = _ => false;

        public bool Has(FarmPlan plan, BatchRun run) => !Missing(run);

        public void Write(FarmPlan plan, BatchRun run, Season season) => runs.Add(run);
    }

    // Everything that a result holds, as text.
    private string Played(BatchPlan batch, string folder, int threads, List<BatchRun>? played = null)
    {
        using var runner = new BatchRunner(Library, "test");
        BatchResult result = runner.Run(batch, Path.Combine(_folder, folder), threads, null, played is null ? null : new PlayedRuns(played));
        return string.Join('\n', batch.Runs.Select((r, i) => $"{r} {string.Join(' ', result.FiguresOf(i))} {result.Troubles[i]}"))
            + string.Join('\n', Enumerable.Range(0, batch.Plans.Count).SelectMany(p => result.Weeks(p)).SelectMany(w => w).Select(c => string.Join(' ', c)))
            + string.Join('\n', Enumerable.Range(0, batch.Plans.Count).SelectMany(p => result.Against(p)).Select(d => $"{d.Figure.Key} {d.Band} {d.Difference} {d.Chance}"));
    }
}
