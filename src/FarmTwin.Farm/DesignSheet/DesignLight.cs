using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Light at the crop by month: sun through cover and shade, and the lamps.</summary>
public sealed class DesignLight
{
    private const int MonthsOfAYear = 12;
    private const int HoursADay = 24;

    private readonly DesignCase _design;
    private readonly double[] _outside = new double[MonthsOfAYear];
    private readonly CoverParameters _cover;

    /// <summary>Reads the months.</summary>
    public DesignLight(DesignCase design)
    {
        ArgumentNullException.ThrowIfNull(design);
        _design = design;
        _cover = CoverParameters.From(design.Parts.Cover);
        Days = [.. Enumerable.Range(0, MonthsOfAYear).Select(_ => new List<int>())];
        for (int day = 0; day < design.Season.Weather.Days && day < design.Farm.LengthDays; day++)
        {
            Days[design.DateOf(day).Month - 1].Add(day);
        }

        for (int month = 0; month < MonthsOfAYear; month++)
        {
            double megajoules = design.Farm.Site is { WeatherFile: null, Normals: { } normals }
                ? normals.RadiationMegajoules[month]
                : Days[month].Count == 0 ? double.NaN
                    : Days[month].Average(d => Enumerable.Range(0, HoursADay).Sum(h => design.Season.Weather.At(d, h).RadiationWattsPerSquareMetre))
                        * UnitConstants.SecondsPerHour / 1e6;
            double watts = megajoules * 1e6 / UnitConstants.SecondsPerDay;
            _outside[month] = Par.LightIntegral(Par.PpfdFromRadiation(watts, design.Parts.Climate.ParShare), UnitConstants.HoursPerDay);
        }
    }

    /// <summary>Days of the season in each month.</summary>
    public IReadOnlyList<List<int>> Days { get; }

    /// <summary>Months, 0 to 11, that the season touches.</summary>
    public IEnumerable<int> Months => Enumerable.Range(0, MonthsOfAYear).Where(m => Days[m].Count > 0);

    /// <summary>Sun at the crop in a month, mean of its days, mol/m²/d.</summary>
    public double SunMoles(int month) => Days[month].Average(d => Par.Inside(_outside[month], _cover.ParTransmission, ShadeAt(d)));

    /// <summary>Light of the lamps over a basin, mol/m²/d.</summary>
    public double LampMoles(string basin)
    {
        double moles = 0;
        foreach (LampDescription lamp in _design.Farm.Lamps.Values.Where(l => l.Over.Contains(basin)))
        {
            double area = CropArea.SquareMetres(_design.Parts, lamp.Over.Contains);
            double flux = lamp.Count * lamp.PowerWatts * lamp.EfficacyMicromolesPerJoule * lamp.UtilisationShare;
            moles += area > 0 ? Par.LightIntegral(flux / area, lamp.BeforeSunriseHours + lamp.AfterSunsetHours) : 0;
        }

        return moles;
    }

    // The last shade drawn or taken off by then.
    private double ShadeAt(int day) => _design.Farm.Plan.Values.OfType<SetShade>().Where(s => s.Day <= day).OrderBy(s => s.Day).LastOrDefault()?.Share
        ?? _design.Farm.House.ShadeShare;
}
