namespace FarmTwin.Farm.Alarms;

/// <summary>Where every alarm stands, and who knows. Copied whole for a snapshot.</summary>
public sealed class AlarmBoard
{
    /// <summary>Makes the board of a farm on which nothing has happened.</summary>
    public AlarmBoard(int points, int people)
    {
        States = new AlarmState[points];
        OnSince = new long[points];
        OffSince = new long[points];
        VisitUntil = new long[people];
        ArrivesAt = new long[people];
        Array.Fill(OnSince, -1);
        Array.Fill(OffSince, -1);
        Array.Fill(ArrivesAt, -1);
    }

    /// <summary>State of each alarm.</summary>
    public AlarmState[] States { get; }

    /// <summary>Since when each alarm's condition holds while its on-delay runs; −1 while it does not, s.</summary>
    public long[] OnSince { get; }

    /// <summary>Since when each value is back while its off-delay runs; −1 while it is not, s.</summary>
    public long[] OffSince { get; }

    /// <summary>What nobody has been told yet.</summary>
    public List<AlarmChange> Changes { get; } = [];

    /// <summary>Every alarm that was raised, in order.</summary>
    public List<AlarmIncident> Incidents { get; } = [];

    /// <summary>Until when each person who was called stays, s.</summary>
    public long[] VisitUntil { get; }

    /// <summary>When each person who is on the way arrives; −1 for nobody, s.</summary>
    public long[] ArrivesAt { get; }

    /// <summary>Whether the box is going through the phone tree.</summary>
    public bool Calling { get; set; }

    /// <summary>Longest next step that catches every alarm on time, s.</summary>
    public long StepCapSeconds { get; set; } = long.MaxValue;

    /// <summary>Since when the box holds the coupling valve closed; −1 while it does not, s.</summary>
    public long ClosedSinceSeconds { get; set; } = -1;

    /// <summary>Since when every alarm that closes the valve is normal and acknowledged; −1 while one is not, s.</summary>
    public long QuietSinceSeconds { get; set; }

    /// <summary>Times that the box closed the coupling valve.</summary>
    public int Closings { get; set; }

    /// <summary>When the alarms were last tested, s.</summary>
    public long TestedSeconds { get; set; }

    /// <summary>Tests of the alarms.</summary>
    public int Tests { get; set; }

    /// <summary>Chores that nobody was there to do, by kind.</summary>
    public SortedDictionary<string, int> MissedChores { get; } = new(StringComparer.Ordinal);

    /// <summary>The last incident of an alarm; null where it was never raised.</summary>
    public AlarmIncident? LastOf(int point) => Incidents.FindLast(i => i.Point == point);

    /// <summary>The alarm that cuts the feed most just now: one that stands, that somebody knows of, and that is not older than a stop may last.</summary>
    /// <param name="points">The alarms.</param>
    /// <param name="seconds">Now.</param>
    /// <param name="longestHours">How long an alarm may cut the feed after somebody saw to it, h.</param>
    /// <returns>Its number; -1 where none does.</returns>
    public int CutsFeed(IReadOnlyList<AlarmPoint> points, long seconds, double longestHours)
    {
        ArgumentNullException.ThrowIfNull(points);
        int most = -1;
        for (int i = 0; i < States.Length; i++)
        {
            if (States[i] == AlarmState.Acknowledged && points[i].FeedShare < (most < 0 ? 1 : points[most].FeedShare)
                && LastOf(i) is { } incident && seconds - Math.Max(incident.RaisedSeconds, incident.ArrivedSeconds) < longestHours * UnitConstants.SecondsPerHour)
            {
                most = i;
            }
        }

        return most;
    }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(AlarmBoard other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.States.CopyTo(States, 0);
        other.OnSince.CopyTo(OnSince, 0);
        other.OffSince.CopyTo(OffSince, 0);
        Changes.Clear();
        Changes.AddRange(other.Changes);
        Incidents.Clear();
        Incidents.AddRange(other.Incidents.Select(i => i.Clone()));
        other.VisitUntil.CopyTo(VisitUntil, 0);
        other.ArrivesAt.CopyTo(ArrivesAt, 0);
        Calling = other.Calling;
        StepCapSeconds = other.StepCapSeconds;
        ClosedSinceSeconds = other.ClosedSinceSeconds;
        QuietSinceSeconds = other.QuietSinceSeconds;
        Closings = other.Closings;
        TestedSeconds = other.TestedSeconds;
        Tests = other.Tests;
        MissedChores.Clear();
        foreach ((string chore, int times) in other.MissedChores)
        {
            MissedChores[chore] = times;
        }
    }
}
