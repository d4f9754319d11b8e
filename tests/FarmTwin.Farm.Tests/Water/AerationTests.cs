using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class AerationTests
{
    private static readonly AerationParameters Clean =
        WaterLibrary.Aeration with { AlphaClearWater = 0.9, Beta = 1, FoulingFactor = 1 };

    [Theory]
    [InlineData(20, 5, 41)]
    [InlineData(30, 5, 31)]
    [InlineData(20, 0, 91)]
    public void Delivered_share_of_the_rated_transfer_agrees_with_an_aeration_table(double celsius, double oxygen, double percent)
    {
        // The table stems from an older saturation (9.17 at 20 °C) and gives whole percents: 1.5 points.
        double conductance = Aeration.OxygenConductanceLitresPerHour(100, Clean.AlphaClearWater, celsius, Clean);
        Assert.Equal(percent, Aeration.DeliveredOxygenGramsPerHour(conductance, oxygen, celsius, 1, Clean), 1.5);
    }

    [Fact]
    public void Alpha_scales_the_conductance_of_a_textbook_pair()
    {
        // 2.25 per hour in the water over 2.46 in tap water.
        double tap = Aeration.OxygenConductanceLitresPerHour(100, 1, 20, Clean);
        Assert.Equal(0.915, Aeration.OxygenConductanceLitresPerHour(100, 2.25 / 2.46, 20, Clean) / tap, 0.001);
    }

    [Fact]
    public void Rated_transfer_and_KLa_belong_to_each_other()
    {
        // SOTR = KLa20 × 9.09 × V: 5 per hour in 1 m³ is 45.45 g/h.
        Assert.Equal(5, Aeration.KLa20PerHour(45.45, 1000), 1e-9);
        Assert.Equal(5000, Aeration.StandardConductanceLitresPerHour(45.45), 1e-9);
    }

    [Fact]
    public void A_cubic_metre_of_air_carries_280_g_of_oxygen_at_20_degrees()
    {
        Assert.Equal(280, Aeration.StandardTransferGramsPerHour(1, 1, 1), 5.0);
        Assert.Equal(Aeration.StandardTransferGramsPerHour(1, 1, 1), Aeration.StandardTransferGramsPerHour(1, 30, 0.06), 1e-9);
    }

    [Theory]
    [InlineData(15, 0.93)]
    [InlineData(20, 1.06)]
    [InlineData(25, 1.20)]
    [InlineData(30, 1.35)]
    public void Air_holds_about_its_own_volume_of_carbon_dioxide(double celsius, double ratio)
    {
        Assert.Equal(ratio, Aeration.GasToWaterRatio(celsius, CarbonateConstants.At(celsius)), 0.006);
    }

    [Fact]
    public void Carbon_dioxide_stripping_is_capped_by_the_air()
    {
        var constants = CarbonateConstants.At(26);
        double capacity = 2000 * Aeration.GasToWaterRatio(26, in constants);
        double small = Aeration.CarbonDioxideConductanceLitresPerHour(1, 2, 26, in constants, Clean);
        double large = Aeration.CarbonDioxideConductanceLitresPerHour(1e9, 2, 26, in constants, Clean);
        Assert.Equal(0.904, small, 0.001);
        Assert.Equal(capacity, large, 1e-6);
        Assert.Equal(0, Aeration.CarbonDioxideConductanceLitresPerHour(1e4, 0, 26, in constants, Clean));
        double previous = 0;
        for (double oxygen = 10; oxygen < 1e5; oxygen *= 1.5)
        {
            double conductance = Aeration.CarbonDioxideConductanceLitresPerHour(oxygen, 2, 26, in constants, Clean);
            Assert.True(conductance >= previous && conductance <= capacity && conductance <= 0.904 * oxygen);
            previous = conductance;
        }
    }

    [Fact]
    public void A_quiet_surface_gives_twenty_litres_per_hour_and_square_metre()
    {
        Assert.Equal(20, Aeration.SurfaceOxygenConductanceLitresPerHour(1, WaterLibrary.Aeration), 1e-9);
        Assert.Equal(18.08, Aeration.SurfaceCarbonDioxideConductanceLitresPerHour(1, WaterLibrary.Aeration), 1e-9);
    }

    [Fact]
    public void A_fed_tank_falls_from_6_5_to_2_milligrams_in_25_7_minutes()
    {
        // 42 kg at 300 mg/kg/h in 1200 L: 10.5 mg/L/h.
        Assert.Equal(25.7, 60 * OxygenDepletion.HoursTo(6.5, 2, 8.1, 42 * 300 / 1200.0, 0), 0.05);
    }

    [Fact]
    public void Depletion_time_and_course_are_inverse_to_each_other_and_a_good_surface_holds_the_tank()
    {
        double hours = OxygenDepletion.HoursTo(6.5, 3, 8.1, 10.5, 0.4);
        Assert.Equal(3, OxygenDepletion.MilligramsPerLitreAfter(6.5, 8.1, 10.5, 0.4, hours), 1e-9);
        Assert.True(hours > 60 * 3.5 / 10.5 / 60);
        Assert.Equal(double.PositiveInfinity, OxygenDepletion.HoursTo(6.5, 3, 8.1, 1, 0.4));
        Assert.Equal(double.PositiveInfinity, OxygenDepletion.HoursTo(6.5, 3, 8.1, 0, 0));
        Assert.Equal(0, OxygenDepletion.HoursTo(2, 3, 8.1, 1, 0.4));
        Assert.Equal(5.5, OxygenDepletion.MilligramsPerLitreAfter(6.5, 8.1, 2, 0, 0.5), 1e-9);
    }
}
