namespace FarmTwin.Farm.Fish;

/// <summary>What a cohort gives to and asks of its water over a span between meals.</summary>
/// <param name="TanGrams">Ammonia excreted, g N.</param>
/// <param name="OxygenDemandGrams">Oxygen breathed if the water can supply it, g O2.</param>
/// <param name="CarbonDioxideCarbonGrams">Carbon dioxide breathed out, g C.</param>
/// <param name="WeightLossGrams">Live weight of the cohort burnt for maintenance, g.</param>
/// <param name="Dissolved">
/// Elements of that weight released to the water, g. Nitrogen is 0: it passes through the pools and is part of
/// <paramref name="TanGrams"/> of this and later spans.
/// </param>
public readonly record struct StepResult(
    double TanGrams,
    double OxygenDemandGrams,
    double CarbonDioxideCarbonGrams,
    double WeightLossGrams,
    ElementGrams Dissolved);
