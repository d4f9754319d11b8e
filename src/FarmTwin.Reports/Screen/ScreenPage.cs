using FarmTwin.Farm;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Reports.Screen;

/// <summary>A summary on one page of 80 columns and 60 lines: what to act on first, then the figures.</summary>
public sealed class ScreenPage
{
    /// <summary>Columns of the page.</summary>
    public const int Width = 80;

    /// <summary>Lines of the page.</summary>
    public const int Height = 60;

    internal const double KilogramsPerPound = 0.45359237;
    internal const double MetresPerFoot = 0.3048;

    private const int LabelWidth = 9;
    private const double LargestClosure = 1e-9;
    private const double PoundsPerKilogram = 1 / KilogramsPerPound;
    private const double SquareMetresPerSquareFoot = MetresPerFoot * MetresPerFoot;

    private readonly SeasonSummary _summary;
    private readonly bool _us;
    private readonly List<string> _lines = [];

    private ScreenPage(SeasonSummary summary, UnitSystem units)
    {
        _summary = summary;
        _us = units == UnitSystem.Us;
    }

    /// <summary>The lines of the page, none longer than <see cref="Width"/>, no more than <see cref="Height"/>.</summary>
    /// <param name="summary">The summary.</param>
    /// <param name="units">Units of weights, volumes and temperatures.</param>
    /// <param name="folder">Where the files went; null where none were written.</param>
    public static IReadOnlyList<string> Of(SeasonSummary summary, UnitSystem units, string? folder)
    {
        ArgumentNullException.ThrowIfNull(summary);
        var page = new ScreenPage(summary, units);
        page.Fish();
        page.Crops();
        page.Water();
        page.Solids();
        page.Energy();
        page.Business();
        page.Faults();
        page.Alarms();
        page.Dates();
        page.Ledgers();
        page.Cautions();
        if (folder is not null)
        {
            page._lines.Add(Cut($"Files     {folder}"));
        }

        string[] figures = [.. page._lines];
        page._lines.Clear();
        page.Head();
        page.Findings(figures.Length + 1);
        page._lines.Add(new string('-', Width));
        page._lines.AddRange(figures.Take(Height - page._lines.Count));
        return page._lines;
    }

    private void Head()
    {
        EngineIdentity engine = _summary.Engine;
        string hash = engine.ScenarioHash.Length >= 8 ? $", scenario {engine.ScenarioHash[..8]}" : string.Empty;
        _lines.Add(Cut(_summary.Title));
        _lines.Add(Cut($"{_summary.Days:0.##} days from {_summary.Start:d MMM yyyy}; engine {engine.Version}, seed {engine.Seed}, step {engine.StepMinutes:0.##} min{hash}"));
        _lines.Add(new string('-', Width));
    }

    private void Fish()
    {
        FishSummary fish = _summary.Fish;
        if (fish.Delivered <= 0)
        {
            Row("Fish", "none delivered");
            return;
        }

        Row("Fish", $"fed {Mass(fish.FeedKg)}, gained {Mass(fish.GainedKg)}, sold {Mass(fish.HarvestedKg)}, standing {Mass(fish.StandingKg)}");
        string mean = fish.MeanWeightSoldG is { } grams ? $", sold at {Grams(grams)}" : string.Empty;
        Row(string.Empty, $"FCR {Or(fish.Fcr, "0.00")}, survival {fish.Survival:0.0%}{mean}; {fish.Delivered:0} in, {fish.Sold:0} sold, {fish.Died:0} dead");
    }

    private void Crops()
    {
        string label = "Crops";
        foreach ((string name, CropSummary crop) in _summary.Crops.Take(6))
        {
            if (crop.Fruit is { } fruit)
            {
                Row(label, fruit.FirstPickDay is null
                    ? $"{name}: nothing picked yet, {crop.StandingPlants:0} plants stand"
                    : $"{name}: {Mass(crop.HarvestedKg)} saleable from day {fruit.FirstPickDay:0}, {Yield(fruit.SaleableKgPerM2)} of bed");
                label = string.Empty;
                continue;
            }

            Row(label, crop.HeadsHarvested <= 0
                ? $"{name}: nothing cut yet, {crop.StandingPlants:0} plants stand"
                : $"{name}: {crop.SaleableHeads:0} heads, {Mass(crop.HarvestedKg)}, {Grams(crop.MeanHeadG!.Value)} each ("
                    + $"{Grams(crop.HeadG.Lowest!.Value)} to {Grams(crop.HeadG.Highest!.Value)}); 2nd {crop.SecondGradeHeads:0}, lost {crop.UnsaleableHeads:0}");
            label = string.Empty;
        }

        IReadOnlyDictionary<string, MicrogreenSummary> trays = _summary.Nursery.Microgreens;
        if (trays.Count > 0)
        {
            Row(label, $"microgreens: {trays.Values.Sum(m => m.TraysCut):0} trays, {Mass(trays.Values.Sum(m => m.HarvestedKg))} ("
                + string.Join(", ", trays.Where(m => m.Value.MeanTrayG is not null).OrderByDescending(m => m.Value.HarvestedKg).Take(2)
                    .Select(m => $"{m.Key} {Grams(m.Value.MeanTrayG!.Value)} a tray")) + ")");
        }
    }

    private void Water()
    {
        WaterSummary water = _summary.Water;
        Row("Water", $"{"mg/L, hourly",-12}{"TAN",7}{"NO2-N",7}{"NH3-N",7}{"low O2",8}   on days");
        Peaks("before fish", water.BeforeFish);
        Peaks("with fish", water.WithFish);
        Row(string.Empty, $"nitrate at the end {Pair(water.FinalNitrateMgNPerL, n => n.ToString("0"))} mg N/L (fish loop / plant loop)");
        Row(string.Empty, $"test kit NO3 {Pair(water.TestKitAtEnd, k => k.NitrateMgNO3PerL.ToString("0"))}, NO2 {Pair(water.TestKitAtEnd, k => k.NitriteMgNO2PerL.ToString("0.0"))}, "
            + $"NH4 {Pair(water.TestKitAtEnd, k => k.AmmoniumMgNH4PerL.ToString("0.0"))}, {Pair(water.TestKitAtEnd, k => Or(k.TdsPpm, "0"))} ppm");
        ReadingRange warmth = water.TemperatureC["fishWaterWithFish"];
        Row(string.Empty, $"pH {Pair(water.LoopPH, r => Range(r, "0.0"))}; fish water {Degrees(warmth.Lowest is null ? water.TemperatureC["fishWater"] : warmth)}; "
            + $"top-up {Volume(water.TopUpLPerDay)}/d");
    }

    private void Peaks(string name, LoopPeaks peaks)
    {
        if (peaks.TanMgNPerL is not null || peaks.LowestOxygenMgPerL is not null)
        {
            Row(string.Empty, $"{name,-12}{At(peaks.TanMgNPerL, "0.00"),7}{At(peaks.NitriteMgNPerL, "0.00"),7}{At(peaks.UnionizedAmmoniaMgNPerL, "0.000"),7}"
                + $"{At(peaks.LowestOxygenMgPerL, "0.0"),8}   {Day(peaks.TanMgNPerL)}, {Day(peaks.NitriteMgNPerL)}, {Day(peaks.UnionizedAmmoniaMgNPerL)}, {Day(peaks.LowestOxygenMgPerL)}");
        }
    }

    private void Solids()
    {
        SolidsSummary solids = _summary.Solids;
        Row("Solids", $"{Mass(solids.CarriedKg)} dry in {solids.Washes:0} washes ({solids.WashesPutOff:0} put off), {solids.CarriedShareOfFeedNitrogen ?? 0:0%} of the feed's N");
        Row(string.Empty, $"{solids.Decants:0} decants gave back {solids.ReturnedNitrogenG:0} g N, {solids.ReturnedPhosphorusG:0} g P, {solids.ReturnedPotassiumG:0} g K; "
            + $"{Mass(solids.CompostedKg)} to compost");
        IEnumerable<string> sinks = _summary.Nutrients.NitrogenSinks.OrderByDescending(s => s.Value.Share).Take(4).Select(s => $"{Words(s.Key)} {s.Value.Share:0%}");
        Row("Nitrogen", string.Join(", ", sinks));
        Nutrients();
    }

    // Only what a grower would see or must put into the calendar.
    private void Nutrients()
    {
        List<string> told = [.. _summary.Nutrients.Elements.Where(e => e.Value.DaysShort > 0).OrderBy(e => e.Value.FirstShortDay).Take(3)
            .Select(e => $"{e.Key} {e.Value.DaysShort} d from day {e.Value.FirstShortDay:0}")];
        string shortage = told.Count > 0 ? "short of " + string.Join(", ", told) : string.Empty;
        string sodium = _summary.Water.Sodium is { Watch.Date: { } date } salt ? $"sodium {salt.EndMgPerL:0} mg/L, {salt.Watch.MgPerL:0} on {date:d MMM yyyy}" : string.Empty;
        string text = string.Join("; ", new[] { shortage, sodium }.Where(t => t.Length > 0));
        if (text.Length > 0)
        {
            Row("Nutrients", text);
        }
    }

    private void Energy()
    {
        EnergySummary energy = _summary.Energy;
        string[] fuels = [.. energy.Heaters.Values.Select(h => h.FuelName).Distinct()];
        string heaters = fuels.Length == 1
            ? $"{fuels[0]} " + string.Join(", ", energy.Heaters.Select(h => $"{h.Key} {Amount(h.Value)}"))
            : string.Join(", ", energy.Heaters.Select(h => $"{h.Key} {Amount(h.Value)} of {h.Value.FuelName}"));
        Row("Energy", $"{(fuels.Length > 0 ? heaters : "no fuel")}; power {energy.KWh:0} kWh; CO2 of fuel {Mass(energy.FuelCarbonDioxideKg)}");
        Row(string.Empty, $"the same heat: {energy.SameHeatByResistanceKWh:0} kWh by resistance, {energy.SameHeatByHeatPumpKWh:0} by heat pump");
        foreach ((string name, FuelTankSummary tank) in energy.FuelTanks.Take(1))
        {
            Row(string.Empty, $"tank {name}: {tank.Deliveries} deliveries, lowest {Volume(tank.LowestL.Value)} on day {tank.LowestL.Day:0}, "
                + $"{(tank.HoursEmpty > 0 ? $"EMPTY {tank.HoursEmpty:0} h" : $"{Or(tank.DaysLeft, "0")} days left")}");
        }
    }

    private void Business()
    {
        LabourSummary labour = _summary.Labour;
        IEnumerable<string> areas = labour.HoursByArea.Where(a => a.Value > 0).OrderByDescending(a => a.Value).Select(a => $"{a.Key} {a.Value / labour.Hours:0%}");
        Row("Work", $"{labour.Hours:0} h ({string.Join(", ", areas)}); a week {Or(labour.OrdinaryWeekHours, "0")}, at most {Or(labour.BusiestWeekHours, "0")} h");
        if (_summary.Money is not { } money)
        {
            return;
        }

        Row($"{money.Currency}", $"income {money.Income:0}, costs {money.Costs:0}, margin {money.Margin:0}, after wear {money.MarginAfterWear:0}; "
            + $"lowest cash {money.LowestCash:0}, day {money.LowestCashDay:0}");
        string[] costs = [.. money.Products.Where(p => p.Value.CostPerUnit is not null).Take(4)
            .Select(p => $"{p.Key} {p.Value.CostPerUnit:0.00} / {Or(p.Value.BroughtPerUnit, "0.00")} a {(p.Value.Unit == "kg" ? "kg" : p.Value.Unit.TrimEnd('s'))}")];
        if (costs.Length > 0)
        {
            Row(string.Empty, $"cost / price: {string.Join("; ", costs)}");
        }
    }

    private void Alarms()
    {
        if (_summary.Alarms is not { } alarms)
        {
            return;
        }

        string counts = string.Join(", ", alarms.ByPriority.Select(p => $"{p.Value.Raised} {p.Key}"));
        double? median = alarms.ByPriority.Where(p => p.Key != "low").Max(p => p.Value.MedianMinutesToAnswer);
        double? longest = alarms.ByPriority.Where(p => p.Key != "low").Max(p => p.Value.LongestMinutesToAnswer);
        string answer = median is null ? string.Empty : $"; answered in {median:0} min (median), {longest:0} at worst";
        string missed = alarms.MissedChores.Count == 0 ? string.Empty : $"; {alarms.MissedChores.Values.Sum()} chores missed";
        Row("Alarms", $"{counts}; {alarms.False} false{answer}{missed}");
    }

    // The worst first: the page has no room for all.
    private void Faults()
    {
        const int Most = 2;
        string label = "Faults";
        foreach ((string name, FaultSummary fault) in _summary.Faults
            .OrderByDescending(f => f.Value.FishLost).ThenBy(f => f.Value.Tanks.Values.Select(t => t.LowestOxygenMgPerL ?? 0).DefaultIfEmpty(double.PositiveInfinity).Min()).Take(Most))
        {
            string lasted = fault.MinutesToMended is not { } minutes ? "still open"
                : minutes < 48 * 60 ? $"{minutes / 60:0.0} h" : $"{minutes / 60 / 24:0} days";
            double[] three = [.. fault.Tanks.Values.Where(t => t.MinutesTo3MgPerL is not null).Select(t => t.MinutesTo3MgPerL!.Value)];
            string oxygen = three.Length > 0 ? $", 3 mg/L after {three.Min():0} min" : string.Empty;
            string lost = fault.FishLost >= 0.5 ? $", {fault.FishLost:0} fish lost" : string.Empty;
            string water = fault.SpilledL + fault.LeakedL >= 1 ? $", {Volume(fault.SpilledL + fault.LeakedL)} out of the farm" : string.Empty;
            Row(label, $"{name} (day {fault.Day:0}): {lasted}{oxygen}{lost}{water}");
            label = string.Empty;
        }

        if (_summary.Faults.Count > 0 && _summary.Backups.Count > 0)
        {
            Row("Backups", "ran " + string.Join(", ", _summary.Backups.Select(b => $"{b.Key} {b.Value.RanHours:0.0} of {b.Value.FullHours:0.0} h")));
        }
    }

    private void Dates()
    {
        WaterSummary water = _summary.Water;
        var dates = new List<string>
        {
            $"cycled {Day(water.CycledDay)}", $"fish {Day(_summary.Fish.FirstDeliveryDay)}", $"valves {Day(water.OpenedDay)} to {Day(water.CoupledDay)}",
            $"sale {Day(_summary.Fish.FirstSaleDay)}",
        };
        dates.AddRange(_summary.Crops.Take(2).Select(c => $"{c.Key} {Day(c.Value.FirstHarvestDay)}"));
        Row("Days", string.Join(", ", dates));
    }

    private void Ledgers()
    {
        (string worst, LedgerSummary ledger) = _summary.Ledgers.MaxBy(l => double.IsNaN(l.Value.Closure) ? double.PositiveInfinity : l.Value.Closure);
        int closed = _summary.Ledgers.Values.Count(l => l.Closure < LargestClosure);
        Row("Ledgers", $"{closed} of {_summary.Ledgers.Count} close within 1e-9; worst: {worst}, {ledger.Closure:0.0e0} of its throughput");
    }

    // Whole in summary.json; here that they exist, and how each begins.
    private void Cautions()
    {
        if (_summary.Cautions.Count > 0)
        {
            Row("Cautions", string.Join("; ", _summary.Cautions.Select(c => c.IndexOf(':', StringComparison.Ordinal) is > 0 and var at ? c[..at] : "doses"))
                + ": see summary.json");
        }
    }

    // As many findings as the figures leave room for, and the weightiest six whatever they leave; whole sentences only.
    private void Findings(int reserved)
    {
        const int AtLeast = 6;
        int told = 0;
        foreach (string finding in _summary.Findings)
        {
            List<string> wrapped = [.. Wrap(finding, Width - 2)];
            if (_summary.Trials.FirstOrDefault(t => t.Finding == finding) is { } trial)
            {
                wrapped.AddRange(Wrap(trial.Says, Width - 2));
            }

            int left = Height - reserved - _lines.Count - (told + 1 < _summary.Findings.Count ? 1 : 0);
            if (wrapped.Count > left && told >= AtLeast)
            {
                break;
            }

            _lines.AddRange(wrapped.Select((line, i) => (i == 0 ? "* " : "  ") + line));
            told++;
        }

        if (told < _summary.Findings.Count)
        {
            _lines.Add($"  {_summary.Findings.Count - told} more in summary.json");
        }
    }

    private void Row(string label, string text) => _lines.AddRange(Wrap(text, Width - LabelWidth - 1)
        .Select((line, i) => (i == 0 ? label : string.Empty).PadRight(LabelWidth) + " " + line));

    private string Mass(double kilograms)
    {
        double value = _us ? kilograms * PoundsPerKilogram : kilograms;
        return $"{(value < 10 ? $"{value:0.0}" : $"{value:0}")} {(_us ? "lb" : "kg")}";
    }

    private string Yield(double kilogramsPerSquareMetre) => _us
        ? $"{kilogramsPerSquareMetre * PoundsPerKilogram * SquareMetresPerSquareFoot:0.0} lb/ft2"
        : $"{kilogramsPerSquareMetre:0.0} kg/m2";

    private string Grams(double grams) => _us ? $"{grams / UnitConstants.GramsPerKilogram * PoundsPerKilogram * 16:0.0} oz" : $"{grams:0} g";

    private string Volume(double litres) => _us ? $"{litres / UnitConstants.LitresPerUsGallon:0} gal" : $"{litres:0} L";

    private string Degrees(ReadingRange range) => range.Lowest is null ? "-"
        : _us ? $"{(range.Lowest.Value * 1.8) + 32:0} to {(range.Highest!.Value * 1.8) + 32:0} °F"
        : $"{range.Lowest.Value:0.0} to {range.Highest!.Value:0.0} °C";

    private string Amount(HeaterSummary heater) => heater.Litres is { } litres && !_us ? $"{litres:0} L" : $"{heater.Amount:0} {heater.Unit}";

    private static string Pair<T>(IReadOnlyDictionary<string, T> loops, Func<T, string> shown) => $"{shown(loops["fishLoop"])} / {shown(loops["plantLoop"])}";

    private static string Range(ReadingRange range, string format) => range.Lowest is null
        ? "-" : $"{range.Lowest.Value.ToString(format)} - {range.Highest!.Value.ToString(format)}";

    private static string At(PeakReading? peak, string format) => peak is null ? "-" : peak.Value.ToString(format);

    private static string Day(PeakReading? peak) => peak is null ? "-" : $"{peak.Day:0}";

    private static string Day(double? day) => day is null ? "-" : $"{day:0}";

    private static string Or(double? value, string format) => value?.ToString(format) ?? "-";

    private static string Words(string key) => string.Concat(key.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"));

    private static string Cut(string line) => line.Length <= Width ? line : line[..(Width - 3)] + "...";

    /// <summary>Breaks a text into lines no longer than a width.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        while (text.Length > width)
        {
            int space = text.LastIndexOf(' ', width);
            int at = space > 0 ? space : width;
            lines.Add(text[..at]);
            text = text[at..].TrimStart();
        }

        lines.Add(text);
        return lines;
    }
}
