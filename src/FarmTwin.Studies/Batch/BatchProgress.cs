namespace FarmTwin.Studies.Batch;

/// <summary>How far a batch is.</summary>
/// <param name="Done">Runs finished, those of an earlier start among them.</param>
/// <param name="Of">Runs in all.</param>
/// <param name="Earlier">Runs that were there before this start.</param>
/// <param name="InTrouble">Farms in trouble among those finished.</param>
public readonly record struct BatchProgress(int Done, int Of, int Earlier, int InTrouble);
