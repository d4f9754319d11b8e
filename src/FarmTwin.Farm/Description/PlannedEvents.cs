namespace FarmTwin.Farm.Description;

/// <summary>An event on a date.</summary>
public abstract record PlannedEvent
{
    /// <summary>The day, from day 0.</summary>
    [Input("day", "The day, from day 0", Unit = "d", Low = 0, High = 3660)]
    public required double Day { get; init; }

    /// <summary>Clock hour.</summary>
    [Input("hour", "Clock hour", Unit = "h", Low = 0, High = 23.99)]
    public double Hour { get; init; } = 9;
}

/// <summary>Sets the exchange through a valve.</summary>
[Kind("set-valve", "Sets the exchange through a valve")]
public sealed record SetValve : PlannedEvent
{
    /// <summary>The valve.</summary>
    [Input("valve", "The valve", Of = "valves")]
    public required string Valve { get; init; }

    /// <summary>Exchange each way, L/h.</summary>
    [Input("flow", "Exchange each way", Unit = "L/h", Low = 0, High = 1e6)]
    public required double FlowLitresPerHour { get; init; }
}

/// <summary>Runs the loops apart again.</summary>
[Kind("decouple", "Closes the coupling valve; the loops run apart until the coupling's day or its gates open it again")]
public sealed record Decouple : PlannedEvent;

/// <summary>Puts everything right.</summary>
[Kind("put-right", "Everything that is broken is mended and every mishap ended at once; a cut of the mains goes on")]
public sealed record PutRight : PlannedEvent;

/// <summary>Doses a supplement.</summary>
[Kind("dose", "Doses a supplement into a basin")]
public sealed record Dose : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>The supplement.</summary>
    [Input("supplement", "The supplement", LibraryFolder = "supplements")]
    public required string Supplement { get; init; }

    /// <summary>Amount, g.</summary>
    [Input("amount", "Amount", Unit = "g", Low = 0, High = 1e6)]
    public required double Grams { get; init; }
}

/// <summary>Sets the temperature a water heater holds.</summary>
[Kind("set-heater", "Sets the temperature that a water heater holds")]
public sealed record SetHeater : PlannedEvent
{
    /// <summary>The heater.</summary>
    [Input("heater", "The heater", Of = "waterHeaters")]
    public required string Heater { get; init; }

    /// <summary>Temperature, °C.</summary>
    [Input("hold", "Temperature", Unit = "°C", Low = 0, High = 40)]
    public required double HoldCelsius { get; init; }
}

/// <summary>Changes the ration of all tanks.</summary>
[Kind("set-ration", "Changes the share of the appetite that is offered")]
public sealed record SetRation : PlannedEvent
{
    /// <summary>Share of the appetite.</summary>
    [Input("ration", "Share of the appetite", Unit = "1", Low = 0, High = 3)]
    public required double RationShare { get; init; }
}

/// <summary>Grades a tank: the larger fish are moved to another.</summary>
[Kind("grade", "Grades a tank: fish above a weight are moved to another tank")]
public sealed record GradeFish : PlannedEvent
{
    /// <summary>The tank.</summary>
    [Input("tank", "The tank", Of = "basins")]
    public required string Tank { get; init; }

    /// <summary>Where the larger go.</summary>
    [Input("to", "Where the larger fish go", Of = "basins")]
    public required string To { get; init; }

    /// <summary>The cut, g.</summary>
    [Input("above", "Fish above this weight are moved", Unit = "g", Low = 0.1, High = 10000)]
    public required double AboveGrams { get; init; }
}

/// <summary>Moves fish.</summary>
[Kind("move-fish", "Moves a share of a tank's fish to another tank, average in size")]
public sealed record MoveFish : PlannedEvent
{
    /// <summary>The tank.</summary>
    [Input("tank", "The tank", Of = "basins")]
    public required string Tank { get; init; }

    /// <summary>Where they go.</summary>
    [Input("to", "Where they go", Of = "basins")]
    public required string To { get; init; }

    /// <summary>Share moved.</summary>
    [Input("share", "Share that is moved", Unit = "1", Low = 0.01, High = 1)]
    public double Share { get; init; } = 1;

    /// <summary>Rate of tempering, K/h.</summary>
    [Input("temper", "Rate at which they are tempered to the other water; 1–2 K/h is good practice", Unit = "K/h", Low = 0.1, High = 1000)]
    public double TemperKelvinPerHour { get; init; } = 1.5;
}

/// <summary>Treats a basin with salt.</summary>
[Kind("treat-with-salt", "Salts a basin against parasites or stress, and records the treatment: its water must not reach plants")]
public sealed record TreatWithSalt : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Salt reached, g/L.</summary>
    [Input("salt", "Salt reached", Unit = "g/L", Low = 0.1, High = 30)]
    public required double GramsPerLitre { get; init; }
}

/// <summary>Harvests all fish of a tank.</summary>
[Kind("harvest-fish", "Harvests the fish of a tank above a weight")]
public sealed record HarvestFish : PlannedEvent
{
    /// <summary>The tank.</summary>
    [Input("tank", "The tank", Of = "basins")]
    public required string Tank { get; init; }

    /// <summary>Above this weight, g.</summary>
    [Input("above", "Fish above this weight", Unit = "g", Low = 0, High = 10000)]
    public double AboveGrams { get; init; }
}

/// <summary>Turns the air of a basin's blower off or on.</summary>
[Kind("set-air", "Sets the share of a basin's air that flows")]
public sealed record SetAir : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Share of the normal air.</summary>
    [Input("share", "Share of the normal air", Unit = "1", Low = 0, High = 5)]
    public required double Share { get; init; }
}

/// <summary>Changes part of a basin's water for source water.</summary>
[Kind("change-water", "Moves part of a basin's water to another basin and fills up from the source")]
public sealed record ChangeWater : PlannedEvent
{
    /// <summary>The basin.</summary>
    [Input("basin", "The basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Where the water goes; out of the farm when left out.</summary>
    [Input("to", "Where the old water goes; out of the farm, to a soil crop, when left out", Of = "basins")]
    public string? To { get; init; }

    /// <summary>Amount, L.</summary>
    [Input("amount", "Amount", Unit = "L", Low = 0, High = 1e6)]
    public required double Litres { get; init; }
}

/// <summary>Coming deliveries of fuel do not come.</summary>
[Kind("no-delivery", "The next deliveries of fuel to a tank do not come")]
public sealed record NoDelivery : PlannedEvent
{
    /// <summary>The tank.</summary>
    [Input("tank", "The fuel tank", Of = "fuelTanks")]
    public required string Tank { get; init; }

    /// <summary>How many.</summary>
    [Input("deliveries", "How many deliveries stay away", Low = 1, High = 50)]
    public int Deliveries { get; init; } = 1;
}

/// <summary>Draws or takes off shade.</summary>
[Kind("set-shade", "Sets the share of the light that shade keeps out")]
public sealed record SetShade : PlannedEvent
{
    /// <summary>Share kept out.</summary>
    [Input("share", "Share of the light kept out", Unit = "1", Low = 0, High = 0.9)]
    public required double Share { get; init; }
}

/// <summary>Sets the water of a media bed.</summary>
[Kind("set-water-height", "Sets the standing water of a media bed; the plan lowers it no more before the next planting")]
public sealed record SetWaterHeight : PlannedEvent
{
    /// <summary>The bed.</summary>
    [Input("bed", "The media bed", Of = "mediaBeds")]
    public required string Bed { get; init; }

    /// <summary>Standing water below the surface of the medium, m.</summary>
    [Input("below", "Standing water below the surface of the medium", Unit = "m", Low = 0, High = 1)]
    public required double BelowSurfaceMetres { get; init; }
}
