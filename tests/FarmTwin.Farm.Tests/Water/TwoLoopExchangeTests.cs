using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class TwoLoopExchangeTests
{
    // Limits of the worked example: common practice for fish, no source.
    private const double PerHour = 1;
    private const double PerDay = 3;
    private static readonly LoopPair Warm = new(27, 20);

    [Fact]
    public void Nitrate_and_heat_of_the_example_farm_follow_the_closed_form()
    {
        foreach (var row in PublishedTable.Read("water-two-loop-exchange").Rows)
        {
            double hours = PublishedTable.Number(row, "hours");
            LoopPair nitrate = TwoLoopExchange.After(new LoopPair(150, 20), 2700, 9000, 386, hours);
            LoopPair heat = TwoLoopExchange.After(Warm, 2700, 9000, 386, hours);
            Assert.Equal(PublishedTable.Number(row, "fish_nitrate"), nitrate.FishLoop, 0.1);
            Assert.Equal(PublishedTable.Number(row, "plant_nitrate"), nitrate.PlantLoop, 0.1);
            if (row["fish_celsius"].Length > 0)
            {
                Assert.Equal(PublishedTable.Number(row, "fish_celsius"), heat.FishLoop, 0.1);
                Assert.Equal(PublishedTable.Number(row, "plant_celsius"), heat.PlantLoop, 0.1);
            }
        }
    }

    [Fact]
    public void The_shock_limit_and_the_heat_of_the_example_are_as_worked()
    {
        Assert.Equal(386, TwoLoopExchange.LargestFlowByHourLitresPerHour(Warm, 2700, PerHour), 0.5);
        Assert.Equal(3.1, TwoLoopExchange.HeatKilowatts(386, Warm), 0.05);
        Assert.Equal(18.5, TwoLoopExchange.HeatKilowatts(10 * UnitConstants.LitresPerUsGallon * 60, Warm), 0.05);
        Assert.Equal(386, TwoLoopExchange.LargestFlowByHeatLitresPerHour(TwoLoopExchange.HeatKilowatts(386, Warm), Warm), 1e-9);
        Assert.Equal(double.PositiveInfinity, TwoLoopExchange.LargestFlowByHeatLitresPerHour(3, new LoopPair(20, 20)));
    }

    [Fact]
    public void The_daily_limit_is_met_exactly_by_its_flow_and_binds_before_the_hourly_one()
    {
        double flow = TwoLoopExchange.LargestFlowByDayLitresPerHour(Warm, 2700, 9000, PerDay);
        Assert.Equal(24, TwoLoopExchange.After(Warm, 2700, 9000, flow, 24).FishLoop, 1e-9);
        Assert.True(flow < TwoLoopExchange.LargestFlowByHourLitresPerHour(Warm, 2700, PerHour));
        Assert.Equal(double.PositiveInfinity,
            TwoLoopExchange.LargestFlowByDayLitresPerHour(new LoopPair(22, 20), 2700, 9000, PerDay));
    }

    [Fact]
    public void Exchange_conserves_what_both_loops_hold()
    {
        LoopPair after = TwoLoopExchange.After(new LoopPair(150, 20), 2700, 9000, 386, 7);
        Assert.Equal((150 * 2700.0) + (20 * 9000.0), (after.FishLoop * 2700) + (after.PlantLoop * 9000), 1e-6);
    }

    [Fact]
    public void The_closed_form_agrees_with_small_steps_of_the_exchange()
    {
        double fish = 150, plant = 20;
        const double Step = 1e-4;
        for (var i = 0; i < 60000; i++)
        {
            double carried = 386 * (fish - plant) * Step;
            fish -= carried / 2700;
            plant += carried / 9000;
        }

        LoopPair after = TwoLoopExchange.After(new LoopPair(150, 20), 2700, 9000, 386, 6);
        Assert.Equal(fish, after.FishLoop, 0.002);
        Assert.Equal(plant, after.PlantLoop, 0.002);
    }
}
