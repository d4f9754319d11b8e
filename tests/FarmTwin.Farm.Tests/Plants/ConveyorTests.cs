using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class ConveyorTests
{
    [Theory]
    [InlineData(14, 405)]
    [InlineData(21, 270)]
    [InlineData(28, 202.5)]
    [InlineData(35, 162)]
    public void Heads_a_week_times_residence_are_the_standing_heads(double residenceDays, double headsAWeek)
    {
        // Three lanes of 1.2 × 9 m as one: 45 boards of 18 holes; a board in and a board out every residence/45 days.
        var lane = new RaftLane(45, 18, 0.72);
        double interval = residenceDays / 45;
        double harvested = 0;
        double standingDays = 0;
        double ages = 0;
        int boards = 0;
        const int Steps = 45 * 8;
        for (int step = 0; step < Steps; step++)
        {
            if (lane.IsFull)
            {
                ages += step >= 90 ? lane.ExitAgeDays(step * interval) : 0;
                var cut = new PlantLot();
                Assert.True(lane.HarvestOldest(cut));
                harvested += step >= 90 ? cut.Plants : 0;
                boards += step >= 90 ? 1 : 0;
            }

            Assert.True(lane.Push(Board(step * interval, 18)));
            standingDays += step >= 90 ? lane.Standing * interval : 0;
        }

        double days = (Steps - 90) * interval;
        Assert.Equal(headsAWeek, harvested / days * 7, headsAWeek * 1e-9);
        Assert.Equal(residenceDays, ages / boards, 9);
        Assert.Equal(standingDays / days, harvested / days * (ages / boards), 1e-6);
    }

    [Fact]
    public void The_exit_is_always_the_oldest_board()
    {
        var lane = new RaftLane(4, 18, 0.72);
        var cut = new PlantLot();
        double last = -1;
        for (int day = 0; day < 50; day++)
        {
            if (lane.IsFull || day % 5 == 4)
            {
                cut.Clear();
                lane.HarvestOldest(cut);
                Assert.True(cut.SownDay > last);
                last = cut.SownDay;
            }

            lane.Push(Board(day, 18));
            for (int i = 1; i < lane.Count; i++)
            {
                Assert.True(lane[i].SownDay > lane[i - 1].SownDay);
            }
        }
    }

    [Fact]
    public void An_unsold_board_blocks_the_lane()
    {
        var lane = new RaftLane(2, 18, 0.72);
        Assert.True(lane.Push(Board(0, 18)));
        Assert.True(lane.Push(Board(1, 9)));
        PlantLot refused = Board(2, 18);
        Assert.False(lane.Push(refused));
        Assert.Equal(18, refused.Plants);
        Assert.Equal(9, lane.EmptyHoles);
        Assert.Throws<ArgumentException>(() => lane.Push(Board(0, 19)));
    }

    [Fact]
    public void A_loss_leaves_a_hole_and_the_neighbours_their_room()
    {
        var lane = new RaftLane(2, 18, 0.72);
        lane.Push(Board(0, 18));
        var waste = new PlantLot();
        Assert.Equal(2, lane.Lose(0, 2, waste));
        Assert.Equal(0.72, lane[0].AreaSquareMetres);
        Assert.Equal(16, lane.Standing);
        Assert.Equal(20, lane.EmptyHoles);
    }

    [Fact]
    public void The_slow_crop_cannot_fill_the_fast_crops_places()
    {
        var trough = new TransplantTrough(1.0 / 97, 300, 150);
        PlantLot slow = Board(0, 400, crop: 1);
        Assert.Equal(150, trough.Enter(slow));
        Assert.Equal(250, slow.Plants, 9);
        Assert.Equal(0, trough.Enter(slow));
        Assert.Equal(300, trough.FreePlaces(0));
        PlantLot fast = Board(0, 120);
        Assert.Equal(120, trough.Enter(fast));
        Assert.True(fast.IsEmpty);
        Assert.Equal(120.0 / 97, trough[1].AreaSquareMetres, 12);
        Assert.Equal(0, trough.Enter(Board(0, 5, crop: 7)));
    }

    [Fact]
    public void A_board_takes_the_oldest_plants_that_are_old_enough()
    {
        var trough = new TransplantTrough(0.01, 100);
        trough.Enter(Board(0, 10));
        trough.Enter(Board(7, 10));
        trough.Enter(Board(14, 10));
        Assert.Equal(20, trough.Available(0, day: 30, minimumAgeDays: 20));
        var board = new PlantLot();
        Assert.Equal(12, trough.TakeForBoard(0, 12, 30, 20, board), 9);
        Assert.Equal(12, board.Plants, 9);
        Assert.Equal(7.0 * 2 / 12, board.SownDay, 9);
        Assert.Equal(2, trough.Count);
        Assert.Equal(8, trough.TakeForBoard(0, 12, 30, 20, new PlantLot()), 9);
        Assert.Equal(10, trough.Standing(0), 9);
        Assert.Equal(10, trough.Clone().Standing(0), 9);
    }

    [Fact]
    public void Succession_at_Rutgers_needs_598_square_metres() =>
        Crops.InBand("rutgers_area", 960 * ((10 / 81.0) + (14 / 28.0)));

    private static PlantLot Board(double sownDay, double plants, int crop = 0) =>
        PlantLot.FromSeed(crop, Crops.Lettuce, plants, plants / 97, sownDay);
}
