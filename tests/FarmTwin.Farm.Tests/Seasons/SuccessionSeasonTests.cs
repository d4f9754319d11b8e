using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Seasons;

/// <summary>Plans stated by heads a week, stages that are too small, lanes that change their crop, grades in a season.</summary>
public sealed class SuccessionSeasonTests
{
    private static readonly FarmDescription First = Farms.FirstSeason;

    [Fact]
    public void Heads_a_week_become_cells_and_boards_and_change_as_much_earlier_as_the_crop_takes()
    {
        FarmDescription farm = First with
        {
            Crops = First.Crops.With("lettuce", c => c with
            {
                CellsPerSowing = null, BoardsPerWeek = null, HeadsPerWeek = 168,
                Changes = new Dictionary<string, CropPlanChange> { ["less"] = new() { FromDay = 100, HeadsPerWeek = 84 } },
            }),
        };
        CropSchedule plan = Farms.Start(farm, 3).Parts.Schedules[0];
        Assert.Equal(213, plan.CellsAt(0));
        Assert.Equal(168, plan.HeadsAt(99));
        Assert.Equal(plan.BoardsAt(0) / 2, plan.BoardsAt(100), 9);
        double early = 100 - 28 - plan.LaneDaysAt(99);
        Assert.Equal(213, plan.CellsAt(early - 1));
        Assert.Equal(107, plan.CellsAt(100 - 28));
        IReadOnlyList<PlannedSowing> table = PlannedSowing.Of(Farms.Start(farm, 120));
        PlannedSowing first = table.First(s => s.Crop == "lettuce");
        Assert.Equal((0, 213.0, 14.0, 28.0), (first.Day, first.Cells, first.ToTrough, first.ToLane));
        Assert.Equal(168, first.Heads, 1.0);
        Assert.True(first.Harvest >= 28 + 16);
    }

    [Fact]
    public void A_plan_that_outruns_the_trough_names_it_and_what_it_lets_through()
    {
        FarmDescription farm = First with
        {
            Crops = First.Crops.With("lettuce", c => c with
            {
                CellsPerSowing = null, BoardsPerWeek = null, HeadsPerWeek = 300, Changes = new Dictionary<string, CropPlanChange>(),
            }),
        };
        SeasonSummary summary = Sum(Farms.Run(farm, 60));
        StageSummary stage = summary.Crops["lettuce"].Plan[0];
        Assert.Equal("trough", stage.Bottleneck);
        Assert.True(stage.TroughShare > 1.5);
        Assert.Equal(300 / stage.TroughShare, stage.MostHeadsPerWeek, 6);
        Assert.Contains(summary.Findings, f => f.Contains("bottleneck of lettuce", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_is_stated_in_one_way_only()
    {
        DescriptionException both = Assert.Throws<DescriptionException>(() => Farms.Start(
            First with { Crops = First.Crops.With("lettuce", c => c with { HeadsPerWeek = 100 }) }, 3));
        Assert.Contains("crops.lettuce", both.Message, StringComparison.Ordinal);
        Assert.Throws<DescriptionException>(() => Farms.Start(
            First with { Crops = First.Crops.With("basil", c => c with { BoardsPerWeek = null }) }, 3));
    }

    [Fact]
    public void Grades_add_up_to_the_harvest_and_still_air_costs_heads()
    {
        SeasonSummary moved = Sum(Farms.Run(First, 110));
        SeasonSummary still = Sum(Farms.Run(First with { House = First.House with { AirMovement = false } }, 110));
        CropSummary lettuce = moved.Crops["lettuce"];
        Assert.Equal(lettuce.HeadsHarvested, lettuce.SaleableHeads + lettuce.SecondGradeHeads + lettuce.UnsaleableHeads, 6);
        Assert.Equal(lettuce.HeadsHarvested - lettuce.SaleableHeads, lettuce.NotFirstGrade.Values.Sum(), 6);
        Assert.Equal(lettuce.HeadsHarvested, lettuce.Months.Sum(m => m.Heads), 6);
        Assert.True(still.Crops["lettuce"].NotFirstGrade["tipBurn"] > 5 * lettuce.NotFirstGrade["tipBurn"]);
        Assert.Equal(still.Crops["lettuce"].HeadsHarvested, lettuce.HeadsHarvested, 6);
    }

    [Fact]
    public void A_lane_changes_its_crop_first_in_first_out_and_its_empty_days_are_counted()
    {
        FarmDescription farm = First with
        {
            Lanes = First.Lanes.With("lane-3", l => l with
            {
                Changes = new Dictionary<string, LaneChange> { ["greens"] = new() { FromDay = 60, Crop = "lettuce" } },
            }),
        };
        Season season = Farms.Run(farm, 100);
        RaftLane lane = season.State.Growing.Lanes[2];
        Assert.True(lane.Count > 0);
        bool lettuceSeen = false;
        for (int b = 0; b < lane.Count; b++)
        {
            lettuceSeen |= lane[b].Crop == 0;
            Assert.False(lettuceSeen && lane[b].Crop == 1, "basil was planted after lettuce");
        }

        Assert.True(lettuceSeen);
        Assert.All(Sum(season).Ledgers.Values, ledger => Assert.InRange(ledger.Closure, 0, 1e-9));
    }

    private static SeasonSummary Sum(Season season) => SeasonSummary.Of(season, ShippedLibrary.Library, "test");
}
