namespace FarmTwin.Farm.Summaries;

/// <summary>What made the numbers: enough to make them again.</summary>
/// <param name="Version">Version of the program.</param>
/// <param name="ScenarioHash">SHA-256 of the merged scenario.</param>
/// <param name="Seed">Seed of all chance.</param>
/// <param name="Replicate">Which repetition, from 0.</param>
/// <param name="StepMinutes">Longest step, min.</param>
public sealed record EngineIdentity(string Version, string ScenarioHash, ulong Seed, uint Replicate, double StepMinutes);
