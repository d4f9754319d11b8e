using System.Security.Cryptography;
using System.Text;
using FarmTwin.Scenarios.Json;

namespace FarmTwin.Scenarios;

/// <summary>A scenario after the files it extends are merged into it, with the place of every value.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class ResolvedScenario
{
    /// <summary>Makes a resolved scenario.</summary>
    /// <param name="root">The merged tree, without <c>extends</c> and <c>$schema</c>.</param>
    /// <param name="files">The file that the user named, then its parent, then the parent's parent.</param>
    /// <param name="cause">The card of what the named file teaches, as written; null where it has none.</param>
    internal ResolvedScenario(TreeObject root, IReadOnlyList<string> files, TreeObject? cause = null)
    {
        Root = root;
        Cause = cause;
        Files = files;
        Hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(TreeWriter.Write(root, indented: false))));
    }

    /// <summary>The merged tree.</summary>
    public TreeObject Root { get; }

    /// <summary>The card of what the named file teaches; no part of the scenario.</summary>
    internal TreeObject? Cause { get; }

    /// <summary>Whether the file carries the card of a cause.</summary>
    public bool StatesCause => Cause is not null;

    /// <summary>The file that the user named, then its parent, then the parent's parent.</summary>
    public IReadOnlyList<string> Files { get; }

    /// <summary>
    /// SHA-256 of the merged tree written without blanks or comments, keys in their order, in lower-case hexadecimal: two files that
    /// say the same by different chains have the same hash.
    /// </summary>
    public string Hash { get; }

    /// <summary>The merged scenario as JSON text; reading it gives the same scenario and hash.</summary>
    public string ToJson() => TreeWriter.Write(Root, indented: true);

    /// <summary>A line for every value: path, value and the place that it comes from, in the order of the merged tree.</summary>
    public IEnumerable<string> Describe()
    {
        var leaves = new List<TreeNode>();
        Collect(Root, leaves);
        return leaves.Select(n => $"{n.Path} = {TreeWriter.Write(n, indented: false)}   ({n.Place.File}:{n.Place.Line})");
    }

    /// <summary>The value at a path ("basins.tank.volume"), or null where there is none.</summary>
    public TreeNode? Find(string path) => Find(Root, path);

    /// <summary>An error at the place of a path, or of the nearest object around it: for checks made after reading.</summary>
    /// <param name="path">The path of what is wrong.</param>
    /// <param name="problem">What is wrong, in a clause.</param>
    /// <param name="expected">What would be right.</param>
    /// <param name="suggestion">The nearest valid name.</param>
    public ScenarioError ErrorAt(string path, string problem, string? expected = null, string? suggestion = null)
    {
        Place place = Nearest(Root, path).Place;
        return new ScenarioError(place.File, place.Line, place.Column, path, problem, expected, suggestion);
    }

    private static TreeNode? Find(TreeNode node, string path)
    {
        TreeNode nearest = Nearest(node, path);
        return string.Equals(nearest.Path, path, StringComparison.Ordinal) ? nearest : null;
    }

    private static TreeNode Nearest(TreeNode node, string path)
    {
        IEnumerable<TreeNode> below = node switch
        {
            TreeObject parts => parts.Members.Select(m => m.Value),
            TreeList list => list.Items,
            _ => [],
        };
        TreeNode? next = below.FirstOrDefault(n => path.StartsWith(n.Path, StringComparison.Ordinal)
            && (path.Length == n.Path.Length || path[n.Path.Length] is '.' or '['));
        return next is null ? node : Nearest(next, path);
    }

    private static void Collect(TreeNode node, List<TreeNode> leaves)
    {
        if (node is TreeObject { Members.Count: > 0 } parts)
        {
            foreach (TreeMember member in parts.Members)
            {
                Collect(member.Value, leaves);
            }
        }
        else
        {
            leaves.Add(node);
        }
    }
}
