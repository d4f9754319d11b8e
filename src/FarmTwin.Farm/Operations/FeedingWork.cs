using FarmTwin.Farm.Business;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Feeding: a share of the appetite at each meal, cut or withheld on bad water where whoever feeds heeds it.</summary>
public sealed class FeedingWork : FarmWork
{
    private readonly double[] _mealHours;

    /// <summary>Makes it.</summary>
    public FeedingWork(FarmContext farm, FarmLog log)
        : base(farm, log) => _mealHours = [.. Parts.Farm.Feeding.MealHours];

    /// <summary>Feeds all tanks.</summary>
    public void Meal(long seconds)
    {
        double wanted = 0;
        for (int b = 0; b < State.Cohorts.Length; b++)
        {
            foreach (Cohort cohort in State.Cohorts[b])
            {
                double hungry = Wanted(cohort, b, seconds);
                double heed = HeedAt(b);
                wanted += hungry * heed;
                State.Totals.FeedWithheldGrams += hungry * (1 - heed);
            }
        }

        if (wanted <= 0)
        {
            return;
        }

        // Fish that must live on the oxygen in their water are not fed: digestion would take it.
        if (!State.Equipment.MainsOn && Parts.Farm.Feeding.HeedWater)
        {
            State.Totals.FeedWithheldGrams += wanted;
            Log.Add(seconds, "meal withheld", "all tanks", wanted, "g", "the mains are off");
            return;
        }

        double most = Parts.Farm.Feeding.MostKilogramsPerDay is { } limit
            ? limit * UnitConstants.GramsPerKilogram / _mealHours.Length
            : double.PositiveInfinity;
        double scale = Math.Min(1, most / wanted);
        for (int b = 0; b < State.Cohorts.Length; b++)
        {
            bool fed = false;
            int species = -1;
            foreach (Cohort cohort in State.Cohorts[b])
            {
                double offered = scale * Wanted(cohort, b, seconds) * HeedAt(b);
                if (offered > 0)
                {
                    Feed(cohort, b, offered);
                    fed = true;
                    species = cohort.SpeciesIndex;
                }
            }

            Spend(Chore.FeedTank, fed ? 1 : 0, species);
        }
    }

    /// <summary>What the feeder makes of the water: 1 feed, 0.5 half, 0 none.</summary>
    public double Heed(in FishWater water, double tanMilligramsNPerLitre)
    {
        PracticeParameters practice = Parts.Practice;
        if (!Parts.Farm.Feeding.HeedWater)
        {
            return 1;
        }

        if (water.UnionizedAmmoniaMilligramsNPerLitre > practice.FeedStoppedAmmonia
            || tanMilligramsNPerLitre > practice.FeedStoppedTan
            || water.NitriteMilligramsNPerLitre > practice.FeedStoppedNitrite
            || water.OxygenMilligramsPerLitre < practice.FeedStoppedOxygen)
        {
            return 0;
        }

        return water.UnionizedAmmoniaMilligramsNPerLitre > practice.FeedHalvedAmmonia
            || water.NitriteMilligramsNPerLitre > practice.FeedHalvedNitrite
            || water.OxygenMilligramsPerLitre < practice.FeedHalvedOxygen ? 0.5 : 1;
    }

    // Whoever has seen an alarm of oxygen, heat or pH does not feed while it stands.
    private double HeedAt(int basin) => State.Alarms.FeedStopped ? 0 :
        Heed(FishProcess.WaterOf(State.Basins, basin), State.Basins.MilligramsPerLitre(basin, Substance.Tan));

    // What is offered when the water is good.
    private double Wanted(Cohort cohort, int basin, long seconds)
    {
        FishParameters species = Parts.Species[cohort.SpeciesIndex];
        FishWater water = FishProcess.WaterOf(State.Basins, basin);
        double days = DayOf(seconds - cohort.StockedAtSecond);
        double settle = Parts.Farm.Feeding.SettleInDays > 0
            ? Math.Clamp(
                Parts.Farm.Feeding.FirstRationShare + ((1 - Parts.Farm.Feeding.FirstRationShare) * days / Parts.Farm.Feeding.SettleInDays), 0, 1)
            : 1;
        return settle * State.Operations.RationShare / _mealHours.Length
            * Feeding.SatiationGramsPerDay(cohort, species, Parts.Farm.Feeding.UneatenShare, water);
    }

    private void Feed(Cohort cohort, int basin, double offered)
    {
        FishParameters species = Parts.Species[cohort.SpeciesIndex];
        FishWater water = FishProcess.WaterOf(State.Basins, basin);
        MealResult meal = Feeding.Meal(
            cohort, species, Parts.Feed, offered, 1.0 / _mealHours.Length, Parts.Farm.Feeding.UneatenShare, water);
        SolidsProcess.Add(Farm, basin, meal.SolidsDryGrams, meal.Solids);
        double[] grams = State.Basins.Grams;
        int start = WaterStep.At(basin, 0);
        for (int e = FishProcess.FirstMineral; e < Element.Count; e++)
        {
            grams[start + Substance.DissolvedOf(e)] += meal.Dissolved[e];
        }

        FishProcess.PostReleased(State.Books, meal.Dissolved);
        State.Books.PostElements(Door.Feed, Parts.Feed.ElementsOf(offered), 1);
        State.Totals.FeedGrams += offered;
        State.Totals.FeedTodayGrams += offered;
    }
}
