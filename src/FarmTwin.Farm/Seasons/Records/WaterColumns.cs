using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the water: warmth, gases, nitrogen, minerals, hardness, solids, algae.</summary>
internal static class WaterColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm, RecordedWater water)
    {
        LoopWater fish = water.FishLoop;
        LoopWater plant = water.PlantLoop;
        TankWater tanks = water.Tanks;
        Basins basins = farm.State.Basins;
        columns.Mean("fish_water_C", "°C", () => tanks.Celsius);
        columns.Lowest("fish_water_lowest_C", "°C", () => tanks.Celsius);
        columns.Mean("plant_water_C", "°C", () => plant.Celsius);
        columns.Mean("oxygen_tanks_mg_per_L", "mg/L", () => tanks.LowestOxygen);
        columns.Lowest("oxygen_tanks_lowest_mg_per_L", "mg/L", () => tanks.LowestOxygen);
        columns.Mean("oxygen_plant_loop_mg_per_L", "mg/L", () => plant.Concentration(Substance.Oxygen));
        columns.Mean("tan_fish_loop_mgN_per_L", "mg N/L", () => fish.Concentration(Substance.Tan));
        columns.Highest("tan_tanks_highest_mgN_per_L", "mg N/L", () => tanks.HighestTan);
        columns.Highest("ammonia_unionized_tanks_highest_mgN_per_L", "mg N/L", () => tanks.HighestUnionized);
        columns.Mean("nitrite_fish_loop_mgN_per_L", "mg N/L", () => fish.Concentration(Substance.Nitrite));
        columns.Mean("nitrate_fish_loop_mgN_per_L", "mg N/L", () => fish.Concentration(Substance.Nitrate));
        columns.Mean("nitrate_plant_loop_mgN_per_L", "mg N/L", () => plant.Concentration(Substance.Nitrate));
        columns.Mean("tan_plant_loop_mgN_per_L", "mg N/L", () => plant.Concentration(Substance.Tan));
        columns.Mean("pH_fish_loop", "1", () => tanks.PH);
        columns.Mean("pH_plant_loop", "1", () => water.PlantPH);
        columns.Mean("alkalinity_fish_loop_mgCaCO3_per_L", "mg/L as CaCO3", () => fish.AlkalinityMilligramsPerLitre);
        columns.Mean("alkalinity_plant_loop_mgCaCO3_per_L", "mg/L as CaCO3", () => plant.AlkalinityMilligramsPerLitre);
        columns.Mean("carbon_dioxide_tanks_mg_per_L", "mg/L", () => tanks.CarbonDioxide);
        AddMinerals(columns, fish, "fish_loop");
        AddMinerals(columns, plant, "plant_loop");
        columns.Instant("conductivity_fish_loop_uS_per_cm", "µS/cm", () => Conductance(basins, water.FirstTank));
        columns.Instant("conductivity_plant_loop_uS_per_cm", "µS/cm", () => Conductance(basins, water.PlantSump));
        columns.Instant("calcite_index_fish_loop", "1", () => CalciteIndex(basins, water.FirstTank));
        columns.Instant("calcite_index_plant_loop", "1", () => CalciteIndex(basins, water.PlantSump));
        columns.Instant("calcite_scale_g", "g", () => basins.CalciteScaleGrams.Sum());
        columns.Instant("calcium_phosphate_gP", "g P", () => basins.PrecipitatedPhosphorusGrams.Sum());
        columns.Mean("solids_fish_loop_mg_per_L", "mg/L", () => fish.Solids);
        columns.Mean("solids_plant_loop_mg_per_L", "mg/L", () => plant.Solids);
        columns.Highest("chlorine_tanks_highest_mg_per_L", "mg/L", () => tanks.Highest(Substance.Chlorine));
        columns.Instant("algae_g", "g", () => Algae(farm.State));
    }

    private static void AddMinerals(ColumnList columns, LoopWater loop, string name)
    {
        columns.Mean($"phosphorus_{name}_mg_per_L", "mg/L", () => loop.Concentration(Substance.Phosphorus));
        columns.Mean($"potassium_{name}_mg_per_L", "mg/L", () => loop.Concentration(Substance.Potassium));
        columns.Mean($"calcium_{name}_mg_per_L", "mg/L", () => loop.Concentration(Substance.Calcium));
        columns.Mean($"magnesium_{name}_mg_per_L", "mg/L", () => loop.Concentration(Substance.Magnesium));
        columns.Mean($"sulfate_{name}_mgS_per_L", "mg S/L", () => loop.Concentration(Substance.Sulfate));
        columns.Mean($"sodium_{name}_mg_per_L", "mg/L", () => loop.Concentration(Substance.Sodium));
        columns.Mean($"chloride_{name}_mg_per_L", "mg/L", () => loop.Concentration(Substance.Chloride));
        columns.Mean($"iron_{name}_mg_per_L", "mg/L", () => loop.Iron);
    }

    private static double Conductance(Basins basins, int basin) => basin < 0 ? double.NaN : basins.MicrosiemensPerCentimetre(basin);

    private static double CalciteIndex(Basins basins, int basin)
    {
        if (basin < 0 || basins.Litres[basin] <= 0)
        {
            return double.NaN;
        }

        Ions ions = basins.IonsOf(basin);
        double index = CarbonateSystem.CalciteSaturationIndex(
            ions.Ca,
            basins.Grams[WaterStep.At(basin, Substance.InorganicCarbon)] / basins.Litres[basin] / UnitConstants.AtomicWeight.Carbon,
            basins.PH[basin],
            CarbonateConstants.At(basins.Celsius[basin]),
            IonicStrength.MolesPerLitre(ions));
        return double.IsFinite(index) ? index : double.NaN;
    }

    private static double Algae(FarmState state)
    {
        double grams = 0;
        foreach (double dry in state.Algae.DryGrams)
        {
            grams += dry;
        }

        return grams;
    }
}
