namespace FarmTwin.Farm.Description;

/// <summary>A nursery of tiers and trays under lamps.</summary>
public sealed record NurseryDescription
{
    /// <summary>Tiers.</summary>
    [Input("tiers", "Number of tiers", Low = 1, High = 20)]
    public required int Tiers { get; init; }

    /// <summary>Trays a tier.</summary>
    [Input("traysPerTier", "Trays on a tier", Low = 1, High = 100)]
    public required int TraysPerTier { get; init; }

    /// <summary>Cells a tray.</summary>
    [Input("cellsPerTray", "Cells of a seedling tray", Low = 1, High = 1000)]
    public int CellsPerTray { get; init; } = 200;

    /// <summary>Area of a tray, m².</summary>
    [Input("tray", "Area of a tray", Unit = "m2", Low = 0.01, High = 2)]
    public double TraySquareMetres { get; init; } = 0.129;

    /// <summary>Light at the trays, µmol/m²s.</summary>
    [Input("light", "Light at the trays while the lamps are on", Unit = "µmol/m2/s", Low = 0, High = 1000)]
    public double LightMicromoles { get; init; } = 220;

    /// <summary>Hours of light.</summary>
    [Input("lightTime", "Lamps on each day for", Unit = "h", Low = 0, High = 24)]
    public double LightHours { get; init; } = 16;

    /// <summary>Electric power of the lamps of a tier, W.</summary>
    [Input("powerPerTier", "Electric power of the lamps of a tier", Unit = "W", Low = 0, High = 5000)]
    public double PowerPerTierWatts { get; init; } = 80;

    /// <summary>Clock hour at which the lamps go on.</summary>
    [Input("lightsFrom", "Clock hour at which the lamps go on", Unit = "h", Low = 0, High = 23.99)]
    public double LightsFromHour { get; init; } = 6;

    /// <summary>The nursery is kept at least this warm, °C.</summary>
    [Input("atLeast", "The nursery is kept at least this warm", Unit = "°C", Low = 0, High = 35)]
    public double AtLeastCelsius { get; init; } = 20;

    /// <summary>A cool place for trays until the seeds are up, °C; in the nursery itself when left out.</summary>
    [Input("germinateAt", "Temperature of the place where trays stand until the seeds are up; the nursery itself when left out", Unit = "°C", Low = 5, High = 35)]
    public double? GerminateAtCelsius { get; init; }

    /// <summary>The water that feeds it.</summary>
    [Input("water", "The basin that waters it", Of = "basins")]
    public required string Water { get; init; }

    /// <summary>Watering by the clock; at all times when left out.</summary>
    [Input("watering", "Watering by the clock; as the plants ask when left out")]
    public WateringDescription? Watering { get; init; }

    /// <summary>Tiers that differ from the nursery's figures, by number from 1.</summary>
    [Input("tier", "Tiers that differ, by their number from 1: what each is for, its light, hours and power")]
    public IReadOnlyDictionary<string, TierDescription> Tier { get; init; } = new Dictionary<string, TierDescription>();
}

/// <summary>What a tier is for.</summary>
public enum TierUse
{
    /// <summary>Seedlings for the trough.</summary>
    Seedlings,

    /// <summary>Microgreens for sale.</summary>
    Microgreens,

    /// <summary>Nothing is sown and the lamps are off.</summary>
    Off,
}

/// <summary>One tier of the nursery.</summary>
public sealed record TierDescription
{
    /// <summary>What it is for.</summary>
    [Input("use", "What it is for")]
    public TierUse Use { get; init; } = TierUse.Seedlings;

    /// <summary>Light at its trays, µmol/m²s.</summary>
    [Input("light", "Light at its trays; the nursery's when left out", Unit = "µmol/m2/s", Low = 0, High = 1000)]
    public double? LightMicromoles { get; init; }

    /// <summary>Hours of light.</summary>
    [Input("lightTime", "Its lamps on each day for; the nursery's when left out", Unit = "h", Low = 0, High = 24)]
    public double? LightHours { get; init; }

    /// <summary>Electric power of its lamps, W.</summary>
    [Input("power", "Electric power of its lamps; the nursery's when left out", Unit = "W", Low = 0, High = 5000)]
    public double? PowerWatts { get; init; }

    /// <summary>Changes through the year, by name.</summary>
    [Input("changes", "What it is for from a day on")]
    public IReadOnlyDictionary<string, TierChange> Changes { get; init; } = new Dictionary<string, TierChange>();
}

/// <summary>From a day on, another use of a tier; trays that stand there stay until they are ready.</summary>
public sealed record TierChange
{
    /// <summary>From this day.</summary>
    [Input("from", "From this day on", Unit = "d", Low = 0, High = 3660)]
    public required double FromDay { get; init; }

    /// <summary>What it is for.</summary>
    [Input("use", "What it is for")]
    public required TierUse Use { get; init; }
}

/// <summary>Watering of the nursery by the clock: the trays are flooded, what they do not hold runs back.</summary>
public sealed record WateringDescription
{
    /// <summary>Times a day, evenly spread from the hour at which the lamps go on.</summary>
    [Input("timesADay", "Times a day, evenly spread from when the lamps go on", Low = 1, High = 48)]
    public required int TimesADay { get; init; }

    /// <summary>Litres each time, over all trays.</summary>
    [Input("amount", "Water each time, over all trays", Unit = "L", Low = 0.01, High = 1000)]
    public required double Litres { get; init; }
}

/// <summary>How one kind of microgreens is sown and cut.</summary>
public sealed record MicrogreenPlanDescription
{
    /// <summary>Library kind.</summary>
    [Input("kind", "The kind in the library", LibraryFolder = "microgreens")]
    public required string Kind { get; init; }

    /// <summary>Trays sown each time.</summary>
    [Input("trays", "Trays sown each time", Low = 1, High = 1000)]
    public required int TraysPerSowing { get; init; }

    /// <summary>Days of the week on which it is sown, 1 = Monday.</summary>
    [Input("sowOn", "Days of the week on which it is sown, 1 = Monday", Unit = "1", Low = 1, High = 7)]
    public IReadOnlyList<double> SowWeekdays { get; init; } = [1];

    /// <summary>First sowing, day.</summary>
    [Input("firstSowing", "Sown from this day on", Unit = "d", Low = 0, High = 3660)]
    public double FirstSowingDay { get; init; }

    /// <summary>No sowing from this day on.</summary>
    [Input("lastSowing", "Not sown after this day", Unit = "d", Low = 0, High = 3660)]
    public double? LastSowingDay { get; init; }

    /// <summary>Tiers that may take it, by number from 1; any tier for microgreens when left out.</summary>
    [Input("tiers", "Numbers of the tiers that may take it; any tier for microgreens when left out", Unit = "1", Low = 1, High = 20)]
    public IReadOnlyList<double> Tiers { get; init; } = [];

    /// <summary>Seed a tray, g; the kind's usual density when left out.</summary>
    [Input("seedPerTray", "Seed on a tray; the kind's usual density when left out", Unit = "g", Low = 0.1, High = 1000)]
    public double? SeedGramsPerTray { get; init; }

    /// <summary>Days in the dark from sowing; the kind's usual when left out.</summary>
    [Input("blackout", "Days in the dark from sowing; the kind's usual when left out", Unit = "d", Low = 0, High = 14)]
    public double? BlackoutDays { get; init; }

    /// <summary>Days in the light before it is cut; the kind's usual when left out.</summary>
    [Input("lit", "Days in the light before it is cut; the kind's usual when left out", Unit = "d", Low = 1, High = 40)]
    public double? LitDays { get; init; }
}
