using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the faults and the backups.</summary>
internal static class FaultFigures
{
    // The oxygen that the smallest backup holds, mg/L, and what a battery and a cylinder give of what is in them (see BackupDescription).
    private const double HeldOxygen = 4;
    private const double SecondsPerMinute = 60;

    // Deaths are expected values: less than this of a fish is none.
    private const double LeastDeath = 0.005;
    private static readonly BatteryAir Battery = new() { Basins = [], AirShare = 1, PowerWatts = 1, BatteryWattHours = 1 };
    private static readonly OxygenValve Cylinder = new() { Basins = [], GramsPerHour = 1, CylinderKilograms = 1 };

    public static IReadOnlyDictionary<string, FaultSummary> Of(Season season)
    {
        var faults = new Dictionary<string, FaultSummary>(StringComparer.Ordinal);
        foreach (Fault fault in season.State.Faults)
        {
            faults.Add(fault.Name, Of(season, fault));
        }

        return faults;
    }

    public static IReadOnlyDictionary<string, BackupSummary> BackupsOf(Season season)
    {
        var backups = new Dictionary<string, BackupSummary>(StringComparer.Ordinal);
        int i = 0;
        foreach ((string name, BackupDescription backup) in season.Parts.Farm.Backups)
        {
            BackupState state = season.State.Equipment.Backups[i++];
            backups.Add(name, new BackupSummary(
                state.Starts,
                state.RanHours,
                BackupWork.FullSeconds(backup) / UnitConstants.SecondsPerHour,
                season.Log.Events.Count(e => e.What == "backup empty" && e.Where == name),
                backup is BatteryAir battery ? state.RanHours * battery.PowerWatts / UnitConstants.GramsPerKilogram : 0,
                backup is OxygenValve oxygen ? state.RanHours * oxygen.GramsPerHour * oxygen.Basins.Count / UnitConstants.GramsPerKilogram : 0));
        }

        return backups;
    }

    private static FaultSummary Of(Season season, Fault fault)
    {
        var tanks = new Dictionary<string, FaultTankSummary>(StringComparer.Ordinal);
        for (int b = 0; b < season.Parts.Basins.Length; b++)
        {
            if (fault.BiomassGrams[b] > 0)
            {
                tanks.Add(season.Parts.BasinNames[b], Tank(fault, b));
            }
        }

        return new FaultSummary
        {
            Kind = fault.Kind.ToString(),
            Where = fault.Where,
            Day = Math.Floor(FarmWork.DayOf(fault.BeganSeconds)),
            Hour = fault.BeganSeconds % UnitConstants.SecondsPerDay / UnitConstants.SecondsPerHour,
            MinutesToFound = Minutes(fault, fault.FoundSeconds),
            FoundBy = fault.FoundBy,
            MinutesToMended = Minutes(fault, fault.MendedSeconds),
            Tanks = tanks,
            FishLost = Dead(fault.Died.Sum()),
            FishLostKg = Dead(fault.Died.Sum()) > 0 ? fault.DiedGrams.Sum() / UnitConstants.GramsPerKilogram : 0,
            SpilledL = fault.SpilledLitres,
            LeakedL = fault.LeakedLitres,
            FilterWithoutFlowHours = season.Parts.FilterBasin.Select(b => fault.StillHours[b]).DefaultIfEmpty().Max(),
            FilterWithoutOxygenHours = season.Parts.FilterBasin.Select(b => fault.AnoxicHours[b]).DefaultIfEmpty().Max(),
            PlantsAtRisk = fault.PlantsAtRisk,
            SmallestBackup = Smallest(season, fault),
        };
    }

    private static FaultTankSummary Tank(Fault fault, int b)
    {
        int at = b * Fault.OxygenLevels.Length;
        return new FaultTankSummary(
            fault.BiomassGrams[b] / UnitConstants.GramsPerKilogram,
            fault.FishOxygenGramsPerHour[b] / fault.BiomassGrams[b] * 1e6,
            Known(fault.LowestOxygen[b]),
            Known(fault.MinutesTo[at]),
            Known(fault.MinutesTo[at + 1]),
            Known(fault.MinutesTo[at + 2]),
            fault.HighestCarbonDioxide[b],
            fault.HighestUnionizedAmmonia[b],
            fault.LowestCelsius[b],
            Dead(fault.Died[b]));
    }

    // Air that balances the fish's use at the start against what the diffusers give at the level to be held; what films and solids take
    // besides, and what fish stop taking as they fast, about cancel.
    private static SmallestBackup? Smallest(Season season, Fault fault)
    {
        int[] tanks = [.. Enumerable.Range(0, season.Parts.Basins.Length).Where(b => fault.BiomassGrams[b] > 0)];
        bool airLost = fault.Kind is FaultKind.Mains or FaultKind.Blower or FaultKind.AirLine;
        if (!airLost || !tanks.Any(b => fault.LowestOxygen[b] < HeldOxygen))
        {
            return null;
        }

        long end = fault.IsOpen ? season.NowSeconds : fault.MendedSeconds;
        double hours = (end - fault.BeganSeconds) / UnitConstants.SecondsPerHour;
        double need = tanks.Sum(b => fault.FishOxygenGramsPerHour[b]);
        double most = 0;
        double watts = 0;
        foreach (int b in tanks)
        {
            double given = OxygenByAir(season, b);
            double share = given > 0 ? fault.FishOxygenGramsPerHour[b] / given : double.PositiveInfinity;
            most = Math.Max(most, share);
            watts += share * BlowerLoad.WattsOf(season.Parts.Farm, season.Parts.BasinNames[b]);
        }

        double load = (season.Parts.Farm.Pipes.Values.Where(p => p.Drive == PipeDrive.Pump).Sum(p => p.PowerWatts)
            + season.Parts.Farm.Blowers.Values.Sum(b => b.PowerWatts)) / UnitConstants.GramsPerKilogram;
        double first = tanks.Select(b => fault.MinutesTo[(b * Fault.OxygenLevels.Length) + 1]).Where(m => !double.IsNaN(m)).DefaultIfEmpty(double.NaN).Min();
        double oxygen = need / Cylinder.DissolvedShare;
        return new SmallestBackup(
            most,
            watts,
            watts * hours / Battery.UsableShare / Battery.Efficiency,
            oxygen,
            oxygen * hours / UnitConstants.GramsPerKilogram,
            load,
            Known(first));
    }

    // What the tank's normal air gives its water at the level to be held, g/h.
    private static double OxygenByAir(Season season, int b)
    {
        BasinDescription basin = season.Parts.Basins[b];
        AerationParameters aeration = season.Parts.Aeration;
        double celsius = season.State.Basins.Celsius[b];
        double standard = Aeration.StandardTransferGramsPerHour(
            basin.AirLitresPerMinute * SecondsPerMinute / UnitConstants.LitresPerCubicMetre, basin.DiffuserDepthMetres, aeration.FineBubbleEfficiencyPerMetre);
        return Aeration.DeliveredOxygenGramsPerHour(
            Aeration.OxygenConductanceLitresPerHour(standard, aeration.AlphaClearWater, celsius, aeration),
            HeldOxygen, celsius, season.Parts.PressureAtmospheres, aeration);
    }

    private static double? Minutes(Fault fault, long seconds) => seconds < 0 ? null : (seconds - fault.BeganSeconds) / SecondsPerMinute;

    private static double Dead(double number) => number < LeastDeath ? 0 : number;

    private static double? Known(double value) => double.IsFinite(value) ? value : null;
}
