using FarmTwin.Reports.Screen;
using FarmTwin.Studies.Compare;

namespace FarmTwin.Reports.Compare;

/// <summary>A comparison on the screen.</summary>
public static class ComparisonPage
{
    private const int MostPartings = 8;
    private const int Indent = 2;

    /// <summary>The lines of the page, none longer than <see cref="ScreenPage.Width"/>.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="folder">Where the files went.</param>
    public static IReadOnlyList<string> Of(SideBySide comparison, string folder)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var lines = new List<string>();
        WrappedText.Add(lines, $"Reference: {comparison.Reference.Title} ({comparison.Reference.Name})", 0, Indent);
        WrappedText.Add(lines, FormattableString.Invariant($"{comparison.Days} days from {comparison.Start:d MMM yyyy}, seed {comparison.Seed}: the same weather for all"), 0, Indent);
        WrappedText.Add(lines, Capital(ComparisonWords.Outcome(comparison, comparison.Reference)), 0, Indent);
        foreach (ComparedPair pair in comparison.Others)
        {
            lines.Add(new string('-', ScreenPage.Width));
            Pair(lines, comparison, pair);
        }

        lines.Add(new string('-', ScreenPage.Width));
        lines.Add($"Files     {folder}");
        return lines;
    }

    private static void Pair(List<string> lines, SideBySide comparison, ComparedPair pair)
    {
        WrappedText.Add(lines, $"{pair.Farm.Title} ({pair.Farm.Name})", 0, Indent);
        WrappedText.Add(lines, Capital(ComparisonWords.Outcome(comparison, pair.Farm)), 0, Indent);
        lines.Add(string.Empty);
        if (pair.Partings.Count > 0)
        {
            lines.Add("Where a person sees them part");
            foreach (LineParting parting in pair.Partings.Take(MostPartings))
            {
                WrappedText.Add(lines, $"day {parting.Day,3}  {parting.Words}{(parting.IsWarning ? " (a reading to worry about)" : string.Empty)}", Indent, Indent + 9);
            }

            if (pair.Partings.Count > MostPartings)
            {
                WrappedText.Add(lines, $"and {pair.Partings.Count - MostPartings} more lines, the last on day {pair.Partings[^1].Day}: compare.csv", Indent);
            }

            lines.Add(string.Empty);
        }

        WrappedText.Add(lines, $"First sign to act on: {ComparisonWords.Sign(comparison, pair)}", 0, Indent);
        WrappedText.Add(lines, pair.ActingReason, 0, Indent);
        foreach (WayOfActing way in pair.Ways)
        {
            lines.Add(string.Empty);
            WrappedText.Add(lines, Capital(way.InWords), 0, Indent);
            foreach (Act act in way.Acts)
            {
                WrappedText.Add(lines, $"{act.When,-22} saves {ComparisonWords.Saved(comparison, act)}", Indent, Indent + 29);
            }
        }
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
