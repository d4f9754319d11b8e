using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the crops: what stands, what was cut or picked.</summary>
internal static class CropColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        FarmState state = farm.State;
        FarmParts parts = farm.Parts;
        for (int c = 0; c < parts.CropNames.Length; c++)
        {
            int crop = c;
            string name = parts.CropNames[c];
            columns.Instant($"standing_{name}_plants", "plants", () => Standing(farm, crop));
            if (parts.Crops[c].Fruit is { } fruit)
            {
                AddFruit(columns, farm, crop, fruit);
                continue;
            }

            columns.Instant($"boards_{name}", "boards", () => Boards(farm, crop));
            columns.Instant($"head_weight_{name}_g", "g", () => state.Growing.LastHeadGrams[crop]);
            columns.Instant($"head_age_{name}_d", "d", () => state.Growing.LastHeadAge[crop]);
            columns.Instant($"oldest_board_{name}_g", "g", () => OldestBoard(farm, crop));
            foreach (int element in Stress.Nutritive)
            {
                int i = (crop * Element.Count) + element;
                columns.Instant($"deficiency_{name}_{Element.Names[element]}_share", "1", () => state.Growing.Nutrition.Deficiency[i]);
            }

            columns.Sum($"heads_{name}", "heads", () => state.Growing.HeadsHarvested[crop]);
            columns.Sum($"saleable_{name}_kg", "kg", () => state.Growing.SaleableGrams[crop] / 1000);
            columns.Sum($"first_grade_{name}", "heads", () => state.Growing.Harvest[crop].FirstHeads);
            columns.Sum($"second_grade_{name}", "heads", () => state.Growing.Harvest[crop].SecondHeads);
            columns.Sum($"unsaleable_{name}", "heads", () => state.Growing.Harvest[crop].UnsaleableHeads);
        }
    }

    private static void AddFruit(ColumnList columns, FarmContext farm, int crop, FruitParameters fruit)
    {
        string name = farm.Parts.CropNames[crop];
        GrowingState growing = farm.State.Growing;
        columns.Instant($"bed_plants_{name}", "plants", () => SumBeds(farm, crop, b => b.Plants.Plants));
        columns.Instant($"canopy_{name}_kg_dry", "kg", () => SumBeds(farm, crop, b => b.Plants.DryGrams) / 1000);
        columns.Instant($"fruit_on_{name}_kg", "kg", () => SumBeds(farm, crop, b => fruit.FreshGrams(b.Plants.Fruit?.DryGrams ?? 0)) / 1000);
        columns.Sum($"picked_{name}_kg", "kg", () => growing.Fruit[crop].PickedGrams / 1000);
        columns.Sum($"saleable_{name}_kg", "kg", () => growing.SaleableGrams[crop] / 1000);
    }

    private static double Standing(FarmContext farm, int crop)
    {
        GrowingState growing = farm.State.Growing;
        double plants = 0;
        foreach (NurseryTray tray in growing.Trays)
        {
            plants += tray.Crop == crop ? tray.Lot.Plants : 0;
        }

        foreach (TransplantTrough trough in growing.Troughs)
        {
            plants += trough.Standing(crop);
        }

        foreach (RaftLane lane in growing.Lanes)
        {
            for (int i = 0; i < lane.Count; i++)
            {
                plants += lane[i].Crop == crop ? lane[i].Plants : 0;
            }
        }

        return plants + SumBeds(farm, crop, b => b.Plants.Plants);
    }

    private static double Boards(FarmContext farm, int crop)
    {
        int boards = 0;
        foreach (RaftLane lane in farm.State.Growing.Lanes)
        {
            for (int i = 0; i < lane.Count; i++)
            {
                boards += lane[i].Crop == crop ? 1 : 0;
            }
        }

        return boards;
    }

    private static double OldestBoard(FarmContext farm, int crop)
    {
        double grams = double.NaN;
        double sown = double.PositiveInfinity;
        foreach (RaftLane lane in farm.State.Growing.Lanes)
        {
            if (lane.Count > 0 && lane[0].Crop == crop && lane[0].SownDay < sown)
            {
                sown = lane[0].SownDay;
                grams = lane.ExitFreshGramsPerPlant(farm.Parts.Crops[crop]);
            }
        }

        return grams;
    }

    private static double SumBeds(FarmContext farm, int crop, Func<MediaBed, double> value)
    {
        double sum = 0;
        for (int b = 0; b < farm.Parts.Beds.Length; b++)
        {
            sum += farm.Parts.BedCrop[b] == crop ? value(farm.State.Growing.Beds[b]) : 0;
        }

        return sum;
    }
}
