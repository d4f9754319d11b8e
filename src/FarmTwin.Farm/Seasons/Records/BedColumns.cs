using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the media beds.</summary>
internal static class BedColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        FarmParts parts = farm.Parts;
        GrowingState growing = farm.State.Growing;
        Basins basins = farm.State.Basins;
        for (int b = 0; b < parts.Beds.Length; b++)
        {
            int bed = b;
            int basin = parts.BedBasin[b];
            string name = parts.BedNames[b];
            columns.Instant($"plants_{name}", "plants", () => growing.Beds[bed].Plants.Plants);
            columns.Mean($"oxygen_{name}_mg_per_L", "mg/L", () => basins.MilligramsPerLitre(basin, Substance.Oxygen));
            columns.Mean($"water_height_{name}_mm", "mm", () => BedProcess.HeightMetres(parts, bed, basins.Litres[basin]) * 1000);
            columns.Instant($"growth_factor_{name}", "1", () => growing.Beds[bed].Plants.IsEmpty ? double.NaN : growing.Beds[bed].Plants.LastStress.Combined);
        }
    }
}
