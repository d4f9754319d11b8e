using System.Globalization;
using System.Text;
using FarmTwin.Scenarios.Causes;

namespace FarmTwin.Studies.Causes;

/// <summary>The page of causes and effects: what shows, from which day, and what the remedy does.</summary>
public static class CausesPage
{
    /// <summary>Writes it as Markdown.</summary>
    /// <param name="outcomes">The causes with the names of their files, in the order of the page.</param>
    public static string Write(IReadOnlyList<(string File, CauseOutcome Outcome)> outcomes)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        int inReach = outcomes.Count(o => o.Outcome.Card.InReach);
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            # Causes and effects

            What goes wrong on such a farm, what shows it, and what to do. Each cause is a small scenario under `scenarios/causes` that extends a
            farm of its own: the parent is the farm without the cause, the file the farm with it, and the remedy in the file is tried on top. The
            signs are practice of the trade, no source; a test holds that each shows with the cause, not without it, and no more with the remedy.
            Limits that a test kit or a rule of practice knows (TAN 1, alkalinity 25, oxygen 2, sodium 50 …) stand as practice has them; the
            others (kilograms cut, shares of film, grams of algae) were placed between the farms' own figures and tell direction, not size.
            The figures below are the twin's, written by that test: invented farms, one seed, so read them as direction and size, not as dates.

            {inReach} of {outcomes.Count} chains are in reach of a twin that balances mass, heat and growth; the others say why not.

            To see one for yourself: `dotnet run --project src/FarmTwin.Cli -c Release -- run scenarios/causes/FILE`.

            """);
        foreach ((string file, CauseOutcome outcome) in outcomes)
        {
            Chain(page, file, outcome);
        }

        return page.ToString().ReplaceLineEndings("\n");
    }

    // Smaller than anybody reads off a table.
    private const double Nothing = 5e-4;

    private static void Chain(StringBuilder page, string file, CauseOutcome outcome)
    {
        CauseCard card = outcome.Card;
        page.Append(CultureInfo.InvariantCulture, $"\n## {card.Chain}. {card.Cause}\n\n{Sentence(card.Effect)} ");
        if (!card.InReach)
        {
            page.Append(CultureInfo.InvariantCulture, $"**Out of reach:** {card.Limits}\n");
            return;
        }

        page.Append(CultureInfo.InvariantCulture, $"[{file}](../scenarios/causes/{file}): {card.Event}.\n\n");
        page.Append("| sign | shows | limit | with the cause | without | with the remedy |\n|---|---|---|---|---|---|\n");
        foreach (SignReading r in outcome.Readings)
        {
            string limit = r.Sign.Above is { } above ? $"above {Number(above)}" : $"below {Number(r.Sign.Below ?? 0)}";
            string first = r.FirstDay is { } day ? $"day {day}" : $"days {Number(r.Sign.FromDay)} to {Number(r.Sign.ToDay)}";
            page.Append(CultureInfo.InvariantCulture,
                $"| {r.Sign.About} | {first} | {What(r.Sign)} {limit} | {Number(r.With)} | {Number(r.Without)} | {Number(r.Remedied ?? double.NaN)} |\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"\nRemedy: {card.Remedy?.About}.{(card.Limits.Length > 0 ? " Left out: " + card.Limits + "." : string.Empty)}\n");
    }

    private static string What(CauseSign sign)
    {
        string of = sign.Column is { } column ? $"`{column}`" : $"\"{sign.Event}\" in events.csv";
        return sign.Take switch
        {
            SignMeasure.Highest => $"highest {of}",
            SignMeasure.Lowest => $"lowest {of}",
            SignMeasure.Mean => $"mean {of}",
            SignMeasure.Total => $"sum of {of}",
            SignMeasure.Last => $"last {of}",
            SignMeasure.Rise => $"change of {of}",
            _ => of,
        };
    }

    private static string Sentence(string clause) => char.ToUpperInvariant(clause[0]) + clause[1..] + ".";

    // Three digits are what such a figure is worth.
    private static string Number(double value) => !double.IsFinite(value) ? "–"
        : Math.Abs(value) >= 100 ? value.ToString("0", CultureInfo.InvariantCulture)
        : Math.Abs(value) < Nothing ? "0"
        : value.ToString("G3", CultureInfo.InvariantCulture);
}
