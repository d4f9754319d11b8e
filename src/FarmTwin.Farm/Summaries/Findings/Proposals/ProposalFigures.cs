namespace FarmTwin.Farm.Summaries.Findings.Proposals;

/// <summary>Figures that proposals are judged by.</summary>
internal static class ProposalFigures
{
    public static ProposalFigure Margin(FindingList list) =>
        new("margin", list.Summary.Money?.Currency ?? string.Empty, false, s => s.Money?.Margin);

    public static ProposalFigure FirstGrade(string crop) => new($"first-grade {crop} heads", string.Empty, false, s => s.Crops[crop].SaleableHeads);

    public static ProposalFigure HeadsOfAllCrops { get; } = new("first-grade heads", string.Empty, false, s => s.Crops.Values.Sum(c => c.SaleableHeads));

    public static ProposalFigure FishSold { get; } = new("fish sold", "kg", false, s => s.Fish.HarvestedKg);

    public static ProposalFigure FishDead { get; } = new("fish dead", string.Empty, true, s => s.Fish.Died);

    public static ProposalFigure HoursAbove(string band, string name) => new($"hours of {name} above its limit", string.Empty, true, s => s.Water.HoursOutsideBand[band].HoursAbove);

    public static ProposalFigure HoursBelow(string band, string name) => new($"hours of {name} below its limit", string.Empty, true, s => s.Water.HoursOutsideBand[band].HoursBelow);

    public static ProposalFigure PeakNitrite { get; } = new("highest nitrite with fish", "mg N/L", true, s => s.Water.WithFish.NitriteMgNPerL?.Value);

    public static ProposalFigure OpenedDay { get; } = new("valves opened on day", string.Empty, true, s => s.Water.OpenedDay);

    public static ProposalFigure Fuel(FindingList list) => new("fuel", list.Summary.Energy.FuelUnit, true, s => s.Energy.Fuel);
}
