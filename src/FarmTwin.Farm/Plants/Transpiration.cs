namespace FarmTwin.Farm.Plants;

/// <summary>Water that a crop transpires in an hour.</summary>
/// <remarks>The simplified Penman–Monteith form of Baille, Baille and Laury (1994), Scientia Horticulturae 59:217–232 (form confirmed,
/// coefficients from memory): E = A f_int Rs/λ + B LAI VPD with f_int = 1 − exp(−k LAI). Pure.</remarks>
public static class Transpiration
{
    private const double LatentHeatMegajoulesPerKilogram = 2.45;

    /// <summary>Transpiration of an area, L/h.</summary>
    /// <param name="areaSquareMetres">Growing area, m².</param>
    /// <param name="leafAreaIndex">Leaf area over growing area (<see cref="PlantLot.LeafAreaIndex"/>).</param>
    /// <param name="radiationMegajoulesPerSquareMetreHour">Solar (and lamp) radiation inside, MJ/m²/h, at least 0.</param>
    /// <param name="vapourDeficitKilopascals">Vapour pressure deficit of the air, kPa; a negative one counts as 0.</param>
    /// <param name="night">Whether stomata are closed for the night.</param>
    /// <param name="plants">What all crops share.</param>
    public static double LitresPerHour(
        double areaSquareMetres,
        double leafAreaIndex,
        double radiationMegajoulesPerSquareMetreHour,
        double vapourDeficitKilopascals,
        bool night,
        PlantParameters plants)
    {
        if (areaSquareMetres <= 0 || leafAreaIndex <= 0)
        {
            return 0;
        }

        return OfStandsLitresPerHour(
            areaSquareMetres * Intercepted(leafAreaIndex, plants),
            areaSquareMetres * leafAreaIndex,
            radiationMegajoulesPerSquareMetreHour,
            vapourDeficitKilopascals,
            night,
            plants);
    }

    /// <summary>Share of the light that a leaf area intercepts, 0 to 1.</summary>
    public static double Intercepted(double leafAreaIndex, PlantParameters plants) =>
        1 - Math.Exp(-plants.RadiationExtinction * leafAreaIndex);

    /// <summary>Transpiration of many stands together, L/h, from sums over them.</summary>
    /// <param name="canopySquareMetres">Σ area × intercepted share, m².</param>
    /// <param name="leafSquareMetres">Σ area × leaf area index, m².</param>
    /// <param name="radiationMegajoulesPerSquareMetreHour">Sun inside, MJ/(m² h); negative counts as none.</param>
    /// <param name="vapourDeficitKilopascals">kPa; negative counts as none.</param>
    /// <param name="night">Whether the night's conductance holds.</param>
    /// <param name="plants">Parameters.</param>
    public static double OfStandsLitresPerHour(
        double canopySquareMetres,
        double leafSquareMetres,
        double radiationMegajoulesPerSquareMetreHour,
        double vapourDeficitKilopascals,
        bool night,
        PlantParameters plants)
    {
        double conductance = night
            ? plants.NightVapourCoefficientKilogramsPerSquareMetreHourKilopascal
            : plants.DayVapourCoefficientKilogramsPerSquareMetreHourKilopascal;
        return (canopySquareMetres * plants.RadiationShare * Math.Max(0, radiationMegajoulesPerSquareMetreHour) / LatentHeatMegajoulesPerKilogram)
            + (leafSquareMetres * conductance * Math.Max(0, vapourDeficitKilopascals));
    }
}
