namespace FarmTwin.Scenarios.Json;

/// <summary>A value in a scenario file that remembers where it was written, also after files are merged.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
/// <param name="place">Where it is written.</param>
/// <param name="path">Its path from the root of the scenario ("plan.first-stocking.number"); empty for the root.</param>
public abstract class TreeNode(Place place, string path)
{
    /// <summary>Where it is written.</summary>
    public Place Place { get; } = place;

    /// <summary>Its path from the root; empty for the root itself.</summary>
    public string Path { get; } = path;

    /// <summary>What it is, for a message: "a text", "a number".</summary>
    public abstract string Sort { get; }

    /// <summary>The path of a member.</summary>
    internal static string Join(string path, string key)
    {
        // A key that could be mistaken for path punctuation is quoted.
        bool plain = key.Length > 0 && key.AsSpan().IndexOfAny(" .[]\"") < 0;
        return plain ? (path.Length == 0 ? key : $"{path}.{key}") : $"{path}[\"{key}\"]";
    }
}
