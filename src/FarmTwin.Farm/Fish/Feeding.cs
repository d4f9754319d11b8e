namespace FarmTwin.Farm.Fish;

/// <summary>Appetite, eating and the gain that follows from it.</summary>
/// <remarks>
/// The cube-root (thermal-unit) family of Iwama &amp; Tautz (1981) with a temperature bell in place of raw temperature, and gain
/// tied to feed eaten by a straight line with a maintenance intercept: so conversion, under-feeding, fasting and excretion all
/// follow from the one flow of feed. Pure functions and one that changes a cohort; no allocation.
/// </remarks>
public static class Feeding
{
    /// <summary>Temperature at which maintenance and resting respiration are stated, °C.</summary>
    public const double ReferenceCelsius = 28;

    /// <summary>Exponent of weight in maintenance and resting respiration (conventional metabolic weight of fish).</summary>
    public const double MetabolicExponent = 0.8;

    // Bolte, Nath & Ernst (1995): the response falls to exp(-4.6), one hundredth, at either end of the range.
    private const double BellDepth = 4.6;
    private const double DegreesPerQ10 = 10;

    /// <summary>Growth at a temperature as a share of that at the optimum, 0–1 (bell of Bolte, Nath &amp; Ernst 1995).</summary>
    public static double TemperatureFactor(FishParameters parameters, double temperatureCelsius)
    {
        double optimum = parameters.OptimumGrowthCelsius;
        double distance = temperatureCelsius < optimum
            ? (optimum - temperatureCelsius) / (optimum - parameters.MinimumGrowthCelsius)
            : (temperatureCelsius - optimum) / (parameters.MaximumGrowthCelsius - optimum);
        double square = distance * distance;
        return Math.Exp(-BellDepth * square * square);
    }

    /// <summary>Maintenance and resting respiration at a temperature over those at 28 °C.</summary>
    public static double MetabolicTemperatureFactor(FishParameters parameters, double temperatureCelsius) =>
        Math.Pow(parameters.MaintenanceQ10, (temperatureCelsius - ReferenceCelsius) / DegreesPerQ10);

    /// <summary>Feed that holds the weight of one fish, g/d.</summary>
    /// <param name="parameters">The species.</param>
    /// <param name="grams">Live weight, g.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    public static double MaintenanceGramsPerDay(FishParameters parameters, double grams, double temperatureCelsius) =>
        parameters.MaintenanceGramsPerDay
        * Math.Pow(grams / UnitConstants.GramsPerKilogram, MetabolicExponent)
        * MetabolicTemperatureFactor(parameters, temperatureCelsius);

    /// <summary>Gain of one fish fed to appetite, g/d: 3 G phi W^(2/3) times the stress factors.</summary>
    public static double PotentialGainGramsPerDay(FishParameters parameters, double grams, in FishWater water)
    {
        double root = Math.Cbrt(grams);
        return 3 * parameters.GrowthCoefficientAt(grams) * TemperatureFactor(parameters, water.TemperatureCelsius) * root * root
            * Stress.OxygenFactor(parameters, grams, water.OxygenMilligramsPerLitre)
            * Stress.AmmoniaFactor(parameters, water.UnionizedAmmoniaMilligramsNPerLitre)
            * Stress.NitrateFactor(parameters, water.NitrateMilligramsNPerLitre);
    }

    /// <summary>What one fish would eat in a day, g as fed; 0 where the water is too cold to feed.</summary>
    /// <param name="parameters">The species.</param>
    /// <param name="grams">Live weight, g.</param>
    /// <param name="water">Its water.</param>
    public static double AppetiteGramsPerFishDay(FishParameters parameters, double grams, in FishWater water)
    {
        double willing = Math.Clamp(
            (water.TemperatureCelsius - parameters.FeedingStopsCelsius)
            / (parameters.FeedingFullCelsius - parameters.FeedingStopsCelsius),
            0, 1);
        return willing <= 0 ? 0 : willing * (MaintenanceGramsPerDay(parameters, grams, water.TemperatureCelsius)
            + (PotentialGainGramsPerDay(parameters, grams, water) / parameters.ConversionGramsPerGram));
    }

    /// <summary>Feed to offer to a cohort in a day so that it eats its fill, g as fed.</summary>
    public static double SatiationGramsPerDay(Cohort cohort, FishParameters parameters, double uneatenFraction, in FishWater water) =>
        cohort.Number * AppetiteGramsPerFishDay(parameters, cohort.MeanGrams, water) / (1 - uneatenFraction);

    /// <summary>One meal: the cohort eats, gains, and loads its pools.</summary>
    /// <remarks>
    /// Tissue is gained with its exact composition. Where gain asks more of an element than the dissolved share of the feed holds,
    /// the faeces give it up (it is absorbed better); only beyond that is it drawn from the water. Gain never retains more nitrogen
    /// than was digested.
    /// </remarks>
    /// <param name="cohort">The fish; changed.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="offeredGrams">Feed thrown to the cohort, g as fed, at least 0.</param>
    /// <param name="mealShare">The part of a day's appetite that this meal may fill, 0–1.</param>
    /// <param name="uneatenFraction">Share of the feed that is lost even to hungry fish, 0–1.</param>
    /// <param name="water">Their water at the meal.</param>
    public static MealResult Meal(
        Cohort cohort, FishParameters parameters, FeedComposition feed, double offeredGrams, double mealShare, double uneatenFraction,
        in FishWater water)
    {
        double number = cohort.Number;
        double eaten = number > 0
            ? Math.Min(offeredGrams * (1 - uneatenFraction),
                number * mealShare * AppetiteGramsPerFishDay(parameters, cohort.MeanGrams, water))
            : 0;
        double uneaten = offeredGrams - eaten;
        double digestedNitrogen = feed.ElementsOf(eaten).Nitrogen * parameters.ProteinDigestibility;
        double gain = Gain(cohort, parameters, eaten, mealShare, digestedNitrogen, water);
        ElementGrams offered = feed.ElementsOf(offeredGrams);
        ElementGrams retained = parameters.TissueOf(gain);
        ElementGrams solids = Solids(offered, retained, feed.SolidShare, offeredGrams > 0 ? uneaten / offeredGrams : 0)
            .WithNitrogen(offered.Nitrogen - digestedNitrogen);
        ElementGrams dissolved = (offered - solids - retained).WithNitrogen(0);

        if (eaten > 0)
        {
            double before = cohort.MeanGrams;
            cohort.MeanGrams = before + (gain / number);
            cohort.CoefficientOfVariation += parameters.SpreadDrift * Math.Log(cohort.MeanGrams / before);
            cohort.DissolvedNitrogenFirstStageGrams += digestedNitrogen - retained.Nitrogen;
            cohort.FeedingOxygenFirstStageGrams += parameters.FeedingOxygenGramsPerGram * eaten;
        }

        cohort.FedGrams += offeredGrams;
        cohort.EatenGrams += eaten;
        cohort.GainedGrams += gain;
        return new MealResult(
            eaten, uneaten, gain, parameters.FaecalDryGramsPerGram * eaten, feed.DryMatterFraction * uneaten, solids, dissolved);
    }

    // Feed up to the day's maintenance replaces what maintenance burns, whatever the oxygen; only the rest is converted worse when
    // oxygen is low. So a day's net gain is e_eff (eaten - maintenance), and that of a starved fish -e times the shortfall.
    private static double Gain(
        Cohort cohort, FishParameters parameters, double eaten, double mealShare, double digestedNitrogen, in FishWater water)
    {
        double conversion = Stress.ConversionFactor(parameters, water.OxygenMilligramsPerLitre);
        double surplus = conversion < 1
            ? Math.Max(0, eaten - (cohort.Number * mealShare
                * MaintenanceGramsPerDay(parameters, cohort.MeanGrams, water.TemperatureCelsius)))
            : 0;
        double gain = parameters.ConversionGramsPerGram * (eaten - (surplus * (1 - conversion)));
        double nitrogenPerGram = parameters.TissueOf(1).Nitrogen;
        return nitrogenPerGram > 0 ? Math.Min(gain, digestedNitrogen / nitrogenPerGram) : gain;
    }

    private static ElementGrams Solids(ElementGrams offered, ElementGrams retained, ElementGrams share, double uneatenShare) => new(
        0,
        Solid(offered.Phosphorus, retained.Phosphorus, share.Phosphorus, uneatenShare),
        Solid(offered.Potassium, retained.Potassium, share.Potassium, uneatenShare),
        Solid(offered.Calcium, retained.Calcium, share.Calcium, uneatenShare),
        Solid(offered.Magnesium, retained.Magnesium, share.Magnesium, uneatenShare),
        Solid(offered.Sodium, retained.Sodium, share.Sodium, uneatenShare),
        Solid(offered.Chloride, retained.Chloride, share.Chloride, uneatenShare),
        Solid(offered.Sulfur, retained.Sulfur, share.Sulfur, uneatenShare),
        Solid(offered.Iron, retained.Iron, share.Iron, uneatenShare));

    // The share as measured, less what a rich gain would be short of; the uneaten feed's part no fish can absorb.
    private static double Solid(double offered, double retained, double share, double uneatenShare) =>
        Math.Max(offered * share * uneatenShare, Math.Min(offered * share, offered - retained));
}
