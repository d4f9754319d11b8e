using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Tests.Plants;

namespace FarmTwin.Farm.Tests.Climate;

public sealed class SaltBuildUpTests
{
    [Theory]
    [InlineData(30, 60)]
    [InlineData(90, 120)]
    [InlineData(180, 210)]
    public void Without_uptake_sodium_rises_in_a_straight_line(double days, double milligrams)
    {
        // Own calculation: 12 m3, top-up 400 L/d at 30 mg/L, from 30 mg/L.
        Assert.Equal(milligrams, SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12_000, 0, days), 9);
        Assert.Equal(days, SaltBuildUp.DaysToLimit(30, milligrams, 30, 400, 12_000, 0), 9);
    }

    [Fact]
    public void With_uptake_it_comes_to_rest_where_as_much_leaves_as_comes()
    {
        double rest = SaltBuildUp.EquilibriumMilligramsPerLitre(30, 400, 60);
        Assert.Equal(200, rest, 9);
        Assert.Equal(rest, SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12_000, 60, 1e6), 6);
        Assert.Equal(double.PositiveInfinity, SaltBuildUp.DaysToLimit(30, 230, 30, 400, 12_000, 60));
        double days = SaltBuildUp.DaysToLimit(30, 100, 30, 400, 12_000, 60);
        Assert.Equal(100, SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12_000, 60, days), 9);
    }

    [Fact]
    public void A_closed_tomato_loop_on_2_millimolar_salt_stays_below_20_if_it_holds_more_than_14_litres_a_square_metre()
    {
        // A sodium balance of closed tomato culture (abstract, authors not recorded): water of 2 mM NaCl, 130 L/m² taken up, the loop
        // stayed at or below about 20 mM. Without any uptake that needs 130 × 2/(20 − 2) = 14.4 L of solution a square metre or more.
        double At(double litres) => SaltBuildUp.MilligramsPerLitreAfter(2, 2, 130, litres, 0, 1);
        Assert.Equal(20, At(130.0 * 2 / 18), 9);
        Assert.True(At(20) < 20);
        Assert.True(At(10) > 20);
    }

    [Theory]
    [InlineData("lettuce", 1.3, 0.13)]
    public void Salt_costs_growth_by_Maas_and_Hoffman_from_a_threshold_that_nutrient_salts_reach_later(string name, double threshold, double slope)
    {
        // Maas and Hoffman 1977 (from memory): threshold and loss per mS/cm for NaCl; 1.5 mS/cm later for nutrient salts (own).
        CropParameters crop = Crops.Load(name);
        Assert.Equal(threshold, crop.SaltThresholdMillisiemensPerCentimetre, 9);
        Assert.Equal(slope, crop.SaltSlopePerMillisiemens, 9);
        Assert.Equal(1, Stress.Salt(threshold + 1.5, crop, Crops.Common), 12);
        Assert.Equal(1 - slope, Stress.Salt(threshold + 2.5, crop, Crops.Common), 12);
        double full = PublishedTrialTests.Trial(crop, Crops.Rich);
        Assert.True(PublishedTrialTests.Trial(crop, Crops.Rich with { ConductivityMillisiemensPerCentimetre = threshold + 4.5 }) < 0.8 * full);
    }
}
