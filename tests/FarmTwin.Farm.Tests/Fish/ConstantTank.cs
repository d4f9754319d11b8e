using FarmTwin.Farm.Fish;

namespace FarmTwin.Farm.Tests.Fish;

/// <summary>A cohort in water that never changes, fed to appetite at fixed hours. Sums what it gives and asks.</summary>
internal sealed class ConstantTank(FishParameters parameters, FishWater water, double number, double grams)
{
    public Cohort Cohort { get; } = new("test", 0, number, grams, 0.12, 0);

    public int[] MealHours { get; init; } = [8, 12, 16];

    public double UneatenFraction { get; init; } = FishLibrary.Feed.UneatenFraction;

    public double StepHours { get; init; } = 1;

    /// <summary>Constant death rate imposed, 1/h; null for none.</summary>
    public double DeathsPerHour { get; init; }

    /// <summary>Offer this share of the live weight a day instead of feeding to appetite.</summary>
    public double? OfferedShareOfWeight { get; init; }

    public double TanGrams { get; private set; }

    public double OxygenGrams { get; private set; }

    public double CarbonGrams { get; private set; }

    public double FaecalDryGrams { get; private set; }

    public double UneatenGrams { get; private set; }

    public ElementGrams SolidsGrams { get; private set; }

    public ElementGrams LostWithBodiesGrams { get; private set; }

    public double OpeningGrams { get; } = number * grams;

    public double FeedConversion => Cohort.FedGrams / (Cohort.BiomassGrams - OpeningGrams);

    public List<double> TanByHour { get; } = [];

    public List<double> FedByDay { get; } = [];

    public void Run(int days)
    {
        for (int day = 0; day < days; day++)
        {
            double fedBefore = Cohort.FedGrams;
            for (int hour = 0; hour < 24; hour++)
            {
                RunHour(hour);
            }

            FedByDay.Add(Cohort.FedGrams - fedBefore);
        }
    }

    private void RunHour(int hour)
    {
        if (Array.IndexOf(MealHours, hour) >= 0)
        {
            double offered = (OfferedShareOfWeight * Cohort.BiomassGrams
                ?? Feeding.SatiationGramsPerDay(Cohort, parameters, UneatenFraction, water)) / MealHours.Length;
            MealResult meal = Feeding.Meal(
                Cohort, parameters, FishLibrary.Feed, offered, 1.0 / MealHours.Length, UneatenFraction, water);
            FaecalDryGrams += meal.FaecalDryGrams;
            UneatenGrams += meal.UneatenGrams;
            SolidsGrams += meal.Solids;
        }

        double tan = 0;
        int steps = (int)Math.Round(1 / StepHours);
        for (int i = 0; i < steps; i++)
        {
            StepResult step = Metabolism.Step(Cohort, parameters, StepHours, water);
            tan += step.TanGrams;
            OxygenGrams += step.OxygenDemandGrams;
            CarbonGrams += step.CarbonDioxideCarbonGrams;
        }

        TanGrams += tan;
        TanByHour.Add(tan);
        if (DeathsPerHour > 0)
        {
            LostWithBodiesGrams += Survival.Die(Cohort, parameters, Cohort.Number * (1 - Math.Exp(-DeathsPerHour)));
        }
    }
}
