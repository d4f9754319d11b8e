using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Climate;

/// <summary>What the heat and vapour balance of a house needs beside the house's own measures.</summary>
/// <param name="AbsorbedSolarShare">Share of the transmitted sun that stays as heat or vapour; the rest is reflected out.</param>
/// <param name="FloorSolarShare">Share of the absorbed sun that falls on the bare floor.</param>
/// <param name="FloorCapacityKilojoulesPerSquareMetreKelvin">Heat capacity of floor and ground that takes part in a day, kJ/(m2 K).</param>
/// <param name="FloorFilmWattsPerSquareMetreKelvin">Floor to air, W/(m2 K).</param>
/// <param name="ScreenSavingShare">Share of the cover's loss that a closed thermal screen saves.</param>
/// <param name="WindThresholdMetresPerSecond">Wind up to which U-values hold, m/s.</param>
/// <param name="WindFactorPerMetrePerSecond">Rise of U for each m/s above the threshold, s/m.</param>
/// <param name="CoverFilmWattsPerSquareMetreKelvin">Inner film of the cover, convection and radiation, W/(m2 K).</param>
/// <param name="CoverConvectionWattsPerSquareMetreKelvin">Inner film, convection only: it carries the vapour that condenses.</param>
/// <param name="PerimeterWattsPerMetreKelvin">Loss by an uninsulated perimeter, W/(m K).</param>
/// <param name="InsulatedPerimeterWattsPerMetreKelvin">Loss by an insulated perimeter, W/(m K).</param>
/// <param name="VentFlowCubicMetresPerSquareMetreSecond">Greatest ventilation, m3/s per m2 of floor.</param>
/// <param name="VentSetPointCelsius">Air temperature at which vents begin to open, °C.</param>
public sealed record HouseAirParameters(
    double AbsorbedSolarShare,
    double FloorSolarShare,
    double FloorCapacityKilojoulesPerSquareMetreKelvin,
    double FloorFilmWattsPerSquareMetreKelvin,
    double ScreenSavingShare,
    double WindThresholdMetresPerSecond,
    double WindFactorPerMetrePerSecond,
    double CoverFilmWattsPerSquareMetreKelvin,
    double CoverConvectionWattsPerSquareMetreKelvin,
    double PerimeterWattsPerMetreKelvin,
    double InsulatedPerimeterWattsPerMetreKelvin,
    double VentFlowCubicMetresPerSquareMetreSecond,
    double VentSetPointCelsius)
{
    /// <summary>Reads the parameters from the set <c>processes/climate</c>.</summary>
    /// <param name="set">The set.</param>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A parameter has another unit.</exception>
    public static HouseAirParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new HouseAirParameters(
            set.Get("absorbedSolarShare", "1"),
            set.Get("floorSolarShare", "1"),
            set.Get("floorCapacity", "kJ/m2K"),
            set.Get("floorFilm", "W/m2K"),
            set.Get("screenSaving", "1"),
            set.Get("windThreshold", "m/s"),
            set.Get("windFactor", "s/m"),
            set.Get("coverFilm", "W/m2K"),
            set.Get("coverConvection", "W/m2K"),
            set.Get("perimeter", "W/mK"),
            set.Get("insulatedPerimeter", "W/mK"),
            set.Get("ventFlow", "m3/m2s"),
            set.Get("ventSetPoint", "°C"));
    }
}
