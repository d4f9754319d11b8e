namespace FarmTwin.Farm.Summaries;

/// <summary>Fuel and power of a season.</summary>
public sealed record EnergySummary
{
    /// <summary>Fuel of all heaters together, in <see cref="FuelUnit"/>; electricity is no fuel here.</summary>
    public required double Fuel { get; init; }

    /// <summary>The sale unit of the fuel; "MJ" where heaters burn different fuels.</summary>
    public required string FuelUnit { get; init; }

    /// <summary>Fuel by heater: water, air.</summary>
    public required IReadOnlyDictionary<string, HeaterSummary> Heaters { get; init; }

    /// <summary>Electricity, kWh.</summary>
    public required double KWh { get; init; }

    /// <summary>Electricity by use, kWh.</summary>
    public required IReadOnlyDictionary<string, double> KWhByUse { get; init; }

    /// <summary>Carbon dioxide from fuel, kg.</summary>
    public required double FuelCarbonDioxideKg { get; init; }

    /// <summary>Useful heat given to water and air, kWh: what a resistance heater would draw for the same.</summary>
    public required double SameHeatByResistanceKWh { get; init; }

    /// <summary>Electricity of an air-source heat pump for the same heat, hour by hour at the season's outside air, kWh.</summary>
    public required double SameHeatByHeatPumpKWh { get; init; }

    /// <summary>The same heat by propane, naturalGas, element, heatPump: units, cost, carbon dioxide.</summary>
    public required IReadOnlyDictionary<string, HeatingWay> Comparison { get; init; }

    /// <summary>Fuel and electricity at the scenario's prices, in its currency; null where a price that is needed is not stated.</summary>
    public required double? Cost { get; init; }

    /// <summary>What the coupling costs the water heater; null before water went to the plants and back.</summary>
    public required CouplingHeat? Coupling { get; init; }

    /// <summary>Fuel tanks by name.</summary>
    public required IReadOnlyDictionary<string, FuelTankSummary> FuelTanks { get; init; }

    /// <summary>Fuel and power by calendar month ("2027-03").</summary>
    public required IReadOnlyDictionary<string, EnergyMonth> ByMonth { get; init; }

    /// <summary>Highest hourly mean of all electric power, kW, with its day; connected load and starting currents are higher.</summary>
    public required PeakReading? PeakElectricKW { get; init; }

    /// <summary>Highest day mean of the water heaters, kW, and its day; null without heaters.</summary>
    public required PeakReading? PeakWaterHeatKW { get; init; }

    /// <summary>Rated output of the water heaters, kW.</summary>
    public required double WaterHeaterRatedKW { get; init; }

    /// <summary>Lamp light at the rafts as a share of all light there, whole season; null where there is no light.</summary>
    public required double? LampShareOfLight { get; init; }
}

/// <summary>A heater, or several that heat the same.</summary>
/// <param name="FuelName">The fuel's name in the library.</param>
/// <param name="Amount">Amount bought, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Sale unit.</param>
/// <param name="Litres">The same in litres; null where it is not sold by volume.</param>
/// <param name="HeatMJ">Useful heat, MJ.</param>
/// <param name="HeatKWh">Useful heat, kWh.</param>
public sealed record HeaterSummary(string FuelName, double Amount, string Unit, double? Litres, double HeatMJ, double HeatKWh);
