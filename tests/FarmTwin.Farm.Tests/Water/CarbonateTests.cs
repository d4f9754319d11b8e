using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class CarbonateTests
{
    private const double GramsCarbonDioxidePerMole = 44.009;

    [Fact]
    public void Constants_follow_Plummer_and_Busenberg_and_Harned_and_Owen()
    {
        foreach (var row in PublishedTable.Read("water-equilibrium-constants").Rows)
        {
            var constants = CarbonateConstants.At(PublishedTable.Number(row, "celsius"));
            Assert.Equal(PublishedTable.Number(row, "pk1"), -Math.Log10(constants.K1), 0.0011);
            Assert.Equal(PublishedTable.Number(row, "pk2"), -Math.Log10(constants.K2), 0.0011);
            Assert.Equal(PublishedTable.Number(row, "pkh"), -Math.Log10(constants.KHenry), 0.0011);
            Assert.Equal(PublishedTable.Number(row, "pkw"), -Math.Log10(constants.KWater), 0.0011);
        }
    }

    [Fact]
    public void Phosphate_calcite_and_activity_constants_have_their_values_at_25_degrees()
    {
        var constants = CarbonateConstants.At(25);
        Assert.Equal(7.207, -Math.Log10(constants.KPhosphate), 1e-6);
        Assert.Equal(Ammonia.PKa(25), -Math.Log10(constants.KAmmonium), 1e-6);
        Assert.Equal(8.48, -Math.Log10(constants.KspCalcite), 0.01);
        Assert.Equal(0.507, CarbonateConstants.At(20).DebyeHuckel, 0.001);
        Assert.Equal(0.512, constants.DebyeHuckel, 0.001);
        Assert.Equal(0.516, CarbonateConstants.At(30).DebyeHuckel, 0.001);
    }

    [Fact]
    public void Interpolated_constants_meet_the_equation_between_the_nodes()
    {
        for (double celsius = 0.05; celsius < 50; celsius += 0.37)
        {
            double kelvin = celsius + 273.15;
            double expected = -356.3094 - (0.06091964 * kelvin) + (21834.37 / kelvin) + (126.8339 * Math.Log10(kelvin)) - (1684915 / (kelvin * kelvin));
            Assert.Equal(expected, Math.Log10(CarbonateConstants.At(celsius).K1), 1e-6);
        }
    }

    [Fact]
    public void A_temperature_outside_the_table_is_held_at_its_end()
    {
        Assert.Equal(CarbonateConstants.At(0).K1, CarbonateConstants.At(-3).K1);
        Assert.Equal(CarbonateConstants.At(50).K1, CarbonateConstants.At(70).K1);
        Assert.True(double.IsNaN(CarbonateConstants.At(double.NaN).K1));
    }

    [Fact]
    public void pH_of_farm_waters_agrees_with_an_independent_geochemical_program()
    {
        foreach (var row in PublishedTable.Read("water-ph-cases").Rows)
        {
            double celsius = PublishedTable.Number(row, "celsius");
            var constants = CarbonateConstants.At(celsius);
            double alkalinity = PublishedTable.Number(row, "alkalinity") / 1000;
            double phosphorus = PublishedTable.Number(row, "phosphorus") / 1000;
            double strength = PublishedTable.Number(row, "potassium") / 1000;
            double pH = row["air_ppm"].Length > 0
                ? CarbonateSystem.SolveOpen(alkalinity, constants.KHenry * PublishedTable.Number(row, "air_ppm") * 1e-6, phosphorus, 0,
                    in constants, strength).PH
                : CarbonateSystem.Solve(alkalinity, PublishedTable.Number(row, "carbon") / 1000, phosphorus, 0, in constants, strength, 7).PH;
            double tolerance = PublishedTable.Number(row, "tolerance");
            Assert.True(Math.Abs(pH - PublishedTable.Number(row, "ph")) <= tolerance, $"{row["case"]}: pH {pH} for {row["ph"]}");
        }
    }

    [Fact]
    public void Fish_loop_water_holds_eleven_milligrams_of_carbon_dioxide()
    {
        var constants = CarbonateConstants.At(26);
        CarbonateState state = CarbonateSystem.Solve(1.6e-3, 1.85e-3, 0, 0, in constants, 1.6e-3, 7);
        Assert.Equal(11.06, state.CarbonDioxideMolesPerLitre * GramsCarbonDioxidePerMole * 1000, 0.15);
    }

    [Fact]
    public void Pure_water_in_air_has_pH_5_61()
    {
        var constants = CarbonateConstants.At(25);
        Assert.Equal(5.61, CarbonateSystem.SolveOpen(0, constants.KHenry * 0.00039, 0, 0, in constants, 0).PH, 0.01);
    }

    [Fact]
    public void Textbook_strong_base_and_weak_bicarbonate_have_their_pH()
    {
        var constants = CarbonateConstants.At(25);
        Assert.Equal(10.7, CarbonateSystem.Solve(5e-4, 0, 0, 0, in constants, 5e-4, 7).PH, 0.05);
        Assert.Equal(8.0, CarbonateSystem.Solve(5e-5, 5e-5, 0, 0, in constants, 5e-5, 7).PH, 0.1);
        Assert.Equal(25, Alkalinity.MilligramsCalciumCarbonatePerLitre(5e-4), 0.05);
    }

    [Theory]
    [InlineData(6.8, 25, 0.313)]
    [InlineData(7.0, 25, 0.197)]
    [InlineData(7.4, 20, 0.084)]
    public void Carbon_dioxide_per_alkalinity_is_within_three_percent_of_Tucker_1984(double pH, double celsius, double factor)
    {
        // The published factors take no account of activity.
        var constants = CarbonateConstants.At(celsius);
        double alkalinity = Alkalinity.EquivalentsFromCalciumCarbonate(50);
        double carbon = CarbonateSystem.InorganicCarbonForPH(alkalinity, pH, 0, 0, in constants, 0);
        double milligrams = CarbonateSystem.Solve(alkalinity, carbon, 0, 0, in constants, 0, pH).CarbonDioxideMolesPerLitre
            * GramsCarbonDioxidePerMole * 1000;
        Assert.Equal(factor * 50, milligrams, 0.03 * factor * 50);
    }

    [Theory]
    [InlineData(335, 0.56)]
    [InlineData(394, 0.67)]
    public void Carbon_dioxide_at_saturation_agrees_with_Boyd(double partsPerMillion, double milligrams)
    {
        var constants = CarbonateConstants.At(20);
        double value = CarbonateSystem.SaturationCarbonDioxideMolesPerLitre(in constants, partsPerMillion, 1, 20);
        Assert.Equal(milligrams, value * GramsCarbonDioxidePerMole * 1000, 0.01);
    }

    [Fact]
    public void Water_at_rest_with_calcite_and_five_thousand_ppm_has_the_computed_pH()
    {
        // PHREEQC: pH 7.50, alkalinity 2.60 meq/L; ion pairs, left out here, carry some calcium.
        var constants = CarbonateConstants.At(25);
        Ions ions = WaterLibrary.Millimolar(ca: 1.30);
        double strength = IonicStrength.MolesPerLitre(in ions);
        OpenCarbonateState open = CarbonateSystem.SolveOpen(2.6e-3, constants.KHenry * 0.005011, 0, 0, in constants, strength);
        Assert.Equal(7.50, open.PH, 0.02);
        Assert.Equal(0, CarbonateSystem.CalciteSaturationIndex(1.3e-3, open.InorganicCarbonMolesPerLitre, open.PH, in constants, strength), 0.06);
    }

    [Fact]
    public void Calcite_saturation_index_of_hard_water_agrees_with_the_geochemical_program()
    {
        var constants = CarbonateConstants.At(25);
        double alkalinity = Alkalinity.EquivalentsFromCalciumCarbonate(100);
        double calcium = 0.060 / 40.078;
        Ions ions = new(0, 0, calcium, 0, (2 * calcium) - alkalinity, 0, 0, 0, 0, 0);
        double strength = IonicStrength.MolesPerLitre(in ions);
        double carbon = CarbonateSystem.InorganicCarbonForPH(alkalinity, 7.8, 0, 0, in constants, strength);
        Assert.Equal(0.23, CarbonateSystem.CalciteSaturationIndex(calcium, carbon, 7.8, in constants, strength), 0.06);
    }

    [Fact]
    public void Hydroxide_adds_its_share_to_the_alkalinity_of_a_carbonate_water()
    {
        // HCO3 120 and CO3 15 mg/L at pH 9.43: 123.36 mg/L from the ions, 124.71 with hydroxide.
        double ions = (0.120 / 61.016) + (2 * 0.015 / 60.008);
        double hydroxide = CarbonateConstants.At(25).KWater / Math.Pow(10, -9.43);
        Assert.Equal(123.36, Alkalinity.MilligramsCalciumCarbonatePerLitre(ions), 0.1);
        Assert.Equal(124.71, Alkalinity.MilligramsCalciumCarbonatePerLitre(ions + hydroxide), 0.1);
    }

    [Theory]
    [InlineData(420)]
    [InlineData(1000)]
    public void Water_at_pH_6_5_in_contact_with_air_holds_less_than_three_milligrams_of_alkalinity(double partsPerMillion)
    {
        // With 3 mg/L it already stands above 6.5, so a plant loop held at 5.8-6.5 has next to no buffer.
        var constants = CarbonateConstants.At(22);
        double gas = CarbonateSystem.SaturationCarbonDioxideMolesPerLitre(in constants, partsPerMillion, 1, 22);
        double alkalinity = Alkalinity.EquivalentsFromCalciumCarbonate(3);
        Assert.True(CarbonateSystem.SolveOpen(alkalinity, gas, 0, 0, in constants, 0.01).PH > 6.5);
    }

    [Theory]
    [InlineData(6.4, 60)]
    [InlineData(6.4, 100)]
    [InlineData(7.0, 60)]
    [InlineData(7.0, 100)]
    public void Low_pH_with_high_alkalinity_needs_more_carbon_dioxide_than_aerated_tanks_hold(double pH, double alkalinityMilligrams)
    {
        // Aerated tanks hold 1-3 mg/L; the corners of the band need 11 to 73.
        var constants = CarbonateConstants.At(25);
        double alkalinity = Alkalinity.EquivalentsFromCalciumCarbonate(alkalinityMilligrams);
        double carbon = CarbonateSystem.InorganicCarbonForPH(alkalinity, pH, 0, 0, in constants, 0.005);
        CarbonateSpecies species = CarbonateSpecies.At(carbon, pH, in constants, 0.005);
        Assert.True(species.CarbonDioxideMolesPerLitre * GramsCarbonDioxidePerMole * 1000 > 10);
    }

    [Fact]
    public void Water_beyond_the_range_is_held_at_its_end_and_unknown_water_has_no_pH()
    {
        var constants = CarbonateConstants.At(25);
        Assert.Equal(2, CarbonateSystem.Solve(-0.5, 0.001, 0, 0, in constants, 0.1, 7).PH, 1e-9);
        Assert.Equal(12.5, CarbonateSystem.Solve(0.5, 0.001, 0, 0, in constants, 0.1, 7).PH, 1e-9);
        Assert.True(double.IsNaN(CarbonateSystem.Solve(double.NaN, 0.001, 0, 0, in constants, 0.1, 7).PH));
        Assert.True(double.IsNaN(CarbonateSystem.Solve(0.001, double.NaN, 0, 0, in constants, 0.1, 7).PH));
        Assert.True(double.IsNaN(CarbonateSystem.SolveOpen(double.NaN, 1e-5, 0, 0, in constants, 0.1).PH));
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        CarbonateSystem.Solve(0.001, 0.001, 0, 0, CarbonateConstants.At(25), 0.01, 7);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++)
        {
            var constants = CarbonateConstants.At(20 + (i * 0.01));
            CarbonateSystem.Solve(0.001, 0.0011, 1e-4, 1e-5, in constants, 0.01, 7);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
