using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>What an installer would remark on going round: nothing to reckon, only to see.</summary>
internal static class RemarkLines
{
    private const string Group = "Going round";

    public static IEnumerable<SheetLine> Of(DesignCase design) =>
        design.HasFish ? Air(design).Concat(Water(design)).Concat(Alarms(design)) : [];

    private static IEnumerable<SheetLine> Air(DesignCase design)
    {
        BasinDescription[] tanks = [.. design.Tanks.Select(t => design.Parts.Basins[t])];
        string?[] blowers = [.. tanks.Where(t => t.AirLitresPerMinute > 0).Select(t => t.Blower).Distinct()];
        bool backed = design.Tanks.All(t => OutageLines.IsBacked(design, design.Parts.BasinNames[t]));
        if (blowers.Length == 0)
        {
            yield return Remark("air", "air of the tanks", Verdict.Act, "No tank has air: the fish live on the pumped water alone.");
        }
        else if (blowers.Length == 1 && !backed)
        {
            yield return Remark("blower", "blowers of the tanks", Verdict.Act, "All tanks hang on one blower and nothing takes over: a second blower, or battery air with a pressure switch.") with { Value = 1, Low = 2 };
        }
        else
        {
            bool notices = design.Farm.Backups.Values.Any(b => b is BatteryAir { PressureSwitch: true }) || blowers.Length > 1;
            yield return Remark("blower", "blowers of the tanks", notices ? Verdict.Fine : Verdict.Watch,
                notices ? string.Empty : "One blower: the backup starts when the mains fail, not when the blower does; a pressure switch on the battery air closes that gap.") with { Value = blowers.Length, Low = 2 };
        }
    }

    private static IEnumerable<SheetLine> Water(DesignCase design)
    {
        foreach (string sump in design.Farm.Pipes.Values.Where(p => p.Drive == PipeDrive.Pump).Select(p => p.From).Distinct())
        {
            if (!design.Farm.Basins[sump].FloatValve)
            {
                yield return Remark($"float.{sump}", $"float valve, {sump}", Verdict.Watch, "None: whoever makes the round must fill it up, or its pumps run dry.");
            }
        }

        if (!design.LoopHeaters.Any())
        {
            yield return Remark("heater", "water heater", Verdict.Watch, "None: the fish follow the house; every figure here is for water of " + $"{design.HoldCelsius:0} °C.");
        }
    }

    private static IEnumerable<SheetLine> Alarms(DesignCase design)
    {
        if (design.Farm.Alarms.Count == 0)
        {
            yield return Remark("alarms", "alarms", Verdict.Act, "None: nobody is told of a cut, a stopped pump, cold or warm water. At least mains, water temperature, level and oxygen, phoned out.");
            yield break;
        }

        foreach ((ProbeQuantity quantity, string key, string words) in new[]
        {
            (ProbeQuantity.Oxygen, "oxygen", "oxygen"), (ProbeQuantity.WaterTemperature, "temperature", "water temperature"), (ProbeQuantity.Level, "level", "water level"),
        })
        {
            bool watched = design.Farm.Alarms.Values.Any(a => design.Farm.Probes[a.Probe].Quantity == quantity);
            yield return Remark($"alarm.{key}", $"alarm on {words}", watched ? Verdict.Fine : Verdict.Watch, watched ? string.Empty : "None.");
        }

        if (!design.Farm.People.Values.Any(p => p.CallOrder is not null))
        {
            yield return Remark("phone", "phone tree", Verdict.Act, "Alarms sound, but nobody is called: name people with a place in the phone tree.");
        }
    }

    private static SheetLine Remark(string key, string name, Verdict verdict, string advice) => new()
    {
        Group = Group, Key = $"remark.{key}", Name = name, Source = "practice-alarms", Verdict = verdict, Advice = advice,
    };
}
