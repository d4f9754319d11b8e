namespace FarmTwin.Farm.Water;

/// <summary>Algae of every basin: dry mass, and the nitrogen and phosphorus in it.</summary>
public sealed class AlgaeState
{
    /// <summary>Makes clean basins.</summary>
    public AlgaeState(int basins)
    {
        DryGrams = new double[basins];
        NitrogenGrams = new double[basins];
        PhosphorusGrams = new double[basins];
    }

    /// <summary>Dry mass, g.</summary>
    public double[] DryGrams { get; }

    /// <summary>Nitrogen in it, g.</summary>
    public double[] NitrogenGrams { get; }

    /// <summary>Phosphorus in it, g.</summary>
    public double[] PhosphorusGrams { get; }

    /// <summary>Greatest dry mass of the whole farm so far, g.</summary>
    public double MostGrams { get; set; }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(AlgaeState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.DryGrams.CopyTo(DryGrams, 0);
        other.NitrogenGrams.CopyTo(NitrogenGrams, 0);
        other.PhosphorusGrams.CopyTo(PhosphorusGrams, 0);
        MostGrams = other.MostGrams;
    }
}
