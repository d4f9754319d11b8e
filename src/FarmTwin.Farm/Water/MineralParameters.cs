using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Water;

/// <summary>How fast minerals dissolve and precipitate.</summary>
/// <param name="CalciteDissolutionPerDay">Share of lying calcium carbonate that dissolves in a day far from saturation,
/// 1/d.</param>
/// <param name="CalciumPhosphateLogSolubility">log10 of [Ca]³[PO4]² (activities) at saturation of amorphous calcium
/// phosphate.</param>
/// <param name="CalciumPhosphatePerHour">Share of the phosphate above saturation that precipitates in an hour, 1/h.</param>
/// <param name="CalcitePhosphateHalfMilligramsPerLitre">Phosphate that halves the growth of calcite, mg P/L.</param>
/// <param name="CalciteSeedShare">Share of a clean wall on which calcite grows.</param>
/// <param name="CalciteFullCoverGramsPerSquareMetre">Scale that covers a wall, g CaCO3/m².</param>
public sealed record MineralParameters(
    double CalciteDissolutionPerDay, double CalciumPhosphateLogSolubility, double CalciumPhosphatePerHour,
    double CalcitePhosphateHalfMilligramsPerLitre, double CalciteSeedShare, double CalciteFullCoverGramsPerSquareMetre)
{
    /// <summary>Reads the values from the set "water".</summary>
    /// <param name="set">The parameter set.</param>
    public static MineralParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new MineralParameters(
            set.Get("calciteDissolutionRate", "1/d"),
            set.Get("calciumPhosphateLogSolubility", "1"),
            set.Get("calciumPhosphateRate", "1/h"),
            set.Get("calcitePhosphateHalf", "mg/L"),
            set.Get("calciteSeedShare", "1"),
            set.Get("calciteFullCover", "g/m2"));
    }
}
