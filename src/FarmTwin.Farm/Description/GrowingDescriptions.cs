namespace FarmTwin.Farm.Description;

/// <summary>Lamps that travel over lanes, some hours before sunrise and after sunset.</summary>
public sealed record LampDescription
{
    /// <summary>The lanes and troughs they pass over.</summary>
    [Input("over", "The basins whose crop they pass over", Of = "basins")]
    public required IReadOnlyList<string> Over { get; init; }

    /// <summary>Number of lamps.</summary>
    [Input("count", "Number of lamps", Low = 1, High = 1000)]
    public int Count { get; init; } = 1;

    /// <summary>Electric power of each, W.</summary>
    [Input("power", "Electric power of each", Unit = "W", Low = 1, High = 5000)]
    public required double PowerWatts { get; init; }

    /// <summary>Photons per joule, µmol/J.</summary>
    [Input("efficacy", "Photons of the growing range per joule", Unit = "µmol/J", Low = 0.5, High = 4.2)]
    public double EfficacyMicromolesPerJoule { get; init; } = 2.5;

    /// <summary>Share of the photons that land on the crop.</summary>
    [Input("utilisation", "Share of the photons that land on the crop", Unit = "1", Low = 0.1, High = 1)]
    public double UtilisationShare { get; init; } = 0.85;

    /// <summary>Hours before sunrise.</summary>
    [Input("beforeSunrise", "Time on before sunrise", Unit = "h", Low = 0, High = 12)]
    public double BeforeSunriseHours { get; init; } = 3;

    /// <summary>Hours after sunset.</summary>
    [Input("afterSunset", "Time on after sunset", Unit = "h", Low = 0, High = 12)]
    public double AfterSunsetHours { get; init; } = 3;
}

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

    /// <summary>The nursery is kept at least this warm, °C.</summary>
    [Input("atLeast", "The nursery is kept at least this warm", Unit = "°C", Low = 0, High = 35)]
    public double AtLeastCelsius { get; init; } = 20;

    /// <summary>The water that feeds it.</summary>
    [Input("water", "The basin that waters it", Of = "basins")]
    public required string Water { get; init; }
}

/// <summary>A transplant trough.</summary>
public sealed record TroughDescription
{
    /// <summary>Its basin.</summary>
    [Input("basin", "Its basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Area, m².</summary>
    [Input("area", "Raft area", Unit = "m2", Low = 0.01, High = 1000)]
    public required double AreaSquareMetres { get; init; }

    /// <summary>Plants per m².</summary>
    [Input("density", "Plants standing on a square metre", Unit = "plants/m2", Low = 10, High = 2000)]
    public required double PlantsPerSquareMetre { get; init; }

    /// <summary>Share of the places reserved for each crop.</summary>
    [Input("shares", "Share of the places reserved for each crop, by crop name")]
    public required IReadOnlyDictionary<string, double> Shares { get; init; }
}

/// <summary>A raft lane.</summary>
public sealed record LaneDescription
{
    /// <summary>Its basin.</summary>
    [Input("basin", "Its basin", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Boards it holds.</summary>
    [Input("boards", "Boards it holds", Low = 1, High = 1000)]
    public required int Boards { get; init; }

    /// <summary>Area of a board, m².</summary>
    [Input("board", "Area of a board", Unit = "m2", Low = 0.05, High = 10)]
    public required double BoardSquareMetres { get; init; }

    /// <summary>Holes a board.</summary>
    [Input("holes", "Holes of a board", Low = 1, High = 500)]
    public required int HolesPerBoard { get; init; }

    /// <summary>The crop.</summary>
    [Input("crop", "The crop it grows", Of = "crops")]
    public required string Crop { get; init; }
}

/// <summary>How one crop is sown, moved on and harvested.</summary>
public sealed record CropPlanDescription
{
    /// <summary>Library crop.</summary>
    [Input("kind", "The crop in the library", LibraryFolder = "crops")]
    public required string Kind { get; init; }

    /// <summary>Cells sown each time.</summary>
    [Input("sow", "Cells sown each time; a fruiting crop has plantings instead", Low = 0, High = 100000)]
    public int CellsPerSowing { get; init; }

    /// <summary>First sowing, day.</summary>
    [Input("firstSowing", "First sowing, from day 0", Unit = "d", Low = 0, High = 3660)]
    public double FirstSowingDay { get; init; }

    /// <summary>Days between sowings.</summary>
    [Input("sowEvery", "Time between sowings", Unit = "d", Low = 1, High = 365)]
    public double SowEveryDays { get; init; } = 7;

    /// <summary>Days in the nursery.</summary>
    [Input("nursery", "Time in the nursery", Unit = "d", Low = 1, High = 90)]
    public double NurseryDays { get; init; } = 14;

    /// <summary>Days in the trough.</summary>
    [Input("trough", "Least time in the transplant trough", Unit = "d", Low = 0, High = 90)]
    public double TroughDays { get; init; } = 14;

    /// <summary>Boards harvested and replanted a week.</summary>
    [Input("boardsPerWeek", "Boards harvested and planted anew a week, over all its lanes; a fruiting crop has plantings instead", Unit = "1", Low = 0, High = 1000)]
    public double BoardsPerWeek { get; init; }

    /// <summary>Least days on the lane before a board is harvested.</summary>
    [Input("leastLaneTime", "A board is harvested after at least", Unit = "d", Low = 0, High = 200)]
    public double LeastLaneDays { get; init; } = 18;

    /// <summary>A board waits until its heads weigh this much, g; the low end of the crop's saleable band when left out.</summary>
    [Input("leastWeight", "A board waits until its heads weigh this much; the low end of the crop's saleable band when left out", Unit = "g", Low = 0, High = 5000)]
    public double? LeastWeightGrams { get; init; }

    /// <summary>Changes of the plan through the year, by name.</summary>
    [Input("changes", "Changes of sowing and harvest through the year")]
    public IReadOnlyDictionary<string, CropPlanChange> Changes { get; init; } = new Dictionary<string, CropPlanChange>();

    /// <summary>Plantings of a fruiting crop in media beds, by name.</summary>
    [Input("plantings", "Plantings of a fruiting crop in media beds: when set out and cleared, in which beds")]
    public IReadOnlyDictionary<string, PlantingDescription> Plantings { get; init; } = new Dictionary<string, PlantingDescription>();

    /// <summary>Boards are harvested, or fruit is picked, on these days of the week, 1 = Monday.</summary>
    [Input("harvestDays", "Days of the week on which boards are harvested or fruit is picked, 1 = Monday", Unit = "1", Low = 1, High = 7)]
    public IReadOnlyList<double> HarvestWeekdays { get; init; } = [2, 5];
}

/// <summary>From a day on, another number of cells and boards.</summary>
public sealed record CropPlanChange
{
    /// <summary>From this day.</summary>
    [Input("from", "From this day on", Unit = "d", Low = 0, High = 3660)]
    public required double FromDay { get; init; }

    /// <summary>Cells sown each time.</summary>
    [Input("sow", "Cells sown each time", Low = 0, High = 100000)]
    public required int CellsPerSowing { get; init; }

    /// <summary>Boards a week.</summary>
    [Input("boardsPerWeek", "Boards harvested and planted anew a week", Unit = "1", Low = 0, High = 1000)]
    public required double BoardsPerWeek { get; init; }
}
