using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Projects sodium and chloride beyond the season's end from what came in and what plants carried out.</summary>
/// <remarks>
/// Over the days looked at: inflow = rise of the farm's stock + uptake share × litres transpired × mean concentration; then the closed
/// form of <see cref="SaltBuildUp"/> from the end on. Feed, water and weather are taken to go on as they were.
/// </remarks>
internal static class SaltFigures
{
    private const int FewestDays = 30;
    private const int MostDays = 365;
    private const double FurthestDays = 3650;

    public static SaltSummary? Of(Season season, RecordView record, string ion, double uptakeShare, (double Watch, double Caution, double Limit) levels)
    {
        double[] salt = record.Days($"{ion}_plant_loop_mg_per_L");
        double[] transpired = record.Days("transpiration_L");
        double coupled = season.State.Operations.CoupledDay;
        int from = Math.Max(double.IsNaN(coupled) ? 1 : (int)coupled + 1, salt.Length - MostDays);
        int days = salt.Length - 1 - from;
        if (days < FewestDays || !double.IsFinite(salt[^1]))
        {
            return null;
        }

        double litres = WaterOf(season, !double.IsNaN(coupled));
        double mean = 0;
        double drawn = 0;
        for (int day = from + 1; day < salt.Length; day++)
        {
            mean += salt[day] / days;
            drawn += uptakeShare * transpired[day] / days;
        }

        double rise = (salt[^1] - salt[from]) / days;
        double inflow = Math.Max(0, (rise * litres) + (drawn * mean));
        return new SaltSummary
        {
            EndMgPerL = salt[^1],
            RisePerDay = rise,
            DaysLookedAt = days,
            RestsAtMgPerL = drawn > 0 ? SaltBuildUp.EquilibriumMilligramsPerLitre(inflow, 1, drawn) : null,
            Watch = When(levels.Watch),
            Caution = When(levels.Caution),
            Limit = When(levels.Limit),
        };

        SaltDate When(double level)
        {
            int passed = Array.FindIndex(salt, c => c >= level);
            double day = passed >= 0 ? passed
                : inflow > 0 ? salt.Length + SaltBuildUp.DaysToLimit(salt[^1], level, inflow, 1, litres, drawn)
                : double.PositiveInfinity;
            double? whole = day <= salt.Length + FurthestDays ? Math.Floor(day) : null;
            return new SaltDate(level, whole, whole is { } d ? record.Start.AddDays((int)d) : null, passed < 0 && whole is not null);
        }
    }

    // One water once the loops are coupled; before that the plant loop alone.
    private static double WaterOf(Season season, bool coupled)
    {
        double litres = 0;
        for (int b = 0; b < season.Parts.Basins.Length; b++)
        {
            bool counts = season.Parts.Basins[b].Use switch
            {
                Description.BasinUse.Mineralizer or Description.BasinUse.HoldingTank or Description.BasinUse.NurseryReservoir => false,
                Description.BasinUse.FishTank or Description.BasinUse.Filter or Description.BasinUse.FishSump => coupled,
                _ => true,
            };
            litres += counts ? season.State.Basins.Litres[b] : 0;
        }

        return litres;
    }
}
