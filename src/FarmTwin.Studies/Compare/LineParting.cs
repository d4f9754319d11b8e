namespace FarmTwin.Studies.Compare;

/// <summary>A line of the daily sheet on which two farms part.</summary>
/// <param name="Line">The line.</param>
/// <param name="Day">The first day on which a person would notice, from day 0.</param>
/// <param name="Reference">The reference's reading of that day.</param>
/// <param name="Other">The other's.</param>
/// <param name="IsWarning">Whether the other's reading is one to worry about and the reference's is not.</param>
/// <param name="ReferenceDays">The reference's values by day.</param>
/// <param name="OtherDays">The other's.</param>
public sealed record LineParting(
    DailySheetLine Line, int Day, double Reference, double Other, bool IsWarning, double[] ReferenceDays, double[] OtherDays)
{
    /// <summary>The sign in words: where it stands and what both read.</summary>
    public string Words => $"{Line.Sheet}, {Line.Title}: {Line.Words(Other)}, where the other farm has {Line.Words(Reference)}";

    /// <summary>The first day on which a line parts two farms, as a person would notice; null where it never does.</summary>
    /// <param name="line">The line.</param>
    /// <param name="reference">The reference.</param>
    /// <param name="other">The other.</param>
    /// <param name="warning">Whether only readings count that worry on the other farm and not on the reference.</param>
    public static LineParting? Find(DailySheetLine line, SheetSource reference, SheetSource other, bool warning)
    {
        ArgumentNullException.ThrowIfNull(line);
        double[] a = line.Read(reference);
        double[] b = line.Read(other);
        int days = Math.Min(a.Length, b.Length);
        int run = 0;
        for (int d = 0; d < days; d++)
        {
            bool worries = double.IsFinite(b[d]) && line.Worries(b[d]) && !(double.IsFinite(a[d]) && line.Worries(a[d]));
            bool differs = double.IsFinite(a[d]) && double.IsFinite(b[d]) && line.Differs(a[d], b[d]) && (!warning || worries);
            run = differs ? run + 1 : 0;
            if (run == line.Confirm || (run > 0 && d == days - 1))
            {
                int first = d + 1 - run;
                return new LineParting(line, first, a[first], b[first], line.Worries(b[first]) && !line.Worries(a[first]), a, b);
            }
        }

        return null;
    }
}
