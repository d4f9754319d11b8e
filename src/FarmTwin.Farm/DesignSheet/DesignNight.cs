using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>The coldest night that the heaters are laid out for.</summary>
/// <param name="Month">Its month, 1 to 12.</param>
/// <param name="OutsideCelsius">Outside air, °C.</param>
/// <param name="MeanCelsius">Mean outside air of that month, °C.</param>
/// <param name="WindMetresPerSecond">Wind, m/s.</param>
/// <param name="FromFile">Whether it is the coldest hour of a weather file and not reckoned from normals.</param>
public readonly record struct DesignNight(int Month, double OutsideCelsius, double MeanCelsius, double WindMetresPerSecond, bool FromFile)
{
    private const int HoursADay = 24;

    /// <summary>From the normals: mean minimum less some standard deviations; else the coldest hour of the season's weather.</summary>
    public static DesignNight Of(DesignCase design)
    {
        ArgumentNullException.ThrowIfNull(design);
        SiteDescription site = design.Farm.Site;
        double deviations = design.Bands.Get("nightDeviations", "1");
        if (site.WeatherFile is null && site.Normals is { } described)
        {
            var normals = MonthlyNormals.Of(described, site.WarmerKelvin);
            int coldest = Enumerable.Range(0, normals.MinimumCelsius.Count).MinBy(Night);
            return new DesignNight(coldest + 1, Night(coldest), (normals.MaximumCelsius[coldest] + normals.MinimumCelsius[coldest]) / 2,
                normals.WindMetresPerSecond[coldest], false);

            double Night(int month) => normals.MinimumCelsius[month] - (deviations * normals.MinimumDeviationKelvin[month]);
        }

        SeasonWeather weather = design.Season.Weather;
        int hour = Enumerable.Range(0, weather.Days * HoursADay).MinBy(h => weather.At(h / HoursADay, h % HoursADay).TemperatureCelsius);
        int month = design.DateOf(hour / HoursADay).Month;
        HourlyWeather cold = weather.At(hour / HoursADay, hour % HoursADay);
        double mean = Enumerable.Range(0, weather.Days).Where(d => design.DateOf(d).Month == month)
            .Average(d => Enumerable.Range(0, HoursADay).Average(h => weather.At(d, h).TemperatureCelsius));
        return new DesignNight(month, cold.TemperatureCelsius, mean, cold.WindMetresPerSecond, true);
    }
}
