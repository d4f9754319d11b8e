namespace FarmTwin.Farm.Description;

/// <summary>A whole farm and the plan of its season, as its user describes them: plain values in fixed units.</summary>
/// <remarks>Immutable. It says what there is and what is intended; what happens is computed by a season.</remarks>
public sealed record FarmDescription
{
    /// <summary>Name shown on every output.</summary>
    [Input("title", "Name shown on every output")]
    public required string Title { get; init; }

    /// <summary>What this scenario is for.</summary>
    [Input("about", "What this scenario is for, in a sentence or two")]
    public string About { get; init; } = string.Empty;

    /// <summary>Day 0 of the season; midnight of local standard time.</summary>
    [Input("start", "Day 0 of the season, as year-month-day")]
    public required DateOnly Start { get; init; }

    /// <summary>Length of the season, days.</summary>
    [Input("length", "Length of the season", Unit = "d", Low = 1, High = 3660)]
    public double LengthDays { get; init; } = 365;

    /// <summary>Seed of all chance.</summary>
    [Input("seed", "Seed of all chance: the same seed gives the same season", Low = 0)]
    public int Seed { get; init; } = 1;

    /// <summary>Longest step, minutes.</summary>
    [Input("step", "Longest step of the clock", Unit = "min", Low = 1, High = 60)]
    public double StepMinutes { get; init; } = 60;

    /// <summary>Where the farm stands.</summary>
    [Input("site", "Where the farm stands, and its weather")]
    public required SiteDescription Site { get; init; }

    /// <summary>The house over it.</summary>
    [Input("house", "The house over the farm")]
    public required HouseDescription House { get; init; }

    /// <summary>Water that fills and tops up.</summary>
    [Input("sourceWater", "The water that fills and tops up the farm")]
    public required SourceWaterDescription SourceWater { get; init; }

    /// <summary>Bodies of water by name.</summary>
    [Input("basins", "Bodies of water")]
    public required IReadOnlyDictionary<string, BasinDescription> Basins { get; init; }

    /// <summary>Pipes by name.</summary>
    [Input("pipes", "Pipes between basins, pumped or overflowing")]
    public IReadOnlyDictionary<string, PipeDescription> Pipes { get; init; } = new Dictionary<string, PipeDescription>();

    /// <summary>Valves by name.</summary>
    [Input("valves", "Valves that divert an overflow; closed unless the plan opens them")]
    public IReadOnlyDictionary<string, ValveDescription> Valves { get; init; } = new Dictionary<string, ValveDescription>();

    /// <summary>Blowers by name.</summary>
    [Input("blowers", "Blowers that feed the diffusers of basins")]
    public IReadOnlyDictionary<string, BlowerDescription> Blowers { get; init; } = new Dictionary<string, BlowerDescription>();

    /// <summary>Backups by name.</summary>
    [Input("backups", "What steps in when the mains fail: battery air, generator, oxygen")]
    public IReadOnlyDictionary<string, BackupDescription> Backups { get; init; } = new Dictionary<string, BackupDescription>();

    /// <summary>Bead filters by name.</summary>
    [Input("filters", "Bead filters: capture of solids and nitrification on one bed")]
    public IReadOnlyDictionary<string, BeadFilterDescription> Filters { get; init; } = new Dictionary<string, BeadFilterDescription>();

    /// <summary>Mineralization tanks by name.</summary>
    [Input("mineralizers", "Tanks in which the solids are mineralized and given back")]
    public IReadOnlyDictionary<string, MineralizerDescription> Mineralizers { get; init; } = new Dictionary<string, MineralizerDescription>();

    /// <summary>Quarantine tanks by name.</summary>
    [Input("quarantines", "Tanks in which new fish are watched before they join the others")]
    public IReadOnlyDictionary<string, QuarantineDescription> Quarantines { get; init; } = new Dictionary<string, QuarantineDescription>();

    /// <summary>Water heaters by name.</summary>
    [Input("waterHeaters", "Heaters of the water")]
    public IReadOnlyDictionary<string, WaterHeaterDescription> WaterHeaters { get; init; } = new Dictionary<string, WaterHeaterDescription>();

    /// <summary>Fuel tanks by name.</summary>
    [Input("fuelTanks", "Tanks of fuel that is delivered; a heater that burns from none never runs short")]
    public IReadOnlyDictionary<string, FuelTankDescription> FuelTanks { get; init; } = new Dictionary<string, FuelTankDescription>();

    /// <summary>Lamps on rails by name.</summary>
    [Input("lamps", "Lamps that travel over the raft lanes")]
    public IReadOnlyDictionary<string, LampDescription> Lamps { get; init; } = new Dictionary<string, LampDescription>();

    /// <summary>The nursery, if any.</summary>
    [Input("nursery", "Tiers of trays in which seedlings are raised under lamps")]
    public NurseryDescription? Nursery { get; init; }

    /// <summary>Transplant troughs by name.</summary>
    [Input("troughs", "Dense rafts where seedlings stand before final spacing")]
    public IReadOnlyDictionary<string, TroughDescription> Troughs { get; init; } = new Dictionary<string, TroughDescription>();

    /// <summary>Raft lanes by name.</summary>
    [Input("lanes", "Raft lanes worked like a conveyor, strictly first in, first out")]
    public IReadOnlyDictionary<string, LaneDescription> Lanes { get; init; } = new Dictionary<string, LaneDescription>();

    /// <summary>Media beds by name.</summary>
    [Input("mediaBeds", "Media beds for fruiting crops: medium, water height, plants")]
    public IReadOnlyDictionary<string, MediaBedDescription> MediaBeds { get; init; } = new Dictionary<string, MediaBedDescription>();

    /// <summary>Crops grown, by name.</summary>
    [Input("crops", "Crops grown: sowing, places and harvest of each")]
    public IReadOnlyDictionary<string, CropPlanDescription> Crops { get; init; } = new Dictionary<string, CropPlanDescription>();

    /// <summary>Microgreens grown on the nursery's tiers, by name.</summary>
    [Input("microgreens", "Microgreens grown for sale on tiers of the nursery: trays, days of sowing, time in the dark and in the light")]
    public IReadOnlyDictionary<string, MicrogreenPlanDescription> Microgreens { get; init; } = new Dictionary<string, MicrogreenPlanDescription>();

    /// <summary>Feeding rules.</summary>
    [Input("feeding", "How the fish are fed")]
    public FeedingDescription Feeding { get; init; } = new();

    /// <summary>Dosing rules by name.</summary>
    [Input("dosing", "Standing rules that keep a quantity of a basin by dosing supplements")]
    public IReadOnlyDictionary<string, DosingDescription> Dosing { get; init; } = new Dictionary<string, DosingDescription>();

    /// <summary>Ammonium dosing of the start.</summary>
    [Input("fishlessStart", "Ammonium dosing that brings the filter to life before any fish")]
    public FishlessStartDescription? FishlessStart { get; init; }

    /// <summary>When and how the two loops are joined.</summary>
    [Input("coupling", "When and how the two loops are joined")]
    public CouplingDescription? Coupling { get; init; }

    /// <summary>Planned batches of fish by name.</summary>
    [Input("stocking", "Batches of fish: when, how many, into which tank, sold how")]
    public IReadOnlyDictionary<string, StockingDescription> Stocking { get; init; } = new Dictionary<string, StockingDescription>();

    /// <summary>Probes by name.</summary>
    [Input("probes", "Probes that read the water and the air")]
    public IReadOnlyDictionary<string, ProbeDescription> Probes { get; init; } = new Dictionary<string, ProbeDescription>();

    /// <summary>Alarms by name.</summary>
    [Input("alarms", "Alarms on probes; what is left out of one is taken from the library's defaults")]
    public IReadOnlyDictionary<string, AlarmDescription> Alarms { get; init; } = new Dictionary<string, AlarmDescription>();

    /// <summary>The alarm box.</summary>
    [Input("alarmBox", "The box that sounds alarms, phones them out and closes the coupling valve")]
    public AlarmBoxDescription AlarmBox { get; init; } = new();

    /// <summary>People by name.</summary>
    [Input("people", "Who is on the farm when, and who is phoned; where nobody is described, work and alarms are seen to every morning")]
    public IReadOnlyDictionary<string, PersonDescription> People { get; init; } = new Dictionary<string, PersonDescription>();

    /// <summary>Dated events by name.</summary>
    [Input("plan", "Single dated events")]
    public IReadOnlyDictionary<string, PlannedEvent> Plan { get; init; } = new Dictionary<string, PlannedEvent>();

    /// <summary>Who works on the farm.</summary>
    [Input("labour", "Who works on the farm, and how long")]
    public LabourDescription? Labour { get; init; }

    /// <summary>Prices, demand and costs.</summary>
    [Input("prices", "What is sold, what is bought, and for how much")]
    public PricesDescription? Prices { get; init; }

    /// <summary>The currency of the prices, as its user wrote it ("USD"); filled in by the reader, empty where there are no prices.</summary>
    public string Currency { get; init; } = string.Empty;

    /// <summary>Overrides of library parameters.</summary>
    [Input("parameters", "Own values of library parameters, as 'process/name': number in the published unit")]
    public IReadOnlyDictionary<string, double> Parameters { get; init; } = new Dictionary<string, double>();
}
