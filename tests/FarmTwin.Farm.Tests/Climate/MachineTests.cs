using FarmTwin.Farm.Climate;

namespace FarmTwin.Farm.Tests.Climate;

public sealed class MachineTests
{
    [Fact]
    public void A_counterflow_exchanger_follows_the_textbook()
    {
        Dictionary<string, double> computed = Exchanger();
        ClimateTable.Check("climate-heat-exchanger", computed);
        Assert.Equal(computed["duty W"] / computed["log mean difference K"], computed["conductance W/K"], 6);
    }

    internal static Dictionary<string, double> Exchanger()
    {
        double oil = 0.1 * 2131;
        double water = 0.2 * 4178;
        double duty = oil * 40;
        double outlet = 30 + (duty / water);
        double effectiveness = duty / (oil * 70);
        double units = HeatExchanger.CounterflowTransferUnits(effectiveness, oil / water);
        return new Dictionary<string, double>
        {
            ["duty W"] = duty,
            ["water outlet C"] = outlet,
            ["log mean difference K"] = HeatExchanger.LogMeanDifference(100 - outlet, 60 - 30),
            ["effectiveness"] = HeatExchanger.CounterflowEffectiveness(units, oil / water),
            ["transfer units"] = units,
            ["conductance W/K"] = units * oil,
        };
    }

    [Fact]
    public void Effectiveness_forms_meet_at_their_limits()
    {
        Assert.Equal(0.5, HeatExchanger.CounterflowEffectiveness(1, 1), 12);
        Assert.Equal(HeatExchanger.CounterflowEffectiveness(1, 1), HeatExchanger.CounterflowEffectiveness(1, 0.99999), 5);
        Assert.Equal(HeatExchanger.MixedSumpEffectiveness(1.3), HeatExchanger.CounterflowEffectiveness(1.3, 0), 12);
        Assert.Equal(HeatExchanger.MixedSumpEffectiveness(1.3), HeatExchanger.ParallelEffectiveness(1.3, 0), 12);
        Assert.Equal(0, HeatExchanger.ImmersedCoilPowerWatts(0, 400, 60, 25));
        Assert.True(HeatExchanger.ImmersedCoilPowerWatts(1e4, 400, 60, 25) < 400 * 35);
        Assert.Equal(400 * 35, HeatExchanger.ImmersedCoilPowerWatts(1e4, 400, 60, 25), 1.0);
    }

    [Fact]
    public void Fuels_give_the_published_heat_carbon_and_cost()
    {
        Dictionary<string, double> computed = Fuels();
        ClimateTable.Check("climate-fuels", computed);

        // The shipped propane, by the code's table of properties: 91,502 Btu/gal.
        FuelProperties shipped = ClimateLibrary.Fuel("propane");
        double stoichiometric = computed["stoichiometric carbon dioxide kg/gal"];
        Assert.Equal("gal", shipped.SaleUnit);
        Assert.Equal(91502 * UnitConstants.JoulesPerBtu / 1e6, shipped.HeatMegajoulesPerUnit, 0.01);
        Assert.Equal(stoichiometric, shipped.CarbonDioxideKilogramsPerUnit, 0.005 * stoichiometric);
        Assert.Equal("kWh", ClimateLibrary.Fuel("electricity").SaleUnit);
        Assert.Equal("therm", ClimateLibrary.Fuel("natural-gas").SaleUnit);
        Assert.Equal(HeatPump.CoefficientOfPerformance(28), ClimateLibrary.Fuel("electricity-heat-pump").WaterHeaterEfficiency, 0.05);
    }

    internal static Dictionary<string, double> Fuels()
    {
        var propane = new FuelProperties("gal", 91500 * UnitConstants.JoulesPerBtu / 1e6, 0.091 * 62.87, 0.9, 0.9);
        var power = new FuelProperties("kWh", 3413 * UnitConstants.JoulesPerBtu / 1e6, 0, 1, 1);
        double stoichiometric = 4.20 * 0.45359237 * 3
            * (UnitConstants.AtomicWeight.Carbon + (2 * UnitConstants.AtomicWeight.Oxygen))
            / ((3 * UnitConstants.AtomicWeight.Carbon) + (8 * UnitConstants.AtomicWeight.Hydrogen));
        double million = FuelProperties.MegajoulesPerMillionBtu;
        return new Dictionary<string, double>
        {
            ["carbon dioxide kg/gal"] = propane.CarbonDioxideKilograms(1),
            ["stoichiometric carbon dioxide kg/gal"] = stoichiometric,
            ["electricity of a gallon kWh"] = power.UnitsFor(propane.HeatMegajoulesPerUnit, 1),
            ["break-even without efficiency $/gal"] = propane.BreakEvenPrice(1, power, 1, 0.1301),
            ["useful heat of a gallon Btu"] = propane.UsefulMegajoulesPerUnit(0.9) * 1e6 / UnitConstants.JoulesPerBtu,
            ["useful electricity of a gallon kWh"] = power.UnitsFor(propane.UsefulMegajoulesPerUnit(0.9), 1),
            ["break-even with efficiency $/gal"] = propane.BreakEvenPrice(0.9, power, 1, 0.1301),
            ["gallons per million Btu"] = propane.UnitsFor(million, 1),
            ["propane per million Btu $"] = 1.50 * propane.UnitsFor(million, 1),
            ["kilowatt hours per million Btu"] = power.UnitsFor(million, 1),
            ["electricity per million Btu $"] = 0.08 * power.UnitsFor(million, 1),
        };
    }

    [Fact]
    public void Useful_power_becomes_sale_units_an_hour()
    {
        FuelProperties propane = ClimateLibrary.Fuel("propane");
        double units = propane.UnitsPerHour(12000, propane.WaterHeaterEfficiency);
        Assert.Equal(12 * 3.6, units * propane.UsefulMegajoulesPerUnit(propane.WaterHeaterEfficiency), 9);
    }

    [Fact]
    public void Blower_forms_agree_within_2_percent()
    {
        // Own calculation: 100 scfm, 530 °R, 14.7 to 22.7 psia, ideal: 3.01 hp in the US form, 2.97 in SI.
        double us = MovingAirAndWater.IdealBlowerHorsepower(100, 530, 14.7, 22.7);
        double kilogramsPerSecond = 100 * 0.0283168466 * 1.2 / 60;
        double watts = MovingAirAndWater.BlowerPowerWatts(
            kilogramsPerSecond, (530 / 1.8) - 273.15, 14.7 * 6.894757, 22.7 * 6.894757, 1);
        Assert.Equal(3.01, us, 0.01);
        Assert.Equal(us, watts / 745.7, 0.02 * us);
    }

    [Fact]
    public void Pump_power_is_weight_times_head_over_efficiency()
    {
        // 3,600 L/h is a litre a second: 0.998 kg/s x 9.80665 m/s2 x 3 m / 0.3.
        Assert.Equal(97.87, MovingAirAndWater.PumpPowerWatts(3600, 3, 0.3), 0.01);
        Assert.Equal(9.787 + 3.5, MovingAirAndWater.DiffuserPressureKilopascal(1, 3.5), 0.001);
    }

    [Fact]
    public void A_power_failure_leaves_17_minutes_of_oxygen_and_a_night_of_warmth()
    {
        // Own calculations.
        Assert.Equal(17.5, PowerOutage.MinutesToOxygen(1000, 40, 300, 6.5, 3.0), 12);
        double hours = PowerOutage.CoolingTimeConstantHours(2500, 12);
        Assert.Equal(242.2, hours, 0.05);
        Assert.Equal(26.46, PowerOutage.TemperatureAfter(27, 5, hours, 6), 0.02);
        Assert.Equal(25.94, PowerOutage.TemperatureAfter(27, 5, hours, 12), 0.02);
        Assert.Equal(24.92, PowerOutage.TemperatureAfter(27, 5, hours, 24), 0.02);
    }

    [Fact]
    public void Sodium_of_the_top_up_builds_up_in_a_closed_loop()
    {
        // Own calculation: 12 m3, 400 L/d at 30 mg/L, start 30, no uptake.
        Assert.Equal(60, SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12000, 0, 30), 10);
        Assert.Equal(120, SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12000, 0, 90), 10);
        Assert.Equal(210, SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12000, 0, 180), 10);
        Assert.Equal(90, SaltBuildUp.DaysToLimit(30, 120, 30, 400, 12000, 0), 10);

        double days = SaltBuildUp.DaysToLimit(30, 100, 30, 400, 12000, 40);
        Assert.Equal(100, SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12000, 40, days), 9);
        Assert.Equal(double.PositiveInfinity, SaltBuildUp.DaysToLimit(30, 400, 30, 400, 12000, 40));
    }

    [Fact]
    public void A_tomato_loop_without_uptake_reaches_20_millimolar_only_in_little_water()
    {
        // Bound from a published sodium balance of closed-loop tomato: 2 mM water, 130 L/m2 taken up, at most about 20 mM.
        const double Sodium = 22.990;
        double at14 = SaltBuildUp.MilligramsPerLitreAfter(2 * Sodium, 2 * Sodium, 130, 14.44, 0, 1);
        Assert.Equal(20 * Sodium, at14, 0.1 * Sodium);
        Assert.True(SaltBuildUp.MilligramsPerLitreAfter(2 * Sodium, 2 * Sodium, 130, 20, 0, 1) < 20 * Sodium);
    }

    [Fact]
    public void Engineering_units_convert_as_defined()
    {
        double btuPerHour = UnitConstants.JoulesPerBtu / UnitConstants.SecondsPerHour;
        Assert.Equal(5.678, btuPerHour / (0.3048 * 0.3048) * 1.8, 0.001 * 5.678);
        Assert.Equal(HouseHeatLoss.AirHeatWattHoursPerCubicMetreKelvin,
            0.018 * btuPerHour * 1.8 / (0.3048 * 0.3048 * 0.3048), 0.001 * 0.335);
        Assert.Equal(105.5, ClimateLibrary.Fuel("natural-gas").HeatMegajoulesPerUnit, 0.1);
    }
}
