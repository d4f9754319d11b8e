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

    /// <summary>Bytes allocated a step in the nights of ten days, from one to six, where nothing was written to the log: events may allocate,
    /// steps may not.</summary>
    public static double BytesPerStep(FarmDescription farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        const int firstDay = 60;
        const int lastDay = 70;
        var season = new Season(farm, ShippedLibrary.Library, 1);
        long bytes = 0;
        int hours = 0;
        for (int day = firstDay; day < lastDay; day++)
        {
            season.Advance(((day * 24) + 1) * 3600L);
            for (int hour = 1; hour < 6; hour++)
            {
                int lines = season.Log.Events.Count;
                long before = GC.GetAllocatedBytesForCurrentThread();
                season.Advance(((day * 24) + hour + 1) * 3600L);
                long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
                if (season.Log.Events.Count == lines)
                {
                    bytes += allocated;
                    hours++;
                }
            }
        }

        return bytes * farm.StepMinutes / 60 / Math.Max(1, hours);
    }
}
