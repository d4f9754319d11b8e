namespace FarmTwin.Farm.Fish;

/// <summary>A span of <see cref="Metabolism"/> worked out and not yet lived: what the water gets and gives, and what becomes of the cohort.</summary>
internal readonly record struct MetabolicStep(
    StepResult Result,
    double LossPerFishGrams,
    double NitrogenFirstStageGrams,
    double NitrogenSecondStageGrams,
    double OxygenFirstStageGrams,
    double OxygenSecondStageGrams);
