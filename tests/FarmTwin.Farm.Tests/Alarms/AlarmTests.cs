using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Alarms;

/// <summary>Delays, deadbands, latches, sensor faults, suppression, the coupling valve.</summary>
public class AlarmTests
{
    [Theory]
    [InlineData(60)]
    [InlineData(30)]
    public void An_alarm_comes_within_its_delay_and_a_minute_of_the_truth_at_any_step(double stepMinutes)
    {
        // 200 of 700 L are gone at 13:17.
        double hour = 13 + (17.0 / 60);
        Season season = Farms.Run(AlarmFarms.LowWater(onDelaySeconds: 120).With(AlarmFarms.Lose(1, hour, 200)), 2, stepMinutes: stepMinutes);
        AlarmIncident incident = AlarmFarms.Only(season);
        Assert.InRange(incident.RaisedSeconds - AlarmFarms.At(1, hour), 120, 120 + 60);
        Assert.InRange(season.Log.Events.Single(e => e.What == "alarm").Seconds - AlarmFarms.At(1, hour), 120, 120 + 60);
    }

    [Fact]
    public void A_dip_shorter_than_the_on_delay_raises_nothing()
    {
        FarmDescription farm = AlarmFarms.LowWater(onDelaySeconds: 3600).With(AlarmFarms.Lose(1, 13, 200), AlarmFarms.GiveBack(1, 13.5, 210));
        Assert.Empty(Farms.Run(farm, 2).State.Alarms.Incidents);
    }

    [Fact]
    public void An_alarm_returns_only_past_its_deadband_and_off_delay()
    {
        // Limit 0.80, deadband 0.05: 0.83 is not enough, 0.90 is, after ten minutes.
        FarmDescription farm = AlarmFarms.LowWater(offDelaySeconds: 600).With(
            AlarmFarms.Lose(1, 13, 200), AlarmFarms.GiveBack(1, 15, 0.115 * 700), AlarmFarms.GiveBack(1, 18, 0.08 * 700));
        Season season = Farms.Start(farm, 2);
        season.Advance(AlarmFarms.At(1, 17.9));
        Assert.Equal(-1, AlarmFarms.Only(season).ReturnedSeconds);
        season.AdvanceToEnd();
        Assert.InRange(AlarmFarms.Only(season).ReturnedSeconds - AlarmFarms.At(1, 18), 600, 660);
    }

    [Theory]
    [InlineData(false, AlarmState.ReturnedUnacknowledged)]
    [InlineData(true, AlarmState.LatchedUnacknowledged)]
    public void A_returned_alarm_waits_for_somebody_and_a_latched_one_says_so(bool latching, AlarmState expected)
    {
        FarmDescription farm = AlarmFarms.LowWater(latching: latching).With(AlarmFarms.Lose(1, 13, 200), AlarmFarms.GiveBack(1, 15, 210));
        Season season = Farms.Start(farm, 3);
        season.Advance(AlarmFarms.At(1, 20));
        Assert.Equal(expected, season.State.Alarms.States[0]);
        season.Advance(AlarmFarms.At(2, 8));
        Assert.Equal(AlarmState.Normal, season.State.Alarms.States[0]);
        Assert.Equal(AlarmFarms.At(2, 7), AlarmFarms.Only(season).ArrivedSeconds);
    }

    [Fact]
    public void A_probe_that_stands_still_is_a_sensor_fault_and_no_process_alarm_and_hides_what_it_cannot_see()
    {
        FarmDescription farm = AlarmFarms.LowWater().With(
            new ProbeDrifts { Day = 1, Hour = 9, Probe = "level", Stuck = true }, AlarmFarms.Lose(1, 12, 200));
        Season season = Farms.Start(farm, 3);
        season.Advance(AlarmFarms.At(1, 23));
        AlarmIncident incident = AlarmFarms.Only(season);
        Assert.Equal(AlarmCondition.SensorFault, season.Parts.Alarms.Points[incident.Point].Condition);
        double flat = season.Parts.Alarms.Probes[0].FlatLineHours * 3600;
        Assert.InRange(incident.RaisedSeconds - AlarmFarms.At(1, 9), flat, flat + 180);
        Assert.False(incident.IsFalse);

        // The morning round replaces it: now the lost water is seen.
        season.AdvanceToEnd();
        Assert.Equal(2, season.State.Alarms.Incidents.Count);
        Assert.Equal("low water low", season.Parts.Alarms.Points[season.State.Alarms.Incidents[1].Point].Name);
    }

    [Fact]
    public void An_alarm_that_drift_alone_raised_is_called_false_and_the_probe_is_put_right()
    {
        FarmDescription farm = AlarmFarms.LowWater().With(new ProbeDrifts { Day = 1, Probe = "level", LevelPerDay = -0.3 });
        Season season = Farms.Run(farm, 4);
        AlarmIncident incident = AlarmFarms.Only(season);
        Assert.True(incident.IsFalse);
        Assert.Equal(1, season.State.Probes.Calibrations[0]);
        Assert.Contains(season.Log.Events, e => e.What == "alarm attended" && e.Note.Contains("false alarm", StringComparison.Ordinal));
    }

    [Fact]
    public void An_alarm_is_silent_while_shelved_and_while_the_farm_has_no_fish()
    {
        FarmDescription farm = AlarmFarms.LowWater().With(AlarmFarms.Lose(1, 13, 200));
        Assert.Empty(Farms.Run(Changed(farm, a => a with { WhileFish = true }), 3).State.Alarms.Incidents);
        var shelved = new Dictionary<string, PeriodDescription> { ["works"] = new() { FromDay = 1, UntilDay = 2 } };
        Season season = Farms.Run(Changed(farm, a => a with { Shelved = shelved }), 3);
        Assert.InRange(AlarmFarms.Only(season).RaisedSeconds, AlarmFarms.At(2, 0), AlarmFarms.At(2, 0.1));
    }

    [Fact]
    public void Any_alarm_closes_the_coupling_valve_unless_it_or_the_box_is_told_not_to()
    {
        FarmDescription farm = Coupled(AlarmFarms.LowWater());
        Season closed = Farms.Run(farm, 2);
        Assert.Equal(0, closed.State.ValveFlow[0]);
        Assert.InRange(closed.Log.Events.Single(e => e.What == "decouple").Seconds - AlarmFarms.At(1, 13), 0, 120);
        Assert.Equal(300, Farms.Run(Changed(farm, a => a with { Decouples = false }), 2).State.ValveFlow[0]);
        Assert.Equal(300, Farms.Run(farm with { AlarmBox = new AlarmBoxDescription { FailDecoupled = false } }, 2).State.ValveFlow[0]);
    }

    [Fact]
    public void The_valve_opens_again_by_the_ramp_once_all_has_been_quiet()
    {
        FarmDescription farm = Coupled(AlarmFarms.LowWater());
        farm = farm with { Plan = farm.Plan.Append(new("back", AlarmFarms.GiveBack(1, 16, 250))).ToDictionary(StringComparer.Ordinal) };
        Season season = Farms.Start(farm, 30);
        season.Advance(AlarmFarms.At(2, 6));
        Assert.Equal(0, season.State.ValveFlow[0]);

        // Acknowledged on the morning of day 2; quiet from then on; twelve hours later is the morning of day 3.
        season.Advance(AlarmFarms.At(3, 8));
        Assert.Equal("couple again", Assert.Single(season.Log.Events, e => e.What.StartsWith("couple", StringComparison.Ordinal)).What);
        Assert.InRange(season.State.ValveFlow[0], 1, 299);
        season.AdvanceToEnd();
        Assert.Equal(300, season.State.ValveFlow[0], 1);
    }

    [Fact]
    public void An_oxygen_alarm_stops_feed_for_a_day_and_then_the_water_decides()
    {
        FarmDescription farm = Farms.FirstSeason with
        {
            Probes = new Dictionary<string, ProbeDescription> { ["oxygen"] = new() { Quantity = ProbeQuantity.Oxygen, Basin = "tank-1" } },
            Alarms = new Dictionary<string, AlarmDescription> { ["oxygen"] = new WatchOxygen { Probe = "oxygen", Below = 19, WhileFish = true } },
        };
        Season season = Farms.Run(farm, 30);
        long seen = season.State.Alarms.Incidents[0].ArrivedSeconds;
        LoggedEvent[] withheld = [.. season.Log.Events.Where(e => e.What == "meal withheld")];
        Assert.NotEmpty(withheld);
        Assert.All(withheld, e => Assert.InRange(e.Seconds - seen, 0, 24 * 3600));
        Assert.True(season.State.Husbandry.WithheldTankDays >= 1);
        Assert.True(season.State.Totals.FeedGrams > 0, "the tank's own oxygen is good");
    }

    [Fact]
    public void A_high_pH_that_never_returns_halves_the_feed_for_a_day_and_starves_no_fish()
    {
        FarmDescription farm = Farms.FirstSeason with
        {
            Probes = new Dictionary<string, ProbeDescription> { ["pH"] = new() { Quantity = ProbeQuantity.PH, Basin = "fish-sump" } },
            Alarms = new Dictionary<string, AlarmDescription> { ["pH"] = new WatchPH { Probe = "pH", Above = 5, WhileFish = true } },
        };
        Season season = Farms.Run(farm, 35);
        double quiet = Farms.Run(Farms.FirstSeason, 35).State.Totals.FeedGrams;
        long seen = season.State.Alarms.Incidents[0].ArrivedSeconds;
        Assert.DoesNotContain(season.Log.Events, e => e.What == "meal withheld");
        Assert.Contains(season.Log.Events, e => e.What == "meal cut");
        Assert.All(season.Log.Events.Where(e => e.What == "meal cut"), e => Assert.InRange(e.Seconds - seen, 0, 24 * 3600));
        Assert.InRange(season.State.Totals.FeedGrams / quiet, 0.85, 1);
    }

    [Theory]
    [InlineData("tank", ProbeQuantity.AirTemperature, "hangs in no basin")]
    [InlineData(null, ProbeQuantity.PH, "say in which basin")]
    public void A_probe_that_hangs_wrong_is_refused(string? basin, ProbeQuantity quantity, string why)
    {
        FarmDescription farm = AlarmFarms.Of(
            new Dictionary<string, ProbeDescription> { ["odd"] = new() { Quantity = quantity, Basin = basin } }, new Dictionary<string, AlarmDescription>());
        DescriptionException refused = Assert.Throws<DescriptionException>(() => Farms.Start(farm, 1));
        Assert.Contains("probes.odd", refused.Message, StringComparison.Ordinal);
        Assert.Contains(why, refused.Message, StringComparison.Ordinal);
    }

    private static FarmDescription Coupled(FarmDescription farm) => farm.With(
        new SetValve { Day = 0, Hour = 9, Valve = "coupling", FlowLitresPerHour = 300 }, AlarmFarms.Lose(1, 13, 300)) with
    {
        Coupling = new CouplingDescription { Valve = "coupling", FullFlowLitresPerHour = 300, Way = CouplingWay.Never },
    };

    private static FarmDescription Changed(FarmDescription farm, Func<AlarmDescription, AlarmDescription> change) =>
        farm with { Alarms = farm.Alarms.With("low water", change) };
}
