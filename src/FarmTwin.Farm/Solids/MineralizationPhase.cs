namespace FarmTwin.Farm.Solids;

/// <summary>What a mineralization tank is doing. It changes only in events.</summary>
public enum MineralizationPhase
{
    /// <summary>Takes in washes, air on; not yet a batch.</summary>
    Filling,

    /// <summary>Air on hard; washes still taken.</summary>
    Aerating,

    /// <summary>Air off; washes wait.</summary>
    Settling,

    /// <summary>Air off; clear water is drawn from above the blanket.</summary>
    Decanting,
}
