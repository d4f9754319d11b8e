using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;

namespace FarmTwin.Reports.RunReport;

/// <summary>Hours outside the usual bands, and what the test kit reads at the end.</summary>
internal static class LimitsPart
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["tan"] = "Ammonia and ammonium (TAN)", ["nitrite"] = "Nitrite", ["unionizedAmmonia"] = "Ammonia gas (NH3-N)", ["oxygen"] = "Oxygen", ["carbonDioxide"] = "Carbon dioxide",
        ["pHFishLoop"] = "pH of the fish loop", ["pHPlantLoop"] = "pH of the plant loop", ["nitratePlantLoop"] = "Nitrate of the plant loop", ["fishWater"] = "Fish water, warmth", ["plantWater"] = "Plant water, warmth",
    };

    public static void Add(HtmlSection section, SeasonSummary summary)
    {
        var table = new HtmlTable("Hours outside the usual band; what concerns fish is counted while there are fish",
            HtmlColumn.Words("reading"), HtmlColumn.Words("band"), HtmlColumn.Number("below", "h"), HtmlColumn.Number("above", "h"), HtmlColumn.Number("counted", "h"), HtmlColumn.Words("verdict"));
        foreach ((string name, BandHours band) in summary.Water.HoursOutsideBand.Where(b => b.Value.HoursCounted > 0))
        {
            int outside = band.HoursBelow + band.HoursAbove;
            string unit = band.Unit is "" or "1" ? string.Empty : " " + band.Unit;
            string limits = (band.Low, band.High) switch
            {
                ({ } low, { } high) => $"{low:0.##} to {high:0.##}{unit}",
                (null, { } high) => $"up to {high:0.###}{unit}",
                ({ } low, null) => $"{low:0.##}{unit} or more",
                _ => "none",
            };
            table.Row(Names.GetValueOrDefault(name, Say.Capital(name)), limits, Say.Count(band.HoursBelow), Say.Count(band.HoursAbove), Say.Count(band.HoursCounted),
                outside == 0 ? "held" : $"{Say.Share((double)outside / band.HoursCounted)} of the time");
        }

        section.Table(table);
        var peaks = new HtmlTable("Highest and lowest hourly means", HtmlColumn.Words("reading"), HtmlColumn.Number("before fish"), HtmlColumn.Words("when"), HtmlColumn.Number("with fish"), HtmlColumn.Words("when"));
        foreach ((string name, Func<LoopPeaks, PeakReading?> of) in new (string, Func<LoopPeaks, PeakReading?>)[]
        {
            ("highest TAN, mg N/L", p => p.TanMgNPerL), ("highest nitrite, mg N/L", p => p.NitriteMgNPerL), ("highest NH3-N, mg N/L", p => p.UnionizedAmmoniaMgNPerL),
            ("lowest oxygen, mg/L", p => p.LowestOxygenMgPerL), ("highest carbon dioxide, mg/L", p => p.HighestCarbonDioxideMgPerL),
        })
        {
            (PeakReading? before, PeakReading? with) = (of(summary.Water.BeforeFish), of(summary.Water.WithFish));
            if (before is not null || with is not null)
            {
                peaks.Row(name, Say.Number(before?.Value), When(before), Say.Number(with?.Value), When(with));
            }
        }

        section.Table(peaks);
        var kit = new HtmlTable("What a test kit reads at the end", HtmlColumn.Words("where"), HtmlColumn.Number("nitrate", "mg NO3/L"), HtmlColumn.Number("nitrite", "mg NO2/L"),
            HtmlColumn.Number("ammonium", "mg NH4/L"), HtmlColumn.Number("dissolved salts", "ppm"));
        foreach ((string loop, TestKitReading reading) in summary.Water.TestKitAtEnd)
        {
            kit.Row(Say.Words(loop), Say.Number(reading.NitrateMgNO3PerL), Say.Number(reading.NitriteMgNO2PerL), Say.Number(reading.AmmoniumMgNH4PerL), Say.Number(reading.TdsPpm));
        }

        section.Table(kit);
        string When(PeakReading? peak) => peak is null ? "–" : $"day {peak.Day:0}, {summary.Start.AddDays((int)peak.Day):d MMM}";
    }
}
