using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Energy;

/// <summary>Fuel tanks, heat by other ways, what the coupling costs.</summary>
public sealed class FuelTests
{
    private static readonly FuelTankDescription Tank = new()
    {
        CapacityLitres = 1500, InitialFillShare = 0.5, WaterHeaters = ["water"], AirHeater = true, OrderBelowShare = 0.3, LeadDays = 3,
    };

    private static FarmDescription Winter => Farms.FirstSeason with
    {
        Start = new DateOnly(2027, 1, 5),
        FuelTanks = new Dictionary<string, FuelTankDescription> { ["propane"] = Tank },
        Prices = Farms.FirstSeason.Prices! with
        {
            Fuels = new Dictionary<string, FuelPrice>
            {
                ["propane"] = new() { PerLitre = 2.5 / UnitConstants.LitresPerUsGallon },
                ["natural-gas"] = new() { PerKilowattHour = 0.05 },
            },
            ElectricityPerKilowattHour = 0.15,
        },
    };

    [Fact]
    public void A_heat_pump_follows_the_published_regression()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("climate-heat-pump").Rows)
        {
            double lift = PublishedTable.Number(row, "lift_K");
            Assert.Equal(PublishedTable.Number(row, "expected"), HeatPump.CoefficientOfPerformance(lift), PublishedTable.Number(row, "tolerance"));
        }

        Assert.Equal(HeatPump.CoefficientOfPerformance(60), HeatPump.CoefficientOfPerformance(80));
        Assert.Equal(3.2, HeatPump.CoefficientOfPerformance(3.2, 28), 12);
        Assert.True(HeatPump.CoefficientOfPerformance(3.2, 50) < 2.5);
    }

    [Fact]
    public void What_is_burnt_leaves_the_tank_and_deliveries_fill_it()
    {
        Season season = Farms.Run(Winter, 60);
        FarmTotals totals = season.State.Totals;
        double burnt = season.State.Fuel.BurntLitres[0];
        Assert.Equal((season.State.Operations.HeaterUnits.Sum() + totals.AirFuelUnits) * UnitConstants.LitresPerUsGallon, burnt, 1e-6 * burnt);
        Assert.Equal(750 + season.State.Fuel.DeliveredLitres[0] - burnt, season.State.Fuel.Litres[0], 1e-6);
        Assert.True(season.State.Fuel.Deliveries[0] >= 1);
        Assert.Equal(0, season.State.Fuel.HoursEmpty[0]);
        LoggedEvent order = season.Log.Events.First(e => e.What == "order fuel");
        LoggedEvent came = season.Log.Events.First(e => e.What == "fuel delivered");
        Assert.Equal(3, (came.Seconds / UnitConstants.SecondsPerDay) - (order.Seconds / UnitConstants.SecondsPerDay));
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void A_farm_whose_tank_never_runs_short_burns_what_it_burns_without_one()
    {
        Season with = Farms.Run(Winter with { FuelTanks = Winter.FuelTanks.With("propane", t => t with { CapacityLitres = 1e5, InitialFillShare = 1 }) }, 20);
        Season without = Farms.Run(Winter with { FuelTanks = new Dictionary<string, FuelTankDescription>() }, 20);
        Assert.Equal(without.State.Operations.HeaterUnits.Sum(), with.State.Operations.HeaterUnits.Sum());
        Assert.Equal(without.State.Totals.AirFuelUnits, with.State.Totals.AirFuelUnits);
        Assert.Equal(Farms.Days(without, "fish_water_C"), Farms.Days(with, "fish_water_C"));
    }

    [Fact]
    public void Missed_deliveries_run_it_out_the_water_cools_and_a_finding_says_so()
    {
        var plan = new Dictionary<string, PlannedEvent>(Winter.Plan)
        {
            ["storm"] = new NoDelivery { Day = 1, Tank = "propane", Deliveries = 3 },
        };
        FarmDescription farm = Winter with { Plan = plan };
        Season season = Farms.Run(farm, 60);
        Season well = Farms.Run(Winter, 60);
        Assert.Equal(3, season.State.Fuel.MissedDeliveries[0]);
        Assert.True(season.State.Fuel.HoursEmpty[0] > 24, $"{season.State.Fuel.HoursEmpty[0]} h");
        Assert.Contains(season.Log.Events, e => e.What == "fuel runs out");
        Assert.Contains(season.Log.Events, e => e.What == "fuel again");
        Assert.True(Farms.Days(season, "fish_water_lowest_C").Min() < Farms.Days(well, "fish_water_lowest_C").Skip(3).Min() - 5);
        Assert.True(season.State.Fuel.Litres[0] >= 0);
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        Assert.Contains(summary.Findings, f => f.Contains("ran out", StringComparison.Ordinal) && f.Contains("3 deliveries did not come", StringComparison.Ordinal));
        LedgerLawTests.AssertClosed(season);

        // Saved while empty and gone on with, bit for bit.
        Season halfway = Farms.Start(farm, 60);
        halfway.Advance(20 * UnitConstants.SecondsPerDay);
        Season branch = Farms.Start(farm, 60);
        branch.Restore(halfway.Save());
        branch.AdvanceToEnd();
        Assert.Equal(season.State.Fuel.Litres[0], branch.State.Fuel.Litres[0]);
        Assert.Equal(season.State.Fuel.HoursEmpty[0], branch.State.Fuel.HoursEmpty[0]);
    }

    [Fact]
    public void A_small_tank_that_freezes_down_holds_the_heaters_back()
    {
        FarmDescription farm = Winter with { FuelTanks = Winter.FuelTanks.With("propane", t => t with { CapacityLitres = 1e5, LargestKilowatts = 10 }) };
        Season season = Farms.Run(farm, 20);
        double[] water = Farms.Days(season, "water_heat_kWh");
        double[] air = Farms.Days(season, "air_heat_kWh");
        double[] burnt = [.. water.Zip(air, (w, a) => (w / 0.82) + (a / 0.8))];
        Assert.All(burnt, b => Assert.True(b <= (10 * 24) + 1e-6, $"{b} kWh of fuel"));
        Assert.True(burnt.Max() > 239);
    }

    [Fact]
    public void A_tank_of_another_fuel_or_shared_by_two_is_refused()
    {
        Assert.Contains("sold by the therm", Assert.Throws<DescriptionException>(() => Farms.Start(
            Winter with { FuelTanks = Winter.FuelTanks.With("propane", t => t with { Fuel = "natural-gas" }) }, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("another tank", Assert.Throws<DescriptionException>(() => Farms.Start(
            Winter with { FuelTanks = new Dictionary<string, FuelTankDescription> { ["a"] = Tank, ["b"] = Tank } }, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("burns electricity", Assert.Throws<DescriptionException>(() => Farms.Start(
            Winter with { WaterHeaters = Winter.WaterHeaters.With("water", h => h with { Fuel = "electricity" }) }, 1)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_heat_is_compared_by_four_ways_at_the_stated_prices()
    {
        Season season = Farms.Run(Winter, 30);
        EnergySummary energy = SeasonSummary.Of(season, ShippedLibrary.Library, "test").Energy;
        double heat = season.State.Totals.WaterHeatMegajoules + season.State.Totals.AirHeatMegajoules;
        HeatingWay propane = energy.Comparison["propane"];
        Assert.Equal(energy.Fuel, propane.Water + propane.Air, 1e-6 * energy.Fuel);
        Assert.Equal(energy.Fuel * 2.5, propane.Cost!.Value, 1e-6 * propane.Cost.Value);
        HeatingWay element = energy.Comparison["element"];
        Assert.Equal(heat / 3.6, element.Water + element.Air, 1e-6 * heat);
        HeatingWay pump = energy.Comparison["heatPump"];

        // January: 27 °C water by a flow of 42 °C out of air about -1 °C.
        Assert.InRange(pump.Efficiency!.Value, 2.3, 3.9);
        Assert.Equal((pump.Water + pump.Air) * 0.15, pump.Cost!.Value, 1e-9 * pump.Cost.Value);
        Assert.Equal(energy.Cost!.Value, propane.Cost.Value + (energy.KWh * 0.15), 1e-6 * energy.Cost.Value);
        HeatingWay gas = energy.Comparison["naturalGas"];
        Assert.Equal((gas.Water + gas.Air) * 0.05 * 105.4804 / 3.6, gas.Cost!.Value, 1e-6 * gas.Cost.Value);
        Assert.Equal(30, energy.ByMonth.Values.Sum(m => m.Days));
        Assert.Equal(energy.KWh, energy.ByMonth.Values.Sum(m => m.KWhByUse.Values.Sum()), 1e-6 * energy.KWh);
        Assert.Equal(energy.Fuel, energy.ByMonth.Values.Sum(m => m.WaterFuel + m.AirFuel), 1e-6 * energy.Fuel);
        double connected = (180 + 70 + 45 + (3 * 60) + 15 + (3 * 20) + (4 * 400) + (3 * 75)) / 1000.0;
        Assert.InRange(energy.PeakElectricKW!.Value, 1.5, connected + 1e-9);
    }

    [Fact]
    public void A_heat_pump_in_the_farm_draws_what_the_comparison_says()
    {
        FarmDescription farm = Winter with
        {
            FuelTanks = new Dictionary<string, FuelTankDescription>(),
            WaterHeaters = Winter.WaterHeaters.With("water", h => h with { Fuel = "electricity-heat-pump", Efficiency = null }),
        };
        Season season = Farms.Run(farm, 15);
        Assert.Equal(season.State.Totals.WaterHeatPumpKilowattHours, season.State.Operations.HeaterUnits.Sum(), 1e-9 * season.State.Operations.HeaterUnits.Sum());
        EnergySummary energy = SeasonSummary.Of(season, ShippedLibrary.Library, "test").Energy;
        Assert.Equal(season.State.Operations.HeaterUnits.Sum(), energy.KWhByUse["waterHeater"]);
        Assert.Equal(energy.KWh, energy.ByMonth.Values.Sum(m => m.KWhByUse.Values.Sum()), 1e-6 * energy.KWh);
    }

    [Fact]
    public void Coupled_the_heater_pays_for_the_plant_water_too()
    {
        var plan = new Dictionary<string, PlannedEvent>(Winter.Plan) { ["open"] = new SetValve { Day = 5, Valve = "coupling", FlowLitresPerHour = 800 } };
        FarmDescription open = Winter with { Plan = plan, Coupling = null, FuelTanks = new Dictionary<string, FuelTankDescription>() };
        Season coupled = Farms.Run(open, 25);
        Season apart = Farms.Run(open with { Plan = Winter.Plan }, 25);
        CouplingHeat coupling = SeasonSummary.Of(coupled, ShippedLibrary.Library, "test").Energy.Coupling!;
        Assert.Null(SeasonSummary.Of(apart, ShippedLibrary.Library, "test").Energy.Coupling);
        Assert.InRange(coupling.Hours, (20 * 24) - 10, 20 * 24);

        // What the coupled season burns more than the one apart is what went to the plants, less a fish loop that is a little cooler.
        double more = coupled.State.Totals.WaterHeatMegajoules - apart.State.Totals.WaterHeatMegajoules;
        Assert.InRange(coupling.SpentMJ, 0.8 * more, 1.3 * more);
        Assert.True(coupling.SpentMJ > 0.4 * coupling.HeaterMJ);
        Assert.Equal(coupling.SpentMJ / 0.82 / 96.54, coupling.Fuel, 0.001 * coupling.Fuel);
    }

    [Fact]
    public void Overlapping_lamps_add_their_light_and_their_hours_reach_from_first_to_last()
    {
        LampDescription lamp = Farms.FirstSeason.Lamps["rail"];
        FarmDescription one = Farms.FirstSeason with { Lamps = new Dictionary<string, LampDescription> { ["all"] = lamp with { Count = 4 } } };
        FarmDescription two = Farms.FirstSeason with
        {
            Lamps = new Dictionary<string, LampDescription> { ["a"] = lamp with { Count = 1 }, ["b"] = lamp with { Count = 3 } },
        };
        Assert.Equal(Farms.Days(Farms.Run(one, 3), "lamp_light_at_crop_mol_per_m2"), Farms.Days(Farms.Run(two, 3), "lamp_light_at_crop_mol_per_m2"), (x, y) => Math.Abs(x - y) < 1e-9);

        // A group over one lane alone gives that lane the same moles: the mean over all lit crop is the lane's share of them.
        FarmDescription lane = Farms.FirstSeason with { Lamps = new Dictionary<string, LampDescription> { ["lane"] = lamp with { Count = 4, Over = ["lane-1"] } } };
        FarmDescription both = lane with { Lamps = new Dictionary<string, LampDescription>(lane.Lamps) { ["rest"] = lamp with { Count = 4, Over = ["lane-2"] } } };
        double[] alone = Farms.Days(Farms.Run(lane, 3), "lamp_light_at_crop_mol_per_m2");
        double[] mean = Farms.Days(Farms.Run(both, 3), "lamp_light_at_crop_mol_per_m2");
        Assert.All(alone.Zip(mean), p => Assert.Equal(p.First, p.Second, 1e-9));
        Assert.Equal(new LampSchedule(3, 4), new LampSchedule(3, 1).Together(new LampSchedule(2, 4)));
    }
}
