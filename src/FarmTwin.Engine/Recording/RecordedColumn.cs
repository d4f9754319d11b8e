namespace FarmTwin.Engine;

/// <summary>The heading of a recorded column. A value type: safe to copy and share.</summary>
/// <param name="Name">Unique within its recorder.</param>
/// <param name="Unit">For the reader; nothing is converted.</param>
/// <param name="Kind">What its numbers state about their interval.</param>
public readonly record struct RecordedColumn(string Name, string Unit, ColumnKind Kind);
