namespace FarmTwin.Farm.Description;

/// <summary>States how a property of a farm's description is written by its user: key, unit, range, meaning.</summary>
/// <remarks>
/// The one place where an input is declared: the reader, the schema and the printed explanation all follow it. A property that
/// is <c>required</c> must be given; any other keeps its initial value when left out.
/// </remarks>
/// <param name="key">The key in a scenario file, in camel case, without a unit.</param>
/// <param name="about">What it is, in a sentence for the user.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class InputAttribute(string key, string about) : Attribute
{
    /// <summary>The key in a scenario file.</summary>
    public string Key { get; } = key;

    /// <summary>What it is.</summary>
    public string About { get; } = about;

    /// <summary>
    /// The unit in which the property holds the value ("L", "m2", "L/h", "°C", "d", "kW", "W/m2K", "mg/L", "1" for a pure number);
    /// the user may write any unit of the same dimension. Null where it is no quantity.
    /// </summary>
    public string? Unit { get; init; }

    /// <summary>Lowest allowed value, in <see cref="Unit"/>.</summary>
    public double Low { get; init; } = double.NegativeInfinity;

    /// <summary>Highest allowed value, in <see cref="Unit"/>.</summary>
    public double High { get; init; } = double.PositiveInfinity;

    /// <summary>For a text (or list of texts) that names another part: the key of the root collection it must stand in ("basins").</summary>
    public string? Of { get; init; }

    /// <summary>For a text that names an entry of the parameter library: the folder ("fish", "crops", "supplements").</summary>
    public string? LibraryFolder { get; init; }

    /// <summary>For a list: the number of entries it must have; 0 for any number.</summary>
    public int Length { get; init; }
}

/// <summary>States the word that picks this kind among the derived records of an abstract description ("stock", "sow").</summary>
/// <param name="name">The word, as written under the key <c>do</c>.</param>
/// <param name="about">What it does, in a sentence for the user.</param>
[AttributeUsage(AttributeTargets.Class, Inherited = false)]
public sealed class KindAttribute(string name, string about) : Attribute
{
    /// <summary>The word that picks it.</summary>
    public string Name { get; } = name;

    /// <summary>What it does.</summary>
    public string About { get; } = about;
}
