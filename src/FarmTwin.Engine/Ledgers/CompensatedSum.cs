namespace FarmTwin.Engine;

/// <summary>A running sum that keeps what rounding would lose.</summary>
/// <remarks>
/// Neumaier (1974), "Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen", ZAMM 54:39-51 (from memory of the
/// source, not re-read). Mutable: pass it by reference. The default value is 0. Not safe for use by several threads at once.
/// </remarks>
public struct CompensatedSum
{
    private double _sum;
    private double _lost;

    /// <summary>The sum.</summary>
    public readonly double Value => _sum + _lost;

    /// <summary>Adds a term.</summary>
    public void Add(double term)
    {
        double sum = _sum + term;
        _lost += Math.Abs(_sum) >= Math.Abs(term) ? _sum - sum + term : term - sum + _sum;
        _sum = sum;
    }

    /// <summary>Adds another sum, or takes it away, with what it keeps beside it.</summary>
    internal void Add(in CompensatedSum other, double sign)
    {
        Add(sign * other._sum);
        Add(sign * other._lost);
    }
}
