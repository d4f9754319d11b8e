using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using FarmTwin.Farm.Library;

namespace FarmTwin.Scenarios.Library;

/// <summary>Reads the parameter data shipped inside this assembly: one JSON file a set, in a folder a kind.</summary>
/// <remarks>
/// Folders: <c>processes</c>, <c>fish</c>, <c>crops</c>, <c>supplements</c> and so on. A file of a new fish or crop put there is
/// found by its name; no code changes.
/// </remarks>
public static class ParameterLibrary
{
    private const string Prefix = "FarmTwin.Scenarios.Library.";

    /// <summary>The names of the sets in a folder, in ordinal order.</summary>
    public static IReadOnlyList<string> Names(string folder) =>
        [.. ResourceNames(folder).Select(n => n[(Prefix.Length + folder.Length + 1)..^".json".Length]).Order(StringComparer.Ordinal)];

    /// <summary>Reads one set.</summary>
    /// <param name="folder">The kind ("processes", "fish", "crops").</param>
    /// <param name="name">The file's name without ending ("nitrification").</param>
    /// <exception cref="KeyNotFoundException">There is no such file.</exception>
    /// <exception cref="JsonException">The file is not a parameter file.</exception>
    public static ParameterSet Load(string folder, string name)
    {
        using Stream stream = typeof(ParameterLibrary).Assembly.GetManifestResourceStream($"{Prefix}{folder}.{name}.json")
            ?? throw new KeyNotFoundException($"The library has no '{name}' under '{folder}'. It has: {string.Join(", ", Names(folder))}.");
        return Read(stream, name);
    }

    /// <summary>Reads one set from a file of the same form: a fish, a crop, a feed of the user's own.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="name">The set's name.</param>
    /// <exception cref="JsonException">It is not a parameter file.</exception>
    public static ParameterSet Read(Stream stream, string name)
    {
        ParameterFile file = JsonSerializer.Deserialize(stream, ParameterFileContext.Default.ParameterFile)
            ?? throw new JsonException($"'{name}.json' is empty.");
        return new ParameterSet(name, file.Title, file.Parameters.Select(p => new Parameter(
            p.Key, p.Value.Value, p.Value.Unit, p.Value.Low, p.Value.High, p.Value.Source, p.Value.Basis, p.Value.About)), file.About);
    }

    private static IEnumerable<string> ResourceNames(string folder) =>
        Assembly.GetAssembly(typeof(ParameterLibrary))!.GetManifestResourceNames()
            .Where(n => n.StartsWith($"{Prefix}{folder}.", StringComparison.Ordinal));
}

/// <summary>A parameter file as it stands on disk.</summary>
internal sealed record ParameterFile(string Title, Dictionary<string, ParameterEntry> Parameters, string About = "");

/// <summary>One parameter as it stands on disk.</summary>
internal sealed record ParameterEntry(double Value, string Unit, double Low, double High, string Source, Basis Basis, string About);

[JsonSourceGenerationOptions(JsonSerializerDefaults.Strict, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true, ReadCommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true)]
[JsonSerializable(typeof(ParameterFile))]
internal sealed partial class ParameterFileContext : JsonSerializerContext;
