using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class CalciteKineticsTests
{
    // mol/(m² h) in a mmol/(cm² s).
    private const double Hourly = 36_000;

    [Fact]
    public void Rate_constants_are_those_of_Plummer_Wigley_and_Parkhurst()
    {
        foreach (var row in PublishedTable.Read("water-calcite-rates").Rows)
        {
            double celsius = PublishedTable.Number(row, "celsius");
            double water = CalciteKinetics.ForwardMolesPerSquareMetreHour(celsius, 0, 0);
            double acid = CalciteKinetics.ForwardMolesPerSquareMetreHour(celsius, 1, 0) - water;
            double carbonic = CalciteKinetics.ForwardMolesPerSquareMetreHour(celsius, 0, 1) - water;
            Assert.Equal(PublishedTable.Number(row, "log_k1"), Math.Log10(acid / Hourly), 0.002);
            Assert.Equal(PublishedTable.Number(row, "log_k2"), Math.Log10(carbonic / Hourly), 0.002);
            Assert.Equal(PublishedTable.Number(row, "log_k3"), Math.Log10(water / Hourly), 0.002);
        }
    }

    [Fact]
    public void Phosphate_all_but_stops_calcite_above_twenty_micromoles()
    {
        // Plant and House 2002: retarded below 20 µmol/L of phosphate, ceasing above.
        double At(double micromoles) => CalciteKinetics.ShareLeftByPhosphate(micromoles * 0.030974, WaterLibrary.Minerals);
        Assert.Equal(1, At(0));
        Assert.InRange(At(5), 0.2, 0.7);
        Assert.InRange(At(20), 0, 0.2);
        Assert.InRange(At(100), 0, 0.05);
    }

    [Theory]
    [InlineData(1e-7)]
    [InlineData(1e-4)]
    [InlineData(1)]
    public void No_step_however_long_carries_the_water_past_saturation(double forward)
    {
        var constants = CarbonateConstants.At(25);
        Ions ions = WaterLibrary.Millimolar(na: 1, ca: 2, cl: 2);
        double alkalinity = Alkalinity.EquivalentsPerLitre(in ions);
        const double carbon = 2.9e-3;
        double strength = IonicStrength.MolesPerLitre(in ions);
        double pH = CarbonateSystem.Solve(alkalinity, carbon, 0, 0, in constants, strength, 8).PH;
        double before = At(0);
        Assert.True(before > 3);
        double slope = CalciteKinetics.SlopePerMole(in ions, carbon, pH, in constants);

        // The slope against a small finite change, solved anew.
        const double small = 1e-8;
        double after = At(small);
        Assert.Equal(slope, -Math.Log(after / before) / small, 0.002 * slope);

        double exchanged = CalciteKinetics.ExchangedMolesPerLitre(forward, before, slope);
        Assert.True(exchanged > 0);
        Assert.InRange(At(exchanged), 1, before);

        double At(double fallen)
        {
            double less = CarbonateSystem.Solve(alkalinity - (2 * fallen), carbon - fallen, 0, 0, in constants, strength, pH).PH;
            return Math.Pow(10, CarbonateSystem.CalciteSaturationIndex(ions.Ca - fallen, carbon - fallen, less, in constants, strength));
        }
    }
}
