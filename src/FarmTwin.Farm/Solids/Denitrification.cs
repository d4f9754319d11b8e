namespace FarmTwin.Farm.Solids;

/// <summary>Nitrate lost as gas: in the settled blanket of the mineralization tank, and in standing water of beds and pockets.</summary>
/// <remarks>Each gram lost gives back 3.57 g CaCO3 of alkalinity, which the ions show by themselves.</remarks>
public static class Denitrification
{
    private const double ReferenceCelsius = 20;

    private const double MilligramsPerGram = 1000;

    /// <summary>Largest rate in the blanket (nitrate in plenty), mg N/(L h).</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="volatileGramsPerLitre">Volatile solids in the blanket, g/L.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="oxygenMilligramsPerLitre">Oxygen in the blanket, mg/L.</param>
    public static double BlanketCapacityMilligramsPerLitreHour(
        MineralizationParameters parameters, double volatileGramsPerLitre, double temperatureCelsius, double oxygenMilligramsPerLitre) =>
        parameters.DenitrificationGramsPerGramDay * MilligramsPerGram / UnitConstants.HoursPerDay * volatileGramsPerLitre
            * Math.Pow(parameters.DenitrificationTemperatureBase, temperatureCelsius - ReferenceCelsius)
            * parameters.OxygenInhibitionMilligramsPerLitre
            / (parameters.OxygenInhibitionMilligramsPerLitre + Math.Max(0, oxygenMilligramsPerLitre));

    /// <summary>
    /// Nitrate lost over a step by a settled tank, g N: denitrification in the blanket, which slow exchange refills from the clear
    /// water above. Backward Euler for the blanket, so any step is stable and nothing goes negative.
    /// </summary>
    /// <remarks>Divide by hours × the tank's mean nitrate for a first-order coefficient; the loss never exceeds what the blanket can reach.</remarks>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="blanketNitrateMilligramsNPerLitre">Nitrate in the blanket, mg N/L; replaced.</param>
    /// <param name="tankNitrateGrams">Nitrate in the whole tank, g N.</param>
    /// <param name="volumeLitres">Water in the tank, L.</param>
    /// <param name="blanketShare">From <see cref="MineralizationTank.BlanketShare"/>.</param>
    /// <param name="capacityMilligramsPerLitreHour">From <see cref="BlanketCapacityMilligramsPerLitreHour"/>.</param>
    /// <param name="hours">Length of the step, h.</param>
    public static double SettledLossGrams(
        MineralizationParameters parameters,
        ref double blanketNitrateMilligramsNPerLitre,
        double tankNitrateGrams,
        double volumeLitres,
        double blanketShare,
        double capacityMilligramsPerLitreHour,
        double hours)
    {
        double blanketLitres = volumeLitres * Math.Clamp(blanketShare, 0, 1);
        if (blanketLitres <= 0 || tankNitrateGrams <= 0)
        {
            blanketNitrateMilligramsNPerLitre = 0;
            return 0;
        }

        double tankMilligrams = tankNitrateGrams * MilligramsPerGram;
        double clearLitres = volumeLitres - blanketLitres;
        double start = Math.Min(blanketNitrateMilligramsNPerLitre, tankMilligrams / blanketLitres);
        double clear = 0;
        if (clearLitres > 0)
        {
            clear = (tankMilligrams - (start * blanketLitres)) / clearLitres;
        }
        else
        {
            start = tankMilligrams / blanketLitres;
        }

        double turned = Math.Min(1, parameters.ExchangeSharePerDay / UnitConstants.HoursPerDay * hours) * clearLitres / blanketLitres;
        double half = parameters.NitrateHalfSaturationMilligramsNPerLitre;
        double capacity = capacityMilligramsPerLitreHour * hours;
        double supply = start + (turned * clear);

        // (1 + turned) c² + ((1 + turned) K + capacity − supply) c − supply K = 0, positive root without cancellation.
        double a = 1 + turned;
        double b = (a * half) + capacity - supply;
        double root = Math.Sqrt((b * b) + (4 * a * supply * half));
        double end = b > 0 ? 2 * supply * half / (b + root) : (root - b) / (2 * a);
        blanketNitrateMilligramsNPerLitre = end;
        return Math.Min(capacity * end / (half + end) * blanketLitres, tankMilligrams) / MilligramsPerGram;
    }

    /// <summary>Background loss as a first-order coefficient, L/h, of the water standing in media beds and settled pockets only.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="standingLitres">Water that stands there, L; never the whole loop.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    public static double BackgroundConductanceLitresPerHour(
        MineralizationParameters parameters, double standingLitres, double temperatureCelsius) =>
        parameters.BackgroundDenitrificationPerDay / UnitConstants.HoursPerDay * standingLitres
            * Math.Pow(parameters.DenitrificationTemperatureBase, temperatureCelsius - ReferenceCelsius);
}
