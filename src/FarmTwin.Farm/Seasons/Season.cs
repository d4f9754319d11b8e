using FarmTwin.Engine;
using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>A season of a farm: advance it, apply an event, look at it, save it, go back to a saved state.</summary>
/// <remarks>
/// Knows no files, no threads, no console. The same description, library, seed and replicate give the same bytes. Not thread-safe:
/// one season, one thread; several seasons may run at once.
/// </remarks>
public sealed class Season
{
    private readonly FarmContext _farm;
    private readonly FarmDay _day;
    private readonly Simulation _simulation;

    /// <summary>Assembles a farm and sets it to the midnight before its first day.</summary>
    /// <param name="farm">The description.</param>
    /// <param name="library">The parameter library.</param>
    /// <param name="seed">Seed of all chance.</param>
    /// <param name="replicate">Which repetition, from 0.</param>
    /// <exception cref="DescriptionException">The parts do not make a farm that can be computed.</exception>
    /// <exception cref="KeyNotFoundException">The library lacks something that the farm names.</exception>
    public Season(FarmDescription farm, FarmLibrary library, ulong seed, uint replicate = 0)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(library);
        Parts = new FarmParts(farm, library.With(farm.Parameters));
        var network = new FlowNetwork(farm);
        State = new FarmState(Parts, network.ValveNames.Length);
        _farm = new FarmContext(Parts, State, network);
        Log = new FarmLog();
        Record = new SeasonRecord(_farm);
        var house = new HouseProcess(_farm, new RandomStreams(seed, replicate));
        _day = new FarmDay(_farm, Log, house, Record, new RandomStreams(seed, replicate));
        _simulation = new Simulation(_day, new SimulationOptions { GuardPhase = FarmPhase.Guard, RecordIntervalSeconds = 3600 });
        _farm.Calendar = _simulation.Calendar;
        if (Parts.Alarms.Points.Length > 0)
        {
            _simulation.Guards.Add(new Guard("alarm box", 1, 0, GuardDirection.Rising, (int)FarmEventKind.AlarmChange));
        }

        Seed = seed;
        Replicate = replicate;
        Fill();
        Schedule();
        Span<double> stocks = stackalloc double[FarmBooks.Count];
        Stocks(stocks);
        State.Books.Open(stocks);
    }

    /// <summary>What does not change.</summary>
    public FarmParts Parts { get; }

    /// <summary>What changes. Look, do not touch: change it by <see cref="Apply"/>.</summary>
    public FarmState State { get; }

    /// <summary>The event record.</summary>
    public FarmLog Log { get; }

    /// <summary>Rows by day and hour, and peaks.</summary>
    public SeasonRecord Record { get; }

    /// <summary>The seed.</summary>
    public ulong Seed { get; }

    /// <summary>The replicate.</summary>
    public uint Replicate { get; }

    /// <summary>Now, seconds from the midnight of day 0.</summary>
    public long NowSeconds => _simulation.NowSeconds;

    /// <summary>Length of the season, s.</summary>
    public long LengthSeconds => (long)Math.Round(Parts.Farm.LengthDays * UnitConstants.SecondsPerDay);

    /// <summary>Feed that the plan settles to, g/d.</summary>
    public double SteadyFeedGramsPerDay => _day.Coupling.SteadyFeedGramsPerDay;

    /// <summary>The coupling's gates as they stand now, with what is read and what it is held against; empty without a coupling.</summary>
    public IReadOnlyList<GateReading> CouplingGates() => _day.Coupling.Readings(NowSeconds);

    /// <summary>Weather of the season.</summary>
    public SeasonWeather Weather => _day.House.Weather;

    /// <summary>The house with its losses.</summary>
    public HouseAirBalance House => _day.House.House;

    /// <summary>The pipes and their flows. Look, do not touch.</summary>
    public FlowNetwork Network => _farm.Network;

    /// <summary>Runs to a time, inclusive of the events at it.</summary>
    /// <param name="untilSeconds">Seconds from the midnight of day 0, not before now.</param>
    public void Advance(long untilSeconds) => _simulation.RunTo(untilSeconds);

    /// <summary>Runs to the end.</summary>
    public void AdvanceToEnd() => Advance(LengthSeconds);

    /// <summary>Applies an event now.</summary>
    public void Apply(PlannedEvent planned) => _day.Planned.Apply(planned, NowSeconds);

    /// <summary>The closing stock of every ledger, [<see cref="FarmBooks.Count"/>].</summary>
    public double[] ClosingStocks()
    {
        var stocks = new double[FarmBooks.Count];
        Stocks(stocks);
        return stocks;
    }

    /// <summary>Saves everything that a later <see cref="Restore"/> needs to go on bit for bit.</summary>
    public SeasonSnapshot Save()
    {
        var state = new FarmState(Parts, State.ValveFlow.Length);
        state.CopyFrom(State);
        var log = new FarmLog();
        log.CopyFrom(Log);
        var record = new SeasonRecord(new FarmContext(Parts, state, _farm.Network));
        record.CopyFrom(Record);
        return new SeasonSnapshot(Parts, state, log, record, _simulation.Save(), (double[])_farm.Network.EdgeFlow.Clone());
    }

    /// <summary>Goes back (or on) to a saved state of this or an equal season.</summary>
    public void Restore(SeasonSnapshot snapshot)
    {
        ArgumentNullException.ThrowIfNull(snapshot);
        State.CopyFrom(snapshot.State);
        Log.CopyFrom(snapshot.Log);
        Record.CopyFrom(snapshot.Record);
        _simulation.Restore(snapshot.Simulation);
        snapshot.EdgeFlow.CopyTo(_farm.Network.EdgeFlow, 0);
        _day.NowSeconds = _simulation.NowSeconds;
        _farm.Running.Refresh(NowSeconds);
    }

    /// <summary>
    /// Takes over the state of another season of an alike farm, and goes on from there by this one's own plan: what this plan had for the
    /// days that are over is left out.
    /// </summary>
    /// <remarks>
    /// Settings stay as the other left them (valves, heaters, ration, air, shade) until an event changes them; so do its open faults and
    /// mishaps. Only in a season that has not been advanced. Backups may be added behind those of the other; they are full, and start at once where they are wanted.
    /// </remarks>
    /// <param name="snapshot">The other's state.</param>
    /// <exception cref="DescriptionException">The farms differ in what cannot be changed on the way; the message names it.</exception>
    public void TakeOver(SeasonSnapshot snapshot)
    {
        ArgumentNullException.ThrowIfNull(snapshot);
        if (SeasonLikeness.Difference(Parts, snapshot.Parts) is { } difference)
        {
            throw new DescriptionException($"'{Parts.Farm.Title}' cannot go on from '{snapshot.Parts.Farm.Title}': {difference}.");
        }

        State.CopyFrom(snapshot.State);
        Log.CopyFrom(snapshot.Log);
        Record.CopyFrom(snapshot.Record);
        snapshot.EdgeFlow.CopyTo(_farm.Network.EdgeFlow, 0);
        _simulation.TakeOver(snapshot.Simulation, e => SeasonLikeness.AroseOnTheWay((FarmEventKind)e.Kind));
        _day.NowSeconds = _simulation.NowSeconds;
        _farm.Running.Refresh(NowSeconds);
        if (Parts.Farm.Backups.Count > snapshot.Parts.Farm.Backups.Count)
        {
            _day.Faults.BackupsAdded(NowSeconds);
        }
    }

    private void Stocks(Span<double> stocks)
    {
        stocks.Clear();
        FarmBooks.AddWaterStocks(State.Basins, stocks);
        SolidsProcess.AddStocks(_farm, stocks);
        FishProcess.AddStocks(_farm, stocks);
        PhosphatePrecipitation.AddStocks(_farm, stocks);
        CalciteScale.AddStocks(_farm, stocks);
        AlgaeProcess.AddStocks(_farm, stocks);
        _day.Plants.AddStocks(stocks);
        Market.AddStocks(_farm, stocks);
    }

    private void Fill()
    {
        Basins basins = State.Basins;
        SourceWaterComposition source = Parts.SourceWater;
        for (int b = 0; b < basins.Count; b++)
        {
            BasinDescription basin = Parts.Basins[b];
            double litres = basin.FirstFillingLitres;
            basins.Litres[b] = litres;
            basins.Celsius[b] = basin.InitialTemperatureCelsius;
            for (int substance = 0; substance <= Substance.LastDissolved; substance++)
            {
                basins.Grams[WaterStep.At(b, substance)] = source.GramsPerLitre[substance] * litres;
            }

            basins.Grams[WaterStep.At(b, Substance.Chlorine)] = State.Husbandry.SourceChlorineGramsPerLitre * litres;
            basins.Grams[WaterStep.At(b, Substance.Oxygen)] = litres / UnitConstants.GramsPerKilogram
                * OxygenSaturation.MilligramsPerLitre(basins.Celsius[b], Parts.PressureAtmospheres);
            Ions ions = Basins.IonsOf(source.GramsPerLitre, 1);
            CarbonateConstants constants = CarbonateConstants.At(basins.Celsius[b]);
            double strength = IonicStrength.MolesPerLitre(ions);
            basins.Alkalinity[b] = Alkalinity.EquivalentsPerLitre(ions);
            CarbonateState state = CarbonateSystem.Solve(
                basins.Alkalinity[b], source.GramsPerLitre[Substance.InorganicCarbon] / UnitConstants.AtomicWeight.Carbon,
                ions.P, ions.TAN, constants, strength, Parts.Farm.SourceWater.PH);
            basins.PH[b] = state.PH;
            basins.CarbonDioxideMoles[b] = state.CarbonDioxideMolesPerLitre;
            Film film = FilmGrowth.AtShare(
                Parts.Nitrification, Parts.Nitrification.TapWaterInoculumShare, Parts.Nitrification.TapWaterInoculumShare);
            basins.AmmoniaOxidizers[b] = film.AmmoniaOxidizersGramsCodPerSquareMetre;
            basins.NitriteOxidizers[b] = film.NitriteOxidizersGramsCodPerSquareMetre;
        }

        _day.Plants.Surfaces.SetAreas();
        for (int f = 0; f < Parts.Filters.Length; f++)
        {
            int b = Parts.FilterBasin[f];
            double beads = Parts.FilterMedia[f].PackedAreaSquareMetres(Parts.Filters[f].BeadsLitres);
            FilmGrowth.Seed(
                Parts.Nitrification, ref basins.AmmoniaOxidizers[b], ref basins.NitriteOxidizers[b],
                Parts.Filters[f].MatureMediaShare * beads / basins.FilmSquareMetres[b]);
        }

        for (int m = 0; m < Parts.Mineralizers.Length; m++)
        {
            basins.AirShare[Parts.MineralizerBasin[m]] = 0;
        }

        State.House.ShadeShare = Parts.Farm.House.ShadeShare;
        State.House.CarbonDioxidePpm = Parts.Farm.House.CarbonDioxidePpm;
        State.House.AirCelsius = Parts.Farm.House.AirHeater?.HoldCelsius ?? _day.House.Weather.At(0, 0).TemperatureCelsius;
        State.House.FloorCelsius = State.House.AirCelsius;
        State.House.VapourPressureKilopascal = 0.8 * Psychrometrics.SaturationPressureKilopascal(State.House.AirCelsius);
        _farm.Network.Solve(basins.Litres, new double[basins.Count], State.ValveFlow, 1);
    }

    private void Schedule()
    {
        RoutineSet routines = _simulation.Routines;
        const long day = UnitConstants.SecondsPerDay;
        routines.Add(new Routine(day, day, FarmPhase.Crop, (int)FarmEventKind.Midnight));
        if (Parts.FuelTanks.Length > 0)
        {
            const long hour = (long)UnitConstants.SecondsPerHour;
            routines.Add(new Routine(hour, hour, FarmPhase.Equipment, (int)FarmEventKind.FuelCheck));
        }

        Daily(7, FarmPhase.Husbandry, FarmEventKind.MineralizerCheck, 0);
        Daily(7, FarmPhase.Husbandry, FarmEventKind.MorningRound, 0);
        Daily(9, FarmPhase.Husbandry, FarmEventKind.FilterCheck, 0);
        Daily(17, FarmPhase.Husbandry, FarmEventKind.FilterCheck, 0);
        Daily(9, FarmPhase.Crop, FarmEventKind.Transplant, 0);
        for (int meal = 0; meal < Parts.Farm.Feeding.MealHours.Count; meal++)
        {
            Daily(Parts.Farm.Feeding.MealHours[meal], FarmPhase.Husbandry, FarmEventKind.Meal, meal);
        }

        int weekday = (int)Parts.Farm.Start.DayOfWeek is 0 ? 7 : (int)Parts.Farm.Start.DayOfWeek;
        const int saleWeekday = 4;
        Weekly(weekday, saleWeekday, 10, FarmPhase.Husbandry, FarmEventKind.FishSale, 0);
        for (int crop = 0; crop < Parts.CropPlans.Length; crop++)
        {
            CropPlanDescription plan = Parts.CropPlans[crop];
            if (Parts.Schedules[crop].EverSows)
            {
                if (Parts.Farm.Nursery is null)
                {
                    throw new DescriptionException(
                        $"crops.{Parts.CropNames[crop]}: sowing needs a nursery; describe one under 'nursery', or sow nothing.");
                }

                routines.Add(new Routine(
                    FarmWork.At(plan.FirstSowingDay, 11), (long)(plan.SowEveryDays * day), FarmPhase.Crop, (int)FarmEventKind.Sow)
                { Argument0 = crop });
            }

            foreach (double harvest in plan.HarvestWeekdays)
            {
                Weekly(weekday, (int)harvest, 10, FarmPhase.Crop, Parts.Crops[crop].Fruit is null ? FarmEventKind.HarvestBoards : FarmEventKind.Pick, crop);
            }
        }

        for (int kind = 0; kind < Parts.MicrogreenPlans.Length; kind++)
        {
            foreach (double sowing in Parts.MicrogreenPlans[kind].SowWeekdays)
            {
                Weekly(weekday, (int)sowing, 11, FarmPhase.Crop, FarmEventKind.SowMicrogreens, kind);
            }
        }

        if (Parts.MicrogreenPlans.Length > 0)
        {
            Daily(8, FarmPhase.Crop, FarmEventKind.CutMicrogreens, 0);
        }

        if (Parts.Farm.Nursery is { Watering: { } watering } nursery)
        {
            for (int time = 0; time < watering.TimesADay; time++)
            {
                Daily((nursery.LightsFromHour + (time * UnitConstants.HoursPerDay / watering.TimesADay)) % UnitConstants.HoursPerDay,
                    FarmPhase.Crop, FarmEventKind.WaterNursery, 0);
            }
        }

        for (int rule = 0; rule < Parts.Farm.Dosing.Count; rule++)
        {
            DosingDescription dosing = Parts.Farm.Dosing.Values.ElementAt(rule);
            routines.Add(new Routine(
                FarmWork.At(dosing.FromDay, 13), (long)(dosing.EveryDays * day), FarmPhase.Husbandry, (int)FarmEventKind.DosingCheck)
            { Argument0 = rule });
        }

        for (int p = 0; p < Parts.Plantings.Length; p++)
        {
            PlantingDescription planting = Parts.Plantings[p].Plan;
            Once(planting.SetOutDay - Parts.CropPlans[Parts.Plantings[p].Crop].NurseryDays, 11, FarmEventKind.SowPlanting, p);
            Once(planting.SetOutDay, 9, FarmEventKind.SetOut, p);
            if (planting.TopDay is { } top)
            {
                Once(top, 9, FarmEventKind.TopPlants, p);
            }

            if (planting.ClearDay is { } clear)
            {
                Once(clear, 10, FarmEventKind.ClearBeds, p);
            }
        }

        for (int planned = 0; planned < Parts.Farm.Plan.Count; planned++)
        {
            PlannedEvent item = Parts.Farm.Plan.Values.ElementAt(planned);
            _simulation.Calendar.Schedule(
                FarmWork.At(item.Day, item.Hour), FarmPhase.Equipment, (int)FarmEventKind.Planned, planned);
        }

        void Once(double day, double hour, FarmEventKind kind, int argument) =>
            _simulation.Calendar.Schedule(FarmWork.At(day, hour), FarmPhase.Crop, (int)kind, argument);

        void Daily(double hour, int phase, FarmEventKind kind, int argument) =>
            routines.Add(new Routine(FarmWork.At(0, hour), day, phase, (int)kind) { Argument0 = argument });

        void Weekly(int startWeekday, int weekdayWanted, double hour, int phase, FarmEventKind kind, int argument) =>
            routines.Add(new Routine(
                FarmWork.At((weekdayWanted - startWeekday + 7) % 7, hour), 7 * day, phase, (int)kind)
            { Argument0 = argument });
    }
}
