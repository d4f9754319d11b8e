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

    /// <summary>Names of the causes, in the order of <see cref="Share"/>.</summary>
    public static IReadOnlyList<string> Causes { get; } = ["usual", "cold", "heat", "oxygen", "ammonia", "nitrite", "handling", "chlorine", "pesticide"];

    /// <summary>Adds deaths to a tally by cause, each cause by its part of the whole hazard.</summary>
    public void Share(double deaths, Span<double> byCause)
    {
        double per = Total > 0 ? deaths / Total : 0;
        byCause[0] += Base * per;
        byCause[1] += Cold * per;
        byCause[2] += Heat * per;
        byCause[3] += LowOxygen * per;
        byCause[4] += Ammonia * per;
        byCause[5] += Nitrite * per;
        byCause[6] += Handling * per;
        byCause[7] += Chlorine * per;
        byCause[8] += Pesticide * per;
    }
}
