using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Climate;

namespace FarmTwin.Farm.Tests.Climate;

public sealed class WeatherTests
{
    private static readonly DateOnly Start = new(2025, 3, 1);

    [Fact]
    public void Residuals_have_the_published_stationary_covariance()
    {
        // M0 = A M0 A' + B B' solved by iteration; A and B are read off the recursion itself.
        double[,] a = Matrix((i) => Unit(i).Next(0, 0, 0));
        double[,] b = Matrix((i) => default(WeatherResidual).Next(i == 0 ? 1 : 0, i == 1 ? 1 : 0, i == 2 ? 1 : 0));
        double[,] lag0 = new double[3, 3];
        for (int pass = 0; pass < 200; pass++)
        {
            lag0 = Add(Multiply(Multiply(a, lag0), Transpose(a)), Multiply(b, Transpose(b)));
        }

        double[,] lag1 = Multiply(a, lag0);
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("climate-weather-covariance").Rows)
        {
            double[,] found = row["lag"] == "0" ? lag0 : lag1;
            Assert.Equal(PublishedTable.Number(row, "value"),
                found[(int)PublishedTable.Number(row, "row"), (int)PublishedTable.Number(row, "column")], 0.002);
        }
    }

    [Fact]
    public void A_hundred_thousand_days_of_residuals_show_that_covariance()
    {
        const int Days = 100000;
        var streams = new RandomStreams(20250301, 0);
        uint process = StableHash.Of("weather");
        var residual = default(WeatherResidual);
        double[,] lag0 = new double[3, 3];
        double[,] lag1 = new double[3, 3];
        for (int day = -100; day < Days; day++)
        {
            uint ordinal = (uint)(day + 100);
            double[] before = [residual.Maximum, residual.Minimum, residual.Radiation];
            residual = residual.Next(
                streams.Normal(process, 1, ordinal), streams.Normal(process, 2, ordinal), streams.Normal(process, 3, ordinal));
            double[] now = [residual.Maximum, residual.Minimum, residual.Radiation];
            for (int i = 0; i < 9 && day >= 0; i++)
            {
                lag0[i / 3, i % 3] += now[i / 3] * now[i % 3] / Days;
                lag1[i / 3, i % 3] += now[i / 3] * before[i % 3] / Days;
            }
        }

        var failures = new List<string>();
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("climate-weather-covariance").Rows)
        {
            double[,] found = row["lag"] == "0" ? lag0 : lag1;
            double value = found[(int)PublishedTable.Number(row, "row"), (int)PublishedTable.Number(row, "column")];
            if (Math.Abs(value - PublishedTable.Number(row, "value")) > 0.03)
            {
                failures.Add($"lag {row["lag"]} ({row["row"]}, {row["column"]}): {value} instead of {row["value"]}");
            }
        }

        Assert.True(failures.Count == 0, string.Join(Environment.NewLine, failures));
    }

    [Fact]
    public void The_wet_day_chain_keeps_the_given_share()
    {
        Assert.Equal(0.225, WetDayChain.WetAfterDry(0.3), 12);
        Assert.Equal(0.475, WetDayChain.WetAfterWet(0.3), 12);
        Assert.Equal(0.3, WetDayChain.StationaryShare(0.225, 0.475), 12);

        MonthlyNormals normals = ClimateLibrary.Normals with { WetDayFraction = Enumerable.Repeat(0.3, 12).ToArray() };
        var weather = new WeatherGenerator(normals, ClimateLibrary.Site, new RandomStreams(3, 0),
            ClimateLibrary.Parameters, Start, 10000);
        int wet = 0;
        for (int day = 0; day < weather.Days; day++)
        {
            wet += weather.Day(day).Wet ? 1 : 0;
        }

        Assert.Equal(0.3, wet / 10000.0, 0.02);
    }

    [Fact]
    public void A_date_has_the_same_weather_whenever_the_season_starts_and_however_long_it_is()
    {
        WeatherGenerator early = Season(7, 0, Start, 200);
        WeatherGenerator late = Season(7, 0, Start.AddDays(60), 30);
        for (int day = 0; day < 30; day++)
        {
            Assert.Equal(early.Day(day + 60), late.Day(day));
            for (int hour = 0; hour < 24; hour++)
            {
                Assert.Equal(early.At(day + 60, hour), late.At(day, hour));
            }
        }
    }

    [Fact]
    public void Another_replicate_has_other_weather()
    {
        Assert.NotEqual(Season(7, 0, Start, 3).Day(1), Season(7, 1, Start, 3).Day(1));
        Assert.NotEqual(Season(7, 0, Start, 3).Day(1), Season(8, 0, Start, 3).Day(1));
    }

    [Fact]
    public void Hourly_radiation_sums_to_the_day_and_temperature_keeps_within_its_extremes()
    {
        WeatherGenerator weather = Season(11, 2, Start, 365);
        for (int day = 0; day < weather.Days; day++)
        {
            DailyWeather daily = weather.Day(day);
            double joules = 0;
            double hottest = double.NegativeInfinity;
            for (int hour = 0; hour < 24; hour++)
            {
                HourlyWeather now = weather.At(day, hour);
                joules += now.RadiationWattsPerSquareMetre * 3600;

                // In the dark the air is on its way from the day before or to the next, either of which may be the warmer.
                if (hour + 0.5 > daily.SunriseHours && hour + 0.5 < daily.SunsetHours)
                {
                    hottest = Math.Max(hottest, now.TemperatureCelsius);
                }

                Assert.True(now.VapourPressureKilopascal
                    <= Psychrometrics.SaturationPressureKilopascal(now.TemperatureCelsius) + 1e-12);
                Assert.True(now.WindMetresPerSecond >= 0);
                if (day > 0)
                {
                    HourlyWeather before = hour > 0 ? weather.At(day, hour - 1) : weather.At(day - 1, 23);
                    Assert.True(Math.Abs(now.TemperatureCelsius - before.TemperatureCelsius) < 10);
                }
            }

            Assert.Equal(daily.RadiationMegajoulesPerSquareMetre, joules / 1e6, 1e-9);
            Assert.InRange(daily.MaximumCelsius - hottest, -1e-9, 0.05 * (daily.MaximumCelsius - daily.MinimumCelsius));
            Assert.True(daily.MinimumCelsius <= daily.MaximumCelsius - 1 + 1e-12);
        }
    }

    [Fact]
    public void The_course_of_temperature_has_no_step_at_sunset_or_dawn()
    {
        WeatherParameters p = ClimateLibrary.Parameters.Weather;
        double sunset = DiurnalTemperature.ByDay(18.5, 6, 18.5, 5, 20, p);
        Assert.Equal(sunset, DiurnalTemperature.ByNight(0, 11.3, sunset, 7, p.NightDecay), 12);
        Assert.Equal(7, DiurnalTemperature.ByNight(11.3, 11.3, sunset, 7, p.NightDecay), 12);
        Assert.Equal(5, DiurnalTemperature.ByDay(6 + p.MinimumLagHours, 6, 18.5, 5, 20, p), 12);
    }

    [Fact]
    public void A_seasonal_curve_keeps_every_monthly_mean()
    {
        var curve = new SeasonalCurve(ClimateLibrary.Normals.MaximumCelsius);
        for (int month = 1; month <= 12; month++)
        {
            int days = DateTime.DaysInMonth(2025, month);
            double sum = 0;
            for (int day = 1; day <= days; day++)
            {
                sum += curve.At(new DateOnly(2025, month, day));
            }

            Assert.Equal(ClimateLibrary.Normals.MaximumCelsius[month - 1], sum / days, 0.01);
        }

        Assert.Throws<ArgumentException>(() => new SeasonalCurve([1, 2, 3]));
    }

    [Fact]
    public void Many_years_return_the_monthly_normals()
    {
        const int Years = 200;
        double[] maximum = new double[12];
        double[] minimum = new double[12];
        double[] radiation = new double[12];
        double[] wet = new double[12];
        double[] wind = new double[12];
        double[] square = new double[12];
        for (uint year = 0; year < Years; year++)
        {
            WeatherGenerator weather = Season(99, year, new DateOnly(2025, 1, 1), 365);
            for (int day = 0; day < 365; day++)
            {
                DailyWeather daily = weather.Day(day);
                int month = daily.Date.Month - 1;
                double weight = 1.0 / (Years * DateTime.DaysInMonth(2025, month + 1));
                maximum[month] += weight * daily.MaximumCelsius;
                minimum[month] += weight * daily.MinimumCelsius;
                radiation[month] += weight * daily.RadiationMegajoulesPerSquareMetre;
                wet[month] += daily.Wet ? weight : 0;
                double departure = daily.MaximumCelsius - ClimateLibrary.Normals.MaximumCelsius[month];
                square[month] += weight * departure * departure;
                for (int hour = 0; hour < 24; hour++)
                {
                    wind[month] += weight / 24 * weather.At(day, hour).WindMetresPerSecond;
                }
            }
        }

        // Standard errors over 200 years with the day-to-day memory: temperature about 0.15 K in winter, radiation 1 %, wet share
        // 0.008, wind 0.3 %. Radiation is held between bounds, which shifts its mean by a per cent or two besides.
        for (int month = 0; month < 12; month++)
        {
            string where = $"month {month + 1}: Tmax {maximum[month]:f2}, Tmin {minimum[month]:f2}, Rs {radiation[month]:f2}, "
                + $"wet {wet[month]:f3}, wind {wind[month]:f2}, sd {Math.Sqrt(square[month]):f2}";
            Assert.True(Math.Abs(maximum[month] - ClimateLibrary.Normals.MaximumCelsius[month]) < 0.5, where);
            Assert.True(Math.Abs(minimum[month] - ClimateLibrary.Normals.MinimumCelsius[month]) < 0.5, where);
            Assert.True(Math.Abs((radiation[month] / ClimateLibrary.Normals.RadiationMegajoulesPerSquareMetre[month]) - 1) < 0.04, where);
            Assert.True(Math.Abs(wet[month] - ClimateLibrary.Normals.WetDayFraction[month]) < 0.025, where);
            Assert.True(Math.Abs((wind[month] / ClimateLibrary.Normals.WindMetresPerSecond[month]) - 1) < 0.01, where);
            Assert.True(Math.Abs((Math.Sqrt(square[month]) / ClimateLibrary.Normals.MaximumDeviationKelvin[month]) - 1) < 0.1, where);
        }
    }

    [Fact]
    public void Looking_up_an_hour_allocates_nothing()
    {
        WeatherGenerator weather = Season(1, 0, Start, 10);
        double sum = weather.At(3, 4).TemperatureCelsius;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 240; i++)
        {
            sum += weather.At(i / 24, i % 24).TemperatureCelsius;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(double.IsFinite(sum));
    }

    [Fact]
    public void Beyond_the_polar_circle_every_hour_is_a_number()
    {
        var weather = new WeatherGenerator(ClimateLibrary.Normals, new WeatherSite(78.2, 15.6, 10, 1),
            new RandomStreams(5, 0), ClimateLibrary.Parameters, new DateOnly(2025, 1, 1), 365);
        for (int day = 0; day < 365; day++)
        {
            for (int hour = 0; hour < 24; hour++)
            {
                HourlyWeather now = weather.At(day, hour);
                Assert.True(double.IsFinite(now.TemperatureCelsius) && now.RadiationWattsPerSquareMetre >= 0);
            }
        }
    }

    private static WeatherGenerator Season(ulong seed, uint replicate, DateOnly start, int days) =>
        new(ClimateLibrary.Normals, ClimateLibrary.Site, new RandomStreams(seed, replicate), ClimateLibrary.Parameters, start, days);

    private static WeatherResidual Unit(int i) => new(i == 0 ? 1 : 0, i == 1 ? 1 : 0, i == 2 ? 1 : 0);

    private static double[,] Matrix(Func<int, WeatherResidual> column)
    {
        double[,] matrix = new double[3, 3];
        for (int i = 0; i < 3; i++)
        {
            WeatherResidual r = column(i);
            (matrix[0, i], matrix[1, i], matrix[2, i]) = (r.Maximum, r.Minimum, r.Radiation);
        }

        return matrix;
    }

    private static double[,] Multiply(double[,] x, double[,] y)
    {
        double[,] z = new double[3, 3];
        for (int i = 0; i < 27; i++)
        {
            z[i / 9, i / 3 % 3] += x[i / 9, i % 3] * y[i % 3, i / 3 % 3];
        }

        return z;
    }

    private static double[,] Transpose(double[,] x)
    {
        double[,] z = new double[3, 3];
        for (int i = 0; i < 9; i++)
        {
            z[i % 3, i / 3] = x[i / 3, i % 3];
        }

        return z;
    }

    private static double[,] Add(double[,] x, double[,] y)
    {
        double[,] z = new double[3, 3];
        for (int i = 0; i < 9; i++)
        {
            z[i / 3, i % 3] = x[i / 3, i % 3] + y[i / 3, i % 3];
        }

        return z;
    }
}
