using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Water;

/// <summary>What a carbonate solve needs of four waters side by side, but for their carbon.</summary>
internal readonly struct CarbonateLanes(
    Vector256<double> alkalinity, Vector256<double> phosphorus, Vector256<double> tan, in EffectiveLanes constants)
{
    /// <summary>eq/L.</summary>
    public readonly Vector256<double> Alkalinity = alkalinity;

    /// <summary>mol/L.</summary>
    public readonly Vector256<double> Phosphorus = phosphorus;

    /// <summary>mol/L.</summary>
    public readonly Vector256<double> Tan = tan;

    /// <summary>Constants corrected for activity.</summary>
    public readonly EffectiveLanes Constants = constants;
}
