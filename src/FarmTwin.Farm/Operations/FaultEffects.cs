using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Turns a planned fault into the part that breaks, and back.</summary>
internal static class FaultEffects
{
    /// <summary>What a planned fault breaks.</summary>
    /// <exception cref="DescriptionException">The event names a part that this farm does not have, or one that cannot fail so.</exception>
    public static (FaultKind Kind, int Part, string Where) Target(FarmContext farm, FaultEvent planned)
    {
        FarmDescription all = farm.Parts.Farm;
        switch (planned)
        {
            case MainsCut:
                return (FaultKind.Mains, -1, "mains");
            case PumpFails pump:
                int pipe = Index(all.Pipes.Keys, pump.Pipe, "pipe");
                return all.Pipes[pump.Pipe].Drive == PipeDrive.Pump
                    ? (FaultKind.Pump, pipe, pump.Pipe)
                    : throw new DescriptionException($"The pipe '{pump.Pipe}' has no pump that could fail; name a pumped pipe.");
            case BlowerFails blower:
                return (FaultKind.Blower, Index(all.Blowers.Keys, blower.Blower, "blower"), blower.Blower);
            case HeaterFails { Heater: { } heater }:
                return (FaultKind.WaterHeater, Index(all.WaterHeaters.Keys, heater, "water heater"), heater);
            case HeaterFails:
                return all.House.AirHeater is not null
                    ? (FaultKind.AirHeater, -1, "air heater")
                    : throw new DescriptionException("The house has no air heater that could fail; name one of the water heaters under 'heater'.");
            case LampFails lamp:
                return (FaultKind.Lamp, Lamps(all, lamp.Lamp), lamp.Lamp ?? "nursery lamps");
            case LampTimerFails timer:
                return (FaultKind.LampTimer, Lamps(all, timer.Lamp), timer.Lamp ?? "nursery lamps");
            case ValveSticks valve:
                return (FaultKind.Valve, Index(farm.Network.ValveNames, valve.Valve, "valve"), valve.Valve);
            case AirLineClogs air:
                return (FaultKind.AirLine, farm.Parts.BasinIndex(air.Basin), air.Basin);
            case SiphonSticks siphon:
                return (FaultKind.Drain, farm.Parts.BasinIndex(siphon.Basin), siphon.Basin);
            case Leak leak:
                return (FaultKind.Leak, farm.Parts.BasinIndex(leak.Basin), leak.Basin);
            case FloatValveFails valve:
                int basin = farm.Parts.BasinIndex(valve.Basin);
                return farm.Parts.Basins[basin].FloatValve
                    ? (FaultKind.FloatValve, basin, valve.Basin)
                    : throw new DescriptionException($"The basin '{valve.Basin}' has no float valve that could fail; name a basin with one.");
            default:
                throw new DescriptionException($"The fault '{planned.GetType().Name}' is not known to this version.");
        }
    }

    /// <summary>Breaks the part.</summary>
    public static void Break(FarmState state, FaultEvent planned, FaultKind kind, int part, long seconds)
    {
        EquipmentState equipment = state.Equipment;
        switch (planned)
        {
            case ValveSticks valve:
                equipment.ValveStuckAt[part] = valve.FlowLitresPerHour ?? state.ValveFlow[part];
                break;
            case AirLineClogs air:
                equipment.AirLost[part] = air.LostShare;
                equipment.AirLostSince[part] = seconds;
                equipment.AirLostOver[part] = (long)Math.Round(air.OverDays * UnitConstants.SecondsPerDay);
                break;
            case SiphonSticks siphon:
                equipment.Drains[part] = siphon.Leaves == DrainFailure.Full ? DrainCondition.Blocked : DrainCondition.StaysOpen;
                break;
            case Leak leak:
                equipment.LeakLitresPerHour[part] = leak.LitresPerHour;
                break;
            case FloatValveFails valve:
                equipment.FloatValves[part] = valve.Sticks == FloatValveFailure.Shut
                    ? FloatValveCondition.StuckShut
                    : FloatValveCondition.StuckOpen;
                break;
            default:
                Set(equipment, kind, part, broken: true);
                break;
        }
    }

    /// <summary>Mends the part.</summary>
    public static void Mend(FarmState state, FaultKind kind, int part)
    {
        EquipmentState equipment = state.Equipment;
        switch (kind)
        {
            case FaultKind.Valve:
                equipment.ValveStuckAt[part] = double.NaN;
                break;
            case FaultKind.AirLine:
                equipment.AirLost[part] = 0;
                break;
            case FaultKind.Drain:
                equipment.Drains[part] = DrainCondition.Well;
                break;
            case FaultKind.Leak:
                equipment.LeakLitresPerHour[part] = 0;
                break;
            case FaultKind.FloatValve:
                equipment.FloatValves[part] = FloatValveCondition.Well;
                break;
            default:
                Set(equipment, kind, part, broken: false);
                break;
        }
    }

    // What is either well or broken.
    private static void Set(EquipmentState equipment, FaultKind kind, int part, bool broken)
    {
        switch (kind)
        {
            case FaultKind.Mains:
                equipment.MainsOn = !broken;
                break;
            case FaultKind.Pump:
                equipment.PumpBroken[part] = broken;
                break;
            case FaultKind.Blower:
                equipment.BlowerBroken[part] = broken;
                break;
            case FaultKind.WaterHeater:
                equipment.WaterHeaterBroken[part] = broken;
                break;
            case FaultKind.AirHeater:
                equipment.AirHeaterBroken = broken;
                break;
            case FaultKind.Lamp:
                SetLamps(equipment, part, broken ? LampCondition.Dark : LampCondition.Well);
                break;
            case FaultKind.LampTimer:
                SetLamps(equipment, part, broken ? LampCondition.BurnsOn : LampCondition.Well);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind));
        }
    }

    private static void SetLamps(EquipmentState equipment, int part, LampCondition condition)
    {
        if (part < 0)
        {
            equipment.NurseryLamps = condition;
        }
        else
        {
            equipment.Lamps[part] = condition;
        }
    }

    private static int Lamps(FarmDescription farm, string? lamp) => lamp is not null ? Index(farm.Lamps.Keys, lamp, "lamp")
        : farm.Nursery is not null ? -1
        : throw new DescriptionException("The farm has no nursery whose lamps could fail; name the lamps under 'lamp'.");

    private static int Index(IEnumerable<string> names, string name, string what)
    {
        string[] known = [.. names];
        return Array.IndexOf(known, name) is >= 0 and var index
            ? index
            : throw new DescriptionException($"There is no {what} '{name}'. There are: {string.Join(", ", known)}.");
    }
}
