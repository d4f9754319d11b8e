namespace FarmTwin.Farm.Climate;

/// <summary>What a climate table gives for each month, January first; twelve values each.</summary>
/// <param name="MaximumCelsius">Mean daily maximum, °C.</param>
/// <param name="MinimumCelsius">Mean daily minimum, °C, below the maximum.</param>
/// <param name="MaximumDeviationKelvin">Standard deviation of the daily maximum, K.</param>
/// <param name="MinimumDeviationKelvin">Standard deviation of the daily minimum, K.</param>
/// <param name="RadiationMegajoulesPerSquareMetre">Mean global radiation, MJ/(m2 d).</param>
/// <param name="WetDayFraction">Share of days with rain or snow, 0 to 1.</param>
/// <param name="WindMetresPerSecond">Mean wind, m/s.</param>
public sealed record MonthlyNormals(
    IReadOnlyList<double> MaximumCelsius,
    IReadOnlyList<double> MinimumCelsius,
    IReadOnlyList<double> MaximumDeviationKelvin,
    IReadOnlyList<double> MinimumDeviationKelvin,
    IReadOnlyList<double> RadiationMegajoulesPerSquareMetre,
    IReadOnlyList<double> WetDayFraction,
    IReadOnlyList<double> WindMetresPerSecond)
{
    /// <summary>The normals of a site.</summary>
    /// <param name="normals">As described.</param>
    /// <param name="warmerKelvin">Added to every temperature, K.</param>
    public static MonthlyNormals Of(Description.WeatherNormalsDescription normals, double warmerKelvin = 0)
    {
        ArgumentNullException.ThrowIfNull(normals);
        return new MonthlyNormals(
            [.. normals.DailyMaximumCelsius.Select(t => t + warmerKelvin)],
            [.. normals.DailyMinimumCelsius.Select(t => t + warmerKelvin)],
            normals.MaximumSpreadKelvin,
            normals.MinimumSpreadKelvin,
            normals.RadiationMegajoules,
            normals.WetDayShare,
            normals.WindMetresPerSecond);
    }
}
