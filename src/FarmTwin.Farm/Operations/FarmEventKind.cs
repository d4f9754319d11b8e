namespace FarmTwin.Farm.Operations;

/// <summary>Kinds of events on the farm's calendar.</summary>
public enum FarmEventKind
{
    /// <summary>The day ends: growth, daily record.</summary>
    Midnight,

    /// <summary>Fish are fed; argument 0 is the meal.</summary>
    Meal,

    /// <summary>Morning round: start-up, deliveries, gates.</summary>
    MorningRound,

    /// <summary>Filters are looked at.</summary>
    FilterCheck,

    /// <summary>Mineralization tanks are looked at.</summary>
    MineralizerCheck,

    /// <summary>A settling ends; argument 0 is the tank.</summary>
    SettlingEnds,

    /// <summary>A crop is sown; argument 0 is the crop.</summary>
    Sow,

    /// <summary>Seedlings are moved to the trough.</summary>
    Transplant,

    /// <summary>Boards are harvested and planted; argument 0 is the crop.</summary>
    HarvestBoards,

    /// <summary>A planting of a fruiting crop is sown; argument 0 is the planting.</summary>
    SowPlanting,

    /// <summary>A planting is set out in its beds; argument 0 is the planting.</summary>
    SetOut,

    /// <summary>Ripe fruit is picked; argument 0 is the crop.</summary>
    Pick,

    /// <summary>The growing tips of a planting are taken off; argument 0 is the planting.</summary>
    TopPlants,

    /// <summary>The beds of a planting are cleared; argument 0 is the planting.</summary>
    ClearBeds,

    /// <summary>Fish are sold.</summary>
    FishSale,

    /// <summary>A dosing rule is looked at; argument 0 is the rule.</summary>
    DosingCheck,

    /// <summary>A planned event; argument 0 is its number.</summary>
    Planned,

    /// <summary>A fault is mended; argument 0 is its number.</summary>
    FaultMended,

    /// <summary>A backup takes its load; argument 0 is the backup, argument 1 its ordinal when this was arranged.</summary>
    BackupStarts,

    /// <summary>A backup has run out; arguments as for its start.</summary>
    BackupRunsOut,

    /// <summary>Alarms were raised or have returned.</summary>
    AlarmChange,

    /// <summary>The box calls; argument 0 is the place in the phone tree, argument 1 the round.</summary>
    AlarmCall,

    /// <summary>Whoever is on site looks at the box.</summary>
    AlarmLook,

    /// <summary>A person who was called arrives; argument 0 is the person.</summary>
    AlarmArrival,

    /// <summary>Fuel tanks are looked at, hourly.</summary>
    FuelCheck,

    /// <summary>Fuel comes, or does not; argument 0 is the tank.</summary>
    FuelDelivery,

    /// <summary>Microgreens are sown; argument 0 is the kind.</summary>
    SowMicrogreens,

    /// <summary>Microgreens that are ready are cut.</summary>
    CutMicrogreens,

    /// <summary>The nursery is watered by the clock.</summary>
    WaterNursery,
}
