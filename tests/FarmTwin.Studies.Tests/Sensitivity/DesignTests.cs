using FarmTwin.Studies.Designs;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.Tests.Sensitivity;

public sealed class DesignTests
{
    [Fact]
    public void A_Latin_hypercube_has_one_point_in_every_slice_of_every_factor()
    {
        double[][] points = LatinHypercube.Points(17, ["a", "b", "c"], 5);
        for (int f = 0; f < 3; f++)
        {
            Assert.Equal(Enumerable.Range(0, 17), points.Select(p => (int)(p[f] * 17)).Order());
        }

        // Another factor changes no other's slices.
        Assert.Equal(points.Select(p => p[1]), LatinHypercube.Points(17, ["b"], 5).Select(p => p[0]));
        Assert.NotEqual(points.Select(p => p[1]), LatinHypercube.Points(17, ["b"], 6).Select(p => p[0]));
    }

    [Fact]
    public void A_trajectory_moves_every_factor_once_by_two_thirds_within_the_unit()
    {
        string[] factors = ["a", "b", "c", "d"];
        double[][] points = MorrisScreening.Points(8, factors, 3);
        Assert.Equal(8 * 5, points.Length);
        for (int t = 0; t < 8; t++)
        {
            var moved = new HashSet<int>();
            for (int k = 1; k < 5; k++)
            {
                double[] before = points[(t * 5) + k - 1];
                double[] after = points[(t * 5) + k];
                int f = Enumerable.Range(0, 4).Single(i => before[i] != after[i]);
                Assert.Equal(2.0 / 3, Math.Abs(after[f] - before[f]), 1e-12);
                Assert.All(after, x => Assert.InRange(x, -1e-12, 1 + 1e-12));
                Assert.True(moved.Add(f));
            }
        }
    }

    [Fact]
    public void Elementary_effects_of_a_plane_are_its_slopes_and_of_a_product_are_spread()
    {
        // Closed form: y = 3a - 2b + 0c + 5de. Effects of a, b, c are 3, -2, 0 everywhere; of d they are 5e, which differ from place to place.
        double[][] points = MorrisScreening.Points(30, ["a", "b", "c", "d", "e"], 1);
        IReadOnlyList<ElementaryEffects> effects = MorrisScreening.Effects(points, [.. points.Select(p => (3 * p[0]) - (2 * p[1]) + (5 * p[3] * p[4]))]);
        Assert.Equal((3, 3, 0), (Math.Round(effects[0].MeanSize, 9), Math.Round(effects[0].Mean, 9), Math.Round(effects[0].Spread, 9)));
        Assert.Equal((2, -2, 0), (Math.Round(effects[1].MeanSize, 9), Math.Round(effects[1].Mean, 9), Math.Round(effects[1].Spread, 9)));
        Assert.Equal(0, effects[2].MeanSize, 1e-9);
        Assert.InRange(effects[3].MeanSize, 1, 4);
        Assert.True(effects[3].Spread > 1);
    }

    [Fact]
    public void Rank_correlation_agrees_with_the_closed_form_without_ties()
    {
        // Spearman's rho = 1 - 6 sum d^2 / (n (n^2 - 1)). The IQ and television example that textbooks print: sum d^2 = 194, rho = -29/165.
        double[] iq = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
        double[] hours = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
        Assert.Equal(-29.0 / 165, RankCorrelation.Of(iq, hours), 1e-12);
        Assert.Equal(1, RankCorrelation.Of([1, 2, 3, 4], [1, 8, 27, 64]), 1e-12);
        Assert.True(double.IsNaN(RankCorrelation.Of([1, 1, 1, 1], [1, 2, 3, 4])));
        Assert.Equal(1, RankCorrelation.Of([1, double.NaN, 2, 3, 4], [1, 0, 2, 3, 4]), 1e-12);
    }
}
