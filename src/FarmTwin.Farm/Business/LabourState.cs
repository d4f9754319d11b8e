using FarmTwin.Engine;

namespace FarmTwin.Farm.Business;

/// <summary>Hours that people spent, by chore: the labour ledger, and how often each chore was done. Copied whole for a snapshot.</summary>
/// <remarks>The ledger's closing stock is reckoned apart from its postings, from the counts; the two must agree.</remarks>
public sealed class LabourState
{
    private const double MinutesPerHour = 60;

    private readonly double[] _count = new double[ChoreTimes.Kinds.Count];
    private readonly double[] _productHours;

    /// <summary>Makes the state of a farm on which nobody has worked.</summary>
    /// <param name="products">Number of products.</param>
    public LabourState(int products) => _productHours = new double[products];

    /// <summary>Hours by chore.</summary>
    public Ledger Ledger { get; } = new("labour", [.. ChoreTimes.Kinds.Select(k => k.Key)]);

    /// <summary>All hours so far.</summary>
    public double Hours { get; private set; }

    /// <summary>Hours of a chore.</summary>
    public double HoursOf(Chore chore) => Ledger.TotalInBy((int)chore);

    /// <summary>How much of a chore was done, in its own unit.</summary>
    public double CountOf(Chore chore) => _count[(int)chore];

    /// <summary>Hours that served one product alone.</summary>
    public double HoursFor(int product) => _productHours[product];

    /// <summary>The ledger's closing stock, h: what was done times the minutes of each.</summary>
    public double ClosingHours(ChoreTimes times)
    {
        ArgumentNullException.ThrowIfNull(times);
        double hours = 0;
        foreach (ChoreKind kind in ChoreTimes.Kinds)
        {
            hours += _count[(int)kind.Chore] * times.MinutesOf(kind.Chore) / MinutesPerHour;
        }

        return hours;
    }

    /// <summary>Books work.</summary>
    /// <param name="times">Minutes by chore.</param>
    /// <param name="chore">The chore.</param>
    /// <param name="count">How much of it, in its own unit, 0 or more.</param>
    /// <param name="product">The product that it served alone; −1 for none.</param>
    public void Spend(ChoreTimes times, Chore chore, double count, int product)
    {
        ArgumentNullException.ThrowIfNull(times);
        double hours = count * times.MinutesOf(chore) / MinutesPerHour;
        _count[(int)chore] += count;
        Ledger.In((int)chore, hours);
        Hours += hours;
        if (product >= 0)
        {
            _productHours[product] += hours;
        }
    }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(LabourState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other._count.CopyTo(_count, 0);
        other._productHours.CopyTo(_productHours, 0);
        Ledger.CopyFrom(other.Ledger);
        Hours = other.Hours;
    }
}
