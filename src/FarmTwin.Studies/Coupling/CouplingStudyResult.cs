using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Studies.Coupling;

/// <summary>A coupling study that was played.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Seed">The seed.</param>
/// <param name="Replicates">Replicates.</param>
/// <param name="WindowDays">Days looked at from each candidate day on.</param>
/// <param name="Days">Candidate days.</param>
/// <param name="Candidates">Every day and way, by day and then in the order of <see cref="CouplingOption.All"/>.</param>
/// <param name="Eased">What might bring the day forward, tried; the first is the plan as it stands.</param>
/// <param name="Limits">The limits, in the order of <see cref="CouplingLimit.All"/>.</param>
public sealed record CouplingStudyResult(
    FarmPlan Plan, ulong Seed, int Replicates, int WindowDays, IReadOnlyList<int> Days, IReadOnlyList<CouplingCandidate> Candidates,
    IReadOnlyList<Easing> Eased, double[] Limits)
{
    /// <summary>The candidate of a day and way.</summary>
    public CouplingCandidate At(int day, string option) => Candidates.First(c => c.Day == day && c.Option.Key == option);

    /// <summary>The advice that the candidates come to.</summary>
    public CouplingAdvice Advice() => CouplingAdvice.Of(this);
}

/// <summary>What to do, and why.</summary>
/// <param name="Option">The way to open by; null where no day of the range may be used.</param>
/// <param name="FirstDay">First day of the window in which the valves may be opened.</param>
/// <param name="LastDay">Last day of it.</param>
/// <param name="Fallback">What to do where the gates do not hold by then.</param>
/// <param name="Sentences">The advice in sentences: what, why not earlier, what waiting costs, what would bring it forward, the fallback.</param>
public sealed record CouplingAdvice(CouplingOption? Option, int? FirstDay, int? LastDay, CouplingOption Fallback, IReadOnlyList<string> Sentences)
{
    // Four replicates of five: beyond that a plan is a bet. Own choice.
    private const double Enough = 0.8;

    // Less than a market stall would notice in a month. Own choice.
    private const double NothingGainedKilograms = 2;

    internal static CouplingAdvice Of(CouplingStudyResult result)
    {
        // The earliest day that enough replicates bear; of the ways that bear it, the one that most do, and of equals the gentlest.
        CouplingCandidate? first = result.Candidates.Where(c => c.Option.Opens && c.Kept >= Enough)
            .OrderBy(c => c.Day).ThenByDescending(c => c.Kept).FirstOrDefault();
        CouplingOption fallback = StayingApart(result);
        var sentences = new List<string>();
        if (first is null)
        {
            CouplingCandidate best = result.Candidates.Where(c => c.Option.Opens).OrderByDescending(c => c.Kept).ThenBy(c => c.Day).First();
            sentences.Add($"Do not open the valves between {Date(result, result.Days[0])} and {Date(result, result.Days[^1])}: no day and way keeps every gate and limit in four of five replicates. "
                + $"The best is {Date(result, best.Day)} {best.Option.Words}, kept in {Count(result, best.Kept)}; what breaks: {Breaks(result, best)}.");
            Forward(result, sentences);
            sentences.Add(FallbackSentence(result, fallback, result.Days[^1]));
            return new CouplingAdvice(null, null, null, fallback, sentences);
        }

        int last = first.Day;
        foreach (int day in result.Days.Where(d => d > first.Day))
        {
            if (result.At(day, first.Option.Key).Kept < Enough)
            {
                break;
            }

            last = day;
        }

        string window = last > first.Day ? $"between {Date(result, first.Day)} and {Date(result, last)}" : $"on {Date(result, first.Day)}";
        sentences.Add($"Open the valves {first.Option.Words} {window}: opened on the first of these days, every gate and every limit of the {result.WindowDays} days after it holds in {Count(result, first.Kept)}.");
        int before = result.Days.Where(d => d < first.Day).DefaultIfEmpty(-1).Last();
        if (before >= 0)
        {
            CouplingCandidate earlier = result.At(before, first.Option.Key);
            sentences.Add($"Not yet on {Date(result, before)}: only {Count(result, earlier.Kept)} keep everything; what breaks: {Breaks(result, earlier)}.");
        }

        if (last < result.Days[^1])
        {
            int after = result.Days.First(d => d > last);
            sentences.Add($"From {Date(result, after)} on less than four of five keep everything: {Breaks(result, result.At(after, first.Option.Key))}.");
        }

        CouplingCandidate abrupt = result.At(first.Day, "at-once");
        if (first.Option.Key != "at-once")
        {
            sentences.Add(abrupt.Kept >= Enough
                ? $"At once on {Date(result, first.Day)} would keep everything in {Count(result, abrupt.Kept)}, with the fish's water falling by up to {Worst(abrupt, "fall-hour").High:0.0} K in an hour; the ramp costs some days and can be stopped half way."
                : $"Not at once: on {Date(result, first.Day)} that keeps everything in {Count(result, abrupt.Kept)} only; what breaks: {Breaks(result, abrupt)}.");
        }

        string hurry = first.CropKilograms.Median < NothingGainedKilograms
            ? " Nothing is gained in these days that staying apart would not bring: there is no hurry."
            : string.Empty;
        sentences.Add($"Against staying apart, the {result.WindowDays} days after {Date(result, first.Day)} bring {Signed(first.CropKilograms.Median)} kg of crops and {Signed(first.Heads.Median)} first-grade heads (medians), "
            + $"and the water heater gives {Signed(first.HeatKilowattHours.Median)} kWh; the plant loop's nitrate falls no lower than {Worst(first, "nitrate").Low:0} mg N/L in nine of ten.{hurry}");
        Forward(result, sentences);
        sentences.Add(FallbackSentence(result, fallback, last));
        return new CouplingAdvice(first.Option, first.Day, last, fallback, sentences);
    }

    // Apart with water carried across where that keeps the limits as often as staying apart does, on the last day.
    private static CouplingOption StayingApart(CouplingStudyResult result)
    {
        CouplingCandidate transfer = result.At(result.Days[^1], "transfer");
        CouplingCandidate apart = result.At(result.Days[^1], "apart");
        return transfer.LimitsHeld >= apart.LimitsHeld ? transfer.Option : apart.Option;
    }

    private static string FallbackSentence(CouplingStudyResult result, CouplingOption fallback, int day)
    {
        CouplingCandidate way = result.At(day, fallback.Key);
        string carried = fallback.Key == "transfer" ? ": a tenth of the fish loop's water each way over four hours, twice a week, with bridging nutrients kept up" : ", with bridging nutrients kept up";
        return $"Fallback, if a gate does not hold on the day: stay {fallback.Words}{carried}; that keeps every limit in {Count(result, way.LimitsHeld)}, "
            + $"for {Signed(way.CropKilograms.Median)} kg of crops in {result.WindowDays} days against staying apart without it. Look again on the next Monday.";
    }

    private static void Forward(CouplingStudyResult result, List<string> sentences)
    {
        Easing plan = result.Eased[0];
        Easing[] earlier = [.. result.Eased.Skip(1).Where(e => e.FirstDay.Count > 0 && (plan.FirstDay.Count == 0 || e.FirstDay.Median < plan.FirstDay.Median - 1)).OrderBy(e => e.FirstDay.Median).Take(2)];
        string now = plan.FirstDay.Count == 0 ? "never in the days looked at" : $"on day {plan.FirstDay.Median:0} by the median ({plan.FirstDay.Low:0} to {plan.FirstDay.High:0}{(plan.FirstDay.Missing > 0 ? $", never in {plan.FirstDay.Missing}" : string.Empty)})";
        sentences.Add(earlier.Length == 0
            ? $"All gates first hold {now}; neither more mature media, earlier or more fish nor more beads was found to bring that forward."
            : $"All gates first hold {now}. Tried, what brings that forward: {string.Join("; ", earlier.Select(e => $"{e.Words}, day {e.FirstDay.Median:0}"))}.");
    }

    private static string Breaks(CouplingStudyResult result, CouplingCandidate candidate) =>
        candidate.Binds.Count == 0 ? "nothing" : string.Join(", ", candidate.Binds.Take(3).Select(b => $"{b.What} ({Count(result, b.Share)})"));

    private static Band Worst(CouplingCandidate candidate, string limit) => candidate.Worst[CouplingLimit.All.ToList().FindIndex(l => l.Key == limit)];

    private static string Count(CouplingStudyResult result, double share) => $"{share * result.Replicates:0} of {result.Replicates}";

    private static string Date(CouplingStudyResult result, int day) => $"day {day} ({result.Plan.Farm.Start.AddDays(day):d MMM})";

    private static string Signed(double value) => value < 0 ? $"−{-value:0}" : $"+{value:0}";
}
