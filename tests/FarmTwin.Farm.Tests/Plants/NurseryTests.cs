using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class NurseryTests
{
    [Fact]
    public void Germination_is_the_published_table()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-germination").Rows)
        {
            GerminationTable table = Crops.Load(row["crop"]).Germination;
            double celsius = PublishedTable.Number(row, "celsius");
            Assert.Equal(PublishedTable.Number(row, "percent") / 100, table.Share(celsius), 12);
            Assert.Equal(row["days"].Length > 0 ? PublishedTable.Number(row, "days") : double.PositiveInfinity, table.Days(celsius));
        }
    }

    [Fact]
    public void Lettuce_seed_fails_in_a_hot_house()
    {
        Assert.Equal(0, Crops.Lettuce.Germination.Share(38));
        Assert.InRange(Crops.Lettuce.Germination.Share(27.5), 0.5, 0.6);
        var tray = new NurseryTray(0, 200, 0.129, 0);
        for (int i = 0; i < 30; i++)
        {
            Assert.False(tray.AdvanceSeeds(Crops.Lettuce, 36));
        }

        Assert.False(tray.IsUp);
    }

    [Fact]
    public void Seedlings_come_up_on_time_and_bring_what_the_seed_held()
    {
        var tray = new NurseryTray(3, 200, 0.129, 5);
        Assert.False(tray.AdvanceSeeds(Crops.Lettuce, 20));
        Assert.True(tray.AdvanceSeeds(Crops.Lettuce, 20));
        Assert.Equal(200 * 0.93 * 0.99, tray.Lot.Plants, 9);
        Assert.Equal(3, tray.Lot.Crop);
        Assert.Equal(Crops.Lettuce.TissueGramsPerGramDry * tray.Lot.DryGrams, tray.Lot.Pools);
        Assert.Equal(Crops.Lettuce.NurseryDays, tray.AgeDays(19), 12);
    }

    [Theory]
    [InlineData("lettuce", 2)]
    [InlineData("basil", 5)]
    [InlineData("chard", 6)]
    [InlineData("kale", 5)]
    public void Seed_comes_up_on_its_stated_day_at_20_degrees(string name, int expected)
    {
        var tray = new NurseryTray(0, 10, 0.1, 0);
        int days = 1;
        while (!tray.AdvanceSeeds(Crops.Load(name), 20))
        {
            days++;
        }

        Assert.Equal(expected, days);
    }

    [Fact]
    public void From_seed_to_market_about_four_in_five_remain()
    {
        // The chain in the nursery alone is compared with Rutgers: 1200 sown, 960 transplanted.
        CropParameters c = Crops.Lettuce;
        double transplanted = c.SeedLotShare * c.Germination.Share(24) * (1 - c.NurseryCullShare);
        Crops.InBand("rutgers_survival", transplanted);
        double market = transplanted * (1 - c.TransplantLossShare) * (1 - c.GrowingLossShare) * (1 - c.UnsaleableShare);
        Assert.Equal(0.789, market, 0.01);
    }

    [Fact]
    public void A_cull_removes_plants_with_all_they_hold_and_keeps_the_tray()
    {
        var tray = new NurseryTray(0, 200, 0.129, 0);
        while (!tray.AdvanceSeeds(Crops.Lettuce, 20))
        {
        }

        PlantLot before = tray.Lot.Clone();
        var waste = new PlantLot();
        tray.Cull(Crops.Lettuce, waste);
        Assert.Equal(before.Plants * 0.05, waste.Plants, 9);
        Assert.Equal(before.Pools.Iron, (tray.Lot.Pools + waste.Pools).Iron, 15);
        Assert.Equal(0.129, tray.Lot.AreaSquareMetres);
        NurseryTray copy = tray.Clone();
        Assert.Equal(tray.Lot.DryGrams, copy.Lot.DryGrams);
        Assert.NotSame(tray.Lot, copy.Lot);
        Assert.Equal(tray.Seeds, copy.Seeds);
    }

    [Theory]
    [InlineData("lettuce")]
    [InlineData("basil")]
    [InlineData("chard")]
    [InlineData("kale")]
    public void Every_crop_grows_from_seed_in_a_warm_bright_house(string name)
    {
        CropParameters crop = Crops.Load(name);
        var tray = new NurseryTray(0, 100, 100 / crop.NurseryPlantsPerSquareMetre, 0);
        double day = 0;
        while (!tray.AdvanceSeeds(crop, 22))
        {
            day++;
        }

        PlantLot lot = tray.Lot;
        DayLight light = Crops.Day(crop, 17, 16, 24, 20);
        Crops.Grow(lot, crop, light, Crops.Rich, Crops.Common, (int)(crop.NurseryDays - day));
        Crops.Space(lot, crop.TroughPlantsPerSquareMetre);
        Crops.Grow(lot, crop, light, Crops.Rich, Crops.Common, (int)crop.TroughDays);
        Crops.Space(lot, crop.FinalPlantsPerSquareMetre);
        Crops.Grow(lot, crop, light, Crops.Rich, Crops.Common, (int)crop.FinalDays);
        double fresh = lot.FreshShootGramsPerPlant(crop);
        Assert.True(fresh > crop.SaleableFreshGramsLow && fresh < 2.5 * crop.SaleableFreshGramsHigh, $"{name}: {fresh:F0} g");
    }
}
