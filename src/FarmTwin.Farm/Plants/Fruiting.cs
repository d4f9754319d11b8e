namespace FarmTwin.Farm.Plants;

/// <summary>How much of a day's growth goes to fruit, and what the fruit takes along.</summary>
/// <remarks>
/// Own formulation on the expolinear law (docs/model/fruiting-crops.md): development by a temperature sum from sowing; from the
/// first flowers on a rising share of above-ground growth goes to the cohort of the day, which is picked a fixed sum later. The loss
/// of fruit set in hot days is that of the reduced tomato model of Jones, Kenig and Vallejos (1999), Transactions of the ASAE
/// 42:255–265, as in public implementations.
/// </remarks>
public static class Fruiting
{
    /// <summary>Share of above-ground growth that goes to fruit, 0–1, before heat.</summary>
    public static double Share(FruitParameters fruit, double degreeDays)
    {
        ArgumentNullException.ThrowIfNull(fruit);
        double past = degreeDays - fruit.OnsetSum;
        return past <= 0 ? 0 : fruit.Share * (1 - Math.Exp(-past / fruit.OnsetRamp));
    }

    /// <summary>Fruit set left by the heat of the day, 0–1: 1 up to a daytime temperature, then falling by a line to a floor.</summary>
    public static double HeatFactor(FruitParameters fruit, double daytimeCelsius)
    {
        ArgumentNullException.ThrowIfNull(fruit);
        return Math.Clamp(1 - (fruit.HeatSlopePerKelvin * (daytimeCelsius - fruit.HeatFromCelsius)), fruit.HeatFloor, 1);
    }

    /// <summary>What the fruit and the tissue of a lot should hold of an element for its mass and tomorrow's growth, g.</summary>
    public static double Target(int element, PlantLot lot, CropParameters crop)
    {
        double tissue = lot.TargetGrams(
            element, crop.TissueGramsPerGramDry[element], lot.DryGrams + lot.PotentialGainGrams - lot.PotentialFruitGrams);
        return crop.Fruit is { } fruit ? tissue + (fruit.TissueGramsPerGramDry[element] * lot.PotentialFruitGrams) : tissue;
    }

    /// <summary>Advances a lot's temperature sum by a day; does nothing for a leafy crop.</summary>
    public static void Advance(PlantLot lot, CropParameters crop, double meanCelsius)
    {
        if (crop.Fruit is { } fruit)
        {
            lot.DegreeDays += Math.Max(0, meanCelsius - fruit.BaseCelsius);
        }
    }

    /// <summary>Dry mass that goes to fruit out of a day's gain, g; 0 for a leafy crop.</summary>
    /// <param name="lot">The lot, its temperature sum advanced.</param>
    /// <param name="crop">Its crop.</param>
    /// <param name="day">The day that ends.</param>
    /// <param name="gainGrams">Dry mass gained, g.</param>
    public static double OfGain(PlantLot lot, CropParameters crop, in DayLight day, double gainGrams)
    {
        if (crop.Fruit is not { } fruit)
        {
            return 0;
        }

        double aboveGround = gainGrams * (1 - crop.RootShare) * Share(fruit, lot.DegreeDays);
        return lot.IsTopped
            ? (lot.Fruit?.GrowingGrams(lot.DegreeDays - fruit.GrowthSum) > 0 ? aboveGround : 0)
            : aboveGround * CanopyFactor(lot, fruit) * HeatFactor(fruit, day.DaytimeCelsius);
    }

    /// <summary>Share of its due that fruit gets on a stand not yet grown, 0–1.</summary>
    /// <remarks>Without it a stand in weak light and warmth bears before it has leaves, and never closes: development follows warmth,
    /// growth follows light. Growers pinch the first fruit out for the same reason.</remarks>
    public static double CanopyFactor(PlantLot lot, FruitParameters fruit)
    {
        ArgumentNullException.ThrowIfNull(lot);
        ArgumentNullException.ThrowIfNull(fruit);
        double full = fruit.CanopyFirst * fruit.CanopyMaximumGramsPerSquareMetre * lot.AreaSquareMetres;
        return full > 0 ? Math.Min(1, lot.DryGrams / full) : 1;
    }

    /// <summary>Hangs the fruit of a day on the lot; on a topped plant what hangs already takes it. It takes its target content, or the same share of it as the tissue keeps of its own
    /// where the pools are short.</summary>
    public static void Hang(PlantLot lot, CropParameters crop, double dryGrams)
    {
        if (crop.Fruit is not { } fruit || dryGrams <= 0)
        {
            return;
        }

        ElementGrams taken = default;
        for (int e = 0; e < Element.Count; e++)
        {
            double wanted = fruit.TissueGramsPerGramDry[e] * dryGrams;
            double all = (crop.TissueGramsPerGramDry[e] * lot.DryGrams) + wanted;
            taken[e] = all > 0 ? wanted * Math.Min(1, lot.Pools[e] / all) : 0;
        }

        lot.Pools -= taken;
        lot.Fruit ??= new FruitLoad();
        if (lot.IsTopped)
        {
            lot.Fruit.Feed(lot.DegreeDays - fruit.GrowthSum, dryGrams, taken);
        }
        else
        {
            lot.Fruit.Add(new FruitCohort(lot.DegreeDays, dryGrams, taken));
        }
    }

    /// <summary>Share of a cohort that has blossom-end rot, 0–1, by its calcium over the target.</summary>
    /// <param name="cohort">The fruit.</param>
    /// <param name="fruit">Its crop.</param>
    /// <param name="plants">What all crops share.</param>
    public static double BlossomEndRotShare(in FruitCohort cohort, FruitParameters fruit, PlantParameters plants)
    {
        ArgumentNullException.ThrowIfNull(fruit);
        ArgumentNullException.ThrowIfNull(plants);
        double target = fruit.TissueGramsPerGramDry.Calcium * cohort.DryGrams;
        double content = target > 0 ? cohort.Elements.Calcium / target : 1;
        return plants.BlossomEndRotWorst * Math.Clamp(
            (plants.BlossomEndRotFrom - content) / (plants.BlossomEndRotFrom - plants.BlossomEndRotFull), 0, 1);
    }

    /// <summary>Dry mass above what the stand is pruned to, g; 0 for a leafy crop.</summary>
    public static double ToPrune(PlantLot lot, CropParameters crop) => crop.Fruit is { } fruit
        ? Math.Max(0, lot.DryGrams - (fruit.CanopyMaximumGramsPerSquareMetre * lot.AreaSquareMetres))
        : 0;
}
