using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Fish;

/// <summary>All cohorts in all tanks: what they draw from and give to the water in a step, and who dies in it.</summary>
/// <remarks>See docs/model/fish-growth-and-feed.md and its neighbours. Meals, deliveries and sales are events (Operations).</remarks>
public sealed class FishProcess
{
    /// <summary>The first element that fish give to the water as it stands; nitrogen, before it, comes as ammonium on a way of its own.</summary>
    internal const int FirstMineral = Element.Phosphorus;

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
            basins.MilligramsPerLitre(basin, Substance.Chloride),
            basins.MilligramsPerLitre(basin, Substance.Chlorine),
            basins.MilligramsPerLitre(basin, Substance.Pesticide));
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

            double celsius = _farm.State.Basins.Celsius[b];
            for (int c = 0; c < cohorts.Count; c++)
            {
                MetabolicStep underway = Metabolism.Compute(cohorts[c], SpeciesOf(cohorts[c]), step.Hours, celsius);
                cohorts[c].Underway = underway;
                StepResult result = underway.Result;
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
            for (int c = 0; c < cohorts.Count; c++)
            {
                Metabolism.Live(cohorts[c], SpeciesOf(cohorts[c]), cohorts[c].Underway);
            }
        }
    }

    /// <summary>Takes out the dead of the step, by the water at its end.</summary>
    public void CommitDeaths()
    {
        WaterStep step = _farm.Step;
        FarmTotals totals = _farm.State.Totals;
        Array.Clear(_farm.Died);
        Array.Clear(_farm.DiedGrams);
        ElementGrams dying = ElementGrams.Zero;
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
                _farm.Died[b] += dead.Number * (1 - usual);
                _farm.DiedGrams[b] += dead.Grams * (1 - usual);
                double unexplained = dead.Number * (1 - usual);
                cohorts[c].UnexplainedNumber += unexplained;
                _farm.State.Husbandry.DiedToday[b] += dead.Number;
                _farm.State.Husbandry.Deaths.Add(dead.Number, dead.Hazards);

                // A death in quarantine says nothing of the loop's water.
                totals.UnexplainedDeathsToday += _farm.Parts.Basins[b].Use == Description.BasinUse.Quarantine ? 0 : unexplained;
                dying += dead.Elements;
            }
        }

        _farm.State.Books.PostElements(Door.DeadFish, dying, -1);
    }

    /// <summary>Adds the fish's part of the stocks.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        for (int b = 0; b < farm.State.Cohorts.Length; b++)
        {
            foreach (Cohort cohort in farm.State.Cohorts[b])
            {
                cohort.Elements(farm.Parts.Species[cohort.SpeciesIndex]).AddTo(stocks);
            }
        }
    }

    /// <summary>Books the charge of minerals that fish give to the water.</summary>
    internal static void PostReleased(FarmBooks books, in ElementGrams grams)
    {
        for (int e = FirstMineral; e < Element.Count; e++)
        {
            books.PostWater(Door.Fish, Substance.DissolvedOf(e), grams[e]);
        }
    }

    private FishParameters SpeciesOf(Cohort cohort) => _farm.Parts.Species[cohort.SpeciesIndex];

    private static void AddReleased(WaterStep step, int basin, in ElementGrams perHour)
    {
        for (int e = FirstMineral; e < Element.Count; e++)
        {
            step.Add(basin, Substance.DissolvedOf(e), perHour[e]);
        }
    }
}
