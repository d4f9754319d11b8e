namespace FarmTwin.Scenarios.Json;

/// <summary>A text.</summary>
/// <param name="place">Where it is written.</param>
/// <param name="path">Its path.</param>
/// <param name="value">The text, escapes resolved.</param>
public sealed class TreeText(Place place, string path, string value) : TreeNode(place, path)
{
    /// <summary>The text.</summary>
    public string Value { get; } = value;

    /// <inheritdoc/>
    public override string Sort => "a text";
}
