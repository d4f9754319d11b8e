using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Alarms;

/// <summary>Same seed, same alarms; a snapshot in the middle of an alarm; no allocation; the whole farm's box is no nuisance.</summary>
public class AlarmLawTests
{
    private const int Days = 40;

    private static readonly FarmDescription Farm = Watched();

    [Fact]
    public void The_same_seed_gives_the_same_alarms_whatever_the_step()
    {
        Season coarse = Farms.Run(Farm, Days, stepMinutes: 60);
        Season fine = Farms.Run(Farm, Days, stepMinutes: 30);
        AlarmIncident[] left = [.. coarse.State.Alarms.Incidents];
        AlarmIncident[] right = [.. fine.State.Alarms.Incidents];
        Assert.NotEmpty(left);
        Assert.Equal(left.Select(i => i.Point), right.Select(i => i.Point));

        // The truth itself moves a little with the step: at the slopes of water that is a few minutes.
        Assert.All(left.Zip(right), pair => Assert.InRange(pair.First.RaisedSeconds - pair.Second.RaisedSeconds, -1200, 1200));
    }

    [Fact]
    public void A_season_saved_in_the_middle_of_an_alarm_and_its_calls_goes_on_bit_for_bit()
    {
        Season through = Farms.Run(Farm, Days);
        long raised = through.State.Alarms.Incidents[0].RaisedSeconds;
        Season season = Farms.Start(Farm, Days);
        season.Advance(raised + 180);
        Assert.Equal(raised, season.State.Alarms.Incidents[0].RaisedSeconds);
        SeasonSnapshot saved = season.Save();
        season.AdvanceToEnd();
        Season equal = Farms.Start(Farm, Days);
        equal.Restore(saved);
        equal.AdvanceToEnd();
        SnapshotLawTests.AssertSame(season, equal);
        Assert.Equal(
            season.State.Alarms.Incidents.Select(i => (i.Point, i.RaisedSeconds, i.ArrivedSeconds, i.ReturnedSeconds)),
            equal.State.Alarms.Incidents.Select(i => (i.Point, i.RaisedSeconds, i.ArrivedSeconds, i.ReturnedSeconds)));
    }

    [Fact]
    public void Probes_and_alarms_allocate_nothing_in_a_step()
    {
        Season season = Farms.Start(Farm, 40);
        season.Advance(AlarmFarms.At(30, 0.5));
        long before = GC.GetAllocatedBytesForCurrentThread();
        season.Advance(AlarmFarms.At(30, 5.5));
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static FarmDescription Watched() => Farms.FirstSeason with
    {
        Probes = new Dictionary<string, ProbeDescription>
        {
            ["warmth"] = new() { Quantity = ProbeQuantity.WaterTemperature, Basin = "fish-sump" },
            ["pH"] = new() { Quantity = ProbeQuantity.PH, Basin = "fish-sump" },
            ["salt"] = new() { Quantity = ProbeQuantity.Conductivity, Basin = "plant-sump" },
            ["level"] = new() { Quantity = ProbeQuantity.Level, Basin = "plant-sump" },
            ["air"] = new() { Quantity = ProbeQuantity.AirTemperature },
        },
        Alarms = new Dictionary<string, AlarmDescription>
        {
            ["warmth"] = new WatchTemperature { Probe = "warmth", WhileFish = true },
            ["pH"] = new WatchPH { Probe = "pH" },
            ["salt"] = new WatchConductivity { Probe = "salt" },
            ["level"] = new WatchLevel { Probe = "level", Below = 0.5 },
        },
        People = new Dictionary<string, PersonDescription>
        {
            ["grower"] = new()
            {
                CallOrder = 1,
                OnSite = new Dictionary<string, WeeklyHoursDescription> { ["days"] = new() { FromHour = 6.75, UntilHour = 17.5 } },
                Phone = new Dictionary<string, WeeklyHoursDescription> { ["awake"] = new() { FromHour = 6, UntilHour = 22 } },
            },
        },
        Plan = Farms.FirstSeason.Plan.Append(new("off", new SetHeater { Day = 25, Hour = 20, Heater = "water", HoldCelsius = 5 }))
            .ToDictionary(StringComparer.Ordinal),
    };
}
