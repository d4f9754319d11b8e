namespace FarmTwin.Farm.Plants;

/// <summary>What holds growth back, each a factor of 0 (no growth) to 1 (no effect).</summary>
/// <param name="Site">The site as a whole against a well-run research house.</param>
/// <param name="Nutrient">The shortest nutrient pool.</param>
/// <param name="ShortestNutrient">Which pool that is.</param>
/// <param name="Oxygen">Oxygen at the roots.</param>
/// <param name="RootTemperature">Temperature at the roots.</param>
/// <param name="Salt">Salinity.</param>
/// <param name="Ammonium">Ammonium in excess.</param>
/// <param name="Water">Water in reach of the roots.</param>
public readonly record struct GrowthStress(
    double Site,
    double Nutrient,
    int ShortestNutrient,
    double Oxygen,
    double RootTemperature,
    double Salt,
    double Ammonium,
    double Water)
{
    /// <summary>Nothing holds growth back.</summary>
    public static GrowthStress None { get; } = new(1, 1, Element.Nitrogen, 1, 1, 1, 1, 1);

    /// <summary>All but the nutrients: what growth would be held to in a full solution.</summary>
    public double WithoutNutrient => Site * Oxygen * RootTemperature * Salt * Ammonium * Water;

    /// <summary>All together.</summary>
    public double Combined => WithoutNutrient * Nutrient;
}
