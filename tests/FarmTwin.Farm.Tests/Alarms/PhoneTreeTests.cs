using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Alarms;

/// <summary>Who is called, who answers, when somebody stands there. Day 0 is Monday, 1 March 2027; times from the library: 1 min to dial, 5 to the next.</summary>
public class PhoneTreeTests
{
    private static readonly WeeklyHoursDescription Days = new() { Weekdays = [1, 2, 3, 4, 5], FromHour = 7, UntilHour = 17.5 };
    private static readonly WeeklyHoursDescription Awake = new() { FromHour = 7, UntilHour = 22 };

    [Fact]
    public void Somebody_on_site_hears_the_sounder()
    {
        AlarmIncident incident = Raised(1, 10, Person(1, 15, onSite: Days));
        Assert.Equal(-1, incident.FirstCallSeconds);
        After(5, incident.ArrivedSeconds - incident.RaisedSeconds);
    }

    [Fact]
    public void At_night_the_first_who_answers_drives_out()
    {
        // Both asleep, the third answers: 1 min, then two calls of 5 min, then 40 min on the road.
        AlarmIncident incident = Raised(1, 2, Person(1, 15, phone: Awake), Person(2, 25, phone: Awake), Person(3, 40));
        After(1, incident.FirstCallSeconds - incident.RaisedSeconds);
        Assert.Equal(2, incident.MissedCalls);
        Assert.Equal(2, incident.AnsweredBy);
        After((1 + 5 + 5), incident.AnsweredSeconds - incident.RaisedSeconds);
        After((1 + 5 + 5 + 40), incident.ArrivedSeconds - incident.RaisedSeconds);
    }

    [Fact]
    public void The_order_of_the_tree_counts_not_that_of_the_description()
    {
        AlarmIncident incident = Raised(1, 20, Person(2, 25), Person(1, 15));
        Assert.Equal(1, incident.AnsweredBy);
        After(1, incident.AnsweredSeconds - incident.RaisedSeconds);
    }

    [Fact]
    public void Where_nobody_answers_at_night_the_box_goes_on_until_somebody_wakes()
    {
        // From 02:00: rounds of two calls, 5 min each and 15 min of pause, until the phone is answered after 07:00.
        AlarmIncident incident = Raised(5, 2, Person(1, 15, phone: Awake), Person(2, 25, phone: Awake));
        Assert.InRange(incident.AnsweredSeconds, AlarmFarms.At(5, 7), AlarmFarms.At(5, 7.5));
        Assert.InRange(incident.MissedCalls, 22, 26);
    }

    [Fact]
    public void Who_comes_to_work_finds_the_alarm_that_nobody_answered()
    {
        // A farm without a phone tree, on a Saturday: found on Monday at seven.
        AlarmIncident incident = Raised(5, 2, new PersonDescription { OnSite = new Dictionary<string, WeeklyHoursDescription> { ["days"] = Days } });
        Assert.Equal(AlarmFarms.At(7, 7), incident.ArrivedSeconds);
        Assert.Equal(-1, incident.FirstCallSeconds);
    }

    [Fact]
    public void On_holiday_nobody_answers_and_nobody_is_there()
    {
        PersonDescription away = Person(1, 15, onSite: Days) with
        {
            Away = new Dictionary<string, PeriodDescription> { ["holiday"] = new() { FromDay = 1, UntilDay = 3 } },
        };
        AlarmIncident incident = Raised(1, 10, away, Person(2, 25));
        Assert.Equal(1, incident.AnsweredBy);
        After((1 + 5 + 25), incident.ArrivedSeconds - incident.RaisedSeconds);
    }

    [Fact]
    public void Low_priority_is_not_phoned_out()
    {
        FarmDescription farm = Farm(1, 2, Person(1, 15, onSite: Days));
        farm = farm with { Alarms = farm.Alarms.With("low water", a => a with { Priority = AlarmPriority.Low }) };
        AlarmIncident incident = AlarmFarms.Only(Farms.Run(farm, 3));
        Assert.Equal(-1, incident.FirstCallSeconds);
        Assert.Equal(AlarmFarms.At(1, 7), incident.ArrivedSeconds);
    }

    [Fact]
    public void Chores_are_missed_when_nobody_is_on_site_and_done_when_somebody_is()
    {
        FarmDescription farm = Farms.FirstSeason with
        {
            People = new Dictionary<string, PersonDescription> { ["grower"] = Person(1, 15, onSite: Days) },
        };
        Season season = Farms.Run(farm, 28);
        SortedDictionary<string, int> missed = season.State.Alarms.MissedChores;
        Assert.Equal(8, missed["morning round"]);
        Assert.True(missed["meal"] > 0);
        Assert.All(season.Log.Events.Where(e => e.What == "chore missed"), e => Assert.InRange(e.Seconds / UnitConstants.SecondsPerDay % 7, 5, 6));
        FarmDescription fed = farm with { Feeding = farm.Feeding with { ByFeeder = true } };
        Assert.False(Farms.Run(fed, 28).State.Alarms.MissedChores.ContainsKey("meal"));
    }

    [Fact]
    public void A_cut_of_the_mains_calls_somebody_who_sees_the_fault()
    {
        Season season = Cut(new AlarmBoxDescription());
        AlarmIncident incident = AlarmFarms.Only(season);
        Assert.InRange(incident.RaisedSeconds - AlarmFarms.At(1, 2), 10, 30);
        Assert.InRange(incident.ArrivedSeconds - AlarmFarms.At(1, 2), (1 + 15) * 60, (1 + 15 + 2) * 60);
        FarmTwin.Farm.Equipment.Fault fault = Assert.Single(season.State.Faults);
        Assert.Equal(incident.ArrivedSeconds, fault.FoundSeconds);
        Assert.Equal("person-0", fault.FoundBy);
    }

    [Fact]
    public void A_box_whose_line_needs_the_mains_dials_when_they_are_back()
    {
        AlarmIncident incident = AlarmFarms.Only(Cut(new AlarmBoxDescription { OwnLine = false }));
        Assert.InRange(incident.FirstCallSeconds, AlarmFarms.At(1, 6), AlarmFarms.At(1, 6.5));
    }

    [Fact]
    public void A_box_without_a_battery_says_nothing_of_a_cut_that_is_over() =>
        Assert.Empty(Cut(new AlarmBoxDescription { Battery = false }).State.Alarms.Incidents);

    // People are told at the end of the minute in which an alarm is raised.
    private static void After(int minutes, long seconds) => Assert.InRange(seconds, minutes * 60, (minutes * 60) + 59);

    private static Season Cut(AlarmBoxDescription box)
    {
        FarmDescription farm = AlarmFarms.Of(
            new Dictionary<string, ProbeDescription> { ["mains"] = new() { Quantity = ProbeQuantity.Mains } },
            new Dictionary<string, AlarmDescription> { ["power"] = new WatchMains { Probe = "mains" } }).With(
            new MainsCut { Day = 1, Hour = 2, RepairAfterHours = 4 });
        return Farms.Run(farm with { AlarmBox = box, People = new Dictionary<string, PersonDescription> { ["person-0"] = Person(1, 15) } }, 2);
    }

    private static PersonDescription Person(int call, double travel, WeeklyHoursDescription? onSite = null, WeeklyHoursDescription? phone = null) => new()
    {
        CallOrder = call,
        TravelMinutes = travel,
        OnSite = onSite is null ? new Dictionary<string, WeeklyHoursDescription>() : new Dictionary<string, WeeklyHoursDescription> { ["days"] = onSite },
        Phone = phone is null ? new Dictionary<string, WeeklyHoursDescription>() : new Dictionary<string, WeeklyHoursDescription> { ["hours"] = phone },
    };

    private static FarmDescription Farm(double day, double hour, params PersonDescription[] people) => AlarmFarms.LowWater().With(AlarmFarms.Lose(day, hour, 200)) with
    {
        People = people.Select((p, i) => (p, i)).ToDictionary(p => $"person-{p.i}", p => p.p, StringComparer.Ordinal),
    };

    private static AlarmIncident Raised(double day, double hour, params PersonDescription[] people) =>
        AlarmFarms.Only(Farms.Run(Farm(day, hour, people), day + 4));
}
