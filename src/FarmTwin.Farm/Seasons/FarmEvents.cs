using FarmTwin.Engine;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>Which work an event calls, unless nobody is there to do it.</summary>
internal sealed class FarmEvents
{
    private readonly FarmWorks _works;
    private readonly DayEnd _dayEnd;
    private readonly HeatBalance _heat;
    private readonly PlannedEvent[] _events;

    public FarmEvents(FarmContext farm, FarmWorks works, DayEnd dayEnd, HeatBalance heat)
    {
        _works = works;
        _dayEnd = dayEnd;
        _heat = heat;
        _events = [.. farm.Parts.Farm.Plan.Values];
    }

    public void Fire(in CalendarEntry entry, Simulation simulation)
    {
        long now = entry.TimeSeconds;
        if ((FarmEventKind)entry.Kind == FarmEventKind.MorningRound)
        {
            // What began by mishap ends whether or not anybody comes.
            _works.Mishaps.MorningRound(now);
        }

        if (_works.Mishaps.IsMissed((FarmEventKind)entry.Kind, now, out long until))
        {
            if ((FarmEventKind)entry.Kind == FarmEventKind.SettlingEnds)
            {
                // The air stays off until somebody comes.
                simulation.Calendar.Schedule(until, FarmPhase.Husbandry, entry.Kind, entry.Argument0);
            }

            return;
        }

        if (_works.Chores.IsMissed((FarmEventKind)entry.Kind, entry.Argument0, now))
        {
            return;
        }

        switch ((FarmEventKind)entry.Kind)
        {
            case FarmEventKind.Midnight:
                _dayEnd.Run(now);
                break;
            case FarmEventKind.Meal:
                _works.Feeding.Meal(now);
                break;
            case FarmEventKind.MorningRound:
                _works.Faults.MorningRound(now);
                _works.Rounds.Morning(now);
                _works.StartUp.MorningRound(now);
                _works.Arrivals.MorningRound(now);
                _works.Quarantine.MorningRound(now);
                _works.Fuel.MorningRound(now, simulation);
                _works.Alarms.MorningRound(now);
                _works.Coupling.MorningRound(now, _heat.LargestWatts);
                break;
            case FarmEventKind.FilterCheck:
                _works.Filters.Check(now);
                break;
            case FarmEventKind.MineralizerCheck:
                _works.Mineralizers.Check(now, simulation);
                break;
            case FarmEventKind.SettlingEnds:
                _works.Mineralizers.EndSettling(entry.Argument0, now);
                break;
            case FarmEventKind.Sow:
                _works.Crops.Sow(entry.Argument0, now);
                break;
            case FarmEventKind.Transplant:
                _works.SeedBeds.Look(now);
                _works.Crops.Transplant(now);
                break;
            case FarmEventKind.HarvestBoards:
                _works.Lanes.HarvestBoards(entry.Argument0, now);
                break;
            case FarmEventKind.SowMicrogreens:
                _works.Microgreens.Sow(entry.Argument0, now);
                break;
            case FarmEventKind.CutMicrogreens:
                _works.Microgreens.Cut(now);
                break;
            case FarmEventKind.WaterNursery:
                _works.Microgreens.Water(now);
                break;
            case FarmEventKind.SowPlanting:
                _works.Beds.Sow(entry.Argument0, now);
                break;
            case FarmEventKind.SetOut:
                _works.Beds.SetOut(entry.Argument0, now);
                break;
            case FarmEventKind.Pick:
                _works.Beds.Pick(entry.Argument0, now);
                break;
            case FarmEventKind.TopPlants:
                _works.Beds.Top(entry.Argument0, now);
                break;
            case FarmEventKind.ClearBeds:
                _works.Beds.Clear(entry.Argument0, now);
                break;
            case FarmEventKind.FishSale:
                _works.Trade.Sell(now);
                break;
            case FarmEventKind.DosingCheck:
                _works.Dosing.Check(entry.Argument0, now);
                break;
            case FarmEventKind.Planned:
                _works.Planned.Apply(_events[entry.Argument0], now);
                break;
            case FarmEventKind.FaultMended:
                _works.Faults.Mended(entry.Argument0, now);
                break;
            case FarmEventKind.BackupStarts:
                _works.Faults.BackupStarts(entry.Argument0, entry.Argument1, now);
                break;
            case FarmEventKind.BackupRunsOut:
                _works.Faults.BackupRunsOut(entry.Argument0, entry.Argument1, now);
                break;
            case FarmEventKind.AlarmChange:
                _works.Alarms.Announce(now, simulation);
                break;
            case FarmEventKind.AlarmCall:
                _works.Alarms.Call(entry.Argument0, entry.Argument1, now, simulation);
                break;
            case FarmEventKind.AlarmLook:
                _works.Alarms.Look(now, simulation);
                break;
            case FarmEventKind.AlarmArrival:
                _works.Alarms.Arrive(entry.Argument0, now);
                break;
            case FarmEventKind.FuelCheck:
                _works.Fuel.Check(now);
                break;
            case FarmEventKind.FuelDelivery:
                _works.Fuel.Deliver(entry.Argument0, now);
                break;
            default:
                throw new InvalidOperationException($"The farm knows no event of kind {entry.Kind}.");
        }
    }
}
