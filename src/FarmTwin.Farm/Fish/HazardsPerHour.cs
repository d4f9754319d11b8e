namespace FarmTwin.Farm.Fish;

/// <summary>What a fish may die of just now, each as an instantaneous death rate, 1/h. They add.</summary>
/// <param name="Base">Whatever happens in good care.</param>
/// <param name="Cold">Below the cold limit.</param>
/// <param name="Heat">Above the heat limit.</param>
/// <param name="LowOxygen">Suffocation.</param>
/// <param name="Ammonia">Acute un-ionized ammonia.</param>
/// <param name="Nitrite">Acute nitrite, eased by chloride.</param>
/// <param name="Handling">The days after grading, moving or arriving, shocks of the move included.</param>
/// <param name="Chlorine">Gills burnt by residual chlorine.</param>
/// <param name="Pesticide">Spray that dripped into the water.</param>
public readonly record struct HazardsPerHour(
    double Base, double Cold, double Heat, double LowOxygen, double Ammonia, double Nitrite, double Handling,
    double Chlorine = 0, double Pesticide = 0)
{
    /// <summary>All of them together, 1/h.</summary>
    public double Total => Base + Cold + Heat + LowOxygen + Ammonia + Nitrite + Handling + Chlorine + Pesticide;
}
