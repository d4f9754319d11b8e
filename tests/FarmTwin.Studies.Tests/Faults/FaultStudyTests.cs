using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Studies.Tests.Faults;

/// <summary>Everything fails in turn at its worst hour; a backup of the size found saves, the size below does not.</summary>
public sealed class FaultStudyTests
{
    private const double OutageHours = 5;

    // The teaching farm: small, one tank, so that the whole study takes seconds.
    private static readonly FarmDescription Farm =
        ScenarioReader.Read<FarmDescription>(Path.Combine(ShippedScenarios.Root, "scenarios", "causes", "grown.json")).Value with
        {
            LengthDays = 20,
            People = new Dictionary<string, PersonDescription>
            {
                ["grower"] = new() { OnSite = new Dictionary<string, WeeklyHoursDescription> { ["every day"] = new() { FromHour = 6.5, UntilHour = 17.5 } } },
            },
        };

    private static readonly FaultStudyResult Study = FaultStudy.Play(Farm, ShippedLibrary.Library, 1, OutageHours, threads: 2);

    private static FaultRow Row(string key) => Study.Rows.Single(r => r.Case.Key == key);

    [Fact]
    public void Every_blower_pump_heater_lamp_group_float_valve_and_the_mains_fail_once_and_the_rest_is_named()
    {
        string[] keys = [.. Study.Rows.Select(r => r.Case.Key).Concat(Study.NotTried)];
        Assert.Contains("mains", keys);
        Assert.All(Farm.Blowers.Keys, b => Assert.Contains($"blower-{b}", keys));
        Assert.All(Farm.Pipes.Where(p => p.Value.Drive == PipeDrive.Pump), p => Assert.Contains($"pump-{p.Key}", keys));
        Assert.All(Farm.WaterHeaters.Keys, h => Assert.Contains($"heater-{h}", keys));
        Assert.All(Farm.Basins.Where(b => b.Value.FloatValve), b => Assert.Contains($"float-{b.Key}-open", keys));
        Assert.Contains("heater-air", keys);
        Assert.Equal(keys.Length, keys.Distinct().Count());
    }

    [Fact]
    public void Where_nobody_is_described_everything_is_tried_over_a_weekend_too()
    {
        FarmDescription alone = FaultStudy.Sound(Farm with { People = new Dictionary<string, PersonDescription>() });
        var season = new Season(alone, ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        (IReadOnlyList<FaultCase> cases, _) = FaultCases.Of(alone, new WorstHours(season), OutageHours, new Dictionary<string, double>());
        Assert.All(cases.Where(c => c.UnattendedHours == 0 && c.Key != "mains"), c => Assert.Contains(cases, w => w.Key == $"{c.Key}-weekend" && w.UnattendedHours == FaultCases.WeekendHours));
        Assert.DoesNotContain(Study.Rows, r => r.Case.UnattendedHours > 0);
    }

    [Fact]
    public void Ledgers_close_after_every_branch() => Assert.All(Study.Rows, r => Assert.InRange(r.WorstClosure, 0, 1e-9));

    [Fact]
    public void The_result_is_the_same_for_any_number_of_threads()
    {
        FaultStudyResult one = FaultStudy.Play(Farm, ShippedLibrary.Library, 1, OutageHours, threads: 1);
        Assert.Equal(Study.Rows.Select(r => r.Case.Key), one.Rows.Select(r => r.Case.Key));
        Assert.Equal(Study.Rows.Select(r => r.Harm), one.Rows.Select(r => r.Harm));
        Assert.Equal(Study.Rows.Select(r => r.Loss), one.Rows.Select(r => r.Loss));
        Assert.Equal(Study.Rows.SelectMany(r => r.Backups), one.Rows.SelectMany(r => r.Backups));
    }

    [Fact]
    public void The_worst_faults_stand_first()
    {
        double[] dead = [.. Study.Rows.Select(r => Math.Round(r.Harm.FishDied))];
        Assert.Equal(dead.OrderDescending(), dead);
        Assert.True(dead[0] > 0);
    }

    [Fact]
    public void A_tank_without_air_falls_to_three_about_as_fast_as_the_oxygen_that_it_holds_over_what_its_fish_take()
    {
        // Closed form of the outage: t = V (C0 - 3) / M with the fish's use of the start (climate-energy 1.16); films and surface make the rest.
        FaultRow mains = Row("mains");
        var season = new Season(FaultStudy.Sound(Farm), ShippedLibrary.Library, 1);
        season.Advance(mains.Case.Hour.Seconds);
        season.Apply(mains.Case.Fault);
        FarmTwin.Farm.Equipment.Fault fault = season.State.Faults[^1];
        int tank = season.Parts.BasinIndex("tank");
        double litres = season.State.Basins.Litres[tank];
        double oxygen = season.State.Basins.MilligramsPerLitre(tank, Substance.Oxygen);
        double minutes = 60 * litres * (oxygen - 3) / 1000 / fault.FishOxygenGramsPerHour[tank];
        Assert.InRange(mains.Harm.MinutesTo3MgPerL!.Value / minutes, 0.7, 1.3);
    }

    [Fact]
    public void A_battery_of_the_size_found_saves_and_one_size_smaller_does_not()
    {
        FaultRow mains = Row("mains");
        BackupOption battery = mains.Backups.Single(b => b.Kind == "battery air");
        Assert.True(battery.Saves);
        FarmDescription sound = FaultStudy.Sound(Farm);
        double all = FarmTwin.Farm.Equipment.BlowerLoad.WattsOf(sound, "tank");
        double share = battery.Size / all;
        Assert.Equal(Math.Round(share / 0.05), share / 0.05, 1e-9);
        Assert.Equal(0, DeadWith(share, battery.Stored), 0.5);
        Assert.True(LowestWith(share, battery.Stored) >= 3);
        Assert.True(LowestWith(share - 0.05, 100 * battery.Stored) < 3);
        double halfAnHour = battery.Size * 0.5 / (0.5 * 0.85);
        Assert.True(LowestWith(share, battery.Stored - halfAnHour) < 3);

        double DeadWith(double air, double wattHours) => Play(air, wattHours).State.Faults[^1].Died.Sum();
        double LowestWith(double air, double wattHours)
        {
            Season season = Play(air, wattHours);
            return season.State.Faults[^1].LowestOxygen[season.Parts.BasinIndex("tank")];
        }

        Season Play(double air, double wattHours)
        {
            FarmDescription farm = sound with
            {
                Backups = new Dictionary<string, BackupDescription>
                {
                    ["battery"] = new BatteryAir { Basins = ["tank"], AirShare = air, PowerWatts = air * all, BatteryWattHours = wattHours },
                },
            };
            var season = new Season(farm, ShippedLibrary.Library, 1);
            season.Advance(mains.Case.Hour.Seconds);
            season.Apply(mains.Case.Fault);
            season.Advance(season.NowSeconds + (long)((OutageHours + 6) * UnitConstants.SecondsPerHour));
            return season;
        }
    }

    [Fact]
    public void A_longer_cut_asks_for_no_smaller_battery()
    {
        FaultStudyResult shorter = FaultStudy.Play(Farm, ShippedLibrary.Library, 1, 2, threads: 2);
        BackupOption small = shorter.Rows.Single(r => r.Case.Key == "mains").Backups.Single(b => b.Kind == "battery air");
        BackupOption large = Row("mains").Backups.Single(b => b.Kind == "battery air");
        Assert.True(small.Stored < large.Stored, $"{small.Stored} Wh for 2 h, {large.Stored} Wh for {OutageHours} h");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(17)]
    [InlineData(64)]
    public void The_smallest_step_that_saves_is_found(int needed)
    {
        int found = BackupSearch.Smallest(64, s => s >= needed);
        Assert.Equal(needed, found);
        Assert.Equal(0, BackupSearch.Smallest(needed - 1, s => s >= needed));
    }
}
