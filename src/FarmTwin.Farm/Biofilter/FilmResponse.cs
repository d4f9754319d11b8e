namespace FarmTwin.Farm.Biofilter;

/// <summary>The factors by which temperature, pH, oxygen, free ammonia and alkalinity scale nitrifier growth.</summary>
/// <remarks>Pure functions without state; each is 1 at its reference condition and never negative.</remarks>
public static class FilmResponse
{
    private const double ReferenceCelsius = 20;

    // Ekama's curve as Ekama & Wentzel (2008) print it; coefficients checked against a public implementation,
    // their placing by continuity at 7.2 (1.13 × 2.3 / 2.6 = 0.9996).
    private const double EkamaOptimumPH = 7.2;
    private const double EkamaAcidBase = 2.35;
    private static readonly double EkamaAcidLogarithm = Math.Log(EkamaAcidBase);
    private const double EkamaAlkalineFactor = 1.13;
    private const double EkamaAlkalineMaximumPH = 9.5;
    private const double EkamaAlkalineOffset = 0.3;

    // US Environmental Protection Agency (1975), Process Design Manual for Nitrogen Control (from memory, not re-read).
    private const double AgencySlopePerPH = 0.833;

    /// <summary>Growth rate at a temperature over that at 20 °C: Arrhenius to the warm limit, then linearly to 0 at the lethal one.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="population">Which population.</param>
    /// <param name="temperatureCelsius">Water temperature, °C; published for 8–32 °C, extrapolated below.</param>
    public static double Temperature(NitrificationParameters parameters, NitrifierPopulation population, double temperatureCelsius)
    {
        double activationJoules = parameters.Of(population).ActivationEnergyKilojoulesPerMole * 1000;
        double warm = parameters.WarmLimitCelsius;
        double kelvin = Math.Min(temperatureCelsius, warm) + UnitConstants.ZeroCelsiusInKelvin;
        double factor = Math.Exp(activationJoules / UnitConstants.GasConstantJoulePerMoleKelvin
            * ((1 / (ReferenceCelsius + UnitConstants.ZeroCelsiusInKelvin)) - (1 / kelvin)));
        if (temperatureCelsius <= warm)
        {
            return factor;
        }

        double left = (parameters.LethalLimitCelsius - temperatureCelsius) / (parameters.LethalLimitCelsius - warm);
        return factor * Math.Max(0, left);
    }

    /// <summary>Decay rate at a temperature, 1/d.</summary>
    public static double DecayRatePerDay(NitrificationParameters parameters, NitrifierPopulation population, double temperatureCelsius) =>
        parameters.Of(population).DecayRatePerDay * Math.Pow(parameters.DecayTemperatureBase, temperatureCelsius - ReferenceCelsius);

    /// <summary>The pH factor, by the chosen published curve; 1 at pH 7.2.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="pH">pH of the bulk water.</param>
    public static double Acidity(NitrificationParameters parameters, double pH)
    {
        double factor;
        if (parameters.AcidityResponse == AcidityResponse.EnvironmentalProtectionAgencyLine)
        {
            factor = pH >= EkamaOptimumPH ? 1 : 1 - (AgencySlopePerPH * (EkamaOptimumPH - pH));
        }
        else if (pH <= EkamaOptimumPH)
        {
            factor = Math.Exp(EkamaAcidLogarithm * (pH - EkamaOptimumPH));
        }
        else if (pH < EkamaAlkalineMaximumPH)
        {
            factor = EkamaAlkalineFactor * (EkamaAlkalineMaximumPH - pH) / (EkamaAlkalineMaximumPH + EkamaAlkalineOffset - pH);
        }
        else
        {
            factor = 0;
        }

        return Math.Max(factor, parameters.LowestAcidityFactor);
    }

    /// <summary>Monod factor of oxygen.</summary>
    /// <param name="halfSaturationMilligramsPerLitre">Half-saturation, mg/L.</param>
    /// <param name="oxygenMilligramsPerLitre">Dissolved oxygen, mg/L; negative counts as none.</param>
    public static double Oxygen(double halfSaturationMilligramsPerLitre, double oxygenMilligramsPerLitre)
    {
        double oxygen = Math.Max(0, oxygenMilligramsPerLitre);
        return oxygen / (halfSaturationMilligramsPerLitre + oxygen);
    }

    /// <summary>Carbon supply of ammonia oxidizers, alkalinity/(K + alkalinity); 1 for nitrite oxidizers or K = 0.</summary>
    public static double Alkalinity(NitrificationParameters parameters, NitrifierPopulation population, double alkalinityMilligramsPerLitre)
    {
        double half = parameters.AlkalinityHalfSaturationMilligramsPerLitre;
        if (population == NitrifierPopulation.NitriteOxidizers || half <= 0)
        {
            return 1;
        }

        double alkalinity = Math.Max(0, alkalinityMilligramsPerLitre);
        return alkalinity / (half + alkalinity);
    }
}
