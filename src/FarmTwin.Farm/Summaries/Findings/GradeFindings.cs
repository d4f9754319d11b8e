namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Why heads were not first grade, and where the plan outruns its places.</summary>
internal static class GradeFindings
{
    private const double ReasonWorthAWord = 0.04;
    private const double HeadsWorthAWord = 100;
    private const double FullStage = 1.02;

    public static void Add(FindingList list, string name, CropSummary crop)
    {
        (string reason, double heads) = crop.NotFirstGrade.Where(r => r.Key != "other").Select(r => (r.Key, r.Value)).DefaultIfEmpty().MaxBy(r => r.Value);
        if (crop.HeadsHarvested > HeadsWorthAWord && heads > ReasonWorthAWord * crop.HeadsHarvested)
        {
            MonthSummary worst = crop.Months.MinBy(m => m.FirstGradeShare)!;
            list.Add(65, $"{crop.SecondGradeHeads:0} of {crop.HeadsHarvested:0} {name} heads were second grade and {crop.UnsaleableHeads:0} unsaleable, most because {Because(reason)} "
                + $"({heads:0} heads); worst in the month from {list.Day(worst.FirstDay)} on, with {worst.FirstGradeShare:0%} first grade: {Cure(reason)}.");
        }

        StageSummary? tight = crop.Plan.Where(p => p.Bottleneck is not null && p.HeadsPerWeek + p.SownHeadsPerWeek > 0)
            .MaxBy(p => Math.Max(p.NurseryShare, Math.Max(p.TroughShare, p.LaneShare)));
        if (tight is not null)
        {
            double share = Math.Max(tight.NurseryShare, Math.Max(tight.TroughShare, tight.LaneShare));
            if (share > FullStage && double.IsFinite(share))
            {
                list.Add(69, $"From {list.Day(tight.FromDay)} the {tight.Bottleneck} {(tight.Bottleneck == "lanes" ? "are" : "is")} the bottleneck of {name}: the plan needs {share:0%} of the places, "
                    + $"which let through {tight.MostHeadsPerWeek:0} heads a week: sow less, shorten the stay, or give the crop more places.");
            }
        }

        for (int l = 0; l < list.Season.Parts.Lanes.Length; l++)
        {
            double empty = list.Season.State.Growing.LaneEmptyDays[l];
            if (empty > 0 && list.Season.Parts.Lanes[l].Crop == name)
            {
                list.Add(56, $"Lane {list.Season.Parts.Farm.Lanes.Keys.ElementAt(l)} ran empty for {empty:0} days after its first board: give it another crop then ('changes' of the lane).");
            }
        }
    }

    private static string Because(string reason) => reason switch
    {
        "light" => "they were too light",
        "heavy" => "they were too heavy for one head",
        "tipBurn" => "of tip burn",
        "heat" => "heat scorched them",
        "bolted" => "they had bolted",
        "cold" => "cold spoilt them",
        _ => "of other reasons",
    };

    private static string Cure(string reason) => reason switch
    {
        "light" => "leave them longer, give more light, or plan fewer boards then",
        "heavy" => "cut earlier, plant closer, or sell by weight",
        "tipBurn" => "move the air over the crop with fans, shade on bright days, and keep calcium up",
        "heat" => "vent and shade earlier, and grow a crop that bears heat in those weeks",
        "bolted" => "grow a variety slow to bolt, harvest younger, or another crop in those weeks",
        "cold" => "heat the air, or cover the crop on such nights",
        _ => "look at the plants",
    };
}
