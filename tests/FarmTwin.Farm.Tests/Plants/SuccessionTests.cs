using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class SuccessionTests
{
    [Fact]
    public void Rutgers_sows_1200_for_960()
    {
        // The published chain is one number: four in five, the cull included.
        var rutgers = new Succession(0.80, 1, 1, 1, 1);
        Assert.Equal(1200, rutgers.CellsPerSowing(960, 7));
        Assert.Equal(598, Succession.Standing(960 * 7, 10) / 81 + (Succession.Standing(960 * 7, 14) / 28), 598 * 0.005);
    }

    [Fact]
    public void A_week_of_168_heads_of_lettuce_wants_213_seeds()
    {
        Succession shares = Succession.Of(Crops.Lettuce, 20);
        Assert.Equal(0.789, shares.ToMarket, 0.002);
        Assert.Equal(213, shares.CellsPerSowing(168, 7));
        Assert.Equal(107, shares.CellsPerSowing(168, 3.5));
    }

    [Fact]
    public void Three_lanes_of_810_places_pass_29_heads_a_day_at_28_days()
    {
        Assert.Equal(28.93, 810 / 28.0, 0.005);
        Assert.Equal(28, Succession.ResidenceDays(810, 28.93 * 7), 0.01);
        Assert.Equal(810, Succession.Standing(28.93 * 7, 28), 0.5);
        Assert.Equal(double.PositiveInfinity, Succession.ResidenceDays(810, 0));
    }

    [Fact]
    public void Boards_a_week_leave_room_for_what_is_lost_on_the_lane_and_at_packing()
    {
        Succession shares = Succession.Of(Crops.Lettuce, 20);
        double boards = shares.BoardsPerWeek(168, 18);
        Assert.Equal(168, boards * 18 * 0.96 * 0.97, 9);
    }

    [Fact]
    public void A_board_that_is_cut_goes_back_to_the_entry_and_grows_again()
    {
        var lane = new RaftLane(3, 18, 0.72);
        for (int b = 0; b < 2; b++)
        {
            lane.Push(PlantLot.FromSeed(0, Crops.Load("chard"), 18, 0.7, b));
        }

        double before = lane[0].DryGrams;
        ElementGrams pools = lane[0].Pools;
        var cut = new PlantLot();
        Assert.True(lane.CutOldest(cut, 0.6, 40));
        Assert.Equal(2, lane.Count);
        Assert.Equal(1, lane[0].SownDay);
        Assert.Equal(0, lane[1].SownDay);
        Assert.Equal(1, lane[1].Cuts);
        Assert.Equal(40, lane[1].LastCutDay);
        Assert.Equal(18, lane[1].Plants);
        Assert.Equal(0.6 * before, cut.DryGrams, 12);
        Assert.Equal(pools.Nitrogen, cut.Pools.Nitrogen + lane[1].Pools.Nitrogen, 12);
        Assert.Equal(0.72, lane[1].AreaSquareMetres);
    }
}
