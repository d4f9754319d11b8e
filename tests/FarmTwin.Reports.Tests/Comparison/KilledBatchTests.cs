using System.Diagnostics;
using FarmTwin.Studies.Batch;

namespace FarmTwin.Reports.Tests.Comparison;

public sealed class KilledBatchTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("farmtwin-killed").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_batch_that_was_killed_goes_on_to_the_bytes_of_one_that_was_not_and_keeps_what_was_finished()
    {
        string killed = Path.Combine(_folder, "killed");
        string journal = Path.Combine(killed, RunJournal.FileName);
        using (Process process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "farmtwin.dll"), .. Arguments(killed, 2)])
        { RedirectStandardError = true, RedirectStandardOutput = true })!)
        {
            while (!process.HasExited && Lines(journal) < 3)
            {
                Thread.Sleep(10);
            }

            Assert.False(process.HasExited, "The batch ended before it could be killed.");
            ProgramRun second = ProgramRun.Of(Arguments(killed, 1));
            Assert.Equal(Cli.CommandLine.BadInput, second.ExitCode);
            Assert.Contains("another batch is working in this folder", second.Error, StringComparison.Ordinal);
            process.Kill();
            process.WaitForExit();
        }

        byte[] before = File.ReadAllBytes(journal);
        int whole = Array.LastIndexOf(before, (byte)'\n') + 1;
        string straight = Path.Combine(_folder, "straight");
        Assert.Equal(0, ProgramRun.Of(Arguments(killed, 4)).ExitCode);
        Assert.Equal(0, ProgramRun.Of(Arguments(straight, 1)).ExitCode);
        Assert.Equal(before[..whole], File.ReadAllBytes(journal)[..whole]);
        string[] names = [.. Directory.EnumerateFiles(straight, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(straight, f))
            .Where(f => f != RunJournal.FileName)];
        Assert.Contains("runs.parquet", names);
        Assert.Equal(8, names.Count(n => n.StartsWith("days", StringComparison.Ordinal)));
        Assert.All(names, name => Assert.Equal(File.ReadAllBytes(Path.Combine(straight, name)), File.ReadAllBytes(Path.Combine(killed, name))));
    }

    private static string[] Arguments(string folder, int threads) =>
        ["batch", Repository.FirstSeason, Path.Combine(Repository.Scenarios, "overstocked.json"), "--replicates", "4", "--days", "40", "--daily", "--no-plots",
            "--threads", $"{threads}", "--out", folder];

    private static int Lines(string path)
    {
        if (!File.Exists(path))
        {
            return 0;
        }

        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var reader = new StreamReader(file);
        return reader.ReadToEnd().Count(c => c == '\n');
    }
}
