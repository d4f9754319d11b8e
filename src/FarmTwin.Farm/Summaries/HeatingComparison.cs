using FarmTwin.Farm.Business;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>The heat that a season gave to water and air, by propane, natural gas, an electric element and a heat pump.</summary>
/// <remarks>Burners and element at the library's usual efficiency; the heat pump hour by hour at the outside air of the season. Only the
/// energy is compared: not the machine, its service, the standing charge, or whether it could give the peak.</remarks>
internal static class HeatingComparison
{
    public const string Propane = "propane";
    private const string NaturalGas = "natural-gas";
    private const string Electricity = "electricity";

    public static Dictionary<string, HeatingWay> Of(Season season, FarmLibrary library)
    {
        FarmTotals totals = season.State.Totals;
        FarmDescription farm = season.Parts.Farm;
        double heat = totals.WaterHeatMegajoules + totals.AirHeatMegajoules;
        FuelProperties pump = season.Parts.WaterHeatPump.Fuel;
        return new Dictionary<string, HeatingWay>(StringComparer.Ordinal)
        {
            ["propane"] = Usual(Propane),
            ["naturalGas"] = Usual(NaturalGas),
            ["element"] = Usual(Electricity),
            ["heatPump"] = Way(pump, totals.WaterHeatPumpKilowattHours, totals.AirHeatPumpKilowattHours, Electricity),
        };

        HeatingWay Usual(string name)
        {
            FuelProperties fuel = FuelProperties.From(library.Set("fuels", name));
            return Way(fuel, fuel.UnitsFor(totals.WaterHeatMegajoules, fuel.WaterHeaterEfficiency),
                fuel.UnitsFor(totals.AirHeatMegajoules, fuel.AirHeaterEfficiency), name);
        }

        HeatingWay Way(FuelProperties fuel, double water, double air, string priced)
        {
            double units = water + air;
            return new HeatingWay(water, air, fuel.SaleUnit, units > 0 ? heat / (units * fuel.HeatMegajoulesPerUnit) : null,
                units * PriceOf(farm, priced, fuel), fuel.CarbonDioxideKilograms(units));
        }
    }

    /// <summary>Price of a sale unit of a fuel of the library; null where the scenario states none.</summary>
    public static double? PriceOf(FarmDescription farm, string name, FuelProperties fuel) =>
        farm.Prices is { } prices && Accounts.PriceOfFuel(prices, name, fuel) is > 0 and var price ? price : null;
}
