using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.Summaries.Findings.Proposals;

/// <summary>Changes of the sowing plan and the nursery.</summary>
internal static class CropProposals
{
    // How large a step is tried: enough to be seen over weather, small enough for a planner to take. Own choice.
    private const double Step = 0.15;
    private const double CoolPlaceCelsius = 20;
    private const double LeastDaysBetween = 28;

    /// <summary>Fewer boards, and as much less seed, in those stages of the plan in which boards waited.</summary>
    public static Proposal FewerBoards(FindingList list, string crop) => new(
        $"{Step:0%} fewer boards and less seed of {crop} in those stages of the plan",
        farm => Scaled(farm, crop, Stages(list, crop, "boards wait"), 1 - Step, 1 - Step),
        [
            ProposalFigures.FirstGrade(crop), new($"mean head of {crop}", "g", false, s => s.Crops[crop].MeanHeadG),
            new("days that boards waited", string.Empty, true, s => s.Crops[crop].DaysBoardsWaited), ProposalFigures.Margin(list),
        ]);

    /// <summary>More seed in those stages that ran short of seedlings, and in those before them, in which it had to be sown.</summary>
    public static Proposal MoreSeed(FindingList list, string crop) => new(
        $"{Step:0%} more seed of {crop} sown for those weeks",
        farm => Scaled(farm, crop, Stages(list, crop, "no seedlings", LeastDaysBetween), 1 + Step, 1),
        [
            ProposalFigures.FirstGrade(crop), new("harvest days short of seedlings", string.Empty, true, s => s.Crops[crop].RoundsShortOfSeedlings),
            ProposalFigures.Margin(list),
        ]);

    /// <summary>Trays germinate in a cool place.</summary>
    public static Proposal CoolGermination(FindingList list) => new(
        $"trays germinated at {CoolPlaceCelsius:0} °C",
        farm => farm with { Nursery = farm.Nursery! with { GerminateAtCelsius = CoolPlaceCelsius } },
        [
            new("poor sowings", string.Empty, true, s => s.Nursery.PoorSowings), ProposalFigures.HeadsOfAllCrops, ProposalFigures.Margin(list),
        ]);

    // The stages of the plan (the base is the empty name) that were in force on the days of an event, or so many days before them.
    private static HashSet<string> Stages(FindingList list, string crop, string what, double before = 0)
    {
        CropPlanDescription plan = list.Season.Parts.Farm.Crops[crop];
        var stages = new HashSet<string>(StringComparer.Ordinal);
        foreach (LoggedEvent line in list.Season.Log.Events)
        {
            if (line.What == what && line.Where == crop)
            {
                double day = FarmWork.DayOf(line.Seconds) - before;
                stages.Add(plan.Changes.Where(c => c.Value.FromDay <= day).OrderBy(c => c.Value.FromDay).Select(c => c.Key).LastOrDefault(string.Empty));
            }
        }

        return stages;
    }

    private static FarmDescription Scaled(FarmDescription farm, string crop, HashSet<string> stages, double seed, double boards)
    {
        CropPlanDescription plan = farm.Crops[crop];
        CropPlanDescription changed = plan with
        {
            CellsPerSowing = stages.Contains(string.Empty) ? Cells(plan.CellsPerSowing, seed) : plan.CellsPerSowing,
            BoardsPerWeek = stages.Contains(string.Empty) ? plan.BoardsPerWeek * boards : plan.BoardsPerWeek,
            HeadsPerWeek = stages.Contains(string.Empty) ? plan.HeadsPerWeek * Math.Max(seed, boards) : plan.HeadsPerWeek,
            Changes = plan.Changes.ToDictionary(
                c => c.Key,
                c => stages.Contains(c.Key)
                    ? c.Value with
                    {
                        CellsPerSowing = Cells(c.Value.CellsPerSowing, seed),
                        BoardsPerWeek = c.Value.BoardsPerWeek * boards,
                        HeadsPerWeek = c.Value.HeadsPerWeek * Math.Max(seed, boards),
                    }
                    : c.Value,
                StringComparer.Ordinal),
        };
        return farm with { Crops = farm.Crops.ToDictionary(c => c.Key, c => c.Key == crop ? changed : c.Value, StringComparer.Ordinal) };
    }

    private static int? Cells(int? cells, double factor) => cells is { } some ? (int)Math.Round(some * factor) : null;
}
