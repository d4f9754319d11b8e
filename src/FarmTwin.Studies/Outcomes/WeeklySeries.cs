using FarmTwin.Engine;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Outcomes;

/// <summary>The curves by which plans are compared, a value a week.</summary>
public static class WeeklySeries
{
    private const int DaysOfWeek = 7;

    /// <summary>Key, title and unit of each curve, in the order of <see cref="Of"/>.</summary>
    public static IReadOnlyList<(string Key, string Title, string Unit)> All { get; } =
    [
        ("fish_biomass_kg", "Fish in the tanks", "kg"),
        ("nitrate_fish_loop_mgN_per_L", "Nitrate of the fish loop", "mg N/L"),
        ("nitrate_plant_loop_mgN_per_L", "Nitrate of the plant loop", "mg N/L"),
        ("crops_kg", "Crops fit for sale", "kg a week"),
    ];

    /// <summary>The curves of a season, [curve][week]: means of the week's days, for crops their sum. A broken last week is left out.</summary>
    public static double[][] Of(Season season, RecordView record)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(record);
        var crops = new double[record.DayCount];
        foreach (RecordedColumn column in season.Record.Days.Columns)
        {
            if (column.Name.StartsWith("saleable_", StringComparison.Ordinal) && column.Name.EndsWith("_kg", StringComparison.Ordinal))
            {
                double[] days = record.Days(column.Name);
                for (int d = 0; d < crops.Length; d++)
                {
                    crops[d] += days[d];
                }
            }
        }

        return
        [
            Weeks(record.Days("fish_biomass_kg"), 1.0 / DaysOfWeek),
            Weeks(record.Days("nitrate_fish_loop_mgN_per_L"), 1.0 / DaysOfWeek),
            Weeks(record.Days("nitrate_plant_loop_mgN_per_L"), 1.0 / DaysOfWeek),
            Weeks(crops, 1),
        ];
    }

    private static double[] Weeks(double[] days, double scale)
    {
        var weeks = new double[days.Length / DaysOfWeek];
        for (int w = 0; w < weeks.Length; w++)
        {
            for (int d = 0; d < DaysOfWeek; d++)
            {
                weeks[w] += days[(w * DaysOfWeek) + d] * scale;
            }
        }

        return weeks;
    }
}
