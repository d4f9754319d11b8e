using FarmTwin.Engine;
using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Energy;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>The farm as the clock sees it: one step of the continuous state, and the events of the day. Every process is listed here, once.</summary>
internal sealed class FarmDay : IHybridModel, IGuardedModel
{
    private const long FineStepSeconds = 60;
    private const long FineHoldSeconds = 1800;

    private const double LeastSpillLogged = 1;

    private readonly FarmContext _farm;
    private readonly FarmLog _log;
    private readonly WaterBalance _balance;
    private readonly HeatBalance _heat;
    private readonly HeatSupply _supply;
    private readonly HouseProcess _house;
    private readonly AirExchange _air;
    private readonly CarbonateStore _carbonate;
    private readonly PhosphatePrecipitation _phosphate;
    private readonly CalciteScale _scale;
    private readonly IronLoss _iron;
    private readonly DoseProcess _doses;
    private readonly FishProcess _fish;
    private readonly FilmProcess _films;
    private readonly SolidsProcess _solids;
    private readonly MineralizationProcess _mineralization;
    private readonly PlantProcess _plants;
    private readonly BedProcess _beds;
    private readonly Market _market;
    private readonly Bookkeeping _bookkeeping;
    private readonly Rounds _rounds;
    private readonly FeedingWork _feeding;
    private readonly FishTrade _trade;
    private readonly FishArrivals _arrivals;
    private readonly QuarantineCare _quarantine;
    private readonly Mishaps _mishaps;
    private readonly AlgaeProcess _algae;
    private readonly ToxicantProcess _toxicants;
    private readonly MineralizerCare _mineralizers;
    private readonly FilterCare _filters;
    private readonly CropWork _crops;
    private readonly BedWork _bedWork;
    private readonly FuelWork _fuel;
    private readonly LaneWork _lanes;
    private readonly FrostWork _frost;
    private readonly MicrogreenWork _microgreens;
    private readonly SeedBedRound _seedBeds;
    private readonly DosingWork _dosing;
    private readonly NutrientWatch _leaves;
    private readonly StartUpWork _startUp;
    private readonly CouplingWork _coupling;
    private readonly FaultWork _faults;
    private readonly PlannedWork _planned;
    private readonly ProbeProcess _probes;
    private readonly AlarmWork _alarms;
    private readonly Chores _chores;
    private readonly Thermostats _thermostats;
    private readonly PlannedEvent[] _events;
    private readonly int[] _throttle;
    private readonly double[] _oxygenBefore;
    private readonly long _longest;

    public FarmDay(FarmContext farm, FarmLog log, HouseProcess house, SeasonRecord record, RandomStreams streams)
    {
        _farm = farm;
        _log = log;
        FarmParts parts = farm.Parts;
        _balance = new WaterBalance(farm.Network);
        _heat = new HeatBalance(farm.Network, parts.HeaterBasin);
        _supply = new HeatSupply(farm, _heat);
        _house = house;
        _air = new AirExchange(farm);
        _carbonate = new CarbonateStore(farm);
        _phosphate = new PhosphatePrecipitation(farm);
        _scale = new CalciteScale(farm);
        _iron = new IronLoss(farm);
        _doses = new DoseProcess(farm);
        _fish = new FishProcess(farm);
        _films = new FilmProcess(farm);
        _solids = new SolidsProcess(farm);
        _mineralization = new MineralizationProcess(farm);
        _plants = new PlantProcess(farm);
        _beds = new BedProcess(farm);
        _market = new Market(farm, log);
        _bookkeeping = new Bookkeeping(farm);
        _rounds = new Rounds(farm, log);
        _feeding = new FeedingWork(farm, log);
        _trade = new FishTrade(farm, log, _market);
        _arrivals = new FishArrivals(farm, log);
        var changes = new WaterChanges(farm, log);
        _quarantine = new QuarantineCare(farm, log, changes);
        _mineralizers = new MineralizerCare(farm, log);
        _filters = new FilterCare(farm, log, _mineralizers);
        _mishaps = new Mishaps(farm, log, _feeding, _filters, _mineralizers, changes);
        _algae = new AlgaeProcess(farm);
        _toxicants = new ToxicantProcess(farm);
        _crops = new CropWork(farm, log, _plants);
        _bedWork = new BedWork(farm, log, _plants, _market);
        _fuel = new FuelWork(farm, log);
        _lanes = new LaneWork(farm, log, _plants, _market);
        _frost = new FrostWork(farm, log, _plants);
        _seedBeds = new SeedBedRound(farm, log);
        _microgreens = new MicrogreenWork(farm, log, _plants, _market);
        _dosing = new DosingWork(farm, log);
        _leaves = new NutrientWatch(farm, log);
        _startUp = new StartUpWork(farm, log, _dosing);
        _coupling = new CouplingWork(farm, log, _trade);
        _faults = new FaultWork(farm, log, new BackupWork(farm, log));
        _probes = new ProbeProcess(farm, streams);
        _alarms = new AlarmWork(farm, log, _probes, _coupling, _faults);
        _chores = new Chores(farm, log, _alarms.People, _dosing);
        _thermostats = new Thermostats(farm, _probes);
        _planned = new PlannedWork(farm, log, _dosing, _trade, _faults, _bedWork, _arrivals, changes, _mishaps);
        _record = record;
        _events = [.. parts.Farm.Plan.Values];
        string[] filters = parts.FilterNames;
        _throttle = [.. parts.Farm.Pipes.Values.Select(p => p.ThrottledBy is null ? -1 : Array.IndexOf(filters, p.ThrottledBy))];
        _oxygenBefore = new double[parts.Basins.Length];
        _longest = (long)Math.Round(parts.Farm.StepMinutes * 60);
    }

    public long LongestStepSeconds => _farm.State.Operations.FineUntilSeconds > NowSeconds || PowerAirOrFlowIsOff()
        ? Math.Min(FineStepSeconds, _longest)
        : Math.Min(_probes.LongestStepSeconds(), _longest);

    public long NowSeconds { get; set; }

    public PlantProcess Plants => _plants;

    public PlannedWork Planned => _planned;

    public CouplingWork Coupling => _coupling;

    public FaultWork Faults => _faults;

    public HeatBalance Heat => _heat;

    public HouseProcess House => _house;

    /// <summary>The one guard is the alarm box's: how much of it nobody has been told yet.</summary>
    public double GuardValue(int guard) => _farm.State.Alarms.Changes.Count;

    private readonly SeasonRecord _record;

    /// <summary>One step of everything that flows.</summary>
    public void Advance(long fromSeconds, long toSeconds)
    {
        WaterStep step = _farm.Step;
        FarmState state = _farm.State;
        FlowNetwork network = _farm.Network;
        step.Open(fromSeconds, toSeconds);
        _farm.Running.Refresh(fromSeconds);
        _probes.Begin();
        _farm.ClearDemands();
        _farm.Warmth.Refresh(state.Basins, state.House.CarbonDioxidePpm / _farm.Parts.Farm.House.CarbonDioxidePpm);
        _farm.Chemistry.Refresh(state.Basins);

        // Light, air and vapour by the water of the start; then volumes, exactly.
        StepLight light = _house.Begin();
        double transpiration = _plants.Uptakes.Transpire(light);
        _house.Contribute(transpiration);
        _plants.Uptakes.AddVapour();
        Throttle();
        _beds.SetLevels();
        network.Solve(state.Basins.Litres, step.VapourLitresPerHour, _farm.Running.ValveFlow, step.Hours);
        _balance.Open(step);

        SolveHeat();
        _air.Contribute();
        _carbonate.Contribute();
        _phosphate.Contribute();
        _scale.Contribute();
        _iron.Contribute(light);
        _doses.Contribute();
        _toxicants.Contribute();
        _algae.Contribute();
        _fish.Contribute();
        _solids.Contribute();
        _mineralization.Contribute();
        _plants.Contribute(light);
        _plants.Uptakes.Contribute(light);
        _beds.Contribute();

        // Solids first: what they release feeds the others. Then what acts within minutes, then the ions, then carbon at their charge.
        _balance.SolveSolids(state.Basins, step);
        _solids.Release();
        _films.Solve(_balance);
        _balance.SolveIons(state.Basins, step);
        _mineralization.Release();
        _scale.Release();
        _air.SolveCarbon(_balance);

        Commit(fromSeconds);
    }

    public void Fire(in CalendarEntry entry, Simulation simulation)
    {
        long now = entry.TimeSeconds;
        NowSeconds = now;
        if ((FarmEventKind)entry.Kind == FarmEventKind.MorningRound)
        {
            // What began by mishap ends whether or not anybody comes.
            _mishaps.MorningRound(now);
        }

        if (_mishaps.IsMissed((FarmEventKind)entry.Kind, now, out long until))
        {
            if ((FarmEventKind)entry.Kind == FarmEventKind.SettlingEnds)
            {
                // The air stays off until somebody comes.
                simulation.Calendar.Schedule(until, FarmPhase.Husbandry, entry.Kind, entry.Argument0);
            }

            return;
        }

        if (_chores.IsMissed((FarmEventKind)entry.Kind, entry.Argument0, now))
        {
            return;
        }

        switch ((FarmEventKind)entry.Kind)
        {
            case FarmEventKind.Midnight:
                EndDay();
                break;
            case FarmEventKind.Meal:
                _feeding.Meal(now);
                break;
            case FarmEventKind.MorningRound:
                _faults.MorningRound(now);
                _rounds.Morning(now);
                _startUp.MorningRound(now);
                _arrivals.MorningRound(now);
                _quarantine.MorningRound(now);
                _fuel.MorningRound(now, simulation);
                _alarms.MorningRound(now);
                _coupling.MorningRound(now, _heat.LargestWatts);
                break;
            case FarmEventKind.FilterCheck:
                _filters.Check(now);
                break;
            case FarmEventKind.MineralizerCheck:
                _mineralizers.Check(now, simulation);
                break;
            case FarmEventKind.SettlingEnds:
                _mineralizers.EndSettling(entry.Argument0, now);
                break;
            case FarmEventKind.Sow:
                _crops.Sow(entry.Argument0, now);
                break;
            case FarmEventKind.Transplant:
                _seedBeds.Look(now);
                _crops.Transplant(now);
                break;
            case FarmEventKind.HarvestBoards:
                _lanes.HarvestBoards(entry.Argument0, now);
                break;
            case FarmEventKind.SowMicrogreens:
                _microgreens.Sow(entry.Argument0, now);
                break;
            case FarmEventKind.CutMicrogreens:
                _microgreens.Cut(now);
                break;
            case FarmEventKind.WaterNursery:
                _microgreens.Water(now);
                break;
            case FarmEventKind.SowPlanting:
                _bedWork.Sow(entry.Argument0, now);
                break;
            case FarmEventKind.SetOut:
                _bedWork.SetOut(entry.Argument0, now);
                break;
            case FarmEventKind.Pick:
                _bedWork.Pick(entry.Argument0, now);
                break;
            case FarmEventKind.TopPlants:
                _bedWork.Top(entry.Argument0, now);
                break;
            case FarmEventKind.ClearBeds:
                _bedWork.Clear(entry.Argument0, now);
                break;
            case FarmEventKind.FishSale:
                _trade.Sell(now);
                break;
            case FarmEventKind.DosingCheck:
                _dosing.Check(entry.Argument0, now);
                break;
            case FarmEventKind.Planned:
                _planned.Apply(_events[entry.Argument0], now);
                break;
            case FarmEventKind.FaultMended:
                _faults.Mended(entry.Argument0, now);
                break;
            case FarmEventKind.BackupStarts:
                _faults.BackupStarts(entry.Argument0, entry.Argument1, now);
                break;
            case FarmEventKind.BackupRunsOut:
                _faults.BackupRunsOut(entry.Argument0, entry.Argument1, now);
                break;
            case FarmEventKind.AlarmChange:
                _alarms.Announce(now, simulation);
                break;
            case FarmEventKind.AlarmCall:
                _alarms.Call(entry.Argument0, entry.Argument1, now, simulation);
                break;
            case FarmEventKind.AlarmLook:
                _alarms.Look(now, simulation);
                break;
            case FarmEventKind.AlarmArrival:
                _alarms.Arrive(entry.Argument0, now);
                break;
            case FarmEventKind.FuelCheck:
                _fuel.Check(now);
                break;
            case FarmEventKind.FuelDelivery:
                _fuel.Deliver(entry.Argument0, now);
                break;
            default:
                throw new InvalidOperationException($"The farm knows no event of kind {entry.Kind}.");
        }
    }

    public void Record(long timeSeconds)
    {
        NowSeconds = timeSeconds;
        _record.Instant(timeSeconds);
        if (_faults.IsFollowed(timeSeconds))
        {
            _record.Faults.Add(timeSeconds);
        }
    }

    private void Throttle()
    {
        for (int p = 0; p < _throttle.Length; p++)
        {
            _farm.Network.PumpShare[p] = _farm.Running.Pump[p] * (_throttle[p] < 0 ? 1 : BeadBed.FlowShare(
                _farm.Parts.Solids, FilterCare.HeldKilogramsPerCubicMetre(_farm, _throttle[p])));
        }

        for (int f = 0; f < _farm.Parts.Filters.Length; f++)
        {
            _films.SetOverdueFactor(
                _farm.Parts.FilterBasin[f],
                BeadBed.OverdueWashFactor(_farm.Parts.Solids, FilterCare.HeldKilogramsPerCubicMetre(_farm, f)));
        }
    }

    private void SolveHeat()
    {
        FarmState state = _farm.State;
        for (int h = 0; h < _heat.HoldCelsius.Length; h++)
        {
            _heat.HoldCelsius[h] = _thermostats.HoldCelsius(h, _farm.Step.FromSeconds);
        }

        _supply.Limit();
        _heat.Solve(state.Basins, _farm.Step, _farm.Parts.SourceWater.Celsius);
        _heat.After.CopyTo(state.TemperatureAfter, 0);
    }

    private void Commit(long fromSeconds)
    {
        WaterStep step = _farm.Step;
        FarmState state = _farm.State;
        FlowNetwork network = _farm.Network;
        for (int b = 0; b < _oxygenBefore.Length; b++)
        {
            _oxygenBefore[b] = state.Basins.MilligramsPerLitre(b, Substance.Oxygen);
        }

        _fish.Commit();
        _house.Commit();
        _plants.Uptakes.Commit();
        _beds.Commit();
        _solids.Commit();
        _mineralization.Commit();
        _films.Commit();
        _air.Commit();
        _carbonate.Commit();
        _phosphate.Commit();
        _scale.Commit();
        _iron.Commit();
        _doses.Commit();
        _toxicants.Commit();
        _algae.Commit();
        CommitHeatAndVapour();
        _balance.Commit(state.Basins, step, 0, Substance.Columns);
        for (int b = 0; b < step.BasinCount; b++)
        {
            state.Basins.Litres[b] = network.LitresAfter[b];
            state.Basins.Celsius[b] = state.TemperatureAfter[b];
        }

        _fish.CommitDeaths();
        _probes.Commit(fromSeconds, step.ToSeconds);
        ChooseStep(step.ToSeconds);
        NowSeconds = step.ToSeconds;
        FollowFaults(step);
        _record.Step(step.Hours * UnitConstants.SecondsPerHour);
    }

    private void CommitHeatAndVapour()
    {
        WaterStep step = _farm.Step;
        FarmState state = _farm.State;
        double evaporated = 0;
        double transpired = 0;
        double vapourHeat = 0;
        for (int b = 0; b < step.BasinCount; b++)
        {
            double lost = _farm.Network.Loss[b] * step.Hours;
            if (lost <= 0)
            {
                continue;
            }

            double plants = Math.Min(1, _plants.Uptakes.TranspirationOf(b) / step.VapourLitresPerHour[b]) * lost;
            transpired += plants;
            evaporated += lost - plants;
            vapourHeat += FarmBooks.MegajoulesOf(lost, state.TemperatureAfter[b]);
        }

        state.Books.Post(Door.Evaporation, FarmBooks.Water, -evaporated);
        state.Books.Post(Door.Transpiration, FarmBooks.Water, -transpired);
        state.Books.Post(Door.Evaporation, FarmBooks.Heat, -vapourHeat);
        state.Totals.EvaporatedLitres += evaporated;
        state.Totals.TranspiredLitres += transpired;
        _supply.Commit();
    }

    private void FollowFaults(WaterStep step)
    {
        if (_farm.State.Faults.Count == 0)
        {
            return;
        }

        _faults.Observe(step.ToSeconds, step.Hours);
        if (_faults.IsFollowed(step.ToSeconds))
        {
            _record.Faults.CountDead();
            _record.Faults.Add(step.ToSeconds);
        }
    }

    // Without power, and where a stocked tank is without its air or its flow, by the minute from the moment that it fails.
    private bool PowerAirOrFlowIsOff()
    {
        if (!_farm.State.Equipment.MainsOn)
        {
            return true;
        }

        for (int b = 0; b < _oxygenBefore.Length; b++)
        {
            if (_farm.State.Cohorts[b].Count > 0
                && ((_farm.Parts.Basins[b].AirLitresPerMinute > 0 && _farm.State.Basins.AirShare[b] * _farm.Running.Air[b] <= 0)
                    || _farm.Running.FlowIsOff(b)))
            {
                return true;
            }
        }

        return false;
    }

    // By the minute while a stocked basin is, or at this slope will be, short of oxygen.
    private void ChooseStep(long now)
    {
        PracticeParameters practice = _farm.Parts.Practice;
        for (int b = 0; b < _oxygenBefore.Length; b++)
        {
            if (_farm.State.Cohorts[b].Count == 0)
            {
                continue;
            }

            double oxygen = _farm.State.Basins.MilligramsPerLitre(b, Substance.Oxygen);
            double predicted = oxygen + Math.Min(0, oxygen - _oxygenBefore[b]);
            bool fine = _farm.State.Operations.FineUntilSeconds > now;
            if (predicted < practice.FineStepOxygen || (fine && oxygen < practice.CoarseStepOxygen))
            {
                _farm.State.Operations.FineUntilSeconds = now + FineHoldSeconds;
            }
        }
    }

    private void EndDay()
    {
        HouseState house = _farm.State.House;
        double nursery = house.HoursToday > 0 ? house.NurseryCelsiusHours / house.HoursToday : house.AirCelsius;
        _algae.EndDay();
        _mishaps.EndDay(NowSeconds);
        _frost.EndDay(NowSeconds);
        _plants.EndDay(nursery, FarmWork.DayOf(NowSeconds));
        _house.EndDay();
        _leaves.Look(NowSeconds);
        _crops.DailyLosses();
        _bedWork.EndDay(NowSeconds);
        _lanes.EndDay();
        _market.EndDay(NowSeconds);
        _bookkeeping.EndDay();
        _farm.State.Fuel.EndDay();
        _record.Day();
        if (NowSeconds % (UnitConstants.DaysPerWeek * UnitConstants.SecondsPerDay) == 0)
        {
            _bookkeeping.NewWeek();
            _market.NewWeek(NowSeconds);
        }

        house.NurseryCelsiusHours = 0;
        house.HoursToday = 0;
        house.NaturalMolesToday = 0;
        house.LampMolesToday = 0;
        FarmTotals totals = _farm.State.Totals;
        totals.FeedYesterdayGrams = totals.FeedTodayGrams;
        totals.FeedTodayGrams = 0;
        totals.UnexplainedDeathsYesterday = totals.UnexplainedDeathsToday;
        totals.UnexplainedDeathsToday = 0;
        double spilled = totals.SpilledLitres - totals.SpilledLitresLogged;
        if (spilled > LeastSpillLogged)
        {
            _log.Add(NowSeconds, "spill", "farm", spilled, "L", "water ran over a brim and out of the farm today: find the blocked return or the float valve that runs on");
            totals.SpilledLitresLogged = totals.SpilledLitres;
        }
    }
}
