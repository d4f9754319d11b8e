namespace FarmTwin.Scenarios.Json;

/// <summary>Reads a scenario file and the files it extends, and merges them.</summary>
/// <remarks>
/// <c>"extends": "first-season.json"</c>, relative to the file that says so; one parent, chains allowed, cycles refused. Objects
/// merge, values and lists replace, <c>null</c> removes. An object whose <c>do</c> differs from its parent's is another kind of
/// item and replaces it whole. Every value keeps the place where it was written. A root key <c>$schema</c> is for editors only; a root key
/// <c>cause</c> is the card of what the file teaches and changes nothing.
/// </remarks>
internal static class Extends
{
    /// <summary>The key that names the parent.</summary>
    public const string Key = "extends";

    /// <summary>The key that names the schema, for editors.</summary>
    public const string SchemaKey = "$schema";

    /// <summary>The key of the card that says what a scenario teaches; it belongs to its own file alone.</summary>
    public const string CauseKey = "cause";

    /// <summary>The key that names the kind of an item.</summary>
    public const string KindKey = "do";

    private const int LongestChain = 32;

    /// <summary>Reads and merges.</summary>
    /// <param name="path">The file that the user named.</param>
    /// <param name="errors">Receives what is wrong.</param>
    /// <returns>The merged scenario, or null where a file cannot be read at all.</returns>
    public static ResolvedScenario? Resolve(string path, List<ScenarioError> errors)
    {
        var chain = new List<string>();
        TreeObject? cause = null;
        TreeObject? root = Load(path, null, chain, errors, ref cause);
        return root is null ? null : new ResolvedScenario(root, chain, cause);
    }

    private static TreeObject? Load(string path, TreeNode? mention, List<string> chain, List<ScenarioError> errors, ref TreeObject? cause)
    {
        string full = Path.GetFullPath(path);
        int earlier = chain.FindIndex(f => string.Equals(Path.GetFullPath(f), full, StringComparison.Ordinal));
        if (earlier >= 0 || chain.Count >= LongestChain)
        {
            string what = earlier >= 0 ? "the files extend each other in a circle: " : "too many files extend one another: ";
            errors.Add(At(mention!, what + string.Join(" → ", chain.Skip(Math.Max(earlier, 0)).Append(path))));
            return null;
        }

        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            errors.Add(Unreadable(path, mention, e));
            return null;
        }

        chain.Add(path);
        switch (TreeReader.Read(path, bytes, errors))
        {
            case TreeObject root:
                return Merged(path, root, chain, errors, ref cause);
            case TreeNode other:
                errors.Add(At(other, $"a scenario is an object, not {other.Sort}", "{ … }"));
                return null;
            default:
                return null;
        }
    }

    private static TreeObject? Merged(string path, TreeObject root, List<string> chain, List<ScenarioError> errors, ref TreeObject? cause)
    {
        var own = new TreeObject(root.Place, root.Path, [.. root.Members.Where(m => m.Key is not (Key or SchemaKey or CauseKey))]);
        if (chain.Count == 1 && root.TryGet(CauseKey, out TreeMember? card))
        {
            cause = card.Value as TreeObject;
            if (cause is null)
            {
                errors.Add(At(card.Value, $"\"{CauseKey}\" is {card.Value.Sort}", "a card { … }"));
            }
        }

        if (!root.TryGet(Key, out TreeMember? extends))
        {
            return Settled(own, "a file that extends another", errors);
        }

        if (extends.Value is not TreeText { Value.Length: > 0 } parent || parent.Value.Contains('\0', StringComparison.Ordinal))
        {
            errors.Add(At(extends.Value, $"\"{Key}\" is {extends.Value.Sort}", "the name of a file, relative to this one"));
            return null;
        }

        string parentPath = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, parent.Value);
        TreeObject? basis = Load(parentPath, parent, chain, errors, ref cause);
        return basis is null ? null : Merge(basis, own, errors);
    }

    /// <summary>Lays a change over what it changes.</summary>
    public static TreeObject Merge(TreeObject basis, TreeObject change, List<ScenarioError> errors)
    {
        if (change.TryGet(KindKey, out TreeMember? kind) && kind.Value is TreeText after
            && !(basis.TryGet(KindKey, out TreeMember? was) && was.Value is TreeText before && before.Value == after.Value))
        {
            return Settled(change, "what it replaces", errors);
        }

        var members = new List<TreeMember>();
        foreach (TreeMember member in basis.Members)
        {
            if (!change.TryGet(member.Key, out TreeMember? over))
            {
                members.Add(member);
            }
            else if (over.Value is not TreeNull)
            {
                TreeNode value = member.Value is TreeObject below && over.Value is TreeObject above
                    ? Merge(below, above, errors)
                    : Settled(over.Value, "what it replaces", errors);
                members.Add(over with { Value = value });
            }
        }

        foreach (TreeMember member in change.Members.Where(m => !basis.TryGet(m.Key, out _)))
        {
            if (member.Value is TreeNull)
            {
                errors.Add(new ScenarioError(member.KeyPlace.File, member.KeyPlace.Line, member.KeyPlace.Column,
                    member.Value.Path, $"null removes \"{member.Key}\", but the extended file has none here",
                    "a key of the extended file", NearestName.Of(member.Key, basis.Members.Select(m => m.Key))));
            }
            else
            {
                members.Add(member with { Value = Settled(member.Value, "what the extended file has", errors) });
            }
        }

        return new TreeObject(change.Place, change.Path, members);
    }

    /// <summary>A value that stands by itself: a null inside it has nothing to remove.</summary>
    private static TreeObject Settled(TreeObject node, string where, List<ScenarioError> errors) =>
        (TreeObject)Settled((TreeNode)node, where, errors);

    private static TreeNode Settled(TreeNode node, string where, List<ScenarioError> errors)
    {
        if (node is not TreeObject parts)
        {
            return node;
        }

        var members = new List<TreeMember>();
        foreach (TreeMember member in parts.Members)
        {
            if (member.Value is TreeNull)
            {
                errors.Add(At(member.Value, $"null removes a key of {where}; here there is nothing to remove", "a value, or no key"));
            }

            // The null stays in the tree, so that its key does not count as missing as well.
            members.Add(member with { Value = Settled(member.Value, where, errors) });
        }

        return new TreeObject(node.Place, node.Path, members);
    }

    private static ScenarioError At(TreeNode node, string problem, string? expected = null, string? suggestion = null) =>
        new(node.Place.File, node.Place.Line, node.Place.Column, node.Path, problem, expected, suggestion);

    private static ScenarioError Unreadable(string path, TreeNode? mention, Exception e)
    {
        bool missing = e is FileNotFoundException or DirectoryNotFoundException or ArgumentException;
        string problem = missing ? $"there is no file \"{path}\"" : $"the file \"{path}\" cannot be read ({e.Message.TrimEnd('.')})";
        string? nearest = missing ? NearestFile(path) : null;
        return mention is null
            ? new ScenarioError(path, 0, 0, string.Empty, problem, null, nearest)
            : At(mention, problem, "a file beside this one", nearest);
    }

    private static string? NearestFile(string path)
    {
        string? folder = Path.GetDirectoryName(Path.GetFullPath(path));
        if (folder is null || !Directory.Exists(folder))
        {
            return null;
        }

        return NearestName.Of(Path.GetFileName(path),
            Directory.EnumerateFiles(folder, "*.json").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }
}
