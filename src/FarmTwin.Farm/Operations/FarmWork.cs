using FarmTwin.Engine;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Kinds of events on the farm's calendar.</summary>
public enum FarmEventKind
{
    /// <summary>The day ends: growth, daily record.</summary>
    Midnight,

    /// <summary>Fish are fed; argument 0 is the meal.</summary>
    Meal,

    /// <summary>Morning round: start-up, deliveries, gates.</summary>
    MorningRound,

    /// <summary>Filters are looked at.</summary>
    FilterCheck,

    /// <summary>Mineralization tanks are looked at.</summary>
    MineralizerCheck,

    /// <summary>A settling ends; argument 0 is the tank.</summary>
    SettlingEnds,

    /// <summary>A crop is sown; argument 0 is the crop.</summary>
    Sow,

    /// <summary>Seedlings are moved to the trough.</summary>
    Transplant,

    /// <summary>Boards are harvested and planted; argument 0 is the crop.</summary>
    HarvestBoards,

    /// <summary>Fish are sold.</summary>
    FishSale,

    /// <summary>A dosing rule is looked at; argument 0 is the rule.</summary>
    DosingCheck,

    /// <summary>A planned event; argument 0 is its number.</summary>
    Planned,
}

/// <summary>Phases of an instant, in the order of the domain.</summary>
public static class FarmPhase
{
    /// <summary>Weather and light.</summary>
    public const int Environment = 0;

    /// <summary>Pumps, valves, heaters.</summary>
    public const int Equipment = 1;

    /// <summary>Fish, filter, sludge, water.</summary>
    public const int Husbandry = 2;

    /// <summary>Plants.</summary>
    public const int Crop = 3;

    /// <summary>Guards.</summary>
    public const int Guard = 4;
}

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

    /// <summary>Water of all basins that share a loop with one, L: those reached by flowing water both ways.</summary>
    protected double LoopLitres(int basin)
    {
        double litres = 0;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (b == basin || Farm.Network.SharesLoop(basin, b))
            {
                litres += State.Basins.Litres[b];
            }
        }

        return litres;
    }

    /// <summary>Mean concentration of a substance over a basin's loop, mg/L.</summary>
    protected double LoopMilligramsPerLitre(int basin, int substance)
    {
        double litres = 0;
        double grams = 0;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (b == basin || Farm.Network.SharesLoop(basin, b))
            {
                litres += State.Basins.Litres[b];
                grams += State.Basins.Grams[WaterStep.At(b, substance)];
            }
        }

        return litres > 0 ? grams * UnitConstants.GramsPerKilogram / litres : 0;
    }
}
