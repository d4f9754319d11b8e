using FarmTwin.Engine.Chance;
using MathNet.Numerics.Distributions;

namespace FarmTwin.Engine.Tests.Chance;

public class ChanceTests
{
    private static readonly RandomStreams Streams = new(Seed: 20260301, Replicate: 0);
    private static readonly uint Process = StableHash.Of("test");

    [Fact]
    public void Philox_gives_its_known_answers()
    {
        foreach (var row in PublishedTable.Read(PublishedTable.Philox).Rows)
        {
            uint W(string column) => PublishedTable.Word(row, column);
            Assert.Equal((W("w0"), W("w1"), W("w2"), W("w3")), Philox.Block(W("c0"), W("c1"), W("c2"), W("c3"), W("k0"), W("k1")));
        }
    }

    [Fact]
    public void Stable_hash_gives_the_known_answers_of_FNV_1a()
    {
        foreach (var row in PublishedTable.Read(PublishedTable.Fnv).Rows)
        {
            // The hash reads two bytes a character, low byte first: the published bytes are packed that way.
            byte[] bytes = Convert.FromHexString(row["bytes"]);
            string text = string.Concat(Enumerable.Range(0, bytes.Length / 2).Select(i => (char)(bytes[2 * i] | (bytes[(2 * i) + 1] << 8))));
            Assert.Equal(PublishedTable.Word(row, "hash"), StableHash.Of(text));
        }
    }

    [Fact]
    public void Uniform_variates_have_the_mean_and_the_variance_of_the_unit_interval()
    {
        const int count = 1_000_000;
        double sum = 0;
        double squares = 0;
        for (uint i = 0; i < count; i++)
        {
            double u = Streams.Uniform(Process, 3, i);
            Assert.True(u is > 0 and < 1);
            sum += u - 0.5;
            squares += (u - 0.5) * (u - 0.5);
        }

        Assert.InRange(Math.Abs(sum / count), 0, 3 * Math.Sqrt(1.0 / 12 / count));
        Assert.InRange(Math.Abs((squares / count) - (1.0 / 12)), 0, 3 * Math.Sqrt(1.0 / 180 / count));
    }

    [Fact]
    public void Neighbouring_ordinals_entities_replicates_and_seeds_are_uncorrelated()
    {
        const int count = 200_000;
        uint other = StableHash.Of("other");
        var nextReplicate = new RandomStreams(20260301, 1);
        var nextSeed = new RandomStreams(20260302, 0);
        var sums = new double[5];
        for (uint i = 0; i < count; i++)
        {
            double x = Streams.Uniform(Process, 0, i) - 0.5;
            sums[0] += x * (Streams.Uniform(Process, 0, i + 1) - 0.5);
            sums[1] += x * (Streams.Uniform(Process, 1, i) - 0.5);
            sums[2] += x * (Streams.Uniform(other, 0, i) - 0.5);
            sums[3] += x * (nextReplicate.Uniform(Process, 0, i) - 0.5);
            sums[4] += x * (nextSeed.Uniform(Process, 0, i) - 0.5);
        }

        Assert.All(sums, s => Assert.InRange(Math.Abs(s / count * 12), 0, 3 / Math.Sqrt(count)));
    }

    [Fact]
    public void A_draw_does_not_depend_on_what_was_drawn_before_it()
    {
        double[] forward = [.. Enumerable.Range(0, 1000).Select(i => Streams.Normal(Process, (uint)(i % 7), (uint)i))];
        var backward = new double[1000];
        for (int i = 999; i >= 0; i--)
        {
            _ = Streams.Uniform(Process, 99, (uint)i);
            backward[i] = Streams.Normal(Process, (uint)(i % 7), (uint)i);
        }

        var onThreads = new double[1000];
        Parallel.For(0, 1000, i => onThreads[i] = Streams.Normal(Process, (uint)(i % 7), (uint)i));
        Assert.Equal(forward, backward);
        Assert.Equal(forward, onThreads);
    }

    [Fact]
    public void The_largest_and_the_smallest_draw_stay_inside_the_unit_interval()
    {
        double largest = RandomStreams.OpenUnit(uint.MaxValue, uint.MaxValue);
        double smallest = RandomStreams.OpenUnit(0, 0);
        Assert.True(largest < 1);
        Assert.True(smallest > 0);
        Assert.Equal(smallest, 1 - largest, 0.0);
        Assert.InRange(NormalDistribution.Quantile(largest), 8, 9);
    }

    [Theory]
    [InlineData(1e-300)]
    [InlineData(1e-20)]
    [InlineData(1e-9)]
    [InlineData(0.001)]
    [InlineData(0.025)]
    [InlineData(0.0749)]
    [InlineData(0.0751)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    [InlineData(0.84134474606854293)]
    [InlineData(0.925)]
    [InlineData(0.999)]
    [InlineData(0.999999999)]
    public void Normal_quantiles_agree_with_an_outside_library(double probability) =>
        Assert.Equal(Normal.InvCDF(0, 1, probability), NormalDistribution.Quantile(probability), 1e-12 * 40);

    [Fact]
    public void Normal_quantiles_agree_with_an_outside_library_over_a_fine_grid()
    {
        for (int i = 1; i < 10_000; i++)
        {
            double p = i / 10_000.0;
            Assert.Equal(Normal.InvCDF(0, 1, p), NormalDistribution.Quantile(p), 2e-14 * (1 + Math.Abs(Normal.InvCDF(0, 1, p))));
        }
    }

    [Theory]
    [InlineData(-7.5)]
    [InlineData(-3)]
    [InlineData(-1)]
    [InlineData(-0.1)]
    [InlineData(0)]
    [InlineData(0.6744897501960817)]
    [InlineData(2)]
    [InlineData(5)]
    public void The_normal_distribution_function_agrees_with_an_outside_library(double value) =>
        Assert.Equal(1, NormalDistribution.Below(value) / Normal.CDF(0, 1, value), 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void A_probability_outside_the_open_unit_interval_is_refused(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NormalDistribution.Quantile(probability));

    [Fact]
    public void Normal_variates_have_mean_zero_variance_one_and_the_right_tail()
    {
        const int count = 400_000;
        double sum = 0;
        double squares = 0;
        int beyond = 0;
        for (uint i = 0; i < count; i++)
        {
            double z = Streams.Normal(Process, 8, i);
            sum += z;
            squares += z * z;
            beyond += z > 1.6448536269514722 ? 1 : 0;
        }

        Assert.InRange(Math.Abs(sum / count), 0, 3 / Math.Sqrt(count));
        Assert.InRange(Math.Abs((squares / count) - 1), 0, 3 * Math.Sqrt(2.0 / count));
        Assert.InRange(Math.Abs(((double)beyond / count) - 0.05), 0, 3 * Math.Sqrt(0.05 * 0.95 / count));
    }
}
