using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Farm.Water;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Equipment;

/// <summary>A cut of the mains, driven through whole seasons: what stops, how fast, what a backup does.</summary>
public class OutageTests(ITestOutputHelper output)
{
    public static TheoryData<string> Rows => [.. PublishedTable.Read("equipment-outage").Rows.Select(r => r["name"])];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Oxygen_falls_as_the_closed_form_says(string name)
    {
        IReadOnlyDictionary<string, string> row = PublishedTable.Read("equipment-outage").Rows.Single(r => r["name"] == name);
        double grams = PublishedTable.Number(row, "fish_kilograms") * PublishedTable.Number(row, "use") / 1000;
        Season season = Farms.Start(FaultFarms.Tank(PublishedTable.Number(row, "volume_litres"), grams), 2);
        long cut = FaultFarms.Day + (13 * FaultFarms.Hour) + 600;
        season.Advance(cut);
        season.Apply(new MainsCut { Day = 1 });
        double from = double.NaN;
        double before = season.Oxygen("tank");
        Assert.True(before > PublishedTable.Number(row, "from"), $"starts at {before}");
        for (int minute = 1; ; minute++)
        {
            season.Advance(cut + (minute * 60));
            double now = season.Oxygen("tank");
            from = Crossing(PublishedTable.Number(row, "from"), from);
            double to = Crossing(PublishedTable.Number(row, "to"), double.NaN);
            if (!double.IsNaN(to))
            {
                output.WriteLine($"{name}: {to - from:0.00} min, closed form {PublishedTable.Number(row, "minutes")}");
                Assert.Equal(PublishedTable.Number(row, "minutes"), to - from, 0.3);
                return;
            }

            before = now;

            double Crossing(double level, double known) =>
                double.IsNaN(known) && now <= level ? minute - ((level - now) / (before - now)) : known;
        }
    }

    [Fact]
    public void Water_without_its_heater_cools_as_the_closed_form_says()
    {
        // Own calculation: 2500 L that lose 12 W/K to air of 5 °C have a time constant of 242.2 h: 26.46 °C after 6 h, 25.94 after 12, 24.92 after 24.
        // The house follows the outside air and is not at 5 °C to the tenth: the closed form is carried from hour to hour with its air.
        WeatherNormalsDescription normals = Farms.FirstSeason.Site.Normals! with
        {
            DailyMaximumCelsius = Twelve(5), DailyMinimumCelsius = Twelve(5), MaximumSpreadKelvin = Twelve(0), MinimumSpreadKelvin = Twelve(0),
            RadiationMegajoules = Twelve(0.1),
        };
        FarmDescription farm = BareFarm.Of(
            new Dictionary<string, BasinDescription> { ["tank"] = BareFarm.Closed(BasinUse.FishTank, 2500, 27) with { WallWattsPerKelvin = 12 } },
            new Dictionary<string, PipeDescription>()) with
        {
            Site = Farms.FirstSeason.Site with { Normals = normals },
            House = Farms.FirstSeason.House with { AirHeater = null, InfiltrationPerHour = 10, Screen = false },
            WaterHeaters = new Dictionary<string, WaterHeaterDescription>
            {
                ["water"] = Farms.FirstSeason.WaterHeaters["water"] with { Basin = "tank", HoldCelsius = 27 },
            },
        };
        Season season = Farms.Start(farm, 4);
        season.Advance(2 * FaultFarms.Day);
        Assert.Equal(27, season.State.Basins.Celsius[0], 0.01);
        double heat = season.State.Totals.WaterHeatMegajoules;
        season.Apply(new MainsCut { Day = 2 });
        double constant = PowerOutage.CoolingTimeConstantHours(2500, 12);
        Assert.Equal(242.2, constant, 0.1);
        double exact = 27;
        foreach ((int hours, double celsius) in new[] { (6, 26.46), (12, 25.94), (24, 24.92) })
        {
            while (season.NowSeconds < (2 * FaultFarms.Day) + (hours * FaultFarms.Hour))
            {
                season.Advance(season.NowSeconds + FaultFarms.Hour);
                exact = PowerOutage.TemperatureAfter(exact, season.State.House.AirCelsius, constant, 1);
            }

            output.WriteLine($"{hours} h: {season.State.Basins.Celsius[0]:0.000} °C, closed form {celsius} in air of 5 °C, {exact:0.000} in the house's (now {season.State.House.AirCelsius:0.00})");
            Assert.Equal(exact, season.State.Basins.Celsius[0], 0.01);
            Assert.Equal(celsius, season.State.Basins.Celsius[0], 0.25);
            Assert.Equal(celsius, PowerOutage.TemperatureAfter(27, 5, constant, hours), 0.01);
        }

        Assert.Equal(heat, season.State.Totals.WaterHeatMegajoules);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void Everything_that_needs_power_stops_with_the_mains_and_comes_back_with_them()
    {
        FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 3, Hour = 20, RepairAfterHours = 2 });
        Season season = Farms.Start(farm, 5);
        season.Advance((3 * FaultFarms.Day) + (20 * FaultFarms.Hour));
        double electricity = Electricity(season);
        double heat = season.State.Totals.WaterHeatMegajoules + season.State.Totals.AirHeatMegajoules;
        season.Advance((3 * FaultFarms.Day) + (22 * FaultFarms.Hour) - 60);
        Assert.False(season.State.Equipment.MainsOn);
        Assert.Equal(electricity, Electricity(season));
        Assert.Equal(heat, season.State.Totals.WaterHeatMegajoules + season.State.Totals.AirHeatMegajoules);
        Fault fault = Assert.Single(season.State.Faults);
        int tank = season.Parts.BasinIndex("tank-1");
        output.WriteLine($"to 4, 3, 2 mg/L in {fault.MinutesTo[tank * 3]:0} / {fault.MinutesTo[(tank * 3) + 1]:0} / {fault.MinutesTo[(tank * 3) + 2]:0} min; lowest {fault.LowestOxygen[tank]:0.00}");
        Assert.True(fault.MinutesTo[tank * 3] < fault.MinutesTo[(tank * 3) + 1] && fault.MinutesTo[(tank * 3) + 1] < fault.MinutesTo[(tank * 3) + 2]);
        season.Advance(4 * FaultFarms.Day);
        Assert.True(season.State.Equipment.MainsOn);
        Assert.True(Electricity(season) > electricity);
        Assert.InRange(season.Oxygen("tank-1"), 4.5, 9);
        Assert.Equal((3 * FaultFarms.Day) + (22 * FaultFarms.Hour), fault.MendedSeconds);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void By_the_minute_from_the_cut_to_the_recovery_the_trace_shows_every_tank()
    {
        FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 3, Hour = 20, RepairAfterHours = 1 });
        Season season = Farms.Run(farm, 4);
        Engine.Recorder rows = season.Record.Faults.Rows;
        double[] seconds = rows.Column(0);
        Assert.Equal((3 * FaultFarms.Day) + (20 * FaultFarms.Hour), seconds[0]);
        for (int row = 1; row <= 60; row++)
        {
            Assert.Equal(60, seconds[row] - seconds[row - 1]);
        }

        double[] oxygen = rows.Column(rows.ColumnIndex("oxygen_tank-2_mg_per_L"));
        Assert.True(oxygen[30] < oxygen[0] - 1);
        Assert.Equal(oxygen[..61].Min(), season.State.Faults[0].LowestOxygen[season.Parts.BasinIndex("tank-2")], 0.3);
    }

    [Fact]
    public void A_battery_gives_its_air_at_once_and_for_as_long_as_its_charge_lasts()
    {
        // 600 Wh, half of it usable, 85 % to the pump of 60 W: 4.25 h.
        var battery = new BatteryAir { Basins = ["tank-1", "tank-2"], AirShare = 0.6, PowerWatts = 60, BatteryWattHours = 600 };
        FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 3, Hour = 20, RepairAfterHours = 6 }).WithBackup("battery", battery);
        Season season = Farms.Start(farm, 5);
        season.Advance((4 * FaultFarms.Day) - 60);
        output.WriteLine($"four hours on battery: {season.Oxygen("tank-1"):0.00}, {season.Oxygen("tank-2"):0.00}; without: {season.Oxygen("tank-3"):0.00} mg/L");
        Assert.True(season.Oxygen("tank-1") > 4);
        Assert.True(season.Oxygen("tank-3") < 2);
        season.Advance((4 * FaultFarms.Day) + (2 * FaultFarms.Hour));
        Assert.True(season.Oxygen("tank-1") < 4);
        Assert.Equal(4.25, season.State.Equipment.Backups[0].RanHours, 0.02);
        Operations.LoggedEvent empty = season.Log.Events.Single(e => e.What == "backup empty");
        Assert.Equal((3 * FaultFarms.Day) + (20 * FaultFarms.Hour) + (4.25 * FaultFarms.Hour), empty.Seconds, 1.0);

        // Twelve hours on the charger fill it up: the next cut finds it full.
        season.Advance(season.LengthSeconds);
        season.Apply(new MainsCut { Day = 5 });
        Assert.Equal(BackupPhase.Running, season.State.Equipment.Backups[0].Phase);
        Assert.Equal(0, season.State.Equipment.Backups[0].UsedSeconds, 1.0);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void A_generator_takes_the_pumps_and_blowers_after_its_start_and_makes_the_battery_stand_back()
    {
        FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 3, Hour = 20, RepairAfterHours = 6 })
            .WithBackup("battery", new BatteryAir { Basins = ["tank-1"], AirShare = 0.6, PowerWatts = 60, BatteryWattHours = 600 })
            .WithBackup("generator", new Generator { PowerKilowatts = 2, FuelHours = 3, StartsByItself = true, StartMinutes = 10 });
        Season season = Farms.Start(farm, 5);
        season.Advance((3 * FaultFarms.Day) + (21 * FaultFarms.Hour));
        Assert.Equal(BackupPhase.Ready, season.State.Equipment.Backups[0].Phase);
        Assert.Equal(10.0 / 60, season.State.Equipment.Backups[0].RanHours, 0.01);
        Assert.Equal(BackupPhase.Running, season.State.Equipment.Backups[1].Phase);
        Assert.True(season.Oxygen("tank-3") > 4.5);
        Assert.Equal(0, season.State.Totals.LampKilowattHours - LampsBefore(season), 1e-9);
        season.Advance((3 * FaultFarms.Day) + (23 * FaultFarms.Hour) + (20 * 60));
        Assert.Equal(BackupPhase.Empty, season.State.Equipment.Backups[1].Phase);
        Assert.Equal(BackupPhase.Running, season.State.Equipment.Backups[0].Phase);
        season.AdvanceToEnd();
        Assert.Contains(season.Log.Events, e => e.What == "backup filled" && e.Where == "generator");

        static double LampsBefore(Season season) => season.State.Totals.LampKilowattHours;
    }

    [Fact]
    public void A_generator_that_waits_for_a_person_starts_when_one_attends()
    {
        FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 3, Hour = 22, RepairAfterHours = 12 })
            .WithBackup("generator", new Generator { PowerKilowatts = 2, FuelHours = 8, StartMinutes = 5 });
        Season season = Farms.Start(farm, 5);
        season.Advance((4 * FaultFarms.Day) + (7 * FaultFarms.Hour) - 60);
        Assert.Equal(0, season.State.Equipment.Backups[0].Starts);
        season.Advance((4 * FaultFarms.Day) + (7 * FaultFarms.Hour) + (6 * 60));
        Assert.Equal(1, season.State.Equipment.Backups[0].Starts);
        Assert.Equal("morning round", season.State.Faults[0].FoundBy);
        season.AdvanceToEnd();
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void Oxygen_from_a_cylinder_keeps_fish_and_is_booked_as_it_dissolves()
    {
        var valve = new OxygenValve { Basins = ["tank-1", "tank-2", "tank-3"], GramsPerHour = 30, DissolvedShare = 0.4, CylinderKilograms = 0.18 };
        FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 3, Hour = 20, RepairAfterHours = 4 }).WithBackup("oxygen", valve);
        Season with = Farms.Run(farm, 5);
        Season without = Farms.Run(farm with { Backups = new Dictionary<string, BackupDescription>() }, 5);
        int tank = with.Parts.BasinIndex("tank-1");
        output.WriteLine($"lowest oxygen {with.State.Faults[0].LowestOxygen[tank]:0.00} with, {without.State.Faults[0].LowestOxygen[tank]:0.00} without");
        Assert.True(with.State.Faults[0].MinutesTo[(tank * 3) + 2] is double.NaN or > 100);
        Assert.True(without.State.Faults[0].MinutesTo[(tank * 3) + 2] < 100);

        // 0.18 kg at 90 g/h last two hours; 40 % of it dissolves.
        Assert.Equal(72, with.State.Books[FarmBooks.Oxygen].TotalInBy(Door.BackupOxygen), 0.1);
        LedgerLawTests.AssertClosed(with);
    }

    [Fact]
    public void A_season_saved_in_the_middle_of_an_outage_goes_on_bit_for_bit()
    {
        FarmDescription farm = FaultFarms.Stocked().With("cut", new MainsCut { Day = 3, Hour = 20, RepairAfterHours = 6 })
            .With("clog", new AirLineClogs { Day = 2, Basin = "tank-2", LostShare = 0.6, OverDays = 3 })
            .With("leak", new Leak { Day = 1, Basin = "fish-sump", LitresPerHour = 3 })
            .WithBackup("battery", new BatteryAir { Basins = ["tank-1"], AirShare = 0.6, PowerWatts = 60, BatteryWattHours = 300 });
        Season through = Farms.Run(farm, 5);
        Season season = Farms.Start(farm, 5);
        season.Advance((3 * FaultFarms.Day) + (20 * FaultFarms.Hour) + 1500);
        SeasonSnapshot saved = season.Save();
        Season equal = Farms.Start(farm, 5);
        equal.Restore(saved);
        equal.AdvanceToEnd();
        season.AdvanceToEnd();
        SnapshotLawTests.AssertSame(season, equal);
        SnapshotLawTests.AssertSame(through, season);
        Assert.Equal(through.Record.Faults.Rows.RowCount, equal.Record.Faults.Rows.RowCount);
        for (int row = 0; row < through.Record.Faults.Rows.RowCount; row++)
        {
            Assert.True(through.Record.Faults.Rows.Row(row).SequenceEqual(equal.Record.Faults.Rows.Row(row)), $"row {row} of the trace differs");
        }
    }

    [Fact]
    public void A_generator_wired_to_more_than_it_carries_is_refused()
    {
        FarmDescription farm = FaultFarms.Stocked().WithBackup("small", new Generator { PowerKilowatts = 0.5, FuelHours = 8, FeedsLamps = true });
        DescriptionException refused = Assert.Throws<DescriptionException>(() => Farms.Start(farm, 1));
        Assert.Contains("backups.small", refused.Message, StringComparison.Ordinal);
    }

    private static double Electricity(Season season) => season.State.Totals.PumpKilowattHours + season.State.Totals.BlowerKilowattHours
        + season.State.Totals.LampKilowattHours + season.State.Totals.NurseryKilowattHours;

    private static double[] Twelve(double value) => [.. Enumerable.Repeat(value, 12)];
}
