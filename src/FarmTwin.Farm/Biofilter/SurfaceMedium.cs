using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Biofilter;

/// <summary>A wetted material on which film grows, as a file under <c>media/</c> states it.</summary>
/// <remarks>A packed medium states film area per volume of medium, a wall or raft per area of itself; the other is zero.</remarks>
/// <param name="SpecificSurfaceSquareMetresPerCubicMetre">Film area per bulk volume, m²/m³; 0 for a flat surface.</param>
/// <param name="SurfaceSquareMetresPerSquareMetre">Film area per area of wall, raft, or raft at full root growth, m²/m²; 0 for a packed medium.</param>
/// <param name="VoidShare">Water and air space over bulk volume; 1 for a flat surface.</param>
/// <param name="LowestActiveShare">Share of the area wetted and aerated in the driest running of a media bed (1 where always wet).</param>
/// <param name="HighestActiveShare">Share of the area wetted and aerated at the best water height.</param>
public sealed record SurfaceMedium(
    double SpecificSurfaceSquareMetresPerCubicMetre,
    double SurfaceSquareMetresPerSquareMetre,
    double VoidShare,
    double LowestActiveShare,
    double HighestActiveShare)
{
    /// <summary>Reads a medium.</summary>
    /// <param name="set">A set of the folder <c>media</c>.</param>
    /// <exception cref="KeyNotFoundException">A value is missing.</exception>
    /// <exception cref="ArgumentException">A value is stated in another unit.</exception>
    public static SurfaceMedium From(ParameterSet set) => new(
        set.Has("specificSurface") ? set.Get("specificSurface", "m2/m3") : 0,
        set.Has("surfacePerArea") ? set.Get("surfacePerArea", "m2/m2") : 0,
        set.Has("voidShare") ? set.Get("voidShare", "1") : 1,
        set.Has("lowestActiveShare") ? set.Get("lowestActiveShare", "1") : 1,
        set.Has("highestActiveShare") ? set.Get("highestActiveShare", "1") : 1);

    /// <summary>Film area of a packed volume, m².</summary>
    /// <param name="bulkVolumeLitres">Bulk volume of the medium, L.</param>
    /// <param name="activeShare">Share wetted and aerated, held between the medium's lowest and highest.</param>
    public double PackedAreaSquareMetres(double bulkVolumeLitres, double activeShare = 1) =>
        SpecificSurfaceSquareMetresPerCubicMetre * bulkVolumeLitres / UnitConstants.LitresPerCubicMetre
            * Math.Clamp(activeShare, LowestActiveShare, HighestActiveShare);

    /// <summary>Film area of a flat surface, m².</summary>
    /// <param name="surfaceSquareMetres">Wetted wall or raft, m².</param>
    /// <param name="growthShare">For roots: plant mass over that at harvest, 0–1; 1 for walls and rafts.</param>
    public double FlatAreaSquareMetres(double surfaceSquareMetres, double growthShare = 1) =>
        SurfaceSquareMetresPerSquareMetre * surfaceSquareMetres * Math.Clamp(growthShare, 0, 1);

    /// <summary>Specific surface of packed spheres, 6 (1 − ε)/d, m²/m³.</summary>
    /// <param name="diameterMetres">Diameter, m, above 0.</param>
    /// <param name="voidShare">Void share ε, 0–1.</param>
    public static double OfSpheresSquareMetresPerCubicMetre(double diameterMetres, double voidShare) => 6 * (1 - voidShare) / diameterMetres;
}
