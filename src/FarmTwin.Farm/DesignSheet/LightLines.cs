using System.Globalization;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Light against what leafy and fruiting crops need, in the darkest month in which they stand.</summary>
internal static class LightLines
{
    private const string Group = "Light";

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        var light = new DesignLight(design);
        string[] lanes = [.. design.Farm.Lanes.Values.Select(l => l.Basin)];
        if (lanes.Length > 0)
        {
            double lamps = lanes.Average(light.LampMoles);
            yield return Line(design, light, "leaf", "lanes", [.. light.Months], lamps);
        }

        foreach (IGrouping<int, Seasons.Planting> crop in design.Parts.Plantings.GroupBy(p => p.Crop))
        {
            int[] months = [.. light.Months.Where(m => light.Days[m].Any(d => crop.Any(p => d >= p.Plan.SetOutDay && d < (p.Plan.ClearDay ?? design.Farm.LengthDays))))];
            if (months.Length > 0)
            {
                double lamps = crop.SelectMany(p => p.Beds).Distinct().Average(b => light.LampMoles(design.Parts.Beds[b].Basin));
                yield return Line(design, light, "fruit", design.Parts.CropNames[crop.Key], months, lamps);
            }
        }
    }

    private static SheetLine Line(DesignCase design, DesignLight light, string kind, string name, int[] months, double lamps)
    {
        double low = design.Bands.Get(kind + "LightLow", "mol/m2/d");
        double target = design.Bands.Get(kind + "LightTarget", "mol/m2/d");
        int darkest = months.MinBy(light.SunMoles);
        double moles = light.SunMoles(darkest) + lamps;
        string short_ = string.Join(", ", months.Where(m => light.SunMoles(m) + lamps < low).Select(Name));
        return new SheetLine
        {
            Group = Group,
            Key = $"light.{name}",
            Name = $"light in {Name(darkest)}, {name}",
            Value = moles,
            Unit = "mol/m2/d",
            Low = low,
            High = target,
            Source = design.Bands.SourceOf(kind + "LightTarget"),
            Verdict = moles < low ? Verdict.Watch : Verdict.Fine,
            Advice = $"Sun {light.SunMoles(darkest):0.0}, lamps {lamps:0.0}; lightest {Name(months.MaxBy(light.SunMoles))} with {months.Max(light.SunMoles) + lamps:0.0}."
                + (short_.Length > 0 ? $" Below {low:0} in {short_}: plan fewer and smaller heads then, or more lamps." : string.Empty),
        };
    }

    private static string Name(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month + 1);
}
