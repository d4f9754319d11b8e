namespace FarmTwin.Farm.Summaries;

/// <summary>The heat of the season by one way of making it.</summary>
/// <param name="Water">For the water, in <paramref name="Unit"/>.</param>
/// <param name="Air">For the air, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Sale unit.</param>
/// <param name="Efficiency">Useful heat over the heat bought, mean of the season; null where there was no heat.</param>
/// <param name="Cost">At the scenario's price, in its currency; null where it states none.</param>
/// <param name="CarbonDioxideKg">At the burner; of electricity at the power station.</param>
public sealed record HeatingWay(double Water, double Air, string Unit, double? Efficiency, double? Cost, double CarbonDioxideKg);

/// <summary>A fuel tank over the season.</summary>
public sealed record FuelTankSummary
{
    /// <summary>The fuel's name in the library.</summary>
    public required string Fuel { get; init; }

    /// <summary>What it holds when filled, L.</summary>
    public required double CapacityL { get; init; }

    /// <summary>Burnt, L.</summary>
    public required double BurntL { get; init; }

    /// <summary>Delivered, L.</summary>
    public required double DeliveredL { get; init; }

    /// <summary>Deliveries that came.</summary>
    public required int Deliveries { get; init; }

    /// <summary>Deliveries that did not come.</summary>
    public required int MissedDeliveries { get; init; }

    /// <summary>Lowest content, L, with its day.</summary>
    public required PeakReading LowestL { get; init; }

    /// <summary>At the end, L.</summary>
    public required double EndL { get; init; }

    /// <summary>Days that the end's content lasts at the last week's use; null where nothing is used.</summary>
    public required double? DaysLeft { get; init; }

    /// <summary>Days that a full tank lasts on the day of highest use; null where nothing was used.</summary>
    public required double? DaysFullOnHardestDay { get; init; }

    /// <summary>Hours in which it was empty.</summary>
    public required double HoursEmpty { get; init; }
}

/// <summary>What the coupling costs the heater of the water.</summary>
/// <param name="Hours">Hours in which water went to the plant loop and back.</param>
/// <param name="HeaterMJ">Heat of the water heaters in those hours, MJ.</param>
/// <param name="CarriedMJ">Heat that went with the water from the fish loop to the plant loop, net of what came back, MJ; negative where the plant water was the warmer.</param>
/// <param name="SpentMJ">The part of it that the heaters gave in the same hours: without coupling it would not have been burnt.</param>
/// <param name="Fuel">Fuel for that part, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Sale unit.</param>
/// <param name="Cost">At the scenario's price; null where it states none.</param>
public sealed record CouplingHeat(double Hours, double HeaterMJ, double CarriedMJ, double SpentMJ, double Fuel, string Unit, double? Cost);

/// <summary>Fuel and power of a calendar month.</summary>
/// <param name="Days">Days of the month in the season.</param>
/// <param name="KWhByUse">Electricity by use, kWh.</param>
/// <param name="WaterFuel">Fuel of the water heaters, in its sale unit; 0 where they are electric.</param>
/// <param name="AirFuel">Fuel of the air heater, in its sale unit; 0 where it is electric.</param>
/// <param name="WaterHeatKWh">Heat given to the water, kWh.</param>
/// <param name="AirHeatKWh">Heat given to the air, kWh.</param>
public sealed record EnergyMonth(
    int Days, IReadOnlyDictionary<string, double> KWhByUse, double WaterFuel, double AirFuel, double WaterHeatKWh, double AirHeatKWh);
