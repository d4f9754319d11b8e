using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;

namespace FarmTwin.Studies.Compare;

/// <summary>Branches a farm at the sign, and a little later, and lets it go on differently.</summary>
internal sealed class ActingTrial
{
    private readonly FarmDescription _reference;
    private readonly FarmDescription _farm;
    private readonly FarmDescription? _goingOn;
    private readonly FarmLibrary _library;
    private readonly ulong _seed;
    private readonly double _hour;
    private readonly StatedRemedy? _remedy;

    /// <summary>Makes it.</summary>
    public ActingTrial(FarmDescription reference, FarmDescription farm, FarmLibrary library, ulong seed, StatedRemedy? remedy)
    {
        _reference = reference;
        _farm = farm;
        _library = library;
        _seed = seed;
        _hour = DailySheetParameters.From(library).EveningHour;
        try
        {
            SeasonSnapshot beginning = new Season(farm, library, seed).Save();
            new Season(reference, library, seed).TakeOver(beginning);
            FarmDescription goingOn = ActingFarm.GoingOnAs(reference, farm);
            new Season(goingOn, library, seed).TakeOver(beginning);
            _goingOn = goingOn;
            Reason = "From that hour on it goes on as the reference has it, with its own ground, water, fish and plants as they stand: whatever is broken is mended, mishaps end, "
                + "and what is set, fed, dosed, sown, bought and still to be stocked is the reference's.";
        }
        catch (DescriptionException e)
        {
            Reason = $"It cannot go on as the reference has it ({e.Message.TrimEnd('.')}).";
        }

        if (remedy is not null && SeasonTakesOver(remedy.Farm))
        {
            _remedy = remedy with { Farm = remedy.Farm with { LengthDays = farm.LengthDays } };
        }
    }

    /// <summary>Why the farm can, or cannot, go on as the reference has it.</summary>
    public string Reason { get; }

    private bool SeasonTakesOver(FarmDescription remedied)
    {
        try
        {
            new Season(remedied, _library, _seed).TakeOver(new Season(_farm, _library, _seed).Save());
            return true;
        }
        catch (DescriptionException)
        {
            // A remedy that rebuilds the farm cannot be had on the way.
            return false;
        }
    }

    /// <summary>Tries every way with every delay.</summary>
    /// <param name="sign">What is acted on.</param>
    /// <param name="notActing">What the farm comes to where nobody acts.</param>
    /// <param name="harmed">Whether its fish are harmed, so that emergency care is of use.</param>
    /// <param name="threads">Branches played at once.</param>
    public IReadOnlyList<WayOfActing> Try(LineParting sign, ComparedFarm notActing, bool harmed, int threads)
    {
        long length = (long)(_farm.LengthDays * UnitConstants.SecondsPerDay);
        Moment[] moments = Moments([.. Times(sign.Day).Where(t => t.Seconds < length)]);
        var ways = new List<Way>();
        if (_goingOn is { } goingOn)
        {
            ways.Add(new Way("asReference", "as the reference from then on", _ => goingOn, true, false));
        }

        if (_remedy is { } remedy)
        {
            ways.Add(new Way("remedy", $"the remedy that the file states: {remedy.About}", m => ActingFarm.Remedied(_farm, remedy.Farm, m.Snapshot.TimeSeconds), false, false));
        }

        if (harmed && Broken(sign.Day) is null)
        {
            ways.Add(new Way("care", "emergency care: no feed, more air, a fifth of the tanks' water changed every day, chloride against nitrite, loops apart, for a week", _ => _farm, false, true));
            if (_goingOn is { } also)
            {
                ways.Add(new Way("both", "as the reference, and emergency care", _ => also, true, true));
            }
        }

        Act[] acts = ParallelRuns.Play(ways.Count * moments.Length, threads, i => Play(moments[i % moments.Length], ways[i / moments.Length], sign, notActing));
        return [.. ways.Select((w, i) => new WayOfActing(w.Key, w.InWords, acts[(i * moments.Length)..((i + 1) * moments.Length)]))];
    }

    // Something that broke about the day of the sign: then it is the repair, or a backup, that saves, and not emergency care.
    private FaultEvent? Broken(int signDay) => _farm.Plan.Values.OfType<FaultEvent>()
        .Where(f => f.Day >= signDay - 1 && f.Day < signDay + 1).OrderBy(f => FarmWork.At(f.Day, f.Hour)).FirstOrDefault();

    // What breaks by the minute is answered by the minute too: a day later the fish are dead.
    private IEnumerable<(string When, double Delay, long Seconds)> Times(int signDay)
    {
        long evening = FarmWork.At(signDay, _hour);
        FaultEvent? fault = Broken(signDay);
        if (fault is not null)
        {
            foreach (int minutes in ComparisonStudy.MinutesAfterAFault)
            {
                long at = FarmWork.At(fault.Day, fault.Hour) + (minutes * UnitConstants.SecondsPerMinute);
                yield return (FormattableString.Invariant($"{minutes} min after it broke"), FarmWork.DayOf(at - evening), at);
            }
        }

        foreach (int days in ComparisonStudy.Delays)
        {
            // Nobody acts in the evening on what breaks at night.
            long at = evening + (days * UnitConstants.SecondsPerDay);
            if (fault is null || at > FarmWork.At(fault.Day, fault.Hour) + (ComparisonStudy.MinutesAfterAFault[^1] * UnitConstants.SecondsPerMinute))
            {
                yield return (days == 0 ? "that evening" : days == 1 ? "a day later" : days == 3 ? "three days later" : FormattableString.Invariant($"{days} days later"), days, at);
            }
        }
    }

    private Moment[] Moments((string When, double Delay, long Seconds)[] times)
    {
        var farm = new Season(_farm, _library, _seed);
        var reference = new Season(_reference, _library, _seed);
        var moments = new Moment[times.Length];
        for (int t = 0; t < times.Length; t++)
        {
            farm.Advance(times[t].Seconds);
            reference.Advance(times[t].Seconds);
            moments[t] = new Moment(times[t].When, times[t].Delay, farm.Save(), _goingOn is null ? [] : ActingFarm.SetAs(reference, farm));
        }

        return moments;
    }

    private Act Play(Moment moment, Way way, LineParting sign, ComparedFarm notActing)
    {
        FarmDescription plan = way.Plan(moment);
        if (way.Care)
        {
            Season standing = Branch(plan, moment, way.SetAsReference);
            var withCare = new Dictionary<string, PlannedEvent>(plan.Plan, StringComparer.Ordinal);
            foreach ((string name, PlannedEvent planned) in ActingFarm.Care(standing, _library))
            {
                withCare[name] = planned;
            }

            plan = plan with { Plan = withCare };
        }

        Season season = Branch(plan, moment, way.SetAsReference);
        season.AdvanceToEnd();
        SeasonOutcome outcome = SeasonOutcome.Of(season, _library);
        double dead = season.State.Totals.FishDied;
        return new Act(
            moment.When, moment.Delay, moment.Snapshot.TimeSeconds, new ComparedFarm(notActing.Name, notActing.Title, outcome, dead),
            notActing.Dead - dead,
            Fish(outcome) - Fish(notActing.Outcome),
            outcome["first_grade_heads"] - notActing.Outcome["first_grade_heads"],
            outcome["crops_kg"] - notActing.Outcome["crops_kg"],
            outcome["margin"] - notActing.Outcome["margin"],
            outcome.WorstClosure,
            sign.Line.Read(new SheetSource(season)));
    }

    private Season Branch(FarmDescription plan, Moment moment, bool asReference)
    {
        var season = new Season(plan, _library, _seed);
        season.TakeOver(moment.Snapshot);
        foreach (PlannedEvent planned in asReference ? moment.SetAs : [])
        {
            season.Apply(planned);
        }

        return season;
    }

    private static double Fish(SeasonOutcome outcome) => outcome["fish_sold_kg"] + outcome["fish_standing_kg"];

    private sealed record Way(string Key, string InWords, Func<Moment, FarmDescription> Plan, bool SetAsReference, bool Care);

    private sealed record Moment(string When, double Delay, SeasonSnapshot Snapshot, IReadOnlyList<PlannedEvent> SetAs);
}
