using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>Farms of a few basins in the shipped house, with nothing else in them.</summary>
internal static class BareFarm
{
    /// <summary>Water, pipes and valves alone: no fish, plants, filter, heater, dosing, blower.</summary>
    public static FarmDescription Of(
        IReadOnlyDictionary<string, BasinDescription> basins,
        IReadOnlyDictionary<string, PipeDescription> pipes,
        params string[] valves) => Farms.FirstSeason with
        {
            Basins = basins,
            Pipes = pipes,
            Valves = valves.ToDictionary(v => v, _ => new ValveDescription(), StringComparer.Ordinal),
            Blowers = new Dictionary<string, BlowerDescription>(),
            Filters = new Dictionary<string, BeadFilterDescription>(),
            Mineralizers = new Dictionary<string, MineralizerDescription>(),
            WaterHeaters = new Dictionary<string, WaterHeaterDescription>(),
            Lamps = new Dictionary<string, LampDescription>(),
            Nursery = null,
            Troughs = new Dictionary<string, TroughDescription>(),
            Lanes = new Dictionary<string, LaneDescription>(),
            Crops = new Dictionary<string, CropPlanDescription>(),
            Dosing = new Dictionary<string, DosingDescription>(),
            FishlessStart = null,
            Coupling = null,
            Stocking = new Dictionary<string, StockingDescription>(),
            Plan = new Dictionary<string, PlannedEvent>(),
        };

    /// <summary>A basin that exchanges nothing with the house: lid closed, walls insulated, no film.</summary>
    public static BasinDescription Closed(BasinUse use, double litres, double celsius = 20) => new()
    {
        Use = use,
        VolumeLitres = litres,
        SurfaceSquareMetres = 1,
        CoveredShare = 1,
        WallWattsPerKelvin = 0,
        WettedSquareMetres = 0,
        InitialTemperatureCelsius = celsius,
    };

    public static PipeDescription Pump(string from, string to, double litresPerHour) =>
        new() { From = from, To = to, Drive = PipeDrive.Pump, FlowLitresPerHour = litresPerHour };

    public static PipeDescription Overflow(string from, string to, string? valve = null) =>
        new() { From = from, To = to, Drive = PipeDrive.Overflow, Valve = valve };

    /// <summary>A fish loop (tank and sump) and a plant loop (lane and sump), each pumped round, joined by one valve each way.</summary>
    public static FarmDescription TwoLoops(
        double tank, double fishSump, double lane, double plantSump, double pumpLitresPerHour, double fishCelsius = 20, double plantCelsius = 20) => Of(
        new Dictionary<string, BasinDescription>
        {
            ["tank"] = Closed(BasinUse.FishTank, tank, fishCelsius),
            ["fish-sump"] = Closed(BasinUse.FishSump, fishSump, fishCelsius),
            ["lane"] = Closed(BasinUse.Lane, lane, plantCelsius),
            ["plant-sump"] = Closed(BasinUse.PlantSump, plantSump, plantCelsius),
        },
        new Dictionary<string, PipeDescription>
        {
            ["to-tank"] = Pump("fish-sump", "tank", pumpLitresPerHour),
            ["tank-out"] = Overflow("tank", "fish-sump"),
            ["tank-to-plants"] = Overflow("tank", "plant-sump", "coupling"),
            ["to-lane"] = Pump("plant-sump", "lane", pumpLitresPerHour),
            ["lane-out"] = Overflow("lane", "plant-sump"),
            ["lane-to-fish"] = Overflow("lane", "fish-sump", "coupling"),
        },
        "coupling");
}
