using FarmTwin.Engine.Chance;

namespace FarmTwin.Farm.Fish;

/// <summary>Weights within a cohort: lognormal, so a share by number and a share by weight stand above any size.</summary>
/// <remarks>
/// With s² = ln(1 + cv²) and m = ln(mean) − s²/2. After a cut the rest is described again by a lognormal of the same first two
/// moments; its new tail is therefore an approximation. Done at events, not in a step.
/// </remarks>
public static class SizeSpread
{
    // A share of fish below this, at either end, is nobody: it would leave a mean weight made of rounding.
    private const double Negligible = 1e-9;

    /// <summary>Share of the fish above a weight, 0–1.</summary>
    /// <param name="meanGrams">Mean weight, g.</param>
    /// <param name="coefficientOfVariation">Spread, at least 0.</param>
    /// <param name="cutGrams">The weight, g.</param>
    public static double ShareAbove(double meanGrams, double coefficientOfVariation, double cutGrams) =>
        MomentAbove(meanGrams, coefficientOfVariation, cutGrams, 0);

    /// <summary>Share of the live weight that stands in fish above a weight, 0–1.</summary>
    public static double BiomassShareAbove(double meanGrams, double coefficientOfVariation, double cutGrams) =>
        MomentAbove(meanGrams, coefficientOfVariation, cutGrams, 1);

    /// <summary>The weight that a given share of the fish exceeds, g.</summary>
    /// <param name="meanGrams">Mean weight, g.</param>
    /// <param name="coefficientOfVariation">Spread, at least 0.</param>
    /// <param name="share">Inside (0, 1).</param>
    public static double WeightExceededBy(double meanGrams, double coefficientOfVariation, double share)
    {
        double sigma = Sigma(coefficientOfVariation);
        return meanGrams * Math.Exp((sigma * NormalDistribution.Quantile(1 - share)) - (sigma * sigma / 2));
    }

    /// <summary>Takes every fish above a weight.</summary>
    /// <param name="cohort">The fish; changed, with a new mean and spread.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="cutGrams">The weight above which fish are taken, g.</param>
    public static HarvestResult TopHarvest(Cohort cohort, FishParameters parameters, double cutGrams)
    {
        HarvestResult taken = Cut(cohort, parameters, cutGrams, out _);
        cohort.HarvestedNumber += taken.Number;
        cohort.HarvestedGrams += taken.Grams;
        return taken;
    }

    /// <summary>Takes the largest fish, a number of them.</summary>
    /// <param name="cohort">The fish; changed, with a new mean and spread.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="number">How many; more than there are means all.</param>
    public static HarvestResult TopHarvestNumber(Cohort cohort, FishParameters parameters, double number)
    {
        if (cohort.Number <= 0 || number < Negligible * cohort.Number)
        {
            return default;
        }

        if (number > (1 - Negligible) * cohort.Number)
        {
            return TopHarvest(cohort, parameters, 0);
        }

        return cohort.CoefficientOfVariation > 0
            ? TopHarvest(cohort, parameters, WeightExceededBy(cohort.MeanGrams, cohort.CoefficientOfVariation, number / cohort.Number))
            : TakeAverage(cohort, parameters, number);
    }

    /// <summary>What the largest fish of a cohort weigh together, g.</summary>
    /// <param name="cohort">The fish; not changed.</param>
    /// <param name="number">How many; more than there are means all.</param>
    public static double GramsOfLargest(Cohort cohort, double number)
    {
        ArgumentNullException.ThrowIfNull(cohort);
        if (number >= cohort.Number)
        {
            return cohort.BiomassGrams;
        }

        return cohort.CoefficientOfVariation > 0 && number > 0
            ? cohort.BiomassGrams * BiomassShareAbove(
                cohort.MeanGrams, cohort.CoefficientOfVariation, WeightExceededBy(cohort.MeanGrams, cohort.CoefficientOfVariation, number / cohort.Number))
            : cohort.MeanGrams * number;
    }

    /// <summary>Takes a number of average fish.</summary>
    public static HarvestResult TakeAverage(Cohort cohort, FishParameters parameters, double number)
    {
        double taken = Math.Clamp(number, 0, cohort.Number);
        double mean = cohort.MeanGrams;
        double grams = taken * mean;
        ElementGrams elements = cohort.Remove(parameters, taken, grams);
        cohort.MeanGrams = mean;
        cohort.HarvestedNumber += taken;
        cohort.HarvestedGrams += grams;
        return new HarvestResult(taken, grams, elements);
    }

    /// <summary>Grades: the fish above a weight become a cohort of their own, the rest stay.</summary>
    /// <remarks>Grading evens sizes; it does not make small fish grow better. Handling losses are the caller's
    /// (<see cref="Survival.Handle"/> on both).</remarks>
    /// <param name="cohort">The fish; keeps the small ones.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="cutGrams">The cut, g.</param>
    /// <param name="largeName">Name of the new cohort.</param>
    /// <returns>The large ones with their share of the pools; null when no fish is above the cut.</returns>
    public static Cohort? Grade(Cohort cohort, FishParameters parameters, double cutGrams, string largeName)
    {
        Cohort before = cohort.Clone();
        HarvestResult moved = Cut(cohort, parameters, cutGrams, out double largeSpread);
        return moved.Number > 0 ? MoveOut(cohort, before, moved, largeSpread, largeName) : null;
    }

    /// <summary>Splits off a number of average fish as a cohort of their own.</summary>
    /// <returns>The new cohort with its share of the pools; null when the number is not above 0.</returns>
    public static Cohort? Split(Cohort cohort, FishParameters parameters, double number, string newName)
    {
        double taken = Math.Clamp(number, 0, cohort.Number);
        if (taken <= 0)
        {
            return null;
        }

        Cohort before = cohort.Clone();
        double mean = cohort.MeanGrams;
        double grams = taken * mean;
        ElementGrams elements = cohort.Remove(parameters, taken, grams);
        cohort.MeanGrams = mean;
        return MoveOut(cohort, before, new HarvestResult(taken, grams, elements), before.CoefficientOfVariation, newName);
    }

    private static Cohort MoveOut(Cohort cohort, Cohort before, HarvestResult moved, double spread, string name)
    {
        var large = new Cohort(name, before.SpeciesIndex, moved.Number, moved.MeanGrams, spread, before.StockedAtSecond)
        {
            DissolvedNitrogenFirstStageGrams = before.DissolvedNitrogenFirstStageGrams - cohort.DissolvedNitrogenFirstStageGrams,
            DissolvedNitrogenSecondStageGrams = before.DissolvedNitrogenSecondStageGrams - cohort.DissolvedNitrogenSecondStageGrams,
            FeedingOxygenFirstStageGrams = before.FeedingOxygenFirstStageGrams - cohort.FeedingOxygenFirstStageGrams,
            FeedingOxygenSecondStageGrams = before.FeedingOxygenSecondStageGrams - cohort.FeedingOxygenSecondStageGrams,
            HandlingHoursLeft = before.HandlingHoursLeft,
            ShockHazardPerHour = before.ShockHazardPerHour,
            LeavesQuarantineDay = before.LeavesQuarantineDay,
            Batch = before.Batch,
        };
        cohort.MovedNumber += moved.Number;
        cohort.MovedGrams += moved.Grams;
        return large;
    }

    private static HarvestResult Cut(Cohort cohort, FishParameters parameters, double cutGrams, out double largeSpread)
    {
        double number = cohort.Number;
        double mean = cohort.MeanGrams;
        double spread = cohort.CoefficientOfVariation;
        double share = ShareAbove(mean, spread, cutGrams);
        double biomassShare = BiomassShareAbove(mean, spread, cutGrams);
        double squareShare = MomentAbove(mean, spread, cutGrams, 2);
        if (share > 1 - Negligible)
        {
            share = biomassShare = squareShare = 1;
        }

        largeSpread = share > 0 ? Spread(share, biomassShare, squareShare, spread) : 0;
        double smallSpread = share < 1 ? Spread(1 - share, 1 - biomassShare, 1 - squareShare, spread) : 0;
        if (number <= 0 || share < Negligible)
        {
            return default;
        }

        double taken = number * share;
        double grams = number * mean * biomassShare;
        ElementGrams elements = cohort.Remove(parameters, taken, grams);
        cohort.CoefficientOfVariation = cohort.Number > 0 ? smallSpread : spread;
        return new HarvestResult(taken, grams, elements);
    }

    // Share of the k-th moment that stands above the cut: 0 number, 1 weight, 2 square of weight.
    private static double MomentAbove(double meanGrams, double coefficientOfVariation, double cutGrams, int order)
    {
        if (cutGrams <= 0)
        {
            return 1;
        }

        double sigma = Sigma(coefficientOfVariation);
        return sigma > 0
            ? NormalDistribution.Below(((Math.Log(meanGrams / cutGrams) - (sigma * sigma / 2)) / sigma) + (order * sigma))
            : meanGrams >= cutGrams ? 1 : 0;
    }

    private static double Spread(double share, double biomassShare, double squareShare, double spread) => Math.Sqrt(Math.Max(
        0, (squareShare * (1 + (spread * spread)) * share / (biomassShare * biomassShare)) - 1));

    private static double Sigma(double coefficientOfVariation) =>
        Math.Sqrt(Math.Log(1 + (coefficientOfVariation * coefficientOfVariation)));
}
