using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Energy;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>What does not change in a season: the parts of the farm by number, and the parameters of their processes.</summary>
/// <remarks>Immutable after construction; shared by the snapshots and branches of a season, not between threads that build them.</remarks>
public sealed class FarmParts
{
    private readonly int[] _laneCrop;
    private readonly (double FromDay, int Crop)[][] _laneChanges;

    /// <summary>Numbers the parts and reads their parameters.</summary>
    /// <param name="farm">The description.</param>
    /// <param name="library">The parameter library.</param>
    /// <exception cref="DescriptionException">The parts do not fit together.</exception>
    public FarmParts(FarmDescription farm, FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(library);
        Farm = farm;
        BasinNames = [.. farm.Basins.Keys];
        Basins = [.. farm.Basins.Values];
        Filters = [.. farm.Filters.Values];
        FilterNames = [.. farm.Filters.Keys];
        FilterBasin = [.. Filters.Select(f => BasinIndex(f.Basin))];
        FilterMedia = [.. Filters.Select(f => SurfaceMedium.From(library.Set("media", f.Medium)))];
        Mineralizers = [.. farm.Mineralizers.Values];
        MineralizerBasin = [.. Mineralizers.Select(m => BasinIndex(m.Basin))];
        Heaters = [.. farm.WaterHeaters.Values];
        HeaterBasin = [.. Heaters.Select(h => BasinIndex(h.Basin))];
        Stocking = [.. farm.Stocking.Values];
        StockingNames = [.. farm.Stocking.Keys];
        (string Fish, double StrainRate)[] strains = [.. Stocking.Select(s => (s.Fish, s.StrainRate)).Distinct()];
        SpeciesNames = [.. Stocking.Select(s => s.Fish).Distinct()];
        ProductOfSpecies = [.. strains.Select(s => Array.IndexOf(SpeciesNames, s.Fish))];
        SpeciesSets = [.. strains.Select(s => library.Set("fish", s.Fish))];
        Species = [.. strains.Select((s, i) => FishParameters.From(SpeciesSets[i], strainRate: s.StrainRate))];
        SpeciesOfStocking = [.. Stocking.Select(s => Array.IndexOf(strains, (s.Fish, s.StrainRate)))];
        Feed = FeedComposition.From(library.Set("feeds", farm.Feeding.Feed));
        FeedOfStocking = [.. Stocking.Select(s => s.Feed is { } own ? FeedComposition.From(library.Set("feeds", own)) : Feed)];
        FeedNames = [farm.Feeding.Feed, .. Stocking.Select(s => s.Feed).OfType<string>().Where(f => f != farm.Feeding.Feed).Distinct()];
        FeedIndexOfStocking = [.. Stocking.Select(s => s.Feed is { } own ? Array.IndexOf(FeedNames, own) : 0)];
        Quarantines = [.. farm.Quarantines.Values];
        QuarantineNames = [.. farm.Quarantines.Keys];
        QuarantineBasin = [.. Quarantines.Select(q => BasinIndex(q.Basin))];
        Algae = AlgaeParameters.From(library.Set("processes", "algae"));
        Husbandry = HusbandryParameters.From(library.Set("processes", "husbandry"));
        CropNames = [.. farm.Crops.Keys];
        CropPlans = [.. farm.Crops.Values];
        MicrogreenNames = [.. farm.Microgreens.Keys];
        MicrogreenPlans = [.. farm.Microgreens.Values];
        Microgreens = [.. MicrogreenPlans.Select(m => MicrogreenParameters.From(library.Set("microgreens", m.Kind)))];
        Crops =
        [
            .. CropPlans.Select(c => CropParameters.From(library.Set("crops", c.Kind))),
            .. Microgreens.Select(m => m.Growth),
        ];
        Beds = [.. farm.MediaBeds.Values];
        BedNames = [.. farm.MediaBeds.Keys];
        LaneBasin = [.. farm.Lanes.Values.Select(l => BasinIndex(l.Basin))];
        TroughBasin = [.. farm.Troughs.Values.Select(t => BasinIndex(t.Basin))];
        BedBasin = [.. Beds.Select(b => BasinIndex(b.Basin))];
        BedMedia = [.. Beds.Select(b => SurfaceMedium.From(library.Set("media", b.Medium)))];
        BedCrop = [.. Beds.Select(b => CropIndex(b.Crop))];
        BedParameters = BedParameters.From(library.Set("processes", "beds"));
        Plantings = [.. CropPlans.SelectMany((plan, crop) => plan.Plantings.Values.Select(p => new Planting(crop, p, BedsOf(crop, p))))];
        Tiers = new NurseryTiers(farm.Nursery);
        Lanes = [.. farm.Lanes.Values];
        _laneCrop = [.. Lanes.Select(l => Array.IndexOf(CropNames, l.Crop))];
        _laneChanges = [.. Lanes.Select(l => l.Changes.Values.OrderBy(c => c.FromDay).Select(c => (c.FromDay, Array.IndexOf(CropNames, c.Crop))).ToArray())];
        Schedules = [.. Enumerable.Range(0, CropPlans.Length).Select(c => new CropSchedule(this, c))];
        var graded = library.Names("grades").ToHashSet(StringComparer.Ordinal);
        Grades = [.. CropPlans.Select(c => graded.Contains(c.Kind) ? CropGrades.From(library.Set("grades", c.Kind)) : null)];
        Cover = library.Set("covers", farm.House.Cover);
        Climate = ClimateParameters.From(library.Set("processes", "climate"));
        Aeration = AerationParameters.From(library.Set("processes", "water"));
        Minerals = MineralParameters.From(library.Set("processes", "water"));
        Dosing = DosingParameters.From(library.Set("processes", "water"));
        Nitrification = NitrificationParameters.From(library.Set("processes", "nitrification"));
        Solids = SolidsParameters.From(library.Set("processes", "solids"));
        Mineralization = MineralizationParameters.From(library.Set("processes", "mineralization"));
        Plants = PlantParameters.From(library.Set("processes", "plants"));
        Practice = PracticeParameters.From(library.Set("processes", "practice"));
        Faults = FaultParameters.From(library.Set("processes", "faults"));
        RootSurface = SurfaceMedium.From(library.Set("media", "roots"));
        HeaterFuel = [.. Heaters.Select(h => FuelProperties.From(library.Set("fuels", h.Fuel)))];
        HeaterSource = [.. Heaters.Select((h, i) => UsualSource(h.Fuel, HeaterFuel[i], h.Efficiency, water: true))];
        AirHeaterFuel = farm.House.AirHeater is { } air ? FuelProperties.From(library.Set("fuels", air.Fuel)) : null;
        AirHeaterSource = AirHeaterFuel is null ? null : UsualSource(farm.House.AirHeater!.Fuel, AirHeaterFuel, farm.House.AirHeater.Efficiency, water: false);
        FuelProperties pump = FuelProperties.From(library.Set("fuels", "electricity-heat-pump"));
        WaterHeatPump = UsualSource("electricity-heat-pump", pump, null, water: true);
        AirHeatPump = UsualSource("electricity-heat-pump", pump, null, water: false);
        FuelTanks = [.. farm.FuelTanks.Select(t => FuelTank.Of(t.Key, t.Value, farm, library))];
        HeaterTank = [.. farm.WaterHeaters.Keys.Select(h => Array.FindIndex(FuelTanks, t => t.Description.WaterHeaters.Contains(h)))];
        AirHeaterTank = Array.FindIndex(FuelTanks, t => t.Description.AirHeater);
        Supplements = library.Names("supplements").ToDictionary(n => n, n => Supplement.From(library.Set("supplements", n)), StringComparer.Ordinal);
        PressureAtmospheres = OxygenSaturation.PressureAtmospheres(farm.Site.ElevationMetres);
        SourceWater = SourceWaterComposition.Of(farm.SourceWater);
        BedChecks.Check(this);
        ChoreTimes = ChoreTimes.From(library.Set("processes", "labour"));
        Products = new Products(
            SpeciesNames,
            [.. CropNames.Select((n, c) => (n, Crops[c].Fruit is null ? "heads" : "kg")), .. MicrogreenNames.Select(n => (n, "trays"))],
            farm.Prices,
            [.. library.Names("fish"), .. library.Names("crops"), .. library.Names("microgreens")]);
        Accounts = new Accounts(this);

        // Every stated price, also of a fuel that is only compared at the season's end: a wrong one is refused before the season, not after.
        foreach (string fuel in farm.Prices?.Fuels.Keys ?? [])
        {
            Accounts.PriceOfFuel(farm.Prices!, fuel, FuelProperties.From(library.Set("fuels", fuel)));
        }

        Alarms = new AlarmParts(farm, library, BasinIndex);
    }

    /// <summary>The description.</summary>
    public FarmDescription Farm { get; }

    /// <summary>Names of the basins.</summary>
    public string[] BasinNames { get; }

    /// <summary>Basins.</summary>
    public BasinDescription[] Basins { get; }

    /// <summary>Bead filters.</summary>
    public BeadFilterDescription[] Filters { get; }

    /// <summary>Names of the bead filters.</summary>
    public string[] FilterNames { get; }

    /// <summary>The basin of each filter.</summary>
    public int[] FilterBasin { get; }

    /// <summary>The medium of each filter.</summary>
    public SurfaceMedium[] FilterMedia { get; }

    /// <summary>Mineralization tanks.</summary>
    public MineralizerDescription[] Mineralizers { get; }

    /// <summary>The basin of each mineralization tank.</summary>
    public int[] MineralizerBasin { get; }

    /// <summary>Water heaters.</summary>
    public WaterHeaterDescription[] Heaters { get; }

    /// <summary>The basin of each heater.</summary>
    public int[] HeaterBasin { get; }

    /// <summary>The fuel of each heater.</summary>
    public FuelProperties[] HeaterFuel { get; }

    /// <summary>Each heater as the bill sees it.</summary>
    public HeatSource[] HeaterSource { get; }

    /// <summary>The air heater as the bill sees it.</summary>
    public HeatSource? AirHeaterSource { get; }

    /// <summary>A heat pump for the same water, to compare with.</summary>
    public HeatSource WaterHeatPump { get; }

    /// <summary>A heat pump for the same air, to compare with.</summary>
    public HeatSource AirHeatPump { get; }

    /// <summary>Fuel tanks.</summary>
    public FuelTank[] FuelTanks { get; }

    /// <summary>The tank of each water heater; -1 where its fuel never runs short.</summary>
    public int[] HeaterTank { get; }

    /// <summary>The tank of the air heater, or -1.</summary>
    public int AirHeaterTank { get; }

    /// <summary>The fuel of the air heater.</summary>
    public FuelProperties? AirHeaterFuel { get; }

    /// <summary>Planned batches of fish.</summary>
    public StockingDescription[] Stocking { get; }

    /// <summary>Their names.</summary>
    public string[] StockingNames { get; }

    /// <summary>Names of the fish, each once: the first products.</summary>
    public string[] SpeciesNames { get; }

    /// <summary>The product as which each species is sold.</summary>
    public int[] ProductOfSpecies { get; }

    /// <summary>The library's file of each species.</summary>
    public ParameterSet[] SpeciesSets { get; }

    /// <summary>Species, each with the strain rate of the batches it stands for.</summary>
    public FishParameters[] Species { get; }

    /// <summary>The species of each batch.</summary>
    public int[] SpeciesOfStocking { get; }

    /// <summary>The farm's feed.</summary>
    public FeedComposition Feed { get; }

    /// <summary>The feed of each batch.</summary>
    public FeedComposition[] FeedOfStocking { get; }

    /// <summary>Names of all feeds, the farm's usual one first.</summary>
    public string[] FeedNames { get; }

    /// <summary>Which of them each batch eats.</summary>
    public int[] FeedIndexOfStocking { get; }

    /// <summary>Quarantine tanks.</summary>
    public QuarantineDescription[] Quarantines { get; }

    /// <summary>Their names.</summary>
    public string[] QuarantineNames { get; }

    /// <summary>Their basins.</summary>
    public int[] QuarantineBasin { get; }

    /// <summary>Numbers of algae on water in the light.</summary>
    public AlgaeParameters Algae { get; }

    /// <summary>Numbers of quarantine, moves, mishaps and welfare.</summary>
    public HusbandryParameters Husbandry { get; }

    /// <summary>Names of the crops, as the farm calls them.</summary>
    public string[] CropNames { get; }

    /// <summary>Plans of the crops.</summary>
    public CropPlanDescription[] CropPlans { get; }

    /// <summary>Parameters of all that grows: the crops, then the kinds of microgreens.</summary>
    public CropParameters[] Crops { get; }

    /// <summary>Media beds.</summary>
    public MediaBedDescription[] Beds { get; }

    /// <summary>Names of the media beds.</summary>
    public string[] BedNames { get; }

    /// <summary>Basin of each lane.</summary>
    public int[] LaneBasin { get; }

    /// <summary>Basin of each trough.</summary>
    public int[] TroughBasin { get; }

    /// <summary>The basin of each bed.</summary>
    public int[] BedBasin { get; }

    /// <summary>The medium of each bed.</summary>
    public SurfaceMedium[] BedMedia { get; }

    /// <summary>The crop of each bed.</summary>
    public int[] BedCrop { get; }

    /// <summary>What all media beds share.</summary>
    public BedParameters BedParameters { get; }

    /// <summary>All plantings of fruiting crops.</summary>
    public Planting[] Plantings { get; }

    /// <summary>Names of the microgreens, as the farm calls them.</summary>
    public string[] MicrogreenNames { get; }

    /// <summary>Plans of the microgreens.</summary>
    public MicrogreenPlanDescription[] MicrogreenPlans { get; }

    /// <summary>Parameters of the microgreens.</summary>
    public MicrogreenParameters[] Microgreens { get; }

    /// <summary>Raft lanes.</summary>
    public LaneDescription[] Lanes { get; }

    /// <summary>Sowing and harvest of each crop by date.</summary>
    public CropSchedule[] Schedules { get; }

    /// <summary>Grades of the crops; none for a crop without a file.</summary>
    public CropGrades?[] Grades { get; }

    /// <summary>Tiers of the nursery.</summary>
    public NurseryTiers Tiers { get; }

    /// <summary>Cover of the house.</summary>
    public ParameterSet Cover { get; }

    /// <summary>Climate parameters.</summary>
    public ClimateParameters Climate { get; }

    /// <summary>Aeration parameters.</summary>
    public AerationParameters Aeration { get; }

    /// <summary>Parameters of dissolving and precipitating minerals.</summary>
    public MineralParameters Minerals { get; }

    /// <summary>Dosing parameters.</summary>
    public DosingParameters Dosing { get; }

    /// <summary>Nitrification parameters.</summary>
    public NitrificationParameters Nitrification { get; }

    /// <summary>Solids parameters.</summary>
    public SolidsParameters Solids { get; }

    /// <summary>Mineralization parameters.</summary>
    public MineralizationParameters Mineralization { get; }

    /// <summary>Plant parameters.</summary>
    public PlantParameters Plants { get; }

    /// <summary>Parameters of the daily practice.</summary>
    public PracticeParameters Practice { get; }

    /// <summary>Parameters of faults and their repair.</summary>
    public FaultParameters Faults { get; }

    /// <summary>Film surface of roots.</summary>
    public SurfaceMedium RootSurface { get; }

    /// <summary>Supplements by name.</summary>
    public IReadOnlyDictionary<string, Supplement> Supplements { get; }

    /// <summary>Air pressure, atm.</summary>
    public double PressureAtmospheres { get; }

    /// <summary>What a litre of source water carries.</summary>
    public SourceWaterComposition SourceWater { get; }

    /// <summary>Minutes of a person by chore.</summary>
    public ChoreTimes ChoreTimes { get; }

    /// <summary>What the farm sells.</summary>
    public Products Products { get; }

    /// <summary>The accounts of its money.</summary>
    public Accounts Accounts { get; }

    /// <summary>The beds that a planting of a crop fills.</summary>
    public int[] BedsOf(int crop, PlantingDescription planting)
    {
        ArgumentNullException.ThrowIfNull(planting);
        return planting.Beds is { } names
            ? [.. names.Select(n => Array.IndexOf(BedNames, n) is >= 0 and var bed
                ? bed
                : throw new DescriptionException($"There is no media bed '{n}'. There are: {string.Join(", ", BedNames)}."))]
            : [.. Enumerable.Range(0, Beds.Length).Where(b => BedCrop[b] == crop)];
    }

    private int CropIndex(string name) => Array.IndexOf(CropNames, name) is >= 0 and var index
        ? index
        : throw new DescriptionException($"There is no crop '{name}'. There are: {string.Join(", ", CropNames)}.");

    /// <summary>Probes, alarms and people.</summary>
    public AlarmParts Alarms { get; }

    private HeatSource UsualSource(string name, FuelProperties fuel, double? efficiency, bool water)
    {
        var usual = HeatSource.Usual(name, fuel, water, Climate.Machines);
        return usual with { Efficiency = efficiency ?? usual.Efficiency };
    }

    /// <summary>The crop that is planted on a lane on a day.</summary>
    public int LaneCropAt(int lane, double day)
    {
        int crop = _laneCrop[lane];
        foreach ((double from, int changed) in _laneChanges[lane])
        {
            crop = from <= day ? changed : crop;
        }

        return crop;
    }

    /// <summary>Whether a crop is ever planted on a lane.</summary>
    public bool LaneEverGrows(int lane, int crop) => _laneCrop[lane] == crop || _laneChanges[lane].Any(c => c.Crop == crop);

    /// <summary>The number of a basin.</summary>
    public int BasinIndex(string name) => Array.IndexOf(BasinNames, name) is >= 0 and var index
        ? index
        : throw new DescriptionException($"There is no basin '{name}'. There are: {string.Join(", ", BasinNames)}.");
}

/// <summary>One planting of a fruiting crop.</summary>
/// <param name="Crop">Index of the crop.</param>
/// <param name="Plan">When it is set out and cleared.</param>
/// <param name="Beds">The beds it fills.</param>
public sealed record Planting(int Crop, PlantingDescription Plan, int[] Beds);
