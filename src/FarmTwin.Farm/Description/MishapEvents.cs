using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.Description;

/// <summary>Chores that nobody does for some days.</summary>
[Kind("miss-chores", "Nobody does some chores, or any, for some days")]
public sealed record MissChores : PlannedEvent
{
    /// <summary>For how long, d.</summary>
    [Input("for", "For how long", Unit = "d", Low = 0.1, High = 90)]
    public required double Days { get; init; }

    /// <summary>Which; all when left out.</summary>
    [Input("chores", "Which chores; all of them when left out")]
    public IReadOnlyList<Duty> Chores { get; init; } = [];
}

/// <summary>Overfeeding.</summary>
[Kind("overfeed", "Feeds more than is eaten: a share of the appetite for some days, or an amount at once, whatever the water is like")]
public sealed record Overfeed : PlannedEvent
{
    /// <summary>Share of the appetite.</summary>
    [Input("ration", "Share of the appetite that is offered in place of the usual ration", Unit = "1", Low = 0, High = 10)]
    public double RationShare { get; init; } = 1.5;

    /// <summary>For how long, d.</summary>
    [Input("for", "For how long", Unit = "d", Low = 0, High = 90)]
    public double Days { get; init; } = 1;

    /// <summary>Amount at once, g.</summary>
    [Input("amount", "An amount at once instead", Unit = "g", Low = 0, High = 1e5)]
    public double? Grams { get; init; }

    /// <summary>The tank it goes to.</summary>
    [Input("tank", "The tank that the amount goes to; all tanks by their fish when left out", Of = "basins")]
    public string? Tank { get; init; }
}

/// <summary>Top-up water with chlorine in it.</summary>
[Kind("chlorinated-top-up", "Source water comes with chlorine or chloramine in it: the filter is spent, or the tank was not let stand")]
public sealed record ChlorinatedTopUp : PlannedEvent
{
    /// <summary>Total residual chlorine, mg/L.</summary>
    [Input("chlorine", "Total residual chlorine; that of 'sourceWater' when left out", Unit = "mg/L", Low = 0, High = 10)]
    public double? ChlorineMilligramsPerLitre { get; init; }

    /// <summary>For how long, d.</summary>
    [Input("for", "For how long", Unit = "d", Low = 0, High = 90)]
    public double Days { get; init; } = 1;

    /// <summary>Basin filled by hand.</summary>
    [Input("basin", "A basin that is filled up by hand with it at once", Of = "basins")]
    public string? Basin { get; init; }

    /// <summary>Amount by hand, L.</summary>
    [Input("amount", "How much by hand", Unit = "L", Low = 0, High = 1e6)]
    public double Litres { get; init; }
}

/// <summary>A spray on the plants.</summary>
[Kind("pesticide", "A pyrethrin-like spray on a crop, part of which drips into the water")]
public sealed record Pesticide : PlannedEvent
{
    /// <summary>The basin below.</summary>
    [Input("basin", "The basin under the crop", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Area sprayed, m².</summary>
    [Input("area", "Area that is sprayed", Unit = "m2", Low = 0.01, High = 1e5)]
    public required double SquareMetres { get; init; }

    /// <summary>Active substance, mg/m².</summary>
    [Input("active", "Active substance on a square metre, in milligrams; that of the library when left out", Low = 0, High = 1000)]
    public double? ActiveMilligramsPerSquareMetre { get; init; }
}

/// <summary>Cover taken off water.</summary>
[Kind("uncover-water", "Takes lids or rafts off some water for a time: light grows algae on it")]
public sealed record UncoverWater : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Share of its cover.</summary>
    [Input("share", "Share of its cover that is taken off", Unit = "1", Low = 0, High = 1)]
    public double Share { get; init; } = 1;

    /// <summary>For how long, d.</summary>
    [Input("for", "For how long", Unit = "d", Low = 0, High = 3660)]
    public required double Days { get; init; }
}

/// <summary>A decant before the sludge has settled.</summary>
[Kind("decant-early", "Decants a mineralization tank as it stands, against every gate")]
public sealed record DecantEarly : PlannedEvent
{
    /// <summary>The tank.</summary>
    [Input("mineralizer", "The mineralization tank", Of = "mineralizers")]
    public required string Mineralizer { get; init; }

    /// <summary>Share let out.</summary>
    [Input("share", "Share of its water that is let out", Unit = "1", Low = 0, High = 1)]
    public double Share { get; init; } = 0.5;
}

/// <summary>A vigorous wash.</summary>
[Kind("wash-hard", "Washes a bead filter so hard that film goes with the sludge")]
public sealed record WashHard : PlannedEvent
{
    /// <summary>The filter.</summary>
    [Input("filter", "The filter", Of = "filters")]
    public required string Filter { get; init; }

    /// <summary>Share of the film stripped.</summary>
    [Input("strips", "Share of the film that is stripped", Unit = "1", Low = 0, High = 1)]
    public double StripShare { get; init; } = 0.5;
}

/// <summary>A filter bypassed.</summary>
[Kind("bypass-filter", "Leads part of the flow past a filter's bed: solids go on to tanks and rafts")]
public sealed record BypassFilter : PlannedEvent
{
    /// <summary>The filter.</summary>
    [Input("filter", "The filter", Of = "filters")]
    public required string Filter { get; init; }

    /// <summary>Share past the bed.</summary>
    [Input("share", "Share of the flow that passes by the bed", Unit = "1", Low = 0, High = 1)]
    public double Share { get; init; } = 1;

    /// <summary>For how long, d.</summary>
    [Input("for", "For how long", Unit = "d", Low = 0, High = 3660)]
    public required double Days { get; init; }
}
