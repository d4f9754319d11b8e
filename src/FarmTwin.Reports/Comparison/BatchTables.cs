using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Outcomes;

namespace FarmTwin.Reports.Comparison;

/// <summary>The tables of a batch.</summary>
public static class BatchTables
{
    /// <summary>A row a run: plan, seed, replicate, every headline figure, what went wrong.</summary>
    public static DataTable Runs(BatchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        BatchPlan batch = result.Batch;
        DataTable table = new DataTable()
            .Add("plan", batch.Runs.Select(r => batch.Plans[r.Plan].Name))
            .Add("seed", batch.Runs.Select(r => (double)r.Seed))
            .Add("replicate", batch.Runs.Select(r => (double)r.Replicate));
        for (int f = 0; f < Headlines.All.Count; f++)
        {
            int figure = f;
            table.Add(Headlines.All[f].Key, batch.Runs.Select((_, run) => result.FiguresOf(run)[figure]));
        }

        return table.Add("trouble", result.Troubles.Select(t => t ?? string.Empty));
    }

    /// <summary>A row a run and week: the curves.</summary>
    public static DataTable Weeks(BatchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        BatchPlan batch = result.Batch;
        var names = new List<string>();
        var seeds = new List<double>();
        var replicates = new List<double>();
        var weeks = new List<double>();
        List<double>[] curves = [.. WeeklySeries.All.Select(_ => new List<double>())];
        for (int plan = 0; plan < batch.Plans.Count; plan++)
        {
            double[][][] runs = result.Weeks(plan);
            for (int r = 0; r < runs.Length; r++)
            {
                BatchRun run = batch.Runs[(plan * batch.RunsOfAPlan) + r];
                for (int week = 0; week < runs[r][0].Length; week++)
                {
                    names.Add(batch.Plans[plan].Name);
                    seeds.Add(run.Seed);
                    replicates.Add(run.Replicate);
                    weeks.Add(week + 1);
                    for (int c = 0; c < curves.Length; c++)
                    {
                        curves[c].Add(runs[r][c][week]);
                    }
                }
            }
        }

        DataTable table = new DataTable().Add("plan", names).Add("seed", seeds).Add("replicate", replicates).Add("week", weeks);
        for (int c = 0; c < curves.Length; c++)
        {
            table.Add(WeeklySeries.All[c].Key, curves[c]);
        }

        return table;
    }

    /// <summary>A row a plan and figure: median, band, and the paired difference to the first plan.</summary>
    public static DataTable Figures(BatchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        (string Plan, FigureDifference Row)[] rows =
            [.. Enumerable.Range(0, result.Batch.Plans.Count).SelectMany(p => result.Against(p).Select(d => (result.Batch.Plans[p].Name, d)))];
        return new DataTable()
            .Add("plan", rows.Select(r => r.Plan))
            .Add("figure", rows.Select(r => r.Row.Figure.Key))
            .Add("unit", rows.Select(r => r.Row.Figure.Unit))
            .Add("low_10_percent", rows.Select(r => r.Row.Band.Low))
            .Add("median", rows.Select(r => r.Row.Band.Median))
            .Add("high_90_percent", rows.Select(r => r.Row.Band.High))
            .Add("replicates", rows.Select(r => (double)r.Row.Band.Count))
            .Add("replicates_without", rows.Select(r => (double)r.Row.Band.Missing))
            .Add("mean_difference", rows.Select(r => r.Row.Difference.Mean))
            .Add("difference_low_95_percent", rows.Select(r => r.Row.Difference.Low))
            .Add("difference_high_95_percent", rows.Select(r => r.Row.Difference.High))
            .Add("share_higher", rows.Select(r => r.Row.Difference.ShareHigher))
            .Add("chance_corrected", rows.Select(r => r.Row.Chance))
            .Add("stands_out", rows.Select(r => r.Row.StandsOut ? "yes" : "no"));
    }
}
