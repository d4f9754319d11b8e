using System.Runtime.Intrinsics;
using FarmTwin.Engine.Chance;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Climate;

/// <summary>Weather, daylight, the air of the house, and what it does to the water: evaporation, losses, gains.</summary>
/// <remarks>
/// The air is quasi-steady and is solved with the water of the step's start; the water's own heat is solved afterwards with that
/// air (docs/model/climate-house.md).
/// </remarks>
public sealed class HouseProcess
{
    private readonly FarmContext _farm;
    private readonly SeasonWeather _weather;
    private readonly HouseAirBalance _house;
    private readonly CoverParameters _cover;
    private readonly double _pressure;
    private readonly HouseCarbonDioxide _carbonDioxide;
    private readonly CropLamps _lamps;
    private readonly NurseryLamps _nurseryLamps;
    private readonly PumpsAndBlowers _motors;
    private readonly double[] _gainWatts;
    private readonly double[] _water;
    private readonly double[] _activity;
    private readonly double[] _evaporation;
    private readonly double[] _slope;
    private readonly double[] _sensible;
    private readonly double[] _latent;
    private double _airFuelUnits;
    private HouseAir _air;

    /// <summary>Makes the process; generates the season's weather.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="streams">Chance.</param>
    public HouseProcess(FarmContext farm, RandomStreams streams)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _weather = SeasonWeather.Of(farm.Parts, streams);
        _cover = CoverParameters.From(farm.Parts.Cover);
        _pressure = Psychrometrics.PressureKilopascal(farm.Parts.Farm.Site.ElevationMetres);
        _house = new HouseAirBalance(HouseParameters.Of(farm.Parts, _cover, _pressure));
        _carbonDioxide = new HouseCarbonDioxide(farm);
        _lamps = new CropLamps(farm);
        _nurseryLamps = new NurseryLamps(farm);
        _motors = new PumpsAndBlowers(farm);
        int basins = farm.Parts.Basins.Length;
        _gainWatts = new double[basins];
        _water = Fours.Zeros(basins);
        _activity = Fours.Zeros(basins);
        _evaporation = Fours.Zeros(basins);
        _slope = Fours.Zeros(basins);
        _sensible = Fours.Zeros(basins);
        _latent = Fours.Zeros(basins);
    }

    /// <summary>The season's weather.</summary>
    public SeasonWeather Weather => _weather;

    /// <summary>Losses of the house with everything shut, W/K.</summary>
    public HouseAirBalance House => _house;

    /// <summary>Light of the step about to be made up; call first.</summary>
    public StepLight Begin()
    {
        WaterStep step = _farm.Step;
        HouseState state = _farm.State.House;
        long day = step.FromSeconds / UnitConstants.SecondsPerDay;
        double from = (step.FromSeconds - (day * UnitConstants.SecondsPerDay)) / UnitConstants.SecondsPerHour;
        double to = from + step.Hours;
        HourlyWeather weather = _weather.At((int)day, Math.Min(23, (int)from));
        DailyWeather today = _weather.Day((int)day);
        double natural = Par.Inside(
            Par.PpfdFromRadiation(weather.RadiationWattsPerSquareMetre, _farm.Parts.Climate.ParShare),
            _cover.ParTransmission,
            _farm.State.House.ShadeShare);
        _lamps.Begin(from, to, today);
        NurseryDescription? nursery = _farm.Parts.Farm.Nursery;
        _nurseryLamps.Begin(day, from, to);
        double nurseryCelsius = nursery is null ? state.AirCelsius : Math.Max(state.AirCelsius, nursery.AtLeastCelsius);
        double inside = _cover.SolarTransmission * (1 - _farm.State.House.ShadeShare)
            * weather.RadiationWattsPerSquareMetre * UnitConstants.SecondsPerHour / 1e6;
        state.NaturalPhotons = natural;
        state.NaturalMolesToday += Par.LightIntegral(natural, step.Hours);
        state.NurseryCelsiusHours += nurseryCelsius * step.Hours;
        state.HoursToday += step.Hours;
        return new StepLight(
            natural,
            inside,
            nurseryCelsius,
            state.AirCelsius,
            Math.Max(0, Psychrometrics.SaturationPressureKilopascal(state.AirCelsius) - state.VapourPressureKilopascal));
    }

    /// <summary>Solves the air; adds evaporation and heat to every basin.</summary>
    /// <param name="transpirationLitresPerHour">From the plants.</param>
    public void Contribute(double transpirationLitresPerHour)
    {
        FarmParts parts = _farm.Parts;
        WaterStep step = _farm.Step;
        HouseState state = _farm.State.House;
        long day = step.FromSeconds / UnitConstants.SecondsPerDay;
        double hour = (step.FromSeconds - (day * UnitConstants.SecondsPerDay)) / UnitConstants.SecondsPerHour;
        HourlyWeather weather = _weather.At((int)day, Math.Min(23, (int)hour));
        DailyWeather today = _weather.Day((int)day);
        _motors.Run();
        double conductance = 0;
        double weighted = 0;
        double evaporation = 0;
        double insideWatts = _cover.SolarTransmission * (1 - state.ShadeShare) * weather.RadiationWattsPerSquareMetre;
        FindSurfaces(state);
        for (int b = 0; b < parts.Basins.Length; b++)
        {
            (double sensible, double vapour) = AddSurface(b, state);
            evaporation += vapour;
            conductance += sensible;
            weighted += sensible * _farm.State.Basins.Celsius[b];
            double open = _farm.OpenSquareMetres(b);
            _gainWatts[b] = (parts.Practice.SolarAbsorption * insideWatts * open) + _motors.PumpHeatWatts[b];
            step.HeatWatts[b] += _gainWatts[b];
        }

        double blower = _motors.BlowerWatts;
        double largest = _house.House.HeaterCapacityWatts;
        double heaterShare = parts.AirHeaterTank >= 0 && largest > 0
            ? Math.Min(1, _farm.State.Fuel.AvailableMegajoules(parts.AirHeaterTank, step.Hours, _farm.FuelTaken[parts.AirHeaterTank])
                * 1e6 * parts.AirHeaterSource!.Efficiency / (largest * step.Hours * UnitConstants.SecondsPerHour))
            : 1;
        _air = _house.Solve(new HouseConditions(
            weather.TemperatureCelsius,
            weather.RadiationWattsPerSquareMetre,
            weather.VapourPressureKilopascal,
            weather.WindMetresPerSecond,
            _lamps.Watts + _nurseryLamps.Watts,
            blower,
            conductance,
            conductance > 0 ? weighted / conductance : state.AirCelsius,
            transpirationLitresPerHour,
            evaporation,
            state.FloorCelsius,
            step.Hours,
            hour + (step.Hours / 2) < today.SunriseHours || hour + (step.Hours / 2) > today.SunsetHours)
        {
            ShadeShare = state.ShadeShare,
            HeaterShare = heaterShare * _farm.Running.AirHeater,
            VentShare = _farm.Running.Vents,
            PadShare = _farm.Running.IsPowered(PowerLoad.House) ? 1 : 0,
        });
        state.OutsideCelsius = weather.TemperatureCelsius;
        TakeFuel();
        for (int b = 0; b < parts.Basins.Length; b++)
        {
            // Walls lose to the air of this step.
            double wall = _farm.State.Basins.Litres[b] > 0 ? parts.Basins[b].WallWattsPerKelvin : 0;
            step.HeatWatts[b] += wall * _air.AirCelsius;
            step.HeatWattsPerKelvin[b] += wall;
        }
    }

    /// <summary>Books heat, vapour, fuel and power; leaves the house at the end of the step.</summary>
    public void Commit()
    {
        FarmParts parts = _farm.Parts;
        WaterStep step = _farm.Step;
        HouseState state = _farm.State.House;
        FarmTotals totals = _farm.State.Totals;
        FarmBooks books = _farm.State.Books;
        state.AirCelsius = _air.AirCelsius;
        state.VapourPressureKilopascal = _air.VapourPressureKilopascal;
        state.RelativeHumidityPercent = _air.RelativeHumidityPercent;
        state.FloorCelsius = _air.FloorCelsiusAfter;
        state.AirHeaterWatts = _air.HeaterWatts;
        double seconds = step.Hours * UnitConstants.SecondsPerHour;
        double gains = 0;
        double losses = 0;
        for (int b = 0; b < step.BasinCount; b++)
        {
            if (_farm.Network.LitresAfter[b] <= 0)
            {
                continue;
            }

            gains += _gainWatts[b];
            losses += (step.HeatWattsPerKelvin[b] * _farm.State.TemperatureAfter[b]) - (step.HeatWatts[b] - _gainWatts[b]);
        }

        books.Post(Door.Gains, FarmBooks.Heat, gains * seconds / 1e6);
        books.Post(Door.LossToHouse, FarmBooks.Heat, -losses * seconds / 1e6);
        double kilowattHours = step.Hours / UnitConstants.GramsPerKilogram;
        _lamps.Commit();
        _nurseryLamps.Commit();
        _motors.Commit();
        (double fans, double padPump) = CommitVentilation();
        state.ElectricWatts = _lamps.Watts + _nurseryLamps.Watts + _motors.PumpWatts + _motors.BlowerWatts + fans + padPump;
        if (_air.HeaterWatts > 0 && parts.AirHeaterSource is { } source)
        {
            double megajoules = _air.HeaterWatts * seconds / 1e6;
            totals.AirHeatMegajoules += megajoules;
            totals.AirFuelUnits += _airFuelUnits;
            totals.FuelCarbonDioxideKilograms += source.Fuel.CarbonDioxideKilograms(_airFuelUnits);
            totals.PurgeHeatMegajoules += _air.PurgeHeaterWatts * seconds / 1e6;
            totals.PurgeFuelUnits += _airFuelUnits * _air.PurgeHeaterWatts / _air.HeaterWatts;
            totals.AirHeatPumpKilowattHours += parts.AirHeatPump.UnitsFor(megajoules, _air.AirCelsius, state.OutsideCelsius);
            state.ElectricWatts += source.Fuel.IsElectric ? _airFuelUnits / kilowattHours : 0;
        }
    }

    // Fans, pad and airing of the step; the pad's water comes from the source and never meets the farm's.
    private (double FanWatts, double PadWatts) CommitVentilation()
    {
        HouseDescription house = _farm.Parts.Farm.House;
        FarmTotals totals = _farm.State.Totals;
        double hours = _farm.Step.Hours;
        double vented = (_air.VentCubicMetresPerSecond + _air.PurgeCubicMetresPerSecond) * UnitConstants.SecondsPerHour;
        double fans = house.Fans is { } fan ? vented / fan.CubicMetresPerWattHour : 0;
        double pump = 0;
        totals.FanKilowattHours += fans * hours / UnitConstants.GramsPerKilogram;
        totals.PurgeHours += _air.PurgeCubicMetresPerSecond > 0 ? hours : 0;
        if (_air.PadWetShare > 0 && house.EvaporativePad is { } pad)
        {
            pump = pad.PowerWatts * _air.PadWetShare;
            double litres = _air.PadKilogramsPerHour * (1 + pad.BleedShare) * hours;
            totals.PadKilowattHours += pump * hours / UnitConstants.GramsPerKilogram;
            totals.PadLitres += litres;
            totals.PadHours += _air.PadWetShare * hours;
            _farm.State.Books.Post(Door.SourceWater, FarmBooks.Water, litres);
            _farm.State.Books.Post(Door.EvaporativePad, FarmBooks.Water, -litres);
        }

        _carbonDioxide.Commit(vented + (house.InfiltrationPerHour * house.AirCubicMetres), vented <= 0, _farm.State.House.NaturalPhotons);
        return (fans, pump);
    }

    /// <summary>Ends a day.</summary>
    public void EndDay() => _carbonDioxide.EndDay();

    // The air heater is solved first, so it takes its fuel before the heaters of the water ask for theirs.
    private void TakeFuel()
    {
        FarmParts parts = _farm.Parts;
        _airFuelUnits = _air.HeaterWatts > 0 && parts.AirHeaterSource is { } source
            ? source.UnitsFor(_air.HeaterWatts * _farm.Step.Hours * UnitConstants.SecondsPerHour / 1e6, _air.AirCelsius, _farm.State.House.OutsideCelsius)
            : 0;
        if (parts.AirHeaterTank >= 0)
        {
            _farm.FuelTaken[parts.AirHeaterTank] += _airFuelUnits * UnitConstants.LitresPerUsGallon;
        }
    }

    // What a square metre of each basin would give to the air, were it open.
    private void FindSurfaces(HouseState state)
    {
        Basins basins = _farm.State.Basins;
        double bubbled = _farm.Parts.Practice.BubblingEvaporation;
        for (int b = 0; b < basins.Count; b++)
        {
            bool bubbling = _farm.Parts.Basins[b].AirLitresPerMinute > 0 && basins.AirShare[b] * _farm.Running.Air[b] > 0;
            _water[b] = basins.Celsius[b];
            _activity[b] = bubbling ? bubbled : 1;
        }

        for (int first = 0; first < _water.Length; first += Fours.Width)
        {
            SurfaceLanes surface = WaterSurface.At(
                Vector256.Create(_water, first), state.AirCelsius, state.VapourPressureKilopascal, _pressure,
                Vector256.Create(_activity, first), state.AirCelsius);
            surface.Evaporation.CopyTo(_evaporation, first);
            surface.Slope.CopyTo(_slope, first);
            surface.Latent.CopyTo(_latent, first);
            (surface.Convective + surface.Radiative).CopyTo(_sensible, first);
        }
    }

    // Open surface of a basin: heat by its linearization about the present temperature, and evaporation.
    private (double Sensible, double Vapour) AddSurface(int b, HouseState state)
    {
        double wall = _farm.Parts.Basins[b].WallWattsPerKelvin;
        if (_farm.State.Basins.Litres[b] <= 0)
        {
            return (0, 0);
        }

        double open = _farm.OpenSquareMetres(b);
        if (open <= 0)
        {
            return (wall, 0);
        }

        double water = _water[b];
        _farm.Step.HeatWatts[b] -= open * (_latent[b] + _sensible[b] - (_slope[b] * water));
        _farm.Step.HeatWattsPerKelvin[b] += open * _slope[b];
        double vapour = open * Math.Max(0, _evaporation[b]);
        _farm.Step.VapourLitresPerHour[b] += vapour;
        double difference = water - state.AirCelsius;
        double film = Math.Abs(difference) > 0.2 ? _sensible[b] / difference : _slope[b] / 2;
        return ((open * Math.Max(0, film)) + wall, vapour);
    }
}
