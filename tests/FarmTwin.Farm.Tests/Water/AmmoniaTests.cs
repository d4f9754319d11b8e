using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class AmmoniaTests
{
    [Fact]
    public void Un_ionized_share_follows_Emersons_equation_over_the_whole_table()
    {
        foreach (var row in PublishedTable.Read("water-ammonia-percent").Rows)
        {
            double expected = PublishedTable.Number(row, "percent");
            string digits = row["percent"];
            double unit = Math.Pow(10, -(digits.Length - digits.IndexOf('.') - 1));
            double percent = 100 * Ammonia.UnionizedFraction(PublishedTable.Number(row, "ph"), PublishedTable.Number(row, "celsius"));
            Assert.True(Math.Abs(percent - expected) <= 0.51 * unit, $"pH {row["ph"]}, {row["celsius"]} °C: {percent} for {expected}");
        }
    }

    [Fact]
    public void Un_ionized_share_agrees_with_the_published_factors()
    {
        foreach (var row in PublishedTable.Read("water-ammonia-published").Rows)
        {
            double share = Ammonia.UnionizedFraction(PublishedTable.Number(row, "ph"), PublishedTable.Number(row, "celsius"));
            Assert.Equal(PublishedTable.Number(row, "factor"), share, 0.0002);
        }
    }

    [Fact]
    public void The_constant_is_not_the_misprinted_one()
    {
        Assert.Equal(9.2464, Ammonia.PKa(25), 0.0005);
    }

    [Fact]
    public void The_misprinted_column_of_32_degrees_is_not_reproduced()
    {
        // Copies print 0.0877 at pH 8.0; the equation gives 0.0842.
        Assert.Equal(0.0842, Ammonia.UnionizedFraction(8, 32), 0.0001);
    }

    [Fact]
    public void A_consultants_worked_example_is_met_within_the_rounding_of_its_pKa()
    {
        Assert.Equal(0.37, 3 * Ammonia.UnionizedFraction(8.5, 22), 0.03 * 0.37);
    }
}
