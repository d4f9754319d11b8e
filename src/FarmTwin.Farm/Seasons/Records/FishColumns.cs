using FarmTwin.Farm.Fish;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the fish.</summary>
internal static class FishColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm, RecordedWater water)
    {
        columns.Instant("fish_number", "fish", () => Number(farm));
        columns.Instant("fish_biomass_kg", "kg", () => SumCohorts(farm, -1, c => c.BiomassGrams) / 1000);
        foreach (int tank in water.Tanks.TankBasins)
        {
            string name = farm.Parts.BasinNames[tank];
            columns.Instant($"biomass_{name}_kg", "kg", () => SumCohorts(farm, tank, c => c.BiomassGrams) / 1000);
            columns.Instant($"mean_weight_{name}_g", "g", () => SumCohorts(farm, tank, c => c.Number) is > 0 and var n
                ? SumCohorts(farm, tank, c => c.BiomassGrams) / n
                : double.NaN);
        }
    }

    /// <summary>Fish of all tanks.</summary>
    public static double Number(FarmContext farm) => SumCohorts(farm, -1, c => c.Number);

    // Over all tanks where the tank is negative.
    private static double SumCohorts(FarmContext farm, int tank, Func<Cohort, double> value)
    {
        double sum = 0;
        for (int b = 0; b < farm.State.Cohorts.Length; b++)
        {
            if (tank < 0 || tank == b)
            {
                foreach (Cohort cohort in farm.State.Cohorts[b])
                {
                    sum += value(cohort);
                }
            }
        }

        return sum;
    }
}
