namespace FarmTwin.Farm.Summaries;

/// <summary>One crop of a season.</summary>
public sealed record CropSummary
{
    /// <summary>Cells sown.</summary>
    public required double CellsSown { get; init; }

    /// <summary>Heads harvested.</summary>
    public required double HeadsHarvested { get; init; }

    /// <summary>Heads of first grade.</summary>
    public required double SaleableHeads { get; init; }

    /// <summary>Fresh weight of the heads of first grade, kg.</summary>
    public required double HarvestedKg { get; init; }

    /// <summary>Heads of second grade: too light, too heavy for one head, tip-burnt, scorched.</summary>
    public required double SecondGradeHeads { get; init; }

    /// <summary>Their fresh weight, kg.</summary>
    public required double SecondGradeKg { get; init; }

    /// <summary>Price of second grade over that of first; null where no price is stated.</summary>
    public required double? SecondGradePrice { get; init; }

    /// <summary>Heads that cannot be sold: bolted, spoilt by cold, far too light, other.</summary>
    public required double UnsaleableHeads { get; init; }

    /// <summary>Plants that frost or chill killed.</summary>
    public required double KilledByCold { get; init; }

    /// <summary>Their fresh weight, kg.</summary>
    public required double UnsaleableKg { get; init; }

    /// <summary>Heads that are not first grade, by the reason that struck first.</summary>
    public required IReadOnlyDictionary<string, double> NotFirstGrade { get; init; }

    /// <summary>Heaviest head that sells as one first-grade head, g; null for a crop without grades.</summary>
    public required double? HeaviestFirstG { get; init; }

    /// <summary>Age and weight of what left the lanes, by month.</summary>
    public required IReadOnlyList<MonthSummary> Months { get; init; }

    /// <summary>What the plan needs of each stage, from each day on which it changes.</summary>
    public required IReadOnlyList<StageSummary> Plan { get; init; }

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
