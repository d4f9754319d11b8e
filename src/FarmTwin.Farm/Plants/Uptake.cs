namespace FarmTwin.Farm.Plants;

/// <summary>What plants want from the water: driven by demand, capped by what the concentration can deliver.</summary>
/// <remarks>
/// Planned once a day at midnight and kept in the lot; what is really taken in a step is the planned amount times the step's
/// share of the day times one common factor a basin and substance, which the farm finds when it solves the water. Own formulation
/// (the demand-and-supply form is common to crop models): with an oversupply factor q of 2, growth begins to suffer where a
/// concentration falls below its half saturation, so that number is the lowest working concentration.
/// </remarks>
public static class Uptake
{
    private const double MilligramsPerGram = 1000;

    /// <summary>The pool that a channel fills.</summary>
    public static int ElementOf(UptakeChannel channel) => channel switch
    {
        UptakeChannel.Ammonium or UptakeChannel.Nitrate => Element.Nitrogen,
        UptakeChannel.Phosphorus => Element.Phosphorus,
        UptakeChannel.Potassium => Element.Potassium,
        UptakeChannel.Calcium => Element.Calcium,
        UptakeChannel.Magnesium => Element.Magnesium,
        UptakeChannel.Sulfur => Element.Sulfur,
        UptakeChannel.Iron => Element.Iron,
        _ => throw new ArgumentOutOfRangeException(nameof(channel)),
    };

    /// <summary>Share of the greatest uptake at a concentration, 0–1: (C − Cmin)/(K + C − Cmin), 0 at and below Cmin.</summary>
    /// <remarks>Any one unit for all three.</remarks>
    public static double Saturation(double concentration, double halfSaturation, double minimum = 0)
    {
        double above = concentration - minimum;
        return above > 0 ? above / (halfSaturation + above) : 0;
    }

    /// <summary>Plans tomorrow's uptake of a lot and stores it in <see cref="PlantLot.Planned"/>, g/d.</summary>
    /// <param name="lot">The lot, after its daily step.</param>
    /// <param name="crop">Its crop.</param>
    /// <param name="plants">What all crops share.</param>
    /// <param name="root">The water at its roots.</param>
    public static void PlanDay(PlantLot lot, CropParameters crop, PlantParameters plants, in RootZone root)
    {
        if (lot.IsEmpty || lot.PotentialGainGrams <= 0)
        {
            lot.Planned = default;
            return;
        }

        double nitrogen = Demand(Element.Nitrogen, lot, crop);
        double nitrogenScale = Scale(Element.Nitrogen, lot, crop, plants);
        double ammonium = Math.Min(
            plants.AmmoniumDemandShare * nitrogen,
            nitrogenScale * Saturation(root.TanMilligramsNPerLitre, plants.AmmoniumHalfSaturationMilligramsNPerLitre));
        double nitrate = Math.Min(
            nitrogen - ammonium,
            nitrogenScale * Saturation(
                root.NitrateMilligramsNPerLitre,
                plants.NitrateHalfSaturationMilligramsNPerLitre,
                plants.NitrateMinimumMilligramsNPerLitre));
        lot.Planned = new UptakeAmounts(
            ammonium,
            nitrate,
            Plan(Element.Phosphorus, root.PhosphorusMilligramsPerLitre, plants.PhosphorusHalfSaturationMilligramsPerLitre, lot, crop, plants),
            Plan(Element.Potassium, root.PotassiumMilligramsPerLitre, plants.PotassiumHalfSaturationMilligramsPerLitre, lot, crop, plants),
            Math.Min(
                root.CalciumStreamGramsPerDay,
                Plan(Element.Calcium, root.CalciumMilligramsPerLitre, plants.CalciumHalfSaturationMilligramsPerLitre, lot, crop, plants)),
            Plan(Element.Magnesium, root.MagnesiumMilligramsPerLitre, plants.MagnesiumHalfSaturationMilligramsPerLitre, lot, crop, plants),
            Plan(Element.Sulfur, root.SulfurMilligramsPerLitre, plants.SulfurHalfSaturationMilligramsPerLitre, lot, crop, plants),
            Plan(Element.Iron, root.AvailableIronMilligramsPerLitre, plants.IronHalfSaturationMilligramsPerLitre, lot, crop, plants));
    }

    /// <summary>What a lot lacks of an element for tomorrow's tissue, g: target content times (mass + tomorrow's gain), less its pool.</summary>
    public static double Demand(int element, PlantLot lot, CropParameters crop) => Math.Max(
        0, Fruiting.Target(element, lot, crop) - lot.Pools[element]);

    /// <summary>What an element's share of tomorrow's gain in a full solution is, leaf and fruit, g.</summary>
    public static double Need(int element, PlantLot lot, CropParameters crop)
    {
        double tissue = crop.TissueGramsPerGramDry[element] * (lot.PotentialGainGrams - lot.PotentialFruitGrams);
        return crop.Fruit is { } fruit ? tissue + (fruit.TissueGramsPerGramDry[element] * lot.PotentialFruitGrams) : tissue;
    }

    private static double Scale(int element, PlantLot lot, CropParameters crop, PlantParameters plants) =>
        plants.SupplyOverDemand * Need(element, lot, crop);

    private static double Plan(
        int element, double concentration, double halfSaturation, PlantLot lot, CropParameters crop, PlantParameters plants) =>
        Math.Min(Demand(element, lot, crop), Scale(element, lot, crop, plants) * Saturation(concentration, halfSaturation));
}
