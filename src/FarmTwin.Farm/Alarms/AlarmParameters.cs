using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Alarms;

/// <summary>Default limits of a quantity, in the unit of its probe; the rate in that unit an hour. Null where the farm has no default.</summary>
public sealed record AlarmDefaults(
    double? Low, double? High, double? CriticalLow, double? CriticalHigh, double? RatePerHour, double Deadband, double OnDelaySeconds, double OffDelaySeconds);

/// <summary>Default limits and delays, and the numbers of the phone tree.</summary>
public sealed record AlarmParameters
{
    /// <summary>Default limits by quantity.</summary>
    public required IReadOnlyDictionary<ProbeQuantity, AlarmDefaults> Defaults { get; init; }

    /// <summary>How long a reading must be out of range before its probe counts as faulty, s.</summary>
    public required double SensorFaultOnDelaySeconds { get; init; }

    /// <summary>Period over which a rate of change is taken, h.</summary>
    public required double RatePeriodHours { get; init; }

    /// <summary>Time that the box sounds before it dials, s.</summary>
    public required double DialAfterSeconds { get; init; }

    /// <summary>Time before the next person is called, min.</summary>
    public required double EscalateAfterMinutes { get; init; }

    /// <summary>Pause before the phone tree is gone through again, min.</summary>
    public required double RoundPauseMinutes { get; init; }

    /// <summary>Time in which somebody on site is there, min.</summary>
    public required double SoundHeardMinutes { get; init; }

    /// <summary>Shortest stay of a person who was called, min.</summary>
    public required double VisitMinutes { get; init; }

    /// <summary>Quiet time before the coupling valve is opened again, h.</summary>
    public required double ReopenAfterHours { get; init; }

    /// <summary>Exchange at which the ramp takes up again, shares of the fish loop's water a day.</summary>
    public required double ReopenSharePerDay { get; init; }

    /// <summary>Time between tests, d.</summary>
    public required double TestEveryDays { get; init; }

    /// <summary>How long an alarm may cut the feed, h; after that the water itself decides.</summary>
    public required double FeedCutHours { get; init; }

    /// <summary>Error of a pH probe that a hand meter shows up.</summary>
    public required double NoticedErrorPH { get; init; }

    /// <summary>Error of a temperature probe that a hand meter shows up, K.</summary>
    public required double NoticedErrorKelvin { get; init; }

    /// <summary>Share of false alarms above which staff stop believing the box.</summary>
    public required double MostFalseShare { get; init; }

    /// <summary>Alarms a week above which staff stop listening.</summary>
    public required double MostPerWeek { get; init; }

    /// <summary>Reads them.</summary>
    public static AlarmParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new AlarmParameters
        {
            Defaults = new Dictionary<ProbeQuantity, AlarmDefaults>
            {
                [ProbeQuantity.WaterTemperature] = DefaultsOf(set, "water", ProbeQuantity.WaterTemperature),
                [ProbeQuantity.AirTemperature] = DefaultsOf(set, "air", ProbeQuantity.AirTemperature),
                [ProbeQuantity.PH] = DefaultsOf(set, "pH", ProbeQuantity.PH),
                [ProbeQuantity.Oxygen] = DefaultsOf(set, "oxygen", ProbeQuantity.Oxygen),
                [ProbeQuantity.Level] = DefaultsOf(set, "level", ProbeQuantity.Level),
                [ProbeQuantity.Mains] = DefaultsOf(set, "mains", ProbeQuantity.Mains),
                [ProbeQuantity.Conductivity] = DefaultsOf(set, "conductivity", ProbeQuantity.Conductivity),
            },
            SensorFaultOnDelaySeconds = set.Get("sensorFaultOnDelay", "s"),
            RatePeriodHours = set.Get("ratePeriod", "h"),
            DialAfterSeconds = set.Get("dialAfter", "s"),
            EscalateAfterMinutes = set.Get("escalateAfter", "min"),
            RoundPauseMinutes = set.Get("roundPause", "min"),
            SoundHeardMinutes = set.Get("soundHeard", "min"),
            VisitMinutes = set.Get("visit", "min"),
            ReopenAfterHours = set.Get("reopenAfter", "h"),
            ReopenSharePerDay = set.Get("reopenShare", "1/d"),
            TestEveryDays = set.Get("testEvery", "d"),
            FeedCutHours = set.Get("feedCut", "h"),
            NoticedErrorPH = set.Get("noticedErrorPH", "1"),
            NoticedErrorKelvin = set.Get("noticedErrorTemperature", "K"),
            MostFalseShare = set.Get("mostFalseShare", "1"),
            MostPerWeek = set.Get("mostPerWeek", "1/wk"),
        };
    }

    private static AlarmDefaults DefaultsOf(ParameterSet set, string prefix, ProbeQuantity quantity)
    {
        string unit = ProbeQuantities.Unit(quantity);
        string difference = ProbeQuantities.DifferenceUnit(quantity);
        return new AlarmDefaults(
            Optional("Low", unit), Optional("High", unit), Optional("CriticalLow", unit), Optional("CriticalHigh", unit),
            Optional("Rate", $"{difference}/h"), set.Get(prefix + "Deadband", difference), set.Get(prefix + "OnDelay", "s"), set.Get(prefix + "OffDelay", "s"));

        double? Optional(string name, string of) => set.Has(prefix + name) ? set.Get(prefix + name, of) : null;
    }
}
