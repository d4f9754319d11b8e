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
    private readonly int _nurseryBasin;
    private readonly GrowingPlaces _places;
    private readonly WettedSurfaces _surfaces;
    private readonly int[] _laneCrop;
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
        _nurseryBasin = _places.BasinOf(0);
        _laneCrop = [.. parts.Farm.Lanes.Values.Select(l => Array.IndexOf(parts.CropNames, l.Crop))];
        _uptake = new UptakeProcess(farm, _places);
    }

    /// <summary>What the plants take from the water.</summary>
    public UptakeProcess Uptakes => _uptake;

    /// <summary>Every surface that carries a film.</summary>
    public WettedSurfaces Surfaces => _surfaces;

    /// <summary>Crop of each lane.</summary>
    public IReadOnlyList<int> LaneCrop => _laneCrop;

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
        foreach (NurseryTray tray in growing.Trays)
        {
            bool wasUp = tray.IsUp;
            double before = tray.Lot.DegreeDays;
            if (tray.AdvanceSeeds(parts.Crops[tray.Crop], nurseryCelsius))
            {
                BookSeedlings(tray);
            }

            // A temperature sum counts from sowing; the lot that holds it is made anew when the seeds come up, and grows from then on.
            if (!wasUp)
            {
                tray.Lot.DegreeDays = before;
                if (!tray.IsUp)
                {
                    Fruiting.Advance(tray.Lot, parts.Crops[tray.Crop], nurseryCelsius);
                }
            }
        }

        growing.Nutrition.BeginDay();
        for (int place = 0; place < _places.Count; place++)
        {
            int basin = _places.BasinOf(place);
            if (basin < 0)
            {
                continue;
            }

            RootZone root = RootZone.Of(_farm.State.Basins, basin, _farm.Parts.Plants);
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
                _farm.State.House.CropGainGrams += Growth.DailyStep(lot, crop, growing.Light[(place * _crops) + lot.Crop], root, parts.Plants);
                DrawTissueWater(basin, Growth.LastGainWaterLitres(lot, crop));
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
        growing.Changed = true;
        _surfaces.SetAreas();
    }

    /// <summary>Adds the plants' part of the stocks, what was taken up and not yet put into the lots included; changes nothing.</summary>
    public void AddStocks(Span<double> stocks)
    {
        _uptake.AddUnsettled(stocks);
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
    public void PostPlants(int door, in ElementGrams elements, double waterLitres, int sign)
    {
        FarmBooks books = _farm.State.Books;
        books.PostElements(door, elements, sign);
        books.Post(door, FarmBooks.Water, sign * waterLitres);
    }

    private void AddLight(in StepLight light)
    {
        GrowingState growing = _farm.State.Growing;
        double hours = _farm.Step.Hours;
        double carbonDioxide = _farm.State.House.CarbonDioxidePpm;
        for (int place = 0; place < _places.Count; place++)
        {
            if (place == 0 && _nurseryBasin < 0)
            {
                continue;
            }

            for (int crop = 0; crop < _farm.Parts.Crops.Length; crop++)
            {
                if (_places.CropOf(place) is >= 0 and var only && only != crop)
                {
                    continue;
                }

                ref DayLight day = ref growing.Light[(place * _crops) + crop];
                if (place == 0)
                {
                    day.AddHour(_farm.Parts.Crops[crop], hours * light.NurseryLitShare, light.NurseryPhotons, carbonDioxide, light.NurseryCelsius);
                    day.AddHour(_farm.Parts.Crops[crop], hours * (1 - light.NurseryLitShare), 0, carbonDioxide, light.NurseryCelsius);
                }
                else
                {
                    double lamps = _farm.LampPhotons[_places.BasinOf(place)];
                    day.AddHour(_farm.Parts.Crops[crop], hours, light.NaturalPhotons + lamps, carbonDioxide, light.AirCelsius);
                }
            }
        }
    }

    private void BookSeedlings(NurseryTray tray)
    {
        PlantLot lot = tray.Lot;
        PostPlants(Door.Seed, lot.Pools, lot.WaterLitres(_farm.Parts.Crops[lot.Crop]), 1);
    }

    // Water that new tissue holds, out of the basin, with its heat.
    private void DrawTissueWater(int basin, double litres)
    {
        Basins basins = _farm.State.Basins;
        basins.Litres[basin] -= litres;
        _farm.State.Books.Post(Door.PlantUptake, FarmBooks.Heat, -FarmBooks.MegajoulesOf(litres, basins.Celsius[basin]));
    }
}
