using System.Globalization;
using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Studies.Faults;

/// <summary>Finds the smallest backup of each kind that saves everything from a fault, by trying sizes from the same snapshot.</summary>
/// <remarks>
/// More of a backup never harms, so the smallest size is found by halving; the size one step below it was tried and does not save. Sizes
/// go by steps that a client can buy. A standby is tried as the part at a smaller size that does not break.
/// </remarks>
public sealed class BackupSearch(FarmDescription farm, FaultTrial trial)
{
    // Steps of the sizes.
    private const double AirStep = 0.05;
    private const double HourStep = 0.5;
    private const double OxygenStep = 2;
    private const int MostOxygenSteps = 256;
    private const double ShareStep = 0.05;
    private const int StartStepMinutes = 1;
    private const int MostStartMinutes = 240;

    // Long enough for any cut: what is looked for is the rate.
    private const double PlentyHours = 200;
    private static readonly BatteryAir Lead = new() { Basins = [], AirShare = 1, PowerWatts = 1, BatteryWattHours = 1 };
    private const string Name = "tried";

    /// <summary>What battery air is called.</summary>
    public const string BatteryAirKind = "battery air";

    /// <summary>The backups that are of use against a fault.</summary>
    /// <param name="one">The case.</param>
    /// <param name="snapshot">The season without faults at its hour.</param>
    /// <param name="hours">How long the fault lasted, h.</param>
    /// <param name="fish">Whether fish were harmed: only then are air and oxygen of use.</param>
    public IReadOnlyList<BackupOption> Find(FaultCase one, SeasonSnapshot snapshot, double hours, bool fish) => one.Fault switch
    {
        MainsCut when fish => [Battery(one, snapshot, hours, pressureSwitch: false), Oxygen(one, snapshot, hours), Generator(one, snapshot)],
        MainsCut => [Generator(one, snapshot)],
        BlowerFails blower when fish => [Battery(one, snapshot, hours, pressureSwitch: true), StandbyBlower(one, snapshot, blower.Blower)],
        BlowerFails blower => [StandbyBlower(one, snapshot, blower.Blower)],
        PumpFails pump => [StandbyPump(one, snapshot, pump.Pipe)],
        HeaterFails { Heater: { } heater } => [StandbyHeater(one, snapshot, heater)],
        HeaterFails => [StandbyAirHeater(one, snapshot)],
        _ => [],
    };

    /// <summary>The smallest step from 1 to <paramref name="most"/> that saves, where more never harms; 0 where none does.</summary>
    public static int Smallest(int most, Func<int, bool> saves)
    {
        if (!saves(most))
        {
            return 0;
        }

        int fails = 0;
        int holds = most;
        while (holds - fails > 1)
        {
            int middle = fails + ((holds - fails) / 2);
            (fails, holds) = saves(middle) ? (fails, middle) : (middle, holds);
        }

        return holds;
    }

    /// <summary>Whether a farm comes through a case unharmed.</summary>
    public bool Saves(FaultCase one, SeasonSnapshot snapshot, FarmDescription changed, bool breaks = true)
    {
        Season season = trial.Play(one, snapshot, changed, breaks);
        return !trial.Read(season, snapshot.TimeSeconds).IsHarm;
    }

    // Air and oxygen save fish alone.
    private bool SavesFish(FaultCase one, SeasonSnapshot snapshot, BackupDescription backup) =>
        !trial.Read(trial.Play(one, snapshot, With(backup)), snapshot.TimeSeconds).HarmsFish;

    /// <summary>Oxygen through a fault with battery air of the size that was found.</summary>
    public OxygenTrace? TraceWith(FaultCase one, SeasonSnapshot snapshot, BackupOption battery)
    {
        string[] tanks = Tanks();
        double share = battery.Size / tanks.Sum(t => BlowerLoad.WattsOf(farm, t));
        BatteryAir chosen = Air(tanks, share, PlentyHours, one.Fault is BlowerFails) with { BatteryWattHours = battery.Stored };
        return trial.Trace(trial.Play(one, snapshot, With(chosen)), snapshot);
    }

    private BackupOption Battery(FaultCase one, SeasonSnapshot snapshot, double hours, bool pressureSwitch)
    {
        string[] tanks = Tanks();
        int share = Smallest((int)Math.Round(1 / AirStep), s => SavesFish(one, snapshot, Air(tanks, s * AirStep, PlentyHours, pressureSwitch)));
        if (share == 0)
        {
            return None(BatteryAirKind, "no battery air pump saves it, not even one that gives all of the tanks' normal air");
        }

        int lasts = Smallest((int)Math.Ceiling((hours + HourStep) / HourStep), h => SavesFish(one, snapshot, Air(tanks, share * AirStep, h * HourStep, pressureSwitch)));
        lasts = lasts == 0 ? (int)Math.Ceiling((hours + HourStep) / HourStep) : lasts;
        BatteryAir chosen = Air(tanks, share * AirStep, lasts * HourStep, pressureSwitch);
        string when = pressureSwitch ? ", that a pressure switch starts," : string.Empty;
        return new BackupOption(BatteryAirKind, true, chosen.PowerWatts, "W", chosen.BatteryWattHours, "Wh", string.Create(CultureInfo.InvariantCulture,
            $"{Another()}an air pump of {chosen.PowerWatts:0} W on a battery{when} with {share * AirStep:0%} of the tanks' normal air for {lasts * HourStep:0.#} h: {chosen.BatteryWattHours:0} Wh as labelled (a lead battery, half of it usable)"));
    }

    private BackupOption Oxygen(FaultCase one, SeasonSnapshot snapshot, double hours)
    {
        string[] tanks = Tanks();
        int flow = Smallest(MostOxygenSteps, s => SavesFish(one, snapshot, Bottle(tanks, s * OxygenStep, PlentyHours)));
        if (flow == 0)
        {
            return None("oxygen", "no flow of oxygen tried saves it");
        }

        int lasts = Smallest((int)Math.Ceiling((hours + HourStep) / HourStep), h => SavesFish(one, snapshot, Bottle(tanks, flow * OxygenStep, h * HourStep)));
        lasts = lasts == 0 ? (int)Math.Ceiling((hours + HourStep) / HourStep) : lasts;
        OxygenValve chosen = Bottle(tanks, flow * OxygenStep, lasts * HourStep);
        return new BackupOption("oxygen", true, chosen.GramsPerHour, "g/h a tank", chosen.CylinderKilograms, "kg", string.Create(CultureInfo.InvariantCulture,
            $"{Another()}oxygen through a valve that opens by itself, {chosen.GramsPerHour:0} g/h to {(tanks.Length == 1 ? "the tank" : $"each of {tanks.Length} tanks")} for {lasts * HourStep:0.#} h: a cylinder of {chosen.CylinderKilograms:0.0#} kg"));
    }

    private BackupOption Generator(FaultCase one, SeasonSnapshot snapshot)
    {
        double load = (farm.Pipes.Values.Where(p => p.Drive == PipeDrive.Pump).Sum(p => p.PowerWatts) + farm.Blowers.Values.Sum(b => b.PowerWatts)) / UnitConstants.GramsPerKilogram;

        // The later it starts, the less it saves: the step counts how much earlier than the latest it does.
        int earlier = Smallest(MostStartMinutes / StartStepMinutes, s => Saves(one, snapshot, With(Set(load, MostStartMinutes - (s * StartStepMinutes)))));
        if (earlier == 0)
        {
            return None("generator", "a generator for pumps and blowers alone does not save it");
        }

        int within = MostStartMinutes - (earlier * StartStepMinutes);
        string start = within >= MostStartMinutes - StartStepMinutes ? $"as late as {MostStartMinutes / UnitConstants.SecondsPerMinute} h after the cut, or later" : $"as late as {within} min after the cut";
        return new BackupOption("generator", true, load, "kW", within, "min", string.Create(CultureInfo.InvariantCulture,
            $"a generator that carries pumps and blowers ({load:0.0} kW running; leave room for their start) {start}, by itself or by somebody who is there by then"));
    }

    private BackupOption StandbyBlower(FaultCase one, SeasonSnapshot snapshot, string blower)
    {
        int share = Smallest((int)Math.Round(1 / ShareStep), s => Saves(one, snapshot, farm with
        {
            Basins = farm.Basins.ToDictionary(b => b.Key, b => b.Value.Blower == blower ? b.Value with { AirLitresPerMinute = b.Value.AirLitresPerMinute * s * ShareStep } : b.Value, StringComparer.Ordinal),
        }, breaks: false));
        double watts = farm.Blowers[blower].PowerWatts * share * ShareStep;
        return share == 0 ? None("standby blower", "a standby blower of the same size does not save it")
            : new BackupOption("standby blower", true, share * ShareStep, "of the blower's air", double.NaN, string.Empty, string.Create(CultureInfo.InvariantCulture,
                $"a second blower that takes over at once with {share * ShareStep:0%} of the air (about {watts:0} W at the same efficiency)"));
    }

    private BackupOption StandbyPump(FaultCase one, SeasonSnapshot snapshot, string pipe)
    {
        double flow = farm.Pipes[pipe].FlowLitresPerHour;
        int share = Smallest((int)Math.Round(1 / ShareStep), s => Saves(one, snapshot, farm with
        {
            Pipes = farm.Pipes.ToDictionary(p => p.Key, p => p.Key == pipe ? p.Value with { FlowLitresPerHour = flow * s * ShareStep } : p.Value, StringComparer.Ordinal),
        }, breaks: false));
        return share == 0 ? None("standby pump", "a standby pump of the same size does not save it")
            : new BackupOption("standby pump", true, flow * share * ShareStep, "L/h", double.NaN, string.Empty, string.Create(CultureInfo.InvariantCulture,
                $"a second pump that takes over at once with {flow * share * ShareStep:0} L/h, {share * ShareStep:0%} of the flow"));
    }

    private BackupOption StandbyHeater(FaultCase one, SeasonSnapshot snapshot, string heater)
    {
        double output = farm.WaterHeaters[heater].OutputKilowatts;
        int share = Smallest((int)Math.Round(1 / ShareStep), s => Saves(one, snapshot, farm with
        {
            WaterHeaters = farm.WaterHeaters.ToDictionary(h => h.Key, h => h.Key == heater ? h.Value with { OutputKilowatts = output * s * ShareStep } : h.Value, StringComparer.Ordinal),
        }, breaks: false));
        return Heater(share, output);
    }

    private BackupOption StandbyAirHeater(FaultCase one, SeasonSnapshot snapshot)
    {
        AirHeaterDescription air = farm.House.AirHeater!;
        int share = Smallest((int)Math.Round(1 / ShareStep), s => Saves(one, snapshot, farm with
        {
            House = farm.House with { AirHeater = air with { OutputKilowatts = air.OutputKilowatts * s * ShareStep } },
        }, breaks: false));
        return Heater(share, air.OutputKilowatts);
    }

    private static BackupOption Heater(int share, double output) => share == 0
        ? None("standby heater", "a standby heater of the same size does not save it")
        : new BackupOption("standby heater", true, output * share * ShareStep, "kW", double.NaN, string.Empty, string.Create(CultureInfo.InvariantCulture,
            $"a second heater of {output * share * ShareStep:0.0} kW that takes over by itself"));

    private string[] Tanks() => [.. farm.Basins.Where(b => b.Value.Use == BasinUse.FishTank).Select(b => b.Key)];

    private FarmDescription With(BackupDescription backup) => farm with
    {
        Backups = new Dictionary<string, BackupDescription>(farm.Backups, StringComparer.Ordinal) { [Name] = backup },
    };

    private BatteryAir Air(string[] tanks, double share, double hours, bool pressureSwitch)
    {
        double watts = Math.Max(1, share * tanks.Sum(t => BlowerLoad.WattsOf(farm, t)));
        return new BatteryAir
        {
            Basins = tanks,
            AirShare = share,
            PowerWatts = watts,
            BatteryWattHours = watts * hours / (Lead.UsableShare * Lead.Efficiency),
            PressureSwitch = pressureSwitch,
        };
    }

    private static OxygenValve Bottle(string[] tanks, double gramsPerHour, double hours) => new()
    {
        Basins = tanks,
        GramsPerHour = gramsPerHour,
        CylinderKilograms = gramsPerHour * tanks.Length * hours / UnitConstants.GramsPerKilogram,
    };

    private static Generator Set(double kilowatts, double startMinutes) => new()
    {
        PowerKilowatts = kilowatts + AirStep,
        FuelHours = PlentyHours,
        StartsByItself = true,
        StartMinutes = startMinutes,
    };

    // What is tried comes on top of the scenario's own.
    private string Another() => farm.Backups.Count > 0 ? "besides what is there, " : string.Empty;

    private static BackupOption None(string kind, string words) => new(kind, false, double.NaN, string.Empty, double.NaN, string.Empty, words);
}
