using CsCheck;
using FarmTwin.Farm.Climate;

namespace FarmTwin.Farm.Tests.Climate;

public sealed class HouseTests
{
    private const double Foot = 0.3048;
    private const double WattsPerBtuPerHour = UnitConstants.JoulesPerBtu / UnitConstants.SecondsPerHour;

    [Fact]
    public void A_gable_house_loses_the_worked_design_heat()
    {
        // Own calculation on EP406.4 and NRAES-33 coefficients: 30 x 60 ft, 6 ft sides, 13.5 ft ridge, U 0.7, 1 air change, F 0.8.
        var shape = new HouseShape(60 * Foot, 30 * Foot, 6 * Foot, 13.5 * Foot);
        double square = Foot * Foot;
        Assert.Equal(2012, shape.RoofSquareMetres / square, 1.0);
        Assert.Equal(720, shape.SidesSquareMetres / square, 0.01);
        Assert.Equal(585, shape.EndsSquareMetres / square, 0.01);
        Assert.Equal(17550, shape.VolumeCubicMetres / (square * Foot), 0.01);

        double cover = (shape.RoofSquareMetres + shape.SidesSquareMetres + shape.EndsSquareMetres) / square * 0.7 * 50;
        double infiltration = HouseHeatLoss.InfiltrationWattsPerKelvin(1, shape.VolumeCubicMetres) * 50 / 1.8 / WattsPerBtuPerHour;
        double perimeter = HouseHeatLoss.PerimeterWattsPerKelvin(0.8 * WattsPerBtuPerHour * 1.8 / Foot, shape.PerimeterMetres)
            * 50 / 1.8 / WattsPerBtuPerHour;
        Assert.Equal(116111, cover, 0.005 * 116111);
        Assert.Equal(15795, infiltration, 0.005 * 15795);
        Assert.Equal(7200, perimeter, 0.005 * 7200);
        Assert.Equal(139106, cover + infiltration + perimeter, 0.005 * 139106);
    }

    [Fact]
    public void Ventilation_for_4_kelvin_is_54_litres_a_second_and_square_metre()
    {
        // Own calculation: 800 W/m2, transmission 0.65, half of it latent.
        Assert.Equal(0.054, HouseHeatLoss.VentilationPerFloorArea(800, 0.65, 0.5, 4, 1200), 0.0005);
    }

    [Fact]
    public void Heat_vapour_and_floor_close_whatever_the_weather()
    {
        var balance = new HouseAirBalance(ClimateLibrary.House());
        Gen.Select(Gen.Double[-25, 38], Gen.Double[0, 1000], Gen.Double[0.05, 1], Gen.Double[0, 20],
            Gen.Double[0, 3000], Gen.Double[0, 60], Gen.Double[0, 30], Gen.Double[0.05, 1]).Sample(
            (outside, sun, humidity, wind, power, transpiration, floor, hours) =>
            {
                var conditions = new HouseConditions(outside, sun,
                    humidity * Psychrometrics.SaturationPressureKilopascal(outside), wind, power, 300, 400, 24,
                    transpiration, 2, floor, hours, sun < 1);
                HouseAir air = balance.Solve(conditions);
                double into = air.SolarWatts + power + 300 + air.HeaterWatts + air.WaterHeatWatts;
                double lost = air.LatentWatts + air.CoverLossWatts + air.InfiltrationLossWatts + air.PerimeterLossWatts
                    + air.VentLossWatts;
                double capacity = balance.House.FloorSquareMetres * 150e3;
                double stored = (air.FloorCelsiusAfter - floor) * capacity / (hours * 3600);
                double scale = Math.Max(1e4, Math.Abs(into) + Math.Abs(lost));
                Assert.Equal(0, (into - lost - stored) / scale, 1e-6);
                Assert.Equal(air.FloorCelsiusAfter,
                    balance.FloorAfter(floor, air.AirCelsius, air.FloorSolarWatts, hours), 1e-8);
                Assert.InRange(air.RelativeHumidityPercent, 0, 100 + 1e-9);
                Assert.True(air.CondensationKilogramsPerHour >= 0);
                Assert.Equal(transpiration + 2,
                    air.VapourCarriedOutKilogramsPerHour + air.CondensationKilogramsPerHour, 1e-6);
                Assert.InRange(air.HeaterWatts, 0, 35000);
                Assert.InRange(air.VentCubicMetresPerSecond, 0, balance.House.VentCubicMetresPerSecond * (1 + 1e-12));
            });
    }

    [Fact]
    public void Vents_hold_their_set_point_until_they_are_wide_open()
    {
        var balance = new HouseAirBalance(ClimateLibrary.House());
        HouseAir mild = balance.Solve(Noon(12, 600));
        Assert.Equal(balance.House.VentSetPointCelsius, mild.AirCelsius, 9);
        Assert.InRange(mild.VentCubicMetresPerSecond, 0.01, balance.House.VentCubicMetresPerSecond - 0.01);
        HouseAir hot = balance.Solve(Noon(30, 900));
        Assert.Equal(balance.House.VentCubicMetresPerSecond, hot.VentCubicMetresPerSecond, 9);
        Assert.InRange(hot.AirCelsius, 31, 38);
        HouseAir shut = balance.Solve(Noon(30, 900) with { VentShare = 0 });
        Assert.True(shut.AirCelsius > hot.AirCelsius + 10);
        HouseAir shaded = balance.Solve(Noon(30, 900) with { ShadeShare = 0.5 });
        Assert.True(shaded.AirCelsius < hot.AirCelsius - 1);
    }

    [Fact]
    public void The_heater_holds_its_set_point_until_it_is_at_capacity()
    {
        var balance = new HouseAirBalance(ClimateLibrary.House());
        HouseAir cold = balance.Solve(Night(-15));
        Assert.Equal(10, cold.AirCelsius, 9);
        HouseAir colder = balance.Solve(Night(-40));
        Assert.Equal(35000, colder.HeaterWatts, 6);
        Assert.True(colder.AirCelsius < 10);
        HouseAir failed = balance.Solve(Night(-15) with { HeaterShare = 0 });
        Assert.Equal(0, failed.HeaterWatts);
        Assert.True(failed.AirCelsius < 5);
    }

    [Fact]
    public void A_thermal_screen_saves_its_share_of_the_cover_loss_at_night_only()
    {
        var balance = new HouseAirBalance(ClimateLibrary.House());
        double saved = balance.LossWattsPerKelvin(0, false) - balance.LossWattsPerKelvin(0, true);
        Assert.Equal(0.35 * balance.House.CoverWattsPerKelvin, saved, 9);
        var bare = new HouseAirBalance(ClimateLibrary.House() with { HasThermalScreen = false });
        Assert.Equal(bare.LossWattsPerKelvin(0, false), bare.LossWattsPerKelvin(0, true), 12);
        Assert.True(bare.LossWattsPerKelvin(12, false) > bare.LossWattsPerKelvin(6, false));
    }

    [Fact]
    public void The_floor_warms_the_night_and_does_not_depend_on_the_step()
    {
        // Floor and air together, one hour against sixty minutes, no sun, no heater: the air follows the floor.
        var balance = new HouseAirBalance(ClimateLibrary.House() with { HeaterCapacityWatts = 0 });
        double hourly = 20;
        double minutely = 20;
        for (int hour = 0; hour < 12; hour++)
        {
            hourly = balance.Solve(Night(-5) with { FloorCelsius = hourly }).FloorCelsiusAfter;
            for (int minute = 0; minute < 60; minute++)
            {
                minutely = balance.Solve(Night(-5) with { FloorCelsius = minutely, DurationHours = 1.0 / 60 }).FloorCelsiusAfter;
            }
        }

        Assert.True(hourly < 20);
        Assert.Equal(minutely, hourly, 0.1);
    }

    [Fact]
    public void Cold_covers_drip_and_hold_the_humidity_below_saturation()
    {
        var balance = new HouseAirBalance(ClimateLibrary.House());
        HouseAir night = balance.Solve(Night(-10) with { EvaporationKilogramsPerHour = 4 });
        Assert.True(night.CondensationKilogramsPerHour > 0.5);
        Assert.InRange(night.RelativeHumidityPercent, 40, 99);
    }

    [Fact]
    public void A_heater_set_above_the_vents_is_refused()
    {
        Assert.Throws<ArgumentException>(() =>
            new HouseAirBalance(ClimateLibrary.House() with { HeaterSetPointCelsius = 26 }));
    }

    [Fact]
    public void Solving_the_air_allocates_nothing()
    {
        var balance = new HouseAirBalance(ClimateLibrary.House());
        HouseConditions conditions = Noon(20, 600);
        double sum = balance.Solve(conditions).AirCelsius;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += balance.Solve(conditions).AirCelsius;
            sum += WaterSurface.At(26, 18, 1.6, 100, 1.2).LossWattsPerSquareMetre;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    [Fact]
    public void Every_shipped_cover_reads_and_doubling_a_film_cuts_its_loss_by_a_third()
    {
        foreach (string name in FarmTwin.Scenarios.Library.ParameterLibrary.Names("covers"))
        {
            Assert.True(ClimateLibrary.Cover(name).HeatTransferWattsPerSquareMetreKelvin > 0);
        }

        // 34 % less: abstract of Rasheed, Lee & Lee, Spanish Journal of Agricultural Research.
        double ratio = ClimateLibrary.Cover("double-inflated-polyethylene").HeatTransferWattsPerSquareMetreKelvin
            / ClimateLibrary.Cover("single-polyethylene").HeatTransferWattsPerSquareMetreKelvin;
        Assert.Equal(0.66, ratio, 0.03);
        Assert.Equal(0.65 * 0.95 * 0.9, ClimateLibrary.Cover("twin-wall-polycarbonate-8mm").ParTransmissionAt(5, 0.1), 9);
    }

    private static HouseConditions Noon(double outside, double sun) => new(outside, sun,
        0.5 * Psychrometrics.SaturationPressureKilopascal(outside), 2, 0, 300, 300, 26, 15, 3, 24, 1, false);

    private static HouseConditions Night(double outside) => new(outside, 0,
        0.8 * Psychrometrics.SaturationPressureKilopascal(outside), 2, 0, 300, 0, 0, 0, 0, 10, 1, true);
}
