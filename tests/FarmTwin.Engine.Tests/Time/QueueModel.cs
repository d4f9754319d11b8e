using FarmTwin.Engine.Chance;

namespace FarmTwin.Engine.Tests.Time;

/// <summary>A station with one queue, first come first served, run on the simulation's own events.</summary>
internal sealed class QueueModel : IHybridModel
{
    /// <summary>So fine that rounding a variate to whole ticks is far below the statistical error.</summary>
    public const double TicksPerUnit = 1e9;

    // A server is freed before an arrival of the same instant looks for one.
    private const int DeparturePhase = 0;
    private const int ArrivalPhase = 1;
    private const int BatchPhase = 2;
    private const int Arrival = 0;
    private const int Departure = 1;
    private const int CloseBatch = 2;

    private readonly int _servers;
    private readonly int _capacity;
    private readonly Func<uint, double> _interarrival;
    private readonly Func<uint, double> _service;
    private readonly Queue<long> _waiting = new();
    private readonly List<double> _sojourns = [];
    private uint _arrivals;
    private uint _services;
    private int _inSystem;
    private double _areaInSystem;
    private double _areaWaiting;
    private double _waitSum;
    private int _batchArrivals;
    private int _batchDelayed;
    private int _batchBlocked;

    public QueueModel(int servers, int capacity, Func<uint, double> interarrival, Func<uint, double> service)
    {
        _servers = servers;
        _capacity = capacity == 0 ? int.MaxValue : capacity;
        _interarrival = interarrival;
        _service = service;
    }

    public Dictionary<string, List<double>> Batches { get; } = new(StringComparer.Ordinal)
    {
        ["L"] = [], ["Lq"] = [], ["W"] = [], ["Wq"] = [], ["W95"] = [], ["delayed"] = [], ["blocked"] = [],
    };

    public double LongestWaitUnits { get; private set; }

    public long LongestStepSeconds => long.MaxValue;

    public static Simulation Start(QueueModel model, double batchUnits)
    {
        var simulation = new Simulation(model, new SimulationOptions { RecordIntervalSeconds = 0 });
        simulation.Calendar.Schedule(Ticks(model._interarrival(0)), ArrivalPhase, Arrival);
        long batch = Ticks(batchUnits);
        simulation.Routines.Add(new Routine(batch, batch, BatchPhase, CloseBatch));
        return simulation;
    }

    public static Func<uint, double> Exponential(RandomStreams streams, string process, double mean, uint entity = 0)
    {
        uint id = StableHash.Of(process);
        return ordinal => -mean * Math.Log(streams.Uniform(id, entity, ordinal));
    }

    public void Advance(long fromSeconds, long toSeconds)
    {
        double ticks = toSeconds - fromSeconds;
        _areaInSystem += _inSystem * ticks;
        _areaWaiting += _waiting.Count * ticks;
    }

    public void Fire(in CalendarEntry entry, Simulation simulation)
    {
        switch (entry.Kind)
        {
            case Arrival:
                Arrive(entry.TimeSeconds, simulation.Calendar);
                simulation.Calendar.Schedule(entry.TimeSeconds + Ticks(_interarrival(++_arrivals)), ArrivalPhase, Arrival);
                break;
            case Departure:
                _inSystem--;
                if (_waiting.TryDequeue(out long arrived))
                {
                    Serve(arrived, entry.TimeSeconds, simulation.Calendar);
                }

                break;
            default:
                Close(simulation.Routines.NextSeconds(0) - entry.TimeSeconds);
                break;
        }
    }

    public void Record(long timeSeconds)
    {
    }

    private static long Ticks(double units) => (long)Math.Round(units * TicksPerUnit);

    private void Arrive(long now, Calendar calendar)
    {
        _batchArrivals++;
        if (_inSystem >= _capacity)
        {
            _batchBlocked++;
            return;
        }

        _inSystem++;
        if (_inSystem <= _servers)
        {
            Serve(now, now, calendar);
        }
        else
        {
            _batchDelayed++;
            _waiting.Enqueue(now);
        }
    }

    private void Serve(long arrived, long now, Calendar calendar)
    {
        double wait = (now - arrived) / TicksPerUnit;
        double service = _service(_services++);
        _waitSum += wait;
        LongestWaitUnits = Math.Max(LongestWaitUnits, wait);
        _sojourns.Add(wait + service);
        calendar.Schedule(now + Ticks(service), DeparturePhase, Departure);
    }

    private void Close(double batchTicks)
    {
        _sojourns.Sort();
        Batches["L"].Add(_areaInSystem / batchTicks);
        Batches["Lq"].Add(_areaWaiting / batchTicks);
        Batches["W"].Add(_sojourns.Average());
        Batches["Wq"].Add(_waitSum / _sojourns.Count);
        Batches["W95"].Add(_sojourns[(int)(0.95 * _sojourns.Count)]);
        Batches["delayed"].Add((double)_batchDelayed / _batchArrivals);
        Batches["blocked"].Add((double)_batchBlocked / _batchArrivals);
        _areaInSystem = _areaWaiting = _waitSum = 0;
        _batchArrivals = _batchDelayed = _batchBlocked = 0;
        _sojourns.Clear();
    }
}
