using FarmTwin.Engine;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>A column of a record and where its value comes from.</summary>
internal readonly record struct Column(RecordedColumn Recorded, Func<double> Value);
