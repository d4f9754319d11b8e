using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the solids.</summary>
internal static class SolidsFigures
{
    public static SolidsSummary Of(Season season, LedgerSummary nitrogen)
    {
        FarmTotals totals = season.State.Totals;
        double feed = nitrogen.Doors.TryGetValue("feed", out DoorFlow? flow) ? flow.In : 0;
        double? firstCompost = null;
        int trips = 0;
        int refused = 0;
        foreach (LoggedEvent line in season.Log.Events)
        {
            refused += line.What == "decant refused" ? 1 : 0;
            if (line.What == "sludge to compost")
            {
                trips++;
                firstCompost ??= Math.Floor(FarmWork.DayOf(line.Seconds));
            }
        }

        return new SolidsSummary
        {
            CarriedKg = totals.SolidsCarriedGrams / UnitConstants.GramsPerKilogram,
            CarriedNitrogenG = totals.SolidsCarriedNitrogenGrams,
            CarriedShareOfFeedNitrogen = feed > 0 ? totals.SolidsCarriedNitrogenGrams / feed : null,
            Washes = totals.Washes,
            WashesPutOff = totals.WashesPutOff,
            Decants = totals.Decants,
            DecantsRefused = refused,
            DecantedL = totals.DecantedLitres,
            ReturnedNitrogenG = totals.DecantedNitrogenGrams,
            ReturnedPhosphorusG = totals.DecantedPhosphorusGrams,
            ReturnedPotassiumG = totals.DecantedPotassiumGrams,
            ReturnedShareOfFeedNitrogen = feed > 0 ? totals.DecantedNitrogenGrams / feed : null,
            CompostedKg = totals.CompostedSolidsGrams / UnitConstants.GramsPerKilogram,
            FirstCompostDay = firstCompost,
            CompostTrips = trips,
        };
    }
}
