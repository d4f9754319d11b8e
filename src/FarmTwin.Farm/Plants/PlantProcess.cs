using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Plants;

/// <summary>All plants: light through the day, uptake and transpiration in the lit hours, growth at midnight.</summary>
/// <remarks>See docs/model/plant-growth.md, plant-nutrients.md, transpiration.md. Sowing, moving and harvest are Operations.</remarks>
public sealed class PlantProcess
{
    // An uptake is written as planned rate / concentration; below this the water counts as empty, g/L.
    private const double LeastGramsPerLitre = 1e-9;

    private static readonly int[] SubstanceOfChannel =
        [Substance.Tan, Substance.Nitrate, Substance.Phosphorus, Substance.Potassium, Substance.Calcium, Substance.Magnesium,
         Substance.Sulfate, Substance.Iron];

    private readonly FarmContext _farm;
    private readonly int _crops;
    private readonly int _nurseryBasin;
    private readonly GrowingPlaces _places;
    private readonly WettedSurfaces _surfaces;
    private readonly int[] _laneCrop;
    private readonly double[] _planned;
    private readonly double[] _canopy;
    private readonly double[] _leaf;
    private readonly double[] _uptake;
    private readonly double[] _sodium;
    private readonly double[] _chloride;
    private readonly double[] _transpiration;

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
        int basins = parts.Basins.Length;
        _planned = new double[basins * UptakeAmounts.Count];
        _uptake = new double[basins * UptakeAmounts.Count];
        _canopy = new double[basins];
        _leaf = new double[basins];
        _sodium = new double[basins];
        _chloride = new double[basins];
        _transpiration = new double[basins];
    }

    /// <summary>Every surface that carries a film.</summary>
    public WettedSurfaces Surfaces => _surfaces;

    /// <summary>Crop of each lane.</summary>
    public IReadOnlyList<int> LaneCrop => _laneCrop;

    /// <summary>Litres an hour that the plants give off in this step, from the house as it was at its start.</summary>
    /// <param name="light">Light and air of the step.</param>
    public double Transpire(in StepLight light)
    {
        Refresh();
        PlantParameters plants = _farm.Parts.Plants;
        double total = 0;
        for (int b = 0; b < _transpiration.Length; b++)
        {
            _transpiration[b] = 0;
            if (_leaf[b] <= 0)
            {
                continue;
            }

            _transpiration[b] = Transpiration.OfStandsLitresPerHour(
                _canopy[b],
                _leaf[b],
                b == _nurseryBasin ? light.NurseryMegajoules : light.InsideMegajoules,
                light.VapourDeficitKilopascals,
                light.InsideMegajoules <= 0,
                plants);
            total += _transpiration[b];
        }

        return total;
    }

    /// <summary>Adds the transpiration to what leaves the basins.</summary>
    public void AddVapour()
    {
        for (int b = 0; b < _transpiration.Length; b++)
        {
            _farm.Step.VapourLitresPerHour[b] += _transpiration[b];
        }
    }

    /// <summary>Adds uptake; adds the step's light to the day's.</summary>
    public void Contribute(in StepLight light)
    {
        FarmParts parts = _farm.Parts;
        GrowingState growing = _farm.State.Growing;
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        AddLight(light);
        for (int b = 0; b < basins.Count; b++)
        {
            Array.Clear(_uptake, b * UptakeAmounts.Count, UptakeAmounts.Count);
            _sodium[b] = 0;
            _chloride[b] = 0;
            if (_leaf[b] <= 0 || basins.Litres[b] <= 0)
            {
                continue;
            }

            double litShare = b == _nurseryBasin ? light.NurseryLitShare : light.LitShare;
            double litHours = b == _nurseryBasin ? parts.Farm.Nursery!.LightHours : light.LitHoursOfDay;
            double perHour = litHours > 0 ? litShare / litHours : 0;
            for (int channel = 0; channel < UptakeAmounts.Count; channel++)
            {
                double rate = _planned[(b * UptakeAmounts.Count) + channel] * perHour;
                if (rate > 0)
                {
                    int substance = SubstanceOfChannel[channel];
                    double grams = basins.Grams[WaterStep.At(b, substance)] / basins.Litres[b];
                    double coefficient = rate / Math.Max(LeastGramsPerLitre, grams);
                    _uptake[(b * UptakeAmounts.Count) + channel] = coefficient;
                    step.Lose(b, substance, coefficient);
                }
            }

            _sodium[b] = parts.Plants.SodiumUptakeShare * _transpiration[b];
            _chloride[b] = parts.Plants.ChlorideUptakeShare * _transpiration[b];
            step.Lose(b, Substance.Sodium, _sodium[b]);
            step.Lose(b, Substance.Chloride, _chloride[b]);
        }

        double iron = Iron.LossPerHour(parts.Plants);
        for (int b = 0; b < basins.Count; b++)
        {
            step.Lose(b, Substance.Iron, iron * _farm.Network.LitresAfter[b]);
        }
    }

    /// <summary>Books uptake, transpiration and the chelate's decay.</summary>
    public void Commit()
    {
        GrowingState growing = _farm.State.Growing;
        WaterStep step = _farm.Step;
        FarmBooks books = _farm.State.Books;
        for (int channel = 0; channel < UptakeAmounts.Count; channel++)
        {
            double taken = 0;
            for (int b = 0; b < step.BasinCount; b++)
            {
                int index = (b * UptakeAmounts.Count) + channel;
                if (_uptake[index] > 0)
                {
                    double grams = step.Lost(b, SubstanceOfChannel[channel], _uptake[index]);
                    growing.TakenShare[index] += grams / _planned[index];
                    taken += grams;
                }
            }

            books.PostWater(Door.PlantUptake, SubstanceOfChannel[channel], -taken);
            if (channel <= (int)UptakeChannel.Nitrate)
            {
                _farm.State.Totals.PlantNitrogenGrams += taken;
            }
        }

        double sodium = 0;
        double chloride = 0;
        double ironLost = 0;
        double iron = Iron.LossPerHour(_farm.Parts.Plants);
        for (int b = 0; b < step.BasinCount; b++)
        {
            double na = step.Lost(b, Substance.Sodium, _sodium[b]);
            double cl = step.Lost(b, Substance.Chloride, _chloride[b]);
            growing.PassiveSodium[b] += na;
            growing.PassiveChloride[b] += cl;
            sodium += na;
            chloride += cl;
            ironLost += step.Lost(b, Substance.Iron, iron * _farm.Network.LitresAfter[b]);
        }

        books.PostWater(Door.PlantUptake, Substance.Sodium, -sodium);
        books.PostWater(Door.PlantUptake, Substance.Chloride, -chloride);
        books.PostWaterFromOutside(Door.IronLost, Substance.Iron, -ironLost);
    }

    /// <summary>Transpiration of a basin's plants in this step, L/h.</summary>
    public double TranspirationOf(int basin) => _transpiration[basin];

    /// <summary>Puts the uptake so far into the lots. Call before plants are moved.</summary>
    public void Settle()
    {
        GrowingState growing = _farm.State.Growing;
        Refresh();
        for (int place = 0; place < _places.Count; place++)
        {
            int basin = _places.BasinOf(place);
            if (basin >= 0)
            {
                for (int i = 0; i < _places.LotCount(place); i++)
                {
                    SettleLot(_places.LotAt(place, i), basin);
                }
            }
        }

        Array.Clear(growing.TakenShare);
        Array.Clear(growing.PassiveSodium);
        Array.Clear(growing.PassiveChloride);
    }

    /// <summary>Ends a day: growth of all lots from the day's light, losses, and the plan of tomorrow's uptake.</summary>
    /// <param name="nurseryCelsius">Mean of the day in the nursery, °C, for seeds not yet up.</param>
    public void EndDay(double nurseryCelsius)
    {
        GrowingState growing = _farm.State.Growing;
        FarmParts parts = _farm.Parts;
        Settle();
        foreach (NurseryTray tray in growing.Trays)
        {
            if (tray.AdvanceSeeds(parts.Crops[tray.Crop], nurseryCelsius))
            {
                BookSeedlings(tray);
            }
        }

        for (int place = 0; place < _places.Count; place++)
        {
            int basin = _places.BasinOf(place);
            if (basin < 0)
            {
                continue;
            }

            RootZone root = RootZone.Of(_farm.State.Basins, basin, _farm.Parts.Plants);
            for (int i = 0; i < _places.LotCount(place); i++)
            {
                PlantLot lot = _places.LotAt(place, i);
                if (lot.IsEmpty)
                {
                    continue;
                }

                CropParameters crop = parts.Crops[lot.Crop];
                Growth.DailyStep(lot, crop, growing.Light[(place * _crops) + lot.Crop], root, parts.Plants);
                DrawTissueWater(basin, Growth.LastGainWaterLitres(lot, crop));
                Uptake.PlanDay(lot, crop, parts.Plants, root);
            }
        }

        for (int i = 0; i < growing.Light.Length; i++)
        {
            growing.Light[i].Reset();
        }

        growing.Changed = true;
        Refresh();
        _surfaces.SetAreas();
    }

    /// <summary>Adds the plants' part of the stocks, what was taken up and not yet put into the lots included; changes nothing.</summary>
    public void AddStocks(Span<double> stocks)
    {
        AddUnsettled(stocks);
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
        double carbonDioxide = _farm.Parts.Farm.House.CarbonDioxidePpm;
        for (int place = 0; place < _places.Count; place++)
        {
            if (place == 0 && _nurseryBasin < 0)
            {
                continue;
            }

            for (int crop = 0; crop < _farm.Parts.Crops.Length; crop++)
            {
                if (place > growing.Troughs.Length && _laneCrop[place - 1 - growing.Troughs.Length] != crop)
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

    private void Refresh()
    {
        GrowingState growing = _farm.State.Growing;
        if (!growing.Changed)
        {
            return;
        }

        growing.Changed = false;
        Array.Clear(_planned);
        Array.Clear(_canopy);
        Array.Clear(_leaf);
        for (int place = 0; place < _places.Count; place++)
        {
            int basin = _places.BasinOf(place);
            if (basin < 0)
            {
                continue;
            }

            for (int i = 0; i < _places.LotCount(place); i++)
            {
                PlantLot lot = _places.LotAt(place, i);
                if (lot.IsEmpty)
                {
                    continue;
                }

                double leaf = lot.LeafAreaIndex(_farm.Parts.Crops[lot.Crop]);
                _leaf[basin] += leaf * lot.AreaSquareMetres;
                _canopy[basin] += lot.AreaSquareMetres * Transpiration.Intercepted(leaf, _farm.Parts.Plants);
                UptakeAmounts planned = lot.Planned;
                int start = basin * UptakeAmounts.Count;
                _planned[start] += planned.Ammonium;
                _planned[start + 1] += planned.Nitrate;
                _planned[start + 2] += planned.Phosphorus;
                _planned[start + 3] += planned.Potassium;
                _planned[start + 4] += planned.Calcium;
                _planned[start + 5] += planned.Magnesium;
                _planned[start + 6] += planned.Sulfur;
                _planned[start + 7] += planned.Iron;
            }
        }
    }

    private void SettleLot(PlantLot lot, int basin)
    {
        GrowingState growing = _farm.State.Growing;
        double[] share = growing.TakenShare;
        int start = basin * UptakeAmounts.Count;
        UptakeAmounts planned = lot.Planned;
        lot.Take(new UptakeAmounts(
            planned.Ammonium * share[start],
            planned.Nitrate * share[start + 1],
            planned.Phosphorus * share[start + 2],
            planned.Potassium * share[start + 3],
            planned.Calcium * share[start + 4],
            planned.Magnesium * share[start + 5],
            planned.Sulfur * share[start + 6],
            planned.Iron * share[start + 7]));
        if (growing.PassiveSodium[basin] > 0 || growing.PassiveChloride[basin] > 0)
        {
            double leaf = lot.IsEmpty ? 0 : lot.LeafAreaIndex(_farm.Parts.Crops[lot.Crop]) * lot.AreaSquareMetres;
            double ofBasin = _leaf[basin] > 0 ? leaf / _leaf[basin] : 0;
            lot.TakePassive(growing.PassiveSodium[basin] * ofBasin, growing.PassiveChloride[basin] * ofBasin);
        }
    }

    private void BookSeedlings(NurseryTray tray)
    {
        PlantLot lot = tray.Lot;
        PostPlants(Door.Seed, lot.Pools, lot.WaterLitres(_farm.Parts.Crops[lot.Crop]), 1);
    }

    // What SettleLot will put into the lots: of each basin the planned sum of its lots, by the share taken.
    private void AddUnsettled(Span<double> stocks)
    {
        GrowingState growing = _farm.State.Growing;
        Refresh();
        for (int b = 0; b < _leaf.Length; b++)
        {
            for (int channel = 0; channel < UptakeAmounts.Count; channel++)
            {
                int index = (b * UptakeAmounts.Count) + channel;
                stocks[FarmBooks.ElementOf(SubstanceOfChannel[channel])] += growing.TakenShare[index] * _planned[index];
            }

            stocks[Element.Sodium] += growing.PassiveSodium[b];
            stocks[Element.Chloride] += growing.PassiveChloride[b];
        }
    }

    // Water that new tissue holds, out of the basin, with its heat.
    private void DrawTissueWater(int basin, double litres)
    {
        Basins basins = _farm.State.Basins;
        basins.Litres[basin] -= litres;
        _farm.State.Books.Post(Door.PlantUptake, FarmBooks.Heat, -FarmBooks.MegajoulesOf(litres, basins.Celsius[basin]));
    }
}
