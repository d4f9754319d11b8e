namespace FarmTwin.Farm.Description;

/// <summary>A tank of fuel that is delivered, and the heaters that burn from it.</summary>
public sealed record FuelTankDescription
{
    /// <summary>Fuel.</summary>
    [Input("fuel", "Fuel, sold by volume", LibraryFolder = "fuels")]
    public string Fuel { get; init; } = "propane";

    /// <summary>Fuel that it holds when filled, L.</summary>
    [Input("capacity", "Fuel that it holds when filled (a propane tank: 80 % of its water volume)", Unit = "L", Low = 1, High = 1e6)]
    public required double CapacityLitres { get; init; }

    /// <summary>Share in it at the start.</summary>
    [Input("initialFill", "Share of the capacity in it at the start", Unit = "1", Low = 0, High = 1)]
    public double InitialFillShare { get; init; } = 1;

    /// <summary>Water heaters that burn from it.</summary>
    [Input("waterHeaters", "Water heaters that burn from it", Of = "waterHeaters")]
    public IReadOnlyList<string> WaterHeaters { get; init; } = [];

    /// <summary>Whether the air heater burns from it.</summary>
    [Input("airHeater", "Whether the heater of the air burns from it")]
    public bool AirHeater { get; init; }

    /// <summary>Share at which fuel is ordered.</summary>
    [Input("orderBelow", "Fuel is ordered on the morning on which the tank holds less than this share", Unit = "1", Low = 0, High = 1)]
    public double OrderBelowShare { get; init; } = 0.3;

    /// <summary>Days from order to delivery.</summary>
    [Input("leadTime", "From order to delivery", Unit = "d", Low = 0, High = 60)]
    public double LeadDays { get; init; } = 4;

    /// <summary>Share to which a delivery fills it.</summary>
    [Input("fillTo", "Share of the capacity to which a delivery fills it", Unit = "1", Low = 0.05, High = 1)]
    public double FillToShare { get; init; } = 1;

    /// <summary>Most heat of fuel that boils off without the tank freezing down, kW.</summary>
    [Input("vaporises", "Most heat, as fuel burnt, that boils off for as long as it is wanted; no limit when left out", Unit = "kW", Low = 0.1, High = 1e5)]
    public double? LargestKilowatts { get; init; }
}
