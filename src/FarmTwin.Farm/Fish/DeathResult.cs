namespace FarmTwin.Farm.Fish;

/// <summary>What died over a span.</summary>
/// <param name="Number">Fish (expected).</param>
/// <param name="Grams">Their live weight, g.</param>
/// <param name="Elements">Everything that leaves with the bodies, g; nitrogen digested but not yet excreted included.</param>
/// <param name="Hazards">The rates at the beginning of the span.</param>
public readonly record struct DeathResult(double Number, double Grams, ElementGrams Elements, HazardsPerHour Hazards);
