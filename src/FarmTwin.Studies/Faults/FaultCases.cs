using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Studies.Faults;

/// <summary>Everything on a farm that is let fail in turn, each at its worst hour.</summary>
public static class FaultCases
{
    /// <summary>Hours that a weekend without anybody lasts: from Friday evening to Monday morning.</summary>
    public const double WeekendHours = 60;

    /// <summary>The cases of a farm, and what was left out because the season has no hour for it.</summary>
    /// <param name="farm">The farm, its plan without faults.</param>
    /// <param name="hours">The worst hours of its season.</param>
    /// <param name="outageHours">How long the mains stay off.</param>
    /// <param name="peakExchange">Exchange of each valve at the hour after feeding, L/h each way.</param>
    public static (IReadOnlyList<FaultCase> Cases, IReadOnlyList<string> NotTried) Of(
        FarmDescription farm, WorstHours hours, double outageHours, IReadOnlyDictionary<string, double> peakExchange)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(hours);
        ArgumentNullException.ThrowIfNull(peakExchange);
        var cases = new List<FaultCase>();
        var notTried = new List<string>();
        Add("mains", "mains", $"no power for {outageHours:0.#} h", hours.AfterFeeding, at => new MainsCut { Day = at.Day, Hour = at.Hour, RepairAfterHours = outageHours });
        if (hours.AfterFeeding is { } fed && farm.Alarms.Count > 0)
        {
            (double day, double hour) = Clock(fed);
            cases.Add(new FaultCase("mains-alarm-dead", "mains and alarm box", $"no power for {outageHours:0.#} h, and the alarm box stays dumb",
                new MainsCut { Day = day, Hour = hour, RepairAfterHours = outageHours }, fed)
            {
                Change = f => f with { AlarmBox = f.AlarmBox with { Battery = false, OwnLine = false } },
            });
        }

        foreach ((string name, BlowerDescription _) in farm.Blowers)
        {
            Add($"blower-{name}", $"blower {name}", "it stops", hours.AfterFeeding, at => new BlowerFails { Blower = name, Day = at.Day, Hour = at.Hour });
        }

        foreach ((string name, PipeDescription pipe) in farm.Pipes.Where(p => p.Value.Drive == PipeDrive.Pump))
        {
            Add($"pump-{name}", $"pump {name}", "it stops", hours.AfterFeeding, at => new PumpFails { Pipe = name, Day = at.Day, Hour = at.Hour });
        }

        foreach (string name in farm.WaterHeaters.Keys)
        {
            Add($"heater-{name}", $"water heater {name}", "it goes out", hours.ColdWithFish ?? hours.ColdWithPlants, at => new HeaterFails { Heater = name, Day = at.Day, Hour = at.Hour });
        }

        if (farm.House.AirHeater is not null)
        {
            Add("heater-air", "air heater", "it goes out", hours.ColdWithPlants ?? hours.ColdWithFish, at => new HeaterFails { Day = at.Day, Hour = at.Hour });
        }

        foreach ((string name, ValveDescription _) in farm.Valves)
        {
            double full = farm.Coupling?.Valve == name ? farm.Coupling.FullFlowLitresPerHour
                : farm.Plan.Values.OfType<SetValve>().Where(s => s.Valve == name).Select(s => s.FlowLitresPerHour).DefaultIfEmpty(0).Max();
            if (peakExchange.GetValueOrDefault(name) > 0)
            {
                Add($"valve-{name}-shut", $"valve {name}", "it falls shut and sticks", hours.AfterFeeding,
                    at => new ValveSticks { Valve = name, FlowLitresPerHour = 0, Day = at.Day, Hour = at.Hour });
            }

            if (full > 0)
            {
                Add($"valve-{name}-open", $"valve {name}", "it sticks fully open", hours.ColdWithFish,
                    at => new ValveSticks { Valve = name, FlowLitresPerHour = full, Day = at.Day, Hour = at.Hour });
            }
        }

        foreach (string? lamp in farm.Lamps.Keys.Select(string? (l) => l).Concat(farm.Nursery is null ? [] : [null]))
        {
            string name = lamp is null ? "nursery lamps" : $"lamps {lamp}";
            string key = lamp ?? "nursery";
            Add($"lamp-{key}", name, "they stay dark", hours.Darkest, at => new LampFails { Lamp = lamp, Day = at.Day, Hour = at.Hour });
            Add($"timer-{key}", name, "their timer sticks and they burn on", hours.Brightest, at => new LampTimerFails { Lamp = lamp, Day = at.Day, Hour = at.Hour });
        }

        foreach ((string name, BasinDescription _) in farm.Basins.Where(b => b.Value.FloatValve))
        {
            Add($"float-{name}-shut", $"float valve of {name}", "it sticks shut", hours.Thirstiest,
                at => new FloatValveFails { Basin = name, Sticks = FloatValveFailure.Shut, Day = at.Day, Hour = at.Hour });
            Add($"float-{name}-open", $"float valve of {name}", "it never closes", hours.Thirstiest,
                at => new FloatValveFails { Basin = name, Sticks = FloatValveFailure.Open, Day = at.Day, Hour = at.Hour });
        }

        return (cases, notTried);

        void Add(string key, string part, string what, WorstHour? hour, Func<(double Day, double Hour), FaultEvent> fault)
        {
            if (hour is null)
            {
                notTried.Add($"{part} ({what}): the season has no fish or no crop that could be lost");
                return;
            }

            cases.Add(new FaultCase(key, part, what, fault(Clock(hour)), hour));

            // Where nobody is described the round is made every morning; a weekend away is the other half of the truth.
            if (farm.People.Count == 0 && key != "mains")
            {
                cases.Add(new FaultCase($"{key}-weekend", part, $"{what}, and nobody comes for {WeekendHours:0} h", fault(Clock(hour)), hour) { UnattendedHours = WeekendHours });
            }
        }
    }

    private static (double Day, double Hour) Clock(WorstHour hour)
    {
        double day = Math.Floor(FarmWork.DayOf(hour.Seconds));
        return (day, (hour.Seconds % UnitConstants.SecondsPerDay) / UnitConstants.SecondsPerHour);
    }
}
