using CsCheck;
using FarmTwin.Farm.Fish;
using MathNet.Numerics.Distributions;

namespace FarmTwin.Farm.Tests.Fish;

public class SizeSpreadTests
{
    private static readonly FishParameters Nile = FishLibrary.Nile;

    [Fact]
    public void A_top_harvest_of_half_kilogram_fish_above_580_takes_a_fifth()
    {
        var cohort = new Cohort("c", 0, 1000, 500, 0.20, 0);
        Assert.Equal(0.198, SizeSpread.ShareAbove(500, 0.20, 580), 0.198 * 0.005);
        Assert.Equal(0.258, SizeSpread.BiomassShareAbove(500, 0.20, 580), 0.258 * 0.005);
        HarvestResult taken = SizeSpread.TopHarvest(cohort, Nile, 580);
        Assert.Equal(650, taken.MeanGrams, 650 * 0.005);
        Assert.Equal(463, cohort.MeanGrams, 463 * 0.005);
        Assert.InRange(cohort.CoefficientOfVariation, 0.10, 0.15);
        Assert.Equal(1000, taken.Number + cohort.Number, 1e-9);
        Assert.Equal(500_000, taken.Grams + cohort.BiomassGrams, 1e-6);
    }

    [Fact]
    public void Shares_above_a_weight_are_those_of_the_lognormal() =>
        Gen.Select(Gen.Double[1, 900], Gen.Double[0.02, 0.5], Gen.Double[0.4, 2]).Sample((mean, spread, ratio) =>
        {
            double sigma = Math.Sqrt(Math.Log(1 + (spread * spread)));
            double mu = Math.Log(mean) - (sigma * sigma / 2);
            Assert.Equal(1 - new LogNormal(mu, sigma).CumulativeDistribution(ratio * mean),
                SizeSpread.ShareAbove(mean, spread, ratio * mean), 1e-8);
            Assert.Equal(1 - new LogNormal(mu + (sigma * sigma), sigma).CumulativeDistribution(ratio * mean),
                SizeSpread.BiomassShareAbove(mean, spread, ratio * mean), 1e-8);
        });

    [Fact]
    public void A_cut_keeps_the_first_two_moments_of_both_parts_together() =>
        Gen.Select(Gen.Double[5, 900], Gen.Double[0.05, 0.5], Gen.Double[0.6, 1.5]).Sample((mean, spread, ratio) =>
        {
            var cohort = new Cohort("c", 0, 1000, mean, spread, 0);
            Cohort? large = SizeSpread.Grade(cohort, Nile, ratio * mean, "large");
            if (large is null)
            {
                return;
            }

            double square = Square(cohort) + Square(large);
            double expected = 1000 * mean * mean * (1 + (spread * spread));
            Assert.Equal(expected, square, expected * 1e-9);
            Assert.True(cohort.Number == 0 || (cohort.MeanGrams <= ratio * mean * 1.0000001 && large.MeanGrams >= ratio * mean * 0.9999999));

            static double Square(Cohort c) => c.Number * c.MeanGrams * c.MeanGrams * (1 + (c.CoefficientOfVariation * c.CoefficientOfVariation));
        });

    [Fact]
    public void A_number_of_the_largest_is_taken_exactly()
    {
        var cohort = new Cohort("c", 0, 45, 480, 0.2, 0);
        HarvestResult taken = SizeSpread.TopHarvestNumber(cohort, Nile, 12);
        Assert.Equal(12, taken.Number, 1e-9);
        Assert.True(taken.MeanGrams > 480 && cohort.MeanGrams < 480);
        HarvestResult rest = SizeSpread.TopHarvestNumber(cohort, Nile, 100);
        Assert.Equal(33, rest.Number, 1e-9);
        Assert.Equal(45 * 480, taken.Grams + rest.Grams, 1e-8);
        Assert.Equal(0, cohort.Number);
        Assert.Equal(0, cohort.BiomassGrams);
        Assert.Equal(default, SizeSpread.TopHarvestNumber(cohort, Nile, 5));
    }

    [Fact]
    public void Fish_all_of_one_size_are_all_above_or_all_below()
    {
        var cohort = new Cohort("c", 0, 45, 480, 0, 0);
        Assert.Equal(0, SizeSpread.TopHarvest(cohort, Nile, 500).Number);
        Assert.Equal(20, SizeSpread.TopHarvestNumber(cohort, Nile, 20).Number);
        Assert.Equal(480, cohort.MeanGrams);
        Assert.Equal(25, SizeSpread.TopHarvest(cohort, Nile, 480).Number);
    }

    [Fact]
    public void Spread_widens_with_growth_from_graded_fingerling_to_harvest()
    {
        var tank = new ConstantTank(Nile, FishLibrary.Clean(27.5), 45, 50);
        tank.Run(140);
        Assert.InRange(tank.Cohort.CoefficientOfVariation, 0.20, 0.30);
    }

    [Fact]
    public void Splitting_moves_average_fish_with_their_share_of_everything()
    {
        var cohort = new Cohort("c", 1, 40, 100, 0.15, 77);
        Feeding.Meal(cohort, FishLibrary.Red, FishLibrary.Feed, 60, 1, 0.03, FishLibrary.Clean(28));
        double pool = cohort.DissolvedNitrogenFirstStageGrams;
        double mean = cohort.MeanGrams;
        Cohort moved = Assert.IsType<Cohort>(SizeSpread.Split(cohort, FishLibrary.Red, 10, "new tank"));
        Assert.Equal(30, cohort.Number);
        Assert.Equal(10, moved.Number);
        Assert.Equal(mean, moved.MeanGrams, 1e-9);
        Assert.Equal(pool / 4, moved.DissolvedNitrogenFirstStageGrams, pool * 1e-12);
        Assert.Equal(cohort.CoefficientOfVariation, moved.CoefficientOfVariation);
        Assert.Equal((1, 77L, "new tank"), (moved.SpeciesIndex, moved.StockedAtSecond, moved.Name));
        Assert.Null(SizeSpread.Split(cohort, FishLibrary.Red, 0, "none"));
    }
}
