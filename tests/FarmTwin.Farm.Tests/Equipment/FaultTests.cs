using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Equipment;

/// <summary>Single faults: what each breaks, who finds it, that every ledger closes whatever fails.</summary>
public class FaultTests(ITestOutputHelper output)
{
    private static readonly Dictionary<string, FaultEvent> EveryFault = new(StringComparer.Ordinal)
    {
        ["mains-cut"] = new MainsCut { Day = 2, Hour = 20, RepairAfterHours = 5 },
        ["pump-fails"] = new PumpFails { Day = 2, Hour = 20, Pipe = "to-tank-1" },
        ["blower-fails"] = new BlowerFails { Day = 2, Hour = 20, Blower = "main" },
        ["water-heater-fails"] = new HeaterFails { Day = 2, Heater = "water", RepairAfterHours = 40 },
        ["air-heater-fails"] = new HeaterFails { Day = 2, RepairAfterHours = 40 },
        ["lamp-fails"] = new LampFails { Day = 2, Lamp = "rail" },
        ["nursery-dark"] = new LampFails { Day = 2 },
        ["lamp-timer-fails"] = new LampTimerFails { Day = 2, Lamp = "rail", RepairAfterHours = 40 },
        ["valve-stuck-open"] = new ValveSticks { Day = 2, Valve = "coupling", FlowLitresPerHour = 800, RepairAfterHours = 40 },
        ["air-line-clogs"] = new AirLineClogs { Day = 2, Basin = "tank-1", LostShare = 0.9, OverDays = 1 },
        ["tank-blocked"] = new SiphonSticks { Day = 2, Basin = "tank-1", RepairAfterHours = 30 },
        ["filter-blocked"] = new SiphonSticks { Day = 2, Basin = "filter", RepairAfterHours = 6 },
        ["lane-empty"] = new SiphonSticks { Day = 2, Basin = "lane-1", Leaves = DrainFailure.Empty, RepairAfterHours = 30 },
        ["tank-empty"] = new SiphonSticks { Day = 2, Basin = "tank-1", Leaves = DrainFailure.Empty, RepairAfterHours = 30 },
        ["leak"] = new Leak { Day = 2, Basin = "fish-sump", LitresPerHour = 25, RepairAfterHours = 48 },
        ["lane-leaks-dry"] = new Leak { Day = 2, Basin = "lane-2", LitresPerHour = 900, RepairAfterHours = 48 },
        ["float-valve-shut"] = new FloatValveFails { Day = 2, Basin = "fish-sump", Sticks = FloatValveFailure.Shut, RepairAfterHours = 60 },
        ["float-valve-open"] = new FloatValveFails { Day = 2, Basin = "plant-sump", Sticks = FloatValveFailure.Open, RepairAfterHours = 20 },
    };

    public static TheoryData<string> Names => [.. EveryFault.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_ledger_closes_and_nothing_is_negative_whatever_fails(string name)
    {
        FarmDescription farm = FaultFarms.Stocked().With(name, EveryFault[name]);
        Season season = Farms.Start(farm with { Pipes = farm.Pipes.With("to-tank-1", p => p with { DrainBackLitres = 60 }) }, 6);
        for (int day = 1; day <= 6; day++)
        {
            season.Advance(day * FaultFarms.Day);
            LedgerLawTests.AssertSane(season, day);
        }

        LedgerLawTests.AssertClosed(season);
        Fault fault = Assert.Single(season.State.Faults);
        Assert.False(fault.IsOpen);
        Assert.Equal(name, fault.Name);
        output.WriteLine($"{name}: {fault.Where}, found by '{fault.FoundBy}' after {(fault.FoundSeconds - fault.BeganSeconds) / 60} min, mended after "
            + $"{(fault.MendedSeconds - fault.BeganSeconds) / 60} min; lowest oxygen {fault.LowestOxygen[0]:0.0}, died {fault.Died.Sum():0.0}, "
            + $"spilled {fault.SpilledLitres:0}, leaked {fault.LeakedLitres:0} L, plants at risk {fault.PlantsAtRisk:0}, rows {season.Record.Faults.Rows.RowCount}");
    }

    [Fact]
    public void Who_attends_mends_what_can_be_seen_one_after_another_and_the_rest_stays()
    {
        FarmDescription farm = FaultFarms.Stocked()
            .With("blower", new BlowerFails { Day = 2, Hour = 8, Blower = "main" })
            .With("lamp", new LampFails { Day = 2, Hour = 8, Lamp = "rail" })
            .With("drip", new Leak { Day = 2, Hour = 8, Basin = "fish-sump", LitresPerHour = 2 });
        Season season = Farms.Start(farm, 5);
        season.Advance((3 * FaultFarms.Day) + (7 * FaultFarms.Hour));
        Fault blower = season.State.Faults[0];
        Fault lamp = season.State.Faults[1];
        Assert.Equal(season.NowSeconds, blower.FoundSeconds);
        season.AdvanceToEnd();
        Assert.Equal(blower.FoundSeconds + (30 * 60), blower.MendedSeconds);
        Assert.Equal(lamp.FoundSeconds + (60 * 60), lamp.MendedSeconds);
        Assert.True(season.State.Faults[2].IsOpen);
        Assert.True(season.State.Faults[2].FoundSeconds < 0);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void A_leak_behind_a_float_valve_shows_on_the_water_meter_and_in_the_nitrate_alone()
    {
        FarmDescription farm = FaultFarms.Stocked();
        Season tight = Farms.Run(farm, 20);
        Season leaking = Farms.Run(farm.With("leak", new Leak { Day = 2, Basin = "fish-sump", LitresPerHour = 8 }), 20);
        double more = leaking.State.Totals.SourceLitres - tight.State.Totals.SourceLitres;
        output.WriteLine($"leaked {leaking.State.Totals.LeakedLitres:0} L, {more:0} L more let in; nitrate {Farms.Days(tight, "nitrate_fish_loop_mgN_per_L")[^1]:0.0} and "
            + $"{Farms.Days(leaking, "nitrate_fish_loop_mgN_per_L")[^1]:0.0} mg N/L");
        Assert.Equal(8 * ((18 * 24) - 9), leaking.State.Totals.LeakedLitres, 1.0);
        Assert.Equal(leaking.State.Totals.LeakedLitres, more, leaking.State.Totals.LeakedLitres * 0.02);
        Assert.True(leaking.State.Faults[0].IsOpen);
        Assert.Equal(leaking.State.Basins.Litres[leaking.Parts.BasinIndex("fish-sump")], tight.State.Basins.Litres[tight.Parts.BasinIndex("fish-sump")], 30.0);
        Assert.True(Farms.Days(leaking, "nitrate_fish_loop_mgN_per_L")[^1] < Farms.Days(tight, "nitrate_fish_loop_mgN_per_L")[^1] * 0.9);
    }

    [Fact]
    public void Water_that_drains_back_floods_a_small_sump_unless_a_check_valve_holds_it()
    {
        // Three tanks let 170 L each back into a sump with 400 L of freeboard.
        Season flooded = Farms.Run(Draining(checkValve: false), 4);
        Season held = Farms.Run(Draining(checkValve: true), 4);
        output.WriteLine($"spilled {flooded.State.Totals.SpilledLitres:0} L without, {held.State.Totals.SpilledLitres:0} with check valves; "
            + $"more source water {flooded.State.Totals.SourceLitres - held.State.Totals.SourceLitres:0} L");
        Assert.InRange(flooded.State.Totals.SpilledLitres, 80, 130);
        Assert.Equal(0, held.State.Totals.SpilledLitres, 1e-6);
        Assert.True(flooded.State.Totals.SourceLitres > held.State.Totals.SourceLitres + 50);

        static FarmDescription Draining(bool checkValve)
        {
            FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 2, Hour = 20, RepairAfterHours = 1 });
            return farm with
            {
                Pipes = farm.Pipes.ToDictionary(p => p.Key, p => p.Key.StartsWith("to-tank", StringComparison.Ordinal)
                    ? p.Value with { DrainBackLitres = 170, CheckValve = checkValve }
                    : p.Value),
            };
        }
    }

    [Fact]
    public void A_clogging_air_line_starves_its_tank_slowly_and_no_other()
    {
        Season season = Farms.Run(FaultFarms.Stocked(70, 300).With("clog", new AirLineClogs { Day = 2, Basin = "tank-1", LostShare = 0.95, OverDays = 4, RepairAfterHours = 200 }), 7);
        output.WriteLine($"{season.Oxygen("tank-1"):0.0}, {season.Oxygen("tank-2"):0.0} mg/L");
        Assert.True(season.Oxygen("tank-1") < season.Oxygen("tank-2") - 0.5);
        Assert.True(season.Oxygen("tank-2") > 4.5);
    }

    [Fact]
    public void A_stuck_valve_does_not_follow_its_setting()
    {
        FarmDescription farm = FaultFarms.Stocked().With("stuck", new ValveSticks { Day = 1, Valve = "coupling", FlowLitresPerHour = 300, RepairAfterHours = 72 });
        Season season = Farms.Start(farm, 6);
        season.Advance(2 * FaultFarms.Day);
        season.Apply(new SetValve { Day = 2, Valve = "coupling", FlowLitresPerHour = 0 });
        season.Advance(3 * FaultFarms.Day);
        Assert.Equal(300, Farms.Days(season, "exchange_L_per_h")[2], 1e-9);
        season.AdvanceToEnd();
        Assert.Equal(0, Farms.Days(season, "exchange_L_per_h")[5], 1e-9);
    }

    [Fact]
    public void A_fault_of_a_part_that_does_not_exist_is_refused()
    {
        Season season = Farms.Start(FaultFarms.Stocked(), 2);
        Assert.Throws<DescriptionException>(() => season.Apply(new PumpFails { Day = 0, Pipe = "nowhere" }));
        Assert.Throws<DescriptionException>(() => season.Apply(new PumpFails { Day = 0, Pipe = "tank-1-out" }));
        Assert.Throws<DescriptionException>(() => season.Apply(new BlowerFails { Day = 0, Blower = "nowhere" }));
        Assert.Throws<DescriptionException>(() => season.Apply(new FloatValveFails { Day = 0, Basin = "tank-1", Sticks = FloatValveFailure.Shut }));
        Assert.Throws<DescriptionException>(() => season.Apply(new Leak { Day = 0, Basin = "nowhere", LitresPerHour = 1 }));
    }
}
