using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>What is the nursery's own among the plants: light by tier, watering by the clock, seeds that come up, covered trays.</summary>
/// <remarks>See docs/model/microgreens.md. Growth and uptake are those of all plants.</remarks>
public sealed class NurseryStand
{
    private readonly FarmContext _farm;
    private readonly int _crops;
    private readonly double[] _canopy;
    private readonly double[] _leaf;
    private readonly bool[] _stands;
    private double _askedLitresPerHour;
    private double _givenLitresPerHour;

    /// <summary>Makes it.</summary>
    public NurseryStand(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        FarmParts parts = farm.Parts;
        Basin = parts.Farm.Nursery is { } nursery ? parts.BasinIndex(nursery.Water) : -1;
        _crops = Math.Max(1, parts.Crops.Length);
        _canopy = new double[parts.Tiers.Count];
        _leaf = new double[parts.Tiers.Count];
        _stands = new bool[parts.Tiers.Count * _crops];
    }

    /// <summary>The basin that waters it; −1 for a farm without a nursery.</summary>
    public int Basin { get; }

    /// <summary>Leaf area of all tiers, m².</summary>
    public double LeafSquareMetres { get; private set; }

    /// <summary>Share of the water that its plants asked for today which they got, 0–1.</summary>
    public double WaterFactor
    {
        get
        {
            NurseryState state = _farm.State.Growing.Nursery;
            return state.AskedLitres > 0 ? Math.Min(1, state.TranspiredLitres / state.AskedLitres) : 1;
        }
    }

    /// <summary>The tier of a lot, counted as <see cref="GrowingPlaces"/> counts those of place 0.</summary>
    public int TierOf(int lot)
    {
        GrowingState growing = _farm.State.Growing;
        return lot < growing.Trays.Count ? growing.Trays[lot].Tier : growing.Nursery.Microgreens[lot - growing.Trays.Count].Tier;
    }

    /// <summary>Forgets what stands; <see cref="Add"/> follows for every lot.</summary>
    public void Clear()
    {
        Array.Clear(_canopy);
        Array.Clear(_leaf);
        Array.Clear(_stands);
        LeafSquareMetres = 0;
        foreach (NurseryTray tray in _farm.State.Growing.Trays)
        {
            _stands[(tray.Tier * _crops) + tray.Crop] = true;
        }

        foreach (MicrogreenTrays trays in _farm.State.Growing.Nursery.Microgreens)
        {
            _stands[(trays.Tier * _crops) + trays.Crop] = true;
        }
    }

    /// <summary>Adds the leaf of a lot.</summary>
    public void Add(int lot, double canopySquareMetres, double leafSquareMetres)
    {
        int tier = TierOf(lot);
        _canopy[tier] += canopySquareMetres;
        _leaf[tier] += leafSquareMetres;
        LeafSquareMetres += leafSquareMetres;
    }

    /// <summary>Litres an hour that its plants give off in this step: what they ask for, as far as watering by the clock has given it.</summary>
    public double Transpire(in StepLight light)
    {
        _askedLitresPerHour = 0;
        for (int t = 0; t < _leaf.Length; t++)
        {
            if (_leaf[t] > 0)
            {
                double radiation = _farm.TierLight[t].Megajoules;
                _askedLitresPerHour += Transpiration.OfStandsLitresPerHour(
                    _canopy[t], _leaf[t], radiation, light.VapourDeficitKilopascals, radiation <= 0, _farm.Parts.Plants);
            }
        }

        _givenLitresPerHour = _farm.Parts.Farm.Nursery?.Watering is null
            ? _askedLitresPerHour
            : Math.Min(_askedLitresPerHour, _farm.State.Growing.Nursery.TrayLitres / _farm.Step.Hours);
        return _givenLitresPerHour;
    }

    /// <summary>Share of a day's uptake that falls into an hour of this step: the lit hours, by the leaf of each tier.</summary>
    public double UptakePerHour()
    {
        double sum = 0;
        for (int t = 0; t < _leaf.Length; t++)
        {
            TierLight tier = _farm.TierLight[t];
            sum += _leaf[t] * (tier.HoursOfDay > 0 ? tier.LitShare / tier.HoursOfDay : 1 / UnitConstants.HoursPerDay);
        }

        return LeafSquareMetres > 0 ? sum / LeafSquareMetres : 0;
    }

    /// <summary>Counts the step's water.</summary>
    public void Commit()
    {
        NurseryState state = _farm.State.Growing.Nursery;
        double hours = _farm.Step.Hours;
        state.AskedLitres += _askedLitresPerHour * hours;
        state.TranspiredLitres += _givenLitresPerHour * hours;
        state.TrayLitres = Math.Max(0, state.TrayLitres - (_givenLitresPerHour * hours));
    }

    /// <summary>Adds the step's light to the day's, for whatever stands on each tier.</summary>
    public void AddLight(in StepLight light, double carbonDioxidePartsPerMillion)
    {
        double hours = _farm.Step.Hours;
        for (int t = 0; t < _leaf.Length; t++)
        {
            TierLight tier = _farm.TierLight[t];
            for (int crop = 0; crop < _crops; crop++)
            {
                if (!_stands[(t * _crops) + crop])
                {
                    continue;
                }

                ref DayLight day = ref _farm.State.Growing.Nursery.Light[(t * _crops) + crop];
                CropParameters parameters = _farm.Parts.Crops[crop];
                day.AddHour(parameters, hours * tier.LitShare, tier.Photons, carbonDioxidePartsPerMillion, light.NurseryCelsius);
                day.AddHour(parameters, hours * (1 - tier.LitShare), 0, carbonDioxidePartsPerMillion, light.NurseryCelsius);
            }
        }
    }

    /// <summary>Lets the day pass over seeds and covered trays, and books what comes up.</summary>
    /// <param name="meanCelsius">Mean of the day in the nursery, °C.</param>
    public void EndDayOfSeeds(double meanCelsius)
    {
        GrowingState growing = _farm.State.Growing;
        FarmParts parts = _farm.Parts;
        double bed = parts.Farm.Nursery?.GerminateAtCelsius ?? meanCelsius;
        foreach (NurseryTray tray in growing.Trays)
        {
            bool wasUp = tray.IsUp;
            double before = tray.Lot.DegreeDays;
            if (tray.AdvanceSeeds(parts.Crops[tray.Crop], bed))
            {
                PlantBooks.Post(_farm, Door.Seed, tray.Lot.Pools, tray.Lot.WaterLitres(parts.Crops[tray.Crop]), 1);
            }

            // A temperature sum counts from sowing; the lot that holds it is made anew when the seeds come up, and grows from then on.
            if (!wasUp)
            {
                tray.Lot.DegreeDays = before;
                if (!tray.IsUp)
                {
                    Fruiting.Advance(tray.Lot, parts.Crops[tray.Crop], bed);
                }
            }
        }

        double today = Math.Floor((double)_farm.Step.ToSeconds / UnitConstants.SecondsPerDay);
        foreach (MicrogreenTrays trays in growing.Nursery.Microgreens)
        {
            double covered = parts.MicrogreenPlans[trays.Kind].BlackoutDays ?? parts.Microgreens[trays.Kind].BlackoutDays;
            trays.EndDayInLight(today - Math.Floor(trays.SownDay) > covered && parts.Tiers.LightHours(trays.Tier) > 0);
            if (trays.AdvanceSeeds(parts.Microgreens[trays.Kind], bed))
            {
                PlantBooks.Post(_farm, Door.Seed, trays.Lot.Pools + trays.Mat, 0, 1);
                PlantBooks.DrawTissueWater(_farm, Basin, trays.Lot.WaterLitres(parts.Crops[trays.Crop]));
            }
        }
    }

    /// <summary>The day's light on a lot: its tier's, or none under a cover.</summary>
    public DayLight DayOf(int lot, int crop)
    {
        GrowingState growing = _farm.State.Growing;
        DayLight day = growing.Nursery.Light[(TierOf(lot) * _crops) + crop];
        return lot >= growing.Trays.Count && !growing.Nursery.Microgreens[lot - growing.Trays.Count].IsLit ? day.Covered() : day;
    }

    /// <summary>Adds the mats of the trays to the stocks; the shoots are lots like others.</summary>
    public void AddStocks(Span<double> stocks)
    {
        foreach (MicrogreenTrays trays in _farm.State.Growing.Nursery.Microgreens)
        {
            trays.Mat.AddTo(stocks);
        }
    }

    /// <summary>Starts a new day.</summary>
    public void BeginDay()
    {
        NurseryState state = _farm.State.Growing.Nursery;
        Array.Clear(state.Light);
        state.DryDays += WaterFactor < 1 ? 1 : 0;
        state.AskedLitres = 0;
        state.TranspiredLitres = 0;
    }
}
