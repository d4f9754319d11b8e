using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Climate;

/// <summary>Weather, light, the air of the house, and what it does to the water: evaporation, losses, gains.</summary>
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
    private readonly LampGroup[] _lamps;
    private readonly LampSchedule[] _schedule;
    private readonly NurseryLamps _nurseryLamps;
    private readonly double[] _gainWatts;
    private readonly double[] _pipeWatts;
    private readonly int[] _pipeTo;
    private readonly double[] _pumpHeat;
    private readonly double[] _blowerWatts;
    private readonly int[] _blowerBasinBlower;
    private double _pumpWatts;
    private double _lampWatts;
    private double _airFuelUnits;
    private HouseAir _air;

    /// <summary>Makes the process; generates the season's weather.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="streams">Chance.</param>
    public HouseProcess(FarmContext farm, RandomStreams streams)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        FarmDescription description = farm.Parts.Farm;
        SiteDescription site = description.Site;
        _weather = WeatherOf(farm.Parts, streams);
        _cover = CoverParameters.From(farm.Parts.Cover);
        _pressure = Psychrometrics.PressureKilopascal(site.ElevationMetres);
        _house = new HouseAirBalance(HouseOf(description.House));
        _carbonDioxide = new HouseCarbonDioxide(farm);
        _nurseryLamps = new NurseryLamps(farm);
        _lamps = [.. description.Lamps.Values.Select(l => LampGroup.Of(l, farm.Parts))];
        _schedule = new LampSchedule[farm.Parts.Basins.Length];
        _gainWatts = new double[farm.Parts.Basins.Length];
        _pumpHeat = new double[farm.Parts.Basins.Length];
        _pipeWatts = [.. description.Pipes.Values.Select(p => p.PowerWatts)];
        _pipeTo = [.. description.Pipes.Values.Select(p => farm.Parts.BasinIndex(p.To))];
        string[] blowers = [.. description.Blowers.Keys];
        _blowerWatts = [.. description.Blowers.Values.Select(b => b.PowerWatts)];
        _blowerBasinBlower = [.. farm.Parts.Basins.Select(b => b.Blower is null ? -1 : Array.IndexOf(blowers, b.Blower))];
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
        _lampWatts = 0;
        double sun = Math.Max(0, Math.Min(to, today.SunsetHours) - Math.Max(from, today.SunriseHours)) / step.Hours;
        LightLamps(from, to, today, sun);
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
        RunPumps();
        double conductance = 0;
        double weighted = 0;
        double evaporation = 0;
        double insideWatts = _cover.SolarTransmission * (1 - state.ShadeShare) * weather.RadiationWattsPerSquareMetre;
        for (int b = 0; b < parts.Basins.Length; b++)
        {
            (double sensible, double vapour) = AddSurface(b, state);
            evaporation += vapour;
            conductance += sensible;
            weighted += sensible * _farm.State.Basins.Celsius[b];
            double open = _farm.OpenSquareMetres(b);
            _gainWatts[b] = (parts.Practice.SolarAbsorption * insideWatts * open) + _pumpHeat[b];
            step.HeatWatts[b] += _gainWatts[b];
        }

        double blower = BlowerWatts();
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
            _lampWatts + _nurseryLamps.Watts,
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
        totals.LampKilowattHours += _lampWatts * kilowattHours;
        _nurseryLamps.Commit();
        totals.PumpKilowattHours += _pumpWatts * kilowattHours;
        totals.BlowerKilowattHours += BlowerWatts() * kilowattHours;
        (double fans, double padPump) = CommitVentilation();
        state.ElectricWatts = _lampWatts + _nurseryLamps.Watts + _pumpWatts + BlowerWatts() + fans + padPump;
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

    // Groups may overlap: their light adds up over a basin, and its lit hours reach from the first lamp to the last.
    private void LightLamps(double from, double to, in DailyWeather today, double sun)
    {
        WaterStep step = _farm.Step;
        Array.Clear(_farm.LampPhotons);
        Array.Clear(_schedule);
        Array.Fill(_farm.LitShare, sun);
        for (int l = 0; l < _lamps.Length; l++)
        {
            LampCondition condition = _farm.State.Equipment.Lamps[l];
            double lit = Lit(condition, _lamps[l].Schedule.LitHours(from, to, today.SunriseHours, today.SunsetHours) / step.Hours);
            bool dark = !_farm.Running.LampsPowered || condition == LampCondition.Dark;
            LampSchedule hours = condition == LampCondition.BurnsOn ? LampSchedule.Always : _lamps[l].Schedule;
            _lampWatts += _lamps[l].Watts * lit;
            foreach (int basin in _lamps[l].Basins)
            {
                _farm.LampPhotons[basin] += _lamps[l].Photons * lit;
                _farm.LitShare[basin] = Math.Max(_farm.LitShare[basin], Math.Min(1, sun + lit));
                _schedule[basin] = dark ? _schedule[basin] : _schedule[basin].Together(hours);
            }

            _farm.State.House.LampMolesToday += Par.LightIntegral(_lamps[l].Photons * lit, step.Hours) * _lamps[l].CropShare;
        }

        for (int b = 0; b < _schedule.Length; b++)
        {
            _farm.LitHoursOfDay[b] = _schedule[b].PhotoperiodHours(today.SunriseHours, today.SunsetHours);
        }
    }

    private static SeasonWeather WeatherOf(FarmParts parts, RandomStreams streams)
    {
        SiteDescription site = parts.Farm.Site;
        var where = new WeatherSite(site.LatitudeDegrees, site.LongitudeDegrees, site.ElevationMetres, site.TimeZoneHours);
        int days = (int)Math.Ceiling(parts.Farm.LengthDays) + 2;
        if (site.WeatherFile is { } file)
        {
            WeatherYear year = file.Year
                ?? throw new DescriptionException($"site.weatherFile: '{file.File}' was not read; whoever reads the scenario hands its hours over.");
            return new RecordedWeather(year, where, parts.Farm.Start, days, site.WarmerKelvin);
        }

        WeatherNormalsDescription normals = site.Normals
            ?? throw new DescriptionException("site: neither 'normals' nor a 'weatherFile' says what the weather is; state one of them.");
        return new WeatherGenerator(
            MonthlyNormals.Of(normals, site.WarmerKelvin), where, streams, parts.Climate, parts.Farm.Start, days);
    }

    // Lamps as their timer would have them, unless they or it are broken, or without power.
    private double Lit(LampCondition lamps, double byTimer) => !_farm.Running.LampsPowered || lamps == LampCondition.Dark ? 0
        : lamps == LampCondition.BurnsOn ? 1
        : byTimer;

    private void RunPumps()
    {
        _pumpWatts = 0;
        Array.Clear(_pumpHeat);
        for (int p = 0; p < _pipeWatts.Length; p++)
        {
            double watts = _pipeWatts[p] * _farm.Running.Pump[p];
            _pumpWatts += watts;
            _pumpHeat[_pipeTo[p]] += watts * _farm.Parts.Practice.PumpHeatShare;
        }

        for (int h = 0; h < _farm.Parts.Heaters.Length; h++)
        {
            _pumpWatts += _farm.Parts.Heaters[h].PowerWatts * _farm.Running.WaterHeater[h];
        }
    }

    private double BlowerWatts()
    {
        // A blower runs while any of its basins takes air.
        double watts = 0;
        for (int k = 0; k < _blowerWatts.Length; k++)
        {
            double share = 0;
            double all = 0;
            for (int b = 0; b < _blowerBasinBlower.Length; b++)
            {
                if (_blowerBasinBlower[b] == k)
                {
                    all += _farm.Parts.Basins[b].AirLitresPerMinute;
                    share += _farm.Parts.Basins[b].AirLitresPerMinute * Math.Min(1, _farm.State.Basins.AirShare[b]);
                }
            }

            watts += _farm.Running.Blower[k] * (all > 0 ? _blowerWatts[k] * share / all : _blowerWatts[k]);
        }

        return watts;
    }

    // Open surface of a basin: heat by its linearization about the present temperature, and evaporation.
    private (double Sensible, double Vapour) AddSurface(int b, HouseState state)
    {
        FarmParts parts = _farm.Parts;
        Basins basins = _farm.State.Basins;
        if (basins.Litres[b] <= 0)
        {
            return (0, 0);
        }

        double open = _farm.OpenSquareMetres(b);
        if (open <= 0)
        {
            return (parts.Basins[b].WallWattsPerKelvin, 0);
        }

        bool bubbling = parts.Basins[b].AirLitresPerMinute > 0 && basins.AirShare[b] * _farm.Running.Air[b] > 0;
        double water = basins.Celsius[b];
        SurfaceExchange surface = WaterSurface.At(
            water,
            state.AirCelsius,
            state.VapourPressureKilopascal,
            _pressure,
            bubbling ? parts.Practice.BubblingEvaporation : 1);
        _farm.Step.HeatWatts[b] -= open * (surface.LossWattsPerSquareMetre - (surface.SlopeWattsPerSquareMetreKelvin * water));
        _farm.Step.HeatWattsPerKelvin[b] += open * surface.SlopeWattsPerSquareMetreKelvin;
        double vapour = open * Math.Max(0, surface.EvaporationKilogramsPerSquareMetreHour);
        _farm.Step.VapourLitresPerHour[b] += vapour;
        double difference = water - state.AirCelsius;
        double film = Math.Abs(difference) > 0.2 ? surface.SensibleWattsPerSquareMetre / difference : surface.SlopeWattsPerSquareMetreKelvin / 2;
        return ((open * Math.Max(0, film)) + parts.Basins[b].WallWattsPerKelvin, vapour);
    }

    private HouseParameters HouseOf(HouseDescription house) => new()
    {
        FloorSquareMetres = house.FloorSquareMetres,
        CoverSquareMetres = house.CoverSquareMetres,
        CoverWattsPerKelvin = house.CoverSquareMetres * _cover.HeatTransferWattsPerSquareMetreKelvin,
        VolumeCubicMetres = house.AirCubicMetres,
        PerimeterWattsPerKelvin = house.PerimeterMetres * _farm.Parts.Climate.House.PerimeterWattsPerMetreKelvin,
        InfiltrationPerHour = house.InfiltrationPerHour,
        SolarTransmission = _cover.SolarTransmission,
        ParTransmission = _cover.ParTransmission,
        PressureKilopascal = _pressure,
        VentCubicMetresPerSecond = house.LargestVentilationPerHour * house.AirCubicMetres / UnitConstants.SecondsPerHour,
        VentSetPointCelsius = house.VentCelsius,
        HasThermalScreen = house.Screen,
        ScreenBelowCelsius = house.ScreenBelowCelsius ?? double.PositiveInfinity,
        PadEffectiveness = house.EvaporativePad is { } pad ? PadOf(house, pad) : 0,
        PadSetPointCelsius = house.EvaporativePad?.WetAtCelsius ?? double.PositiveInfinity,
        PurgeHumidityPercent = 100 * (house.HumidityPurge?.AboveShare ?? double.PositiveInfinity),
        PurgeCubicMetresPerSecond = (house.HumidityPurge?.LargestPerHour ?? 0) * house.AirCubicMetres / UnitConstants.SecondsPerHour,
        HeaterCapacityWatts = (house.AirHeater?.OutputKilowatts ?? 0) * UnitConstants.GramsPerKilogram,
        HeaterSetPointCelsius = house.AirHeater?.HoldCelsius ?? double.NegativeInfinity,
        Air = _farm.Parts.Climate.House,
    };

    private double PadOf(HouseDescription house, EvaporativePadDescription pad) => house.Fans is null
        ? throw new DescriptionException("house.evaporativePad: air must be drawn through a pad; describe the \"fans\" of the house.")
        : pad.WetAtCelsius < house.VentCelsius
            ? throw new DescriptionException(
                $"house.evaporativePad: it is wetted at {pad.WetAtCelsius:0.#} °C, below the {house.VentCelsius:0.#} °C at which the house is ventilated; set \"wetAt\" at or above \"ventAt\".")
            : pad.Effectiveness ?? _farm.Parts.Climate.Machines.PadEffectiveness;

    /// <summary>Lamps that travel together: their light spread over the crop they pass.</summary>
    private readonly record struct LampGroup(LampSchedule Schedule, int[] Basins, double Photons, double Watts, double CropShare)
    {
        public static LampGroup Of(LampDescription lamp, FarmParts parts)
        {
            int[] basins = [.. lamp.Over.Select(parts.BasinIndex)];
            double area = CropArea.SquareMetres(parts, b => lamp.Over.Contains(b));
            double lit = CropArea.SquareMetres(parts, b => parts.Farm.Lamps.Values.Any(l => l.Over.Contains(b)));
            double watts = lamp.Count * lamp.PowerWatts;
            return new LampGroup(
                new LampSchedule(lamp.BeforeSunriseHours, lamp.AfterSunsetHours),
                basins,
                area > 0 ? watts * lamp.EfficacyMicromolesPerJoule * lamp.UtilisationShare / area : 0,
                watts,
                lit > 0 ? area / lit : 0);
        }
    }
}
