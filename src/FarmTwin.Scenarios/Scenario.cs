namespace FarmTwin.Scenarios;

/// <summary>A scenario that was read without an error.</summary>
/// <typeparam name="T">The description that it was bound to.</typeparam>
/// <param name="Value">The description.</param>
/// <param name="Resolved">The merged tree that it was bound from, its files, its hash and the place of every value.</param>
/// <param name="Currency">The currency in which its prices are written ("USD"); null where it states no price.</param>
public sealed record Scenario<T>(T Value, ResolvedScenario Resolved, string? Currency)
{
    /// <summary>The file that the user named, then its parent, then the parent's parent.</summary>
    public IReadOnlyList<string> Files => Resolved.Files;

    /// <summary>SHA-256 of the merged scenario; see <see cref="ResolvedScenario.Hash"/>.</summary>
    public string Hash => Resolved.Hash;
}
