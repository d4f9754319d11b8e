using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>The design sheet of a farm: every line that an installer hands over before anything is alive.</summary>
/// <remarks>Closed forms over the description and the season's own kernels; no season is run. See docs/model/design-sheet.md.</remarks>
/// <param name="Title">Name of the farm.</param>
/// <param name="Lines">The lines, group by group.</param>
public sealed record Sheet(string Title, IReadOnlyList<SheetLine> Lines)
{
    /// <summary>Draws it up.</summary>
    /// <param name="season">A season that has been assembled and not run.</param>
    /// <param name="library">The library it was assembled from.</param>
    public static Sheet Of(Season season, FarmLibrary library)
    {
        var design = new DesignCase(season, library);
        return new Sheet(season.Parts.Farm.Title,
        [
            .. WaterLines.Of(design),
            .. FishLines.Of(design),
            .. AirLines.Of(design),
            .. OutageLines.Of(design),
            .. FilterLines.Of(design),
            .. NutrientLines.Of(design),
            .. ChemistryLines.Of(design),
            .. HeatLines.Of(design),
            .. LightLines.Of(design),
            .. CropLines.Of(design),
            .. PowerLines.Of(design),
            .. LabourLines.Of(design),
            .. RemarkLines.Of(design),
        ]);
    }

    /// <summary>The line of a key.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public SheetLine this[string key] => Lines.FirstOrDefault(l => l.Key == key)
        ?? throw new KeyNotFoundException($"The sheet has no line '{key}'. It has: {string.Join(", ", Lines.Select(l => l.Key))}.");

    /// <summary>Lines with a verdict.</summary>
    public int Count(Verdict verdict) => Lines.Count(l => l.Verdict == verdict);
}
