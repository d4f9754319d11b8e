namespace FarmTwin.Farm.Library;

/// <summary>How a parameter's value is known.</summary>
public enum Basis
{
    /// <summary>Measured, or printed in the source.</summary>
    Measured,

    /// <summary>Fitted to the case the source names: that case is no test of the model any more.</summary>
    Calibrated,

    /// <summary>An engineering choice or common practice, held inside the stated range.</summary>
    Assumed,
}

/// <summary>One number of the model, with what a reader needs in order to trust or to change it.</summary>
/// <param name="Name">Name inside its set, in camel case ("transferVelocity").</param>
/// <param name="Value">The default, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The published unit ("m/d"; "1" for a pure number).</param>
/// <param name="Low">Lowest believable value, same unit.</param>
/// <param name="High">Highest believable value, same unit.</param>
/// <param name="Source">Key into <c>docs/sources.json</c>.</param>
/// <param name="Basis">How it is known.</param>
/// <param name="About">What it is, in a sentence.</param>
public sealed record Parameter(
    string Name, double Value, string Unit, double Low, double High, string Source, Basis Basis, string About);
