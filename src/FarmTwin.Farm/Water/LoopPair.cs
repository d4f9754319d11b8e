namespace FarmTwin.Farm.Water;

/// <summary>A quantity in the two loops, any unit.</summary>
/// <param name="FishLoop">In the fish loop.</param>
/// <param name="PlantLoop">In the plant loop.</param>
public readonly record struct LoopPair(double FishLoop, double PlantLoop);
