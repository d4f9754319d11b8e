using BenchmarkDotNet.Attributes;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Benchmarks;

/// <summary>The same pieces under BenchmarkDotNet, with what they allocate: <c>-- dotnet</c>.</summary>
[MemoryDiagnoser]
public class Benchmarks
{
    private readonly int _events = 100_000;
        private readonly FarmDescription _farm = SeasonBenchmark.Read("scenarios/first-season.json");
    private readonly OneLoopParameters _loop;

    /// <summary>Reads the example farm.</summary>
    public Benchmarks() => _loop = new OneLoopParameters(new Season(_farm, ShippedLibrary.Library, 1).Parts);

    /// <summary>Assembles the example farm.</summary>
    [Benchmark]
    public Season Assemble() => new(_farm, ShippedLibrary.Library, 1);

    /// <summary>Assembles it and plays its 365 days.</summary>
    [Benchmark(Baseline = true)]
    public Season SeasonOf365Days()
    {
        var season = new Season(_farm, ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        return season;
    }

    /// <summary>The loop that the script plays too, 365 days.</summary>
    [Benchmark]
    public OneLoop OneLoopOf365Days() => OneLoop.Run(_loop);

    /// <summary>A hundred thousand events of an M/M/1 queue.</summary>
    [Benchmark]
    public double QueueOf100000Events() => CalendarBenchmark.RunQueue(_events);
}
