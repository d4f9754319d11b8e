namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>What the fruiting crops and their beds met.</summary>
internal static class FruitFindings
{
    private const double RotWorthAWord = 0.05;
    private const double OxygenWorthAWord = 3;
    private const double LostWorthAWord = 0.1;

    public static void Add(FindingList list)
    {
        foreach ((string name, CropSummary crop) in list.Summary.Crops)
        {
            if (crop.Fruit is { } fruit)
            {
                Crop(list, name, fruit);
            }
        }

        foreach (string bed in list.Season.Parts.BedNames)
        {
            Bed(list, bed);
        }
    }

    private static void Crop(FindingList list, string name, FruitSummary fruit)
    {
        if (fruit.SetOutDay is { } planted && fruit.FirstPickDay is { } first)
        {
            list.Add(50, $"{fruit.PlantsSetOut:0} {name} plants were set out from {list.Day(planted)} and first picked on {list.Day(first)}: {fruit.SaleableKgPerM2:0.0} kg "
                + $"of saleable fruit a square metre of bed, {fruit.SaleableKgPerWeek:0.0} kg a week while picking.");
        }
        else if (fruit.SetOutDay is { } set)
        {
            list.Add(61, $"{fruit.PlantsSetOut:0} {name} plants stand since {list.Day(set)} and bore no ripe fruit: they need more warmth or an earlier start.");
        }

        if (fruit.BlossomEndRotKg > RotWorthAWord * fruit.PickedKg)
        {
            list.Add(67, $"{fruit.BlossomEndRotKg:0.0} of {fruit.PickedKg:0.0} kg of {name} had blossom-end rot: calcium was short in the water or too little was "
                + "transpired to carry it up; dose calcium, and vent on damp days.");
        }

        if (fruit.OverripeKg > RotWorthAWord * fruit.PickedKg)
        {
            list.Add(64, $"{fruit.OverripeKg:0.0} of {fruit.PickedKg:0.0} kg of {name} hung too long before the next pick: pick on more days of the week.");
        }

        if (fruit.LostKg > LostWorthAWord * fruit.PickedKg && fruit.LostKg > 1)
        {
            list.Add(48, $"{fruit.LostKg:0.0} kg of unripe {name} went to compost: take the growing tips off some weeks before clearing, so that what hangs can ripen.");
        }

        if (fruit.LowestOxygenMgPerL is { } oxygen && oxygen.Value < OxygenWorthAWord)
        {
            list.Add(65, $"Oxygen of the water that leaves a bed of {name} fell to {oxygen.Value:0.0} mg/L on {list.Day(oxygen.Day)}: give the bed more flow, or air in the plant sump.");
        }
    }

    private static void Bed(FindingList list, string bed)
    {
        (double dryFrom, double dryTo, int dry) = list.Span("bed dry", bed);
        if (dry > 0)
        {
            list.Add(74, $"{bed} ran dry {dry} times between {list.Day(dryFrom)} and {list.Day(dryTo)}: plants wilted; find the blocked inlet or the open drain.");
        }

        (double wetFrom, double wetTo, int wet) = list.Span("bed drowned", bed);
        if (wet > 0)
        {
            list.Add(69, $"Water stood at the stems in {bed} from {list.Day(wetFrom)}" + (wet > 1 ? $" and again until {list.Day(wetTo)}" : string.Empty)
                + ": collar rot follows within days; lower the outlet to a few inches below the surface.");
        }
    }
}
