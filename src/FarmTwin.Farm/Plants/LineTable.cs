namespace FarmTwin.Farm.Plants;

/// <summary>A curve given by points and joined by straight lines; flat beyond its ends.</summary>
/// <remarks>Immutable; reading it does not allocate.</remarks>
public sealed class LineTable
{
    private readonly double[] _x;
    private readonly double[] _y;

    /// <summary>Makes a curve.</summary>
    /// <param name="x">Places of the points, strictly rising; at least one.</param>
    /// <param name="y">Values there, as many.</param>
    /// <exception cref="ArgumentException">The points do not rise, or the counts differ.</exception>
    public LineTable(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length == 0 || x.Length != y.Length)
        {
            throw new ArgumentException("A curve needs as many values as places, and at least one.", nameof(y));
        }

        for (int i = 1; i < x.Length; i++)
        {
            if (x[i] <= x[i - 1])
            {
                throw new ArgumentException($"The places of a curve must rise; {x[i]} follows {x[i - 1]}.", nameof(x));
            }
        }

        _x = x.ToArray();
        _y = y.ToArray();
    }

    /// <summary>The value at a place.</summary>
    public double At(double x)
    {
        if (x <= _x[0])
        {
            return _y[0];
        }

        for (int i = 1; i < _x.Length; i++)
        {
            if (x < _x[i])
            {
                return _y[i - 1] + ((_y[i] - _y[i - 1]) * (x - _x[i - 1]) / (_x[i] - _x[i - 1]));
            }
        }

        return _y[^1];
    }
}
