namespace FarmTwin.Farm.Summaries;

/// <summary>Where the nitrogen came from and where it is, what each nutrient was supplied and wanted, and what was dosed.</summary>
public sealed record NutrientSummary
{
    /// <summary>Nitrogen that was there or came in, by source; the shares add up to 1.</summary>
    public required IReadOnlyDictionary<string, NutrientShare> NitrogenSources { get; init; }

    /// <summary>Where it went or stands at the end; the shares add up to 1.</summary>
    public required IReadOnlyDictionary<string, NutrientShare> NitrogenSinks { get; init; }

    /// <summary>Supply, need and concentration of each nutrient, by element.</summary>
    public required IReadOnlyDictionary<string, ElementSummary> Elements { get; init; }

    /// <summary>Ammonia nitrogen oxidized, g N.</summary>
    public required double NitrifiedG { get; init; }

    /// <summary>Product dosed, as bought, g by supplement; what was never dosed is left out.</summary>
    public required IReadOnlyDictionary<string, double> DosedG { get; init; }
}

/// <summary>Part of a total.</summary>
/// <param name="G">Grams.</param>
/// <param name="Share">Share of the total, 0 to 1.</param>
public sealed record NutrientShare(double G, double Share);
