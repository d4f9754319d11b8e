namespace FarmTwin.Farm.Operations;

/// <summary>Duties of the day that may be missed.</summary>
public enum Duty
{
    /// <summary>Feeding the fish.</summary>
    Feeding,

    /// <summary>Washing the filters.</summary>
    Washing,

    /// <summary>Stopping the air of a mineralization tank, decanting it, turning the air on again.</summary>
    Decanting,

    /// <summary>Testing the water and dosing.</summary>
    Dosing,

    /// <summary>Harvesting boards and selling fish.</summary>
    Harvest,

    /// <summary>Sowing.</summary>
    Sowing,

    /// <summary>Moving seedlings to the trough.</summary>
    Transplanting,

    /// <summary>The morning round: deliveries, quarantine, start-up, valves.</summary>
    Round,
}
