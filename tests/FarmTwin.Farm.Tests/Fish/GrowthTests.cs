using FarmTwin.Farm.Fish;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Fish;

public class GrowthTests
{
    private static readonly FishParameters Nile = FishLibrary.Nile;

    [Theory]
    [InlineData(17, .002)]
    [InlineData(18, .01)]
    [InlineData(20, .09)]
    [InlineData(22, .32)]
    [InlineData(24, .645)]
    [InlineData(26, .88)]
    [InlineData(27.5, .965)]
    [InlineData(28, .98)]
    [InlineData(30, 1.0)]
    [InlineData(31.5, 1.0)]
    [InlineData(33, .99)]
    [InlineData(34, .945)]
    [InlineData(36, .55)]
    public void The_temperature_bell_has_the_tabled_values(double celsius, double expected) =>
        Assert.Equal(expected, Feeding.TemperatureFactor(Nile, celsius), 0.006);

    [Theory]
    [InlineData(28, new[] { 13.5, 8.1, 5.3, 4.0, 3.2, 2.4, 2.0, 1.7 })]
    [InlineData(24, new[] { 9.1, 5.5, 3.6, 2.7, 2.2, 1.65, 1.3, 1.2 })]
    [InlineData(20, new[] { 2.0, 1.3, 0.9, 0.7, 0.6, 0.5, 0.4, 0.4 })]
    public void Offered_ration_by_weight_and_temperature_reproduces_the_own_table(double celsius, double[] percentPerDay)
    {
        double[] weights = [1, 5, 20, 50, 100, 250, 500, 800];
        for (int i = 0; i < weights.Length; i++)
        {
            double offered = Feeding.AppetiteGramsPerFishDay(Nile, weights[i], FishLibrary.Clean(celsius))
                / (1 - FishLibrary.Feed.UneatenFraction);
            Assert.Equal(percentPerDay[i], 100 * offered / weights[i], 0.055);
        }
    }

    [Fact]
    public void A_temperature_trial_at_30_degrees_predicts_24_degrees_and_raw_degree_days_do_not()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Read("fish-temperature-trial").Rows;
        double cool = Number(rows[0], "finalGrams");
        double warm = Number(rows[1], "finalGrams");
        double predicted = At24From30(warm);
        double perThousand = 1000 * GrowthCurves.GrowthCoefficient(4.19, warm, 90 * 30);
        double raw = GrowthCurves.ThermalUnitGrams(4.19, perThousand, 90 * 24);

        Assert.InRange(predicted, cool * 0.85, cool * 1.15);
        Assert.Equal(26.1, predicted, 0.1);
        Assert.Equal(35.7, raw, 0.1);
    }

    /// <summary>Weight at 24 °C after 90 d from 4.19 g, from the weight at 30 °C.</summary>
    internal static double At24From30(double warmGrams) => GrowthCurves.CubeRootGrams(
        4.19, GrowthCurves.GrowthCoefficient(4.19, warmGrams, 90 * Feeding.TemperatureFactor(Nile, 30)), 90 * Feeding.TemperatureFactor(Nile, 24));

    [Fact]
    public void Growth_at_30_degrees_is_about_three_times_that_at_22()
    {
        Assert.Equal(2.82, Feeding.TemperatureFactor(Nile, 30.3) / Feeding.TemperatureFactor(Nile, 22.2), 0.01);
        double ratio = Gain(30.3) / Gain(22.2);
        Assert.InRange(ratio, 2.4, 3.7);
    }

    /// <summary>Gain of a 100 g fish in 60 d, g.</summary>
    internal static double Gain(double celsius)
    {
        var tank = new ConstantTank(Nile, FishLibrary.Clean(celsius), 1, 100);
        tank.Run(60);
        return tank.Cohort.MeanGrams - 100;
    }

    [Fact]
    public void Feeding_stops_in_the_cold_and_weight_falls()
    {
        var tank = new ConstantTank(Nile, FishLibrary.Clean(16), 1, 100);
        tank.Run(5);
        Assert.Equal(0, tank.Cohort.EatenGrams);
        Assert.True(tank.Cohort.MeanGrams < 100);

        double nearNil = Feeding.AppetiteGramsPerFishDay(Nile, 100, FishLibrary.Clean(17.2));
        Assert.InRange(nearNil / Feeding.MaintenanceGramsPerDay(Nile, 100, 17.2), 0, 0.4);
    }

    [Fact]
    public void Conversion_improves_as_the_ration_rises_toward_appetite()
    {
        double before = double.PositiveInfinity;
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-ration-response").Rows)
        {
            // The first four weeks: later the fish have outgrown the appetite that 4 % would ask.
            var tank = new ConstantTank(Nile, FishLibrary.Clean(28), 1, 37) { OfferedShareOfWeight = Number(row, "offeredPercent") / 100 };
            tank.Run(28);
            Assert.True(tank.FeedConversion < before, $"{row["offeredPercent"]} %: {tank.FeedConversion}");
            before = tank.FeedConversion;
        }
    }

    [Fact]
    public void The_ration_trial_itself_gives_the_steeper_slope_that_is_on_record()
    {
        // Least squares of daily gain on ration, percent of weight: slope 1.27, maintenance 1.07 (own fit).
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Read("fish-ration-response").Rows;
        double[] ration = [.. rows.Select(r => Number(r, "offeredPercent"))];
        double[] gain = [.. rows.Select(r => Number(r, "offeredPercent") / Number(r, "feedConversion"))];
        (double intercept, double slope) = MathNet.Numerics.Fit.Line(ration, gain);
        Assert.Equal(1.27, slope, 0.03);
        Assert.Equal(1.07, -intercept / slope, 0.03);
    }

    [Fact]
    public void A_batch_in_three_stages_has_the_printed_cube_root_slopes()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Read("fish-batch-stages").Rows;
        for (int i = 1; i < rows.Count; i++)
        {
            double slope = GrowthCurves.GrowthCoefficient(
                Number(rows[i - 1], "grams"), Number(rows[i], "grams"), Number(rows[i], "day") - Number(rows[i - 1], "day"));
            double expected = Number(rows[i], "slopeFromBefore");
            Assert.Equal(expected, slope, expected * 0.01);
        }
    }

    [Fact]
    public void Daily_gain_and_specific_growth_of_the_nursery_agree_over_seventy_days()
    {
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-nursery-density").Rows)
        {
            double final = 2.07 + (70 * Number(row, "gainGramsPerDay"));
            Assert.Equal(Number(row, "specificGrowthPercentPerDay"), 100 * Math.Log(final / 2.07) / 70, 0.02);
        }
    }

    [Fact]
    public void A_specific_growth_rate_follows_from_its_weights()
    {
        IReadOnlyDictionary<string, string> row = Assert.Single(Read("fish-specific-growth").Rows);
        double rate = 100 * Math.Log(Number(row, "finalGrams") / Number(row, "startGrams")) / Number(row, "days");
        Assert.Equal(Number(row, "specificGrowthPercentPerDay"), rate, 0.005);
    }

    [Fact]
    public void Thermal_unit_growth_follows_Iwama_and_Tautz()
    {
        Assert.Equal(31.39, GrowthCurves.ThermalUnitGrams(10, 1, 1000), 0.01);
    }

    [Fact]
    public void The_power_law_for_Nile_tilapia_gives_its_days_gain_and_weight()
    {
        IReadOnlyDictionary<string, string> row = Assert.Single(Read("fish-power-law").Rows);
        double days = Number(row, "days");
        Assert.Equal(days, GrowthCurves.PowerLawDays(Number(row, "fromGrams"), Number(row, "toGrams"), Number(row, "celsius")), days * 0.002);
        Assert.Equal(2.434, GrowthCurves.PowerLawGainGramsPerDay(100, 29), 2.434 * 0.002);
        Assert.Equal(600, GrowthCurves.PowerLawGrams(55, 29, GrowthCurves.PowerLawDays(55, 600, 29)), 1e-6);
        Assert.Equal(670, GrowthCurves.PowerLawGrams(79.2, 28, 168), 2.0);
    }

    [Fact]
    public void The_stepped_model_stands_near_the_power_law_and_the_measured_cohort()
    {
        Assert.InRange(From79Grams(), 650, 900);
    }

    internal static double From79Grams()
    {
        var tank = new ConstantTank(Nile, FishLibrary.Clean(28), 1, 79.2);
        tank.Run(168);
        return tank.Cohort.MeanGrams;
    }

    [Fact]
    public void A_strain_is_calibrated_from_two_weighings()
    {
        double effectiveDays = 100 * Feeding.TemperatureFactor(Nile, 26);
        double end = GrowthCurves.CubeRootGrams(50, 0.029, effectiveDays);
        Assert.Equal(0.029, GrowthCurves.GrowthCoefficient(50, end, effectiveDays), 1e-12);
    }

    [Fact]
    public void Feed_conversions_follow_from_feed_and_gain()
    {
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-feed-conversion").Rows)
        {
            Assert.Equal(Number(row, "feedConversion"), Number(row, "feed") / Number(row, "gain"), 0.005);
        }
    }
}
