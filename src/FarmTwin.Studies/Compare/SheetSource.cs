using FarmTwin.Farm;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Compare;

/// <summary>What the lines of a daily sheet are read from: the record of a season by days, and its events counted by day.</summary>
/// <remarks>Not thread-safe.</remarks>
public sealed class SheetSource
{
    private readonly RecordView _record;

    /// <summary>Looks at a season as it stands.</summary>
    public SheetSource(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Season = season;
        _record = new RecordView(season);
    }

    /// <summary>The season.</summary>
    public Season Season { get; }

    /// <summary>Days that are over.</summary>
    public int DayCount => _record.DayCount;

    /// <summary>A column of the days.</summary>
    public double[] Days(string column) => _record.Days(column);

    /// <summary>Events of a kind on each day.</summary>
    public double[] Events(string what)
    {
        var counts = new double[DayCount];
        foreach (var line in Season.Log.Events)
        {
            int day = (int)(line.Seconds / UnitConstants.SecondsPerDay);
            if (line.What == what && day < counts.Length)
            {
                counts[day]++;
            }
        }

        return counts;
    }

    /// <summary>Alarms raised on each day.</summary>
    public double[] Alarms()
    {
        var counts = new double[DayCount];
        foreach (var incident in Season.State.Alarms.Incidents)
        {
            int day = (int)(incident.RaisedSeconds / UnitConstants.SecondsPerDay);
            if (day < counts.Length)
            {
                counts[day]++;
            }
        }

        return counts;
    }
}
