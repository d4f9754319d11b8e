namespace FarmTwin.Farm.Description;

/// <summary>The box that sounds alarms, phones them out and closes the coupling valve.</summary>
public sealed record AlarmBoxDescription
{
    /// <summary>Whether any alarm closes the coupling valve.</summary>
    [Input("failDecoupled", "Whether an alarm closes the coupling valve until all is well again")]
    public bool FailDecoupled { get; init; } = true;

    /// <summary>Whether it has a battery.</summary>
    [Input("battery", "Whether it has a battery of its own; without one it is dead while the mains are off")]
    public bool Battery { get; init; } = true;

    /// <summary>Whether it has a phone line of its own.</summary>
    [Input("ownLine", "Whether its phone line works while the mains are off; a router on the mains does not")]
    public bool OwnLine { get; init; } = true;

    /// <summary>Hours of quiet after which the valve is opened again by a ramp, h; the library's when left out.</summary>
    [Input("reopenAfter", "Quiet time, all alarms acknowledged and normal, after which the valve is opened again by the ramp; the library's when left out",
        Unit = "h", Low = 0, High = 720)]
    public double? ReopenAfterHours { get; init; }

    /// <summary>Minutes before the next person is phoned, min; the library's when left out.</summary>
    [Input("escalate", "Time before the next person of the phone tree is called; the library's when left out", Unit = "min", Low = 1, High = 240)]
    public double? EscalateMinutes { get; init; }

    /// <summary>Days between tests of the alarms, d; the library's when left out.</summary>
    [Input("test", "Time between tests of all alarms; the library's when left out", Unit = "d", Low = 1, High = 3660)]
    public double? TestEveryDays { get; init; }
}

/// <summary>A person of the farm.</summary>
public sealed record PersonDescription
{
    /// <summary>Place in the phone tree, 1 first; left out for somebody who is not called.</summary>
    [Input("call", "Place in the phone tree, 1 first; left out for somebody who is not called", Low = 1, High = 20)]
    public int? CallOrder { get; init; }

    /// <summary>Way to the farm, min.</summary>
    [Input("travel", "Time that the way to the farm takes", Unit = "min", Low = 0, High = 1440)]
    public double TravelMinutes { get; init; } = 20;

    /// <summary>When the person is on site.</summary>
    [Input("onSite", "When the person is on the farm")]
    public IReadOnlyDictionary<string, WeeklyHoursDescription> OnSite { get; init; } = new Dictionary<string, WeeklyHoursDescription>();

    /// <summary>When the person answers the phone; at any hour when left out.</summary>
    [Input("phone", "When the person answers the phone; at any hour when left out")]
    public IReadOnlyDictionary<string, WeeklyHoursDescription> Phone { get; init; } = new Dictionary<string, WeeklyHoursDescription>();

    /// <summary>Holidays: neither on site nor on the phone.</summary>
    [Input("away", "Holidays: neither on the farm nor on the phone")]
    public IReadOnlyDictionary<string, PeriodDescription> Away { get; init; } = new Dictionary<string, PeriodDescription>();
}

/// <summary>Hours of some days of the week.</summary>
public sealed record WeeklyHoursDescription
{
    /// <summary>Days of the week, 1 = Monday.</summary>
    [Input("days", "Days of the week, 1 = Monday", Unit = "1", Low = 1, High = 7)]
    public IReadOnlyList<double> Weekdays { get; init; } = [1, 2, 3, 4, 5, 6, 7];

    /// <summary>Clock hour at which they begin.</summary>
    [Input("from", "Clock hour at which they begin", Unit = "h", Low = 0, High = 24)]
    public double FromHour { get; init; }

    /// <summary>Clock hour at which they end.</summary>
    [Input("until", "Clock hour at which they end", Unit = "h", Low = 0, High = 24)]
    public double UntilHour { get; init; } = 24;

    /// <summary>Only from this day of the season on.</summary>
    [Input("firstDay", "Only from this day of the season on; from the start when left out", Unit = "d", Low = 0, High = 3660)]
    public double FirstDay { get; init; }

    /// <summary>Only until this day of the season.</summary>
    [Input("lastDay", "Only before this day of the season; to the end when left out", Unit = "d", Low = 0, High = 3660)]
    public double? LastDay { get; init; }
}
