namespace FarmTwin.Farm.Operations;

/// <summary>A gate of the coupling as it stands on a morning.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Value">What is read.</param>
/// <param name="Limit">What it is held against.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Holds">Whether the valve may be opened as far as this gate goes.</param>
public sealed record GateReading(CouplingGates Gate, double Value, double Limit, string Unit, bool Holds)
{
    /// <summary>Its name in words.</summary>
    public string Name => CouplingGateNames.Describe(Gate);

    /// <summary>A gate that holds below its limit.</summary>
    public static GateReading Below(CouplingGates gate, double value, double limit, string unit) => new(gate, value, limit, unit, value < limit);

    /// <summary>A gate that holds from its limit on.</summary>
    public static GateReading AtLeast(CouplingGates gate, double value, double limit, string unit) => new(gate, value, limit, unit, value >= limit);
}
