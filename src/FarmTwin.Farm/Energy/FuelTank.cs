using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Energy;

/// <summary>What does not change of a fuel tank: measures, fuel, the heaters that burn from it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">As described.</param>
/// <param name="Fuel">Its fuel.</param>
/// <param name="MegajoulesPerLitre">Higher heating value, MJ/L.</param>
public sealed record FuelTank(string Name, FuelTankDescription Description, FuelProperties Fuel, double MegajoulesPerLitre)
{
    /// <summary>Reads a tank.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="description">As described.</param>
    /// <param name="farm">The farm, for the fuel of its heaters.</param>
    /// <param name="library">The library.</param>
    /// <exception cref="DescriptionException">The fuel does not come in a tank, or a heater burns another one.</exception>
    public static FuelTank Of(string name, FuelTankDescription description, FarmDescription farm, FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(description);
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(library);
        FuelProperties fuel = FuelProperties.From(library.Set("fuels", description.Fuel));
        if (fuel.SaleUnit != "gal")
        {
            throw new DescriptionException(
                $"fuelTanks.{name}: {description.Fuel} is sold by the {fuel.SaleUnit} and comes in no tank; name a fuel that is sold by volume, or leave the tank out.");
        }

        foreach (string heater in description.WaterHeaters)
        {
            Check(farm.WaterHeaters[heater].Fuel, $"waterHeaters.{heater}");
            if (farm.FuelTanks.Any(t => t.Key != name && t.Value.WaterHeaters.Contains(heater)))
            {
                throw new DescriptionException($"fuelTanks.{name}: the heater '{heater}' burns from another tank as well; name it in one.");
            }
        }

        if (description.AirHeater)
        {
            Check((farm.House.AirHeater ?? throw new DescriptionException(
                $"fuelTanks.{name}: it serves the air heater, but the house has none; describe it under 'house', or leave out \"airHeater\".")).Fuel, "house.airHeater");
            if (farm.FuelTanks.Any(t => t.Key != name && t.Value.AirHeater))
            {
                throw new DescriptionException($"fuelTanks.{name}: the air heater burns from another tank as well; name it in one.");
            }
        }

        return new FuelTank(name, description, fuel, fuel.HeatMegajoulesPerUnit / UnitConstants.LitresPerUsGallon);

        void Check(string burns, string heater)
        {
            if (burns != description.Fuel)
            {
                throw new DescriptionException($"fuelTanks.{name}: it holds {description.Fuel}, but {heater} burns {burns}; give both one fuel.");
            }
        }
    }
}
