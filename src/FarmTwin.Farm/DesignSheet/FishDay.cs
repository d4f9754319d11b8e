using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>What some fish take and give on a day of full meals: from the season's own meals and lags, run until the days repeat.</summary>
/// <param name="FeedGrams">Feed given, g.</param>
/// <param name="GainGrams">Live weight gained, g.</param>
/// <param name="TanGrams">Ammonia excreted, g N.</param>
/// <param name="OxygenGrams">Oxygen breathed, g.</param>
/// <param name="PeakOxygenGramsPerHour">Most oxygen breathed in an hour, after a meal, g/h.</param>
/// <param name="PeakCarbonDioxideGramsPerHour">Carbon dioxide breathed out in that hour, g CO2/h.</param>
/// <param name="SolidsDryGrams">Faeces and uneaten feed, g dry.</param>
/// <param name="Solids">Elements in them, g.</param>
/// <param name="Dissolved">Elements that dissolve, nitrogen as TAN, g.</param>
public readonly record struct FishDay(
    double FeedGrams,
    double GainGrams,
    double TanGrams,
    double OxygenGrams,
    double PeakOxygenGramsPerHour,
    double PeakCarbonDioxideGramsPerHour,
    double SolidsDryGrams,
    ElementGrams Solids,
    ElementGrams Dissolved)
{
    // The lags of ammonia and oxygen are of some hours: after three days every day is like the last.
    private const int DaysToRepeat = 4;
    private const int StepsAnHour = 6;

    /// <summary>The day of some fish.</summary>
    /// <param name="parts">The farm: species, feed, meals.</param>
    /// <param name="fish">The fish.</param>
    /// <param name="water">Their water.</param>
    public static FishDay Of(FarmParts parts, IEnumerable<StandingFish> fish, in FishWater water)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(fish);
        FishDay sum = default;
        foreach (StandingFish standing in fish)
        {
            sum += OfOne(parts, standing, water);
        }

        return sum;
    }

    /// <summary>Both together; their peaks fall on the same meals.</summary>
    public static FishDay operator +(in FishDay left, in FishDay right) => new(
        left.FeedGrams + right.FeedGrams,
        left.GainGrams + right.GainGrams,
        left.TanGrams + right.TanGrams,
        left.OxygenGrams + right.OxygenGrams,
        left.PeakOxygenGramsPerHour + right.PeakOxygenGramsPerHour,
        left.PeakCarbonDioxideGramsPerHour + right.PeakCarbonDioxideGramsPerHour,
        left.SolidsDryGrams + right.SolidsDryGrams,
        left.Solids + right.Solids,
        left.Dissolved + right.Dissolved);

    private static FishDay OfOne(FarmParts parts, in StandingFish fish, in FishWater water)
    {
        FishParameters species = parts.Species[parts.SpeciesOfStocking[fish.Batch]];
        Description.FeedingDescription feeding = parts.Farm.Feeding;
        double mealShare = 1.0 / feeding.MealHours.Count;
        int[] meals = [.. feeding.MealHours.Select(h => (int)Math.Round(h * StepsAnHour))];
        var cohort = new Cohort("design", 0, fish.Number, fish.Grams, parts.Stocking[fish.Batch].CoefficientOfVariation, 0);
        double offered = Feeding.SatiationGramsPerDay(cohort, species, feeding.UneatenShare, water) * feeding.RationShare * mealShare;
        FishDay day = default;
        for (int repeat = 0; repeat < DaysToRepeat; repeat++)
        {
            day = default;
            var lastHour = new Queue<StepResult>();
            cohort.MeanGrams = fish.Grams;
            for (int step = 0; step < StepsAnHour * (int)UnitConstants.HoursPerDay; step++)
            {
                if (Array.IndexOf(meals, step) >= 0)
                {
                    MealResult meal = Feeding.Meal(cohort, species, parts.FeedOfStocking[fish.Batch], offered, mealShare, feeding.UneatenShare, water);
                    day = day with
                    {
                        FeedGrams = day.FeedGrams + offered,
                        SolidsDryGrams = day.SolidsDryGrams + meal.FaecalDryGrams + meal.UneatenDryGrams,
                        Solids = day.Solids + meal.Solids,
                        Dissolved = day.Dissolved + meal.Dissolved,
                    };
                }

                StepResult breath = Metabolism.Step(cohort, species, 1.0 / StepsAnHour, water);
                lastHour.Enqueue(breath);
                if (lastHour.Count > StepsAnHour)
                {
                    lastHour.Dequeue();
                }

                day = day with
                {
                    TanGrams = day.TanGrams + breath.TanGrams,
                    OxygenGrams = day.OxygenGrams + breath.OxygenDemandGrams,
                    PeakOxygenGramsPerHour = Math.Max(day.PeakOxygenGramsPerHour, lastHour.Sum(b => b.OxygenDemandGrams)),
                    PeakCarbonDioxideGramsPerHour = Math.Max(day.PeakCarbonDioxideGramsPerHour,
                        lastHour.Sum(b => b.CarbonDioxideCarbonGrams) * UnitConstants.CarbonDioxidePerCarbon),
                    Dissolved = day.Dissolved + breath.Dissolved,
                };
            }

            day = day with { GainGrams = fish.Number * (cohort.MeanGrams - fish.Grams) };
        }

        return day with { Dissolved = day.Dissolved.WithNitrogen(day.TanGrams) };
    }
}
