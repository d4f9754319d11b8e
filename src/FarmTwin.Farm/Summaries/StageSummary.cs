using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>What a crop's plan needs of nursery, trough and lanes from a day on, by Little's law.</summary>
public sealed record StageSummary
{
    /// <summary>From this day.</summary>
    public required double FromDay { get; init; }

    /// <summary>Marketable heads a week that the boards stand for.</summary>
    public required double HeadsPerWeek { get; init; }

    /// <summary>Marketable heads a week that the sowing stands for.</summary>
    public required double SownHeadsPerWeek { get; init; }

    /// <summary>Cells sown each time.</summary>
    public required int CellsPerSowing { get; init; }

    /// <summary>Boards harvested and planted a week.</summary>
    public required double BoardsPerWeek { get; init; }

    /// <summary>Cells needed in the nursery over those that its tiers for seedlings have.</summary>
    public required double NurseryShare { get; init; }

    /// <summary>Places needed in the trough over those reserved for the crop.</summary>
    public required double TroughShare { get; init; }

    /// <summary>Holes needed on the lanes at the least lane time over those that there are.</summary>
    public required double LaneShare { get; init; }

    /// <summary>Days that a plant stays on lanes that are kept full; null where no lane is planted with the crop.</summary>
    public required double? LaneDays { get; init; }

    /// <summary>The stage that needs the largest share of its places; null where nothing is sown or planted.</summary>
    public required string? Bottleneck { get; init; }

    /// <summary>Heads a week that the bottleneck lets through.</summary>
    public required double MostHeadsPerWeek { get; init; }

    internal static StageSummary Of(Season season, int crop, double day)
    {
        CropSchedule schedule = season.Parts.Schedules[crop];
        StageUse use = schedule.UseAt(day);
        double cells = 0;
        for (int t = 0; t < season.Parts.Tiers.Count; t++)
        {
            cells += season.Parts.Tiers.UseOf(t, day) == TierUse.Seedlings
                ? season.Parts.Farm.Nursery!.TraysPerTier * season.Parts.Farm.Nursery.CellsPerTray
                : 0;
        }

        // The nursery is shared: what the others leave is the crop's.
        double others = season.Parts.Schedules.Where(s => s != schedule).Sum(s => s.UseAt(day).NurseryCells);
        double nursery = use.NurseryCells > 0 ? use.NurseryCells / Math.Max(1, cells - others) : 0;
        (string Name, double Share)[] stages = [("nursery", nursery), ("trough", use.TroughShare), ("lanes", use.LaneShare)];
        (string name, double share) = stages.MaxBy(s => s.Share);
        return new StageSummary
        {
            FromDay = day,
            HeadsPerWeek = use.HeadsPerWeek,
            SownHeadsPerWeek = use.SownHeadsPerWeek,
            CellsPerSowing = use.CellsPerSowing,
            BoardsPerWeek = use.BoardsPerWeek,
            NurseryShare = nursery,
            TroughShare = use.TroughShare,
            LaneShare = use.LaneShare,
            LaneDays = use.LaneHoles > 0 && double.IsFinite(use.LaneDays) ? use.LaneDays : null,
            Bottleneck = share > 0 ? name : null,
            MostHeadsPerWeek = use.HeadsPerWeek / Math.Max(1, share),
        };
    }
}
