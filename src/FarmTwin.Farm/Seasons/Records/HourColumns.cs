using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the hourly record, but for the probes.</summary>
internal static class HourColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm, RecordedWater water)
    {
        LoopWater fish = water.FishLoop;
        LoopWater plant = water.PlantLoop;
        TankWater tanks = water.Tanks;
        columns.Hour("electric_load_kW", "kW", () => farm.State.House.ElectricWatts / 1000);
        columns.Hour("tan_fish_loop_mgN_per_L", "mg N/L", () => fish.Concentration(Substance.Tan));
        columns.Hour("nitrite_fish_loop_mgN_per_L", "mg N/L", () => fish.Concentration(Substance.Nitrite));
        columns.Hour("ammonia_unionized_tanks_mgN_per_L", "mg N/L", () => tanks.HighestUnionized);
        columns.Hour("oxygen_tanks_mg_per_L", "mg/L", () => tanks.LowestOxygen);
        columns.Hour("fish_water_C", "°C", () => tanks.Celsius);
        columns.Hour("plant_water_C", "°C", () => plant.Celsius);
        columns.Hour("nitrate_fish_loop_mgN_per_L", "mg N/L", () => fish.Concentration(Substance.Nitrate));
        columns.Hour("nitrate_plant_loop_mgN_per_L", "mg N/L", () => plant.Concentration(Substance.Nitrate));
        columns.Hour("pH_fish_loop", "1", () => tanks.PH);
        columns.Hour("pH_plant_loop", "1", () => water.PlantPH);
        columns.Hour("carbon_dioxide_tanks_mg_per_L", "mg/L", () => tanks.CarbonDioxide);
        columns.Hour("house_air_C", "°C", () => farm.State.House.AirCelsius);
        columns.Hour("outside_air_C", "°C", () => farm.State.House.OutsideCelsius);
        columns.Hour("house_humidity_percent", "%", () => farm.State.House.RelativeHumidityPercent);
        columns.Hour("house_carbon_dioxide_ppm", "ppm", () => farm.State.House.CarbonDioxidePpm);
        columns.Hour("daylight_umol_per_m2_s", "µmol/m2/s", () => farm.State.House.NaturalPhotons);
        columns.Hour("fish_number", "fish", () => FishColumns.Number(farm));
    }
}
