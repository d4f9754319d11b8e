using FarmTwin.Engine;
using FarmTwin.Farm.Seasons;
using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Reports.Comparison;

/// <summary>The daily tables of a batch's runs, a file each, written as soon as a run is played.</summary>
/// <param name="folder">The batch's folder.</param>
public sealed class DailyTables(string folder) : IRunTables
{
    /// <inheritdoc />
    public bool Has(FarmPlan plan, BatchRun run) => File.Exists(PathOf(plan, run));

    /// <inheritdoc />
    public void Write(FarmPlan plan, BatchRun run, Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Recorder days = season.Record.Days;
        DataTable table = new DataTable().Add("day", Enumerable.Range(0, days.RowCount).Select(d => (double)d));
        for (int c = 0; c < days.Columns.Length; c++)
        {
            table.Add(days.Columns[c].Name, days.Column(c));
        }

        string path = PathOf(plan, run);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        WholeFile.Write(path, table.Parquet());
    }

    // The hash is part of the name: a table of the scenario as it was is not taken for one as it is.
    private string PathOf(FarmPlan plan, BatchRun run)
    {
        ArgumentNullException.ThrowIfNull(plan);
        string hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(plan.Hash)))[..8];
        return Path.Combine(folder, "days", $"{plan.Name} {hash} seed {run.Seed} replicate {run.Replicate}.parquet");
    }
}
