namespace FarmTwin.Farm.Summaries;

/// <summary>One crop of a season.</summary>
public sealed record CropSummary
{
    /// <summary>Cells sown.</summary>
    public required double CellsSown { get; init; }

    /// <summary>Heads harvested.</summary>
    public required double HeadsHarvested { get; init; }

    /// <summary>Heads that can be sold.</summary>
    public required double SaleableHeads { get; init; }

    /// <summary>Fresh weight of the heads that can be sold, kg.</summary>
    public required double HarvestedKg { get; init; }

    /// <summary>Day of the first harvest; null where there was none.</summary>
    public required double? FirstHarvestDay { get; init; }

    /// <summary>Mean fresh weight of all heads harvested, g.</summary>
    public required double? MeanHeadG { get; init; }

    /// <summary>Lightest and heaviest mean of a harvest, g a head.</summary>
    public required ReadingRange HeadG { get; init; }

    /// <summary>Weeks of the season, counted from day 0, in which boards were harvested.</summary>
    public required int WeeksWithHarvest { get; init; }

    /// <summary>Weeks from the first harvest on, to the end of the season, the first included, a broken last one left out.</summary>
    public required int WeeksSinceFirstHarvest { get; init; }

    /// <summary>Days that boards old enough waited because their heads were too light, from each refusal to the next harvest day.</summary>
    public required double DaysBoardsWaited { get; init; }

    /// <summary>Harvest days on which a lane had a free place and the trough no seedling old enough.</summary>
    public required int RoundsShortOfSeedlings { get; init; }

    /// <summary>Head weight a board waits for, g: the plan's, or the low end of the saleable band.</summary>
    public required double CutFromG { get; init; }

    /// <summary>Low end of the saleable band, g a head.</summary>
    public required double SaleableLowG { get; init; }

    /// <summary>High end of the saleable band, g a head.</summary>
    public required double SaleableHighG { get; init; }

    /// <summary>Heads of harvests whose mean head was outside the saleable band.</summary>
    public required double HeadsOutsideBand { get; init; }

    /// <summary>Plants standing at the end, nursery included.</summary>
    public required double StandingPlants { get; init; }

    /// <summary>The fruit of a fruiting crop; null for one that is sold whole.</summary>
    public required FruitSummary? Fruit { get; init; }
}
