using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Minutes that every tank lives after a power cut that follows the meal on its fullest day, with the backups fitted.</summary>
internal static class OutageLines
{
    private const string Group = "Power cut";

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        if (!design.HasFish)
        {
            yield break;
        }

        DesignBands bands = design.Bands;
        (double arrival, string who) = Arrival(design);
        double safe = bands.Get("outageSafe", "min");
        foreach (int tank in design.Tanks)
        {
            string name = design.Parts.BasinNames[tank];
            var loop = new LoopOxygen(design, design.Fish.FullestDay(tank));
            var outage = new Outage(Math.Max(0, loop.MilligramsPerLitre[tank]), loop.Saturation, loop.DemandGramsPerHour(tank),
                design.Parts.Basins[tank].VolumeLitres, LoopOxygen.SurfaceConductance(design, tank));
            OutageStretch[] backups = [.. Stretches(design, tank, arrival)];
            double stop = outage.MinutesTo(bands.Get("outageStop", "mg/L"), backups);
            double harm = outage.MinutesTo(bands.Get("outageHarm", "mg/L"), backups);
            double death = outage.MinutesTo(bands.Get("outageDeath", "mg/L"), backups);
            yield return Minutes(design, $"outage.{name}.stop", $"minutes to {bands.Get("outageStop", "mg/L"):0.#} mg/L, {name}", stop, "outageStop");
            yield return Minutes(design, $"outage.{name}.harm", $"minutes to {bands.Get("outageHarm", "mg/L"):0.#} mg/L, {name}", harm, "outageHarm") with
            {
                Low = safe,
                Verdict = Judge.More(harm, Math.Min(arrival, safe), safe),
                Advice = harm < arrival
                    ? $"{who} is there after {arrival:0} min: too late. Air on a battery, oxygen through a valve that opens by itself, or a generator that starts by itself."
                    : harm < safe ? $"{who} is there after {arrival:0} min, with little to spare: air on a battery, or a longer lasting one."
                    : string.Empty,
            };
            yield return Minutes(design, $"outage.{name}.death", $"minutes to {bands.Get("outageDeath", "mg/L"):0.#} mg/L, {name}", death, "outageDeath");
        }
    }

    /// <summary>Whether a backup gives a tank air or oxygen by itself.</summary>
    public static bool IsBacked(DesignCase design, string tank) => design.Farm.Backups.Values.Any(b => b switch
    {
        BatteryAir battery => battery.Basins.Contains(tank),
        OxygenValve oxygen => oxygen.Basins.Contains(tank),
        Generator generator => generator is { FeedsBlowers: true, StartsByItself: true },
        _ => false,
    });

    private static SheetLine Minutes(DesignCase design, string key, string name, double minutes, string band) => new()
    {
        Group = Group, Key = key, Name = name, Value = minutes, Unit = "min", Source = design.Bands.SourceOf(band), Verdict = Verdict.NoVerdict,
    };

    // The nearest person who is phoned, when there is an alarm box to phone them.
    private static (double Minutes, string Who) Arrival(DesignCase design)
    {
        PersonDescription[] called = [.. design.Farm.People.Values.Where(p => p.CallOrder is not null)];
        return design.Farm.Alarms.Count > 0 && called.Length > 0
            ? (called.Min(p => p.TravelMinutes) + design.Bands.Get("outageAnswer", "min"), "Whoever is called and nearest")
            : (design.Bands.Get("outageResponse", "min"), "A person");
    }

    // Everything that begins or ends cuts the time into stretches.
    private static IEnumerable<OutageStretch> Stretches(DesignCase design, int tank, double arrivalMinutes)
    {
        string name = design.Parts.BasinNames[tank];
        var held = new List<(double From, double To, double AirShare, double Oxygen)>();
        foreach (BackupDescription backup in design.Farm.Backups.Values)
        {
            double lasts = BackupWork.FullSeconds(backup) / UnitConstants.SecondsPerHour;
            switch (backup)
            {
                case BatteryAir battery when battery.Basins.Contains(name):
                    held.Add((0, lasts, battery.AirShare, 0));
                    break;
                case OxygenValve oxygen when oxygen.Basins.Contains(name):
                    held.Add((0, lasts, 0, oxygen.GramsPerHour * oxygen.DissolvedShare));
                    break;
                case Generator { FeedsBlowers: true } generator:
                    double from = (generator.StartMinutes + (generator.StartsByItself ? 0 : arrivalMinutes)) / UnitConstants.SecondsPerMinute;
                    held.Add((from, from + lasts, RunningEquipment.Feeds(generator, PowerLoad.Blowers) ? 1 : 0, 0));
                    break;
            }
        }

        foreach (double from in held.SelectMany(h => new[] { h.From, h.To }).Append(0).Distinct().Order())
        {
            var now = held.Where(h => h.From <= from && from < h.To).ToArray();
            yield return new OutageStretch(from, LoopOxygen.AirConductance(design, tank, now.Select(h => h.AirShare).DefaultIfEmpty(0).Max()), now.Sum(h => h.Oxygen));
        }
    }
}
