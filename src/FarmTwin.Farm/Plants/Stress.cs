namespace FarmTwin.Farm.Plants;

/// <summary>What holds growth back: the factors of f_s, each 0–1, pure functions.</summary>
public static class Stress
{
    private const double GramsPerSquareMetreInTonnePerHectare = 100;

    // The elements that can limit growth; sodium and chloride are carried along with the water.
    private static readonly int[] Limiting =
    [
        Element.Nitrogen, Element.Phosphorus, Element.Potassium, Element.Calcium, Element.Magnesium, Element.Sulfur, Element.Iron,
    ];

    /// <summary>The elements that can limit growth, in the order of <see cref="Element"/>.</summary>
    public static ReadOnlySpan<int> Nutritive => Limiting;

    /// <summary>All factors for a lot at midnight.</summary>
    public static GrowthStress Of(PlantLot lot, CropParameters crop, in RootZone root, PlantParameters plants)
    {
        double nutrient = Nutrients(lot, crop, plants, out int shortest);
        return new GrowthStress(
            plants.SiteFactor,
            nutrient,
            shortest,
            Oxygen(root.OxygenMilligramsPerLitre, plants),
            crop.RootTemperatureFactor.At(root.TemperatureCelsius),
            Salt(root.ConductivityMillisiemensPerCentimetre, crop, plants),
            Ammonium(root.TanMilligramsNPerLitre, root.NitrateMilligramsNPerLitre, plants),
            Math.Clamp(root.WaterFactor, 0, 1));
    }

    /// <summary>Oxygen at the roots: no effect at 2.1 mg/L and above, as in lettuce (Goto et al. 1996).</summary>
    public static double Oxygen(double milligramsPerLitre, PlantParameters plants) => Math.Clamp(
        (milligramsPerLitre - plants.OxygenFloorMilligramsPerLitre) / plants.OxygenSpanMilligramsPerLitre, 0, 1);

    /// <summary>Salinity: linear loss above a threshold (Maas and Hoffman 1977), which nutrient salts, milder than NaCl, reach later.
    /// EC is no driver of growth below it.</summary>
    public static double Salt(double millisiemensPerCentimetre, CropParameters crop, PlantParameters plants) => Math.Clamp(
        1 - (crop.SaltSlopePerMillisiemens * Math.Max(
            0, millisiemensPerCentimetre - crop.SaltThresholdMillisiemensPerCentimetre - plants.NutrientSaltAllowanceMillisiemens)),
        0,
        1);

    /// <summary>Ammonium beyond a tolerated share of the dissolved nitrogen; the excess in mg/L counts, so a trace in poor water
    /// does no harm.</summary>
    public static double Ammonium(double tanMilligramsNPerLitre, double nitrateMilligramsNPerLitre, PlantParameters plants)
    {
        double excess = tanMilligramsNPerLitre
            - (plants.AmmoniumToleratedShare * (tanMilligramsNPerLitre + nitrateMilligramsNPerLitre));
        return excess <= 0 ? 1 : 1 / (1 + (excess / plants.AmmoniumExcessHalfMilligramsNPerLitre));
    }

    /// <summary>Critical nitrogen of the shoot, % of dry mass: a W^−b, and a below 1 t/ha (the plateau).</summary>
    /// <param name="a">Coefficient, % at 1 t/ha.</param>
    /// <param name="b">Exponent of dilution.</param>
    /// <param name="tonnesPerHectare">Standing dry mass of the shoot, t/ha (100 g/m²).</param>
    public static double CriticalNitrogenPercent(double a, double b, double tonnesPerHectare) =>
        tonnesPerHectare <= 1 ? a : a * Math.Pow(tonnesPerHectare, -b);

    /// <summary>The content of an element below which growth suffers, g per g dry mass.</summary>
    /// <remarks>Nitrogen follows its dilution curve, but never above the tissue target: the lettuce plateau of 4.56 % exceeds the
    /// target of 4.5 %, and an uncapped curve would call every well-fed seedling short. The others: a fixed share of the target.</remarks>
    public static double CriticalContent(int element, PlantLot lot, CropParameters crop, PlantParameters plants)
    {
        double target = crop.TissueGramsPerGramDry[element];
        if (element != Element.Nitrogen)
        {
            return plants.CriticalShareOfTarget * target;
        }

        double standing = lot.AreaSquareMetres > 0 ? lot.DryGrams * (1 - crop.RootShare) / lot.AreaSquareMetres : 0;
        double percent = CriticalNitrogenPercent(
            crop.CriticalNitrogenPercentAtOneTonne, crop.CriticalNitrogenExponent, standing / GramsPerSquareMetreInTonnePerHectare);
        return Math.Min(percent / CropParameters.PercentPerUnit, target);
    }

    /// <summary>Nutrition index: pool over the critical content of the dry mass that the day will have made; 1 and above is enough.</summary>
    /// <remarks>The day's growth counts, as it did when the uptake was planned: against yesterday's mass a fast-growing plant would
    /// never seem short. It is meant for midnight, when the day's uptake is complete.</remarks>
    public static double NutrientIndex(int element, PlantLot lot, CropParameters crop, PlantParameters plants)
    {
        double critical = lot.TargetGrams(
            element, CriticalContent(element, lot, crop, plants), lot.DryGrams + lot.PotentialGainGrams - lot.PotentialFruitGrams);
        if (crop.Fruit is { } fruit)
        {
            critical += plants.CriticalShareOfTarget * fruit.TissueGramsPerGramDry[element] * lot.PotentialFruitGrams;
        }

        return critical > 0 ? lot.Pools[element] / critical : 1;
    }

    /// <summary>The factor of the shortest nutrient, and which it is.</summary>
    public static double Nutrients(PlantLot lot, CropParameters crop, PlantParameters plants, out int shortest)
    {
        shortest = Element.Nitrogen;
        double lowest = double.PositiveInfinity;
        foreach (int element in Nutritive)
        {
            double factor = UnclampedFactor(element, lot, crop, plants);
            if (factor < lowest)
            {
                lowest = factor;
                shortest = element;
            }
        }

        return Math.Clamp(lowest, 0, 1);
    }

    /// <summary>The factor of one nutrient alone, 0–1.</summary>
    public static double NutrientFactor(int element, PlantLot lot, CropParameters crop, PlantParameters plants) =>
        Math.Clamp(UnclampedFactor(element, lot, crop, plants), 0, 1);

    private static double UnclampedFactor(int element, PlantLot lot, CropParameters crop, PlantParameters plants)
    {
        double floor = plants.GrowthStopsAtIndex(element);
        return (NutrientIndex(element, lot, crop, plants) - floor) / (1 - floor);
    }
}
