namespace FarmTwin.Farm.Fish;

/// <summary>What a fish may die of just now, each as an instantaneous death rate, 1/h. They add.</summary>
/// <param name="Base">Whatever happens in good care.</param>
/// <param name="Cold">Below the cold limit.</param>
/// <param name="Heat">Above the heat limit.</param>
/// <param name="LowOxygen">Suffocation.</param>
/// <param name="Ammonia">Acute un-ionized ammonia.</param>
/// <param name="Nitrite">Acute nitrite, eased by chloride.</param>
/// <param name="Handling">The days after grading or moving.</param>
public readonly record struct HazardsPerHour(
    double Base, double Cold, double Heat, double LowOxygen, double Ammonia, double Nitrite, double Handling)
{
    /// <summary>All of them together, 1/h.</summary>
    public double Total => Base + Cold + Heat + LowOxygen + Ammonia + Nitrite + Handling;
}
