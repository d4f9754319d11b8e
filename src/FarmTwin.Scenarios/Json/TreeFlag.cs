namespace FarmTwin.Scenarios.Json;

/// <summary>A <c>true</c> or <c>false</c>.</summary>
/// <param name="place">Where it is written.</param>
/// <param name="path">Its path.</param>
/// <param name="value">Which of the two.</param>
public sealed class TreeFlag(Place place, string path, bool value) : TreeNode(place, path)
{
    /// <summary>Which of the two.</summary>
    public bool Value { get; } = value;

    /// <inheritdoc/>
    public override string Sort => "true or false";
}
