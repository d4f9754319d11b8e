using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Summaries.Findings.Proposals;

/// <summary>Changes of stocking, feed, air and filter.</summary>
internal static class FishProposals
{
    // Steps that a planner would take first; own choice.
    private const double FewerFish = 0.3;
    private const double MoreAir = 0.5;
    private const double EarlierDays = 14;
    private const double SellLighter = 0.2;
    private const double MatureShare = 0.15;

    /// <summary>Fewer fish in every batch.</summary>
    public static Proposal Fewer(FindingList list, ProposalFigure complaint) => new(
        $"{FewerFish:0%} fewer fish in every batch",
        farm => Stocked(farm, (_, s) => s with { Number = Math.Max(1, (int)Math.Round(s.Number * (1 - FewerFish))) }),
        [complaint, ProposalFigures.FishDead, ProposalFigures.FishSold, ProposalFigures.Margin(list)]);

    /// <summary>Sold at a smaller weight, so that less stands at once.</summary>
    public static Proposal SoldLighter(FindingList list) => new(
        $"fish sold from {1 - SellLighter:0%} of the planned weight",
        farm => Stocked(farm, (_, s) => s with { SellFromGrams = s.SellFromGrams * (1 - SellLighter) }),
        [
            new("densest tank", "kg/m3", true, s => s.Fish.PeakDensityKgPerM3?.Value), ProposalFigures.FishSold, ProposalFigures.Margin(list),
        ]);

    /// <summary>More air in every fish tank.</summary>
    public static Proposal MoreTankAir(ProposalFigure complaint) => new(
        $"{MoreAir:0%} more air in every fish tank",
        farm => farm with
        {
            Basins = farm.Basins.ToDictionary(b => b.Key, b => b.Value.Use == BasinUse.FishTank
                ? b.Value with { AirLitresPerMinute = b.Value.AirLitresPerMinute * (1 + MoreAir) } : b.Value, StringComparer.Ordinal),
        },
        [complaint, ProposalFigures.FishDead, ProposalFigures.FishSold]);

    /// <summary>The batches after the first earlier, so that the feed reaches the gate's share sooner; null with one batch.</summary>
    public static Proposal? StockedEarlier(FindingList list)
    {
        double first = list.Season.Parts.Farm.Stocking.Values.Select(s => s.AfterDays).DefaultIfEmpty(0).Min();
        return list.Season.Parts.Farm.Stocking.Values.All(s => s.AfterDays <= first + EarlierDays) ? null : new(
            $"the later batches {EarlierDays:0} days earlier",
            farm => Stocked(farm, (_, s) => s.AfterDays > first + EarlierDays ? s with { AfterDays = s.AfterDays - EarlierDays } : s),
            [ProposalFigures.OpenedDay, ProposalFigures.PeakNitrite, ProposalFigures.FishSold, ProposalFigures.Margin(list)]);
    }

    /// <summary>More mature media in every filter.</summary>
    public static Proposal MoreMatureMedia() => new(
        $"{MatureShare:0%} mature media in the filter",
        farm => farm with
        {
            Filters = farm.Filters.ToDictionary(f => f.Key, f => f.Value with { MatureMediaShare = Math.Max(MatureShare, f.Value.MatureMediaShare) }, StringComparer.Ordinal),
        },
        [new("filter cycled on day", string.Empty, true, s => s.Water.CycledDay)]);

    private static FarmDescription Stocked(FarmDescription farm, Func<string, StockingDescription, StockingDescription> change) =>
        farm with { Stocking = farm.Stocking.ToDictionary(s => s.Key, s => change(s.Key, s.Value), StringComparer.Ordinal) };
}
