using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Plants;

/// <summary>All plants: light through the day, growth at midnight. What they take from the water is <see cref="UptakeProcess"/>'s.</summary>
/// <remarks>See docs/model/plant-growth.md. Sowing, moving and harvest are Operations.</remarks>
public sealed class PlantProcess
{
    private readonly FarmContext _farm;
    private readonly int _crops;
    private readonly NurseryStand _nursery;
    private readonly CropHarm _harm;
    private readonly GrowingPlaces _places;
    private readonly WettedSurfaces _surfaces;
    private readonly UptakeProcess _uptake;

    /// <summary>Makes the process.</summary>
    public PlantProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        FarmParts parts = farm.Parts;
        _crops = Math.Max(1, parts.Crops.Length);
        _places = new GrowingPlaces(farm);
        _surfaces = new WettedSurfaces(farm, _places);
        _nursery = new NurseryStand(farm);
        _harm = new CropHarm(farm);
        _uptake = new UptakeProcess(farm, _places, _nursery);
    }

    /// <summary>What the plants take from the water.</summary>
    public UptakeProcess Uptakes => _uptake;

    /// <summary>Every surface that carries a film.</summary>
    public WettedSurfaces Surfaces => _surfaces;

    /// <summary>Adds the step's light to the day's.</summary>
    public void Contribute(in StepLight light) => AddLight(light);

    /// <summary>Puts the uptake so far into the lots. Call before plants are moved.</summary>
    public void Settle() => _uptake.Settle();

    /// <summary>Ends a day: growth of all lots from the day's light, losses, and the plan of tomorrow's uptake.</summary>
    /// <param name="nurseryCelsius">Mean of the day in the nursery, °C, for seeds not yet up.</param>
    /// <param name="day">Days from day 0.</param>
    public void EndDay(double nurseryCelsius, double day)
    {
        GrowingState growing = _farm.State.Growing;
        FarmParts parts = _farm.Parts;
        Settle();
        _nursery.EndDayOfSeeds(nurseryCelsius);
        growing.Nutrition.BeginDay();
        for (int place = 0; place < _places.Count; place++)
        {
            int basin = _places.BasinOf(place);
            if (basin < 0)
            {
                continue;
            }

            RootZone root = RootZone.Of(_farm.State.Basins, basin, _farm.Parts.Plants);
            root = place == 0 ? root with { WaterFactor = _nursery.WaterFactor } : root;
            int bed = _places.BedOf(place);
            if (bed >= 0)
            {
                growing.Beds[bed].EndDay();
                root = BedProcess.AtRoots(root, _farm, bed, day);
            }

            for (int i = 0; i < _places.LotCount(place); i++)
            {
                PlantLot lot = _places.LotAt(place, i);
                if (lot.IsEmpty)
                {
                    continue;
                }

                CropParameters crop = parts.Crops[lot.Crop];
                growing.Nutrition.Add(lot, crop, parts.Plants);
                DayLight light = place == 0 ? _nursery.DayOf(i, lot.Crop) : growing.Light[(place * _crops) + lot.Crop];
                _farm.State.House.CropGainGrams += Growth.DailyStep(lot, crop, light, root, parts.Plants);
                PlantBooks.DrawTissueWater(_farm, basin, Growth.LastGainWaterLitres(lot, crop));
                if (place > 0)
                {
                    _harm.EndDay(lot, crop, light);
                }

                Uptake.PlanDay(lot, crop, parts.Plants, root);
                growing.Nutrition.AddNeed(lot, crop);
            }
        }

        growing.Nutrition.EndDay();
        for (int i = 0; i < growing.Light.Length; i++)
        {
            growing.Light[i].Reset();
        }

        Array.Clear(growing.TranspiredLitres);
        _nursery.BeginDay();
        _harm.BeginDay();
        growing.Changed = true;
        _surfaces.SetAreas();
    }

    /// <summary>Adds the plants' part of the stocks, what was taken up and not yet put into the lots included; changes nothing.</summary>
    public void AddStocks(Span<double> stocks)
    {
        _uptake.AddUnsettled(stocks);
        _nursery.AddStocks(stocks);
        for (int place = 0; place < _places.Count; place++)
        {
            for (int i = 0; i < _places.LotCount(place); i++)
            {
                PlantLot lot = _places.LotAt(place, i);
                lot.Elements.AddTo(stocks);
                if (!lot.IsEmpty)
                {
                    stocks[FarmBooks.Water] += lot.WaterLitres(_farm.Parts.Crops[lot.Crop]);
                }
            }
        }
    }

    /// <summary>Books plants that enter (sign +1) or leave (−1) with their elements and water.</summary>
    public void PostPlants(int door, in ElementGrams elements, double waterLitres, int sign) =>
        PlantBooks.Post(_farm, door, elements, waterLitres, sign);

    private void AddLight(in StepLight light)
    {
        GrowingState growing = _farm.State.Growing;
        double hours = _farm.Step.Hours;
        double carbonDioxide = _farm.State.House.CarbonDioxidePpm;
        _nursery.AddLight(light, carbonDioxide);
        _harm.AddStep(light);
        for (int place = 1; place < _places.Count; place++)
        {
            for (int crop = 0; crop < _farm.Parts.CropNames.Length; crop++)
            {
                if (_places.Grows(place, crop))
                {
                    double lamps = _farm.LampPhotons[_places.BasinOf(place)];
                    growing.Light[(place * _crops) + crop].AddHour(
                        _farm.Parts.Crops[crop], hours, light.NaturalPhotons + lamps, carbonDioxide, light.AirCelsius);
                }
            }
        }
    }
}
