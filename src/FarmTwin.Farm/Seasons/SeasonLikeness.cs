using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.Seasons;

/// <summary>Whether one season can go on where another stands: the same parts under the same names, whatever is planned with them.</summary>
internal static class SeasonLikeness
{
    /// <summary>What differs, in words; null where the one can go on from the other.</summary>
    public static string? Difference(FarmParts mine, FarmParts other)
    {
        FarmDescription a = mine.Farm;
        FarmDescription b = other.Farm;
        return a.Start != b.Start ? $"it begins on {a.Start:d MMM yyyy}, the other on {b.Start:d MMM yyyy}"
            : Names("basins", a.Basins.Keys, b.Basins.Keys)
            ?? Names("pipes", a.Pipes.Keys, b.Pipes.Keys)
            ?? Names("valves", a.Valves.Keys, b.Valves.Keys)
            ?? Names("blowers", a.Blowers.Keys, b.Blowers.Keys)
            ?? Backups(a, b)
            ?? Names("filters", a.Filters.Keys, b.Filters.Keys)
            ?? Names("mineralizers", a.Mineralizers.Keys, b.Mineralizers.Keys)
            ?? Names("quarantines", a.Quarantines.Keys, b.Quarantines.Keys)
            ?? Names("waterHeaters", a.WaterHeaters.Keys, b.WaterHeaters.Keys)
            ?? Names("water heaters' fuels", mine.Heaters.Select(h => h.Fuel), other.Heaters.Select(h => h.Fuel))
            ?? Names("air heater's fuel", Fuel(a), Fuel(b))
            ?? Names("fuelTanks", a.FuelTanks.Keys, b.FuelTanks.Keys)
            ?? Names("lamps", a.Lamps.Keys, b.Lamps.Keys)
            ?? Names("nursery", Nursery(a), Nursery(b))
            ?? Names("troughs", a.Troughs.Select(Trough), b.Troughs.Select(Trough))
            ?? Names("lanes", a.Lanes.Select(Lane), b.Lanes.Select(Lane))
            ?? Names("mediaBeds", a.MediaBeds.Select(m => $"{m.Key} in {m.Value.Basin}"), b.MediaBeds.Select(m => $"{m.Key} in {m.Value.Basin}"))
            ?? Names("crops", a.Crops.Select(c => $"{c.Key} ({c.Value.Kind})"), b.Crops.Select(c => $"{c.Key} ({c.Value.Kind})"))
            ?? Names("microgreens", a.Microgreens.Select(m => $"{m.Key} ({m.Value.Kind})"), b.Microgreens.Select(m => $"{m.Key} ({m.Value.Kind})"))
            ?? Names("stocking", a.Stocking.Select(s => $"{s.Key} ({s.Value.Fish})"), b.Stocking.Select(s => $"{s.Key} ({s.Value.Fish})"))
            ?? Names("strains of fish", Strains(a), Strains(b))
            ?? Names("feeds", mine.FeedNames, other.FeedNames)
            ?? Names("dosing", a.Dosing.Keys, b.Dosing.Keys)
            ?? Names("probes", a.Probes.Keys, b.Probes.Keys)
            ?? Names("alarms", mine.Alarms.Points.Select(p => p.Name), other.Alarms.Points.Select(p => p.Name))
            ?? Names("people", a.People.Keys, b.People.Keys)
            ?? Names("accounts", mine.Accounts.All.Select(x => x.Name), other.Accounts.All.Select(x => x.Name));
    }

    /// <summary>Whether an event arose in the course of a season, and so belongs to its state; the others are its schedule.</summary>
    public static bool AroseOnTheWay(FarmEventKind kind) => kind is FarmEventKind.SettlingEnds or FarmEventKind.FaultMended
        or FarmEventKind.BackupStarts or FarmEventKind.BackupRunsOut
        or FarmEventKind.AlarmChange or FarmEventKind.AlarmCall or FarmEventKind.AlarmLook or FarmEventKind.AlarmArrival
        or FarmEventKind.FuelDelivery;

    private static string? Backups(FarmDescription a, FarmDescription b) =>
        Names("backups", a.Backups.Keys.Take(b.Backups.Count), b.Backups.Keys);

    private static string? Names(string what, IEnumerable<string> mine, IEnumerable<string> other)
    {
        if (mine.SequenceEqual(other, StringComparer.Ordinal))
        {
            return null;
        }

        string[] here = [.. mine.Except(other, StringComparer.Ordinal)];
        string[] there = [.. other.Except(mine, StringComparer.Ordinal)];
        string[] parts =
        [
            .. here.Length > 0 ? new[] { $"{string.Join(", ", here)} here" } : [],
            .. there.Length > 0 ? new[] { $"{string.Join(", ", there)} there" } : [],
        ];
        return $"'{what}' differ ({(parts.Length > 0 ? string.Join(", ", parts) : "another order")})";
    }

    private static IEnumerable<string> Fuel(FarmDescription farm) => farm.House.AirHeater is { } air ? [air.Fuel] : [];

    private static IEnumerable<string> Nursery(FarmDescription farm) =>
        farm.Nursery is { } n ? [FormattableString.Invariant($"{n.Tiers} tiers of {n.TraysPerTier} trays")] : [];

    private static string Trough(KeyValuePair<string, TroughDescription> trough) => FormattableString.Invariant(
        $"{trough.Key} ({trough.Value.AreaSquareMetres} m2, {trough.Value.PlantsPerSquareMetre} plants/m2: {string.Join(" ", trough.Value.Shares.Select(s => $"{s.Key} {s.Value}"))})");

    private static string Lane(KeyValuePair<string, LaneDescription> lane) =>
        FormattableString.Invariant($"{lane.Key} ({lane.Value.Boards} boards of {lane.Value.HolesPerBoard} holes)");

    private static IEnumerable<string> Strains(FarmDescription farm) =>
        farm.Stocking.Values.Select(s => FormattableString.Invariant($"{s.Fish} at {s.StrainRate}"));
}
