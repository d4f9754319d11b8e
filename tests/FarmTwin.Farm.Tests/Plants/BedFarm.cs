using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>A sump, a nursery's reservoir and media beds in the shipped house, fed by bridging nutrients.</summary>
internal static class BedFarm
{
    public const double Litres = 302.4;

    public static MediaBedDescription Bed { get; } = new() { Basin = "bed", Crop = "tomato", AreaSquareMetres = 2.88 };

    /// <summary>One bed of tomatoes, set out on day 30 and never cleared unless said otherwise.</summary>
    public static FarmDescription Of(MediaBedDescription? bed = null, double flow = 300, double? clear = null, params (string Name, PlannedEvent Event)[] plan)
    {
        FarmDescription first = Farms.FirstSeason;
        FarmDescription bare = BareFarm.Of(
            new Dictionary<string, BasinDescription>
            {
                ["plant-sump"] = first.Basins["plant-sump"] with { InitialTemperatureCelsius = 20, Blower = null },
                ["bed"] = new BasinDescription
                {
                    Use = BasinUse.MediaBed, VolumeLitres = Litres, SurfaceSquareMetres = 2.88, CoveredShare = 0.9, WallWattsPerKelvin = 5,
                    WettedSquareMetres = 4.7, InitialTemperatureCelsius = 20,
                },
                ["nursery-reservoir"] = first.Basins["nursery-reservoir"] with { Blower = null },
            },
            new Dictionary<string, PipeDescription>
            {
                ["to-bed"] = BareFarm.Pump("plant-sump", "bed", flow),
                ["bed-out"] = BareFarm.Overflow("bed", "plant-sump"),
            });
        return bare with
        {
            Start = new DateOnly(2027, 4, 1),
            House = first.House with { AirHeater = new AirHeaterDescription { OutputKilowatts = 60, HoldCelsius = 17 } },
            Nursery = first.Nursery,
            MediaBeds = new Dictionary<string, MediaBedDescription> { ["bed"] = bed ?? Bed },
            Crops = new Dictionary<string, CropPlanDescription>
            {
                ["tomato"] = new()
                {
                    Kind = "tomato", NurseryDays = 30, HarvestWeekdays = [1, 3, 5],
                    Plantings = new Dictionary<string, PlantingDescription> { ["only"] = new() { SetOutDay = 30, ClearDay = clear } },
                },
            },
            Dosing = new Dictionary<string, DosingDescription>(first.Dosing.Where(d => d.Key == "nursery"))
            {
                ["feed"] = Keep(first, "bridging") with { FromDay = 0, EndsWhenCoupled = false },
                ["iron"] = Keep(first, "iron") with { FromDay = 0 },
                ["phosphorus"] = Keep(first, "phosphorus") with { FromDay = 0 },
                ["potassium"] = Keep(first, "potassium") with { FromDay = 0 },
            },
            Plan = plan.ToDictionary(p => p.Name, p => p.Event, StringComparer.Ordinal),
        };
    }

    private static DosingDescription Keep(FarmDescription farm, string name) => farm.Dosing[name];
}
