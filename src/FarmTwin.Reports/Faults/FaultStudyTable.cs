using FarmTwin.Farm;
using FarmTwin.Farm.Operations;
using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>The faults of a farm as comma-separated text: a row a fault, the worst first.</summary>
public static class FaultStudyTable
{
    /// <summary>The table.</summary>
    public static string Of(FaultStudyResult study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var text = new CsvText();
        foreach (string header in new[]
        {
            "fault", "part", "what", "day", "hour", "worst_because", "harm", "to_4_mg_per_L_min", "to_3_mg_per_L_min", "to_2_mg_per_L_min", "lowest_oxygen_mg_per_L",
            "to_chill_min", "coldest_fish_water_C", "to_first_death_min", "fish_died", "plants_harmed", "spilled_L", "alarm", "to_alarm_min", "to_answer_min", "to_arrival_min",
            "found_by", "to_found_min", "to_mended_min", "season_fish_lost", "season_first_grade_heads_lost", "season_crops_lost_kg", "season_margin_lost_money", "smallest_backups",
        })
        {
            text.Field(header);
        }

        text.EndLine();
        foreach (FaultRow row in study.Rows)
        {
            FaultHarm harm = row.Harm;
            long seconds = row.Case.Hour.Seconds;
            text.Field(row.Case.Key).Field(row.Case.Part).Field(row.Case.What)
                .Field(Math.Floor(FarmWork.DayOf(seconds))).Field(seconds % UnitConstants.SecondsPerDay / UnitConstants.SecondsPerHour).Field(row.Case.Hour.Why)
                .Field(harm.IsHarm ? 1 : 0).Field(Or(harm.MinutesTo4MgPerL)).Field(Or(harm.MinutesTo3MgPerL)).Field(Or(harm.MinutesTo2MgPerL)).Field(harm.LowestOxygenMgPerL)
                .Field(Or(harm.MinutesToChill)).Field(harm.ColdestFishWaterC).Field(Or(harm.MinutesToFirstDeath)).Field(harm.FishDied).Field(harm.PlantsHarmed).Field(harm.SpilledL)
                .Field(row.Alarm?.Alarm ?? string.Empty).Field(Or(row.Alarm?.MinutesToRaised)).Field(Or(row.Alarm?.MinutesToAnswered)).Field(Or(row.Alarm?.MinutesToArrived))
                .Field(harm.FoundBy).Field(Or(harm.MinutesToFound)).Field(Or(harm.MinutesToMended))
                .Field(row.Loss.Fish).Field(row.Loss.FirstGradeHeads).Field(row.Loss.CropKg).Field(Or(row.Loss.Money))
                .Field(string.Join("; ", row.Backups.Select(b => b.InWords))).EndLine();
        }

        return text.ToString();
    }

    private static double Or(double? value) => value ?? double.NaN;
}
