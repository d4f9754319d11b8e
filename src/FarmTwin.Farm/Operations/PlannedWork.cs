using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Carries out single dated events.</summary>
public sealed class PlannedWork : FarmWork
{
    private readonly DosingWork _dosing;
    private readonly FishTrade _trade;
    private readonly FaultWork _faults;
    private readonly BedWork _beds;
    private readonly FishArrivals _arrivals;
    private readonly WaterChanges _changes;
    private readonly Mishaps _mishaps;
    private readonly CouplingWork _coupling;

    /// <summary>Makes it.</summary>
    public PlannedWork(FarmContext farm, FarmLog log, DosingWork dosing, FishTrade trade, FaultWork faults, BedWork beds, FishArrivals arrivals, WaterChanges changes, Mishaps mishaps, CouplingWork coupling)
        : base(farm, log)
    {
        _dosing = dosing;
        _trade = trade;
        _faults = faults;
        _beds = beds;
        _arrivals = arrivals;
        _changes = changes;
        _mishaps = mishaps;
        _coupling = coupling;
    }

    /// <summary>Applies an event now.</summary>
    /// <exception cref="DescriptionException">The event names a part that this farm does not have.</exception>
    public void Apply(PlannedEvent planned, long seconds)
    {
        if (planned is SetValve or SetHeater or SetRation or SetAir or SetShade or Decouple)
        {
            Spend(Chore.Adjust, 1);
        }

        switch (planned)
        {
            case SetValve set:
                State.ValveFlow[Index(Farm.Network.ValveNames, set.Valve, "valve")] = set.FlowLitresPerHour;
                Log.Add(seconds, "set valve", set.Valve, set.FlowLitresPerHour, "L/h", string.Empty);
                break;
            case Decouple:
                _coupling.Decouple(seconds);
                break;
            case PutRight:
                _faults.MendAll(seconds);
                _mishaps.EndAll(seconds);
                break;
            case Dose dose:
                _dosing.Pour(Parts.BasinIndex(dose.Basin), Known(dose.Supplement), dose.Grams, seconds);
                Log.Add(seconds, "dose", dose.Basin, dose.Grams, "g", Known(dose.Supplement).Title);
                break;
            case SetHeater heater:
                State.HeaterHold[Index([.. Parts.Farm.WaterHeaters.Keys], heater.Heater, "water heater")] = heater.HoldCelsius;
                Log.Add(seconds, "set heater", heater.Heater, heater.HoldCelsius, "°C", string.Empty);
                break;
            case SetRation ration:
                State.Operations.RationShare = ration.RationShare;
                Log.Add(seconds, "set ration", "all tanks", ration.RationShare, "of appetite", string.Empty);
                break;
            case GradeFish grade:
                _trade.Grade(Parts.BasinIndex(grade.Tank), Parts.BasinIndex(grade.To), grade.AboveGrams, seconds);
                break;
            case HarvestFish harvest:
                _trade.Harvest(Parts.BasinIndex(harvest.Tank), harvest.AboveGrams, seconds);
                break;
            case MoveFish move:
                _arrivals.Move(Parts.BasinIndex(move.Tank), Parts.BasinIndex(move.To), move.Share, move.TemperKelvinPerHour, seconds);
                break;
            case TreatWithSalt treat:
                Treat(treat, seconds);
                break;
            case SetAir air:
                State.Basins.AirShare[Parts.BasinIndex(air.Basin)] = air.Share;
                Log.Add(seconds, "set air", air.Basin, air.Share, "of normal", string.Empty);
                break;
            case SetShade shade:
                State.House.ShadeShare = shade.Share;
                Log.Add(seconds, "set shade", "house", shade.Share, "of light", string.Empty);
                break;
            case SetWaterHeight set:
                _beds.SetWaterHeight(Index(Parts.BedNames, set.Bed, "media bed"), set.BelowSurfaceMetres, seconds);
                break;
            case ProbeDrifts drifts:
                LetDrift(drifts, seconds);
                break;
            case NoDelivery missed:
                State.Fuel.StayAway[Index([.. Parts.Farm.FuelTanks.Keys], missed.Tank, "fuel tank")] += missed.Deliveries;
                Log.Add(seconds, "deliveries stop", missed.Tank, missed.Deliveries, "deliveries", "nobody on the farm knows yet");
                break;
            case ChangeWater change:
                Change(change, seconds);
                break;
            case FaultEvent fault:
                _faults.Begin(fault, seconds);
                break;
            case MainsReturn:
                _faults.ReturnMains(seconds);
                break;
            case PlannedEvent when _mishaps.Apply(planned, seconds):
                break;
            default:
                throw new DescriptionException($"The event '{planned.GetType().Name}' is not known to this version.");
        }
    }

    private void Change(ChangeWater change, long seconds)
    {
        Basins basins = State.Basins;
        int from = Parts.BasinIndex(change.Basin);
        double litres = Math.Min(change.Litres, basins.Litres[from] / 2);
        if (litres <= 0)
        {
            Log.Add(seconds, "change water", change.Basin, 0, "L", "nothing done: the basin is empty");
            return;
        }

        if (change.To is { } name)
        {
            litres = basins.Move(from, Parts.BasinIndex(name), litres);
        }
        else
        {
            _changes.LeadOut(from, litres);
        }

        Spend(Chore.ChangeWater, 1);
        Log.Add(seconds, "change water", change.Basin, litres, "L", change.To is null ? "to a soil crop, out of the farm" : $"to {change.To}");
    }

    private void LetDrift(ProbeDrifts drifts, long seconds)
    {
        Alarms.ProbeState probes = State.Probes;
        int probe = Parts.Alarms.ProbeIndex(drifts.Probe);
        Alarms.ProbeQuantity quantity = Parts.Alarms.Quantities[probe];
        double perDay = drifts.PerDay(quantity);
        const double daysPerWeek = 7;
        probes.Stuck[probe] = drifts.Stuck;
        probes.ExtraPerWeek[probe] = perDay * daysPerWeek;
        probes.ExtraSinceSeconds[probe] = seconds;
        string unit = Alarms.ProbeQuantities.DifferenceUnit(quantity);
        Log.Add(seconds, "probe goes wrong", drifts.Probe, perDay, unit == "1" ? "a day" : $"{unit} a day",
            drifts.Stuck ? "its reading stands still" : "it drifts away");
    }

    // Salt stays: only a change of water takes it out again.
    private void Treat(TreatWithSalt treat, long seconds)
    {
        int basin = Parts.BasinIndex(treat.Basin);
        double missing = treat.GramsPerLitre - QuarantineCare.SaltGramsPerLitre(State.Basins, basin);
        Supplement salt = Known("sodium-chloride");
        double perKilogram = (salt.SodiumGramsPerKilogram + salt.ChlorideGramsPerKilogram) / UnitConstants.GramsPerKilogram;
        double grams = Math.Max(0, missing) * State.Basins.Litres[basin] / perKilogram;
        _dosing.Pour(basin, salt, grams, seconds);
        Spend(Chore.TreatFish, 1);
        State.Husbandry.TreatedDay[basin] = DayOf(seconds);
        Log.Add(seconds, "treat with salt", treat.Basin, grams, "g",
            $"to {treat.GramsPerLitre:0.0} g/L; this water must not reach plants");
    }

    private Supplement Known(string name) => Parts.Supplements.TryGetValue(name, out Supplement? supplement)
        ? supplement
        : throw new DescriptionException($"There is no supplement '{name}'. There are: {string.Join(", ", Parts.Supplements.Keys)}.");

    private static int Index(string[] names, string name, string what) => Array.IndexOf(names, name) is >= 0 and var index
        ? index
        : throw new DescriptionException($"There is no {what} '{name}'. There are: {string.Join(", ", names)}.");
}
