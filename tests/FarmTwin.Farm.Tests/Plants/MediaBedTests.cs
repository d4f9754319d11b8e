using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>A bed of tomatoes through its season: picked, pruned, cleared, drained, drowned; every ledger closes.</summary>
public sealed class MediaBedTests
{
    private static readonly Lazy<Season> Well = new(() => Farms.Run(BedFarm.Of(), 200));

    [Fact]
    public void A_bed_is_set_out_picked_and_its_ledgers_close()
    {
        Season season = Well.Value;
        LedgerLawTests.AssertClosed(season);
        LedgerLawTests.AssertSane(season, 200);
        Assert.Equal(7, Farms.Days(season, "bed_plants_tomato")[40], 1.0);
        double[] picked = Farms.Days(season, "picked_tomato_kg");
        int first = Array.FindIndex(picked, kg => kg > 0);
        Assert.InRange(first, 75, 110);
        Assert.Equal(picked.Sum() * 1000, season.State.Growing.Fruit[0].PickedGrams, 1e-6);
        Assert.True(season.State.Growing.Fruit[0].PrunedDryGrams > 0);
    }

    [Fact]
    public void The_water_stands_two_inches_down_at_planting_and_is_lowered_as_roots_go_down()
    {
        double[] height = Farms.Days(Well.Value, "water_height_bed_mm");
        Assert.Equal(250, height[20], 1.0);
        Assert.Equal(210, height[60], 1.0);
        Assert.InRange(height[40], 215, 245);
    }

    [Fact]
    public void Oxygen_at_the_outlet_is_what_came_in_less_what_the_bed_breathed()
    {
        double fast = Farms.Days(Well.Value, "oxygen_bed_mg_per_L")[150];
        double slow = Farms.Days(Farms.Run(BedFarm.Of(flow: 60), 160), "oxygen_bed_mg_per_L")[150];
        Assert.InRange(fast, 4, 8.5);
        Assert.True(slow < fast - 0.8, $"{slow:0.0} mg/L at a fifth of the flow, {fast:0.0} at full flow");
    }

    [Fact]
    public void The_film_of_a_bed_follows_its_water_between_the_driest_and_the_best()
    {
        FarmParts parts = Well.Value.Parts;
        double all = parts.BedMedia[0].SpecificSurfaceSquareMetresPerCubicMetre * 2.88 * 0.3;
        Assert.Equal(0.5 * all, BedProcess.FilmSquareMetres(parts, 0, 0), 6);
        Assert.Equal(all * 0.21 / 0.3, BedProcess.FilmSquareMetres(parts, 0, BedWater.Litres(2.88, 0.21, parts.BedMedia[0].VoidShare)), 6);
        Assert.Equal(0.9 * all, BedProcess.FilmSquareMetres(parts, 0, 1000), 6);
    }

    [Fact]
    public void A_drained_bed_wilts_and_a_drowned_one_rots_and_both_are_told()
    {
        Season drained = Farms.Run(
            BedFarm.Of(plan: [("drain", new SetWaterHeight { Day = 80, Bed = "bed", BelowSurfaceMetres = 0.29 })]), 100);
        LedgerLawTests.AssertClosed(drained);
        Assert.Contains(drained.Log.Events, e => e.What == "bed dry" && e.Where == "bed");
        Assert.True(drained.State.Growing.Beds[0].Plants.Plants < 4);

        Season drowned = Farms.Run(
            BedFarm.Of(plan: [("raise", new SetWaterHeight { Day = 80, Bed = "bed", BelowSurfaceMetres = 0.01 })]), 100);
        LedgerLawTests.AssertClosed(drowned);
        Assert.Contains(drowned.Log.Events, e => e.What == "bed drowned" && e.Where == "bed");
        Assert.InRange(Farms.Days(drowned, "water_height_bed_mm")[90], 285, 291);
        Assert.True(drowned.State.Growing.Beds[0].Plants.Plants < Farms.Days(Well.Value, "plants_bed")[99]);
    }

    [Fact]
    public void A_bed_cleared_gives_everything_to_compost_and_lies_fallow()
    {
        Season season = Farms.Run(BedFarm.Of(clear: 120), 130);
        LedgerLawTests.AssertClosed(season);
        Assert.True(season.State.Growing.Beds[0].Plants.IsEmpty);
        Assert.Contains(season.Log.Events, e => e.What == "clear bed");
        Assert.True(season.State.Books[Element.Nitrogen].TotalOutBy(Door.CropCompost) > 0);
        Assert.Equal(250, Farms.Days(season, "water_height_bed_mm")[128], 1.0);
    }

    [Fact]
    public void A_season_with_beds_saved_and_gone_back_to_goes_on_bit_for_bit()
    {
        Season through = Farms.Run(BedFarm.Of(), 100);
        Season season = Farms.Start(BedFarm.Of(), 100);
        season.Advance((90 * UnitConstants.SecondsPerDay) + 43200);
        SeasonSnapshot saved = season.Save();
        Season equal = Farms.Start(BedFarm.Of(), 100);
        equal.Restore(saved);
        equal.AdvanceToEnd();
        Assert.Equal(through.ClosingStocks(), equal.ClosingStocks());
        Assert.Equal(Farms.Days(through, "fruit_on_tomato_kg"), Farms.Days(equal, "fruit_on_tomato_kg"));
    }

    [Fact]
    public void A_bed_that_does_not_fit_is_refused_with_the_figure_to_write()
    {
        DescriptionException volume = Assert.Throws<DescriptionException>(
            () => Farms.Start(BedFarm.Of(BedFarm.Bed with { DepthMetres = 0.4 }), 10));
        Assert.Contains("write \"volume\": \"423 L\"", volume.Message, StringComparison.Ordinal);
        FarmDescription farm = BedFarm.Of();
        DescriptionException early = Assert.Throws<DescriptionException>(() => Farms.Start(
            farm with { Crops = farm.Crops.With("tomato", c => c with { NurseryDays = 45 }) }, 10));
        Assert.Contains("sown before day 0", early.Message, StringComparison.Ordinal);
    }
}
