namespace FarmTwin.Farm.Fish;

/// <summary>Between meals: maintenance, excretion and respiration over a span of any length.</summary>
/// <remarks>
/// Every part is the closed-form solution for constant temperature, so weight, oxygen and carbon dioxide do not depend on how the
/// span is cut. Only the release of the nitrogen of fasting tissue takes its rate as constant within a step. Dissolved nitrogen is
/// booked wholly as TAN: urea hydrolyses within hours. No allocation.
/// </remarks>
public static class Metabolism
{
    private const double MolarOxygen = 2 * UnitConstants.AtomicWeight.Oxygen;

    /// <summary>What a span would give and ask, without changing the cohort.</summary>
    /// <param name="cohort">The fish.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="hours">Length of the span, h, at least 0.</param>
    /// <param name="water">Their water, constant over the span.</param>
    public static StepResult Preview(Cohort cohort, FishParameters parameters, double hours, in FishWater water) =>
        Compute(cohort, parameters, hours, water.TemperatureCelsius).Result;

    /// <summary>Lives a span: burns weight, advances the pools, and returns what the water gets and gives.</summary>
    /// <param name="cohort">The fish; changed.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="hours">Length of the span, h, at least 0.</param>
    /// <param name="water">Their water, constant over the span.</param>
    public static StepResult Step(Cohort cohort, FishParameters parameters, double hours, in FishWater water)
    {
        MetabolicStep step = Compute(cohort, parameters, hours, water.TemperatureCelsius);
        Live(cohort, parameters, in step);
        return step.Result;
    }

    /// <summary>A span worked out, to be lived by <see cref="Live"/> or let be.</summary>
    internal static MetabolicStep Compute(Cohort cohort, FishParameters parameters, double hours, double celsius)
    {
        double number = cohort.Number;
        double warmth = Feeding.MetabolicTemperatureFactor(parameters, celsius);

        // dW/dt = -e m0 q Wk^0.8 makes Wk^0.2 fall along a straight line, whose fourth power is the metabolic weight.
        double lossPerHour = parameters.ConversionGramsPerGram * parameters.MaintenanceGramsPerDay * warmth / UnitConstants.HoursPerDay;
        double root = Math.Pow(cohort.MeanGrams / UnitConstants.GramsPerKilogram, 1 - Feeding.MetabolicExponent);
        double rootAfter = Math.Max(
            0, root - ((1 - Feeding.MetabolicExponent) * lossPerHour / UnitConstants.GramsPerKilogram * hours));
        double metabolicHours = hours * MeanFourthPower(root, rootAfter);
        double lossPerFish = Math.Min(lossPerHour * metabolicHours, cohort.MeanGrams);
        double loss = number * lossPerFish;
        ElementGrams released = parameters.TissueOf(loss);

        double firstNitrogen = cohort.DissolvedNitrogenFirstStageGrams;
        double secondNitrogen = cohort.DissolvedNitrogenSecondStageGrams;
        double firstOxygen = cohort.FeedingOxygenFirstStageGrams;
        double secondOxygen = cohort.FeedingOxygenSecondStageGrams;
        double tan = TwoStageLag.Advance(
            ref firstNitrogen, ref secondNitrogen, parameters.StageConstantPerHour, hours > 0 ? released.Nitrogen / hours : 0, hours);
        double oxygen = TwoStageLag.Advance(ref firstOxygen, ref secondOxygen, parameters.StageConstantPerHour, 0, hours)
            + (number * parameters.RestingOxygenGramsPerDay * warmth / UnitConstants.HoursPerDay * metabolicHours);

        var result = new StepResult(
            tan,
            oxygen,
            oxygen * parameters.RespiratoryQuotient * UnitConstants.AtomicWeight.Carbon / MolarOxygen,
            loss,
            released.WithNitrogen(0));
        return new MetabolicStep(result, lossPerFish, firstNitrogen, secondNitrogen, firstOxygen, secondOxygen);
    }

    /// <summary>Lives a span that was worked out for this cohort as it still is.</summary>
    internal static void Live(Cohort cohort, FishParameters parameters, in MetabolicStep step)
    {
        double before = cohort.MeanGrams;
        cohort.MeanGrams = before - step.LossPerFishGrams;
        cohort.CoefficientOfVariation = SpreadAfterLoss(cohort, parameters, before);
        cohort.GainedGrams -= step.Result.WeightLossGrams;
        cohort.DissolvedNitrogenFirstStageGrams = step.NitrogenFirstStageGrams;
        cohort.DissolvedNitrogenSecondStageGrams = step.NitrogenSecondStageGrams;
        cohort.FeedingOxygenFirstStageGrams = step.OxygenFirstStageGrams;
        cohort.FeedingOxygenSecondStageGrams = step.OxygenSecondStageGrams;
    }

    // Mean of s^4 while s goes evenly from one value to the other.
    private static double MeanFourthPower(double from, double to)
    {
        double a = from * from;
        double b = to * to;
        double fromFourth = a * a;
        double toFourth = b * b;
        return (fromFourth + (a * from * to) + (a * b) + (from * to * b) + toFourth) / 5;
    }

    private static double SpreadAfterLoss(Cohort cohort, FishParameters parameters, double before) => cohort.MeanGrams > 0
        ? Math.Max(0, cohort.CoefficientOfVariation + (parameters.SpreadDrift * Math.Log(cohort.MeanGrams / before)))
        : cohort.CoefficientOfVariation;
}
