using FarmTwin.Farm;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Compare;

/// <summary>The daily sheet: every line that a person fills in or would notice, with how finely it is read.</summary>
public static class DailySheet
{
    private const int DaysOfWeek = 7;

    // Below these a comparison by share says nothing.
    private const double LeastFishKilograms = 0.5;
    private const double LeastHeads = 10;

    /// <summary>The lines of a farm, in the order of the sheet.</summary>
    /// <param name="parts">The farm.</param>
    /// <param name="library">The library, for the bands and for what is noticed.</param>
    public static IReadOnlyList<DailySheetLine> Of(FarmParts parts, FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(parts);
        DailySheetParameters noticed = DailySheetParameters.From(library);
        SummaryBands bands = SummaryBands.From(library);
        var lines = new List<DailySheetLine>();
        Water(lines, noticed, bands);
        Fish(lines, noticed);
        Plants(lines, parts, noticed);
        Seen(lines, parts, noticed);
        return lines;
    }

    private static void Water(List<DailySheetLine> lines, DailySheetParameters noticed, SummaryBands bands)
    {
        int confirm = noticed.ConfirmDays;
        double kelvin = noticed["temperatureNoticed", "K"];
        double ph = noticed["phNoticed"];
        lines.Add(Meter("fish_water", "thermometer", "fish water", "°C", "0.0", 0.5, kelvin, s => WithFish(s, "fish_water_C"), confirm) with { Low = bands.FishWaterLow, High = bands.FishWaterHigh });
        lines.Add(Meter("plant_water", "thermometer", "plant water", "°C", "0.0", 0.5, kelvin, s => s.Days("plant_water_C"), confirm) with { Low = bands.PlantWaterLow, High = bands.PlantWaterHigh });
        lines.Add(Meter("pH_fish", "test kit", "pH of the fish loop", string.Empty, "0.0", 0.2, ph, s => s.Days("pH_fish_loop"), confirm) with { Low = bands.FishPHLow, High = bands.FishPHHigh });
        lines.Add(Meter("pH_plant", "test kit", "pH of the plant loop", string.Empty, "0.0", 0.2, ph, s => s.Days("pH_plant_loop"), confirm) with { Low = bands.PlantPHLow, High = bands.PlantPHHigh });
        lines.Add(Meter("oxygen", "oxygen meter", "lowest oxygen of the tanks", "mg/L", "0.0", 0.1, noticed["oxygenNoticed", "mg/L"], s => WithFish(s, "oxygen_tanks_lowest_mg_per_L"), 1) with { Low = bands.OxygenLow });
        lines.Add(Card("tan", "ammonia", "mg N/L", noticed["tanCard", "mg N/L"], s => s.Days("tan_tanks_highest_mgN_per_L"), confirm) with { High = bands.TanHigh });
        lines.Add(Card("nitrite", "nitrite", "mg N/L", noticed["nitriteCard", "mg N/L"], s => s.Days("nitrite_fish_loop_mgN_per_L"), confirm) with { High = bands.NitriteHigh });
        lines.Add(Card("nitrate_fish", "nitrate of the fish loop", "mg N/L", noticed["nitrateCard", "mg N/L"], s => s.Days("nitrate_fish_loop_mgN_per_L"), confirm));
        lines.Add(Card("nitrate_plant", "nitrate of the plant loop", "mg N/L", noticed["nitrateCard", "mg N/L"], s => s.Days("nitrate_plant_loop_mgN_per_L"), confirm) with { Low = bands.NitrateLow });
        lines.Add(Card("iron", "iron of the plant loop", "mg/L", noticed["ironCard", "mg/L"], s => s.Days("iron_plant_loop_mg_per_L"), confirm) with { Low = bands.Iron.Low ?? double.NegativeInfinity });
        double alkalinity = noticed["alkalinityNoticed", "mg/L"];
        lines.Add(Meter("alkalinity", "test kit", "alkalinity of the fish loop", "mg/L as CaCO3", "0", 10, alkalinity, s => s.Days("alkalinity_fish_loop_mgCaCO3_per_L"), confirm) with { Low = alkalinity });
        lines.Add(Meter("conductivity", "pen meter", "conductivity of the plant loop", "µS/cm", "0", 10, noticed["conductivityNoticed", "uS/cm"], s => s.Days("conductivity_plant_loop_uS_per_cm"), confirm));
        lines.Add(Meter("cloudiness", "eye", "solids that cloud the fish's water", "mg/L", "0", 1, noticed["turbidityNoticed", "mg/L"], s => s.Days("solids_fish_loop_mg_per_L"), confirm));
        lines.Add(Share("top_up", "water meter", "topped up in a week", "L", "0", noticed["topUpNoticed"], DaysOfWeek * noticed["topUpLeast", "L"], s => Week(s.Days("source_water_L")), confirm));
    }

    private static void Fish(List<DailySheetLine> lines, DailySheetParameters noticed)
    {
        double dead = noticed["deadNoticed"];
        lines.Add(Share("feed", "feeding", "feed taken, for the weight of the fish", "% a day", "0.0", noticed["feedNoticed"], noticed["feedNoticed"], Rate, noticed.ConfirmDays));
        lines.Add(new DailySheetLine("dead_fish", "fish round", "dead fish", string.Empty, "0", s => s.Days("fish_died"), Math.Round, (a, b) => Math.Abs(Math.Round(a) - Math.Round(b)) >= dead) { High = dead });
    }

    private static void Plants(List<DailySheetLine> lines, FarmParts parts, DailySheetParameters noticed)
    {
        double leaves = noticed["leavesNoticed"];
        double heads = noticed["headsNoticed"];
        foreach (string crop in parts.CropNames)
        {
            foreach (int element in Stress.Nutritive.ToArray())
            {
                lines.Add(new DailySheetLine($"leaves_{crop}_{Element.Names[element]}", "plant round", $"{crop}: {DeficiencySymptoms.Of(element)} ({Element.Names[element]})", "of growth lost", "0%",
                    s => s.Days($"deficiency_{crop}_{Element.Names[element]}_share"), v => v, (a, b) => Math.Abs(a - b) >= leaves)
                { High = leaves, Confirm = noticed.ConfirmDays });
            }

            lines.Add(Share($"head_weight_{crop}", "packing table", $"weight of a {crop} head as last cut", "g", "0", heads, LeastHeads, s => s.Days($"head_weight_{crop}_g"), noticed.ConfirmDays));
            lines.Add(new DailySheetLine($"grade_{crop}", "packing table", $"{crop} heads of a week that are not first grade", "of those cut", "0%", s => NotFirst(s, crop), v => v, (a, b) => Math.Abs(a - b) >= heads)
            { High = heads, Confirm = noticed.ConfirmDays });
            lines.Add(Share($"heads_{crop}", "packing table", $"{crop} heads cut in a week", string.Empty, "0", heads, LeastHeads, s => Week(s.Days($"heads_{crop}")), DaysOfWeek));
        }
    }

    private static void Seen(List<DailySheetLine> lines, FarmParts parts, DailySheetParameters noticed)
    {
        double flow = noticed["flowNoticed"];
        foreach (string filter in parts.FilterNames)
        {
            lines.Add(Meter($"flow_{filter}", "tank inlets", $"flow through {filter}", "of the clean flow", "0%", 0.05, flow, s => s.Days($"flow_{filter}_share"), noticed.ConfirmDays));
        }

        lines.Add(Meter("house_air", "minimum thermometer", "lowest air of the house", "°C", "0", 1, noticed["airNoticed", "K"], s => s.Days("house_air_lowest_C"), noticed.ConfirmDays));
        foreach ((string key, string what, string title) in new[]
        {
            ("withheld", "feed withheld", "tanks from which feed was withheld"), ("deaths_to_act_on", "deaths to act on", "tanks with more dead than is let pass"),
            ("bed_dry", "bed dry", "beds run dry"), ("bed_drowned", "bed drowned", "beds with water at the stems"), ("waits", "boards wait", "boards that wait for weight"),
            ("no_seedlings", "no seedlings", "boards without seedlings"), ("decant_refused", "decant refused", "decants that may not be let out"), ("wash_put_off", "wash put off", "washes put off"),
            ("frost", "frost", "lots hit by frost"), ("chill", "chill", "lots hit by cold"), ("poor_germination", "poor germination", "sowings that came up badly"),
            ("fuel_out", "fuel runs out", "fuel tanks run empty"), ("found", "fault found", "things found broken"), ("mains", "mended", "repairs, and returns of the mains"),
        })
        {
            lines.Add(Count(key, "round", title, s => s.Events(what)));
        }

        if (parts.Alarms.Points.Length > 0)
        {
            lines.Add(Count("alarms", "alarm box", "alarms", s => s.Alarms()));
        }
    }

    private static DailySheetLine Meter(string key, string sheet, string title, string unit, string format, double step, double noticed, Func<SheetSource, double[]> read, int confirm) =>
        new(key, sheet, title, unit, format, read, v => Math.Round(v / step) * step, (a, b) => Math.Abs(a - b) >= noticed) { Confirm = confirm };

    // A colour between two of the card is taken for the nearer one; two readings differ where they are a whole colour apart.
    private static DailySheetLine Card(string key, string title, string unit, double lowest, Func<SheetSource, double[]> read, int confirm) =>
        new(key, "test kit", title, unit, "0.##", read, v => Colour(v, lowest), (a, b) => Colour(a, lowest) != Colour(b, lowest) && Math.Abs(a - b) >= Math.Max(lowest, Colour(Math.Max(a, b), lowest) / 2)) { Confirm = confirm };

    private static DailySheetLine Share(string key, string sheet, string title, string unit, string format, double share, double least, Func<SheetSource, double[]> read, int confirm) =>
        new(key, sheet, title, unit, format, read, v => v, (a, b) => Math.Abs(a - b) >= least && Math.Abs(a - b) >= share * Math.Max(a, b)) { Confirm = confirm };

    private static DailySheetLine Count(string key, string sheet, string title, Func<SheetSource, double[]> read) =>
        new(key, sheet, title, string.Empty, "0", read, v => v, (a, b) => (a > 0) != (b > 0)) { High = 0 };

    /// <summary>The nearest colour of a card whose colours double.</summary>
    /// <param name="value">What is in the water.</param>
    /// <param name="lowest">The lowest colour above none.</param>
    internal static double Colour(double value, double lowest)
    {
        if (!(value >= lowest / 2))
        {
            return 0;
        }

        double colour = lowest;
        while (value > 1.5 * colour)
        {
            colour *= 2;
        }

        return colour;
    }

    private static double[] WithFish(SheetSource source, string column)
    {
        double[] fish = source.Days("fish_biomass_kg");
        return [.. source.Days(column).Select((v, d) => fish[d] > 0 ? v : double.NaN)];
    }

    private static double[] Rate(SheetSource source)
    {
        double[] fish = source.Days("fish_biomass_kg");
        return [.. source.Days("feed_kg").Select((f, d) => d > 0 && fish[d - 1] > LeastFishKilograms && fish[d] > LeastFishKilograms ? 100 * f / fish[d - 1] : double.NaN)];
    }

    private static double[] NotFirst(SheetSource source, string crop)
    {
        double[] cut = Week(source.Days($"heads_{crop}"));
        double[] second = Week(source.Days($"second_grade_{crop}"));
        double[] lost = Week(source.Days($"unsaleable_{crop}"));
        return [.. cut.Select((c, d) => c >= LeastHeads ? (second[d] + lost[d]) / c : double.NaN)];
    }

    private static double[] Week(double[] days)
    {
        var sums = new double[days.Length];
        for (int d = 0; d < days.Length; d++)
        {
            sums[d] = d + 1 < DaysOfWeek ? double.NaN : days.AsSpan(d + 1 - DaysOfWeek, DaysOfWeek).ToArray().Sum();
        }

        return sums;
    }
}
