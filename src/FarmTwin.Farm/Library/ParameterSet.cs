namespace FarmTwin.Farm.Library;

/// <summary>The parameters of one process, species, crop or material.</summary>
/// <remarks>Immutable and safe to share between threads. Not read inside a step: a process copies what it needs once.</remarks>
public sealed class ParameterSet
{
    private readonly Dictionary<string, Parameter> _parameters;

    /// <summary>Makes a set; names are unique.</summary>
    /// <param name="name">The set's name ("nitrification", "nile-tilapia").</param>
    /// <param name="title">The name a reader sees.</param>
    /// <param name="parameters">Its parameters, in the order in which they are shown.</param>
    /// <param name="about">What the set as a whole cannot say; empty where nothing needs saying.</param>
    public ParameterSet(string name, string title, IEnumerable<Parameter> parameters, string about = "")
    {
        Name = name;
        Title = title;
        About = about;
        All = [.. parameters];
        _parameters = All.ToDictionary(p => p.Name, StringComparer.Ordinal);
    }

    /// <summary>The set's name, unique in the library.</summary>
    public string Name { get; }

    /// <summary>The name a reader sees.</summary>
    public string Title { get; }

    /// <summary>What the set as a whole cannot say: how far its numbers reach, what was not measured. Empty where nothing needs saying.</summary>
    public string About { get; }

    /// <summary>Every parameter, in the order of the data file.</summary>
    public IReadOnlyList<Parameter> All { get; }

    /// <summary>Whether the set has a parameter of that name.</summary>
    public bool Has(string name) => _parameters.ContainsKey(name);

    /// <summary>The value of a parameter, in the unit that the caller computes with.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="unit">The unit the caller expects; it must be the published one, so that no conversion hides in a process.</param>
    /// <exception cref="KeyNotFoundException">There is none of that name.</exception>
    /// <exception cref="ArgumentException">The data state another unit.</exception>
    public double Get(string name, string unit)
    {
        if (!_parameters.TryGetValue(name, out Parameter? parameter))
        {
            throw new KeyNotFoundException($"The parameter set '{Name}' has no '{name}'. It has: {string.Join(", ", _parameters.Keys)}.");
        }

        if (!string.Equals(parameter.Unit, unit, StringComparison.Ordinal))
        {
            throw new ArgumentException($"'{Name}.{name}' is stated in '{parameter.Unit}', but the model computes with '{unit}'.");
        }

        return parameter.Value;
    }

    /// <summary>A copy in which one value differs (a replicate's draw, or a user's own figure).</summary>
    public ParameterSet With(string name, double value) =>
        new(Name, Title, All.Select(p => p.Name == name ? p with { Value = value } : p), About);
}
