namespace FarmTwin.Farm.Plants;

/// <summary>What became of a crop's fruit and prunings over a season. Copied whole for a snapshot.</summary>
public sealed class FruitTally
{
    /// <summary>Fresh fruit picked, g.</summary>
    public double PickedGrams { get; set; }

    /// <summary>Part of it with blossom-end rot, g.</summary>
    public double BlossomEndRotGrams { get; set; }

    /// <summary>Part of it that had hung too long, g.</summary>
    public double OverripeGrams { get; set; }

    /// <summary>Fruit that went to compost unripe, with dead plants or when beds were cleared, g.</summary>
    public double LostGrams { get; set; }

    /// <summary>Leaves and shoots pruned, g dry.</summary>
    public double PrunedDryGrams { get; set; }

    /// <summary>What the picked fruit held, g.</summary>
    public ElementGrams PickedElements { get; set; }

    /// <summary>Plants set out.</summary>
    public double PlantsSetOut { get; set; }

    /// <summary>Bed area times days under the crop, m² d.</summary>
    public double SquareMetreDays { get; set; }

    /// <summary>A copy.</summary>
    public FruitTally Clone() => (FruitTally)MemberwiseClone();
}
