using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Studies.Compare;

/// <summary>Plays farms under one seed, finds the first sign by which a person could tell them apart, and acts on it a little earlier or later.</summary>
/// <remarks>The same result for any number of threads.</remarks>
public static class ComparisonStudy
{
    /// <summary>Days after the sign on which is acted.</summary>
    public static IReadOnlyList<int> Delays { get; } = [0, 1, 3];

    /// <summary>Minutes after a fault of the plan on which is acted besides.</summary>
    public static IReadOnlyList<int> MinutesAfterAFault { get; } = [15, 30, 60];

    // More dead than on the reference by these: then the water, or the air, is at fault, and care is worth trying.
    private const double SomeFish = 2;

    /// <summary>Plays it.</summary>
    /// <param name="plans">The reference, then the others; at least two.</param>
    /// <param name="library">The parameter library.</param>
    /// <param name="seed">Seed of all chance.</param>
    /// <param name="days">Days compared; those of the shortest season when null.</param>
    /// <param name="threads">Seasons played at once.</param>
    /// <param name="remedies">Remedies that the plans state for themselves, by their place among the plans.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="DescriptionException">A farm cannot be computed, or they begin on different days.</exception>
    public static SideBySide Play(IReadOnlyList<FarmPlan> plans, FarmLibrary library, ulong seed, int? days = null, int threads = 1,
        IReadOnlyDictionary<int, StatedRemedy>? remedies = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentOutOfRangeException.ThrowIfLessThan(plans.Count, 2);
        foreach (FarmPlan other in plans.Where(p => p.Farm.Start != plans[0].Farm.Start))
        {
            throw new DescriptionException($"{other.Name} begins on {other.Farm.Start:d MMM yyyy} and {plans[0].Name} on {plans[0].Farm.Start:d MMM yyyy}: only seasons that begin on one day can be held against each other; set 'start'.");
        }

        int length = Math.Min(days ?? int.MaxValue, (int)plans.Min(p => p.Farm.LengthDays));
        FarmDescription[] farms = [.. plans.Select(p => p.Farm with { LengthDays = length })];
        Season[] seasons = ParallelRuns.Play(plans.Count, threads, i => Whole(farms[i], library, seed, plans[i].Name), cancellation: cancel);
        ComparedFarm[] compared = [.. seasons.Select((s, i) => Farm(plans[i].Name, s, library))];
        var pairs = new List<ComparedPair>();
        for (int i = 1; i < plans.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            LineParting[] partings = Partings(seasons[0], seasons[i], library, out LineParting? sign);
            if (sign is null)
            {
                pairs.Add(new ComparedPair(compared[i], partings, null, "No line of the daily sheet tells the two apart: there is nothing to act on.", []));
                continue;
            }

            var acting = new ActingTrial(farms[0], farms[i], library, seed, remedies?.GetValueOrDefault(i));
            bool harmed = compared[i].Dead > compared[0].Dead + SomeFish;
            pairs.Add(new ComparedPair(compared[i], partings, sign, acting.Reason, acting.Try(sign, compared[i], harmed, threads)));
        }

        return new SideBySide(seed, length, plans[0].Farm.Start, plans[0].Farm.Currency, compared[0], pairs);
    }

    private static Season Whole(FarmDescription farm, FarmLibrary library, ulong seed, string name)
    {
        try
        {
            var season = new Season(farm, library, seed);
            season.AdvanceToEnd();
            return season;
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{name}: {e.Message}");
        }
    }

    private static ComparedFarm Farm(string name, Season season, FarmLibrary library) =>
        new(name, season.Parts.Farm.Title, SeasonOutcome.Of(season, library), season.State.Totals.FishDied);

    private static LineParting[] Partings(Season reference, Season season, FarmLibrary library, out LineParting? sign)
    {
        IReadOnlyList<DailySheetLine> lines = DailySheet.Of(reference.Parts, library);
        var a = new SheetSource(reference);
        var b = new SheetSource(season);
        LineParting[] partings = [.. lines.Select(l => LineParting.Find(l, a, b, warning: false)).OfType<LineParting>().OrderBy(p => p.Day)];
        sign = lines.Select(l => LineParting.Find(l, a, b, warning: true)).OfType<LineParting>().OrderBy(p => p.Day).FirstOrDefault() ?? partings.FirstOrDefault();
        return partings;
    }
}
