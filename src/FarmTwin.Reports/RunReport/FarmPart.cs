using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;

namespace FarmTwin.Reports.RunReport;

/// <summary>Crops, fish, energy, work, money, alarms.</summary>
internal static class FarmPart
{
    public static void AddCropsAndFish(HtmlSection section, SeasonSummary summary)
    {
        var crops = new HtmlTable("Crops", HtmlColumn.Words("crop"), HtmlColumn.Number("first grade", "heads"), HtmlColumn.Number("fit for sale", "kg"), HtmlColumn.Number("mean head", "g"),
            HtmlColumn.Number("second grade", "heads"), HtmlColumn.Number("to compost", "heads"), HtmlColumn.Number("weeks with harvest"));
        foreach ((string name, CropSummary crop) in summary.Crops.Where(c => c.Value.HarvestedKg > 0 || c.Value.HeadsHarvested > 0 || c.Value.CellsSown > 0))
        {
            bool heads = crop.Fruit is null;
            crops.Row(Say.Capital(name), heads ? Say.Count(crop.SaleableHeads) : "–", Say.Number(crop.HarvestedKg), heads ? Say.Number(crop.MeanHeadG) : "–",
                heads ? Say.Count(crop.SecondGradeHeads) : "–", heads ? Say.Count(crop.UnsaleableHeads) : "–", Say.Count(crop.WeeksWithHarvest));
        }

        section.Table(crops);
        var trays = new HtmlTable("Microgreens", HtmlColumn.Words("kind"), HtmlColumn.Number("trays cut"), HtmlColumn.Number("harvest", "kg"), HtmlColumn.Number("a tray", "g"));
        foreach ((string name, MicrogreenSummary kind) in summary.Nursery.Microgreens)
        {
            trays.Row(Say.Capital(name), Say.Count(kind.TraysCut), Say.Number(kind.HarvestedKg), Say.Number(kind.MeanTrayG));
        }

        section.Table(trays);
        FishSummary fish = summary.Fish;
        if (fish.Delivered > 0)
        {
            section.Section("Fish").Definitions(
            [
                ("Delivered, sold, died", $"{Say.Count(fish.Delivered)}, {Say.Count(fish.Sold)}, {Say.Count(fish.Died)} fish"),
                ("Feed given", $"{Say.Number(fish.FeedKg)} kg; {Say.Number(fish.FeedWithheldKg)} kg withheld because of the water"),
                ("Gained", $"{Say.Number(fish.GainedKg)} kg; feed conversion {fish.Fcr:0.00}"),
                ("Sold", fish.MeanWeightSoldG is { } grams ? $"{Say.Number(fish.HarvestedKg)} kg, {grams:0} g each" : "none yet"),
                ("Standing at the end", $"{Say.Number(fish.StandingKg)} kg; densest tank {Say.Number(fish.PeakDensityKgPerM3?.Value)} kg/m3"),
            ]);
        }
    }

    public static void AddMeans(HtmlSection section, SeasonSummary summary)
    {
        EnergySummary energy = summary.Energy;
        var uses = new HtmlTable("Electricity by use", HtmlColumn.Words("use"), HtmlColumn.Number("electricity", "kWh"));
        foreach ((string use, double kWh) in energy.KWhByUse.Where(u => u.Value > 0).OrderByDescending(u => u.Value))
        {
            uses.Row(Say.Capital(use), Say.Number(kWh));
        }

        uses.Total("All", Say.Number(energy.KWh));
        var heaters = new HtmlTable("Heat", HtmlColumn.Words("heater"), HtmlColumn.Words("fuel"), HtmlColumn.Number("bought"), HtmlColumn.Words("unit"), HtmlColumn.Number("heat given", "kWh"));
        foreach ((string name, HeaterSummary heater) in energy.Heaters)
        {
            heaters.Row(Say.Capital(name), heater.FuelName, Say.Number(heater.Amount), heater.Unit, Say.Number(heater.HeatKWh));
        }

        section.Section("Energy").Table(uses).Table(heaters)
            .Paragraph($"The same heat would take {Say.Number(energy.SameHeatByResistanceKWh)} kWh by resistance heaters or {Say.Number(energy.SameHeatByHeatPumpKWh)} kWh by a heat pump.");
        LabourSummary labour = summary.Labour;
        var work = new HtmlTable("Hours of work", HtmlColumn.Words("for"), HtmlColumn.Number("all", "h"), HtmlColumn.Number("share", "%"));
        foreach ((string area, double hours) in labour.HoursByArea.Where(a => a.Value > 0).OrderByDescending(a => a.Value))
        {
            work.Row(Say.Capital(area), Say.Number(hours), $"{100 * hours / labour.Hours:0}");
        }

        string there = labour.HoursThereAWeek is { } limit ? $" {Say.Number(limit)} h a week are there; {labour.WeeksShort.Count} weeks need more." : string.Empty;
        section.Section("Work").Paragraph($"An ordinary week takes {Say.Number(labour.OrdinaryWeekHours)} h, the busiest {Say.Number(labour.BusiestWeekHours)} h.{there}").Table(work);
        if (summary.Money is not { } money)
        {
            return;
        }

        var products = new HtmlTable($"What a unit costs and brings, {money.Currency}", HtmlColumn.Words("product"), HtmlColumn.Words("unit"), HtmlColumn.Number("income"), HtmlColumn.Number("brought a unit"),
            HtmlColumn.Number("cost a unit"), HtmlColumn.Number("spent only for it"));
        foreach ((string name, UnitCost product) in money.Products)
        {
            string unit = product.Unit == "kg" ? "kg" : product.Unit.TrimEnd('s');
            products.Row(Say.Capital(name), unit, Say.Number(money.IncomeByProduct.GetValueOrDefault(name)), Cents(product.BroughtPerUnit), Cents(product.CostPerUnit), Cents(product.DirectCostPerUnit));
        }

        section.Section("Money").Definitions(
        [
            ("Income", $"{Say.Number(money.Income)} {money.Currency}"), ("Running costs", $"{Say.Number(money.Costs)} {money.Currency}"), ("Margin", $"{Say.Number(money.Margin)} {money.Currency}"),
            ("After wear", $"{Say.Number(money.MarginAfterWear)} {money.Currency}"), ("Lowest cash", $"{Say.Number(money.LowestCash)} {money.Currency} on day {money.LowestCashDay:0}"),
            ("An hour of work earns", $"{Cents(money.EarnedPerHour)} {money.Currency}"),
        ]).Table(products);
    }

    public static void AddAlarms(HtmlSection section, SeasonSummary summary)
    {
        var faults = new HtmlTable("What broke", HtmlColumn.Words("fault"), HtmlColumn.Words("where"), HtmlColumn.Number("day"), HtmlColumn.Number("found after", "h"), HtmlColumn.Words("found by"),
            HtmlColumn.Number("mended after", "h"), HtmlColumn.Number("fish lost"));
        foreach ((string name, FaultSummary fault) in summary.Faults)
        {
            faults.Row(Say.Capital(name), fault.Where.Length > 0 ? fault.Where : "–", $"{fault.Day:0}", Say.Number(fault.MinutesToFound / 60), fault.FoundBy.Length > 0 ? fault.FoundBy : "–",
                Say.Number(fault.MinutesToMended / 60), Say.Count(fault.FishLost));
        }

        section.Table(faults);
        if (summary.Alarms is not { } alarms)
        {
            return;
        }

        var table = new HtmlTable("Alarms", HtmlColumn.Words("priority"), HtmlColumn.Number("raised"), HtmlColumn.Number("false"), HtmlColumn.Number("unanswered"), HtmlColumn.Number("usual answer", "min"),
            HtmlColumn.Number("slowest answer", "min"));
        foreach ((string name, AlarmPriorityFigures figures) in alarms.ByPriority)
        {
            table.Row(Say.Capital(name), $"{figures.Raised}", $"{figures.False}", $"{figures.Unanswered}", Say.Number(figures.MedianMinutesToAnswer), Say.Number(figures.LongestMinutesToAnswer));
        }

        section.Table(table);
    }

    private static string Cents(double? value) => value is { } amount && double.IsFinite(amount) ? $"{amount:#,0.00}".Replace("-", "−", StringComparison.Ordinal) : "–";
}
