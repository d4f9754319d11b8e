using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Nursery, trough and lanes against the plan by Little's law, at their fullest over the changes of the plan.</summary>
internal static class CropLines
{
    private const string Group = "Places for plants";

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        double[] days = [.. Enumerable.Range(0, (int)(design.Farm.LengthDays / UnitConstants.DaysPerWeek)).Select(w => w * UnitConstants.DaysPerWeek)];
        if (design.Farm.Nursery is { } nursery && days.Length > 0)
        {
            yield return Nursery(design, nursery, days, TierUse.Seedlings, "seedlings", d => SeedlingTrays(design, nursery, d));
            if (design.Parts.MicrogreenPlans.Length > 0)
            {
                yield return Nursery(design, nursery, days, TierUse.Microgreens, "microgreens", d => MicrogreenTrays(design, d));
            }
        }

        for (int c = 0; c < design.Parts.CropPlans.Length && days.Length > 0; c++)
        {
            CropSchedule schedule = design.Parts.Schedules[c];
            if (design.Parts.Crops[c].Fruit is not null || !schedule.EverSows)
            {
                continue;
            }

            CropPlanDescription plan = design.Parts.CropPlans[c];
            double[] later = [.. days.Where(d => d >= plan.FirstSowingDay + plan.NurseryDays + plan.TroughDays)];
            if (later.Length == 0)
            {
                continue;
            }

            double trough = later.MaxBy(d => schedule.UseAt(d).TroughShare);
            yield return Places(design, "trough", $"trough, {schedule.Name}", schedule.UseAt(trough).TroughShare, trough,
                $"{schedule.UseAt(trough).TroughPlants:0} plants on {schedule.UseAt(trough).TroughPlaces:0} places",
                "fewer cells a sowing, a shorter stay, or more of the trough for it.");

            // While another crop has its lanes, the boards of the plan only clear what still stands.
            double[] grown = [.. later.Where(d => schedule.UseAt(d).LaneHoles > 0)];
            if (grown.Length > 0)
            {
                double lane = grown.MaxBy(d => schedule.UseAt(d).LaneShare);
                yield return Places(design, "lanes", $"lanes, {schedule.Name}", schedule.UseAt(lane).LaneShare, lane,
                    $"{schedule.UseAt(lane).LanePlants:0} plants at the least lane time in {schedule.UseAt(lane).LaneHoles:0} holes; kept full, a plant stays {schedule.UseAt(lane).LaneDays:0} days",
                    "fewer boards a week, or another lane.");
            }
        }
    }

    private static SheetLine Nursery(
        DesignCase design, NurseryDescription nursery, double[] days, TierUse use, string name, Func<double, double> trays)
    {
        double fullest = days.MaxBy(d => Share(d));
        return Places(design, "nursery", $"nursery, {name}", Share(fullest), fullest, $"{trays(fullest):0.0} trays on {Room(fullest)} places", "fewer trays, a shorter stay, or another tier.");

        int Room(double day) => nursery.TraysPerTier * Enumerable.Range(0, design.Parts.Tiers.Count).Count(t => design.Parts.Tiers.UseOf(t, day) == use);

        double Share(double day) => trays(day) > 0 ? trays(day) / Room(day) : 0;
    }

    private static SheetLine Places(DesignCase design, string key, string name, double share, double day, string figures, string cure)
    {
        double full = design.Bands.Get("placesFull", "1");
        return new SheetLine
        {
            Group = Group,
            Key = $"places.{key}.{name[(name.IndexOf(',', StringComparison.Ordinal) + 2)..]}",
            Name = name,
            Value = share,
            High = full,
            Source = design.Bands.SourceOf("placesFull"),
            Verdict = Judge.Less(share, full, 1),
            Advice = $"{figures}, {design.DateOf(day):d MMM yyyy}." + (share > 1 ? $" Too many: {cure}" : string.Empty),
        };
    }

    private static double SeedlingTrays(DesignCase design, NurseryDescription nursery, double day)
    {
        FarmParts parts = design.Parts;
        double leafy = Enumerable.Range(0, parts.CropPlans.Length)
            .Where(c => parts.Crops[c].Fruit is null && day >= parts.CropPlans[c].FirstSowingDay)
            .Sum(c => parts.Schedules[c].UseAt(day).NurseryCells) / nursery.CellsPerTray;
        double fruiting = parts.Plantings.Where(p => day < p.Plan.SetOutDay && day >= p.Plan.SetOutDay - parts.CropPlans[p.Crop].NurseryDays).Sum(p =>
        {
            double places = p.Beds.Sum(b => parts.Beds[b].AreaSquareMetres * (parts.Beds[b].PlantsPerSquareMetre ?? parts.Crops[p.Crop].FinalPlantsPerSquareMetre));
            return places * (1 + p.Plan.SpareShare) / parts.Crops[p.Crop].NurseryPlantsPerSquareMetre / nursery.TraySquareMetres;
        });
        return leafy + fruiting;
    }

    private static double MicrogreenTrays(DesignCase design, double day)
    {
        double trays = 0;
        for (int m = 0; m < design.Parts.MicrogreenPlans.Length; m++)
        {
            MicrogreenPlanDescription plan = design.Parts.MicrogreenPlans[m];
            if (day >= plan.FirstSowingDay && day <= (plan.LastSowingDay ?? double.PositiveInfinity))
            {
                trays += Succession.Standing(
                    plan.TraysPerSowing * plan.SowWeekdays.Count,
                    (plan.BlackoutDays ?? design.Parts.Microgreens[m].BlackoutDays) + (plan.LitDays ?? design.Parts.Microgreens[m].LitDays));
            }
        }

        return trays;
    }
}
