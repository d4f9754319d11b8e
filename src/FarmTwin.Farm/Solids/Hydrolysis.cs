namespace FarmTwin.Farm.Solids;

/// <summary>First-order hydrolysis of degradable volatile solids and the release of what they hold.</summary>
/// <remarks>
/// <para>
/// A body of solids is described by its dry matter, its degradable volatile part X_d and its content of each element. While it
/// decays, dry matter falls by exactly what X_d loses, so X_d at the start follows: X_d0 = ρ (DM − X_d) with
/// ρ = fresh degradable share / (1 − fresh degradable share), and q = X_d/X_d0 is what is left. For solids of one original
/// composition this stays exact however many ages are mixed.
/// </para>
/// <para>Pure functions; amounts released are those of the exact solution over the step and never exceed what is held.</para>
/// </remarks>
public static class Hydrolysis
{
    private const double ReferenceCelsius = 20;
    private const double LogarithmOfTen = 2.302585092994046;

    /// <summary>Hydrolysis rate k_h, 1/h.</summary>
    /// <remarks>Between no oxygen and full oxygen the rate rises linearly, so that no step meets a jump.</remarks>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="oxygenMilligramsPerLitre">Oxygen around the solids, mg/L.</param>
    public static double RatePerHour(SolidsParameters parameters, double temperatureCelsius, double oxygenMilligramsPerLitre)
    {
        double aerobic = Math.Clamp(oxygenMilligramsPerLitre / parameters.FullHydrolysisOxygenMilligramsPerLitre, 0, 1);
        double factor = parameters.AnoxicHydrolysisFactor + ((1 - parameters.AnoxicHydrolysisFactor) * aerobic);
        return parameters.HydrolysisRatePerDay / UnitConstants.HoursPerDay
            * Math.Pow(parameters.HydrolysisTemperatureBase, temperatureCelsius - ReferenceCelsius) * factor;
    }

    /// <summary>Volatile solids destroyed over a step, g.</summary>
    /// <param name="degradableGrams">X_d at the start of the step, g.</param>
    /// <param name="ratePerHour">From <see cref="RatePerHour"/>, 1/h.</param>
    /// <param name="hours">Length of the step, h.</param>
    public static double DestroyedGrams(double degradableGrams, double ratePerHour, double hours) =>
        degradableGrams * -Expm1(-ratePerHour * hours);

    /// <summary>Share q of the original degradable solids that is left, 0–1.</summary>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="dryMatterGrams">Dry matter, g.</param>
    /// <param name="degradableGrams">Its degradable volatile part, g.</param>
    public static double RemainingShare(SolidsParameters parameters, double dryMatterGrams, double degradableGrams)
    {
        double fresh = parameters.FreshDegradableGramsPerGram;
        double original = (dryMatterGrams - degradableGrams) * fresh / (1 - fresh);
        return original > degradableGrams ? Math.Max(0, degradableGrams) / original : 1;
    }

    /// <summary>Dry matter of the same solids when they were fresh, g.</summary>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="dryMatterGrams">Dry matter now, g.</param>
    /// <param name="degradableGrams">Its degradable volatile part now, g.</param>
    public static double OriginalDryMatterGrams(SolidsParameters parameters, double dryMatterGrams, double degradableGrams) =>
        Math.Max(0, dryMatterGrams - degradableGrams) / (1 - parameters.FreshDegradableGramsPerGram);

    /// <summary>Share of an element of fresh solids that can dissolve; of P and Ca it depends on pH.</summary>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="element">Index as in <see cref="Element"/>.</param>
    /// <param name="pH">pH of the water around the solids.</param>
    public static double FreshMobileShare(SolidsParameters parameters, int element, double pH) => element switch
    {
        Element.Phosphorus => PhosphorusShare(parameters, pH),
        Element.Calcium => CalciumShare(parameters, PhosphorusShare(parameters, pH)),
        _ => parameters.MobileShares[element],
    };

    /// <summary>Share of the element held now that can still dissolve, f q/(1 − f + f q).</summary>
    /// <param name="freshMobileShare">f, from <see cref="FreshMobileShare"/>.</param>
    /// <param name="remainingShare">q, from <see cref="RemainingShare"/>.</param>
    public static double MobileShare(double freshMobileShare, double remainingShare)
    {
        double mobile = freshMobileShare * remainingShare;
        return mobile <= 0 ? 0 : mobile / (1 - freshMobileShare + mobile);
    }

    /// <summary>Share of the element held now that can still dissolve, for elements whose share does not follow pH.</summary>
    public static double MobileShare(SolidsParameters parameters, int element, double remainingShare) =>
        MobileShare(parameters.MobileShares[element], remainingShare);

    /// <summary>
    /// Grams of an element that dissolve over a step, anywhere but P and Ca inside the mineralization tank: with hydrolysis
    /// (N, Mg, S, Fe, and P and Ca by their pH share) or at the leaching rate (K, Na, Cl).
    /// </summary>
    /// <remarks>
    /// K, Na and Cl leach faster than q falls, and q knows only hydrolysis: by this function their last tenth goes as well.
    /// <see cref="LeachedGrams"/> holds it back where the original content is known.
    /// </remarks>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="element">Index as in <see cref="Element"/>.</param>
    /// <param name="contentGrams">Element held, g.</param>
    /// <param name="remainingShare">q at the start of the step, from <see cref="RemainingShare"/>.</param>
    /// <param name="ratePerHour">From <see cref="RatePerHour"/>, 1/h.</param>
    /// <param name="pH">pH of the water around the solids.</param>
    /// <param name="hours">Length of the step, h.</param>
    public static double ReleasedGrams(
        SolidsParameters parameters, int element, double contentGrams, double remainingShare, double ratePerHour, double pH, double hours)
    {
        double mobile = contentGrams * MobileShare(FreshMobileShare(parameters, element, pH), remainingShare);
        double rate = IsFast(element) ? parameters.FastLeachRatePerDay / UnitConstants.HoursPerDay : ratePerHour;
        return mobile * -Expm1(-rate * hours);
    }

    /// <summary>Grams of K, Na or Cl that leach over a step where the original content is known: down to 1 − f of it.</summary>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="element">Index as in <see cref="Element"/>.</param>
    /// <param name="contentGrams">Element held, g.</param>
    /// <param name="originalGrams">Element held when the solids were fresh, g.</param>
    /// <param name="hours">Length of the step, h.</param>
    public static double LeachedGrams(SolidsParameters parameters, int element, double contentGrams, double originalGrams, double hours) =>
        LeachableGrams(parameters.MobileShares[element], contentGrams, originalGrams) * Approach(parameters.FastLeachRatePerDay, hours);

    /// <summary>
    /// Grams of P or Ca that dissolve (positive) or fall back onto the solids (negative) over a step in the mineralization tank,
    /// on the way to the dissolved share of their pH.
    /// </summary>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="element"><see cref="Element.Phosphorus"/> or <see cref="Element.Calcium"/>.</param>
    /// <param name="contentGrams">Element on the solids, g.</param>
    /// <param name="dissolvedGrams">Element in the tank's water, g: the most that can fall back.</param>
    /// <param name="originalGrams">Element on the same solids when fresh, g; content + dissolved where that is not known.</param>
    /// <param name="pH">pH of the tank.</param>
    /// <param name="hours">Length of the step, h.</param>
    public static double EquilibriumReleaseGrams(
        SolidsParameters parameters, int element, double contentGrams, double dissolvedGrams, double originalGrams, double pH, double hours) =>
        EquilibriumReleaseGrams(FreshMobileShare(parameters, element, pH), contentGrams, dissolvedGrams, originalGrams,
            Approach(parameters.EquilibriumRatePerDay, hours));

    /// <summary>The same with the share f that can dissolve and the share of the way covered in the step at hand.</summary>
    internal static double EquilibriumReleaseGrams(
        double freshMobileShare, double contentGrams, double dissolvedGrams, double originalGrams, double approach) =>
        Math.Clamp((contentGrams - ((1 - freshMobileShare) * originalGrams)) * approach, -dissolvedGrams, contentGrams);

    /// <summary>Grams of K, Na or Cl that can leach at all: down to 1 − f of the original content.</summary>
    internal static double LeachableGrams(double freshMobileShare, double contentGrams, double originalGrams) =>
        Math.Clamp(contentGrams - ((1 - freshMobileShare) * originalGrams), 0, contentGrams);

    /// <summary>Share of its way that a first-order change covers, 1 − e^(−k t).</summary>
    /// <param name="ratePerDay">k, 1/d.</param>
    /// <param name="hours">t, h.</param>
    internal static double Approach(double ratePerDay, double hours) => -Expm1(-ratePerDay / UnitConstants.HoursPerDay * hours);

    /// <summary>Shares of P and Ca of fresh solids that can dissolve at a pH; one power for both.</summary>
    internal static (double Phosphorus, double Calcium) AcidMobileShares(SolidsParameters parameters, double pH)
    {
        double phosphorus = PhosphorusShare(parameters, pH);
        return (phosphorus, CalciumShare(parameters, phosphorus));
    }

    /// <summary>Whether an element leaches at its own fast rate (K, Na, Cl).</summary>
    public static bool IsFast(int element) =>
        element is Element.Potassium or Element.Sodium or Element.Chloride;

    private static double PhosphorusShare(SolidsParameters parameters, double pH) =>
        parameters.PhosphorusBaseShare + (parameters.PhosphorusAcidShare
            / (1 + Math.Exp(LogarithmOfTen * parameters.PhosphorusSlopePerPH * (pH - parameters.PhosphorusMiddlePH))));

    private static double CalciumShare(SolidsParameters parameters, double phosphorusShare) =>
        Math.Min(1, phosphorusShare + parameters.CalciumExtraShare);

    // e^x − 1 without cancellation at the small exponents of a one-minute step (series to the fourth order below 1e-3).
    private static double Expm1(double x) =>
        Math.Abs(x) < 1e-3 ? x * (1 + (x / 2 * (1 + (x / 3 * (1 + (x / 4)))))) : Math.Exp(x) - 1;
}
