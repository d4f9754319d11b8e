namespace FarmTwin.Engine;

/// <summary>A ledger for each of several substances, with the same doors.</summary>
/// <remarks>
/// Not a store of the substances: it holds what was posted. Each substance has a unit of its own. Posting allocates nothing.
/// Not safe for use by several threads at once.
/// </remarks>
public sealed class LedgerBook
{
    private readonly Ledger[] _ledgers;

    /// <summary>Makes a book with nothing in it.</summary>
    /// <param name="substances">The names of the substances; a posting names its substance by position.</param>
    /// <param name="doors">The names of the doors; a posting names its door by position.</param>
    /// <exception cref="ArgumentException">A name is empty or used twice.</exception>
    public LedgerBook(ReadOnlySpan<string> substances, ReadOnlySpan<string> doors)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        _ledgers = new Ledger[substances.Length];
        for (int i = 0; i < substances.Length; i++)
        {
            if (!names.Add(substances[i]))
            {
                throw new ArgumentException($"Substance '{substances[i]}' is named twice.", nameof(substances));
            }

            _ledgers[i] = new Ledger(substances[i], doors);
        }

        DoorCount = doors.Length;
    }

    /// <summary>How many substances there are.</summary>
    public int SubstanceCount => _ledgers.Length;

    /// <summary>How many doors there are.</summary>
    public int DoorCount { get; }

    /// <summary>The ledger of a substance.</summary>
    /// <exception cref="IndexOutOfRangeException">There is no such substance.</exception>
    public Ledger this[int substance] => _ledgers[substance];

    /// <summary>Posts what came in by a door of one substance.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or not finite.</exception>
    /// <exception cref="IndexOutOfRangeException">There is no such door or substance.</exception>
    public void In(int door, int substance, double amount) => _ledgers[substance].In(door, amount);

    /// <summary>Posts what went out by a door of one substance.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or not finite.</exception>
    /// <exception cref="IndexOutOfRangeException">There is no such door or substance.</exception>
    public void Out(int door, int substance, double amount) => _ledgers[substance].Out(door, amount);

    /// <summary>Posts what came in by a door of every substance.</summary>
    /// <param name="door">Position of the door.</param>
    /// <param name="amounts">An amount a substance, in their order.</param>
    /// <exception cref="ArgumentException">Not as many amounts as substances, or one is negative or not finite.</exception>
    public void In(int door, ReadOnlySpan<double> amounts)
    {
        CheckLength(amounts.Length);
        for (int i = 0; i < amounts.Length; i++)
        {
            _ledgers[i].In(door, amounts[i]);
        }
    }

    /// <summary>Posts what went out by a door of every substance.</summary>
    /// <param name="door">Position of the door.</param>
    /// <param name="amounts">An amount a substance, in their order.</param>
    /// <exception cref="ArgumentException">Not as many amounts as substances, or one is negative or not finite.</exception>
    public void Out(int door, ReadOnlySpan<double> amounts)
    {
        CheckLength(amounts.Length);
        for (int i = 0; i < amounts.Length; i++)
        {
            _ledgers[i].Out(door, amounts[i]);
        }
    }

    /// <summary>The largest closure error of all substances (see <see cref="Ledger.ClosureError"/>).</summary>
    /// <param name="closingStocks">A closing stock a substance, in their order.</param>
    /// <exception cref="ArgumentException">Not as many stocks as substances.</exception>
    public double LargestClosureError(ReadOnlySpan<double> closingStocks)
    {
        CheckLength(closingStocks.Length);
        double largest = 0;
        for (int i = 0; i < closingStocks.Length; i++)
        {
            // Math.Max keeps what is not a number: a broken stock must not pass for a closed ledger.
            largest = Math.Max(largest, _ledgers[i].ClosureError(closingStocks[i]));
        }

        return largest;
    }

    /// <summary>Becomes a copy of a book with the same substances and doors.</summary>
    /// <exception cref="ArgumentException">Substances or doors differ.</exception>
    public void CopyFrom(LedgerBook other)
    {
        ArgumentNullException.ThrowIfNull(other);
        CheckLength(other._ledgers.Length);
        for (int i = 0; i < _ledgers.Length; i++)
        {
            if (!string.Equals(_ledgers[i].Name, other._ledgers[i].Name, StringComparison.Ordinal))
            {
                throw new ArgumentException($"Substance {i} is {other._ledgers[i].Name} there and {_ledgers[i].Name} here.", nameof(other));
            }

            _ledgers[i].CopyFrom(other._ledgers[i]);
        }
    }

    private void CheckLength(int length)
    {
        if (length != _ledgers.Length)
        {
            throw new ArgumentException($"{length} values were given for {_ledgers.Length} substances.", nameof(length));
        }
    }
}
