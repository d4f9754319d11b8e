using System.Globalization;
using FarmTwin.Engine;
using FarmTwin.Farm;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Reports.Tables;

/// <summary>The tables of a season as comma-separated text.</summary>
public static class SeasonTables
{
    private const string DateFormat = "yyyy-MM-dd";

    /// <summary>A row a day: date, day, and every recorded quantity under its name with unit.</summary>
    public static string Days(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Recorder days = season.Record.Days;
        var text = new CsvText();
        Header(text.Field("date").Field("day"), days);
        for (int row = 0; row < days.RowCount; row++)
        {
            text.Field(Date(season, row)).Field(row);
            Values(text, days, row);
        }

        return text.ToString();
    }

    /// <summary>A row a full week: the day it begins, the week from 1, hours by chore, sales, costs and cash.</summary>
    public static string Weeks(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Recorder weeks = season.Record.Weeks.Weeks;
        var text = new CsvText();
        Header(text.Field("week_from").Field("week"), weeks);
        for (int row = 0; row < weeks.RowCount; row++)
        {
            text.Field(Date(season, row * (int)UnitConstants.DaysPerWeek)).Field(row + 1);
            Values(text, weeks, row);
        }

        return text.ToString();
    }

    /// <summary>A row an hour: the moment at which the hour ends, hours from the start, and hourly means.</summary>
    public static string Hours(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Recorder hours = season.Record.Hours;
        var text = new CsvText();
        Header(text.Field("hour_ending").Field("hour"), hours);
        DateTime start = season.Parts.Farm.Start.ToDateTime(TimeOnly.MinValue);
        for (int row = 0; row < hours.RowCount; row++)
        {
            text.Field(start.AddHours(row + 1).ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture)).Field(row + 1);
            Values(text, hours, row);
        }

        return text.ToString();
    }

    /// <summary>A row an event: when, what, where, how much, why.</summary>
    public static string Events(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        var text = new CsvText();
        text.Field("date").Field("time").Field("day").Field("what").Field("where").Field("amount").Field("unit").Field("note").EndLine();
        foreach (LoggedEvent line in season.Log.Events)
        {
            long day = line.Seconds / UnitConstants.SecondsPerDay;
            TimeSpan time = TimeSpan.FromSeconds(line.Seconds % UnitConstants.SecondsPerDay);
            text.Field(Date(season, (int)day)).Field(time.ToString("hh':'mm", CultureInfo.InvariantCulture)).Field(day)
                .Field(line.What).Field(line.Where).Field(line.Amount).Field(line.Unit).Field(line.Note).EndLine();
        }

        return text.ToString();
    }

    /// <summary>A row an alarm: when, what it read and what was there, who was called and came.</summary>
    public static string Alarms(AlarmSummary alarms)
    {
        ArgumentNullException.ThrowIfNull(alarms);
        var text = new CsvText();
        foreach (string name in new[]
        {
            "raised", "day", "alarm", "priority", "reading", "truth", "unit", "false", "first_call", "missed_calls", "answered_by",
            "minutes_to_answer", "minutes_to_arrive", "returned", "hours_standing",
        })
        {
            text.Field(name);
        }

        text.EndLine();
        foreach (AlarmRow row in alarms.List)
        {
            text.Field(row.Raised).Field(row.Day).Field(row.Alarm).Field(row.Priority).Field(row.Reading).Field(row.Truth).Field(row.Unit)
                .Field(row.IsFalse ? "yes" : "no").Field(row.FirstCall ?? string.Empty).Field(row.MissedCalls).Field(row.AnsweredBy ?? string.Empty)
                .Field(row.MinutesToAnswer ?? double.NaN).Field(row.MinutesToArrive ?? double.NaN).Field(row.Returned ?? string.Empty)
                .Field(row.HoursStanding ?? double.NaN).EndLine();
        }

        return text.ToString();
    }

    /// <summary>A row a month: electricity by use, fuel, heat.</summary>
    public static string EnergyByMonth(SeasonSummary summary)
    {
        ArgumentNullException.ThrowIfNull(summary);
        var text = new CsvText();
        text.Field("month").Field("days");
        string[] uses = [.. summary.Energy.ByMonth.Values.Take(1).SelectMany(m => m.KWhByUse.Keys)];
        foreach (string use in uses)
        {
            text.Field($"{use}_kWh");
        }

        text.Field("electricity_kWh").Field("water_heat_kWh").Field("air_heat_kWh").Field("water_fuel").Field("air_fuel").EndLine();
        foreach ((string month, EnergyMonth energy) in summary.Energy.ByMonth)
        {
            text.Field(month).Field(energy.Days);
            foreach (string use in uses)
            {
                text.Field(energy.KWhByUse[use]);
            }

            text.Field(energy.KWhByUse.Values.Sum()).Field(energy.WaterHeatKWh).Field(energy.AirHeatKWh).Field(energy.WaterFuel).Field(energy.AirFuel).EndLine();
        }

        return text.ToString();
    }

    /// <summary>The plan worked out by date: a row a sowing, with the days on which its plants move on, and what it should bring.</summary>
    /// <remarks>Heads a week are those at the market; trays of microgreens have no trough and no lane: they come into the light and are cut.</remarks>
    public static string SowingPlan(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        var text = new CsvText();
        text.Field("date").Field("day").Field("crop").Field("cells").Field("trays").Field("to_trough").Field("to_lane").Field("to_light").Field("harvest")
            .Field("heads_expected").EndLine();
        foreach (PlannedSowing sowing in PlannedSowing.Of(season))
        {
            text.Field(Date(season, sowing.Day)).Field(sowing.Day).Field(sowing.Crop).Field(sowing.Cells).Field(sowing.Trays)
                .Field(On(sowing.ToTrough)).Field(On(sowing.ToLane)).Field(On(sowing.ToLight)).Field(On(sowing.Harvest)).Field(sowing.Heads).EndLine();
        }

        return text.ToString();

        string On(double day) => double.IsFinite(day) ? Date(season, (int)Math.Floor(day)) : string.Empty;
    }

    private static void Header(CsvText text, Recorder table)
    {
        foreach (RecordedColumn column in table.Columns)
        {
            text.Field(column.Name);
        }

        text.EndLine();
    }

    private static void Values(CsvText text, Recorder table, int row)
    {
        foreach (double value in table.Row(row))
        {
            text.Field(value);
        }

        text.EndLine();
    }

    private static string Date(Season season, int day) =>
        season.Parts.Farm.Start.AddDays(day).ToString(DateFormat, CultureInfo.InvariantCulture);
}
