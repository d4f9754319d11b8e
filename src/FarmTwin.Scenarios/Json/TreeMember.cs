namespace FarmTwin.Scenarios.Json;

/// <summary>A key and its value in an object.</summary>
/// <param name="Key">The key.</param>
/// <param name="KeyPlace">Where the key is written.</param>
/// <param name="Value">The value.</param>
public sealed record TreeMember(string Key, Place KeyPlace, TreeNode Value);
