namespace FarmTwin.Farm.Climate;

/// <summary>Closed forms for an ion that comes with the top-up and stays (sodium, chloride) in a closed loop of constant volume.</summary>
/// <remarks>
/// Mass balance with an uptake proportional to concentration and transpiration ("uptake concentration" share p; common
/// practice, no source). Own calculations, for design sheets; the season itself steps the ion's mass.
/// </remarks>
public static class SaltBuildUp
{
    /// <summary>Concentration after some days, mg/L.</summary>
    /// <param name="startMilligramsPerLitre">At the start.</param>
    /// <param name="sourceMilligramsPerLitre">In the top-up.</param>
    /// <param name="topUpLitresPerDay">Top-up, L/d.</param>
    /// <param name="volumeLitres">Loop, L, above 0.</param>
    /// <param name="uptakeLitresPerDay">Uptake share times transpiration, plus water that leaves as water, L/d.</param>
    /// <param name="days">d.</param>
    public static double MilligramsPerLitreAfter(double startMilligramsPerLitre, double sourceMilligramsPerLitre,
        double topUpLitresPerDay, double volumeLitres, double uptakeLitresPerDay, double days)
    {
        if (uptakeLitresPerDay <= 0)
        {
            return startMilligramsPerLitre + (sourceMilligramsPerLitre * topUpLitresPerDay * days / volumeLitres);
        }

        double end = EquilibriumMilligramsPerLitre(sourceMilligramsPerLitre, topUpLitresPerDay, uptakeLitresPerDay);
        return end + ((startMilligramsPerLitre - end) * Math.Exp(-uptakeLitresPerDay * days / volumeLitres));
    }

    /// <summary>Days until the loop reaches a limit; infinity where it never does.</summary>
    /// <param name="startMilligramsPerLitre">At the start, below the limit.</param>
    /// <param name="limitMilligramsPerLitre">The limit.</param>
    /// <param name="sourceMilligramsPerLitre">In the top-up.</param>
    /// <param name="topUpLitresPerDay">Top-up, L/d.</param>
    /// <param name="volumeLitres">Loop, L, above 0.</param>
    /// <param name="uptakeLitresPerDay">Uptake share times transpiration, plus water that leaves as water, L/d.</param>
    public static double DaysToLimit(double startMilligramsPerLitre, double limitMilligramsPerLitre,
        double sourceMilligramsPerLitre, double topUpLitresPerDay, double volumeLitres, double uptakeLitresPerDay)
    {
        if (uptakeLitresPerDay <= 0)
        {
            return (limitMilligramsPerLitre - startMilligramsPerLitre) * volumeLitres
                / (sourceMilligramsPerLitre * topUpLitresPerDay);
        }

        double end = EquilibriumMilligramsPerLitre(sourceMilligramsPerLitre, topUpLitresPerDay, uptakeLitresPerDay);
        return end <= limitMilligramsPerLitre
            ? double.PositiveInfinity
            : volumeLitres / uptakeLitresPerDay * Math.Log((end - startMilligramsPerLitre) / (end - limitMilligramsPerLitre));
    }

    /// <summary>Concentration at which as much leaves as comes, mg/L.</summary>
    /// <param name="sourceMilligramsPerLitre">In the top-up.</param>
    /// <param name="topUpLitresPerDay">Top-up, L/d.</param>
    /// <param name="uptakeLitresPerDay">L/d, above 0.</param>
    public static double EquilibriumMilligramsPerLitre(
        double sourceMilligramsPerLitre, double topUpLitresPerDay, double uptakeLitresPerDay) =>
        sourceMilligramsPerLitre * topUpLitresPerDay / uptakeLitresPerDay;
}
