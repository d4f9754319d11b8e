namespace FarmTwin.Farm.Plants;

/// <summary>Expolinear growth driven by light, CO2 and temperature, one exact step a day.</summary>
/// <remarks>
/// The law is that of Goudriaan and Monteith (1990), Annals of Botany 66:695–701 (from memory of the source, not re-read):
/// dW/dt = C [1 − exp(−R W / C)], W standing dry mass in g/m². C, the growth of a closed canopy, and R, the ceiling of relative
/// growth, are set each day. The CO2 and light terms are those of van Henten (1994), Agricultural Systems 45:55–72, rewritten;
/// the temperature term is that of Yan and Hunt (1999), Annals of Botany 84:607–614 (from memory). Static and pure but for
/// <see cref="DailyStep"/>, which changes the lot it is given. The law has no maintenance loss: in the dark a plant keeps its mass.
/// Applied hourly it would lose its calibration: light is summed over the day and growth is applied once, at midnight.
/// </remarks>
public static class Growth
{
    /// <summary>Moles in a micromole.</summary>
    public const double MolesPerMicromole = 1e-6;

    private const double CompensationAtReferencePartsPerMillion = 40;
    private const double ReferenceCelsius = 20;
    private const double CompensationDoublingCelsius = 10;
    private const double ReferenceCarbonDioxidePartsPerMillion = 400;
    private const double ReferenceCarbonDioxideFactor =
        (ReferenceCarbonDioxidePartsPerMillion - CompensationAtReferencePartsPerMillion)
        / (ReferenceCarbonDioxidePartsPerMillion + (2 * CompensationAtReferencePartsPerMillion));

    // Beyond this exponent the exponential phase is over to the last digit of a double.
    private const double ClosedCanopyExponent = 30;

    /// <summary>CO2 compensation point, ppm: 40 at 20 °C, doubling every 10 °C (van Henten 1994).</summary>
    public static double CompensationPoint(double celsius) =>
        CompensationAtReferencePartsPerMillion * Math.Pow(2, (celsius - ReferenceCelsius) / CompensationDoublingCelsius);

    /// <summary>Response to temperature, 0–1: 1 at the optimum, 0 at and outside the two limits (Yan and Hunt 1999).</summary>
    public static double TemperatureFactor(double celsius, double minimumCelsius, double optimumCelsius, double maximumCelsius)
    {
        if (celsius <= minimumCelsius || celsius >= maximumCelsius)
        {
            return 0;
        }

        double rise = optimumCelsius - minimumCelsius;
        double fall = maximumCelsius - optimumCelsius;
        return (maximumCelsius - celsius) / fall * Math.Pow((celsius - minimumCelsius) / rise, rise / fall);
    }

    /// <summary>Response of a crop to air temperature, 0–1.</summary>
    public static double TemperatureFactor(CropParameters crop, double celsius) => TemperatureFactor(
        celsius, crop.AirMinimumCelsius, crop.AirOptimumCelsius, crop.AirMaximumCelsius);

    /// <summary>Dry matter made per mole of photons by a closed canopy at its best temperature, g/mol.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="photonsMicromolesPerSquareMetreSecond">PPFD on the crop, µmol/m²/s, at least 0.</param>
    /// <param name="carbonDioxidePartsPerMillion">CO2 of the air, ppm; nothing is made at or below the compensation point.</param>
    /// <param name="celsius">Air temperature, °C.</param>
    public static double LightUseEfficiency(
        CropParameters crop, double photonsMicromolesPerSquareMetreSecond, double carbonDioxidePartsPerMillion, double celsius)
    {
        double compensation = CompensationPoint(celsius);
        double supply = carbonDioxidePartsPerMillion - compensation;
        if (supply <= 0)
        {
            return 0;
        }

        double pool = carbonDioxidePartsPerMillion + (2 * compensation);
        double factor = supply / pool / ReferenceCarbonDioxideFactor;
        double half = crop.HalfSaturationMicromolesPerSquareMetreSecond * pool
            / (ReferenceCarbonDioxidePartsPerMillion + (2 * CompensationAtReferencePartsPerMillion));
        return crop.LightUseEfficiencyGramsPerMole * factor / (1 + (photonsMicromolesPerSquareMetreSecond / half));
    }

    /// <summary>Growth of a closed canopy on a day, g/m²/d.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="day">The day's light.</param>
    /// <param name="stress">Combined stress, 0–1.</param>
    public static double ClosedCanopy(CropParameters crop, in DayLight day, double stress) =>
        stress * Math.Sqrt(TemperatureFactor(crop, day.LitCelsius)) * day.PotentialGramsPerSquareMetre;

    /// <summary>Ceiling of relative growth on a day, 1/d: the tissue's own, or what light caught by a small plant allows.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="day">The day's temperature.</param>
    /// <param name="stress">Combined stress, 0–1.</param>
    /// <param name="closedCanopyGramsPerSquareMetreDay">Growth of the closed canopy, which carries the stress already.</param>
    public static double RelativeGrowthCeiling(
        CropParameters crop, in DayLight day, double stress, double closedCanopyGramsPerSquareMetreDay) => Math.Min(
            stress * crop.RelativeGrowthRateMaximumPerDay * TemperatureFactor(crop, day.MeanCelsius),
            crop.EarlyLightCaptureSquareMetresPerGram * closedCanopyGramsPerSquareMetreDay);

    /// <summary>The exact step of the expolinear law.</summary>
    /// <param name="standingGramsPerSquareMetre">Dry mass, g/m².</param>
    /// <param name="closedCanopyGramsPerSquareMetreDay">Growth of a closed canopy, g/m²/d.</param>
    /// <param name="relativeGrowthPerDay">Ceiling of relative growth, 1/d.</param>
    /// <param name="days">Length of the step, d.</param>
    /// <returns>Dry mass after the step, g/m².</returns>
    public static double Advance(
        double standingGramsPerSquareMetre, double closedCanopyGramsPerSquareMetreDay, double relativeGrowthPerDay, double days = 1)
    {
        if (closedCanopyGramsPerSquareMetreDay <= 0 || relativeGrowthPerDay <= 0 || standingGramsPerSquareMetre <= 0)
        {
            return standingGramsPerSquareMetre;
        }

        double exponent = relativeGrowthPerDay * standingGramsPerSquareMetre / closedCanopyGramsPerSquareMetreDay;
        if (exponent > ClosedCanopyExponent)
        {
            return standingGramsPerSquareMetre + (closedCanopyGramsPerSquareMetreDay * days);
        }

        double after = closedCanopyGramsPerSquareMetreDay / relativeGrowthPerDay
            * Math.Log(1 + ((Math.Exp(exponent) - 1) * Math.Exp(relativeGrowthPerDay * days)));
        return Math.Max(standingGramsPerSquareMetre, after);
    }

    /// <summary>Grows a lot by one day, at midnight, and notes what it would gain tomorrow if no nutrient were short.</summary>
    /// <param name="lot">The lot; its dry mass, gains and stress are changed.</param>
    /// <param name="crop">Its crop.</param>
    /// <param name="day">The light of the day that ends.</param>
    /// <param name="root">The water at its roots.</param>
    /// <param name="plants">What all crops share.</param>
    /// <returns>Dry mass gained by the lot, g.</returns>
    public static double DailyStep(PlantLot lot, CropParameters crop, in DayLight day, in RootZone root, PlantParameters plants)
    {
        if (lot.IsEmpty || lot.AreaSquareMetres <= 0)
        {
            lot.LastGainGrams = 0;
            lot.PotentialGainGrams = 0;
            lot.LastFruitGrams = 0;
            lot.PotentialFruitGrams = 0;
            return 0;
        }

        GrowthStress stress = Stress.Of(lot, crop, root, plants);
        lot.LastStress = stress;
        double standing = lot.DryGrams / lot.AreaSquareMetres;
        double after = Step(standing, crop, day, stress.Combined);
        lot.LastGainGrams = (after - standing) * lot.AreaSquareMetres;
        Fruiting.Advance(lot, crop, day.MeanCelsius);
        lot.LastFruitGrams = Fruiting.OfGain(lot, crop, day, lot.LastGainGrams);
        lot.DryGrams += lot.LastGainGrams - lot.LastFruitGrams;
        Fruiting.Hang(lot, crop, lot.LastFruitGrams);

        // Fruit catches no light: tomorrow's growth starts from what stands without it.
        after = crop.Fruit is null ? after : lot.DryGrams / lot.AreaSquareMetres;
        lot.PotentialGainGrams = (Step(after, crop, day, stress.WithoutNutrient) - after) * lot.AreaSquareMetres;
        lot.PotentialFruitGrams = Fruiting.OfGain(lot, crop, day, lot.PotentialGainGrams);
        return lot.LastGainGrams;
    }

    /// <summary>Water that the last midnight's growth took from the basin, L: tissue and fruit.</summary>
    public static double LastGainWaterLitres(PlantLot lot, CropParameters crop) =>
        TissueWaterLitres(crop, lot.LastGainGrams - lot.LastFruitGrams) + (crop.Fruit is { } fruit ? fruit.WaterLitres(lot.LastFruitGrams) : 0);

    /// <summary>Water that goes into tissue with dry mass, L: fresh mass less dry mass at 1 kg/L.</summary>
    public static double TissueWaterLitres(CropParameters crop, double dryGrams) =>
        ((dryGrams / crop.DryMatterContent) - dryGrams) / UnitConstants.GramsPerKilogram;

    private static double Step(double standing, CropParameters crop, in DayLight day, double stress)
    {
        double closed = ClosedCanopy(crop, day, stress);
        return Advance(standing, closed, RelativeGrowthCeiling(crop, day, stress, closed));
    }
}
