using FarmTwin.Reports.Screen;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>The faults of a farm on the screen, the worst first.</summary>
public static class FaultStudyPage
{
    private const int Indent = 4;

    /// <summary>The lines of the page, none longer than <see cref="ScreenPage.Width"/>.</summary>
    /// <param name="study">The study.</param>
    /// <param name="folder">Where the files went.</param>
    public static IReadOnlyList<string> Of(FaultStudyResult study, string folder)
    {
        ArgumentNullException.ThrowIfNull(study);
        var lines = new List<string>();
        WrappedText.Add(lines, study.Title, 0);
        WrappedText.Add(lines, FormattableString.Invariant(
            $"What breaks, each at its worst hour of {study.Days:0} days from {study.Start:d MMM yyyy}; seed {study.Seed}; the mains stay off for {study.OutageHours:0.#} h"), 0);
        WrappedText.Add(lines, People(study), 0);
        lines.Add(new string('-', ScreenPage.Width));
        int number = 1;
        foreach ((FaultRow row, FaultRow[] likewise) in Grouped([.. study.Rows.Where(r => r.Harm.IsHarm)]))
        {
            WrappedText.Add(lines, $"{number++,2}. {Named(row)}, {FaultWords.When(study, row)}, {row.Case.Hour.Why}", 0, Indent);
            WrappedText.Add(lines, FaultWords.Harm(row), Indent);
            WrappedText.Add(lines, FaultWords.Answer(study, row), Indent);
            if (row.Ran.Count > 0)
            {
                WrappedText.Add(lines, FaultWords.Ran(row), Indent);
            }

            WrappedText.Add(lines, FaultWords.Loss(study, row), Indent);
            foreach (string backup in FaultWords.Backups(row))
            {
                WrappedText.Add(lines, $"Saved by: {backup}".Replace("Saved by: No ", "No ", StringComparison.Ordinal), Indent);
            }

            if (likewise.Length > 0)
            {
                WrappedText.Add(lines, Likewise(likewise), Indent);
            }
        }

        if (number == 1)
        {
            WrappedText.Add(lines, "Nothing that was tried harms fish or plants before it is found and mended.", 0);
        }

        FaultRow[] costly = [.. study.Rows.Where(FaultWords.Costs)];
        if (costly.Length > 0)
        {
            lines.Add(string.Empty);
            lines.Add("Neither fish nor plants are harmed, but it costs:");
            foreach (FaultRow row in costly)
            {
                WrappedText.Add(lines, $"{Named(row)}. {FaultWords.Harm(row)} {FaultWords.Loss(study, row)}", 2, Indent);
            }
        }

        string[] harmless = Harmless(study);
        if (harmless.Length > 0)
        {
            lines.Add(string.Empty);
            WrappedText.Add(lines, $"Found and mended before it matters: {string.Join("; ", harmless)}.", 0, 2);
        }

        foreach (string left in study.NotTried)
        {
            WrappedText.Add(lines, $"Not tried: {left}", 0, Indent);
        }

        lines.Add($"Files     {folder}");
        return lines;
    }

    /// <summary>The faults that neither harm nor cost, each part once where a weekend makes no difference.</summary>
    internal static string[] Harmless(FaultStudyResult study)
    {
        FaultRow[] rows = [.. study.Rows.Where(r => !r.Harm.IsHarm && !FaultWords.Costs(r))];
        var named = rows.Select(Named).ToHashSet(StringComparer.Ordinal);
        return [.. rows.Where(r => r.Case.UnattendedHours == 0 || !named.Contains($"{r.Case.Part}: {r.Case.What.Split(", and nobody")[0]}")).Select(Named).Order(StringComparer.Ordinal)];
    }

    /// <summary>Faults that harm plants alone and are of one sort stand together: the worst in full, the others by name.</summary>
    internal static IEnumerable<(FaultRow Row, FaultRow[] Likewise)> Grouped(FaultRow[] harmful) => harmful
        .GroupBy(r => r.Harm.HarmsFish ? r.Case.Key : $"{r.Case.Fault.GetType().Name} {r.Case.UnattendedHours}", StringComparer.Ordinal)
        .Select(g => (g.First(), g.Skip(1).ToArray()));

    /// <summary>The others of a group; empty where there are none.</summary>
    internal static string Likewise(FaultRow[] likewise) => likewise.Length == 0 ? string.Empty
        : $"Likewise: {string.Join("; ", likewise.Select(r => FormattableString.Invariant($"{r.Case.Part} ({r.Harm.PlantsHarmed:0} plants)")))}.";

    /// <summary>What breaks, with its part.</summary>
    internal static string Named(FaultRow row) => $"{row.Case.Part}: {row.Case.What}";

    /// <summary>Who can be there.</summary>
    internal static string People(FaultStudyResult study) => study.HasPeople
        ? "Who is called and who comes follows the people of the scenario."
        : $"The scenario describes nobody: the morning round finds what it can see, and every fault is tried with {FaultCases.WeekendHours:0} h without anybody too.";
}
