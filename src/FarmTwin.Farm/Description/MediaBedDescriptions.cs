namespace FarmTwin.Farm.Description;

/// <summary>A media bed: fruiting and long crops in gravel or expanded clay, with standing water below its surface.</summary>
public sealed record MediaBedDescription
{
    /// <summary>Its basin.</summary>
    [Input("basin", "Its basin, of the use media-bed; no other bed has it", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Area, m².</summary>
    [Input("area", "Area of the bed", Unit = "m2", Low = 0.05, High = 1000)]
    public required double AreaSquareMetres { get; init; }

    /// <summary>Depth of the medium, m.</summary>
    [Input("depth", "Depth of the medium", Unit = "m", Low = 0.1, High = 1)]
    public double DepthMetres { get; init; } = 0.3;

    /// <summary>Medium.</summary>
    [Input("medium", "The medium", LibraryFolder = "media")]
    public string Medium { get; init; } = "expanded-clay";

    /// <summary>The crop.</summary>
    [Input("crop", "The fruiting crop that it grows", Of = "crops")]
    public required string Crop { get; init; }

    /// <summary>Plants per m²; the crop's usual number when left out.</summary>
    [Input("density", "Plants on a square metre; the crop's usual number when left out", Unit = "plants/m2", Low = 0.2, High = 50)]
    public double? PlantsPerSquareMetre { get; init; }

    /// <summary>Standing water below the surface at planting, m. Two inches is common practice, no source.</summary>
    [Input("waterBelowAtPlanting", "Standing water below the surface of the medium at planting", Unit = "m", Low = 0, High = 1)]
    public double WaterBelowAtPlantingMetres { get; init; } = 0.05;

    /// <summary>Standing water below the surface once roots are down, m. A few inches is common practice, no source.</summary>
    [Input("waterBelowRooted", "Standing water below the surface of the medium once roots are down", Unit = "m", Low = 0, High = 1)]
    public double WaterBelowRootedMetres { get; init; } = 0.09;

    /// <summary>Days from planting over which the water is lowered.</summary>
    [Input("lowerOver", "Time from planting over which the water is lowered as roots go down", Unit = "d", Low = 1, High = 120)]
    public double LowerOverDays { get; init; } = 21;
}

/// <summary>One planting of a fruiting crop: sown ahead, set out, picked, cleared.</summary>
public sealed record PlantingDescription
{
    /// <summary>The day of setting out, from day 0.</summary>
    [Input("setOut", "The day the plants are set out, from day 0; they are sown the crop's nursery time before", Unit = "d", Low = 0, High = 3660)]
    public required double SetOutDay { get; init; }

    /// <summary>The day the growing tips are taken off; never when left out.</summary>
    [Input("top", "The day the growing tips are taken off, so that what hangs can ripen before clearing; never when left out", Unit = "d", Low = 0, High = 3660)]
    public double? TopDay { get; init; }

    /// <summary>The day the old plants go to compost; never when left out.</summary>
    [Input("clear", "The day of the last pick, when the old plants go to compost; not in this season when left out", Unit = "d", Low = 0, High = 3660)]
    public double? ClearDay { get; init; }

    /// <summary>The beds; all of the crop when left out.</summary>
    [Input("beds", "The beds; all beds of the crop when left out", Of = "mediaBeds")]
    public IReadOnlyList<string>? Beds { get; init; }

    /// <summary>Seeds sown beyond the places.</summary>
    [Input("spare", "Cells sown beyond the places, as a share of them", Unit = "1", Low = 0, High = 5)]
    public double SpareShare { get; init; } = 0.35;
}
