using CsCheck;
using FarmTwin.Farm.Climate;

namespace FarmTwin.Farm.Tests.Climate;

public sealed class SunTests
{
    [Fact]
    public void Sun_positions_follow_the_tester_and_the_textbook() => ClimateTable.Check("climate-sun-positions", Positions());

    internal static Dictionary<string, double> Positions()
    {
        const int TesterDay = 290;
        (double sunrise, double sunset) = SunClock.SunriseSunset(TesterDay, 39.742476, -105.1786, -7);
        double clock = 12 + (30.5 / 60);
        double midday = 10.5 - SolarGeometry.SeasonalCorrectionHours(105);
        return new Dictionary<string, double>
        {
            ["tester sunrise h"] = sunrise,
            ["tester sunset h"] = sunset,
            ["tester zenith degrees"] = SunClock.ZenithDegrees(TesterDay, clock, 39.742476, -105.1786, -7),
            ["tester azimuth degrees"] = SunClock.AzimuthDegrees(TesterDay, clock, 39.742476, -105.1786, -7),
            ["Madison equation of time min"] = SunClock.EquationOfTimeMinutes(34, 16.5),
            ["Madison solar time h"] = 12 + (12 / Math.PI * SolarGeometry.HourAngle(34, -89.4, -6, 10.5)),
            ["43 N 15 April daily MJ/m2"] = SolarGeometry.ExtraterrestrialDaily(105, 43),
            ["43 N 15 April hour 10 to 11 MJ/m2"] = SolarGeometry.ExtraterrestrialPeriod(105, 43, 0, 0, midday, 1),
        };
    }

    [Fact]
    public void Sunrise_sunset_and_altitude_follow_an_independent_astronomy_library()
    {
        double worstMinutes = 0;
        double worstHighMinutes = 0;
        double worstDegrees = 0;
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("climate-sun-recorded").Rows)
        {
            double latitude = PublishedTable.Number(row, "latitude");
            double longitude = PublishedTable.Number(row, "longitudeEast");
            double zone = PublishedTable.Number(row, "zone");
            int day = (int)PublishedTable.Number(row, "dayOfYear");
            (double sunrise, double sunset) = SunClock.SunriseSunset(day, latitude, longitude, zone);
            double minutes = 60 * Math.Max(
                Math.Abs(sunrise - PublishedTable.Number(row, "sunrise")), Math.Abs(sunset - PublishedTable.Number(row, "sunset")));
            if (Math.Abs(latitude) > 55)
            {
                worstHighMinutes = Math.Max(worstHighMinutes, minutes);
            }
            else
            {
                worstMinutes = Math.Max(worstMinutes, minutes);
            }

            double altitude = 90 - SunClock.ZenithDegrees(
                day, PublishedTable.Number(row, "altitudeHour"), latitude, longitude, zone);
            worstDegrees = Math.Max(worstDegrees, Math.Abs(altitude - PublishedTable.Number(row, "altitude")));
        }

        Assert.True(worstMinutes < 2, $"Sunrise or sunset is {worstMinutes} min off.");
        Assert.True(worstHighMinutes < 3, $"Above 55 degrees sunrise or sunset is {worstHighMinutes} min off.");
        Assert.True(worstDegrees < 0.5, $"The altitude is {worstDegrees} degrees off.");
    }

    [Fact]
    public void Hourly_extraterrestrial_radiation_sums_to_the_daily()
    {
        Gen.Select(Gen.Int[1, 366], Gen.Double[-89, 89], Gen.Double[-180, 180], Gen.Double[-12, 14]).Sample(
            (day, latitude, longitude, zone) =>
            {
                double sum = 0;
                for (int hour = 0; hour < 24; hour++)
                {
                    sum += SolarGeometry.ExtraterrestrialPeriod(day, latitude, longitude, zone, hour + 0.5, 1);
                }

                // A zone more than half a day off the sun may lose a clock day's edge: kept to within 12 h here.
                return Math.Abs((longitude / 15) - zone) > 11
                    || Math.Abs(sum - SolarGeometry.ExtraterrestrialDaily(day, latitude)) < 1e-9;
            });
    }

    [Fact]
    public void Hourly_shares_sum_to_one_and_are_never_negative()
    {
        Gen.Select(Gen.Int[1, 366], Gen.Double[-66, 66], Gen.Double[-180, 180]).Sample((day, latitude, longitude) =>
        {
            Span<double> shares = stackalloc double[24];
            HourlyRadiation.Split(shares, day, latitude, longitude, Math.Round(longitude / 15));
            double sum = 0;
            foreach (double share in shares)
            {
                Assert.True(share >= 0);
                sum += share;
            }

            Assert.Equal(1, sum, 12);
        });
    }

    [Fact]
    public void The_published_ratio_sums_to_1_0016_at_43_degrees_in_June_before_rescaling()
    {
        // Own recomputation of Collares-Pereira & Rabl at the middle of each solar hour, 43 N, 11 June (day 162).
        double sunset = SolarGeometry.SunsetHourAngle(162, 43);
        double sum = 0;
        for (int hour = 0; hour < 24; hour++)
        {
            sum += HourlyRadiation.RatioAt(Math.PI / 12 * (hour - 11.5), sunset);
        }

        Assert.Equal(1.0016, sum, 0.0006);
    }

    [Fact]
    public void Radiation_peaks_in_the_hour_of_solar_noon()
    {
        Span<double> shares = stackalloc double[24];
        HourlyRadiation.Split(shares, 172, 40.1, -76.3, -5);
        Assert.Equal(shares[12], Math.Max(shares[11], Math.Max(shares[12], shares[13])));
        Assert.Equal(0, shares[2]);
        Assert.Equal(0, shares[22]);
    }

    [Fact]
    public void Polar_day_and_night_give_numbers()
    {
        Assert.Equal(24, SolarGeometry.DayLengthHours(172, 80), 9);
        Assert.Equal(0, SolarGeometry.ExtraterrestrialDaily(355, 80), 9);
        (double sunrise, double sunset) = SunClock.SunriseSunset(355, 80, 0, 0);
        Assert.Equal(sunrise, sunset);
        Span<double> shares = stackalloc double[24];
        HourlyRadiation.Split(shares, 355, 80, 0, 0);
        Assert.Equal(0, shares[12]);
    }
}
