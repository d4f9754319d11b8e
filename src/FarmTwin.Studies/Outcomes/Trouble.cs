using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Outcomes;

/// <summary>Whether a season went so badly that its owner would call.</summary>
public static class Trouble
{
    // Practice's report-and-act threshold is half a percent a day; a twentieth of all fish over a season is beyond any good farm's losses.
    private const double FishLost = 0.05;

    /// <summary>What is wrong in a few words; null where nothing is.</summary>
    /// <remarks>More than a twentieth of the fish dead of other causes than the usual; no crop fit for sale. Bad water that kills few is not among it: see its figures.</remarks>
    public static string? Of(SeasonSummary summary)
    {
        ArgumentNullException.ThrowIfNull(summary);
        double unusual = summary.Fish.Died - summary.Fish.Deaths["usual"];
        if (summary.Fish.Delivered > 0 && unusual > FishLost * summary.Fish.Delivered)
        {
            KeyValuePair<string, double> worst = summary.Fish.Deaths.Where(d => d.Key != "usual").MaxBy(d => d.Value);
            return $"{unusual:0} of {summary.Fish.Delivered:0} fish died, most of {worst.Key}";
        }

        return summary.Crops.Count > 0 && summary.Days > 120 && summary.Crops.Values.Sum(c => c.HarvestedKg) < 1 ? "no crop fit for sale" : null;
    }
}
