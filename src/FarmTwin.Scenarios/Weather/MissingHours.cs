using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;

namespace FarmTwin.Scenarios.Weather;

/// <summary>Finds what a year of weather lacks, and refuses or fills it as its user asked.</summary>
internal static class MissingHours
{
    // Normals have no year; this one has no 29 February.
    private const int PlainYear = 2025;
    private const double LeastExtraterrestrialMegajoules = 0.05;

    /// <summary>Fills; says how many hours were touched.</summary>
    public static int Fill(RawYear year, SiteDescription site, WeatherFileDescription file, ClimateParameters climate, WeatherErrors errors)
    {
        var touched = new bool[WeatherYear.HourCount];
        int longest = file.Fill == WeatherFill.Interpolate ? (int)file.LongestGapHours : 0;
        double[] sun = SunAbove(site);
        for (int quantity = 0; quantity < RawYear.Quantities; quantity++)
        {
            double[] values = year.Values[quantity];
            var missing = Enumerable.Range(0, values.Length).Where(h => double.IsNaN(values[h])).ToList();
            if (missing.Count == 0)
            {
                continue;
            }

            if (file.Fill == WeatherFill.FromNormals)
            {
                FromNormals(values, quantity, missing, site, climate, errors);
            }
            else if (longest < LongestGap(values, out int gapStart))
            {
                int first = file.Fill == WeatherFill.Refuse ? missing[0] : gapStart;
                string cure = file.Fill == WeatherFill.Refuse
                    ? "\"fill\": \"interpolate\" bridges short gaps, \"from-normals\" takes the normals of the site"
                    : $"gaps of at most {longest} h (\"longestGap\"), or \"fill\": \"from-normals\"";
                errors.Add(year.Lines[first], year.Lines[first] > 0 ? 1 : 0,
                    $"{RawYear.Names[quantity]} is missing in {missing.Count} hours, first at {RawYear.HourInWords(first)}"
                    + (year.Lines[first] > 0 ? string.Empty : ", for which there is no row"), cure);
            }
            else
            {
                Bridge(values, quantity == RawYear.Radiation ? sun : null);
            }

            missing.ForEach(h => touched[h] = true);
        }

        return touched.Count(t => t);
    }

    // Radiation is bridged as a share of what stands above the air, so that a gap at noon is not drawn as a line from morning to evening.
    private static void Bridge(double[] values, double[]? sun)
    {
        int n = values.Length;
        bool[] known = [.. values.Select((v, h) => !double.IsNaN(v) && (sun is null || sun[h] > LeastExtraterrestrialMegajoules))];
        double[] level = [.. values.Select((v, h) => sun is null ? v : v / Math.Max(sun[h], LeastExtraterrestrialMegajoules))];
        for (int h = 0; h < n; h++)
        {
            if (!double.IsNaN(values[h]))
            {
                continue;
            }

            int before = 1;
            while (before < n && !known[(h - before + n) % n])
            {
                before++;
            }

            int after = 1;
            while (after < n && !known[(h + after) % n])
            {
                after++;
            }

            double between = ((level[(h - before + n) % n] * after) + (level[(h + after) % n] * before)) / (before + after);
            values[h] = sun is null ? between : sun[h] > 0 ? between * sun[h] : 0;
        }
    }

    private static int LongestGap(double[] values, out int start)
    {
        int longest = 0;
        int run = 0;
        start = 0;

        // Twice around, because a gap may reach over the end of the year.
        for (int i = 0; i < 2 * values.Length; i++)
        {
            run = double.IsNaN(values[i % values.Length]) ? Math.Min(run + 1, values.Length) : 0;
            if (run > longest)
            {
                longest = run;
                start = (i - run + 1 + values.Length) % values.Length;
            }
        }

        return longest;
    }

    private static double[] SunAbove(SiteDescription site)
    {
        var sun = new double[WeatherYear.HourCount];
        for (int h = 0; h < sun.Length; h++)
        {
            sun[h] = SolarGeometry.ExtraterrestrialPeriod(
                (h / 24) + 1, site.LatitudeDegrees, site.LongitudeDegrees, site.TimeZoneHours, (h % 24) + 0.5, 1);
        }

        return sun;
    }

    private static void FromNormals(double[] values, int quantity, List<int> missing, SiteDescription site, ClimateParameters climate, WeatherErrors errors)
    {
        if (site.Normals is not { } described)
        {
            errors.Add(0, 0, $"{RawYear.Names[quantity]} is missing in {missing.Count} hours and the site has no normals to fill them from",
                "\"normals\" under site, or \"fill\": \"interpolate\"");
            return;
        }

        // The generator without any spread draws the normal course of the year itself; only its wind is chance, so the mean stands for it.
        double[] none = new double[12];
        var normals = MonthlyNormals.Of(described) with { MaximumDeviationKelvin = none, MinimumDeviationKelvin = none, WetDayFraction = none };
        var wind = new SeasonalCurve(normals.WindMetresPerSecond);
        var course = new WeatherGenerator(
            normals,
            new WeatherSite(site.LatitudeDegrees, site.LongitudeDegrees, site.ElevationMetres, site.TimeZoneHours),
            new RandomStreams(0, 0),
            climate with { Weather = climate.Weather with { DryDayRadiationDeviation = 0, WetDayRadiationDeviation = 0 } },
            new DateOnly(PlainYear, 1, 1),
            WeatherYear.Days);
        foreach (int h in missing)
        {
            HourlyWeather normal = course.At(h / 24, h % 24);
            values[h] = quantity switch
            {
                RawYear.Temperature => normal.TemperatureCelsius,
                RawYear.Vapour => normal.VapourPressureKilopascal,
                RawYear.Radiation => normal.RadiationWattsPerSquareMetre,
                _ => Math.Max(0, wind.At(course.Day(h / 24).Date)),
            };
        }
    }
}
