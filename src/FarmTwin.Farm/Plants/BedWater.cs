namespace FarmTwin.Farm.Plants;

/// <summary>Standing water of a media bed: volume and height, what roots need of it, what they breathe from it. Pure.</summary>
public static class BedWater
{
    /// <summary>Water in a bed, L: area × height × pore share.</summary>
    /// <param name="areaSquareMetres">m².</param>
    /// <param name="heightMetres">Height of the water above the floor, m.</param>
    /// <param name="voidShare">Pore share of the medium.</param>
    public static double Litres(double areaSquareMetres, double heightMetres, double voidShare) =>
        areaSquareMetres * heightMetres * voidShare * UnitConstants.LitresPerCubicMetre;

    /// <summary>Height of the water above the floor, m; no more than the medium is deep.</summary>
    public static double HeightMetres(double litres, double areaSquareMetres, double voidShare, double depthMetres) => Math.Clamp(
        litres / (areaSquareMetres * voidShare * UnitConstants.LitresPerCubicMetre), 0, depthMetres);

    /// <summary>How far the roots are down, 0 at planting, 1 after the days over which the water is lowered.</summary>
    public static double Rooted(double daysSincePlanting, double lowerOverDays) => Math.Clamp(daysSincePlanting / lowerOverDays, 0, 1);

    /// <summary>Standing height between that of planting and that of rooted plants, by a line.</summary>
    public static double Between(double atPlanting, double rooted, double share) => atPlanting + ((rooted - atPlanting) * share);

    /// <summary>f_water, share of the roots that the water reaches, 0–1.</summary>
    /// <param name="heightMetres">Standing height, m.</param>
    /// <param name="rooted">From <see cref="Rooted"/>.</param>
    /// <param name="beds">Parameters.</param>
    public static double WaterFactor(double heightMetres, double rooted, BedParameters beds)
    {
        ArgumentNullException.ThrowIfNull(beds);
        return Math.Clamp(heightMetres / Between(beds.HeightAtPlantingMetres, beds.HeightRootedMetres, rooted), 0, 1);
    }

    /// <summary>Oxygen that roots and the bed's microbes would breathe with oxygen in plenty, g/h.</summary>
    /// <param name="rootDryGrams">Dry mass of the roots, g.</param>
    /// <param name="areaSquareMetres">Area of the bed, m².</param>
    /// <param name="celsius">Water temperature, °C.</param>
    /// <param name="beds">Parameters.</param>
    public static double RespirationGramsPerHour(double rootDryGrams, double areaSquareMetres, double celsius, BedParameters beds)
    {
        ArgumentNullException.ThrowIfNull(beds);
        double warmth = Math.Pow(beds.RespirationPerKelvin, celsius - beds.RespirationCelsius);
        return warmth * ((beds.RootRespirationMilligramsPerGramHour * rootDryGrams / UnitConstants.GramsPerKilogram)
            + (beds.MicrobialRespirationGramsPerSquareMetreHour * areaSquareMetres));
    }
}
