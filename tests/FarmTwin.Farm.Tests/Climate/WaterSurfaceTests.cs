using CsCheck;
using FarmTwin.Farm.Climate;

namespace FarmTwin.Farm.Tests.Climate;

public sealed class WaterSurfaceTests
{
    private const double Standard = 101.325;

    // Exact: a square foot of 0.3048 m, a kelvin of 1.8 °F.
    private const double SquareFoot = 0.3048 * 0.3048;
    private const double WattsPerBtuPerHour = UnitConstants.JoulesPerBtu / UnitConstants.SecondsPerHour;

    [Fact]
    public void Open_tanks_lose_what_the_published_table_says() => ClimateTable.Check("climate-water-surfaces", OpenTanks());

    internal static Dictionary<string, double> OpenTanks()
    {
        double air = Celsius(60);
        double vapour = 0.5 * Psychrometrics.SaturationPressureKilopascal(air);
        double pool = 500 * PoolEvaporation.EngineersKilogramsPerSquareMetreHour(0.02, 0.0098, 0.5) / 3600;
        return new Dictionary<string, double>
        {
            ["water 100 F in still air at 60 F Btu/h ft2"] = BtuPerSquareFoot(100),
            ["water 110 F in still air at 60 F Btu/h ft2"] = BtuPerSquareFoot(110),
            ["water 150 F in still air at 60 F Btu/h ft2"] = BtuPerSquareFoot(150),
            ["pool evaporation kg/s"] = pool,
            ["pool evaporation heat kW"] = pool * 2257,
        };

        double BtuPerSquareFoot(double water) =>
            WaterSurface.At(Celsius(water), air, vapour, Standard, 1).LossWattsPerSquareMetre * SquareFoot / WattsPerBtuPerHour;
    }

    [Fact]
    public void Two_laws_of_still_water_agree_within_6_percent()
    {
        // Own calculation: water and air 25 °C, 50 % humidity; Shah 0.108, Carrier at activity 0.5 0.104 kg/m2h.
        double vapour = 0.5 * Psychrometrics.SaturationPressureKilopascal(25);
        double shah = WaterSurface.At(25, 25, vapour, Standard, 1).EvaporationKilogramsPerSquareMetreHour;
        double carrier = PoolEvaporation.CarrierKilogramsPerSquareMetreHour(25, vapour, 0, 0.5);
        Assert.Equal(0.108, shah, 0.001);
        Assert.Equal(0.104, carrier, 0.001);
        Assert.InRange(shah / carrier, 0.94, 1.06);
    }

    [Fact]
    public void Warm_water_in_a_cool_house_loses_188_watts_mostly_by_evaporation()
    {
        // Own calculation: water 26 °C, air 18 °C, 80 %.
        double vapour = 0.8 * Psychrometrics.SaturationPressureKilopascal(18);
        SurfaceExchange exchange = WaterSurface.At(26, 18, vapour, Standard, 1);
        Assert.Equal(111, exchange.LatentWattsPerSquareMetre, 1.5);
        Assert.Equal(33, exchange.ConvectiveWattsPerSquareMetre, 1.5);
        Assert.Equal(44, exchange.RadiativeWattsPerSquareMetre, 1.5);
        Assert.Equal(188, exchange.LossWattsPerSquareMetre, 2.0);
        Assert.Equal(exchange.LossWattsPerSquareMetre,
            exchange.LatentWattsPerSquareMetre + exchange.SensibleWattsPerSquareMetre, 10);
    }

    [Fact]
    public void The_slope_is_the_derivative_of_the_loss_and_positive()
    {
        Gen.Select(Gen.Double[1, 35], Gen.Double[1, 40], Gen.Double[0.2, 1], Gen.Double[1, 2]).Sample(
            (water, air, humidity, activity) =>
            {
                double vapour = humidity * Psychrometrics.SaturationPressureKilopascal(air);
                SurfaceExchange here = At(water);
                double difference = (At(water + 1e-5).LossWattsPerSquareMetre - At(water - 1e-5).LossWattsPerSquareMetre) / 2e-5;
                Assert.True(here.SlopeWattsPerSquareMetreKelvin > 0);
                Assert.True(here.EvaporationKilogramsPerSquareMetreHour >= 0);

                // The law has kinks (convection begins, evaporation begins); a difference across one tells nothing.
                double ahead = At(water + 1e-3).SlopeWattsPerSquareMetreKelvin;
                double behind = At(water - 1e-3).SlopeWattsPerSquareMetreKelvin;
                if (Math.Abs(ahead - behind) < 0.02 * here.SlopeWattsPerSquareMetreKelvin)
                {
                    Assert.Equal(difference, here.SlopeWattsPerSquareMetreKelvin, 0.02 * here.SlopeWattsPerSquareMetreKelvin);
                }

                SurfaceExchange At(double celsius) => WaterSurface.At(celsius, air, vapour, Standard, activity);
            });
    }

    [Fact]
    public void Loss_rises_with_the_water_temperature()
    {
        double vapour = 0.7 * Psychrometrics.SaturationPressureKilopascal(15);
        double last = double.NegativeInfinity;
        for (double water = 2; water < 35; water += 0.25)
        {
            double loss = WaterSurface.At(water, 15, vapour, Standard, 1).LossWattsPerSquareMetre;
            Assert.True(loss > last);
            last = loss;
        }
    }

    private static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;
}
