using FarmTwin.Farm.Description;

namespace FarmTwin.Scenarios.Tests.Sample;

/// <summary>A description with every kind of property that a scenario may state.</summary>
public sealed record SampleFarm
{
    [Input("name", "What the farm is called.")]
    public required string Name { get; init; }

    [Input("start", "The first day.")]
    public required DateOnly Start { get; init; }

    [Input("site", "Where it stands.")]
    public SampleSite? Site { get; init; }

    [Input("basins", "Bodies of water.")]
    public required IReadOnlyDictionary<string, SampleBasin> Basins { get; init; }

    [Input("plan", "What is done.")]
    public IReadOnlyDictionary<string, SampleItem> Plan { get; init; } = new Dictionary<string, SampleItem>();

    [Input("prices", "What things cost.")]
    public SamplePrices Prices { get; init; } = new(0.5);

    [Input("shares", "Share of the area for each crop.", Unit = "1", Low = 0, High = 1, LibraryFolder = "crops")]
    public IReadOnlyDictionary<string, double> Shares { get; init; } = new Dictionary<string, double>();

    [Input("notes", "Free words.")]
    public IReadOnlyList<string> Notes { get; init; } = [];

    [Input("decoupled", "Whether the loops run apart.")]
    public bool Decoupled { get; init; } = true;
}

public sealed record SampleSite
{
    [Input("latitude", "Degrees north.", Unit = "°", Low = -66, High = 66)]
    public required double LatitudeDegrees { get; init; }

    [Input("normals", "Monthly mean temperature.", Unit = "°C", Low = -40, High = 50, Length = 12)]
    public IReadOnlyList<double> NormalsCelsius { get; init; } = [];

    [Input("cover", "What lies over it.")]
    public SampleCover Cover { get; init; } = SampleCover.DoubleFilm;
}

public enum SampleCover
{
    Glass,
    DoubleFilm,
    TwinWallSheet,
}

public sealed record SampleBasin
{
    [Input("volume", "Water held.", Unit = "L", Low = 1, High = 1e6)]
    public required double VolumeLitres { get; init; }

    [Input("surface", "Open surface.", Unit = "m2", Low = 0)]
    public double SurfaceSquareMetres { get; init; } = 1.5;

    [Input("temperature", "First temperature.", Unit = "°C", Low = 0, High = 45)]
    public double TemperatureCelsius { get; init; } = 25;

    [Input("deadband", "Allowed difference.", Unit = "K", Low = 0, High = 20)]
    public double? DeadbandKelvin { get; init; }

    [Input("nitrate", "First nitrate.", Unit = "mg N/L", Low = 0)]
    public double NitrateMilligramsNPerLitre { get; init; }

    [Input("drainsTo", "Where its overflow goes.", Of = "basins")]
    public string? DrainsTo { get; init; }

    [Input("feeds", "Basins that it feeds.", Of = "basins")]
    public IReadOnlyList<string> Feeds { get; init; } = [];
}

public abstract record SampleItem
{
    [Input("on", "The day.")]
    public required DateOnly On { get; init; }

    [Input("at", "The time of day.")]
    public TimeOnly At { get; init; } = new(8, 0);
}

[Kind("stock", "Puts fish into a basin.")]
public sealed record SampleStock : SampleItem
{
    [Input("basin", "Where.", Of = "basins")]
    public required string Basin { get; init; }

    [Input("species", "Which.", LibraryFolder = "fish")]
    public required string Species { get; init; }

    [Input("number", "How many.", Unit = "fish", Low = 1, High = 100000)]
    public required int Number { get; init; }

    [Input("weight", "Mean weight.", Unit = "g", Low = 0.1, High = 5000)]
    public double WeightGrams { get; init; } = 20;
}

[Kind("sow", "Sows a crop.")]
public sealed record SampleSow : SampleItem
{
    [Input("crop", "Which.", LibraryFolder = "crops")]
    public required string Crop { get; init; }

    [Input("density", "Plants at final spacing.", Unit = "plants/m2", Low = 1, High = 2000)]
    public double PlantsPerSquareMetre { get; init; } = 25;

    [Input("every", "How often.", Unit = "d", Low = 1)]
    public int? EveryDays { get; init; }
}

/// <summary>A positional record: what has no default must be given.</summary>
public sealed record SamplePrices(
    [property: Input("water", "Water.", Unit = "money/L", Low = 0)] double WaterPerLitre,
    [property: Input("wage", "An hour of work.", Unit = "money/h", Low = 0)] double WagePerHour = 18);
