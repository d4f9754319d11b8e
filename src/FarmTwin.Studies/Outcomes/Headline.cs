using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Outcomes;

/// <summary>A figure by which plans are compared.</summary>
/// <param name="Key">Its column in tables, with unit ("fish_sold_kg"); stable.</param>
/// <param name="Title">What a reader sees.</param>
/// <param name="Unit">Its unit; "day" counts from the season's first midnight, from 0.</param>
/// <param name="Wanted">Which way is better.</param>
/// <param name="Read">Reads it from a season's summary and record; not a number where the season has none (never coupled, no prices).</param>
public sealed record Headline(string Key, string Title, string Unit, Wanted Wanted, Func<SeasonSummary, RecordView, double> Read);
