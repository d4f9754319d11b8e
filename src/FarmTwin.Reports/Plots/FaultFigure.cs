using System.Globalization;
using FarmTwin.Engine;
using FarmTwin.Farm;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Reports.Plots;

/// <summary>The figure of the worst fault: oxygen and carbon dioxide of every tank through it, by the minute.</summary>
internal static class FaultFigure
{
    /// <summary>Name of its files.</summary>
    public const string Name = "fault";

    private const double SecondsPerMinute = 60;
    private const double MostMinutes = 24 * 60;
    private const int MostTanks = 4;

    /// <summary>The figure; null where no fault met fish.</summary>
    public static Figure? Of(Season season, SeasonSummary summary, SummaryBands bands)
    {
        (string name, FaultSummary worst) = summary.Faults.Where(f => f.Value.Tanks.Count > 0)
            .OrderBy(f => f.Value.Tanks.Values.Min(t => t.LowestOxygenMgPerL ?? 0)).FirstOrDefault();
        if (worst is null)
        {
            return null;
        }

        Fault fault = season.State.Faults.First(f => f.Name == name);
        Recorder rows = season.Record.Faults.Rows;
        double aftermath = season.Parts.Faults.AftermathHours * UnitConstants.SecondsPerHour;
        double[] seconds = rows.Column(0);
        double end = fault.IsOpen ? season.NowSeconds : fault.MendedSeconds + aftermath;
        double last = Math.Min(MostMinutes, Math.Ceiling((end - fault.BeganSeconds) / SecondsPerMinute));
        int[] shown = [.. Enumerable.Range(0, seconds.Length).Where(i => seconds[i] >= fault.BeganSeconds && seconds[i] <= fault.BeganSeconds + (last * SecondsPerMinute))];
        if (shown.Length < 2)
        {
            return null;
        }

        double[] minutes = [.. shown.Select(i => (seconds[i] - fault.BeganSeconds) / SecondsPerMinute)];
        string[] tanks = [.. worst.Tanks.OrderBy(t => t.Value.LowestOxygenMgPerL ?? 0).Take(MostTanks).Select(t => t.Key)];
        (string tank, FaultTankSummary figures) = worst.Tanks.MinBy(t => t.Value.LowestOxygenMgPerL ?? 0);
        string fell = figures.MinutesTo3MgPerL is { } three
            ? $"{tank} is at 3 mg/L of oxygen {three:0} minutes after '{name}' begins"
            : $"Oxygen of the tanks falls to {figures.LowestOxygenMgPerL ?? 0:0.0} mg/L during '{name}'";
        string lost = worst.FishLost >= 0.5 ? $"; {worst.FishLost:0} fish die" : "; no fish dies";
        DateTime began = season.Parts.Farm.Start.ToDateTime(TimeOnly.MinValue).AddSeconds(fault.BeganSeconds);
        string when = began.ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture);
        string title = fell + lost;
        return new Figure(
            Name,
            title,
            $"Above: dissolved oxygen, mg/L. Below: carbon dioxide, mg/L. Time in hours and minutes from {when}. {summary.Title}",
            $"{title}. {string.Join("; ", worst.Tanks.Select(t => $"{t.Key} with {t.Value.FishKg:0} kg of fish: lowest oxygen {t.Value.LowestOxygenMgPerL ?? 0:0.0} mg/L, carbon dioxide up to {t.Value.HighestCarbonDioxideMgPerL:0}"))}.",
            summary.Start,
            last,
            [
                new FigurePanel("oxygen, mg/L", [.. tanks.Select((t, i) => Line(t, $"oxygen_{t}_mg_per_L", i))],
                    [new FigureBand(bands.OxygenLow, double.PositiveInfinity, $"fit for fish: above {bands.OxygenLow:0} mg/L")]),
                new FigurePanel("carbon dioxide, mg/L", [.. tanks.Select((t, i) => Line(t, $"carbon_dioxide_{t}_mg_per_L", i))], []),
            ],
            Events(season, fault, last))
        {
            Ticks = TicksTo(last),
            Data = "faults.csv",
        };

        FigureLine Line(string label, string column, int style)
        {
            double[] values = rows.Column(rows.ColumnIndex(column));
            return new FigureLine(label, minutes, [.. shown.Select(i => values[i])], style);
        }
    }

    private static List<FigureEvent> Events(Season season, Fault fault, double last)
    {
        var events = new List<FigureEvent>();
        foreach (LoggedEvent line in season.Log.Events)
        {
            double minute = (line.Seconds - fault.BeganSeconds) / SecondsPerMinute;
            string? label = line.What switch
            {
                "backup starts" => $"{line.Where} starts",
                "backup empty" => $"{line.Where} is empty",
                "fault found" when line.Where == fault.Where => "found",
                "mended" when line.Where == fault.Where => fault.Kind == FaultKind.Mains ? "mains back" : "mended",
                _ => null,
            };
            if (label is not null && minute >= 0 && minute <= last)
            {
                events.Add(new FigureEvent(minute, $"{label}, {Clock(minute)}"));
            }
        }

        return events;
    }

    private static (double[] At, string[] Labels) TicksTo(double last)
    {
        double step = new double[] { 10, 20, 30, 60, 120, 180, 240 }.FirstOrDefault(s => last / s <= 12, 240);
        double[] at = [.. Enumerable.Range(0, (int)(last / step) + 1).Select(i => i * step)];
        return (at, [.. at.Select(Clock)]);
    }

    private static string Clock(double minutes) =>
        string.Create(CultureInfo.InvariantCulture, $"{(int)(minutes / 60)}:{(int)(minutes % 60):00}");
}
