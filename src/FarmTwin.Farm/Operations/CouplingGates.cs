namespace FarmTwin.Farm.Operations;

/// <summary>The gates that may hold the coupling valves back; several may at once.</summary>
[Flags]
public enum CouplingGates
{
    /// <summary>Nothing holds them back.</summary>
    None = 0,

    /// <summary>TAN of the fish loop.</summary>
    Tan = 1,

    /// <summary>Nitrite of the fish loop.</summary>
    Nitrite = 2,

    /// <summary>Feed below the wanted share of the plan's steady feed.</summary>
    Feed = 4,

    /// <summary>Water and feed not yet held long enough.</summary>
    Days = 8,

    /// <summary>Predicted mixed nitrate.</summary>
    MixedNitrate = 16,

    /// <summary>Predicted mixed alkalinity.</summary>
    MixedAlkalinity = 32,

    /// <summary>Ammonium of the plant loop.</summary>
    PlantTan = 64,

    /// <summary>Oxygen of either loop.</summary>
    Oxygen = 128,

    /// <summary>Sodium of the plant loop.</summary>
    Sodium = 256,

    /// <summary>Deaths that base mortality does not explain.</summary>
    Deaths = 512,

    /// <summary>Too late in the week.</summary>
    Weekday = 1024,

    /// <summary>Before the earliest day of the plan.</summary>
    NotBefore = 2048,

    /// <summary>Either loop treated of late, or salt in it.</summary>
    Treatment = 4096,

    /// <summary>The plant loop sprayed of late.</summary>
    Pesticide = 8192,
}
