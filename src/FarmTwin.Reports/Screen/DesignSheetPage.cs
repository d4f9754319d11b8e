using FarmTwin.Farm;
using FarmTwin.Farm.DesignSheet;

namespace FarmTwin.Reports.Screen;

/// <summary>The design sheet as a table of 80 columns: group by group a figure, its band, its verdict and the number of its source.</summary>
public sealed class DesignSheetPage
{
    private const int NameWidth = 39;
    private const int FigureWidth = 17;
    private const int BandWidth = 13;
    private const int Indent = 4;

    private readonly Sheet _sheet;
    private readonly bool _us;
    private readonly Func<string, string> _citation;
    private readonly List<string> _lines = [];
    private readonly List<string> _sources = [];

    private DesignSheetPage(Sheet sheet, UnitSystem units, Func<string, string> citation)
    {
        _sheet = sheet;
        _us = units == UnitSystem.Us;
        _citation = citation;
    }

    /// <summary>The lines of the page, none longer than <see cref="ScreenPage.Width"/>.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="units">Units of figures and bands; the sentences stay metric.</param>
    /// <param name="citation">The citation of a source's key.</param>
    public static IReadOnlyList<string> Of(Sheet sheet, UnitSystem units, Func<string, string> citation)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(citation);
        var page = new DesignSheetPage(sheet, units, citation);
        page.Head();
        foreach (IGrouping<string, SheetLine> group in sheet.Lines.GroupBy(l => l.Group))
        {
            page._lines.Add(string.Empty);
            page._lines.Add(group.Key);
            foreach (SheetLine line in group)
            {
                page.Row(line);
            }
        }

        page.Foot();
        return page._lines;
    }

    private void Head()
    {
        Wrapped($"Design sheet: {_sheet.Title}", 0);
        Wrapped($"{_sheet.Count(Verdict.Act)} to act on, {_sheet.Count(Verdict.Watch)} to watch, {_sheet.Count(Verdict.Fine)} fine, "
            + $"{_sheet.Count(Verdict.NoVerdict)} shown without a verdict", 0);
        _lines.Add(new string('-', ScreenPage.Width));
    }

    private void Row(SheetLine line)
    {
        if (!_sources.Contains(line.Source))
        {
            _sources.Add(line.Source);
        }

        string name = line.Name.Length <= NameWidth ? line.Name : line.Name[..(NameWidth - 3)] + "...";
        string verdict = line.Verdict switch { Verdict.Act => "ACT", Verdict.Watch => "watch", Verdict.Fine => "fine", _ => "-" };
        _lines.Add($"{name.PadRight(NameWidth)}{Figure(line),FigureWidth} {Band(line).PadRight(BandWidth)}{verdict,-6}{$"[{_sources.IndexOf(line.Source) + 1}]",4}");
        if (line.Advice.Length > 0)
        {
            Wrapped(line.Advice, Indent);
        }
    }

    private void Foot()
    {
        _lines.Add(string.Empty);
        _lines.Add("Sources");
        for (int i = 0; i < _sources.Count; i++)
        {
            Wrapped($"[{i + 1}] {_citation(_sources[i])}", Indent);
        }

        _lines.Add(new string('-', ScreenPage.Width));
        Wrapped("A sheet is reckoned from closed forms for one hour, one night or one week; 'run' plays the season, and where the two part, believe the season.", 0);
    }

    private string Figure(SheetLine line) => line.Value is not { } value ? string.Empty
        : double.IsPositiveInfinity(value) ? "never"
        : $"{Number(Convert(value, line.Unit))}{(Unit(line.Unit) is { Length: > 0 } unit ? $" {unit}" : string.Empty)}";

    private string Band(SheetLine line)
    {
        string? low = line.Low is { } l ? Number(Convert(l, line.Unit)) : null;
        string? high = line.High is { } h ? Number(Convert(h, line.Unit)) : null;
        return (low, high) switch
        {
            (not null, not null) => $"{low} to {high}",
            (not null, null) => $">= {low}",
            (null, not null) => $"<= {high}",
            _ => string.Empty,
        };
    }

    private double Convert(double value, string unit) => !_us ? value : unit switch
    {
        "kg/m3" => value * UnitConstants.LitresPerUsGallon / UnitConstants.GramsPerKilogram / ScreenPage.KilogramsPerPound,
        "kg/d" => value / ScreenPage.KilogramsPerPound,
        "L" => value / UnitConstants.LitresPerUsGallon,
        "m" => value / ScreenPage.MetresPerFoot,
        "°C" => (value * 1.8) + 32,
        "g/m2/d" => value * ScreenPage.MetresPerFoot * ScreenPage.MetresPerFoot,
        "g/wk" => value / UnitConstants.GramsPerKilogram / ScreenPage.KilogramsPerPound,
        _ => value,
    };

    private string Unit(string unit) => !_us ? unit.Replace("1/h", "/h", StringComparison.Ordinal) : unit switch
    {
        "1/h" => "/h",
        "kg/m3" => "lb/gal",
        "kg/d" => "lb/d",
        "L" => "gal",
        "m" => "ft",
        "°C" => "°F",
        "g/m2/d" => "g/ft2/d",
        "g/wk" => "lb/wk",
        _ => unit,
    };

    private static string Number(double value) => double.IsPositiveInfinity(value) ? "never"
        : Math.Abs(value) switch
        {
            >= 100 => value.ToString("0"),
            >= 10 => value.ToString("0.#"),
            _ => value.ToString("0.##"),
        };

    private void Wrapped(string text, int indent)
    {
        foreach (string line in ScreenPage.Wrap(text, ScreenPage.Width - indent))
        {
            _lines.Add(new string(' ', indent) + line);
        }
    }
}
