using System.Globalization;
using System.Text;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>Writes docs/validation.md from the cases.</summary>
internal static class ValidationPage
{
    public static string Write(IReadOnlyList<ValidationCase> cases, string notChecked)
    {
        var page = new StringBuilder();
        Line(page, "# Checks against the outside world");
        Line(page);
        Line(page, "Written by the tests (`FARMTWIN_UPDATE=1 dotnet test tests/FarmTwin.Farm.Tests --filter FullyQualifiedName~Validation`); every line is also a test.");
        Line(page, "*Expected* is the source's figure with the departure that passes, or a span. *Departure* is how far the twin's figure lies from it. *Basis* says");
        Line(page, "what the figure rests on: *published* was read in the source, *abstract* in its summary, *second hand* in a text that quotes it, *from memory* was");
        Line(page, "not re-read; an *own calculation* checks the program, not nature.");
        Line(page);
        foreach ((Standing standing, string word) in new[] { (Standing.Test, "tests against what others published or computed"), (Standing.Arithmetic, "of our own arithmetic, which test the program alone"), (Standing.Calibrated, "calibrated, which are no tests"), (Standing.Gap, "known departures") })
        {
            Line(page, $"- {cases.Count(c => c.Standing == standing)} {word}");
        }

        Line(page);
        Line(page, "## Tests: nothing was fitted to these");
        foreach (IGrouping<string, ValidationCase> subject in cases.Where(c => c.Standing == Standing.Test).GroupBy(c => c.Subject))
        {
            Line(page);
            Line(page, $"### {subject.Key}");
            Line(page);
            Table(page, subject);
        }

        Line(page);
        Line(page, "## Arithmetic: our own calculations, which test the program and not nature");
        Line(page);
        Table(page, cases.Where(c => c.Standing == Standing.Arithmetic));
        Line(page);
        Line(page, "## Calibrated: parameters were fitted to these, agreement proves the fit alone");
        Line(page);
        Table(page, cases.Where(c => c.Standing == Standing.Calibrated));
        Line(page);
        Line(page, "## Known departures: measured, and not reproduced");
        Line(page);
        Table(page, cases.Where(c => c.Standing == Standing.Gap));
        Line(page);
        foreach (ValidationCase gap in cases.Where(c => c.Standing == Standing.Gap))
        {
            Line(page, $"- *{gap.Claim}.* {gap.Why}");
        }

        Line(page);
        page.Append(notChecked);
        return page.ToString();
    }

    private static void Table(StringBuilder page, IEnumerable<ValidationCase> cases)
    {
        Line(page, "| Claim | Source | Basis | Expected | Computed | Departure |");
        Line(page, "|---|---|---|---|---|---|");
        foreach (ValidationCase c in cases)
        {
            string unit = c.Unit is "-" or "" ? string.Empty : $" {c.Unit}";
            Line(page, $"| {c.Claim} | {c.Source} | {c.Basis} | {Expected(c)}{unit} | {Number(c.Value.Value)}{unit} | {Departure(c)} |");
        }
    }

    private static string Expected(ValidationCase c) => c switch
    {
        { Expected: double figure } => $"{Number(figure)} ± {Number(c.High - figure, 2)}",
        { High: double.PositiveInfinity } => $"more than {Number(c.Low)}",
        _ => $"{Number(c.Low)} to {Number(c.High)}",
    };

    private static string Departure(ValidationCase c)
    {
        if (c.Expected is double and not 0)
        {
            // Shown to a tenth of a per cent; what rounds to nothing has no sign.
            double percent = Math.Round(100 * ((c.Value.Value / c.Expected.Value) - 1), 1);
            return percent == 0 ? "0 %" : string.Create(CultureInfo.InvariantCulture, $"{percent:+0.0;−0.0} %");
        }

        return c.Expected is 0 ? Number(c.Value.Value, 2) : c.Agrees ? "inside" : "outside";
    }

    private static string Number(double value, int digits = 4)
    {
        if (value == 0)
        {
            return "0";
        }

        int decimals = Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        return Math.Round(value, decimals).ToString("0.############", CultureInfo.InvariantCulture);
    }

    private static void Line(StringBuilder page, string text = "") => page.Append(text).Append('\n');
}
