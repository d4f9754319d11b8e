using FarmTwin.Engine;
using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Causes;

namespace FarmTwin.Studies.Causes;

/// <summary>Runs a cause's three farms under one seed and reads its signs.</summary>
/// <remarks>Keeps the record of every farm that it has run, so that causes that share a base farm run it once. Not thread-safe.</remarks>
public sealed class CauseTrial(FarmLibrary library)
{
    private readonly Dictionary<string, Season> _seasons = new(StringComparer.Ordinal);

    /// <summary>Runs it.</summary>
    /// <param name="cause">The cause.</param>
    /// <exception cref="DescriptionException">A farm cannot be computed, or a sign names a column that there is not.</exception>
    public CauseOutcome Run(CauseScenario cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        if (!cause.Card.InReach)
        {
            return new CauseOutcome(cause.Card, []);
        }

        Season with = SeasonOf(cause.With);
        Season without = SeasonOf(cause.Without);
        Season? remedied = cause.Remedied is null ? null : SeasonOf(cause.Remedied);
        return new CauseOutcome(cause.Card, [.. cause.Card.Signs.Select(s => Read(s.Key, s.Value, with, without, remedied))]);
    }

    private Season SeasonOf(Scenario<FarmDescription> scenario)
    {
        if (!_seasons.TryGetValue(scenario.Hash, out Season? season))
        {
            season = new Season(scenario.Value, library, (ulong)scenario.Value.Seed);
            season.AdvanceToEnd();
            _seasons[scenario.Hash] = season;
        }

        return season;
    }

    private static SignReading Read(string name, CauseSign sign, Season with, Season without, Season? remedied)
    {
        double[] days = Daily(name, sign, with);
        int from = (int)sign.FromDay;
        int first = Array.FindIndex(days, Math.Min(from, days.Length), d => double.IsFinite(d) && sign.ShowsAt(d));
        return new SignReading(
            name,
            sign,
            Figure(sign, Daily(name, sign, without), sign.FromDay, sign.ToDay),
            Figure(sign, days, sign.FromDay, sign.ToDay),
            remedied is null ? null : Figure(sign, Daily(name, sign, remedied), sign.GoneFromDay ?? sign.FromDay, sign.GoneToDay ?? sign.ToDay),
            first >= 0 && first <= sign.ToDay ? first : null);
    }

    private static double[] Daily(string name, CauseSign sign, Season season)
    {
        Recorder days = season.Record.Days;
        if (sign.Event is { } what)
        {
            var counts = new double[days.RowCount];
            foreach (var line in season.Log.Events.Where(e => e.What == what))
            {
                int day = (int)(line.Seconds / UnitConstants.SecondsPerDay);
                if (day < counts.Length)
                {
                    counts[day]++;
                }
            }

            return counts;
        }

        for (int i = 0; i < days.Columns.Length; i++)
        {
            if (days.Columns[i].Name == sign.Column)
            {
                return days.Column(i);
            }
        }

        throw new DescriptionException($"cause.signs.{name}: the daily table of '{season.Parts.Farm.Title}' has no column '{sign.Column}'.");
    }

    private static double Figure(CauseSign sign, double[] daily, double fromDay, double toDay)
    {
        double[] days = [.. daily.Skip((int)fromDay).Take((int)toDay - (int)fromDay + 1).Where(double.IsFinite)];
        return days.Length == 0
            ? double.NaN
            : sign.Take switch
            {
                SignMeasure.Highest => days.Max(),
                SignMeasure.Lowest => days.Min(),
                SignMeasure.Mean => days.Average(),
                SignMeasure.Total => days.Sum(),
                SignMeasure.Last => days[^1],
                SignMeasure.Rise => days[^1] - days[0],
                _ => throw new InvalidOperationException($"A sign takes no {sign.Take}."),
            };
    }
}
