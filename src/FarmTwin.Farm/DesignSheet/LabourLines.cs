namespace FarmTwin.Farm.DesignSheet;

/// <summary>Hours of an ordinary and of the busiest week.</summary>
internal static class LabourLines
{
    private const string Group = "Labour";

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        IReadOnlyList<double> weeks = new LabourPlan(design).Hours;
        if (weeks.Count == 0)
        {
            yield break;
        }

        double[] settled = [.. weeks.Skip((int)(design.SettledFrom / UnitConstants.DaysPerWeek)).Order()];
        double ordinary = settled[settled.Length / 2];
        int busiest = Enumerable.Range(0, weeks.Count).MaxBy(w => weeks[w]);
        double? there = design.Farm.Labour is { HoursPerWeek.Count: > 0 } people ? people.HoursPerWeek.Values.Sum() : null;
        yield return Line(design, "ordinary", "hours of an ordinary week", ordinary, there, string.Empty);
        yield return Line(design, "busiest", "hours of the busiest week", weeks[busiest], there, $"Week {busiest + 1}, from {design.DateOf(busiest * UnitConstants.DaysPerWeek):d MMM yyyy}; alarms, faults and repairs come on top.");
    }

    private static SheetLine Line(DesignCase design, string key, string name, double hours, double? there, string advice)
    {
        bool ordinary = key == "ordinary";
        double? full = there * design.Bands.Get("labourFull", "1");
        Verdict verdict = there is not { } limit ? Verdict.NoVerdict : ordinary ? Judge.Less(hours, full!.Value, limit) : Judge.Less(hours, limit, double.PositiveInfinity);
        return new SheetLine
        {
            Group = Group,
            Key = $"labour.{key}",
            Name = name,
            Value = hours,
            Unit = "h",
            High = ordinary ? full : there,
            Source = "practice-labour",
            Verdict = verdict,
            Advice = string.Join(' ', new[]
            {
                advice,
                there is null ? "State the hours at hand under labour: then it is held against them."
                    : verdict == Verdict.Act ? "More than there are hands for in most weeks: a smaller plan, or another person."
                    : hours > there ? "Help is wanted then." : string.Empty,
            }.Where(s => s.Length > 0)),
        };
    }
}
