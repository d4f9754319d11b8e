namespace FarmTwin.Farm.Fish;

/// <summary>Where a meal went.</summary>
/// <remarks>
/// Elements offered = <paramref name="Solids"/> + <paramref name="Dissolved"/> + what the fish kept as tissue + (nitrogen only)
/// what entered the excretion pools.
/// </remarks>
/// <param name="EatenGrams">Feed eaten by the cohort, g as fed.</param>
/// <param name="UneatenGrams">Feed left, g as fed.</param>
/// <param name="GainGrams">Live weight gained by the cohort at once, g; maintenance takes its part back between meals.</param>
/// <param name="FaecalDryGrams">Faecal solids, g dry.</param>
/// <param name="UneatenDryGrams">Uneaten feed, g dry.</param>
/// <param name="Solids">Elements that leave as solids (faeces and uneaten feed), g.</param>
/// <param name="Dissolved">
/// Elements that dissolve at once, g. Nitrogen is 0: it comes out of the pools as TAN. An entry is negative only for a feed so poor
/// in an element that growth draws it from the water.
/// </param>
public readonly record struct MealResult(
    double EatenGrams,
    double UneatenGrams,
    double GainGrams,
    double FaecalDryGrams,
    double UneatenDryGrams,
    ElementGrams Solids,
    ElementGrams Dissolved)
{
    /// <summary>Nitrogen that leaves as solids, g N.</summary>
    public double SolidsNitrogenGrams => Solids.Nitrogen;

    /// <summary>Faecal and uneaten solids together, g dry.</summary>
    public double SolidsDryGrams => FaecalDryGrams + UneatenDryGrams;
}
