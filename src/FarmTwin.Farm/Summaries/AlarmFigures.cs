using System.Globalization;
using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Works out the summary of the alarms.</summary>
internal static class AlarmFigures
{
    private const string Moment = "yyyy-MM-dd HH:mm";

    /// <summary>The summary; null for a farm without probes and people.</summary>
    public static AlarmSummary? Of(Season season)
    {
        AlarmParts parts = season.Parts.Alarms;
        if (parts.Probes.Length == 0 && parts.People.Length == 0)
        {
            return null;
        }

        AlarmBoard board = season.State.Alarms;
        AlarmRow[] rows = [.. board.Incidents.Select(i => Row(season, i))];
        return new AlarmSummary
        {
            Raised = rows.Length,
            ByPriority = new[] { AlarmPriority.High, AlarmPriority.Medium, AlarmPriority.Low }.ToDictionary(Word, p => Figures([.. rows.Where(r => r.Priority == Word(p))])),
            False = rows.Count(r => r.IsFalse),
            SensorFaults = board.Incidents.Count(i => parts.Points[i.Point].Condition == AlarmCondition.SensorFault),
            Standing = [.. Enumerable.Range(0, parts.Points.Length).Where(i => AlarmMachine.IsActive(board.States[i])).Select(i => parts.Points[i].Name)],
            ValveClosings = board.Closings,
            Tests = board.Tests,
            Calibrations = season.State.Probes.Calibrations.Sum(),
            MissedChores = new Dictionary<string, int>(board.MissedChores, StringComparer.Ordinal),
            List = rows,
        };
    }

    private static string Word(AlarmPriority priority) => priority switch
    {
        AlarmPriority.High => "high",
        AlarmPriority.Medium => "medium",
        _ => "low",
    };

    private static AlarmPriorityFigures Figures(AlarmRow[] rows)
    {
        double[] answers = [.. rows.Where(r => r.MinutesToAnswer is not null).Select(r => r.MinutesToAnswer!.Value).Order()];
        double? median = answers.Length == 0 ? null : (answers[(answers.Length - 1) / 2] + answers[answers.Length / 2]) / 2;
        return new AlarmPriorityFigures(
            rows.Length, rows.Count(r => r.IsFalse), rows.Count(r => r.MinutesToAnswer is null), median,
            answers.Length == 0 ? null : answers[^1], rows.Max(r => r.MinutesToArrive));
    }

    private static AlarmRow Row(Season season, AlarmIncident incident)
    {
        AlarmParts parts = season.Parts.Alarms;
        AlarmPoint point = parts.Points[incident.Point];
        string unit = ProbeQuantities.Unit(parts.Quantities[point.Probe]);
        return new AlarmRow
        {
            Alarm = point.Name,
            Priority = Word(point.Priority),
            Raised = At(incident.RaisedSeconds)!,
            Day = incident.RaisedSeconds / UnitConstants.SecondsPerDay,
            Reading = incident.Reading,
            Truth = incident.Truth,
            Unit = unit == "1" ? string.Empty : unit,
            IsFalse = incident.IsFalse,
            FirstCall = At(incident.FirstCallSeconds),
            MissedCalls = incident.MissedCalls,
            AnsweredBy = incident.AnsweredSeconds < 0 ? null : incident.AnsweredBy < 0 ? "morning round" : parts.PeopleNames[incident.AnsweredBy],
            MinutesToAnswer = Minutes(incident.AnsweredSeconds),
            MinutesToArrive = Minutes(incident.ArrivedSeconds),
            Returned = At(incident.ReturnedSeconds),
            HoursStanding = incident.ReturnedSeconds < 0 ? null : (incident.ReturnedSeconds - incident.RaisedSeconds) / UnitConstants.SecondsPerHour,
        };

        string? At(long seconds) => seconds < 0 ? null
            : season.Parts.Farm.Start.ToDateTime(TimeOnly.MinValue).AddSeconds(seconds).ToString(Moment, CultureInfo.InvariantCulture);

        double? Minutes(long seconds) => seconds < 0 ? null : (double)(seconds - incident.RaisedSeconds) / UnitConstants.SecondsPerMinute;
    }
}
