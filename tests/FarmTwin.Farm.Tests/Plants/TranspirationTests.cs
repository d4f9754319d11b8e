using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class TranspirationTests
{
    [Fact]
    public void Daily_transpiration_by_leaf_area_is_reproduced()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-transpiration").Rows)
        {
            double leaf = PublishedTable.Number(row, "leaf_area_index");
            double day = 14 * Transpiration.LitresPerHour(1, leaf, 8.3 / 14, 0.9, night: false, Crops.Common);
            double night = 10 * Transpiration.LitresPerHour(1, leaf, 0, 0.3, night: true, Crops.Common);
            Assert.Equal(PublishedTable.Number(row, "mm_per_day"), day + night, 0.01);
        }
    }

    [Fact]
    public void No_leaves_no_transpiration()
    {
        Assert.Equal(0, Transpiration.LitresPerHour(10, 0, 2, 1, night: false, Crops.Common));
        Assert.Equal(0, Transpiration.LitresPerHour(1, 2, 0, -0.2, night: true, Crops.Common));
    }

    [Fact]
    public void Leaf_area_follows_dry_mass_up_to_its_cap()
    {
        PlantLot lot = PublishedTrialTests.Well(Crops.Lettuce, 2, 28);
        Assert.Equal(0.035 * 56, lot.LeafAreaIndex(Crops.Lettuce), 12);
        lot.GramsDryPerPlant = 50;
        Assert.Equal(4.5, lot.LeafAreaIndex(Crops.Lettuce));
    }
}
