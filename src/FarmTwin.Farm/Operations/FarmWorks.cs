using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>All the work of the farm, and what befalls it. Every work is listed here, once.</summary>
internal sealed class FarmWorks
{
    public FarmWorks(FarmContext farm, FarmLog log, PlantProcess plants, ProbeProcess probes)
    {
        Market = new Market(farm, log);
        Bookkeeping = new Bookkeeping(farm);
        Rounds = new Rounds(farm, log);
        Feeding = new FeedingWork(farm, log);
        Trade = new FishTrade(farm, log, Market);
        Arrivals = new FishArrivals(farm, log);
        var changes = new WaterChanges(farm, log);
        Quarantine = new QuarantineCare(farm, log, changes);
        Mineralizers = new MineralizerCare(farm, log);
        Filters = new FilterCare(farm, log, Mineralizers);
        Mishaps = new Mishaps(farm, log, Feeding, Filters, Mineralizers, changes);
        Crops = new CropWork(farm, log, plants);
        Beds = new BedWork(farm, log, plants, Market);
        Fuel = new FuelWork(farm, log);
        Lanes = new LaneWork(farm, log, plants, Market);
        Frost = new FrostWork(farm, log, plants);
        SeedBeds = new SeedBedRound(farm, log);
        Microgreens = new MicrogreenWork(farm, log, plants, Market);
        Dosing = new DosingWork(farm, log);
        Leaves = new NutrientWatch(farm, log);
        StartUp = new StartUpWork(farm, log, Dosing);
        Coupling = new CouplingWork(farm, log, Trade);
        Faults = new FaultWork(farm, log, new BackupWork(farm, log));
        Alarms = new AlarmWork(farm, log, probes, Coupling, Faults);
        Chores = new Chores(farm, log, Alarms.People, Dosing);
        Planned = new PlannedWork(farm, log, Dosing, Trade, Faults, Beds, Arrivals, changes, Mishaps, Coupling);
    }

    public Market Market { get; }

    public Bookkeeping Bookkeeping { get; }

    public Rounds Rounds { get; }

    public FeedingWork Feeding { get; }

    public FishTrade Trade { get; }

    public FishArrivals Arrivals { get; }

    public QuarantineCare Quarantine { get; }

    public Mishaps Mishaps { get; }

    public MineralizerCare Mineralizers { get; }

    public FilterCare Filters { get; }

    public CropWork Crops { get; }

    public BedWork Beds { get; }

    public FuelWork Fuel { get; }

    public LaneWork Lanes { get; }

    public FrostWork Frost { get; }

    public MicrogreenWork Microgreens { get; }

    public SeedBedRound SeedBeds { get; }

    public DosingWork Dosing { get; }

    public NutrientWatch Leaves { get; }

    public StartUpWork StartUp { get; }

    public CouplingWork Coupling { get; }

    public FaultWork Faults { get; }

    public PlannedWork Planned { get; }

    public AlarmWork Alarms { get; }

    public Chores Chores { get; }
}
