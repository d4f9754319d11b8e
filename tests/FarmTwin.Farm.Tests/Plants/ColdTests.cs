using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>Cold kills: by crop, once for the same cold, and out of the farm's books.</summary>
public class ColdTests
{
    private static ColdTolerance Of(string crop) => ColdTolerance.From(ShippedLibrary.Library.Set("crops", crop));

    [Theory]
    [InlineData("basil", 1, 0)]
    [InlineData("tomato", 1, 0)]
    [InlineData("sweet-pepper", 1, 0)]
    [InlineData("cucumber", 1, 0)]
    [InlineData("lettuce", 1, 0)]
    [InlineData("kale", 0.7, 0)]
    public void A_night_of_ten_degrees_of_frost_kills_and_a_mild_one_does_not(string crop, double atLeast, double mild)
    {
        // docs/model/cold.md: growers' lists of winter kill; only kale is hardy near -9 °C.
        Assert.InRange(Of(crop).FrostShare(-9.5), atLeast - 1e-4, 1);
        Assert.Equal(mild, Of(crop).FrostShare(8), 1e-6);
    }

    [Fact]
    public void A_board_on_which_all_died_is_taken_off_and_the_others_keep_their_order()
    {
        var lane = new RaftLane(3, 18, 0.72);
        for (int day = 1; day <= 3; day++)
        {
            lane.Push(new PlantLot { Plants = 18, SownDay = day });
        }

        lane.HarvestOldest(new PlantLot());
        lane.Push(new PlantLot { Plants = 18, SownDay = 4 });
        lane.Lose(1, 18, new PlantLot());
        lane.TakeOffEmpty();
        Assert.Equal(2, lane.Count);
        Assert.Equal(2, lane[0].SownDay);
        Assert.Equal(4, lane[1].SownDay);
        Assert.Equal(1, lane.FreeBoards);
    }

    [Fact]
    public void A_light_frost_kills_basil_and_spares_lettuce_and_chard()
    {
        // Ontario ministry page on tomato and pepper, and common practice: basil blackens at the first frost, lettuce and chard stand.
        Assert.True(Of("basil").FrostShare(-1.5) > 0.9);
        Assert.True(Of("lettuce").FrostShare(-1.5) < 0.02);
        Assert.True(Of("chard").FrostShare(-1.5) < 0.01);
        Assert.True(Of("sweet-pepper").FrostShare(-1) > Of("tomato").FrostShare(-1));
    }

    [Fact]
    public void Who_lived_through_a_night_lives_through_an_equal_one_and_a_colder_one_takes_the_rest()
    {
        ColdTolerance lettuce = Of("lettuce");
        double first = lettuce.KilledShare(-4, 0, 0);
        Assert.Equal(0.5, first, 1e-6);
        Assert.Equal(0, lettuce.KilledShare(-4, 0, first), 1e-9);
        double second = lettuce.KilledShare(-5, 0, first);
        Assert.Equal(lettuce.FrostShare(-5), 1 - ((1 - first) * (1 - second)), 1e-9);
    }

    [Fact]
    public void A_house_without_heat_in_winter_loses_its_lettuce_and_basil_and_the_books_close()
    {
        FarmDescription farm = Farms.FirstSeason;
        Season cold = Farms.Run(farm with { Start = new DateOnly(2027, 11, 15), House = farm.House with { AirHeater = null } }, 75);
        int lettuce = cold.Parts.CropNames.ToList().IndexOf("lettuce");
        Assert.True(cold.State.Growing.KilledByCold[lettuce] > 50, $"{cold.State.Growing.KilledByCold[lettuce]} died");
        Assert.Contains(cold.Log.Events, e => e.What == "frost" && e.Where == "lettuce");
        LedgerLawTests.AssertClosed(cold);
    }
}
