using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Biofilter;

/// <summary>Flux of nitrogen into a film: Monod kinetics behind a mass transfer resistance, in closed form (Best 1955).</summary>
/// <remarks>
/// The functions only state rates; the joint solve of the water integrates them. <c>area × conductance</c> is the first-order
/// coefficient (L/h) of the nitrogen form in the film's basin, exact at the concentration at which it was evaluated.
/// Nothing allocates.
/// </remarks>
public static class FilmFlux
{
    private const double ReferenceCelsius = 20;

    // Below this oxygen the ratio flux/oxygen is taken at its finite limit; far under any reading that matters (1e-9 mg/L).
    private const double SmallestOxygen = 1e-9;

    private const double LitresPerHourPerMetrePerDay = UnitConstants.LitresPerCubicMetre / UnitConstants.HoursPerDay;

    /// <summary>
    /// Growth rate of the film's cells in this temperature, pH and alkalinity before oxygen and free ammonia, 1/d.
    /// Evaluate once a step and pass it to the passes of the solve: it holds all the costly functions.
    /// </summary>
    public static double GrowthRatePerDay(
        NitrificationParameters parameters, NitrifierPopulation population, double temperatureCelsius, double pH, double alkalinityMilligramsPerLitre) =>
        parameters.Of(population).MaximumGrowthRatePerDay
            * FilmResponse.Temperature(parameters, population, temperatureCelsius)
            * FilmResponse.Acidity(parameters, pH)
            * FilmResponse.Alkalinity(parameters, population, alkalinityMilligramsPerLitre);

    /// <summary>Capacity of the living film, Jm, from a growth rate of <see cref="GrowthRatePerDay"/>, g N/(m² d).</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="population">Which population.</param>
    /// <param name="biomassGramsCodPerSquareMetre">Its biomass, g COD/m².</param>
    /// <param name="growthRatePerDay">From <see cref="GrowthRatePerDay"/>, 1/d.</param>
    /// <param name="oxygenMilligramsPerLitre">Iterated oxygen, mg/L.</param>
    /// <param name="unionizedAmmoniaMilligramsNPerLitre">Iterated NH3-N, mg/L.</param>
    public static double CapacityGramsPerSquareMetreDay(
        NitrificationParameters parameters,
        NitrifierPopulation population,
        double biomassGramsCodPerSquareMetre,
        double growthRatePerDay,
        double oxygenMilligramsPerLitre,
        double unionizedAmmoniaMilligramsNPerLitre)
    {
        PopulationParameters kinetics = parameters.Of(population);
        return LimitedCapacity(
            kinetics,
            Vector256.Create(growthRatePerDay * biomassGramsCodPerSquareMetre / kinetics.YieldGramsCodPerGramN),
            Vector256.Create(oxygenMilligramsPerLitre),
            Vector256.Create(unionizedAmmoniaMilligramsNPerLitre)).ToScalar();
    }

    /// <summary>The same of four films from their capacity at oxygen in plenty and without free ammonia, which no pass of a solve changes.</summary>
    /// <remarks>Both factors in one quotient: O/(K + O) × K_I/(K_I + NH3).</remarks>
    /// <param name="kinetics">Of the population.</param>
    /// <param name="unlimited">Growth rate × biomass / yield, g N/(m² d), or any multiple of it.</param>
    /// <param name="oxygenMilligramsPerLitre">Iterated oxygen, mg/L.</param>
    /// <param name="unionizedAmmoniaMilligramsNPerLitre">Iterated NH3-N, mg/L.</param>
    internal static Vector256<double> LimitedCapacity(
        PopulationParameters kinetics,
        Vector256<double> unlimited,
        Vector256<double> oxygenMilligramsPerLitre,
        Vector256<double> unionizedAmmoniaMilligramsNPerLitre)
    {
        Vector256<double> oxygen = Vector256.Max(Vector256.Create(SmallestOxygen), oxygenMilligramsPerLitre);
        Vector256<double> inhibition = Vector256.Create(kinetics.AmmoniaInhibitionMilligramsNPerLitre);
        return unlimited * oxygen * inhibition
            / ((Vector256.Create(kinetics.OxygenHalfSaturationMilligramsPerLitre) + oxygen)
                * (inhibition + Vector256.Max(Vector256<double>.Zero, unionizedAmmoniaMilligramsNPerLitre)));
    }

    /// <summary>Capacity of the living film, Jm = μ_max(T) f_O2 f_pH f_FA f_alk x/Y, g N/(m² d).</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="population">Which population.</param>
    /// <param name="biomassGramsCodPerSquareMetre">Its biomass, g COD/m².</param>
    /// <param name="conditions">The water it meets.</param>
    public static double CapacityGramsPerSquareMetreDay(
        NitrificationParameters parameters, NitrifierPopulation population, double biomassGramsCodPerSquareMetre, in FilmConditions conditions) =>
        CapacityGramsPerSquareMetreDay(
            parameters,
            population,
            biomassGramsCodPerSquareMetre,
            GrowthRatePerDay(parameters, population, conditions.TemperatureCelsius, conditions.PH, conditions.AlkalinityMilligramsPerLitre),
            conditions.OxygenMilligramsPerLitre,
            conditions.UnionizedAmmoniaMilligramsNPerLitre);

    /// <summary>
    /// The most ammonia flux that oxygen reaching the film can carry through to nitrate, g N/(m² d):
    /// ratio × k_L × 1.011^(T − 20) × DO / (g O2 per g N). Nitrite oxidation alone needs a quarter of it and has no cap.
    /// </summary>
    public static double OxygenCapGramsPerSquareMetreDay(NitrificationParameters parameters, double temperatureCelsius, double oxygenMilligramsPerLitre) =>
        parameters.OxygenDiffusivityRatio * parameters.TransferVelocityMetresPerDay
            * Math.Pow(parameters.OxygenLimitedTemperatureBase, temperatureCelsius - ReferenceCelsius)
            * Math.Max(SmallestOxygen, oxygenMilligramsPerLitre) / NitrificationStoichiometry.OxygenPerNitrogen(parameters);

    /// <summary>Best's flux, g N/(m² d), without an oxygen cap.</summary>
    /// <param name="transferVelocityMetresPerDay">k_L, m/d.</param>
    /// <param name="capacityGramsPerSquareMetreDay">Jm, g N/(m² d).</param>
    /// <param name="halfSaturationMilligramsNPerLitre">K, mg N/L.</param>
    /// <param name="concentrationMilligramsNPerLitre">S in the bulk water, mg N/L; negative counts as none.</param>
    public static double BestGramsPerSquareMetreDay(
        double transferVelocityMetresPerDay,
        double capacityGramsPerSquareMetreDay,
        double halfSaturationMilligramsNPerLitre,
        double concentrationMilligramsNPerLitre)
    {
        double concentration = Math.Max(0, concentrationMilligramsNPerLitre);
        return concentration * BestRatio(
            transferVelocityMetresPerDay,
            Vector256.Create(capacityGramsPerSquareMetreDay),
            halfSaturationMilligramsNPerLitre,
            Vector256.Create(concentration)).ToScalar();
    }

    /// <summary>Flux into the film, J, g N/(m² d): Best's law, not above the cap.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="population">Which population (its half-saturation is used).</param>
    /// <param name="capacityGramsPerSquareMetreDay">Jm, g N/(m² d).</param>
    /// <param name="concentrationMilligramsNPerLitre">TAN or nitrite in the bulk water, mg N/L.</param>
    /// <param name="oxygenCapGramsPerSquareMetreDay">From <see cref="OxygenCapGramsPerSquareMetreDay"/>; positive infinity for none.</param>
    public static double FluxGramsPerSquareMetreDay(
        NitrificationParameters parameters,
        NitrifierPopulation population,
        double capacityGramsPerSquareMetreDay,
        double concentrationMilligramsNPerLitre,
        double oxygenCapGramsPerSquareMetreDay = double.PositiveInfinity)
    {
        double flux = BestGramsPerSquareMetreDay(
            parameters.TransferVelocityMetresPerDay,
            capacityGramsPerSquareMetreDay,
            parameters.Of(population).HalfSaturationMilligramsNPerLitre,
            concentrationMilligramsNPerLitre);
        return Math.Min(flux, oxygenCapGramsPerSquareMetreDay);
    }

    /// <summary>Flux over concentration as a first-order coefficient, L/(h m²); finite at zero concentration.</summary>
    /// <remarks>Times the concentration (mg/L) and the area (m²) it is the uptake in mg N/h, times 24/1000 the flux in g N/(m² d).</remarks>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="population">Which population.</param>
    /// <param name="capacityGramsPerSquareMetreDay">Jm, g N/(m² d).</param>
    /// <param name="concentrationMilligramsNPerLitre">The iterate of TAN or nitrite, mg N/L.</param>
    /// <param name="oxygenCapGramsPerSquareMetreDay">From <see cref="OxygenCapGramsPerSquareMetreDay"/>; positive infinity for none.</param>
    public static double ConductanceLitresPerHourPerSquareMetre(
        NitrificationParameters parameters,
        NitrifierPopulation population,
        double capacityGramsPerSquareMetreDay,
        double concentrationMilligramsNPerLitre,
        double oxygenCapGramsPerSquareMetreDay = double.PositiveInfinity)
    {
        return Conductance(
            parameters.TransferVelocityMetresPerDay,
            parameters.Of(population).HalfSaturationMilligramsNPerLitre,
            Vector256.Create(capacityGramsPerSquareMetreDay),
            Vector256.Create(concentrationMilligramsNPerLitre),
            Vector256.Create(oxygenCapGramsPerSquareMetreDay)).ToScalar();
    }

    /// <summary>The same of four films, with the parameters at hand.</summary>
    internal static Vector256<double> Conductance(
        double transferVelocity, double halfSaturation, Vector256<double> capacity, Vector256<double> milligramsNPerLitre, Vector256<double> cap)
    {
        Vector256<double> concentration = Vector256.Max(Vector256<double>.Zero, milligramsNPerLitre);
        Vector256<double> ratio = BestRatio(transferVelocity, capacity, halfSaturation, concentration);
        ratio = Vector256.ConditionalSelect(Vector256.GreaterThan(ratio * concentration, cap), cap / concentration, ratio);
        return ratio * LitresPerHourPerMetrePerDay;
    }

    /// <summary>The films' oxygen uptake over oxygen, L/(h m²), for the oxygen solve; finite at zero oxygen.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="ammoniaFluxGramsPerSquareMetreDay">TAN oxidized, g N/(m² d), evaluated at this oxygen.</param>
    /// <param name="nitriteFluxGramsPerSquareMetreDay">Nitrite oxidized, g N/(m² d), evaluated at this oxygen.</param>
    /// <param name="oxygenMilligramsPerLitre">The iterate of oxygen, mg/L.</param>
    public static double OxygenConductanceLitresPerHourPerSquareMetre(
        NitrificationParameters parameters,
        double ammoniaFluxGramsPerSquareMetreDay,
        double nitriteFluxGramsPerSquareMetreDay,
        double oxygenMilligramsPerLitre)
    {
        double uptake = (ammoniaFluxGramsPerSquareMetreDay * NitrificationStoichiometry.OxygenPerAmmoniaNitrogen(parameters))
            + (nitriteFluxGramsPerSquareMetreDay * NitrificationStoichiometry.OxygenPerNitriteNitrogen(parameters));
        return uptake / Math.Max(SmallestOxygen, oxygenMilligramsPerLitre) * LitresPerHourPerMetrePerDay;
    }

    // J/S in m/d. The smaller root of Best's quadratic in its quotient form, so that nothing cancels at small S; the
    // discriminant is written as a sum of terms that cannot be negative.
    private static Vector256<double> BestRatio(
        double transferVelocity, Vector256<double> capacity, double halfSaturation, Vector256<double> concentration)
    {
        Vector256<double> living = Vector256.Max(Vector256<double>.Zero, capacity);
        Vector256<double> half = Vector256.Create(halfSaturation);
        Vector256<double> scaled = living / transferVelocity;
        Vector256<double> difference = concentration - scaled;
        Vector256<double> root = Vector256.Sqrt((difference * difference) + (half * (half + (2 * (concentration + scaled)))));
        return 2 * living / (concentration + half + scaled + root);
    }
}
