using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Equipment;

/// <summary>How long a person takes to mend a fault, and what a person who looks round can see.</summary>
public sealed record FaultParameters
{
    /// <summary>Minutes to mend each kind, with the part on the shelf; not a number for what nobody on the farm can mend.</summary>
    public required double[] RepairMinutes { get; init; }

    /// <summary>Leak whose wet floor is seen on a round, L/h; a smaller one shows on the water meter only.</summary>
    public required double LeakSeenLitresPerHour { get; init; }

    /// <summary>Share of a basin's air that must be gone before weak bubbling is seen.</summary>
    public required double AirLossSeenShare { get; init; }

    /// <summary>Hours after a repair during which what still happens is put down to the fault.</summary>
    public required double AftermathHours { get; init; }

    /// <summary>Oxygen of a filter's water below which its bed counts as without oxygen, mg/L.</summary>
    public required double AnoxicOxygen { get; init; }

    /// <summary>Hours without oxygen after which the water of a bead bed is not to be given back to fish.</summary>
    public required double AnoxicHours { get; init; }

    /// <summary>Hours without flow after which the same holds, whatever the mixed water shows.</summary>
    public required double StillHours { get; init; }

    /// <summary>Oxygen below which roots standing in water begin to fail, mg/L.</summary>
    public required double RootsOxygen { get; init; }

    /// <summary>Share of its normal water below which the plants of a basin stand dry.</summary>
    public required double RootsDryShare { get; init; }

    /// <summary>Hours that roots bear either.</summary>
    public required double RootsBearHours { get; init; }

    /// <summary>Reads them.</summary>
    public static FaultParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var minutes = new double[Enum.GetValues<FaultKind>().Length];
        minutes[(int)FaultKind.Mains] = double.NaN;
        minutes[(int)FaultKind.Pump] = set.Get("repairPump", "min");
        minutes[(int)FaultKind.Blower] = set.Get("repairBlower", "min");
        minutes[(int)FaultKind.WaterHeater] = set.Get("repairHeater", "min");
        minutes[(int)FaultKind.AirHeater] = set.Get("repairHeater", "min");
        minutes[(int)FaultKind.Lamp] = set.Get("repairLamp", "min");
        minutes[(int)FaultKind.LampTimer] = set.Get("repairLampTimer", "min");
        minutes[(int)FaultKind.Valve] = set.Get("repairValve", "min");
        minutes[(int)FaultKind.AirLine] = set.Get("repairAirLine", "min");
        minutes[(int)FaultKind.Drain] = set.Get("repairDrain", "min");
        minutes[(int)FaultKind.Leak] = set.Get("repairLeak", "min");
        minutes[(int)FaultKind.FloatValve] = set.Get("repairFloatValve", "min");
        return new FaultParameters
        {
            RepairMinutes = minutes,
            LeakSeenLitresPerHour = set.Get("leakSeen", "L/h"),
            AirLossSeenShare = set.Get("airLossSeen", "1"),
            AftermathHours = set.Get("aftermath", "h"),
            AnoxicOxygen = set.Get("anoxicOxygen", "mg/L"),
            AnoxicHours = set.Get("anoxicTime", "h"),
            StillHours = set.Get("stillTime", "h"),
            RootsOxygen = set.Get("rootsOxygen", "mg/L"),
            RootsDryShare = set.Get("rootsDryShare", "1"),
            RootsBearHours = set.Get("rootsBear", "h"),
        };
    }
}
