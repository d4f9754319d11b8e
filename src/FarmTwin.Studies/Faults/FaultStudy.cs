using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Studies.Batch;

namespace FarmTwin.Studies.Faults;

/// <summary>Lets every pump, blower, heater, valve, lamp and the mains fail in turn, each at its worst hour.</summary>
/// <remarks>
/// One season is played without faults, and played again to be saved at every hour that some part is to break at; each fault is a branch
/// from there. Faults and mishaps of the scenario's own plan are left out, so that each is seen by itself. The same result for any number
/// of threads.
/// </remarks>
public static class FaultStudy
{
    /// <summary>Hours that the mains stay off where nothing else is asked for: a night.</summary>
    public const double UsualOutageHours = 12;

    /// <summary>Plays it.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="library">The parameter library.</param>
    /// <param name="seed">Seed of all chance.</param>
    /// <param name="outageHours">How long the mains stay off.</param>
    /// <param name="threads">How many faults are tried at once.</param>
    /// <param name="told">Told of each fault that is done, one at a time: how many are, of how many; may be null.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="DescriptionException">The farm cannot be computed.</exception>
    public static FaultStudyResult Play(
        FarmDescription farm, FarmLibrary library, ulong seed, double outageHours = UsualOutageHours, int threads = 1, Action<int, int>? told = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(farm);
        FarmDescription sound = Sound(farm);
        var whole = new Season(sound, library, seed);
        double[] deadByHour = PlayByHours(whole);
        var hours = new WorstHours(whole);
        (IReadOnlyList<FaultCase> cases, IReadOnlyList<string> notTried, Dictionary<long, SeasonSnapshot> snapshots) = Prepare(sound, library, seed, outageHours, hours);
        var trial = new FaultTrial(library, seed, whole, deadByHour);
        int finished = 0;
        FaultRow[] rows = ParallelRuns.Play(
            cases.Count, threads, i => Row(cases[i], snapshots[cases[i].Hour.Seconds], sound, trial), (_, _) => told?.Invoke(++finished, cases.Count), cancel);
        return new FaultStudyResult(
            farm.Title, farm.Start, farm.LengthDays, seed, outageHours, farm.People.Count > 0, farm.Alarms.Count > 0, farm.Currency,
            [.. rows.Select((r, i) => (Row: r, Order: i)).OrderByDescending(r => r.Row.Severity).ThenBy(r => r.Order).Select(r => r.Row)], notTried);
    }

    /// <summary>The farm without the faults and mishaps of its plan.</summary>
    public static FarmDescription Sound(FarmDescription farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        return farm with { Plan = farm.Plan.Where(p => !IsMishap(p.Value)).ToDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal) };
    }

    // The clock stops at every hour anyhow.
    private static double[] PlayByHours(Season whole)
    {
        const long hour = (long)UnitConstants.SecondsPerHour;
        var dead = new double[(whole.LengthSeconds / hour) + 1];
        for (int h = 1; h < dead.Length; h++)
        {
            whole.Advance(h * hour);
            dead[h] = whole.State.Totals.FishDied;
        }

        whole.AdvanceToEnd();
        return dead;
    }

    private static bool IsMishap(PlannedEvent planned) => planned is FaultEvent or MainsReturn or MissChores or Overfeed or ChlorinatedTopUp or Pesticide
        or UncoverWater or DecantEarly or WashHard or BypassFilter or NoDelivery or ProbeDrifts or PutRight;

    // The cases need what the valves carry at the hour after feeding, and that hour is known from the season; so the snapshots come first.
    private static (IReadOnlyList<FaultCase> Cases, IReadOnlyList<string> NotTried, Dictionary<long, SeasonSnapshot> Snapshots) Prepare(
        FarmDescription sound, FarmLibrary library, ulong seed, double outageHours, WorstHours hours)
    {
        WorstHour?[] all = [hours.AfterFeeding, hours.ColdWithFish, hours.ColdWithPlants, hours.Darkest, hours.Brightest, hours.Thirstiest];
        var snapshots = new Dictionary<long, SeasonSnapshot>();
        var exchange = new Dictionary<string, double>(StringComparer.Ordinal);
        var season = new Season(sound, library, seed);
        foreach (long seconds in all.OfType<WorstHour>().Select(h => h.Seconds).Distinct().Order())
        {
            season.Advance(seconds);
            snapshots[seconds] = season.Save();
            if (seconds == hours.AfterFeeding?.Seconds)
            {
                for (int v = 0; v < season.Network.ValveNames.Length; v++)
                {
                    exchange[season.Network.ValveNames[v]] = season.State.ValveFlow[v];
                }
            }
        }

        (IReadOnlyList<FaultCase> cases, IReadOnlyList<string> notTried) = FaultCases.Of(sound, hours, outageHours, exchange);
        return (cases, notTried, snapshots);
    }

    private static FaultRow Row(FaultCase one, SeasonSnapshot snapshot, FarmDescription farm, FaultTrial trial)
    {
        long start = snapshot.TimeSeconds;
        Season season = trial.Play(one, snapshot, farm);
        FaultHarm harm = trial.Read(season, start);
        FaultAlarm? alarm = trial.FirstAlarm(season, start);
        double lasted = (harm.MinutesToMended ?? (season.NowSeconds - start) / (double)UnitConstants.SecondsPerMinute) / UnitConstants.SecondsPerMinute;
        var search = new BackupSearch(farm, trial);
        IReadOnlyList<BackupOption> backups = harm.IsHarm ? search.Find(one, snapshot, lasted, harm.HarmsFish) : [];
        OxygenTrace? oxygen = harm.MinutesTo4MgPerL is null ? null : trial.Trace(season, snapshot);
        OxygenTrace? saved = backups.FirstOrDefault(b => b.Saves && b.Kind == BackupSearch.BatteryAirKind) is { } battery ? search.TraceWith(one, snapshot, battery) : null;
        IReadOnlyList<BackupRun> ran = FaultTrial.BackupsThatRan(season, start);
        season.AdvanceToEnd();
        double[] stocks = season.ClosingStocks();
        double closure = Enumerable.Range(0, stocks.Length).Max(l => season.State.Books[l].ClosureError(stocks[l]));
        return new FaultRow(one, harm, alarm, ran, trial.Loss(season), backups, oxygen, saved, closure);
    }
}
