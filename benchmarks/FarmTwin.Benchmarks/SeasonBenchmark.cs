using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Benchmarks;

/// <summary>Times whole seasons in this process, warm: the best of several, because a shared machine only ever adds time.</summary>
public static class SeasonBenchmark
{
    /// <summary>Reads a scenario.</summary>
    public static FarmDescription Read(string path) => ScenarioReader.Read<FarmDescription>(path).Value;

    /// <summary>Milliseconds of processor time of a season, best and median of <paramref name="runs"/>, after two warm-up seasons.</summary>
    public static (double Best, double Median) Milliseconds(FarmDescription farm, int runs)
    {
        ArgumentNullException.ThrowIfNull(farm);
        var times = new List<double>();
        for (int run = -2; run < runs; run++)
        {
            var season = new Season(farm, ShippedLibrary.Library, 1);
            TimeSpan start = Environment.CpuUsage.UserTime;
            season.AdvanceToEnd();
            if (run >= 0)
            {
                times.Add((Environment.CpuUsage.UserTime - start).TotalMilliseconds);
            }
        }

        times.Sort();
        return (times[0], times[times.Count / 2]);
    }

    /// <summary>Bytes allocated a step over quiet hours: the evenings of ten days, in which nothing happens but the hourly record.</summary>
    public static double BytesPerStep(FarmDescription farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        var season = new Season(farm, ShippedLibrary.Library, 1);
        long bytes = 0;
        for (long day = 60; day < 70; day++)
        {
            season.Advance((day * 86400) + (18 * 3600));
            long before = GC.GetAllocatedBytesForCurrentThread();
            season.Advance((day * 86400) + (23 * 3600));
            bytes += GC.GetAllocatedBytesForCurrentThread() - before;
        }

        return bytes / 50.0;
    }
}
