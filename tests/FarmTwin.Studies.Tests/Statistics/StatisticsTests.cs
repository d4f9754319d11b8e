using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.Tests.Statistics;

public sealed class StatisticsTests
{
    // Critical values of the smaller rank sum, two-sided 5 %, as printed in the tables that follow Wilcoxon (1945); from memory.
    [Theory]
    [InlineData(6, 0)]
    [InlineData(7, 2)]
    [InlineData(8, 3)]
    [InlineData(9, 5)]
    [InlineData(10, 8)]
    [InlineData(11, 10)]
    [InlineData(12, 13)]
    [InlineData(15, 25)]
    [InlineData(20, 52)]
    [InlineData(25, 89)]
    public void The_exact_test_has_the_printed_critical_values(int n, int critical)
    {
        Assert.True(SignedRanks.TwoSided(WithSmallerSum(n, critical)) <= 0.05);
        Assert.True(SignedRanks.TwoSided(WithSmallerSum(n, critical + 1)) > 0.05);
    }

    [Fact]
    public void Darwins_maize_stands_out_as_published()
    {
        // Darwin's 15 pairs of crossed less selfed maize, eighths of an inch, as in R. A. Fisher, The Design of Experiments (1935): mean 20.93,
        // t = 2.148 with 14 degrees of freedom. By the signed ranks W = 24 and the two-sided exact chance 0.0413.
        double[] eighths = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];
        PairedDifference difference = PairedDifference.Of(eighths, new double[15]);
        Assert.Equal(314.0 / 15, difference.Mean, 1e-12);
        double half = (difference.High - difference.Low) / 2;
        Assert.Equal(2.148, difference.Mean / (half / 2.144787), 1e-3);
        Assert.Equal(0.0413, difference.Chance, 5e-5);
        Assert.Equal(13.0 / 15, difference.ShareHigher, 1e-12);
    }

    [Fact]
    public void Equal_sizes_share_their_rank_and_equal_pairs_are_left_out()
    {
        // Signs of 1, 1, 2 over ranks 1.5, 1.5, 3: of 8 equally likely sums {0, 1.5 x2, 3 x2, 4.5 x2, 6} the lowest 0 and the highest 6 have 1/8 each.
        Assert.Equal(0.25, SignedRanks.TwoSided([1, 1, 2, 0, 0]), 1e-12);
        Assert.Equal(0.75, SignedRanks.TwoSided([-1, 1, 2]), 1e-12);
        Assert.Equal(1, SignedRanks.TwoSided([0, 0]));
    }

    [Fact]
    public void Holms_correction_follows_its_definition()
    {
        Assert.Equal([0.03, 0.06, 0.06, 0.02], SignedRanks.Holm([0.01, 0.04, 0.03, 0.005]).Select(p => Math.Round(p, 12)));
        Assert.Equal([double.NaN, 0.5], SignedRanks.Holm([double.NaN, 0.5]));
    }

    [Fact]
    public void Quantiles_interpolate_between_order_statistics()
    {
        // Hyndman and Fan's definition 7 of 1 to 11: the 10 % quantile is the second value.
        Band band = Band.Of(Enumerable.Range(1, 11).Select(i => (double)i).Append(double.NaN));
        Assert.Equal(new Band(2, 6, 10, 11, 1), band);
        Assert.Equal(0, Band.Of([double.NaN]).Count);
    }

    [Fact]
    public void A_day_that_never_came_is_counted_and_not_dropped_unseen()
    {
        PairedDifference difference = PairedDifference.Of([80, double.NaN, 90, double.NaN], [70, 75, 85, double.NaN]);
        Assert.Equal((2, 1), (difference.Pairs, difference.Unpaired));
        Assert.Equal(7.5, difference.Mean);
    }

    // Differences of sizes 1 to n of which the negative ones have ranks that sum up to a number.
    private static double[] WithSmallerSum(int n, int sum)
    {
        var differences = Enumerable.Range(1, n).Select(i => (double)i).ToArray();
        for (int rank = n; rank >= 1 && sum > 0; rank--)
        {
            if (rank <= sum)
            {
                differences[rank - 1] *= -1;
                sum -= rank;
            }
        }

        return differences;
    }
}
