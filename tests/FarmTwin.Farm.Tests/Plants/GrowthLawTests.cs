using CsCheck;
using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class GrowthLawTests
{
    [Theory]
    [InlineData(1, 17, 0.4, 1.4833)]
    [InlineData(42.5, 17, 0.4, 54.0051)]
    public void The_expolinear_day_is_exact(double standing, double closed, double rate, double expected) =>
        Assert.Equal(expected, Growth.Advance(standing, closed, rate), 4);

    [Fact]
    public void Two_half_days_make_a_day() => Gen.Select(Gen.Double[0.01, 900], Gen.Double[0.1, 30], Gen.Double[0.01, 0.5]).Sample(
        (w, c, r) =>
        {
            double whole = Growth.Advance(w, c, r);
            double halves = Growth.Advance(Growth.Advance(w, c, r, 0.5), c, r, 0.5);
            Assert.Equal(whole, halves, whole * 1e-11);
        });

    [Fact]
    public void Small_plants_grow_exponentially_and_closed_canopies_linearly()
    {
        Assert.Equal(Math.Exp(0.3), Growth.Advance(1e-3, 17, 0.3) / 1e-3, 4);
        Assert.Equal(17, Growth.Advance(2000, 17, 0.3) - 2000, 9);
        Assert.Equal(17, Growth.Advance(1200, 17, 0.3) - 1200, 6);
    }

    [Fact]
    public void Nothing_grows_in_the_dark_or_outside_its_temperatures()
    {
        PlantLot lot = Crops.Seedlings(Crops.Lettuce);
        double before = lot.DryGrams;
        var dark = default(DayLight);
        dark.AddHour(Crops.Lettuce, 24, 0, 400, 20);
        Assert.Equal(0, Growth.DailyStep(lot, Crops.Lettuce, dark, Crops.Rich, Crops.Research));
        Assert.Equal(0, Growth.DailyStep(lot, Crops.Lettuce, Crops.Day(Crops.Lettuce, 17, 16, 36, 36), Crops.Rich, Crops.Research));
        Assert.Equal(0, Growth.DailyStep(lot, Crops.Lettuce, default, Crops.Rich, Crops.Research));
        Assert.Equal(before, lot.DryGrams);
    }

    [Fact]
    public void Temperature_is_best_at_the_optimum_and_stops_growth_at_its_limits()
    {
        Assert.Equal(1, Growth.TemperatureFactor(23, 3, 23, 35), 12);
        Assert.Equal(0, Growth.TemperatureFactor(3, 3, 23, 35));
        Assert.Equal(0, Growth.TemperatureFactor(35, 3, 23, 35));
        Assert.InRange(Growth.TemperatureFactor(22, 3, 23, 35), 0.98, 1);
        Assert.InRange(Growth.TemperatureFactor(24, 3, 23, 35), 0.98, 1);
    }

    [Fact]
    public void Efficiency_in_weak_light_nears_van_Hentens_limit()
    {
        // 17e-6 g/J × 0.75 at 400 ppm × 0.68 sugar per CO2 × 0.8 conversion × 218.8 kJ/mol of PAR.
        double limit = 17e-6 * 0.75 * 0.68 * 0.8 * 218.8e3;
        Assert.Equal(limit, Growth.LightUseEfficiency(Crops.Lettuce, 0, 400, 20), 0.03);
        Assert.Equal(Crops.Lettuce.LightUseEfficiencyGramsPerMole / 2, Growth.LightUseEfficiency(Crops.Lettuce, 900, 400, 20), 12);
        Assert.Equal(0, Growth.LightUseEfficiency(Crops.Lettuce, 100, 40, 20));
    }

    [Fact]
    public void A_day_in_hours_equals_a_day_in_quarters()
    {
        var hours = default(DayLight);
        var quarters = default(DayLight);
        for (int h = 0; h < 24; h++)
        {
            double light = h is > 6 and < 18 ? 500 * Math.Sin(Math.PI * (h - 6) / 12) : 0;
            hours.AddHour(Crops.Lettuce, 1, light, 420, 18 + (light / 100));
            for (int q = 0; q < 4; q++)
            {
                quarters.AddHour(Crops.Lettuce, 0.25, light, 420, 18 + (light / 100));
            }
        }

        Assert.Equal(hours.PotentialGramsPerSquareMetre, quarters.PotentialGramsPerSquareMetre, 12);
        Assert.Equal(hours.MeanCelsius, quarters.MeanCelsius, 12);
        Assert.Equal(hours.LitCelsius, quarters.LitCelsius, 12);
        Assert.Equal(11, hours.LitHours);
        Assert.True(hours.LitCelsius > hours.MeanCelsius);
    }

    [Fact]
    public void More_light_never_means_less_growth() => Gen.Select(Gen.Double[1, 30], Gen.Double[1, 30], Gen.Double[0.002, 10]).Sample(
        (a, b, w) =>
        {
            double Gain(double dli)
            {
                PlantLot lot = Crops.Seedlings(Crops.Lettuce, density: 38);
                lot.Pools = Crops.Lettuce.TissueGramsPerGramDry * w;
                lot.GramsDryPerPlant = w;
                return Growth.DailyStep(lot, Crops.Lettuce, Crops.Day(Crops.Lettuce, dli, 16, 22, 18), Crops.Rich, Crops.Research);
            }

            Assert.True(Gain(Math.Max(a, b)) >= Gain(Math.Min(a, b)) - 1e-12);
        });

    [Fact]
    public void A_step_allocates_nothing()
    {
        PlantLot lot = Crops.Seedlings(Crops.Lettuce);
        CropParameters crop = Crops.Lettuce;
        PlantParameters common = Crops.Common;
        RootZone root = Crops.Rich;
        void Once()
        {
            var day = default(DayLight);
            for (int h = 0; h < 24; h++)
            {
                day.AddHour(crop, 1, h > 6 ? 200 : 0, 400, 20);
                Transpiration.LitresPerHour(1, lot.LeafAreaIndex(crop), 1, 1, false, common);
                lot.Take(lot.Planned * (1.0 / 24));
            }

            Growth.DailyStep(lot, crop, day, root, common);
            Uptake.PlanDay(lot, crop, common, root);
        }

        Once();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            Once();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
