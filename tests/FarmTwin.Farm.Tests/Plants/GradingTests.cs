using FarmTwin.Farm.Plants;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class GradingTests
{
    private static readonly CropGrades Lettuce = CropGrades.From(ParameterLibrary.Load("grades", "lettuce"));
    private static readonly CropGrades Basil = CropGrades.From(ParameterLibrary.Load("grades", "basil"));

    [Theory]
    [InlineData(60)]
    [InlineData(130)]
    [InlineData(165)]
    [InlineData(260)]
    [InlineData(420)]
    public void Every_head_and_every_gram_falls_into_one_grade_and_every_lost_head_has_its_reason(double grams)
    {
        PlantLot heads = Heads(grams, new PlantDamage(200, 0.2, 0.1, 0.05));
        HeadGrades grades = Grading.Of(heads, Crops.Lettuce, Lettuce);
        Assert.Equal(100, grades.FirstHeads + grades.SecondHeads + grades.UnsaleableHeads, 6);
        Assert.Equal(100 * grams, grades.FirstGrams + grades.SecondGrams + grades.UnsaleableGrams, 1);
        double reasons = grades.Light + grades.Heavy + grades.TipBurn + grades.Heat + grades.Bolted + grades.Cold + grades.Other;
        Assert.Equal(100 - grades.FirstHeads, reasons, 6);
    }

    [Fact]
    public void A_heavy_head_sells_as_one_head_up_to_a_limit_and_a_light_one_does_not()
    {
        Assert.True(First(165) > 0.85);
        Assert.True(First(240) > 0.9);
        Assert.InRange(First(130), 0.4, 0.55);
        Assert.InRange(First(350), 0.4, 0.55);
        Assert.True(First(60) < 0.01);
        HeadGrades larger = Grading.Of(Heads(350, default), Crops.Lettuce, Lettuce, heaviestFirst: 600);
        Assert.True(larger.FirstHeads > 90);
        HeadGrades bunched = Grading.Of(Heads(60, default), Crops.Lettuce, Lettuce, bunched: true);
        Assert.Equal(97, bunched.FirstHeads, 6);
    }

    [Fact]
    public void Warm_long_days_bring_bolting_and_cool_or_short_days_do_not()
    {
        PlantDamage warm = After(Lettuce, 50, new CropWeather(26.5, 15, 15, 0, 0, 1, true));
        PlantDamage cool = After(Lettuce, 50, new CropWeather(19, 15, 15, 0, 0, 1, true));
        PlantDamage young = After(Lettuce, 25, new CropWeather(26.5, 15, 15, 0, 0, 1, true));
        Assert.True(Lettuce.BoltedShare(warm.BoltingDegreeDays) > 0.5);
        Assert.Equal(0, Lettuce.BoltedShare(cool.BoltingDegreeDays));
        Assert.True(Lettuce.BoltedShare(young.BoltingDegreeDays) < 0.05);
        Assert.Equal(0.5 * Lettuce.BoltingDegrees(25, 15), Lettuce.BoltingDegrees(25, 10), 9);
        Assert.True(Basil.BoltedShare(warm.BoltingDegreeDays) < 0.01);
    }

    [Fact]
    public void Bright_days_burn_tips_in_still_air_but_hardly_where_fans_move_it()
    {
        var still = new CropWeather(22, 14, 22, 0, 0, 0.8, AirMoved: false);
        Assert.InRange(After(Lettuce, 10, still).TipBurnShare, 0.2, 0.6);
        Assert.True(After(Lettuce, 10, still with { AirMoved = true }).TipBurnShare < 0.06);
        Assert.Equal(0, After(Lettuce, 10, still with { LightMoles = 17 }).TipBurnShare);
        Assert.True(After(Lettuce, 10, still with { LightMoles = 17, LitVapourDeficitKilopascals = 0.1 }).TipBurnShare > 0.2);
        Assert.Equal(0, default(PlantDamage).After(Lettuce, still, leafAreaIndex: 0.5, calciumShort: true).TipBurnShare);
        Assert.True(default(PlantDamage).After(Lettuce, still with { LightMoles = 10 }, 3, calciumShort: true).TipBurnShare > 0.04);
    }

    [Fact]
    public void Hot_hours_scorch_and_cold_hours_spoil_each_by_the_crops_own_limit()
    {
        // Five hours at 39 °C.
        double hot = 5 * (39 - Lettuce.HeatLimitCelsius);
        PlantDamage week = After(Lettuce, 7, new CropWeather(28, 15, 15, hot, 0, 1, true));
        Assert.True(week.ScorchedShare > 0.3);
        Assert.True(Basil.HeatLimitCelsius > Lettuce.HeatLimitCelsius && Basil.ColdLimitCelsius > Lettuce.ColdLimitCelsius);
        Assert.True(After(Basil, 1, new CropWeather(8, 10, 8, 0, 10 * (Basil.ColdLimitCelsius - 5), 0.5, true)).ChilledShare > 0.1);
    }

    [Fact]
    public void Damage_goes_along_when_plants_join()
    {
        PlantLot sound = Heads(100, default);
        PlantLot burnt = Heads(100, new PlantDamage(100, 0.5, 0, 0));
        burnt.MoveInto(sound, 100);
        Assert.Equal(0.25, sound.Damage.TipBurnShare, 9);
        Assert.Equal(50, sound.Damage.BoltingDegreeDays, 9);
    }

    private static double First(double grams) => Grading.Of(Heads(grams, default), Crops.Lettuce, Lettuce).FirstHeads / 100;

    private static PlantDamage After(CropGrades grades, int days, CropWeather weather)
    {
        PlantDamage damage = default;
        for (int day = 0; day < days; day++)
        {
            damage = damage.After(grades, weather, leafAreaIndex: 3, calciumShort: false);
        }

        return damage;
    }

    private static PlantLot Heads(double freshGrams, PlantDamage damage) => new()
    {
        Plants = 100,
        DryGrams = 100 * freshGrams * Crops.Lettuce.DryMatterContent / (1 - Crops.Lettuce.RootShare),
        Damage = damage,
    };
}
