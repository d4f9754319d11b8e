using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Which routines want hands: where people are described, they are missed when nobody is on site.</summary>
/// <remarks>Dated single works (setting out, clearing, planned events) are not among them: people come for those.</remarks>
public sealed class Chores : FarmWork
{
    private readonly PeopleCalendar _people;
    private readonly DosingWork _dosing;
    private readonly bool[] _byDoser;

    /// <summary>Makes it.</summary>
    public Chores(FarmContext farm, FarmLog log, PeopleCalendar people, DosingWork dosing)
        : base(farm, log)
    {
        _dosing = dosing;
        _people = people;
        _byDoser = [.. Parts.Farm.Dosing.Values.Select(d => d is HoldPH { ByProbe: not null })];
    }

    /// <summary>Whether a routine is missed because nobody is there to do it; a missed one is logged and counted.</summary>
    /// <param name="kind">The routine.</param>
    /// <param name="argument">Its first argument.</param>
    /// <param name="seconds">Now.</param>
    public bool IsMissed(FarmEventKind kind, int argument, long seconds)
    {
        if (!_people.HasPeople || NameOf(kind, argument, seconds) is not { } chore || _people.SomebodyOnSite(seconds, State.Alarms.VisitUntil) >= 0)
        {
            return false;
        }

        State.Alarms.MissedChores[chore] = State.Alarms.MissedChores.GetValueOrDefault(chore) + 1;
        Log.Add(seconds, "chore missed", chore, State.Alarms.MissedChores[chore], "times so far", "nobody was on site");
        return true;
    }

    private string? NameOf(FarmEventKind kind, int argument, long seconds) => kind switch
    {
        FarmEventKind.Meal => Parts.Farm.Feeding.ByFeeder ? null : "meal",
        FarmEventKind.MorningRound => "morning round",
        FarmEventKind.FilterCheck => "filter check",
        FarmEventKind.MineralizerCheck => "mineralizer check",
        FarmEventKind.Sow => "sowing",
        FarmEventKind.Transplant => "transplanting",
        FarmEventKind.HarvestBoards => "harvest",
        FarmEventKind.Pick => "picking",
        FarmEventKind.SowMicrogreens => "sowing microgreens",
        FarmEventKind.CutMicrogreens => "cutting microgreens",
        FarmEventKind.FishSale => "fish sale",
        FarmEventKind.DosingCheck => _byDoser[argument] || !_dosing.IsInForce(argument, seconds) ? null : "dosing",
        _ => null,
    };
}
