namespace FarmTwin.Farm.Fish;

/// <summary>Fish taken out of a cohort.</summary>
/// <param name="Number">Fish taken.</param>
/// <param name="Grams">Their live weight, g.</param>
/// <param name="Elements">Everything that leaves with them, g; nitrogen digested but not yet excreted included.</param>
public readonly record struct HarvestResult(double Number, double Grams, ElementGrams Elements)
{
    /// <summary>Mean live weight of the fish taken, g; 0 when none was.</summary>
    public double MeanGrams => Number > 0 ? Grams / Number : 0;
}
