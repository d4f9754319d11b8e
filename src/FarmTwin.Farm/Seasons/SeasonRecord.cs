using FarmTwin.Engine;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Seasons.Records;

namespace FarmTwin.Farm.Seasons;

/// <summary>What a season leaves behind: a row a day, a row an hour, and the peaks of the hourly means.</summary>
/// <remarks>A loop's figure is the mean over its basins by volume; a tank figure is the worst tank's.</remarks>
public sealed class SeasonRecord
{
    private readonly RecordedWater _water;
    private readonly Column[] _columns;
    private readonly double[] _marks;
    private readonly int[] _stepColumns;
    private readonly Func<double>[] _stepValues;
    private readonly Func<double>[] _hourValues;
    private long _lastHour = -1;

    /// <summary>Prepares the record of a season.</summary>
    public SeasonRecord(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _water = new RecordedWater(farm);
        ColumnList columns = Columns(farm, _water);
        _columns = columns.Days;
        Column[] hours = columns.Hours;
        int days = (int)farm.Parts.Farm.LengthDays;
        Days = new Recorder([.. _columns.Select(c => c.Recorded)], days + 1);
        Weeks = new WeekRecord(farm);
        Hours = new Recorder([.. hours.Select(c => c.Recorded)], (days * 24) + 1);
        Faults = new FaultTrace(farm);
        _stepColumns = [.. Enumerable.Range(0, _columns.Length)
            .Where(i => _columns[i].Recorded.Kind is ColumnKind.Mean or ColumnKind.Minimum or ColumnKind.Maximum)];
        _stepValues = [.. _stepColumns.Select(i => _columns[i].Value)];
        _hourValues = [.. hours.Select(c => c.Value)];
        _marks = new double[_columns.Length];
        Peaks = new Peak[hours.Length];
        Array.Fill(Peaks, Peak.None);
    }

    /// <summary>A row a day.</summary>
    public Recorder Days { get; }

    /// <summary>A row a week.</summary>
    public WeekRecord Weeks { get; }

    /// <summary>A row an hour.</summary>
    public Recorder Hours { get; }

    /// <summary>A row a step while a fault is open and for some hours after.</summary>
    public FaultTrace Faults { get; }

    /// <summary>Highest and lowest hourly mean of every column of <see cref="Hours"/>.</summary>
    public Peak[] Peaks { get; }

    /// <summary>Adds a step.</summary>
    public void Step(double seconds)
    {
        _water.Look();
        for (int i = 0; i < _stepColumns.Length; i++)
        {
            Days.Accumulate(_stepColumns[i], _stepValues[i](), seconds);
        }

        for (int i = 0; i < _hourValues.Length; i++)
        {
            Hours.Accumulate(i, _hourValues[i](), seconds);
        }
    }

    /// <summary>Ends an hour, where the clock stands at one.</summary>
    public void Instant(long seconds)
    {
        if (seconds == 0 || seconds % 3600 != 0 || seconds == _lastHour)
        {
            return;
        }

        _lastHour = seconds;
        Hours.CloseRow();
        ReadOnlySpan<double> row = Hours.Row(Hours.RowCount - 1);
        for (int i = 0; i < row.Length; i++)
        {
            Peaks[i] = Peaks[i].With(row[i], seconds);
        }
    }

    /// <summary>Ends a day.</summary>
    public void Day()
    {
        for (int i = 0; i < _columns.Length; i++)
        {
            switch (_columns[i].Recorded.Kind)
            {
                case ColumnKind.Instant:
                    Days.Accumulate(i, _columns[i].Value(), 0);
                    break;
                case ColumnKind.Sum:
                    double now = _columns[i].Value();
                    Days.Accumulate(i, now - _marks[i], 0);
                    _marks[i] = now;
                    break;
                default:
                    break;
            }
        }

        Days.CloseRow();
        if (Days.RowCount % UnitConstants.DaysPerWeek == 0)
        {
            Weeks.Close();
        }
    }

    /// <summary>Takes over another record.</summary>
    public void CopyFrom(SeasonRecord other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Days.CopyFrom(other.Days);
        Weeks.CopyFrom(other.Weeks);
        Hours.CopyFrom(other.Hours);
        Faults.CopyFrom(other.Faults);
        other._marks.CopyTo(_marks, 0);
        other.Peaks.CopyTo(Peaks, 0);
        _lastHour = other._lastHour;
    }

    // The order of these lines is the order of the columns in the files.
    private static ColumnList Columns(FarmContext farm, RecordedWater water)
    {
        var columns = new ColumnList();
        WaterColumns.Add(columns, farm, water);
        HouseColumns.Add(columns, farm);
        FishColumns.Add(columns, farm, water);
        FilterAndSludgeColumns.Add(columns, farm);
        CropColumns.Add(columns, farm);
        BedColumns.Add(columns, farm);
        PlaceColumns.Add(columns, farm);
        FlowColumns.Add(columns, farm);
        EnergyColumns.Add(columns, farm);
        FlowColumns.AddExchange(columns, farm);
        MoneyColumns.Add(columns, farm);
        HourColumns.Add(columns, farm, water);
        ProbeColumns.Add(columns, farm);
        return columns;
    }
}
