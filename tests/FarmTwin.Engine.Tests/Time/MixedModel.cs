using FarmTwin.Engine.Chance;

namespace FarmTwin.Engine.Tests.Time;

/// <summary>A warmed tank with a thermostat of two guards, chance disturbances, a timer that is put off, a record and a ledger.</summary>
internal sealed class MixedModel : IHybridModel, IGuardedModel, IRewindable
{
    private const int Tick = 1;
    private const int Disturb = 2;
    private const int HeatOn = 3;
    private const int HeatOff = 4;
    private const int Timer = 5;

    private static readonly uint Process = StableHash.Of("mixed");
    private static readonly RecordedColumn[] Columns =
        [new("temperature", "degC", ColumnKind.Mean), new("heat", "kWh", ColumnKind.Sum)];

    private readonly RandomStreams _streams;
    private readonly Recorder _recorder = new(Columns, 4000);
    private readonly Ledger _heat = new("heat", ["heater", "loss"]);
    private readonly Recorder _markedRecorder = new(Columns, 1);
    private readonly Ledger _markedHeat = new("heat", ["heater", "loss"]);
    private double _temperature = 20;
    private double _markedTemperature;
    private double _outside = 10;
    private bool _heating;
    private uint _draws;
    private EventHandle _timer;

    public MixedModel(ulong seed)
    {
        _streams = new RandomStreams(seed, 0);
        _heat.OpeningStock = _temperature;
    }

    public long LongestStepSeconds => _heating ? 300 : 900;

    /// <summary>A digest of all that happened, sensitive to order and to the last bit.</summary>
    public ulong Digest { get; private set; } = 14695981039346656037;

    public int EventCount { get; private set; }

    public double ClosureError => _heat.ClosureError(_temperature);

    public ReadOnlySpan<double> LastRow => _recorder.Row(_recorder.RowCount - 1);

    public static Simulation Start(MixedModel model)
    {
        var simulation = new Simulation(model, new SimulationOptions { GuardPhase = 4 });
        simulation.Guards.Add(new Guard("cold", 18, 1, GuardDirection.Falling, HeatOn) { Localise = true });
        simulation.Guards.Add(new Guard("warm", 22, 1, GuardDirection.Rising, HeatOff) { Localise = true });
        simulation.Routines.Add(new Routine(0, 7200, 2, Tick));
        simulation.Calendar.Schedule(500, 1, Disturb);
        model._timer = simulation.Calendar.Schedule(50_000, 3, Timer);
        return simulation;
    }

    public void Advance(long fromSeconds, long toSeconds)
    {
        double hours = (toSeconds - fromSeconds) / 3600.0;
        double gain = _heating ? 5 : 0;
        double before = _temperature;
        double level = _outside + (gain / 0.2);
        _temperature = level + ((before - level) * Math.Exp(-0.2 * hours));
        double added = gain * hours;
        double lost = before + added - _temperature;
        _heat.In(0, added + Math.Max(0, -lost));
        _heat.Out(1, Math.Max(0, lost));
        _recorder.Accumulate(0, (before + _temperature) / 2, toSeconds - fromSeconds);
        _recorder.Accumulate(1, added, 0);
    }

    public void Fire(in CalendarEntry entry, Simulation simulation)
    {
        EventCount++;
        Mix((ulong)entry.TimeSeconds);
        Mix((ulong)((entry.Phase * 100) + entry.Kind));
        Mix(BitConverter.DoubleToUInt64Bits(_temperature));
        switch (entry.Kind)
        {
            case Disturb:
                _outside = 10 + (3 * _streams.Normal(Process, 0, _draws));
                long wait = 1 + (long)(-4000 * Math.Log(_streams.Uniform(Process, 1, _draws++)));
                simulation.Calendar.Schedule(entry.TimeSeconds + wait, 1, Disturb);
                if (simulation.Calendar.Cancel(_timer))
                {
                    _timer = simulation.Calendar.Schedule(entry.TimeSeconds + 10_000, 3, Timer);
                }

                break;
            case Timer:
                _timer = simulation.Calendar.Schedule(entry.TimeSeconds + 20_000, 3, Timer);
                break;
            case HeatOn or HeatOff:
                _heating = entry.Kind == HeatOn;
                break;
            default:
                break;
        }
    }

    public void Record(long timeSeconds)
    {
        if (timeSeconds % 3600 == 0)
        {
            _recorder.CloseRow();
            Mix(BitConverter.DoubleToUInt64Bits(_recorder.Row(_recorder.RowCount - 1)[1]));
        }
    }

    public double GuardValue(int guard) => _temperature;

    public void Mark()
    {
        _markedTemperature = _temperature;
        _markedHeat.CopyFrom(_heat);
        _markedRecorder.CopyOpenIntervalFrom(_recorder);
    }

    public void Rewind()
    {
        _temperature = _markedTemperature;
        _heat.CopyFrom(_markedHeat);
        _recorder.CopyOpenIntervalFrom(_markedRecorder);
    }

    public void CopyFrom(MixedModel other)
    {
        _temperature = other._temperature;
        _outside = other._outside;
        _heating = other._heating;
        _draws = other._draws;
        _timer = other._timer;
        _recorder.CopyFrom(other._recorder);
        _heat.CopyFrom(other._heat);
        Digest = other.Digest;
        EventCount = other.EventCount;
    }

    private void Mix(ulong word) => Digest = unchecked((Digest ^ word) * 1099511628211);
}
