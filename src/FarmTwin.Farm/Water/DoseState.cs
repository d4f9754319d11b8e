namespace FarmTwin.Farm.Water;

/// <summary>What is still to drip into each basin, and until when.</summary>
public sealed class DoseState
{
    /// <summary>Substances that a dose can bring: all that are dissolved.</summary>
    public const int Columns = Substance.LastDissolved + 1;

    /// <summary>Makes an empty state.</summary>
    public DoseState(int basins)
    {
        Grams = new double[basins * Columns];
        UntilSeconds = new long[basins];
        IsDripping = new bool[basins];
    }

    /// <summary>Still to come, g, [basin × <see cref="Columns"/> + substance].</summary>
    public double[] Grams { get; }

    /// <summary>When the drip of each basin ends, seconds of the season.</summary>
    public long[] UntilSeconds { get; }

    /// <summary>Whether anything is still to come into each basin.</summary>
    public bool[] IsDripping { get; }

    /// <summary>Adds to the drip of a basin and lets it run at least until a time.</summary>
    public void Add(int basin, int substance, double grams, long untilSeconds)
    {
        Grams[(basin * Columns) + substance] += grams;
        IsDripping[basin] = true;
        UntilSeconds[basin] = Math.Max(UntilSeconds[basin], untilSeconds);
    }

    /// <summary>Seconds that the drip of a basin still runs.</summary>
    public double SecondsLeft(int basin, long nowSeconds) => Math.Max(0, UntilSeconds[basin] - nowSeconds);

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(DoseState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.Grams.CopyTo(Grams, 0);
        other.UntilSeconds.CopyTo(UntilSeconds, 0);
        other.IsDripping.CopyTo(IsDripping, 0);
    }
}
