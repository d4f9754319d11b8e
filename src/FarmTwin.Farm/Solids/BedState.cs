using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Solids;

/// <summary>What a bead bed holds between washes.</summary>
public sealed class BedState
{
    /// <summary>Dry matter, g.</summary>
    public double DryGrams { get; set; }

    /// <summary>Degradable volatile solids in it, g.</summary>
    public double DegradableGrams { get; set; }

    /// <summary>Elements in it, g, in the order of <see cref="Element"/>.</summary>
    public double[] ElementGrams { get; } = new double[Element.Count];

    /// <summary>When it was last washed, seconds of the season.</summary>
    public long LastWashSeconds { get; set; }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(BedState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        DryGrams = other.DryGrams;
        DegradableGrams = other.DegradableGrams;
        LastWashSeconds = other.LastWashSeconds;
        other.ElementGrams.CopyTo(ElementGrams, 0);
    }
}
