namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of what passed in a day: feed, fish, nitrogen, solids, water, heat.</summary>
internal static class FlowColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        FarmState state = farm.State;
        columns.Sum("feed_kg", "kg", () => state.Totals.FeedGrams / 1000);
        columns.Sum("fish_sold_kg", "kg", () => state.Totals.FishSoldGrams / 1000);
        columns.Sum("fish_sold", "fish", () => state.Totals.FishSold);
        columns.Sum("fish_died", "fish", () => state.Totals.FishDied);
        columns.Sum("nitrified_gN", "g N", () => state.Totals.NitrifiedGrams);
        columns.Sum("denitrified_gN", "g N", () => state.Totals.DenitrifiedGrams);
        columns.Sum("plant_uptake_gN", "g N", () => state.Totals.PlantNitrogenGrams);
        columns.Sum("decanted_L", "L", () => state.Totals.DecantedLitres);
        columns.Sum("solids_carried_g", "g", () => state.Totals.SolidsCarriedGrams);
        columns.Sum("source_water_L", "L", () => state.Totals.SourceLitres);
        columns.Sum("evaporation_L", "L", () => state.Totals.EvaporatedLitres);
        columns.Sum("transpiration_L", "L", () => state.Totals.TranspiredLitres);
        columns.Sum("water_heat_kWh", "kWh", () => state.Totals.WaterHeatMegajoules / UnitConstants.MegajoulesPerKilowattHour);
        columns.Sum("air_heat_kWh", "kWh", () => state.Totals.AirHeatMegajoules / UnitConstants.MegajoulesPerKilowattHour);
    }

    /// <summary>Adds the water exchanged between the loops.</summary>
    public static void AddExchange(ColumnList columns, FarmContext farm)
    {
        FarmState state = farm.State;
        columns.Mean("exchange_L_per_h", "L/h", () => state.ValveFlow.Length > 0 ? farm.Running.ExchangeOf(0) : 0);
    }
}
