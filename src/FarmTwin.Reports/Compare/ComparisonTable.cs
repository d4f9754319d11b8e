using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Compare;

namespace FarmTwin.Reports.Compare;

/// <summary>The daily sheets of a comparison as comma-separated text: a row for every line that parts two farms and every day.</summary>
public static class ComparisonTable
{
    /// <summary>The table.</summary>
    public static string Of(SideBySide comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var text = new CsvText();
        foreach (string header in new[] { "farm", "line", "sheet", "what", "unit", "first_noticed_day", "day", "date", "reference", "other", "reference_read", "other_read", "noticed" })
        {
            text.Field(header);
        }

        text.EndLine();
        foreach (ComparedPair pair in comparison.Others)
        {
            foreach (LineParting parting in pair.Partings)
            {
                for (int d = 0; d < Math.Min(parting.ReferenceDays.Length, parting.OtherDays.Length); d++)
                {
                    double a = parting.ReferenceDays[d];
                    double b = parting.OtherDays[d];
                    bool both = double.IsFinite(a) && double.IsFinite(b);
                    text.Field(pair.Farm.Name).Field(parting.Line.Key).Field(parting.Line.Sheet).Field(parting.Line.Title).Field(parting.Line.Unit).Field(parting.Day)
                        .Field(d).Field(comparison.Start.AddDays(d).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)).Field(a).Field(b)
                        .Field(double.IsFinite(a) ? parting.Line.Shown(a) : a).Field(double.IsFinite(b) ? parting.Line.Shown(b) : b)
                        .Field(both && parting.Line.Differs(a, b) ? 1 : 0).EndLine();
                }
            }
        }

        return text.ToString();
    }
}
