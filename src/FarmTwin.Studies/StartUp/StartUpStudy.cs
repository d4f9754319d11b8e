using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.StartUp;

/// <summary>What a way to start came to.</summary>
/// <param name="Choice">The way.</param>
/// <param name="Cycled">
/// Band of the day: fishless, on which the filter has passed its challenge twice; with fish, from which their water stays within its limits, as
/// far as this batch's feed goes. Low ammonia of few fish proves no more than that.
/// </param>
/// <param name="Nitrite">Highest nitrite of the fish loop until then (or to the end), mg N/L.</param>
/// <param name="HoursOfHarm">Hours in which fish stood in nitrite, ammonia or unionized ammonia above their bands.</param>
/// <param name="Dead">Fish dead of those delivered, share.</param>
/// <param name="Days">The day of each replicate; not a number where it never came.</param>
public sealed record StartUpRow(StartUpChoice Choice, Band Cycled, Band Nitrite, Band HoursOfHarm, Band Dead, IReadOnlyList<double> Days);

/// <summary>A start-up study that was played.</summary>
/// <param name="Title">The farm.</param>
/// <param name="Start">Its first day.</param>
/// <param name="Replicates">Replicates.</param>
/// <param name="LongestDays">Days looked at.</param>
/// <param name="Rows">A row a way, the plan as it stands first.</param>
public sealed record StartUpResult(string Title, DateOnly Start, int Replicates, int LongestDays, IReadOnlyList<StartUpRow> Rows)
{
    /// <summary>What the rows come to.</summary>
    public IReadOnlyList<string> Sentences()
    {
        StartUpRow planned = Rows[0];
        var sentences = new List<string>
        {
            $"As planned the filter is cycled {Days(planned)}: order the first fish for then, not before.",
        };
        StartUpRow none = Rows.First(r => r.Choice.Words == "fishless, no mature media");
        StartUpRow tenth = Rows.First(r => r.Choice.Words == "fishless, 10% mature media");
        double[] bought = [.. none.Days.Zip(tenth.Days, (n, t) => (double.IsNaN(n) ? LongestDays : n) - t).Where(double.IsFinite)];
        if (bought.Length > 0)
        {
            Band gain = Band.Of(bought);
            sentences.Add($"A tenth of mature media buys {gain.Median:0} days ({gain.Low:0} to {gain.High:0}) against none ({Days(none)}), from a farm whose fish are known to be healthy; bottled bacteria count as none until a test shows otherwise.");
        }

        foreach (StartUpRow fish in Rows.Where(r => r.Choice.HasFish))
        {
            sentences.Add($"Started {fish.Choice.Words}, the fish's water stays within its limits {Quiet(fish)}; until then they stand above a limit of nitrite or ammonia for {fish.HoursOfHarm.Median:0} hours ({fish.HoursOfHarm.Low:0} to {fish.HoursOfHarm.High:0}); {fish.Dead.Median:0%} die. "
                + (fish.HoursOfHarm.Median > 24 ? "That is paid by the animals: prefer the fishless start." : "They bear it in most replicates; test twice a day all the same."));
        }

        sentences.Add("What makes the band wide is what the media keeps of its life and how fast the nitrifiers grow: only the test, 2 mg N/L gone within a day, twice, says that the filter is cycled.");
        return sentences;
    }

    private string Quiet(StartUpRow row) => row.Cycled.Count == 0 ? $"on no day of the first {LongestDays}"
        : $"from day {row.Cycled.Median:0} on ({row.Cycled.Low:0} to {row.Cycled.High:0}{(row.Cycled.Missing > 0 ? $", not within {LongestDays} days in {row.Cycled.Missing} of {Replicates}" : string.Empty)})";

    private string Days(StartUpRow row) => row.Cycled.Count == 0 ? $"on no day of the first {LongestDays}"
        : $"on day {row.Cycled.Median:0}, in four of five replicates between day {row.Cycled.Low:0} and {row.Cycled.High:0}{(row.Cycled.Missing > 0 ? $", not within {LongestDays} days in {row.Cycled.Missing} of {Replicates}" : string.Empty)}";
}

/// <summary>Plays ways to bring the filter to life, with the inoculum unknown.</summary>
public static class StartUpStudy
{
    /// <summary>Plays them.</summary>
    /// <param name="plan">The plan; its farm has a filter and fish.</param>
    /// <param name="library">The library.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="replicates">Replicates, from 1.</param>
    /// <param name="longestDays">Days looked at, from 1.</param>
    /// <param name="threads">Seasons at once, from 1; the result is the same.</param>
    /// <param name="cancellation">Stops before the next season.</param>
    /// <exception cref="DescriptionException">The farm has no filter or no fish.</exception>
    public static StartUpResult Play(FarmPlan plan, FarmLibrary library, ulong seed, int replicates, int longestDays, int threads, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Farm.Filters.Count == 0 || plan.Farm.Stocking.Count == 0)
        {
            throw new DescriptionException("a start-up needs a filter under 'filters' and a batch under 'stocking'.");
        }

        IReadOnlyList<StartUpChoice> choices = StartUpChoice.All;
        Outcome[] outcomes = ParallelRuns.Play(
            choices.Count * replicates, threads, i => Start(plan, choices[i / replicates], library, seed, (uint)(i % replicates) + 1, longestDays), null, cancellation);
        return new StartUpResult(plan.Farm.Title, plan.Farm.Start, replicates, longestDays, [.. choices.Select((c, k) =>
        {
            Outcome[] own = [.. outcomes.Skip(k * replicates).Take(replicates)];
            return new StartUpRow(c, Band.Of(own.Select(o => o.Day)), Band.Of(own.Select(o => o.Nitrite)), Band.Of(own.Select(o => o.Harm)), Band.Of(own.Select(o => o.Dead)), [.. own.Select(o => o.Day)]);
        })]);
    }

    // With fish the season is played to its end: what counts is what they bore, and from when on they bore nothing more.
    private static Outcome Start(FarmPlan plan, StartUpChoice choice, FarmLibrary library, ulong seed, uint replicate, int longestDays)
    {
        FarmDescription farm = choice.Apply(plan.Farm) with { LengthDays = longestDays };
        Season season = plan.With(choice.Words, farm).Begin(seed, replicate);
        for (int d = 1; d <= longestDays && (choice.HasFish || double.IsNaN(season.State.Operations.CycledDay)); d++)
        {
            season.Advance(FarmWork.At(d, 0));
        }

        var record = new RecordView(season);
        SummaryBands bands = SummaryBands.From(library);
        double[] tan = record.Hours("tan_fish_loop_mgN_per_L");
        double[] no2 = record.Hours("nitrite_fish_loop_mgN_per_L");
        double[] nh3 = record.Hours("ammonia_unionized_tanks_mgN_per_L");
        int[] harm = [.. Enumerable.Range(0, tan.Length).Where(h => record.Stocked[h] && (tan[h] > bands.TanHigh || no2[h] > bands.NitriteHigh || nh3[h] > bands.UnionizedAmmoniaHigh))];
        double nitrite = no2.Where(double.IsFinite).DefaultIfEmpty(double.NaN).Max();
        double delivered = season.State.Totals.FishDelivered;
        double day = choice.HasFish ? QuietFrom(record, harm, longestDays) : Math.Floor(season.State.Operations.CycledDay);
        return new Outcome(day, nitrite, harm.Length, delivered > 0 ? season.State.Totals.FishDied / delivered : double.NaN);
    }

    // The day after the last hour of harm; none where the harm goes on to the last week.
    private static double QuietFrom(RecordView record, int[] harm, int longestDays)
    {
        double last = harm.Length > 0 ? RecordView.DayOfHour(harm[^1]) + 1 : RecordView.DayOfHour(Enumerable.Range(0, record.Stocked.Count).FirstOrDefault(h => record.Stocked[h]));
        return last > longestDays - FarmTwin.Farm.UnitConstants.DaysPerWeek ? double.NaN : last;
    }

    private readonly record struct Outcome(double Day, double Nitrite, double Harm, double Dead);
}
