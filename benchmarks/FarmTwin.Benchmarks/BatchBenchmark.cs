using System.Diagnostics;
using System.Globalization;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Benchmarks;

/// <summary>Plays replicates of one plan through the batch on two threads, in a process of its own, whose peak of memory is thus the batch's.</summary>
public static class BatchBenchmark
{
    /// <summary>The first argument that makes this program the measured process.</summary>
    public const string Argument = "batch";

    private const int Threads = 2;

    /// <summary>The measured process: plays and prints processor seconds, real seconds, and the peak of memory in bytes.</summary>
    public static int Play(string scenario, int runs)
    {
        string folder = Directory.CreateTempSubdirectory("farmtwin").FullName;
        long start = Stopwatch.GetTimestamp();
        var plan = FarmPlan.Of(ScenarioReader.Read<FarmDescription>(scenario), ShippedLibrary.Library);
        using (var runner = new BatchRunner(ShippedLibrary.Library, "benchmark"))
        {
            runner.Run(new BatchPlan([plan], [1], runs), folder, Threads);
        }

        double real = Stopwatch.GetElapsedTime(start).TotalSeconds;
        Directory.Delete(folder, recursive: true);
        using Process own = Process.GetCurrentProcess();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{own.TotalProcessorTime.TotalSeconds:R} {real:R} {own.PeakWorkingSet64}"));
        return 0;
    }

    /// <summary>Measures a number of runs.</summary>
    public static (double ProcessorSeconds, double RealSeconds, double PeakMegabytes) Measure(string scenario, int runs)
    {
        using var process = Process.Start(new ProcessStartInfo(
            "dotnet", [typeof(BatchBenchmark).Assembly.Location, Argument, scenario, runs.ToString(CultureInfo.InvariantCulture)])
        { RedirectStandardOutput = true })!;
        string[] words = process.StandardOutput.ReadToEnd().Split(' ');
        process.WaitForExit();
        if (process.ExitCode != 0 || words.Length != 3)
        {
            throw new InvalidOperationException($"A batch of {runs} runs ended with {process.ExitCode}.");
        }

        double[] numbers = [.. words.Select(w => double.Parse(w, CultureInfo.InvariantCulture))];
        return (numbers[0], numbers[1], numbers[2] / (1024 * 1024));
    }
}
