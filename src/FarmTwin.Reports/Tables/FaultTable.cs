using System.Globalization;
using FarmTwin.Engine;
using FarmTwin.Farm;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Reports.Tables;

/// <summary>The trace of a season's faults as comma-separated text: a row a step, by the minute where it matters.</summary>
public static class FaultTable
{
    private const double SecondsPerMinute = 60;

    /// <summary>The table: time, faults that are open (joined by +; empty in their aftermath), minutes since the first of them began, and the trace.</summary>
    public static string Of(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Recorder rows = season.Record.Faults.Rows;
        var text = new CsvText();
        text.Field("time").Field("day").Field("open").Field("minute");
        for (int i = 1; i < rows.Columns.Length; i++)
        {
            text.Field(rows.Columns[i].Name);
        }

        text.EndLine();
        DateTime start = season.Parts.Farm.Start.ToDateTime(TimeOnly.MinValue);
        for (int row = 0; row < rows.RowCount; row++)
        {
            ReadOnlySpan<double> values = rows.Row(row);
            long seconds = (long)values[0];
            text.Field(start.AddSeconds(seconds).ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture))
                .Field(seconds / UnitConstants.SecondsPerDay)
                .Field(string.Join('+', season.State.Faults.Where(f => IsOpen(f, seconds)).Select(f => f.Name)))
                .Field((seconds - Began(season, seconds)) / SecondsPerMinute);
            for (int i = 1; i < values.Length; i++)
            {
                text.Field(values[i]);
            }

            text.EndLine();
        }

        return text.ToString();
    }

    private static bool IsOpen(Fault fault, long seconds) =>
        fault.BeganSeconds <= seconds && (fault.MendedSeconds < 0 || seconds <= fault.MendedSeconds);

    // The earliest fault that is still followed then.
    private static long Began(Season season, long seconds)
    {
        long aftermath = (long)(season.Parts.Faults.AftermathHours * UnitConstants.SecondsPerHour);
        return season.State.Faults
            .Where(f => f.BeganSeconds <= seconds && (f.MendedSeconds < 0 || seconds <= f.MendedSeconds + aftermath))
            .Select(f => f.BeganSeconds).DefaultIfEmpty(seconds).Min();
    }
}
