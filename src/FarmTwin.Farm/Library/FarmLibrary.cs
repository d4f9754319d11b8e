namespace FarmTwin.Farm.Library;

/// <summary>The parameter sets a farm is assembled from, by folder and name.</summary>
/// <remarks>Immutable and safe to share between threads. Files are read elsewhere: the twin knows no files.</remarks>
public sealed class FarmLibrary
{
    private readonly Dictionary<string, Dictionary<string, ParameterSet>> _folders;

    /// <summary>Makes a library.</summary>
    /// <param name="sets">Every set with the folder it belongs to ("processes", "fish", "crops").</param>
    public FarmLibrary(IEnumerable<(string Folder, ParameterSet Set)> sets)
    {
        ArgumentNullException.ThrowIfNull(sets);
        _folders = sets.GroupBy(s => s.Folder, StringComparer.Ordinal).ToDictionary(
            g => g.Key, g => g.ToDictionary(s => s.Set.Name, s => s.Set, StringComparer.Ordinal), StringComparer.Ordinal);
    }

    /// <summary>Every set with its folder.</summary>
    public IEnumerable<(string Folder, ParameterSet Set)> All =>
        _folders.SelectMany(f => f.Value.Values.Select(s => (f.Key, s)));

    /// <summary>The names in a folder.</summary>
    public IEnumerable<string> Names(string folder) => _folders.TryGetValue(folder, out Dictionary<string, ParameterSet>? sets) ? sets.Keys : [];

    /// <summary>A set.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that folder and name.</exception>
    public ParameterSet Set(string folder, string name) =>
        _folders.TryGetValue(folder, out Dictionary<string, ParameterSet>? sets) && sets.TryGetValue(name, out ParameterSet? set)
            ? set
            : throw new KeyNotFoundException($"The library has no '{name}' under '{folder}'. It has: {string.Join(", ", Names(folder))}.");

    /// <summary>A copy in which some values differ.</summary>
    /// <param name="overrides">'folder/set/parameter' and the value in the published unit.</param>
    /// <exception cref="KeyNotFoundException">A name is unknown.</exception>
    public FarmLibrary With(IReadOnlyDictionary<string, double> overrides)
    {
        ArgumentNullException.ThrowIfNull(overrides);
        var changed = All.ToDictionary(s => (s.Folder, s.Set.Name), s => s.Set);
        foreach ((string path, double value) in overrides)
        {
            string[] parts = path.Split('/');
            if (parts.Length != 3 || !changed.TryGetValue((parts[0], parts[1]), out ParameterSet? set) || !set.Has(parts[2]))
            {
                throw new KeyNotFoundException($"There is no parameter '{path}'; write folder/set/parameter, for example 'processes/plants/siteFactor'.");
            }

            changed[(parts[0], parts[1])] = set.With(parts[2], value);
        }

        return new FarmLibrary(changed.Select(s => (s.Key.Folder, s.Value)));
    }
}
