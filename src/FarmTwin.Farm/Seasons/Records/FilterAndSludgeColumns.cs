using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the filters and of the tanks that mineralize sludge.</summary>
internal static class FilterAndSludgeColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        FarmState state = farm.State;
        FarmParts parts = farm.Parts;
        for (int f = 0; f < parts.Filters.Length; f++)
        {
            int filter = f;
            int basin = parts.FilterBasin[f];
            string name = parts.FilterNames[f];
            columns.Instant($"ammonia_oxidizers_{name}_share", "1",
                () => state.Basins.AmmoniaOxidizers[basin] / parts.Nitrification.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre);
            columns.Instant($"nitrite_oxidizers_{name}_share", "1",
                () => state.Basins.NitriteOxidizers[basin] / parts.Nitrification.NitriteOxidizers.MaximumBiomassGramsCodPerSquareMetre);
            columns.Lowest($"flow_{name}_share", "1", () => BeadBed.FlowShare(
                parts.Solids, FilterCare.HeldKilogramsPerCubicMetre(farm, filter)));
        }

        for (int m = 0; m < parts.Mineralizers.Length; m++)
        {
            int basin = parts.MineralizerBasin[m];
            string name = parts.Mineralizers[m].Basin;
            columns.Instant($"water_{name}_L", "L", () => state.Basins.Litres[basin]);
            columns.Instant($"solids_{name}_g_per_L", "g/L", () => state.Basins.Litres[basin] > 0 ? state.Basins.SolidsGrams(basin) / state.Basins.Litres[basin] : 0);
            columns.Instant($"nitrate_{name}_mgN_per_L", "mg N/L", () => state.Basins.MilligramsPerLitre(basin, Substance.Nitrate));
            columns.Instant($"tan_{name}_mgN_per_L", "mg N/L", () => state.Basins.MilligramsPerLitre(basin, Substance.Tan));
            columns.Instant($"pH_{name}", "1", () => state.Basins.PH[basin]);
        }
    }
}
