namespace FarmTwin.Engine;

/// <summary>The account of one conserved quantity: opening stock, what came in and went out by which door, closing stock.</summary>
/// <remarks>
/// Not a balance that is forced to close: the closing stock is measured by the caller, and the difference is the error of the model.
/// Amounts are in one unit that the caller chooses and are never negative; the direction is in the posting. A stock may be negative
/// (heat from a datum, net charge). Posting allocates nothing. Not safe for use by several threads at once.
/// </remarks>
public sealed class Ledger
{
    private readonly string[] _doors;
    private readonly CompensatedSum[] _in;
    private readonly CompensatedSum[] _out;
    private double _openingStock;

    /// <summary>Makes an account with nothing in it.</summary>
    /// <param name="name">Of what, for messages.</param>
    /// <param name="doors">The names of the doors; a posting names its door by position.</param>
    /// <exception cref="ArgumentException">A name is empty or used twice.</exception>
    public Ledger(string name, ReadOnlySpan<string> doors)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (string door in doors)
        {
            if (string.IsNullOrEmpty(door) || !names.Add(door))
            {
                throw new ArgumentException($"Door name '{door}' is empty or used twice.", nameof(doors));
            }
        }

        Name = name;
        _doors = doors.ToArray();
        _in = new CompensatedSum[_doors.Length];
        _out = new CompensatedSum[_doors.Length];
    }

    /// <summary>Of what.</summary>
    public string Name { get; }

    /// <summary>The names of the doors, by position.</summary>
    public ReadOnlySpan<string> Doors => _doors;

    /// <summary>The stock with which the account opens; finite.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Set to what is not finite.</exception>
    public double OpeningStock
    {
        get => _openingStock;
        set => _openingStock = double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, $"The opening stock of {Name} must be finite.");
    }

    /// <summary>All that came in.</summary>
    public double TotalIn => Total(_in);

    /// <summary>All that went out.</summary>
    public double TotalOut => Total(_out);

    /// <summary>Posts what came in by a door.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or not finite.</exception>
    /// <exception cref="IndexOutOfRangeException">There is no such door.</exception>
    public void In(int door, double amount)
    {
        Check(door, amount);
        _in[door].Add(amount);
    }

    /// <summary>Posts what went out by a door.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or not finite.</exception>
    /// <exception cref="IndexOutOfRangeException">There is no such door.</exception>
    public void Out(int door, double amount)
    {
        Check(door, amount);
        _out[door].Add(amount);
    }

    /// <summary>What came in by a door.</summary>
    public double TotalInBy(int door) => _in[door].Value;

    /// <summary>What went out by a door.</summary>
    public double TotalOutBy(int door) => _out[door].Value;

    /// <summary>Opening stock + in − out − closing stock: what the account cannot explain, with its sign.</summary>
    public double Unexplained(double closingStock)
    {
        CompensatedSum rest = default;
        rest.Add(_openingStock);
        for (int i = 0; i < _in.Length; i++)
        {
            rest.Add(_in[i], 1);
            rest.Add(_out[i], -1);
        }

        rest.Add(-closingStock);
        return rest.Value;
    }

    /// <summary>The size of <see cref="Unexplained"/> as a share of max(throughput, opening stock).</summary>
    /// <remarks>
    /// Throughput is the larger of all that came in and all that went out. 0 where nothing was there, nothing moved and nothing is
    /// left; infinite where something is left of nothing.
    /// </remarks>
    public double ClosureError(double closingStock)
    {
        double unexplained = Math.Abs(Unexplained(closingStock));
        double scale = Math.Max(Math.Max(TotalIn, TotalOut), Math.Abs(_openingStock));
        return unexplained == 0 ? 0 : unexplained / scale;
    }

    /// <summary>Becomes a copy of a ledger with the same doors.</summary>
    /// <exception cref="ArgumentException">The doors differ.</exception>
    public void CopyFrom(Ledger other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!_doors.AsSpan().SequenceEqual(other._doors))
        {
            throw new ArgumentException($"Ledger {other.Name} has other doors than {Name}.", nameof(other));
        }

        _openingStock = other._openingStock;
        Array.Copy(other._in, _in, _in.Length);
        Array.Copy(other._out, _out, _out.Length);
    }

    private static double Total(CompensatedSum[] sums)
    {
        CompensatedSum total = default;
        foreach (ref readonly CompensatedSum sum in sums.AsSpan())
        {
            total.Add(sum, 1);
        }

        return total.Value;
    }

    private void Check(int door, double amount)
    {
        if (amount is not (>= 0 and < double.PositiveInfinity))
        {
            throw new ArgumentOutOfRangeException(
                nameof(amount), amount, $"A posting of {Name} by {_doors[door]} must be finite and not negative; the direction says the sign.");
        }
    }
}
