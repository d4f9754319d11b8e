using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Units;

namespace FarmTwin.Scenarios.Binding;

/// <summary>How the value of a property is written: what the binder, the schema and the explanation follow alike.</summary>
internal abstract record ValueShape;

/// <summary>A quantity or a pure number.</summary>
/// <param name="Target">The unit in which the property holds it.</param>
/// <param name="IsWhole">Whether it must be a whole number (an <c>int</c>).</param>
internal sealed record QuantityShape(MeasureUnit Target, bool IsWhole) : ValueShape;

/// <summary>True or false.</summary>
internal sealed record FlagShape : ValueShape;

/// <summary>A free text, or a name that is checked.</summary>
internal sealed record TextShape : ValueShape;

/// <summary>A date, <c>2027-03-01</c>.</summary>
internal sealed record DateShape : ValueShape;

/// <summary>A time of day, <c>06:30</c>.</summary>
internal sealed record TimeShape : ValueShape;

/// <summary>One of a fixed set of words.</summary>
/// <param name="Words">The words in kebab case and the enum values that they stand for, in declared order.</param>
internal sealed record WordShape(IReadOnlyList<(string Word, object Value)> Words) : ValueShape;

/// <summary>A nested description.</summary>
/// <param name="Model">Its model.</param>
internal sealed record RecordShape(RecordModel Model) : ValueShape;

/// <summary>One of several descriptions, picked by the key <c>do</c>.</summary>
/// <param name="Name">The name of the abstract record.</param>
/// <param name="Kinds">The kinds, in ordinal order of their words.</param>
internal sealed record KindShape(string Name, IReadOnlyList<(KindAttribute Kind, RecordModel Model)> Kinds) : ValueShape;

/// <summary>Named parts: a keyed object.</summary>
/// <param name="Item">The shape of a part.</param>
/// <param name="ItemType">Its type.</param>
internal sealed record MapShape(ValueShape Item, Type ItemType) : ValueShape;

/// <summary>A list.</summary>
/// <param name="Item">The shape of an entry.</param>
/// <param name="ItemType">Its type.</param>
internal sealed record ListShape(ValueShape Item, Type ItemType) : ValueShape;
