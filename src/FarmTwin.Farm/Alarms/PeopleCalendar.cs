using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Alarms;

/// <summary>Who is on the farm when, and who answers the phone: weekly hours, holidays, and visits after a call.</summary>
public sealed class PeopleCalendar
{
    private const long LookEverySeconds = 900;
    private const long LookAheadSeconds = 31 * UnitConstants.SecondsPerDay;

    private readonly PersonDescription[] _people;
    private readonly int _startWeekday;

    /// <summary>Makes it.</summary>
    /// <param name="people">People.</param>
    /// <param name="start">Day 0.</param>
    public PeopleCalendar(PersonDescription[] people, DateOnly start)
    {
        _people = people;
        _startWeekday = ((int)start.DayOfWeek + 6) % 7;
    }

    /// <summary>Whether anybody is described at all.</summary>
    public bool HasPeople => _people.Length > 0;

    /// <summary>Whether a person's hours on site hold a time.</summary>
    public bool IsOnSite(int person, long seconds) =>
        !IsAway(_people[person], seconds) && Holds(_people[person].OnSite, seconds);

    /// <summary>Whether a person answers the phone at a time; somebody without stated hours does at any.</summary>
    public bool Answers(int person, long seconds) => !IsAway(_people[person], seconds)
        && (_people[person].Phone.Count == 0 || Holds(_people[person].Phone, seconds) || Holds(_people[person].OnSite, seconds));

    /// <summary>Somebody who is on site, by hours or on a visit; −1 for nobody.</summary>
    public int SomebodyOnSite(long seconds, ReadOnlySpan<long> visitUntil)
    {
        for (int p = 0; p < _people.Length; p++)
        {
            if (visitUntil[p] > seconds || IsOnSite(p, seconds))
            {
                return p;
            }
        }

        return -1;
    }

    /// <summary>When somebody is next on site by hours, to the quarter of an hour; −1 for nobody within a month.</summary>
    public long NextOnSite(long seconds)
    {
        for (long t = seconds; t < seconds + LookAheadSeconds; t = ((t / LookEverySeconds) + 1) * LookEverySeconds)
        {
            for (int p = 0; p < _people.Length; p++)
            {
                if (IsOnSite(p, t))
                {
                    return t;
                }
            }
        }

        return -1;
    }

    private bool Holds(IReadOnlyDictionary<string, WeeklyHoursDescription> hours, long seconds)
    {
        double weekday = 1 + ((_startWeekday + (seconds / UnitConstants.SecondsPerDay)) % 7);
        double day = (double)seconds / UnitConstants.SecondsPerDay;
        double hour = seconds % UnitConstants.SecondsPerDay / UnitConstants.SecondsPerHour;
        foreach (WeeklyHoursDescription period in hours.Values)
        {
            if (hour >= period.FromHour && hour < period.UntilHour && period.Weekdays.Contains(weekday)
                && day >= period.FirstDay && !(day >= period.LastDay))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsAway(PersonDescription person, long seconds)
    {
        foreach (PeriodDescription holiday in person.Away.Values)
        {
            if (holiday.Holds(seconds))
            {
                return true;
            }
        }

        return false;
    }
}
