namespace FarmTwin.Farm.Summaries;

/// <summary>A highest or lowest reading and the day it fell on.</summary>
/// <param name="Value">The reading, in the unit that the property's name states.</param>
/// <param name="Day">The day, whole days from day 0.</param>
public sealed record PeakReading(double Value, double Day);

/// <summary>The lowest and the highest reading.</summary>
/// <param name="Lowest">Lowest; null where there is none.</param>
/// <param name="Highest">Highest; null where there is none.</param>
public sealed record ReadingRange(PeakReading? Lowest, PeakReading? Highest);
