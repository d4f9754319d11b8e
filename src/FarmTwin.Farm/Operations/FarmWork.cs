using FarmTwin.Farm.Business;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>What all work on the farm shares: the parts, the state, the calendar, the record.</summary>
public abstract class FarmWork
{
    /// <summary>Makes it.</summary>
    protected FarmWork(FarmContext farm, FarmLog log)
    {
        ArgumentNullException.ThrowIfNull(farm);
        Farm = farm;
        Log = log;
    }

    /// <summary>The farm.</summary>
    protected FarmContext Farm { get; }

    /// <summary>The event record.</summary>
    protected FarmLog Log { get; }

    /// <summary>Parts.</summary>
    protected FarmParts Parts => Farm.Parts;

    /// <summary>State.</summary>
    protected FarmState State => Farm.State;

    /// <summary>Seconds at a clock hour of a day.</summary>
    public static long At(double day, double hour) =>
        ((long)Math.Floor(day) * UnitConstants.SecondsPerDay) + (long)Math.Round(hour * UnitConstants.SecondsPerHour);

    /// <summary>The day of a time, from day 0.</summary>
    public static double DayOf(long seconds) => (double)seconds / UnitConstants.SecondsPerDay;

    /// <summary>Day of the week of a day of the season, 1 = Monday.</summary>
    public int WeekdayOf(long seconds)
    {
        int weekday = (int)Parts.Farm.Start.AddDays((int)(seconds / UnitConstants.SecondsPerDay)).DayOfWeek;
        return weekday == 0 ? 7 : weekday;
    }

    /// <summary>Books a person's time for work that is being done.</summary>
    /// <param name="chore">The chore.</param>
    /// <param name="count">How much of it, in the chore's own unit, 0 or more.</param>
    /// <param name="product">The product that it serves alone; −1 for none.</param>
    protected void Spend(Chore chore, double count, int product = -1) => State.Labour.Spend(Parts.ChoreTimes, chore, count, product);

    /// <summary>Which basins circulate as one water.</summary>
    protected Equipment.Loops Loops => Farm.Loops;
}
