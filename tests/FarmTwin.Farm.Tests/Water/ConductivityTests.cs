using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class ConductivityTests
{
    [Fact]
    public void Conductivity_of_salts_and_a_nutrient_solution_agrees_with_measurement_and_program()
    {
        var constants = CarbonateConstants.At(25);
        foreach (var row in PublishedTable.Read("water-conductivity").Rows)
        {
            double Number(string column) => PublishedTable.Number(row, column);
            Ions ions = WaterLibrary.Millimolar(Number("na"), Number("k"), Number("ca"), Number("mg"), Number("cl"), Number("no3"), Number("so4"), Number("p"));
            double value = Conductivity.MicrosiemensPerCentimetreAt25(
                in ions, Number("carbon") / 1000, Number("ph"), in constants, IonicStrength.MolesPerLitre(in ions));
            double percent = 100 * ((value / Number("ec")) - 1);
            Assert.True(percent >= -Number("percent_below") && percent <= Number("percent_above"), $"{row["case"]}: {value} for {row["ec"]}");
        }
    }

    [Theory]
    [InlineData("KCl", 744.7, 0.01)]
    [InlineData("NaCl", 702.1, 0.01)]
    [InlineData("442", 1000, 0.03)]
    public void The_calibration_solutions_of_meters_read_1413(string salt, double milligrams, double tolerance)
    {
        Ions ions = salt switch
        {
            "KCl" => WaterLibrary.Millimolar(k: milligrams / 74.548, cl: milligrams / 74.548),
            "NaCl" => WaterLibrary.Millimolar(na: milligrams / 58.44, cl: milligrams / 58.44),
            _ => WaterLibrary.Millimolar(
                na: (2 * 0.4 * milligrams / 142.036) + (0.4 * milligrams / 84.006) + (0.2 * milligrams / 58.44),
                cl: 0.2 * milligrams / 58.44, so4: 0.4 * milligrams / 142.036),
        };
        double carbon = Math.Max(0, Alkalinity.EquivalentsPerLitre(in ions));
        var constants = CarbonateConstants.At(25);
        double strength = IonicStrength.MolesPerLitre(in ions);
        double pH = CarbonateSystem.Solve(Alkalinity.EquivalentsPerLitre(in ions), carbon, 0, 0, in constants, strength, 8).PH;
        Assert.Equal(1413, Conductivity.MicrosiemensPerCentimetreAt25(in ions, carbon, pH, in constants, strength), tolerance * 1413);
        Assert.Equal(milligrams, Conductivity.TdsIonSumMilligramsPerLitre(in ions, carbon, pH, in constants, strength), 0.01 * milligrams);
    }

    [Fact]
    public void An_uncompensated_meter_reads_four_fifths_at_15_degrees()
    {
        Assert.Equal(4.05, Conductivity.Uncompensated(5, 15, WaterLibrary.Meters), 0.01);
        Assert.Equal(4.0, Conductivity.Uncompensated(5, 15, WaterLibrary.Meters with { TemperatureCoefficientPerKelvin = 0.02 }), 1e-9);
        Assert.Equal(4.045, Conductivity.Uncompensated(5, 15, WaterLibrary.Meters with { TemperatureCoefficientPerKelvin = 0.0191 }), 1e-9);
    }

    [Fact]
    public void Both_scales_of_dissolved_solids_are_shown()
    {
        Assert.Equal(370, Conductivity.TdsMeter(739, WaterLibrary.Meters.TdsFactorSodiumChloride), 0.6);
        Assert.Equal(517, Conductivity.TdsMeter(739, WaterLibrary.Meters.TdsFactorNaturalWater), 0.6);
    }
}
