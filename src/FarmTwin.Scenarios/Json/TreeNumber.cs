namespace FarmTwin.Scenarios.Json;

/// <summary>A bare number.</summary>
/// <param name="place">Where it is written.</param>
/// <param name="path">Its path.</param>
/// <param name="value">Its value; infinite where what is written exceeds a double.</param>
/// <param name="written">How it is written.</param>
public sealed class TreeNumber(Place place, string path, double value, string written) : TreeNode(place, path)
{
    /// <summary>The value.</summary>
    public double Value { get; } = value;

    /// <summary>How it is written.</summary>
    public string Written { get; } = written;

    /// <inheritdoc/>
    public override string Sort => "a bare number";
}
