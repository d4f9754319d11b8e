using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Reports.Plots;

/// <summary>The figures of a season, made from its record and its summary.</summary>
public sealed partial class SeasonFigures
{
    /// <summary>Names of all figures that a season may have.</summary>
    public static readonly IReadOnlyList<string> Names =
        ["biomass", "nitrate", "yield", "tan-nitrite", "oxygen", "temperature", "ph", FaultFigure.Name, "work", "cash", "grades", "microgreens"];

    private readonly Season _season;
    private readonly SeasonSummary _summary;
    private readonly RecordView _record;
    private readonly SummaryBands _bands;
    private readonly double[] _days;
    private readonly List<FigureEvent> _keyDates = [];

    private SeasonFigures(Season season, SeasonSummary summary, SummaryBands bands)
    {
        _season = season;
        _summary = summary;
        _bands = bands;
        _record = new RecordView(season);
        _days = [.. Enumerable.Range(0, _record.DayCount).Select(d => (double)d)];
        Mark(summary.Water.CycledDay, "cycled");
        Mark(summary.Fish.FirstDeliveryDay, "first fish");
        Mark(summary.Water.OpenedDay, "valves opened");
        Mark(summary.Water.CoupledDay is { } day && day != summary.Water.OpenedDay ? day : null, "fully coupled");
        Mark(summary.Fish.FirstSaleDay, "first fish sold");
    }

    /// <summary>Every figure that the season has data for; none for a season of less than two days.</summary>
    /// <param name="season">The season.</param>
    /// <param name="summary">Its summary.</param>
    /// <param name="bands">The bands to shade.</param>
    public static IReadOnlyList<Figure> Of(Season season, SeasonSummary summary, SummaryBands bands)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(bands);
        var figures = new SeasonFigures(season, summary, bands);
        return figures._record.DayCount < 2
            ? []
            : [.. new[]
            {
                figures.Biomass(), figures.Nitrate(), figures.Yield(), figures.Nitrogen(), figures.Oxygen(), figures.Temperature(), figures.Acidity(),
                FaultFigure.Of(season, summary, bands),
                BusinessFigures.Work(season, summary, figures.Period, figures._keyDates), BusinessFigures.Cash(season, summary, figures.Period, figures._keyDates),
                figures.Grades(), figures.Microgreens(),
            }.OfType<Figure>()];
    }

    // A date is not broken at the end of a line.
    private string Period => $"{_summary.Title}, "
        + $"{_summary.Start:d MMM yyyy} to {_summary.Start.AddDays(_record.DayCount - 1):d MMM yyyy}".Replace(' ', '\u00A0');

    private Figure? Biomass()
    {
        FishSummary fish = _summary.Fish;
        if (fish.PeakStandingKg is not { } peak)
        {
            return null;
        }

        string[] tanks = [.. _season.Parts.BasinNames.Where((_, b) => _season.Parts.Basins[b].Use == BasinUse.FishTank)];
        var lines = new List<FigureLine>();
        if (tanks.Length > 1)
        {
            lines.Add(Line("all tanks", "fish_biomass_kg", 4));
        }

        if (tanks.Length <= 4)
        {
            for (int t = 0; t < tanks.Length; t++)
            {
                double[] sales = [.. _season.Log.Events.Where(e => e.What == "sell fish" && e.Where == tanks[t])
                    .Select(e => Math.Floor(FarmWork.DayOf(e.Seconds))).Distinct()];
                lines.Add(Line(tanks[t], $"biomass_{tanks[t]}_kg", t) with { Marks = sales });
            }
        }

        string sold = fish.Survival < 0.5 ? $"{fish.Died:0} of {fish.Delivered:0} fish die"
            : fish.FirstSaleDay is { } sale ? $"sales begin on day {sale:0} and come to {fish.HarvestedKg:0} kg"
            : "none is ready for sale";
        return Make("biomass", $"Fish stock peaks at {peak.Value:0} kg on day {peak.Day:0}; {sold}",
            $"Live weight at the end of each day, kg, by tank (triangle: a lot sold). {Period}",
            $" It ends at {fish.StandingKg:0} kg after {fish.Delivered:0} fish delivered, {fish.Sold:0} sold and {fish.Died:0} dead.",
            [new FigurePanel("live weight, kg", lines, [])]);
    }

    private Figure Nitrate()
    {
        double[] plant = _record.Days("nitrate_plant_loop_mgN_per_L");
        double[] fish = _record.Days("nitrate_fish_loop_mgN_per_L");
        string title = $"Nitrate ends at {plant[^1]:0} mg N/L in the plant loop and {fish[^1]:0} in the fish loop; the valves stayed closed";
        if (_summary.Water.OpenedDay is { } opened)
        {
            int from = (int)(_summary.Water.CoupledDay ?? opened);
            double[] since = plant[Math.Min(from, plant.Length - 1)..];
            title = $"Nitrate of the plant loop runs from {since.Min():0} to {since.Max():0} mg N/L after the valves opened on day {opened:0} and ends at {plant[^1]:0}";
        }

        return Make("nitrate", title, $"Nitrate, mg N/L, daily mean of each loop (a test kit shows 4.43 times as much NO3). {Period}",
            $" The fish loop ends at {fish[^1]:0} mg N/L; its highest daily mean was {fish.Where(double.IsFinite).DefaultIfEmpty().Max():0}.",
            [new FigurePanel("nitrate, mg N/L",
                [Line("fish loop", "nitrate_fish_loop_mgN_per_L", 0), Line("plant loop", "nitrate_plant_loop_mgN_per_L", 1)],
                [new FigureBand(_bands.NitrateLow, _bands.NitrateHigh, $"useful to leafy crops: {_bands.NitrateLow:0} to {_bands.NitrateHigh:0} mg N/L")])]);
    }

    private Figure? Yield()
    {
        string[] crops = [.. _summary.Crops.OrderByDescending(c => c.Value.HarvestedKg).Where(c => c.Value.HarvestedKg > 0).Take(5).Select(c => c.Key)];
        if (crops.Length == 0)
        {
            return null;
        }

        var kilograms = new List<FigureLine>();
        var grams = new List<FigureLine>();
        for (int c = 0; c < crops.Length; c++)
        {
            (double[] days, double[] weekly, double[] heads) = Weekly(crops[c]);
            kilograms.Add(new FigureLine(crops[c], days, weekly, c, Marked: true));
            if (_summary.Crops[crops[c]].Fruit is null)
            {
                grams.Add(new FigureLine(crops[c], days, heads, c, Marked: true));
            }
        }

        CropSummary main = _summary.Crops[crops[0]];
        string told = string.Join("; ", crops.Select(c => _summary.Crops[c] is { Fruit: { } fruit } bearing
            ? $"{c}: {bearing.HarvestedKg:0} kg, {fruit.SaleableKgPerM2:0.0} kg a square metre of bed"
            : $"{c}: {_summary.Crops[c].HarvestedKg:0} kg, {_summary.Crops[c].MeanHeadG:0} g a head"));
        int empty = main.WeeksSinceFirstHarvest - main.WeeksWithHarvest;
        string gaps = empty > 0 ? $", none in {empty} of {main.WeeksSinceFirstHarvest} weeks" : $", some in each of {main.WeeksSinceFirstHarvest} weeks";
        string amount = main.Fruit is null ? $"{main.SaleableHeads:0} heads ({main.HarvestedKg:0} kg)" : $"{main.HarvestedKg:0} kg";
        string title = $"First {crops[0]} on day {main.FirstHarvestDay:0}; {amount} by the end{gaps}";
        string? banded = crops.FirstOrDefault(c => _summary.Crops[c].Fruit is null);
        if (banded is null)
        {
            return Make("yield", title, $"Fresh weight fit for sale, kg a week. {Period}", $" {told}.", [new FigurePanel("kg a week", kilograms, [])]);
        }

        CropSummary headed = _summary.Crops[banded];
        return Make("yield", title,
            $"Above: fresh weight fit for sale, kg a week. Below: mean head of the week, g (shaded: the saleable band of {banded}). {Period}", $" {told}.",
            [
                new FigurePanel("kg a week", kilograms, []),
                new FigurePanel("mean head, g", grams, [new FigureBand(headed.SaleableLowG, headed.SaleableHighG,
                    $"saleable {banded}: {headed.SaleableLowG:0} to {headed.SaleableHighG:0} g")]),
            ]);
    }

    private Figure Nitrogen()
    {
        LoopPeaks peaks = _summary.Water.WithFish;
        string title = peaks.TanMgNPerL is { } tan && peaks.NitriteMgNPerL is { } nitrite
            ? $"With fish, TAN peaks at {tan.Value:0.00} mg N/L (day {tan.Day:0}) and nitrite at {nitrite.Value:0.00} (day {nitrite.Day:0})"
            : $"TAN peaks at {_summary.Water.PeakTanMgNPerL:0.0} and nitrite at {_summary.Water.PeakNitriteMgNPerL:0.0} mg N/L, before any fish";
        string before = _summary.Water.BeforeFish is { TanMgNPerL: { } t, NitriteMgNPerL: { } n }
            ? $" Before fish they reached {t.Value:0.0} (day {t.Day:0}) and {n.Value:0.0} mg N/L (day {n.Day:0})." : string.Empty;
        return Make("tan-nitrite", title, $"Total ammonia and nitrite nitrogen of the fish loop, mg N/L, daily mean. {Period}", before,
            [
                new FigurePanel("TAN, mg N/L", [Line("TAN", "tan_fish_loop_mgN_per_L", 0)],
                    [new FigureBand(double.NegativeInfinity, _bands.TanHigh, $"fit for fish: below {_bands.TanHigh:0.0#}")]),
                new FigurePanel("nitrite, mg N/L", [Line("nitrite", "nitrite_fish_loop_mgN_per_L", 1)],
                    [new FigureBand(double.NegativeInfinity, _bands.NitriteHigh, $"fit for fish: below {_bands.NitriteHigh:0.0#}")]),
            ]);
    }

    private Figure Oxygen()
    {
        double lowest = _summary.Water.WithFish.LowestOxygenMgPerL?.Value ?? _summary.Water.LowestOxygenMgPerL;
        double day = _summary.Water.WithFish.LowestOxygenMgPerL?.Day ?? _summary.Water.LowestOxygenDay;
        double margin = lowest - _bands.OxygenLow;
        return Make("oxygen", $"Oxygen of the worst tank falls to {lowest:0.0} mg/L on day {day:0}, "
            + (margin >= 0 ? $"{margin:0.0} above the limit of {_bands.OxygenLow:0}" : $"{-margin:0.0} below the limit of {_bands.OxygenLow:0}"),
            $"Dissolved oxygen, mg/L: worst tank, daily mean and lowest step; plant loop, daily mean. {Period}",
            $" Hours below the limit with fish: {_summary.Water.HoursOutsideBand["oxygen"].HoursBelow}.",
            [new FigurePanel("oxygen, mg/L",
                [Line("worst tank, mean", "oxygen_tanks_mg_per_L", 0), Line("worst tank, lowest", "oxygen_tanks_lowest_mg_per_L", 1), Line("plant loop, mean", "oxygen_plant_loop_mg_per_L", 2)],
                [new FigureBand(_bands.OxygenLow, double.PositiveInfinity, $"fit for fish: above {_bands.OxygenLow:0} mg/L")], FromZero: false)]);
    }

    private Figure Temperature()
    {
        ReadingRange outside = _summary.Water.TemperatureC["outside"];
        double house = _summary.Water.TemperatureC["houseAir"].Lowest!.Value;
        ReadingRange water = _summary.Water.TemperatureC["fishWaterWithFish"].Lowest is null
            ? _summary.Water.TemperatureC["fishWater"] : _summary.Water.TemperatureC["fishWaterWithFish"];
        return Make("temperature", $"Fish water holds {water.Lowest!.Value:0.0} to {water.Highest!.Value:0.0} °C"
            + (_summary.Fish.FirstDeliveryDay is null ? string.Empty : " with fish")
            + $" and the house {house:0.0} °C or more, while it falls to {outside.Lowest!.Value:0} °C outside on day {outside.Lowest.Day:0}",
            $"Temperature, °C: water, daily mean; house and outside air, lowest of the day. {Period}",
            $" Outside it is warmest on day {outside.Highest!.Day:0} at {outside.Highest.Value:0} °C.",
            [new FigurePanel("temperature, °C",
                [
                    Line("fish water", "fish_water_C", 0), Line("plant water", "plant_water_C", 1),
                    Line("house air, lowest", "house_air_lowest_C", 2), Line("outside, lowest", "outside_air_lowest_C", 3),
                ],
                [new FigureBand(_bands.FishWaterLow, _bands.FishWaterHigh, $"fish grow as planned: {_bands.FishWaterLow:0} to {_bands.FishWaterHigh:0} °C")], FromZero: false)]);
    }

    private Figure Acidity()
    {
        ReadingRange fish = _summary.Water.LoopPH["fishLoop"];
        ReadingRange plant = _summary.Water.LoopPH["plantLoop"];
        string plants = plant.Lowest is null ? string.Empty : $", of the plant loop from {plant.Lowest.Value:0.0} to {plant.Highest!.Value:0.0}";
        return Make("ph", $"pH of the fish loop runs from {fish.Lowest!.Value:0.0} to {fish.Highest!.Value:0.0}{plants}",
            $"Above: pH, daily mean (the title speaks of hours; the plant loop is read in its sump). Below: alkalinity, mg/L as CaCO3, daily mean. {Period}",
            $" The lowest hour of the fish loop falls on day {fish.Lowest.Day:0}"
                + (plant.Lowest is null ? "." : $", that of the plant loop on day {plant.Lowest.Day:0}."),
            [
                new FigurePanel("pH", [Line("fish loop", "pH_fish_loop", 0), Line("plant loop", "pH_plant_loop", 1)],
                    [new FigureBand(_bands.FishPHLow, _bands.PlantPHHigh, $"fit for filter and plants: {_bands.FishPHLow:0.0} to {_bands.PlantPHHigh:0.0}")], FromZero: false),
                new FigurePanel("alkalinity, mg/L as CaCO3",
                    [Line("fish loop", "alkalinity_fish_loop_mgCaCO3_per_L", 0), Line("plant loop", "alkalinity_plant_loop_mgCaCO3_per_L", 1)], []),
            ]);
    }

    private Figure Make(string name, string title, string subtitle, string more, IReadOnlyList<FigurePanel> panels) =>
        new(name, title, subtitle, $"{title}.{more}", _summary.Start, _record.DayCount - 1, panels, _keyDates);

    private FigureLine Line(string label, string column, int style) => new(label, _days, _record.Days(column), style);

    private void Mark(double? day, string label)
    {
        if (day is { } known)
        {
            _keyDates.Add(new FigureEvent(known, $"{label}, day {known:0}"));
        }
    }

    // A point a week, at its middle; a broken last week is left out, it would look like a fall.
    private (double[] Days, double[] Kilograms, double[] Grams) Weekly(string crop)
    {
        const int Week = 7;
        double[] saleable = _record.Days($"saleable_{crop}_kg");
        bool headed = _summary.Crops[crop].Fruit is null;
        double[] heads = headed ? _record.Days($"heads_{crop}") : new double[saleable.Length];
        double[] weights = headed ? _record.Days($"head_weight_{crop}_g") : new double[saleable.Length];
        int weeks = saleable.Length / Week;
        var days = new double[weeks];
        var kilograms = new double[weeks];
        var grams = new double[weeks];
        for (int w = 0; w < weeks; w++)
        {
            days[w] = (w * Week) + (Week / 2.0);
            double number = 0;
            double weight = 0;
            for (int d = w * Week; d < (w + 1) * Week; d++)
            {
                kilograms[w] += saleable[d];
                number += heads[d];
                weight += heads[d] > 0 ? heads[d] * weights[d] : 0;
            }

            grams[w] = number > 0 ? weight / number : double.NaN;
        }

        return (days, kilograms, grams);
    }
}
