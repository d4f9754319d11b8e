namespace FarmTwin.Scenarios.Json;

/// <summary>A list of values.</summary>
/// <param name="place">Where its bracket opens.</param>
/// <param name="path">Its path.</param>
/// <param name="items">Its entries, in order.</param>
public sealed class TreeList(Place place, string path, IReadOnlyList<TreeNode> items) : TreeNode(place, path)
{
    /// <summary>The entries, in order.</summary>
    public IReadOnlyList<TreeNode> Items { get; } = items;

    /// <inheritdoc/>
    public override string Sort => "a list";
}
