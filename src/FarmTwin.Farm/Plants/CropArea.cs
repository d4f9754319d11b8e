using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Area on which crops stand: troughs, lanes, media beds.</summary>
internal static class CropArea
{
    /// <summary>Area of those whose basin is chosen, m².</summary>
    /// <param name="parts">The farm.</param>
    /// <param name="chosen">Whether a basin's crop counts.</param>
    public static double SquareMetres(FarmParts parts, Func<string, bool> chosen) =>
        parts.Farm.Troughs.Values.Where(t => chosen(t.Basin)).Sum(t => t.AreaSquareMetres)
            + parts.Farm.Lanes.Values.Where(l => chosen(l.Basin)).Sum(l => l.Boards * l.BoardSquareMetres)
            + parts.Beds.Where(b => chosen(b.Basin)).Sum(b => b.AreaSquareMetres);
}
