using FarmTwin.Engine;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>The record of a season by the names of its columns: what summaries and figures read.</summary>
/// <remarks>Copies a column when it is first asked for. Not thread-safe.</remarks>
public sealed class RecordView
{
    private const int DaysOfYear = 366;
    private readonly Dictionary<string, double[]> _days = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double[]> _hours = new(StringComparer.Ordinal);
    private readonly Recorder _dayRecorder;
    private readonly Recorder _hourRecorder;
    private bool[]? _stocked;

    /// <summary>Looks at a season's record as it stands.</summary>
    public RecordView(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        _dayRecorder = season.Record.Days;
        _hourRecorder = season.Record.Hours;
        Start = season.Parts.Farm.Start;
    }

    /// <summary>Day 0.</summary>
    public DateOnly Start { get; }

    /// <summary>Closed days.</summary>
    public int DayCount => _dayRecorder.RowCount;

    /// <summary>Whether fish were there, by hour.</summary>
    public IReadOnlyList<bool> Stocked => _stocked ??= [.. Hours("fish_number").Select(n => n > 0)];

    /// <summary>A column of the days; all not-a-number where there is none.</summary>
    public double[] Days(string name) => Column(_dayRecorder, _days, name);

    /// <summary>A column of the hours; all not-a-number where there is none.</summary>
    public double[] Hours(string name) => Column(_hourRecorder, _hours, name);

    /// <summary>The day, whole from day 0, of an hour's row.</summary>
    public static double DayOfHour(int row) => Math.Floor(row / UnitConstants.HoursPerDay);

    /// <summary>Day and date in words: "day 63 (3 May)"; with the year where the season is longer than one.</summary>
    public string DayInWords(double day) => DayCount > DaysOfYear
        ? $"day {day:0} ({Start.AddDays((int)day):d MMM yyyy})"
        : $"day {day:0} ({Start.AddDays((int)day):d MMM})";

    /// <summary>The highest (or lowest) hourly mean of a column.</summary>
    /// <param name="name">The column.</param>
    /// <param name="highest">Whether the highest is wanted.</param>
    /// <param name="stocked">Only hours with (true) or without (false) fish; null for all.</param>
    public PeakReading? Peak(string name, bool highest, bool? stocked = null)
    {
        double[] values = Hours(name);
        int best = -1;
        for (int i = 0; i < values.Length; i++)
        {
            bool counts = double.IsFinite(values[i]) && (stocked is null || Stocked[i] == stocked);
            if (counts && (best < 0 || (highest ? values[i] > values[best] : values[i] < values[best])))
            {
                best = i;
            }
        }

        return best < 0 ? null : new PeakReading(values[best], DayOfHour(best));
    }

    /// <summary>Lowest and highest hourly mean of a column.</summary>
    public ReadingRange Range(string name, bool? stocked = null) => new(Peak(name, false, stocked), Peak(name, true, stocked));

    /// <summary>Hours of a column outside a band.</summary>
    public BandHours Outside(string name, double? low, double? high, string unit, bool? stocked = null)
    {
        double[] values = Hours(name);
        int below = 0;
        int above = 0;
        int counted = 0;
        for (int i = 0; i < values.Length; i++)
        {
            if (double.IsFinite(values[i]) && (stocked is null || Stocked[i] == stocked))
            {
                counted++;
                below += values[i] < low ? 1 : 0;
                above += values[i] > high ? 1 : 0;
            }
        }

        return new BandHours(low, high, unit, below, above, counted);
    }

    private static double[] Column(Recorder recorder, Dictionary<string, double[]> known, string name)
    {
        if (known.TryGetValue(name, out double[]? column))
        {
            return column;
        }

        for (int i = 0; i < recorder.Columns.Length; i++)
        {
            if (recorder.Columns[i].Name == name)
            {
                return known[name] = recorder.Column(i);
            }
        }

        var missing = new double[recorder.RowCount];
        Array.Fill(missing, double.NaN);
        return known[name] = missing;
    }
}
