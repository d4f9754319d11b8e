using FarmTwin.Farm.Plants;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>Standing water of a media bed.</summary>
public sealed class BedWaterTests
{
    private static readonly BedParameters Beds = BedParameters.From(ParameterLibrary.Load("processes", "beds"));

    [Fact]
    public void A_bed_holds_area_times_height_times_pores_and_gives_the_height_back()
    {
        double litres = BedWater.Litres(2.88, 0.25, 0.42);
        Assert.Equal(302.4, litres, 9);
        Assert.Equal(0.25, BedWater.HeightMetres(litres, 2.88, 0.42, 0.3), 12);
        Assert.Equal(0.3, BedWater.HeightMetres(10 * litres, 2.88, 0.42, 0.3), 12);
    }

    [Fact]
    public void A_rooted_plant_lives_on_less_water_than_a_fresh_one()
    {
        Assert.Equal(1, BedWater.WaterFactor(0.15, 0, Beds));
        Assert.Equal(0.07 / 0.15, BedWater.WaterFactor(0.07, 0, Beds), 12);
        Assert.Equal(1, BedWater.WaterFactor(0.07, 1, Beds));
        Assert.Equal(0, BedWater.WaterFactor(0, 1, Beds));
        Assert.Equal(0.5, BedWater.Rooted(10.5, 21));
    }

    [Fact]
    public void A_full_grown_stand_breathes_a_fifth_of_a_gram_a_square_metre_and_hour_through_its_roots()
    {
        double roots = BedWater.RespirationGramsPerHour(35, 1, 25, Beds) - BedWater.RespirationGramsPerHour(0, 1, 25, Beds);
        Assert.InRange(roots, 0.1, 0.3);
        Assert.Equal(2, BedWater.RespirationGramsPerHour(35, 1, 30, Beds) / BedWater.RespirationGramsPerHour(35, 1, 20, Beds), 0.05);
    }
}
