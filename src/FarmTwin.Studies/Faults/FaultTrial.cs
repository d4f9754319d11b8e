using FarmTwin.Engine;
using FarmTwin.Farm;
using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Water;

namespace FarmTwin.Studies.Faults;

/// <summary>Lets a part break in a branch of the season in which nothing breaks, and reads the harm.</summary>
/// <remarks>The base season and its snapshots are only read: several trials may run at once, each on a season of its own.</remarks>
/// <param name="library">The parameter library.</param>
/// <param name="seed">Seed of all chance.</param>
/// <param name="whole">The season without faults, played to its end.</param>
/// <param name="deadByHour">Fish dead in it until each hour, [hours + 1].</param>
public sealed class FaultTrial(FarmLibrary library, ulong seed, Season whole, double[] deadByHour)
{
    /// <summary>Oxygen at which fish gasp, mg/L: a backup must keep every stocked tank above it.</summary>
    public const double GaspingOxygen = 3;

    // A fault that nobody has found after a week is put right: what it costs by then is plain.
    private const double LongestDays = 7;
    private const double HalfAFish = 0.5;
    private const double HalfAPlant = 0.5;
    private const double NoticeableOxygen = 0.2;
    private const double NoticeableKelvin = 0.5;

    private readonly double[] _usualOxygen = whole.Record.Hours.Column(whole.Record.Hours.ColumnIndex("oxygen_tanks_mg_per_L"));
    private readonly double[] _usualCelsius = whole.Record.Hours.Column(whole.Record.Hours.ColumnIndex("fish_water_C"));

    /// <summary>A season that stands at a snapshot, of the farm as a trial has it.</summary>
    public Season Branch(SeasonSnapshot snapshot, FarmDescription changed)
    {
        var season = new Season(changed, library, seed);
        season.TakeOver(snapshot);
        return season;
    }

    /// <summary>Breaks the part and goes on until the fault is over and its aftermath too.</summary>
    /// <param name="one">The case.</param>
    /// <param name="snapshot">The season without faults at the case's hour.</param>
    /// <param name="changed">The farm as the trial has it.</param>
    /// <param name="breaks">Whether the part breaks; a standby in its place is tried without.</param>
    public Season Play(FaultCase one, SeasonSnapshot snapshot, FarmDescription changed, bool breaks = true)
    {
        Season season = Branch(snapshot, one.Change?.Invoke(changed) ?? changed);
        long start = season.NowSeconds;
        long last = Math.Min(season.LengthSeconds, start + (long)(LongestDays * UnitConstants.SecondsPerDay));
        if (one.UnattendedHours > 0)
        {
            season.Apply(new MissChores { Day = one.Fault.Day, Hour = one.Fault.Hour, Days = one.UnattendedHours / UnitConstants.HoursPerDay, Chores = [Duty.Round] });
        }

        if (!breaks)
        {
            season.Advance(Math.Min(last, start + (long)(2 * UnitConstants.SecondsPerDay)));
            return season;
        }

        season.Apply(one.Fault);
        Fault fault = season.State.Faults[^1];
        while (fault.IsOpen && season.NowSeconds < last)
        {
            season.Advance(NextHour(season));
            fault = season.State.Faults[^1];
        }

        if (fault.IsOpen)
        {
            season.Apply(new PutRight { Day = one.Fault.Day });
        }

        long aftermath = (long)(season.Parts.Faults.AftermathHours * UnitConstants.SecondsPerHour);
        long until = Math.Min(season.LengthSeconds, season.NowSeconds + aftermath);
        while (season.NowSeconds < until)
        {
            season.Advance(Math.Min(season.LengthSeconds, NextHour(season)));
        }

        return season;
    }

    /// <summary>Reads the harm of a season as <see cref="Play"/> left it.</summary>
    /// <param name="season">The season.</param>
    /// <param name="start">When the fault began, seconds of the season.</param>
    public FaultHarm Read(Season season, long start)
    {
        Fault? fault = season.State.Faults.LastOrDefault(f => f.BeganSeconds >= start);
        int[] stocked = [.. Enumerable.Range(0, season.Parts.Basins.Length).Where(b => season.Parts.Basins[b].Use == BasinUse.FishTank
            && (fault is null ? season.State.Cohorts[b].Count > 0 : fault.BiomassGrams[b] > 0))];
        double stops = StopsEating(season, stocked);
        int from = (int)(start / (long)UnitConstants.SecondsPerHour);
        int hours = (int)((season.NowSeconds - start) / (long)UnitConstants.SecondsPerHour);
        double usualOxygen = Lowest(_usualOxygen, from, hours);
        double usualCelsius = Lowest(_usualCelsius, from, hours);
        double lowest = fault is null ? Lowest(new RecordView(season).Hours("oxygen_tanks_mg_per_L"), from, hours) : Least(stocked.Select(b => fault.LowestOxygen[b]));
        double coldest = fault is null ? Lowest(new RecordView(season).Hours("fish_water_C"), from, hours) : Least(stocked.Select(b => fault.LowestCelsius[b]));
        double died = Math.Max(0, season.State.Totals.FishDied - DeadUntil(season.NowSeconds));
        double plants = Math.Max(0, KilledByCold(season, start, season.NowSeconds) - KilledByCold(whole, start, season.NowSeconds)) + (fault?.PlantsAtRisk ?? 0);
        bool gasps = stocked.Length > 0 && lowest < GaspingOxygen && lowest < usualOxygen - NoticeableOxygen;
        bool chills = stocked.Length > 0 && coldest < stops && coldest < usualCelsius - NoticeableKelvin;
        double? gone = fault is null || fault.FoundSeconds < 0 ? null : Minutes(fault.FoundSeconds - start);
        return new FaultHarm
        {
            LowestOxygenMgPerL = stocked.Length > 0 ? lowest : double.NaN,
            MinutesTo4MgPerL = To(fault, stocked, 0),
            MinutesTo3MgPerL = To(fault, stocked, 1),
            MinutesTo2MgPerL = To(fault, stocked, 2),
            ColdestFishWaterC = stocked.Length > 0 ? coldest : double.NaN,
            MinutesToChill = chills ? First(season, start, stocked, "water_", "_C", c => c < stops) : null,
            MinutesToFirstDeath = died >= HalfAFish ? FirstDeath(season, start) : null,
            FishDied = died < HalfAFish ? 0 : died,
            PlantsHarmed = plants < HalfAPlant ? 0 : plants,
            SpilledL = fault?.SpilledLitres ?? 0,
            MinutesToFound = gone,
            FoundBy = fault?.FoundBy == "who put it right" ? string.Empty : fault?.FoundBy ?? string.Empty,
            MinutesToMended = fault is null || fault.MendedSeconds < 0 ? null : Minutes(fault.MendedSeconds - start),
            HarmsFish = died >= HalfAFish || gasps || chills,
        };
    }

    /// <summary>Oxygen of the worst stocked tank through a fault, by the rows of its trace.</summary>
    /// <param name="season">The season after the fault.</param>
    /// <param name="snapshot">The season before it.</param>
    public OxygenTrace? Trace(Season season, SeasonSnapshot snapshot)
    {
        long start = snapshot.TimeSeconds;
        Fault? fault = season.State.Faults.LastOrDefault(f => f.BeganSeconds >= start);
        if (fault is null)
        {
            return null;
        }

        Recorder rows = season.Record.Faults.Rows;
        int[] stocked = [.. Enumerable.Range(0, season.Parts.Basins.Length).Where(b => season.Parts.Basins[b].Use == BasinUse.FishTank && fault.BiomassGrams[b] > 0)];
        int[] columns = [.. stocked.Select(b => rows.ColumnIndex($"oxygen_{season.Parts.BasinNames[b]}_mg_per_L"))];
        Season before = Branch(snapshot, season.Parts.Farm);
        List<double> minutes = [0];
        List<double> lowest = [Least(stocked.Select(b => before.State.Basins.MilligramsPerLitre(b, Substance.Oxygen)))];
        for (int row = 0; row < rows.RowCount; row++)
        {
            ReadOnlySpan<double> values = rows.Row(row);
            if (values[0] <= start)
            {
                continue;
            }

            double least = double.PositiveInfinity;
            foreach (int column in columns)
            {
                least = Math.Min(least, values[column]);
            }

            minutes.Add((values[0] - start) / UnitConstants.SecondsPerMinute);
            lowest.Add(least);
        }

        return columns.Length == 0 ? null : new OxygenTrace([.. minutes], [.. lowest]);
    }

    /// <summary>The first true alarm of a branch that the season without the fault did not raise.</summary>
    public FaultAlarm? FirstAlarm(Season season, long start)
    {
        var usual = whole.State.Alarms.Incidents.Where(i => i.RaisedSeconds >= start).Select(i => (i.Point, i.RaisedSeconds)).ToHashSet();
        AlarmIncident? first = season.State.Alarms.Incidents.FirstOrDefault(i => i.RaisedSeconds >= start && !i.IsFalse && !usual.Contains((i.Point, i.RaisedSeconds)));
        if (first is null)
        {
            return null;
        }

        string by = first.AnsweredSeconds < 0 ? string.Empty : first.AnsweredBy < 0 ? "the morning round" : season.Parts.Alarms.PeopleNames[first.AnsweredBy];
        return new FaultAlarm(
            season.Parts.Alarms.Points[first.Point].Name,
            Minutes(first.RaisedSeconds - start),
            first.AnsweredSeconds < 0 ? null : Minutes(first.AnsweredSeconds - start),
            first.ArrivedSeconds < 0 ? null : Minutes(first.ArrivedSeconds - start),
            by);
    }

    /// <summary>The backups of the scenario that ran in a branch; in the season without faults none does.</summary>
    public static IReadOnlyList<BackupRun> BackupsThatRan(Season season, long start)
    {
        string[] names = [.. season.Parts.Farm.Backups.Keys];
        return [.. names.Select((name, i) => new BackupRun(
                name,
                season.State.Equipment.Backups[i].RanHours,
                season.Log.Events.Any(e => e.Seconds >= start && e.What == "backup empty" && e.Where == name)))
            .Where(r => r.Hours > 0)];
    }

    /// <summary>What a branch that was played to the season's end lost against the season without the fault.</summary>
    public FaultLoss Loss(Season season)
    {
        (double fish, double heads, double crops, double margin) = End(season);
        (double usualFish, double usualHeads, double usualCrops, double usualMargin) = End(whole);
        return new FaultLoss(
            fish - usualFish, usualHeads - heads, usualCrops - crops, season.Parts.Farm.Prices is null ? null : usualMargin - margin);
    }

    private static (double Fish, double Heads, double Crops, double Margin) End(Season season) => (
        season.State.Totals.FishDied,
        Enumerable.Range(0, season.Parts.CropNames.Length).Sum(c => season.State.Growing.Harvest[c].FirstHeads),
        season.State.Growing.SaleableGrams.Sum() / UnitConstants.GramsPerKilogram,
        season.State.Money.Ledger.TotalIn - season.State.Money.Ledger.TotalOut);

    private static long NextHour(Season season)
    {
        const long hour = (long)UnitConstants.SecondsPerHour;
        return Math.Min(season.LengthSeconds, ((season.NowSeconds / hour) + 1) * hour);
    }

    private static double StopsEating(Season season, int[] stocked) => Greatest(stocked
        .SelectMany(b => season.State.Cohorts[b]).Select(c => season.Parts.Species[c.SpeciesIndex].FeedingStopsCelsius));

    private static double? To(Fault? fault, int[] stocked, int level)
    {
        double least = fault is null ? double.NaN : Least(stocked.Select(b => fault.MinutesTo[(b * Fault.OxygenLevels.Length) + level]));
        return double.IsNaN(least) ? null : least;
    }

    private static double KilledByCold(Season season, long from, long until) => season.Log.Events
        .Where(e => e.Seconds >= from && e.Seconds <= until && e.What is "frost" or "chill").Sum(e => e.Amount);

    private static double? FirstDeath(Season season, long start)
    {
        Recorder rows = season.Record.Faults.Rows;
        int[] columns = [.. Enumerable.Range(0, rows.Columns.Length).Where(c => rows.Columns[c].Name.StartsWith("died_", StringComparison.Ordinal))];
        double before = double.NaN;
        for (int row = 0; row < rows.RowCount; row++)
        {
            ReadOnlySpan<double> values = rows.Row(row);
            double dead = 0;
            foreach (int column in columns)
            {
                dead += values[column];
            }

            if (values[0] <= start)
            {
                before = dead;
            }
            else if (dead - (double.IsNaN(before) ? 0 : before) >= HalfAFish)
            {
                return Minutes((long)values[0] - start);
            }
        }

        return null;
    }

    private static double? First(Season season, long start, int[] stocked, string head, string tail, Func<double, bool> holds)
    {
        Recorder rows = season.Record.Faults.Rows;
        int[] columns = [.. stocked.Select(b => rows.ColumnIndex($"{head}{season.Parts.BasinNames[b]}{tail}"))];
        for (int row = 0; row < rows.RowCount; row++)
        {
            ReadOnlySpan<double> values = rows.Row(row);
            foreach (int column in columns)
            {
                if (values[0] > start && holds(values[column]))
                {
                    return Minutes((long)values[0] - start);
                }
            }
        }

        return null;
    }

    // Whole hours; between them what died is a fraction of a fish.
    private double DeadUntil(long seconds) => deadByHour[Math.Min(deadByHour.Length - 1, seconds / (long)UnitConstants.SecondsPerHour)];

    private static double Lowest(double[] hours, int from, int count) => Least(hours.Skip(from).Take(count));

    private static double Least(IEnumerable<double> values) => values.Where(double.IsFinite).DefaultIfEmpty(double.NaN).Min();

    private static double Greatest(IEnumerable<double> values) => values.DefaultIfEmpty(double.NegativeInfinity).Max();

    private static double Minutes(long seconds) => (double)seconds / UnitConstants.SecondsPerMinute;
}
