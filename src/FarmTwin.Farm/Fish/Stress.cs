namespace FarmTwin.Farm.Fish;

/// <summary>How far poor water cuts appetite, growth and conversion. The factors multiply.</summary>
public static class Stress
{
    /// <summary>
    /// Growth at an oxygen level over that in plenty, 0–1: proportional below a critical level that rises with size (about 3 mg/L
    /// small, 5.5 mg/L large; Tran-Duy et al. 2012, Aquaculture Research 43:730–744).
    /// </summary>
    public static double OxygenFactor(FishParameters parameters, double grams, double oxygenMilligramsPerLitre)
    {
        double size = Math.Clamp(
            (grams - parameters.SmallFishGrams) / (parameters.LargeFishGrams - parameters.SmallFishGrams), 0, 1);
        double critical = parameters.SmallFishCriticalOxygenMilligramsPerLitre
            + (size * (parameters.LargeFishCriticalOxygenMilligramsPerLitre - parameters.SmallFishCriticalOxygenMilligramsPerLitre));
        return Math.Clamp(oxygenMilligramsPerLitre / critical, 0, 1);
    }

    /// <summary>
    /// Gain per gram eaten at an oxygen level over that in plenty, 0–1 (own fit to the one study that measured it, Tsadik &amp;
    /// Kutty 1987).
    /// </summary>
    public static double ConversionFactor(FishParameters parameters, double oxygenMilligramsPerLitre)
    {
        double share = Math.Clamp(oxygenMilligramsPerLitre / parameters.ConversionCriticalOxygenMilligramsPerLitre, 0, 1);
        return share >= 1 ? 1 : Math.Pow(share, parameters.ConversionOxygenExponent);
    }

    /// <summary>Growth at a level of un-ionized ammonia over that without, 0–1: a straight fall (Abdalla &amp; McNabb 1998).</summary>
    public static double AmmoniaFactor(FishParameters parameters, double unionizedAmmoniaMilligramsNPerLitre) => Math.Clamp(
        (parameters.AmmoniaNoGrowthMilligramsNPerLitre - unionizedAmmoniaMilligramsNPerLitre)
        / (parameters.AmmoniaNoGrowthMilligramsNPerLitre - parameters.AmmoniaNoEffectMilligramsNPerLitre),
        0, 1);

    /// <summary>Growth at a nitrate level over that without: 1 to 500 mg N/L (Monsees et al. 2017), then a fall to a floor (assumed).</summary>
    public static double NitrateFactor(FishParameters parameters, double nitrateMilligramsNPerLitre) => Math.Clamp(
        1 - ((nitrateMilligramsNPerLitre - parameters.NitrateNoEffectMilligramsNPerLitre)
            / parameters.NitrateSpanMilligramsNPerLitre),
        parameters.NitrateLowestFactor, 1);
}
