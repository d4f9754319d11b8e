namespace FarmTwin.Farm.DesignSheet;

/// <summary>From a figure and its limits to a verdict. A figure that is not a number is never fine.</summary>
internal static class Judge
{
    /// <summary>The more the better: below the first limit to be changed, below the second to be watched.</summary>
    public static Verdict More(double value, double actBelow, double watchBelow) =>
        !(value >= actBelow) ? Verdict.Act : value < watchBelow ? Verdict.Watch : Verdict.Fine;

    /// <summary>The less the better: above the first limit to be watched, above the second to be changed.</summary>
    public static Verdict Less(double value, double watchAbove, double actAbove) =>
        !(value <= actAbove) ? Verdict.Act : value > watchAbove ? Verdict.Watch : Verdict.Fine;

    /// <summary>Between two ends, and to be watched outside.</summary>
    public static Verdict Within(double value, double low, double high) => value >= low && value <= high ? Verdict.Fine : Verdict.Watch;
}
