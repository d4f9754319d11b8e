using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Bands and assumptions of the sheet, with their sources: the set <c>processes/design</c>.</summary>
public sealed class DesignBands
{
    private readonly ParameterSet _set;
    private readonly Dictionary<string, string> _sources;

    /// <summary>Reads them.</summary>
    /// <param name="library">The library.</param>
    public DesignBands(FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        _set = library.Set("processes", "design");
        _sources = _set.All.ToDictionary(p => p.Name, p => p.Source, StringComparer.Ordinal);
    }

    /// <summary>A value in its published unit.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    public double Get(string name, string unit) => _set.Get(name, unit);

    /// <summary>The source of a value.</summary>
    public string SourceOf(string name) => _sources[name];
}
