using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Fish sold: weekly lots of the largest, tanks cleared, restocking.</summary>
public sealed class FishTrade : FarmWork
{
    private const double HalfAFish = 0.5;

    private readonly Market _market;

    /// <summary>Makes it.</summary>
    public FishTrade(FarmContext farm, FarmLog log, Market market)
        : base(farm, log)
    {
        _market = market;
    }

    /// <summary>
    /// Feed that the whole plan settles to, g/d: each tank's gain from delivery to sale, at the conversion of the library's
    /// species, over the time that growth at the held temperature and the weekly sales take.
    /// </summary>
    public double SteadyFeedGramsPerDay(double celsius)
    {
        double feed = 0;
        for (int s = 0; s < Parts.Stocking.Length; s++)
        {
            StockingDescription stocking = Parts.Stocking[s];
            FishParameters species = Parts.Species[Parts.SpeciesOfStocking[s]];
            double slope = species.GrowthCoefficient * Feeding.TemperatureFactor(species, celsius);
            if (slope <= 0)
            {
                continue;
            }

            double days = (Math.Cbrt(stocking.SellFromGrams) - Math.Cbrt(stocking.MeanGrams)) / slope;
            double mean = Math.Sqrt(stocking.SellFromGrams * stocking.MeanGrams);
            double maintenance = Feeding.MaintenanceGramsPerDay(species, mean, celsius) * days;
            double perFish = ((stocking.SellFromGrams - stocking.MeanGrams) / species.ConversionGramsPerGram) + maintenance;
            double selling = 7.0 * stocking.Number / (2 * stocking.LotPerWeek);
            feed += stocking.Number * perFish / (1 - Parts.Farm.Feeding.UneatenShare) / (days + selling);
        }

        return feed;
    }

    /// <summary>Sells the week's lots.</summary>
    public void Sell(long seconds)
    {
        for (int tank = 0; tank < State.Cohorts.Length; tank++)
        {
            List<Cohort> cohorts = State.Cohorts[tank];
            for (int c = cohorts.Count - 1; c >= 0; c--)
            {
                int batch = cohorts[c].Batch;
                if (batch >= 0)
                {
                    SellFrom(cohorts[c], Parts.Stocking[batch], tank, seconds);
                    ClearIfEmpty(tank, c, seconds);
                }
            }
        }
    }

    /// <summary>Harvests the fish of a tank above a weight.</summary>
    public void Harvest(int tank, double aboveGrams, long seconds)
    {
        List<Cohort> cohorts = State.Cohorts[tank];
        for (int c = cohorts.Count - 1; c >= 0; c--)
        {
            Book(SizeSpread.TopHarvest(cohorts[c], Parts.Species[cohorts[c].SpeciesIndex], aboveGrams), cohorts[c], tank, seconds);
            ClearIfEmpty(tank, c, seconds);
        }
    }

    /// <summary>Moves the larger fish of a tank to another.</summary>
    public void Grade(int tank, int to, double aboveGrams, long seconds)
    {
        Spend(Chore.GradeFish, 1);
        foreach (Cohort cohort in State.Cohorts[tank].ToArray())
        {
            FishParameters species = Parts.Species[cohort.SpeciesIndex];
            if (SizeSpread.Grade(cohort, species, aboveGrams, cohort.Name + " graded") is { } large)
            {
                Survival.Handle(cohort, species);
                Survival.Handle(large, species);
                State.Cohorts[to].Add(large);
                Log.Add(seconds, "grade fish", Parts.BasinNames[tank], large.Number, "fish",
                    $"{large.Number:0} fish of {large.MeanGrams:0} g moved to {Parts.BasinNames[to]}, {cohort.Number:0} of {cohort.MeanGrams:0} g stay");
            }
        }
    }

    private void SellFrom(Cohort cohort, StockingDescription stocking, int tank, long seconds)
    {
        FishParameters species = Parts.Species[cohort.SpeciesIndex];
        if (cohort.Number <= stocking.ClearBelow && cohort.MeanGrams >= stocking.SellFromGrams / 2)
        {
            Book(SizeSpread.TopHarvest(cohort, species, 0), cohort, tank, seconds);
            return;
        }

        double ready = cohort.Number * SizeSpread.ShareAbove(cohort.MeanGrams, cohort.CoefficientOfVariation, stocking.SellFromGrams);
        double planned = Math.Floor(Math.Min(stocking.LotPerWeek, ready));
        double lot = planned;

        // Fish that nobody wants this week stay in the water: they eat on, and the tank fills.
        double wantedGrams = _market.FishWanted(Parts.ProductOfSpecies[cohort.SpeciesIndex]) * UnitConstants.GramsPerKilogram;
        while (lot >= 1 && SizeSpread.GramsOfLargest(cohort, lot) > wantedGrams)
        {
            lot--;
        }

        if (lot < planned)
        {
            Log.Add(seconds, "fish not wanted", Parts.BasinNames[tank], planned - lot, "fish", "ready, but the week's demand is met: they stay in the tank and eat on");
        }

        if (lot >= 1)
        {
            Book(SizeSpread.TopHarvestNumber(cohort, species, lot), cohort, tank, seconds);
        }
    }

    // A cohort of less than half a fish is gone; when it was the last of its batch, the batch is due again.
    private void ClearIfEmpty(int tank, int index, long seconds)
    {
        Cohort cohort = State.Cohorts[tank][index];
        if (cohort.Number >= HalfAFish)
        {
            return;
        }

        Book(SizeSpread.TopHarvest(cohort, Parts.Species[cohort.SpeciesIndex], 0), cohort, tank, seconds);
        State.Cohorts[tank].RemoveAt(index);
        int batch = cohort.Batch;
        if (batch < 0 || !double.IsNaN(State.Operations.DueDay[batch]) || Parts.Stocking[batch].RestockAfterDays is not { } wait
            || State.Cohorts.Any(tankCohorts => tankCohorts.Any(c => c.Batch == batch)))
        {
            return;
        }

        if (cohort.DiedNumber > Parts.Practice.RestockMostDeaths * cohort.StockedNumber)
        {
            Log.Add(seconds, "not restocked", Parts.BasinNames[tank], cohort.DiedNumber, "fish",
                $"{cohort.DiedNumber:0} of {cohort.StockedNumber:0} fish died: nobody stocks again before the cause is found");
            return;
        }

        State.Operations.DueDay[batch] = Math.Floor(DayOf(seconds)) + wait;
    }

    private void Book(in HarvestResult taken, Cohort cohort, int tank, long seconds)
    {
        if (taken.Number <= 0)
        {
            return;
        }

        State.Totals.FishSold += taken.Number;
        State.Totals.FishSoldGrams += taken.Grams;
        State.Books.PostElements(Door.FishSold, taken.Elements, -1);
        int product = Parts.ProductOfSpecies[cohort.SpeciesIndex];
        _market.SellFish(product, taken.Number, taken.Grams, seconds);
        if (taken.Number >= HalfAFish)
        {
            Spend(Chore.CatchFish, 1, product);
            Spend(Chore.HarvestFish, taken.Number, product);
            if (double.IsNaN(State.Operations.FirstSoldAfterDays))
            {
                State.Operations.FirstSoldAfterDays = Math.Floor(DayOf(seconds)) - Math.Floor(DayOf(cohort.StockedAtSecond));
            }

            Log.Add(seconds, "sell fish", Parts.BasinNames[tank], taken.Grams / UnitConstants.GramsPerKilogram, "kg",
                $"{taken.Number:0} fish of {taken.MeanGrams:0} g");
        }
    }
}
