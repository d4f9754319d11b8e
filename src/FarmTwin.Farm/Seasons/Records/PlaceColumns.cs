using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the places in lanes and nursery, and of the microgreens that grow there.</summary>
internal static class PlaceColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        FarmState state = farm.State;
        FarmParts parts = farm.Parts;
        string[] lanes = [.. parts.Farm.Lanes.Keys];
        for (int l = 0; l < lanes.Length; l++)
        {
            RaftLane lane = state.Growing.Lanes[l];
            columns.Instant($"empty_places_{lanes[l]}", "places", () => lane.EmptyHoles);
        }

        if (parts.Farm.Nursery is not { } nursery)
        {
            return;
        }

        columns.Instant("nursery_seedling_places", "places", () => Places(t => NurserySpace.SeedlingPlaces(state.Growing, nursery, t)));
        columns.Instant("nursery_microgreen_places", "places", () => Places(t => NurserySpace.MicrogreenTrays(state.Growing, t)));
        for (int k = 0; k < parts.MicrogreenNames.Length; k++)
        {
            int kind = k;
            string name = parts.MicrogreenNames[k];
            columns.Sum($"trays_{name}", "trays", () => state.Growing.Nursery.TraysCut[kind]);
            columns.Instant($"tray_weight_{name}_g", "g", () => state.Growing.Nursery.LastTrayGrams[kind]);
            columns.Sum($"saleable_{name}_kg", "kg", () => state.Growing.Nursery.SoldGrams[kind] / 1000);
        }

        double Places(Func<int, int> ofTier)
        {
            int sum = 0;
            for (int t = 0; t < parts.Tiers.Count; t++)
            {
                sum += ofTier(t);
            }

            return sum;
        }
    }
}
