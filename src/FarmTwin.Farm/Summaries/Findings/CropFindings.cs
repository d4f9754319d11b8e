using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>What the crops met, and what came of them.</summary>
internal static class CropFindings
{
    private const double OutsideWorthAWord = 0.1;
    private const double HighWorthAWord = 0.2;
    private const int RoundsWorthAWord = 8;

    public static void Add(FindingList list)
    {
        foreach ((string name, CropSummary crop) in list.Summary.Crops)
        {
            Crop(list, name, crop);
        }

        Light(list);
        Nitrate(list);
        Acidity(list);
    }

    /// <summary>The first harvests, which belong to the start of a farm.</summary>
    public static void AddFirst(FindingList list)
    {
        foreach ((string name, CropSummary crop) in list.Summary.Crops.Where(c => c.Value.HeadsHarvested > 0).OrderByDescending(c => c.Value.HarvestedKg).Take(1))
        {
            int empty = crop.WeeksSinceFirstHarvest - crop.WeeksWithHarvest;
            list.Add(57, $"The first {name} was cut on {list.Day(crop.FirstHarvestDay!.Value)}; {crop.SaleableHeads:0} saleable heads ({crop.HarvestedKg:0} kg, "
                + $"{crop.MeanHeadG:0} g a head)" + (empty > 0 ? $", but nothing in {empty} of the {crop.WeeksSinceFirstHarvest} weeks since." : ", some in every week since."));
        }
    }

    private static void Crop(FindingList list, string name, CropSummary crop)
    {
        if (crop.DaysBoardsWaited > 0)
        {
            (double from, double to, int rounds) = list.Span("boards wait", name);
            list.Add(rounds >= RoundsWorthAWord ? 56 : 36, $"{Capital(name)} boards waited {crop.DaysBoardsWaited:0} days (on {rounds} harvest days, {list.Day(from)} to {list.Day(to)}) "
                + $"for heads of {crop.CutFromG:0} g: the lane is pushed as fast as the light lets them grow; more light, or fewer boards of heavier heads.",
                rounds >= RoundsWorthAWord ? CropProposals.FewerBoards(list, name) : null);
        }

        if (crop.RoundsShortOfSeedlings > 0)
        {
            (double from, double to, int rounds) = list.Span("no seedlings", name);
            list.Add(60 + Math.Min(5, rounds / 10.0), $"{Capital(name)} places stood empty on {rounds} harvest days, {list.Day(from)} to {list.Day(to)}, because no seedling was "
                + "old enough: sow more, plan fewer boards a week, or give the lane to another crop.", CropProposals.MoreSeed(list, name));
        }

        if (crop.HeadsHarvested > 0 && crop.HeadsOutsideBand > OutsideWorthAWord * crop.HeadsHarvested)
        {
            bool heavy = crop.MeanHeadG > (crop.SaleableLowG + crop.SaleableHighG) / 2;
            list.Add(55, $"{crop.HeadsOutsideBand:0} of {crop.HeadsHarvested:0} {name} heads were outside {crop.SaleableLowG:0}-{crop.SaleableHighG:0} g: "
                + (heavy ? $"up to {crop.HeadG.Highest!.Value:0} g on {list.Day(crop.HeadG.Highest.Day)}; cut earlier or plant closer"
                    + (crop.HeaviestFirstG is { } most ? $" (up to {most:0} g they are counted as one first-grade head)." : ".")
                    : $"down to {crop.HeadG.Lowest!.Value:0} g on {list.Day(crop.HeadG.Lowest.Day)}; leave them longer."));
        }

        Cold(list, name, crop);
        GradeFindings.Add(list, name, crop);
    }

    private static void Cold(FindingList list, string name, CropSummary crop)
    {
        foreach (string what in new[] { "frost", "chill" })
        {
            (double first, double last, int days) = list.Span(what, name);
            if (days > 0)
            {
                double died = list.Season.Log.Events.Where(e => e.What == what && e.Where == name).Sum(e => e.Amount);
                string when = days > 1 ? $"between {list.Day(first)} and {list.Day(last)}" : $"on {list.Day(first)}";
                list.Add(89, $"{(what == "frost" ? "Frost" : "Cold above frost")} {when}: {died:0} {name} plants died; heat the house, and keep a heater that runs when the first one fails.");
            }
        }
    }

    private static void Light(FindingList list)
    {
        double[] sun = list.Record.Days("daylight_at_crop_mol_per_m2");
        double[] lamps = list.Record.Days("lamp_light_at_crop_mol_per_m2");
        const int Month = 30;
        if (sun.Length < Month)
        {
            return;
        }

        int darkest = 0;
        double least = double.PositiveInfinity;
        for (int day = 0; day + Month <= sun.Length; day++)
        {
            double sum = sun.AsSpan(day, Month).ToArray().Sum() + lamps.AsSpan(day, Month).ToArray().Sum();
            (darkest, least) = sum < least ? (day, sum) : (darkest, least);
        }

        double daily = least / Month;
        double share = lamps.AsSpan(darkest, Month).ToArray().Sum() / least;
        if (daily < list.Bands.LightLow)
        {
            list.Add(62, $"Light at the crop is weakest from {list.Day(darkest)} on: {daily:0.0} mol/m² a day over 30 days, below {list.Bands.LightLow:0}, "
                + (share > 0 ? $"of which lamps give {share:0%}: more lamps or fewer boards." : "and no lamps: plan fewer boards."));
        }
        else if (share > 0)
        {
            list.Add(42, $"Lamps give {share:0%} of the light in the darkest 30 days, from {list.Day(darkest)} on, {daily:0.0} mol/m² a day in all.");
        }
    }

    private static void Nitrate(FindingList list)
    {
        if (list.Summary.Water.CoupledDay is not { } coupled)
        {
            return;
        }

        double[] nitrate = list.Record.Days("nitrate_plant_loop_mgN_per_L");
        int low = 0;
        int lowest = (int)coupled;
        for (int day = (int)coupled; day < nitrate.Length; day++)
        {
            low += nitrate[day] < list.Bands.NitrateLow ? 1 : 0;
            lowest = nitrate[day] < nitrate[lowest] ? day : lowest;
        }

        if (low > 0)
        {
            list.Add(68, $"Nitrate of the plant loop was below {list.Bands.NitrateLow:0} mg N/L on {low} days since coupling, lowest on {list.Day(lowest)} "
                + $"at {nitrate[lowest]:0.0}: more fish to the plants, or bridging nutrients.");
        }
        else if (lowest < nitrate.Length)
        {
            list.Add(44, $"Since coupling the plant loop never fell below {nitrate[lowest]:0} mg N/L of nitrate ({list.Day(lowest)}); it ends at {nitrate[^1]:0}"
                + (nitrate[^1] > list.Bands.NitrateHigh ? ", more than leaves need: room for more plants." : "."));
        }
    }

    private static void Acidity(FindingList list)
    {
        BandHours hours = list.Summary.Water.HoursOutsideBand["pHPlantLoop"];
        ReadingRange range = list.Summary.Water.LoopPH["plantLoop"];
        if (hours.HoursBelow > 0)
        {
            list.Add(72, $"pH of the plant sump fell to {range.Lowest!.Value:0.0} on {list.Day(range.Lowest.Day)} and was below {list.Bands.PlantPHLow:0.0} for "
                + $"{hours.HoursBelow} hours: smaller doses of acid, given where water flows.");
        }

        if (hours.HoursAbove > HighWorthAWord * hours.HoursCounted)
        {
            list.Add(61, $"pH of the plant loop was above {list.Bands.PlantPHHigh:0.0} for {(double)hours.HoursAbove / hours.HoursCounted:0%} of the time, highest on "
                + $"{list.Day(range.Highest!.Day)} at {range.Highest.Value:0.0}: iron and phosphorus are harder to take up; acid, or less base, brings it down.");
        }
    }

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
