using FarmTwin.Engine;
using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Energy;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>The farm as the clock sees it: one step of the continuous state. Every process is listed here, once.</summary>
/// <remarks>Work is listed in <see cref="FarmWorks"/>; events reach it by <see cref="FarmEvents"/>.</remarks>
internal sealed class FarmDay : IHybridModel, IGuardedModel
{
    private readonly FarmContext _farm;
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
    private readonly AlgaeProcess _algae;
    private readonly ToxicantProcess _toxicants;
    private readonly ProbeProcess _probes;
    private readonly Thermostats _thermostats;
    private readonly FarmWorks _works;
    private readonly FarmEvents _events;
    private readonly StepChoice _stepChoice;
    private readonly SeasonRecord _record;
    private readonly int[] _throttle;

    public FarmDay(FarmContext farm, FarmLog log, HouseProcess house, SeasonRecord record, RandomStreams streams)
    {
        _farm = farm;
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
        _algae = new AlgaeProcess(farm);
        _toxicants = new ToxicantProcess(farm);
        _probes = new ProbeProcess(farm, streams);
        _thermostats = new Thermostats(farm, _probes);
        _record = record;
        _works = new FarmWorks(farm, log, _plants, _probes);
        _events = new FarmEvents(farm, _works, new DayEnd(farm, log, record, _works, house, _plants, _algae), _heat);
        _stepChoice = new StepChoice(farm, _probes);
        string[] filters = parts.FilterNames;
        _throttle = [.. parts.Farm.Pipes.Values.Select(p => p.ThrottledBy is null ? -1 : Array.IndexOf(filters, p.ThrottledBy))];
    }

    public long LongestStepSeconds => _stepChoice.LongestSeconds(NowSeconds);

    public long NowSeconds { get; set; }

    public PlantProcess Plants => _plants;

    public PlannedWork Planned => _works.Planned;

    public CouplingWork Coupling => _works.Coupling;

    public FaultWork Faults => _works.Faults;

    public HouseProcess House => _house;

    /// <summary>The one guard is the alarm box's: how much of it nobody has been told yet.</summary>
    public double GuardValue(int guard) => _farm.State.Alarms.Changes.Count;

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
        NowSeconds = entry.TimeSeconds;
        _events.Fire(entry, simulation);
    }

    public void Record(long timeSeconds)
    {
        NowSeconds = timeSeconds;
        _record.Instant(timeSeconds);
        if (_works.Faults.IsFollowed(timeSeconds))
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
        _stepChoice.Begin();
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
        _balance.Commit(state.Basins, step);
        for (int b = 0; b < step.BasinCount; b++)
        {
            state.Basins.Litres[b] = network.LitresAfter[b];
            state.Basins.Celsius[b] = state.TemperatureAfter[b];
        }

        _fish.CommitDeaths();
        _probes.Commit(fromSeconds, step.ToSeconds);
        _stepChoice.Follow(step.ToSeconds);
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

        _works.Faults.Observe(step.ToSeconds, step.Hours);
        if (_works.Faults.IsFollowed(step.ToSeconds))
        {
            _record.Faults.CountDead();
            _record.Faults.Add(step.ToSeconds);
        }
    }
}
