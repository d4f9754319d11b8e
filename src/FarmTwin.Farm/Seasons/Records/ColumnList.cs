using FarmTwin.Engine;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>The columns of the daily and of the hourly record, in the order in which they are written.</summary>
/// <remarks>Every value is a delegate made once, when the season is set up, so that recording a step allocates nothing.</remarks>
internal sealed class ColumnList
{
    private readonly List<Column> _days = [];
    private readonly List<Column> _hours = [];

    /// <summary>Columns of a day.</summary>
    public Column[] Days => [.. _days];

    /// <summary>Columns of an hour.</summary>
    public Column[] Hours => [.. _hours];

    /// <summary>The mean over the day.</summary>
    public void Mean(string name, string unit, Func<double> value) => Day(name, unit, ColumnKind.Mean, value);

    /// <summary>The lowest of the day.</summary>
    public void Lowest(string name, string unit, Func<double> value) => Day(name, unit, ColumnKind.Minimum, value);

    /// <summary>The highest of the day.</summary>
    public void Highest(string name, string unit, Func<double> value) => Day(name, unit, ColumnKind.Maximum, value);

    /// <summary>The value at the end of the day.</summary>
    public void Instant(string name, string unit, Func<double> value) => Day(name, unit, ColumnKind.Instant, value);

    /// <summary>The day's growth of a running total.</summary>
    public void Sum(string name, string unit, Func<double> value) => Day(name, unit, ColumnKind.Sum, value);

    /// <summary>The mean over the hour.</summary>
    public void Hour(string name, string unit, Func<double> value) =>
        _hours.Add(new Column(new RecordedColumn(name, unit, ColumnKind.Mean), value));

    private void Day(string name, string unit, ColumnKind kind, Func<double> value) =>
        _days.Add(new Column(new RecordedColumn(name, unit, kind), value));
}
