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

    /// <summary>Other crops planted on it from a day on, by name.</summary>
    [Input("changes", "Another crop planted on it from a day on; what stands goes out first in, first out")]
    public IReadOnlyDictionary<string, LaneChange> Changes { get; init; } = new Dictionary<string, LaneChange>();
}

/// <summary>From a day on, another crop is planted on a lane.</summary>
public sealed record LaneChange
{
    /// <summary>From this day.</summary>
    [Input("from", "From this day on", Unit = "d", Low = 0, High = 3660)]
    public required double FromDay { get; init; }

    /// <summary>The crop.</summary>
    [Input("crop", "The crop planted from then on", Of = "crops")]
    public required string Crop { get; init; }
}

/// <summary>How one crop is sown, moved on and harvested.</summary>
public sealed record CropPlanDescription
{
    /// <summary>Library crop.</summary>
    [Input("kind", "The crop in the library", LibraryFolder = "crops")]
    public required string Kind { get; init; }

    /// <summary>Heads wanted for the market a week; sowing and boards are worked out from it.</summary>
    [Input("headsPerWeek", "Heads wanted for the market a week; states the plan instead of 'sow' and 'boardsPerWeek'", Unit = "1", Low = 0, High = 100000)]
    public double? HeadsPerWeek { get; init; }

    /// <summary>Cells sown each time; null where the heads a week are stated.</summary>
    [Input("sow", "Cells sown each time; a fruiting crop has plantings instead", Low = 0, High = 100000)]
    public int? CellsPerSowing { get; init; }

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

    /// <summary>Boards harvested and replanted a week; null where the heads a week are stated.</summary>
    [Input("boardsPerWeek", "Boards harvested and planted anew a week, over all its lanes; a fruiting crop has plantings instead", Unit = "1", Low = 0, High = 1000)]
    public double? BoardsPerWeek { get; init; }

    /// <summary>Least days on the lane before a board is harvested.</summary>
    [Input("leastLaneTime", "A board is harvested after at least", Unit = "d", Low = 0, High = 200)]
    public double LeastLaneDays { get; init; } = 18;

    /// <summary>A board waits until its heads weigh this much, g; the low end of the crop's saleable band when left out.</summary>
    [Input("leastWeight", "A board waits until its heads weigh this much; the low end of the crop's saleable band when left out", Unit = "g", Low = 0, High = 5000)]
    public double? LeastWeightGrams { get; init; }

    /// <summary>Heaviest head that sells as one first-grade head, g; the crop's when left out.</summary>
    [Input("heaviestFirst", "Heaviest head that sells as one first-grade head; the crop's when left out", Unit = "g", Low = 1, High = 10000)]
    public double? HeaviestFirstGrams { get; init; }

    /// <summary>Cuts of a board before it is planted anew: 1 for heads.</summary>
    [Input("cuts", "Cuts of a board before it is planted anew: 1 for heads, more for leaves that grow again", Low = 1, High = 12)]
    public int Cuts { get; init; } = 1;

    /// <summary>Days between cuts.</summary>
    [Input("regrow", "Least time between cuts", Unit = "d", Low = 5, High = 90)]
    public double RegrowDays { get; init; } = 21;

    /// <summary>Share of the shoot taken by a cut that is not the last.</summary>
    [Input("cutShare", "Share of the shoot taken by a cut that is not the last", Unit = "1", Low = 0.1, High = 0.95)]
    public double CutShare { get; init; } = 0.7;

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

    /// <summary>Heads wanted for the market a week, from this day at the market.</summary>
    [Input("headsPerWeek", "Heads wanted for the market a week from this day on; sowing follows as much earlier as the crop takes", Unit = "1", Low = 0, High = 100000)]
    public double? HeadsPerWeek { get; init; }

    /// <summary>Cells sown each time.</summary>
    [Input("sow", "Cells sown each time", Low = 0, High = 100000)]
    public int? CellsPerSowing { get; init; }

    /// <summary>Boards a week.</summary>
    [Input("boardsPerWeek", "Boards harvested and planted anew a week", Unit = "1", Low = 0, High = 1000)]
    public double? BoardsPerWeek { get; init; }
}
