namespace FarmTwin.Engine;

/// <summary>A table that fills as a run goes on: a row an interval, a column a quantity.</summary>
/// <remarks>
/// Not a file and not a result table: one array of numbers, row after row. An interval is whatever lies between two calls of
/// <see cref="CloseRow"/>. A column that was given nothing in an interval is not a number there (a sum is 0). Allocates only when
/// it outgrows the rows expected. Not safe for use by several threads at once.
/// </remarks>
public sealed class Recorder
{
    private readonly RecordedColumn[] _columns;
    private readonly double[] _values;
    private readonly double[] _durations;
    private double[] _rows;

    /// <summary>Makes an empty table.</summary>
    /// <param name="columns">The headings; at least one, names unique.</param>
    /// <param name="expectedRows">For how many rows to make room; it grows when needed.</param>
    /// <exception cref="ArgumentException">No column, a name missing or used twice, or negative expected rows.</exception>
    public Recorder(ReadOnlySpan<RecordedColumn> columns, int expectedRows = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(expectedRows);
        if (columns.IsEmpty)
        {
            throw new ArgumentException("A recorder needs at least one column.", nameof(columns));
        }

        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (RecordedColumn column in columns)
        {
            if (string.IsNullOrEmpty(column.Name) || !names.Add(column.Name))
            {
                throw new ArgumentException($"Column name '{column.Name}' is empty or used twice.", nameof(columns));
            }
        }

        _columns = columns.ToArray();
        _values = new double[_columns.Length];
        _durations = new double[_columns.Length];
        _rows = new double[Math.Max(1, expectedRows) * _columns.Length];
        ClearInterval();
    }

    /// <summary>The headings.</summary>
    public ReadOnlySpan<RecordedColumn> Columns => _columns;

    /// <summary>How many rows are closed.</summary>
    public int RowCount { get; private set; }

    /// <summary>The position of a column.</summary>
    /// <exception cref="ArgumentException">There is no such column.</exception>
    public int ColumnIndex(string name)
    {
        for (int i = 0; i < _columns.Length; i++)
        {
            if (string.Equals(_columns[i].Name, name, StringComparison.Ordinal))
            {
                return i;
            }
        }

        throw new ArgumentException($"There is no column '{name}'.", nameof(name));
    }

    /// <summary>Adds a value to the open interval.</summary>
    /// <param name="column">Position of the column.</param>
    /// <param name="value">In the column's unit; for a sum, an amount and not a rate.</param>
    /// <param name="durationSeconds">How long it held, 0 or more; only means look at it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The duration is negative.</exception>
    /// <exception cref="IndexOutOfRangeException">There is no such column.</exception>
    public void Accumulate(int column, double value, double durationSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(durationSeconds);
        ref double held = ref _values[column];
        switch (_columns[column].Kind)
        {
            case ColumnKind.Mean:
                if (durationSeconds > 0)
                {
                    held += value * durationSeconds;
                    _durations[column] += durationSeconds;
                }

                break;
            case ColumnKind.Minimum:
                // A value that is not a number must not vanish in a comparison: Math.Min and Math.Max keep it.
                held = Math.Min(held, value);
                _durations[column] = 1;
                break;
            case ColumnKind.Maximum:
                held = Math.Max(held, value);
                _durations[column] = 1;
                break;
            case ColumnKind.Sum:
                held += value;
                break;
            default:
                held = value;
                break;
        }
    }

    /// <summary>Ends the interval: writes its row and begins the next.</summary>
    public void CloseRow()
    {
        int start = RowCount * _columns.Length;
        if (start + _columns.Length > _rows.Length)
        {
            Array.Resize(ref _rows, Math.Max(start + _columns.Length, 2 * _rows.Length));
        }

        for (int i = 0; i < _columns.Length; i++)
        {
            _rows[start + i] = _columns[i].Kind switch
            {
                ColumnKind.Mean => _values[i] / _durations[i],
                ColumnKind.Minimum or ColumnKind.Maximum => _durations[i] > 0 ? _values[i] : double.NaN,
                _ => _values[i],
            };
        }

        RowCount++;
        ClearInterval();
    }

    /// <summary>A closed row; valid until the next row is closed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such row.</exception>
    public ReadOnlySpan<double> Row(int row)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(row);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(row, RowCount);
        return _rows.AsSpan(row * _columns.Length, _columns.Length);
    }

    /// <summary>A copy of a column over all closed rows.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such column.</exception>
    public double[] Column(int column)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, _columns.Length);
        var copy = new double[RowCount];
        for (int i = 0; i < copy.Length; i++)
        {
            copy[i] = _rows[(i * _columns.Length) + column];
        }

        return copy;
    }

    /// <summary>Becomes a copy of a recorder with the same columns: its rows and its open interval.</summary>
    /// <exception cref="ArgumentException">The columns differ.</exception>
    public void CopyFrom(Recorder other)
    {
        CopyOpenIntervalFrom(other);
        int used = other.RowCount * _columns.Length;
        if (_rows.Length < used)
        {
            _rows = new double[other._rows.Length];
        }

        Array.Copy(other._rows, _rows, used);
        RowCount = other.RowCount;
    }

    /// <summary>Copies the open interval only; enough to rewind within one, where no row was closed since.</summary>
    /// <exception cref="ArgumentException">The columns differ.</exception>
    public void CopyOpenIntervalFrom(Recorder other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!_columns.AsSpan().SequenceEqual(other._columns))
        {
            throw new ArgumentException("Only a recorder of the same columns can be copied.", nameof(other));
        }

        Array.Copy(other._values, _values, _values.Length);
        Array.Copy(other._durations, _durations, _durations.Length);
    }

    private void ClearInterval()
    {
        Array.Clear(_durations);
        for (int i = 0; i < _columns.Length; i++)
        {
            _values[i] = _columns[i].Kind switch
            {
                ColumnKind.Instant => double.NaN,
                ColumnKind.Minimum => double.PositiveInfinity,
                ColumnKind.Maximum => double.NegativeInfinity,
                _ => 0,
            };
        }
    }
}
