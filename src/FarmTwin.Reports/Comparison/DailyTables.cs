using FarmTwin.Engine;
using FarmTwin.Farm.Seasons;
using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Batch;

namespace FarmTwin.Reports.Comparison;

/// <summary>The daily tables of a batch's runs, a file each, written as soon as a run is played.</summary>
public static class DailyTables
{
    /// <summary>Writes one.</summary>
    public static void Write(string folder, string plan, BatchRun run, Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Recorder days = season.Record.Days;
        DataTable table = new DataTable().Add("day", Enumerable.Range(0, days.RowCount).Select(d => (double)d));
        for (int c = 0; c < days.Columns.Length; c++)
        {
            table.Add(days.Columns[c].Name, days.Column(c));
        }

        string place = Path.Combine(folder, "days");
        Directory.CreateDirectory(place);
        WholeFile.Write(Path.Combine(place, $"{plan} seed {run.Seed} replicate {run.Replicate}.parquet"), table.Parquet());
    }
}
