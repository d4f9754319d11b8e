namespace FarmTwin.Farm.Solids;

/// <summary>Danger of hydrogen sulphide over a mineralization tank whose air is off.</summary>
/// <remarks>
/// The gas is heavier than air, the nose fails at the dangerous level, and stirring frees it a hundredfold: nobody leans into a
/// tank, and the house is ventilated before the air is turned on again.
/// </remarks>
public enum SulphideRisk
{
    /// <summary>Air on, or off for a short time with nitrate left.</summary>
    None,

    /// <summary>More than half of an allowed time has gone: turn the air on soon.</summary>
    Watch,

    /// <summary>Air off longer than allowed, or the blanket too long without nitrate: ventilate before stirring, do not decant.</summary>
    Danger,
}
