using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Seasons;

/// <summary>What a grower would expect of the six beds of the whole farm.</summary>
public sealed class WholeFarmBedTests
{
    private static readonly Lazy<Season> Run = new(() => Farms.Run(Farms.Read("whole-farm"), 262));

    [Fact]
    public void Tomatoes_cucumbers_and_peppers_bear_what_a_small_house_bears()
    {
        SeasonSummary summary = SeasonSummary.Of(Run.Value, ShippedLibrary.Library, "test");
        FruitSummary tomato = summary.Crops["tomato"].Fruit!;

        // FAO 589 gives 50 to 70 days from planting to the first fruit; these transplants are small for their age.
        Assert.InRange(tomato.FirstPickDay!.Value - tomato.SetOutDay!.Value, 50, 75);

        // Kilograms a square metre of bed in one season of a lightly heated small house: common practice, no source; a third to two thirds
        // of what heated year-round houses pick (Suhl et al. 2016: 29 kg/m² of tomato in 197 days).
        Assert.InRange(tomato.SaleableKgPerM2, 9, 24);
        Assert.InRange(summary.Crops["cucumber"].Fruit!.SaleableKgPerM2, 7, 22);
        Assert.InRange(summary.Crops["sweet-pepper"].Fruit!.SaleableKgPerM2, 4, 12);
        Assert.True(tomato.BlossomEndRotKg < 0.05 * tomato.PickedKg);
        Assert.Equal(summary.Crops["tomato"].HarvestedKg, Farms.Days(Run.Value, "saleable_tomato_kg").Sum(), 1e-6);
        LedgerLawTests.AssertClosed(Run.Value);
    }

    [Fact]
    public void Without_a_mineralization_tank_the_sludge_goes_to_compost_from_the_first_wash_on()
    {
        Season season = Farms.Run(Farms.Read("no-mineralizer"), 100);
        SolidsSummary solids = SeasonSummary.Of(season, ShippedLibrary.Library, "test").Solids;
        LoggedEvent first = season.Log.Events.First(e => e.What == "wash filter");
        Assert.Equal(Math.Floor(first.Seconds / 86_400.0), solids.FirstCompostDay);
        Assert.Equal(solids.Washes, solids.CompostTrips);
        Assert.Equal(solids.CarriedKg, solids.CompostedKg, 9);
    }

    [Fact]
    public void Potassium_and_calcium_hold_out_under_fruit_and_no_bed_runs_short_of_air_or_water()
    {
        Assert.True(Farms.Days(Run.Value, "potassium_plant_loop_mg_per_L")[60..].Min() > 20);
        Assert.True(Farms.Days(Run.Value, "calcium_plant_loop_mg_per_L")[60..].Min() > 30);
        Assert.All(Run.Value.Parts.BedNames, bed => Assert.True(Farms.Days(Run.Value, $"oxygen_{bed}_mg_per_L").Min() > 2.1, bed));
        Assert.DoesNotContain(Run.Value.Log.Events, e => e.What is "bed dry" or "bed drowned");
    }
}
