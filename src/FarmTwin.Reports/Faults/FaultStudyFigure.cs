using System.Globalization;
using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>The figure of a study of faults: oxygen of the worst tank by the minute, for the faults that take it away and with the battery that saves it.</summary>
internal static class FaultStudyFigure
{
    private const int MostFaults = 2;
    private const double LastMinute = 150;
    private const double Fit = 5;

    /// <summary>The figure; null where no fault takes the oxygen.</summary>
    public static Figure? Of(FaultStudyResult study)
    {
        FaultRow[] shown = [.. study.Rows.Where(r => r.Oxygen is not null && r.Harm.HarmsFish && r.Case.UnattendedHours == 0).Take(MostFaults)];
        if (shown.Length == 0)
        {
            return null;
        }

        var lines = new List<FigureLine>();
        foreach (FaultRow row in shown)
        {
            lines.Add(Line(row.Case.Part, row.Oxygen!, lines.Count));
        }

        if (shown[0].OxygenWithBackup is { } saved)
        {
            lines.Add(Line("with battery air", saved, lines.Count));
        }

        string title = shown[0].Harm.MinutesTo3MgPerL is { } three
            ? string.Create(CultureInfo.InvariantCulture, $"{Capital(shown[0].Case.Part)}: the first tank is at 3 mg/L of oxygen after {three:0} minutes")
            : $"{Capital(shown[0].Case.Part)}: oxygen of the tanks falls";
        string battery = shown[0].Backups.FirstOrDefault(b => b.Saves && b.Kind == BackupSearch.BatteryAirKind) is { } b ? $" With a backup: {b.InWords}." : string.Empty;
        return new Figure(
            "oxygen", title, $"Dissolved oxygen of the worst stocked tank, mg/L; hours and minutes since the part failed, after the last meal of the day with most fish. {study.Title}",
            $"{title}. {string.Join(" ", shown.Select(r => $"{r.Case.Part}: {FaultWords.Harm(r)}"))}{battery}", study.Start, LastMinute,
            [new FigurePanel("oxygen, mg/L", lines, [new FigureBand(Fit, double.PositiveInfinity, "fit for fish: above 5 mg/L")])], [], "faults.csv")
        {
            Ticks = ([.. Enumerable.Range(0, 6).Select(i => i * 30.0)], [.. Enumerable.Range(0, 6).Select(i => string.Create(CultureInfo.InvariantCulture, $"{i / 2}:{i % 2 * 30:00}"))]),
        };
    }

    private static FigureLine Line(string label, OxygenTrace trace, int style)
    {
        int count = trace.Minutes.TakeWhile(m => m <= LastMinute).Count();
        return new FigureLine(label, trace.Minutes[..count], trace.MgPerL[..count], style);
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
