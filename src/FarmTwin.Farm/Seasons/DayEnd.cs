using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>What is done once a day, at midnight.</summary>
internal sealed class DayEnd
{
    private const double LeastSpillLogged = 1;

    private readonly FarmContext _farm;
    private readonly FarmLog _log;
    private readonly SeasonRecord _record;
    private readonly FarmWorks _works;
    private readonly HouseProcess _house;
    private readonly PlantProcess _plants;
    private readonly AlgaeProcess _algae;

    public DayEnd(FarmContext farm, FarmLog log, SeasonRecord record, FarmWorks works, HouseProcess house, PlantProcess plants, AlgaeProcess algae)
    {
        _farm = farm;
        _log = log;
        _record = record;
        _works = works;
        _house = house;
        _plants = plants;
        _algae = algae;
    }

    /// <summary>Midnight: plants grow, the day's losses and the books close, the row of the day is kept, the day's tallies begin anew.</summary>
    public void Run(long now)
    {
        HouseState house = _farm.State.House;
        double nursery = house.HoursToday > 0 ? house.NurseryCelsiusHours / house.HoursToday : house.AirCelsius;
        _algae.EndDay();
        _works.Mishaps.EndDay(now);
        _works.Frost.EndDay(now);
        _plants.EndDay(nursery, FarmWork.DayOf(now));
        _house.EndDay();
        _works.Leaves.Look(now);
        _works.Crops.DailyLosses();
        _works.Beds.EndDay(now);
        _works.Lanes.EndDay();
        _works.Market.EndDay(now);
        _works.Bookkeeping.EndDay();
        _farm.State.Fuel.EndDay();
        _record.Day();
        if (now % (UnitConstants.DaysPerWeek * UnitConstants.SecondsPerDay) == 0)
        {
            _works.Bookkeeping.NewWeek();
            _works.Market.NewWeek(now);
        }

        house.NurseryCelsiusHours = 0;
        house.HoursToday = 0;
        house.NaturalMolesToday = 0;
        house.LampMolesToday = 0;
        FarmTotals totals = _farm.State.Totals;
        totals.FeedYesterdayGrams = totals.FeedTodayGrams;
        totals.FeedTodayGrams = 0;
        totals.UnexplainedDeathsYesterday = totals.UnexplainedDeathsToday;
        totals.UnexplainedDeathsToday = 0;
        double spilled = totals.SpilledLitres - totals.SpilledLitresLogged;
        if (spilled > LeastSpillLogged)
        {
            _log.Add(now, "spill", "farm", spilled, "L", "water ran over a brim and out of the farm today: find the blocked return or the float valve that runs on");
            totals.SpilledLitresLogged = totals.SpilledLitres;
        }
    }
}
