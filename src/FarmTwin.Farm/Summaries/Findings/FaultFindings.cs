using FarmTwin.Farm.Equipment;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>What broke, what it cost, and what would have helped.</summary>
internal static class FaultFindings
{
    private const double UneasyOxygen = 4;
    private const double LeastLitres = 20;

    public static void Add(FindingList list)
    {
        foreach ((string name, FaultSummary fault) in list.Summary.Faults)
        {
            Fish(list, name, fault);
            Filter(list, name, fault);
            Water(list, name, fault);
            Plants(list, name, fault);
        }

        foreach ((string name, BackupSummary backup) in list.Summary.Backups)
        {
            if (backup.TimesEmpty > 0)
            {
                list.Add(90, $"The backup '{name}' ran out {Times(backup.TimesEmpty)}: it lasts {backup.FullHours:0.0} h from full and ran {backup.RanHours:0.0} h in the season. "
                    + "Size it for the longest cut that you must expect, and have somebody there before it is empty.");
            }
        }
    }

    private static void Fish(FindingList list, string name, FaultSummary fault)
    {
        (string tank, FaultTankSummary worst) = fault.Tanks.OrderBy(t => t.Value.LowestOxygenMgPerL ?? 0).FirstOrDefault();
        if (worst is null)
        {
            return;
        }

        double lowest = worst.LowestOxygenMgPerL ?? 0;
        string times = worst.MinutesTo3MgPerL is { } three ? $" It was at 3 mg/L after {three:0} min"
            + (worst.MinutesTo2MgPerL is { } two ? $" and at 2 after {two:0}." : ".") : string.Empty;
        string found = fault.MinutesToFound is { } minutes ? $"found after {Span(minutes)} by {fault.FoundBy}" : "found by nobody";
        string lasted = fault.MinutesToMended is { } mended ? $"lasted {Span(mended)}" : "is still open";
        string head = $"'{name}' ({fault.Where}, {list.Day(fault.Day)} {Clock(fault.Hour)}) {lasted}, {found}: oxygen of {tank} fell to {lowest:0.0} mg/L.{times}";
        if (fault.FishLost >= 1)
        {
            list.Add(98.5, $"{head} {fault.FishLost:0} fish ({fault.FishLostKg:0.0} kg) died.{Remedy(fault)}");
        }
        else if (lowest < UneasyOxygen)
        {
            list.Add(94, $"{head} No fish died.{Remedy(fault)}");
        }
        else
        {
            list.Add(66, $"'{name}' ({fault.Where}, {list.Day(fault.Day)} {Clock(fault.Hour)}) {lasted}, {found}; oxygen of the tanks held {lowest:0.0} mg/L or more.");
        }
    }

    private static string Remedy(FaultSummary fault)
    {
        if (fault.SmallestBackup is not { } backup)
        {
            return string.Empty;
        }

        string air = backup.AirShareOfNormal <= 1
            ? $"battery air at {backup.AirShareOfNormal:0%} of the tanks' normal air ({backup.AirPumpWatts:0} W, {backup.BatteryWattHours:0} Wh)"
            : "more air than the blower gives";
        string generator = backup.GeneratorWithinMinutes is { } within
            ? $", or a generator of {backup.GeneratorKilowatts:0.0} kW that carries pumps and blowers within {within:0} min" : string.Empty;
        return $" By arithmetic it takes {air}, or {backup.OxygenGramsPerHour:0} g/h of oxygen from a cylinder ({backup.OxygenKilograms:0.0} kg){generator}.";
    }

    private static void Filter(FindingList list, string name, FaultSummary fault)
    {
        FaultParameters parameters = list.Season.Parts.Faults;
        if (fault.FilterWithoutOxygenHours >= parameters.AnoxicHours || fault.FilterWithoutFlowHours >= parameters.StillHours)
        {
            list.Add(88, $"During '{name}' the filter stood without flow for {fault.FilterWithoutFlowHours:0.0} h and its water was without oxygen for "
                + $"{fault.FilterWithoutOxygenHours:0.0} h: inside the bed it is without sooner, rots, and may hold hydrogen sulphide, which kills fish at micrograms a litre. "
                + "Drain the bed to the sludge tank before its pump runs again, air the house first, and keep your face away from it.");
        }
    }

    private static void Water(FindingList list, string name, FaultSummary fault)
    {
        if (fault.LeakedL >= LeastLitres && fault.Kind == nameof(FaultKind.Leak))
        {
            string seen = fault.MinutesToFound is null ? "and nobody saw it: the float valve hid it. Read the water meter every day" : $"until it was found after {Span(fault.MinutesToFound.Value)}";
            list.Add(77, $"'{name}' let {fault.LeakedL:0} L with their nutrients out of {fault.Where} from {list.Day(fault.Day)} on {seen}.");
        }

        if (fault.SpilledL >= LeastLitres)
        {
            list.Add(80.5, $"During '{name}' {fault.SpilledL:0} L ran over a brim and out of the farm: leave freeboard for what drains back when the pumps stop, "
                + "or put check valves into the risers; a flood alarm in the sump shows it at once.");
        }
    }

    private static void Plants(FindingList list, string name, FaultSummary fault)
    {
        if (fault.PlantsAtRisk >= 1)
        {
            list.Add(81, $"During '{name}' the roots of {fault.PlantsAtRisk:0} plants stood dry, or in water without oxygen, for more than "
                + $"{list.Season.Parts.Faults.RootsBearHours:0} h: look for wilting and brown roots, and expect to lose part of them.");
        }
    }

    private static string Times(int times) => times == 1 ? "once" : $"{times} times";

    private static string Span(double minutes) => minutes < 120 ? $"{minutes:0} min"
        : minutes < 48 * 60 ? $"{minutes / 60:0.#} h" : $"{minutes / 60 / UnitConstants.HoursPerDay:0} days";

    private static string Clock(double hour) => $"at {(int)hour:00}:{(int)Math.Round((hour - (int)hour) * 60):00}";
}
