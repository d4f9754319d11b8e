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
    private double _alarmShare = 1;

    /// <summary>Makes it.</summary>
    public FeedingWork(FarmContext farm, FarmLog log)
        : base(farm, log) => _mealHours = [.. Parts.Farm.Feeding.MealHours];

    /// <summary>Feeds all tanks.</summary>
    public void Meal(long seconds)
    {
        double wanted = 0;
        double cut = 0;
        int alarm = State.Alarms.CutsFeed(Parts.Alarms.Points, seconds, Parts.Alarms.Parameters.FeedCutHours);
        _alarmShare = alarm < 0 || Overfeeds ? 1 : Parts.Alarms.Points[alarm].FeedShare;
        for (int b = 0; b < State.Cohorts.Length; b++)
        {
            foreach (Cohort cohort in State.Cohorts[b])
            {
                double hungry = Wanted(cohort, b, seconds);
                double heed = HeedAt(b);
                State.Husbandry.WithheldToday[b] |= heed <= 0 && hungry > 0;
                wanted += hungry * heed;
                State.Totals.FeedWithheldGrams += hungry * (1 - heed);
                cut += hungry * (1 - heed);
            }
        }

        if (_alarmShare < 1 && cut > 0)
        {
            Log.Add(seconds, _alarmShare > 0 ? "meal cut" : "meal withheld", "all tanks", cut, "g", $"alarm: {Parts.Alarms.Points[alarm].Name}");
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

        double most = !Overfeeds && Parts.Farm.Feeding.MostKilogramsPerDay is { } limit
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

    /// <summary>Throws feed in at once, to the fish of a tank (or of all, −1) by their weight, whatever they want.</summary>
    /// <returns>What they leave, g.</returns>
    public double ThrowIn(int tank, double grams)
    {
        double biomass = 0;
        for (int b = 0; b < State.Cohorts.Length; b++)
        {
            foreach (Cohort cohort in State.Cohorts[b])
            {
                biomass += tank < 0 || tank == b ? cohort.BiomassGrams : 0;
            }
        }

        double left = 0;
        for (int b = 0; b < State.Cohorts.Length; b++)
        {
            foreach (Cohort cohort in State.Cohorts[b])
            {
                if (biomass > 0 && (tank < 0 || tank == b))
                {
                    left += Feed(cohort, b, grams * cohort.BiomassGrams / biomass);
                }
            }
        }

        return left;
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

    private bool Overfeeds => State.Husbandry.OverfeedRation > 0;

    // Whoever has seen an alarm of oxygen, heat, cold or pH feeds less or not at all, for a day; the water itself decides too.
    private double HeedAt(int basin) => Overfeeds ? 1 : Math.Min(_alarmShare, Heed(FishProcess.WaterOf(State.Basins, basin), State.Basins.MilligramsPerLitre(basin, Substance.Tan)));

    // What is offered when the water is good.
    private double Wanted(Cohort cohort, int basin, long seconds)
    {
        FishParameters species = Parts.Species[cohort.SpeciesIndex];
        FishWater water = FishProcess.WaterOf(State.Basins, basin);
        double days = DayOf(seconds - cohort.StockedAtSecond);
        if (Overfeeds)
        {
            return State.Husbandry.OverfeedRation / _mealHours.Length
                * Feeding.SatiationGramsPerDay(cohort, species, Parts.Farm.Feeding.UneatenShare, water);
        }

        double settle = Parts.Farm.Feeding.SettleInDays > 0
            ? Math.Clamp(
                Parts.Farm.Feeding.FirstRationShare + ((1 - Parts.Farm.Feeding.FirstRationShare) * days / Parts.Farm.Feeding.SettleInDays), 0, 1)
            : 1;
        return settle * QuarantineShare(basin) * State.Operations.RationShare / _mealHours.Length
            * Feeding.SatiationGramsPerDay(cohort, species, Parts.Farm.Feeding.UneatenShare, water);
    }

    private FeedComposition FeedOf(Cohort cohort) => cohort.Batch >= 0 ? Parts.FeedOfStocking[cohort.Batch] : Parts.Feed;

    // Fish under watch are fed less: their tank's filter is small.
    private double QuarantineShare(int basin) =>
        Array.IndexOf(Parts.QuarantineBasin, basin) is >= 0 and var q ? Parts.Quarantines[q].RationShare : 1;

    private double Feed(Cohort cohort, int basin, double offered)
    {
        FishParameters species = Parts.Species[cohort.SpeciesIndex];
        FishWater water = FishProcess.WaterOf(State.Basins, basin);
        MealResult meal = Feeding.Meal(
            cohort, species, FeedOf(cohort), offered, 1.0 / _mealHours.Length, Parts.Farm.Feeding.UneatenShare, water);
        SolidsProcess.Add(Farm, basin, meal.SolidsDryGrams, meal.Solids);
        double[] grams = State.Basins.Grams;
        int start = WaterStep.At(basin, 0);
        for (int e = FishProcess.FirstMineral; e < Element.Count; e++)
        {
            grams[start + Substance.DissolvedOf(e)] += meal.Dissolved[e];
        }

        FishProcess.PostReleased(State.Books, meal.Dissolved);
        State.Books.PostElements(Door.Feed, FeedOf(cohort).ElementsOf(offered), 1);
        State.Totals.FeedGrams += offered;
        State.Operations.FeedGrams[cohort.Batch >= 0 ? Parts.FeedIndexOfStocking[cohort.Batch] : 0] += offered;
        State.Totals.FeedTodayGrams += offered;
        return meal.UneatenGrams;
    }
}
