using FarmTwin.Farm.Climate;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of the house and the weather.</summary>
internal static class HouseColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        HouseState house = farm.State.House;
        columns.Mean("outside_air_C", "°C", () => house.OutsideCelsius);
        columns.Lowest("outside_air_lowest_C", "°C", () => house.OutsideCelsius);
        columns.Mean("house_air_C", "°C", () => house.AirCelsius);
        columns.Lowest("house_air_lowest_C", "°C", () => house.AirCelsius);
        columns.Highest("house_air_highest_C", "°C", () => house.AirCelsius);
        columns.Mean("house_humidity_percent", "%", () => house.RelativeHumidityPercent);
        columns.Mean("house_carbon_dioxide_ppm", "ppm", () => house.CarbonDioxidePpm);
        columns.Instant("daylight_at_crop_mol_per_m2", "mol/m2/d", () => house.NaturalMolesToday);
        columns.Instant("lamp_light_at_crop_mol_per_m2", "mol/m2/d", () => house.LampMolesToday);
    }
}
