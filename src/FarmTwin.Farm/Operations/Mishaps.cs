using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>What goes wrong in husbandry: begins on its date, ends at a morning round, each with its line in the record.</summary>
public sealed class Mishaps : FarmWork
{
    private readonly FeedingWork _feeding;
    private readonly FilterCare _filters;
    private readonly MineralizerCare _mineralizers;
    private readonly WaterChanges _changes;

    /// <summary>Makes it.</summary>
    public Mishaps(FarmContext farm, FarmLog log, FeedingWork feeding, FilterCare filters, MineralizerCare mineralizers, WaterChanges changes)
        : base(farm, log)
    {
        _feeding = feeding;
        _filters = filters;
        _mineralizers = mineralizers;
        _changes = changes;
    }

    private HusbandryState Now => State.Husbandry;

    /// <summary>Whether a routine falls away because its duty is missed; one that is missed is counted.</summary>
    /// <param name="kind">The routine.</param>
    /// <param name="seconds">Now.</param>
    /// <param name="until">Until when it is missed, seconds.</param>
    public bool IsMissed(FarmEventKind kind, long seconds, out long until)
    {
        until = 0;
        if (DutyOf(kind) is not { } duty || !Now.Misses(duty, seconds))
        {
            return false;
        }

        until = Now.MissedUntilSeconds[(int)duty];
        Now.DutiesMissed++;
        return true;
    }

    private static Duty? DutyOf(FarmEventKind kind) => kind switch
    {
        FarmEventKind.Meal => Duty.Feeding,
        FarmEventKind.FilterCheck => Duty.Washing,
        FarmEventKind.MineralizerCheck or FarmEventKind.SettlingEnds => Duty.Decanting,
        FarmEventKind.DosingCheck => Duty.Dosing,
        FarmEventKind.HarvestBoards or FarmEventKind.FishSale or FarmEventKind.Pick or FarmEventKind.CutMicrogreens => Duty.Harvest,
        FarmEventKind.Sow or FarmEventKind.SowPlanting or FarmEventKind.SowMicrogreens => Duty.Sowing,
        FarmEventKind.Transplant or FarmEventKind.SetOut => Duty.Transplanting,
        FarmEventKind.MorningRound => Duty.Round,
        _ => null,
    };

    /// <summary>Ends every mishap now.</summary>
    public void EndAll(long seconds)
    {
        double day = DayOf(seconds);
        Now.OverfeedUntilDay = Math.Min(Now.OverfeedUntilDay, day);
        Now.ChlorineUntilDay = Math.Min(Now.ChlorineUntilDay, day);
        LowerTo(day, Now.UncoveredUntilDay);
        LowerTo(day, Now.BypassedUntilDay);
        Array.Clear(Now.MissedUntilSeconds);
        MorningRound(seconds);
    }

    private static void LowerTo(double most, double[] values)
    {
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = Math.Min(values[i], most);
        }
    }

    /// <summary>Ends what is over.</summary>
    public void MorningRound(long seconds)
    {
        double day = DayOf(seconds);
        if (Now.OverfeedRation > 0 && day >= Now.OverfeedUntilDay)
        {
            Now.OverfeedRation = 0;
            Log.Add(seconds, "overfeeding ends", "all tanks", State.Operations.RationShare, "of appetite", string.Empty);
        }

        double usual = SourceChlorine(Parts.Farm.SourceWater);
        if (Now.SourceChlorineGramsPerLitre != usual && day >= Now.ChlorineUntilDay)
        {
            Now.SourceChlorineGramsPerLitre = usual;
            Log.Add(seconds, "source water is dechlorinated again", "source water", usual * UnitConstants.GramsPerKilogram, "mg/L", string.Empty);
        }

        for (int b = 0; b < Now.UncoveredShare.Length; b++)
        {
            if (Now.UncoveredShare[b] > 0 && day >= Now.UncoveredUntilDay[b])
            {
                Now.UncoveredShare[b] = 0;
                Log.Add(seconds, "cover back", Parts.BasinNames[b], State.Algae.DryGrams[b], "g", "the algae die in the dark and drift as solids");
            }
        }

        for (int f = 0; f < Now.CaptureShare.Length; f++)
        {
            if (Now.CaptureShare[f] < 1 && day >= Now.BypassedUntilDay[f])
            {
                Now.CaptureShare[f] = 1;
                Log.Add(seconds, "filter takes its flow again", Parts.FilterNames[f], 1, "of flow", string.Empty);
            }
        }
    }

    /// <summary>Applies a mishap; false where the event is none.</summary>
    public bool Apply(PlannedEvent planned, long seconds)
    {
        switch (planned)
        {
            case MissChores miss:
                Miss(miss, seconds);
                return true;
            case Overfeed overfeed:
                Feed(overfeed, seconds);
                return true;
            case ChlorinatedTopUp topUp:
                Chlorinate(topUp, seconds);
                return true;
            case Pesticide spray:
                Spray(spray, seconds);
                return true;
            case UncoverWater uncover:
                int open = Parts.BasinIndex(uncover.Basin);
                Now.UncoveredShare[open] = uncover.Share;
                Now.UncoveredUntilDay[open] = DayOf(seconds) + uncover.Days;
                Log.Add(seconds, "uncover water", uncover.Basin, uncover.Share, "of cover", $"for {uncover.Days:0.#} days: light grows algae");
                return true;
            case DecantEarly decant:
                _mineralizers.DecantEarly(Named([.. Parts.Farm.Mineralizers.Keys], decant.Mineralizer), decant.Share, seconds);
                return true;
            case WashHard wash:
                _filters.WashHard(Named(Parts.FilterNames, wash.Filter), wash.StripShare, seconds);
                return true;
            case BypassFilter bypass:
                int filter = Named(Parts.FilterNames, bypass.Filter);
                Now.CaptureShare[filter] = 1 - bypass.Share;
                Now.BypassedUntilDay[filter] = DayOf(seconds) + bypass.Days;
                Log.Add(seconds, "bypass filter", bypass.Filter, bypass.Share, "of flow", $"for {bypass.Days:0.#} days: solids go on to tanks and roots");
                return true;
            default:
                return false;
        }
    }

    /// <summary>Tells of the dead and of withheld feed, tank by tank; call at midnight.</summary>
    public void EndDay(long seconds)
    {
        Now.Deaths.EndDay();
        for (int b = 0; b < Now.DiedToday.Length; b++)
        {
            double died = Now.DiedToday[b];
            Now.DiedToday[b] = 0;
            bool withheld = Now.WithheldToday[b];
            Now.WithheldToday[b] = false;
            double before = died;
            foreach (Cohort cohort in State.Cohorts[b])
            {
                before += cohort.Number;
            }

            HusbandryParameters limits = Parts.Husbandry;
            if (died >= limits.DeathFishReportedPerDay || (died >= HalfAFish && died > limits.DeathShareReportedPerDay * before))
            {
                Now.HighDeathTankDays++;
                Log.Add(seconds, "deaths to act on", Parts.BasinNames[b], died, "fish", $"of {before:0} in a day: find the cause, write it down, ask a fish health professional");
            }

            if (withheld)
            {
                Now.WithheldTankDays++;
                Log.Add(seconds, "feed withheld", Parts.BasinNames[b], 1, "d", "a day of welfare: the water was too bad to feed");
            }
        }
    }

    /// <summary>Residual chlorine that source water brings by description, g/L.</summary>
    public static double SourceChlorine(SourceWaterDescription water)
    {
        ArgumentNullException.ThrowIfNull(water);
        return water.Dechlorinated ? 0 : water.ChlorineMilligramsPerLitre / UnitConstants.GramsPerKilogram;
    }

    private const double HalfAFish = 0.5;

    private void Miss(MissChores miss, long seconds)
    {
        long until = seconds + (long)(miss.Days * UnitConstants.SecondsPerDay);
        IReadOnlyList<Duty> chores = miss.Chores.Count > 0 ? miss.Chores : Enum.GetValues<Duty>();
        foreach (Duty chore in chores)
        {
            Now.MissedUntilSeconds[(int)chore] = Math.Max(until, Now.MissedUntilSeconds[(int)chore]);
        }

        string which = miss.Chores.Count > 0 ? string.Join(", ", chores).ToLowerInvariant() : "all chores";
        Log.Add(seconds, "chores missed", "farm", miss.Days, "d", $"nobody does: {which}");
    }

    private void Feed(Overfeed overfeed, long seconds)
    {
        if (overfeed.Grams is { } grams)
        {
            double uneaten = _feeding.ThrowIn(overfeed.Tank is { } tank ? Parts.BasinIndex(tank) : -1, grams);
            Log.Add(seconds, "overfeed", overfeed.Tank ?? "all tanks", grams, "g", $"{uneaten:0} g are left lying");
            return;
        }

        Now.OverfeedRation = overfeed.RationShare;
        Now.OverfeedUntilDay = DayOf(seconds) + overfeed.Days;
        Log.Add(seconds, "overfeed", "all tanks", overfeed.RationShare, "of appetite", $"for {overfeed.Days:0.#} days, whatever the water is like");
    }

    private void Chlorinate(ChlorinatedTopUp topUp, long seconds)
    {
        double chlorine = topUp.ChlorineMilligramsPerLitre ?? Parts.Farm.SourceWater.ChlorineMilligramsPerLitre;
        Now.SourceChlorineGramsPerLitre = chlorine / UnitConstants.GramsPerKilogram;
        Now.ChlorineUntilDay = DayOf(seconds) + topUp.Days;
        string filled = string.Empty;
        if (topUp.Basin is { } name && topUp.Litres > 0)
        {
            int basin = Parts.BasinIndex(name);
            double litres = Math.Max(0, Math.Min(topUp.Litres, _changes.Room(basin)));
            _changes.LetIn(basin, litres);
            filled = $", {litres:0} L by hand into {name}";
        }

        Log.Add(seconds, "chlorinated top-up", "source water", chlorine, "mg/L", $"for {topUp.Days:0.#} days{filled}");
    }

    private void Spray(Pesticide spray, long seconds)
    {
        HusbandryParameters numbers = Parts.Husbandry;
        int basin = Parts.BasinIndex(spray.Basin);
        double grams = (spray.ActiveMilligramsPerSquareMetre ?? numbers.SprayMilligramsPerSquareMetre) * spray.SquareMetres * numbers.SprayDripShare / UnitConstants.GramsPerKilogram;
        State.Basins.Grams[WaterStep.At(basin, Substance.Pesticide)] += grams / numbers.SprayLethalMilligramsPerLitre;
        Now.SprayedDay = DayOf(seconds);
        Log.Add(seconds, "pesticide", spray.Basin, grams * UnitConstants.GramsPerKilogram, "mg",
            $"drip from {spray.SquareMetres:0.#} m2 into the water; enough to poison {grams * UnitConstants.GramsPerKilogram / numbers.SprayLethalMilligramsPerLitre:0} L for fish");
    }

    private static int Named(string[] names, string name) => Array.IndexOf(names, name) is >= 0 and var index
        ? index
        : throw new DescriptionException($"There is no '{name}'. There are: {string.Join(", ", names)}.");
}
