namespace FarmTwin.Scenarios.Json;

/// <summary>A <c>null</c>: in a file that extends another it removes what the other has under that key.</summary>
/// <param name="place">Where it is written.</param>
/// <param name="path">Its path.</param>
public sealed class TreeNull(Place place, string path) : TreeNode(place, path)
{
    /// <inheritdoc/>
    public override string Sort => "null";
}
