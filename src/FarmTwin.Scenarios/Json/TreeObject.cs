using System.Diagnostics.CodeAnalysis;

namespace FarmTwin.Scenarios.Json;

/// <summary>An object: keys in the order in which they are written, each once.</summary>
public sealed class TreeObject : TreeNode
{
    private readonly Dictionary<string, TreeMember> _byKey;

    /// <summary>Makes an object.</summary>
    /// <param name="place">Where its brace opens.</param>
    /// <param name="path">Its path.</param>
    /// <param name="members">Its members; the keys differ.</param>
    public TreeObject(Place place, string path, IReadOnlyList<TreeMember> members)
        : base(place, path)
    {
        Members = members;
        _byKey = members.ToDictionary(m => m.Key, StringComparer.Ordinal);
    }

    /// <summary>The members, in order.</summary>
    public IReadOnlyList<TreeMember> Members { get; }

    /// <inheritdoc/>
    public override string Sort => "an object";

    /// <summary>Finds a member by its key.</summary>
    public bool TryGet(string key, [NotNullWhen(true)] out TreeMember? member) => _byKey.TryGetValue(key, out member);
}
