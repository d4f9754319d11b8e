using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Washes, decants and sludge.</summary>
internal static class SolidsFindings
{
    public static void Add(FindingList list)
    {
        SolidsSummary solids = list.Summary.Solids;
        if (solids.WashesPutOff > 0)
        {
            (double from, double to, int count) = list.Span("wash put off");
            list.Add(76, $"{count} washes were put off for want of room, {list.Day(from)} to {list.Day(to)}: decant sooner, or a larger holding tank.", HouseProposals.DecantedSooner());
        }

        if (solids.DecantsRefused > 0)
        {
            (double from, double to, int count) = list.Span("decant refused");
            string why = list.Season.Log.Events.Last(e => e.What == "decant refused").Note;
            int bracket = why.IndexOf(" (", StringComparison.Ordinal);
            list.Add(54, $"{count} of {count + solids.Decants:0} decants were refused, {list.Day(from)} to {list.Day(to)} "
                + $"(last for {Words(bracket > 0 ? why[..bracket] : why)}): leave the air on longer.", HouseProposals.AeratedLonger());
        }

        if (solids.FirstCompostDay is { } first)
        {
            (_, double last, int trips) = list.Span("sludge to compost");
            string rhythm = trips > 1 ? $", {trips} times until {list.Day(last)}, every {(last - first) / (trips - 1):0} days or so" : string.Empty;
            string sludge = list.Season.Parts.Mineralizers.Length > 0 ? "Thick sludge" : "The sludge of the washes";
            list.Add(48, $"{sludge} must go to compost from {list.Day(first)} on{rhythm}: {solids.CompostedKg:0.0} kg dry, out of {solids.CarriedKg:0.0} kg carried.");
        }

        if (solids.ReturnedShareOfFeedNitrogen is { } share && solids.Decants > 0)
        {
            list.Add(30, $"Mineralization returned {solids.ReturnedNitrogenG:0} g N ({share:0%} of the feed's), {solids.ReturnedPhosphorusG:0} g P and "
                + $"{solids.ReturnedPotassiumG:0} g K in {solids.Decants:0} decants, {solids.Washes / list.Record.DayCount * 7:0.0} washes a week.");
        }
    }

    // "TooMuchNitrite, Turbid" to "too much nitrite, turbid".
    private static string Words(string flags) => string.Concat(flags.Select(
        (c, i) => char.IsUpper(c) ? (i > 0 && flags[i - 1] != ' ' ? " " : string.Empty) + char.ToLowerInvariant(c) : c.ToString()));
}
