using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Fish;

/// <summary>All cohorts in all tanks: what they draw from and give to the water in a step, and who dies in it.</summary>
/// <remarks>See docs/model/fish-growth-and-feed.md and its neighbours. Meals, deliveries and sales are events (Operations).</remarks>
public sealed class FishProcess
{
    private readonly FarmContext _farm;
    private double _tanGrams;
    private ElementGrams _released;

    /// <summary>Makes the process.</summary>
    public FishProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
    }

    /// <summary>The water of a basin as fish meet it.</summary>
    public static FishWater WaterOf(Basins basins, int basin)
    {
        ArgumentNullException.ThrowIfNull(basins);
        double tan = basins.MilligramsPerLitre(basin, Substance.Tan);
        return new FishWater(
            basins.Celsius[basin],
            basins.MilligramsPerLitre(basin, Substance.Oxygen),
            tan * Ammonia.UnionizedFraction(basins.PH[basin], basins.Celsius[basin]),
            basins.MilligramsPerLitre(basin, Substance.Nitrate),
            basins.MilligramsPerLitre(basin, Substance.Nitrite),
            basins.MilligramsPerLitre(basin, Substance.Chloride));
    }

    /// <summary>Adds excretion and respiration of the step.</summary>
    public void Contribute()
    {
        WaterStep step = _farm.Step;
        _tanGrams = 0;
        _released = ElementGrams.Zero;
        double perHour = 1 / step.Hours;
        for (int b = 0; b < step.BasinCount; b++)
        {
            List<Cohort> cohorts = _farm.State.Cohorts[b];
            if (cohorts.Count == 0)
            {
                continue;
            }

            FishWater water = WaterOf(_farm.State.Basins, b);
            for (int c = 0; c < cohorts.Count; c++)
            {
                StepResult result = Metabolism.Preview(cohorts[c], SpeciesOf(cohorts[c]), step.Hours, water);
                step.Add(b, Substance.Tan, result.TanGrams * perHour);
                _farm.CarbonByFish[b] += result.CarbonDioxideCarbonGrams * perHour;
                _farm.OxygenByFish[b] += result.OxygenDemandGrams * perHour;
                _tanGrams += result.TanGrams;
                _released += result.Dissolved;
                AddReleased(step, b, result.Dissolved * perHour);
            }
        }
    }

    /// <summary>Advances the cohorts by what was contributed. Call before the basins take their new state.</summary>
    public void Commit()
    {
        WaterStep step = _farm.Step;
        FarmBooks books = _farm.State.Books;
        books.PostWater(Door.Fish, Substance.Tan, _tanGrams);
        PostReleased(books, _released);
        for (int b = 0; b < step.BasinCount; b++)
        {
            List<Cohort> cohorts = _farm.State.Cohorts[b];
            if (cohorts.Count == 0)
            {
                continue;
            }

            FishWater water = WaterOf(_farm.State.Basins, b);
            for (int c = 0; c < cohorts.Count; c++)
            {
                Metabolism.Step(cohorts[c], SpeciesOf(cohorts[c]), step.Hours, water);
            }
        }
    }

    /// <summary>Takes out the dead of the step, by the water at its end.</summary>
    public void CommitDeaths()
    {
        WaterStep step = _farm.Step;
        FarmTotals totals = _farm.State.Totals;
        for (int b = 0; b < step.BasinCount; b++)
        {
            List<Cohort> cohorts = _farm.State.Cohorts[b];
            if (cohorts.Count == 0)
            {
                continue;
            }

            FishWater water = WaterOf(_farm.State.Basins, b);
            for (int c = 0; c < cohorts.Count; c++)
            {
                DeathResult dead = Survival.Step(cohorts[c], SpeciesOf(cohorts[c]), step.Hours, water);
                totals.FishDied += dead.Number;
                totals.FishDiedGrams += dead.Grams;
                double usual = dead.Hazards.Total > 0 ? (dead.Hazards.Base + dead.Hazards.Handling) / dead.Hazards.Total : 0;
                totals.UnexplainedDeathsToday += dead.Number * (1 - usual);
                PostBodies(_farm.State.Books, Door.DeadFish, dead.Elements, -1);
            }
        }
    }

    /// <summary>Books fish that enter (sign +1) or leave (−1) with all their elements.</summary>
    public static void PostBodies(FarmBooks books, int door, in ElementGrams elements, int sign)
    {
        ArgumentNullException.ThrowIfNull(books);
        books.Post(door, Element.Nitrogen, sign * elements.Nitrogen);
        books.Post(door, Element.Phosphorus, sign * elements.Phosphorus);
        books.Post(door, Element.Potassium, sign * elements.Potassium);
        books.Post(door, Element.Calcium, sign * elements.Calcium);
        books.Post(door, Element.Magnesium, sign * elements.Magnesium);
        books.Post(door, Element.Sodium, sign * elements.Sodium);
        books.Post(door, Element.Chloride, sign * elements.Chlorine);
        books.Post(door, Element.Sulfur, sign * elements.Sulfur);
        books.Post(door, Element.Iron, sign * elements.Iron);
    }

    /// <summary>Adds the fish's part of the stocks.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        for (int b = 0; b < farm.State.Cohorts.Length; b++)
        {
            foreach (Cohort cohort in farm.State.Cohorts[b])
            {
                ElementGrams elements = cohort.Elements(farm.Parts.Species[cohort.SpeciesIndex]);
                stocks[Element.Nitrogen] += elements.Nitrogen;
                stocks[Element.Phosphorus] += elements.Phosphorus;
                stocks[Element.Potassium] += elements.Potassium;
                stocks[Element.Calcium] += elements.Calcium;
                stocks[Element.Magnesium] += elements.Magnesium;
                stocks[Element.Sodium] += elements.Sodium;
                stocks[Element.Chloride] += elements.Chlorine;
                stocks[Element.Sulfur] += elements.Sulfur;
                stocks[Element.Iron] += elements.Iron;
            }
        }
    }

    /// <summary>Books the charge of minerals that fish give to the water.</summary>
    internal static void PostReleased(FarmBooks books, in ElementGrams grams)
    {
        books.PostWater(Door.Fish, Substance.Phosphorus, grams.Phosphorus);
        books.PostWater(Door.Fish, Substance.Potassium, grams.Potassium);
        books.PostWater(Door.Fish, Substance.Calcium, grams.Calcium);
        books.PostWater(Door.Fish, Substance.Magnesium, grams.Magnesium);
        books.PostWater(Door.Fish, Substance.Sodium, grams.Sodium);
        books.PostWater(Door.Fish, Substance.Chloride, grams.Chlorine);
        books.PostWater(Door.Fish, Substance.Sulfate, grams.Sulfur);
    }

    private FishParameters SpeciesOf(Cohort cohort) => _farm.Parts.Species[cohort.SpeciesIndex];

    private static void AddReleased(WaterStep step, int basin, in ElementGrams perHour)
    {
        step.Add(basin, Substance.Phosphorus, perHour.Phosphorus);
        step.Add(basin, Substance.Potassium, perHour.Potassium);
        step.Add(basin, Substance.Calcium, perHour.Calcium);
        step.Add(basin, Substance.Magnesium, perHour.Magnesium);
        step.Add(basin, Substance.Sodium, perHour.Sodium);
        step.Add(basin, Substance.Chloride, perHour.Chlorine);
        step.Add(basin, Substance.Sulfate, perHour.Sulfur);
        step.Add(basin, Substance.Iron, perHour.Iron);
    }
}
