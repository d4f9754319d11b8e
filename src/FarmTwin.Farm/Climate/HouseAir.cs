namespace FarmTwin.Farm.Climate;

/// <summary>The air of a house over one step, and every flow of heat and vapour that made it.</summary>
/// <remarks>
/// Sensible heat closes: solar + lamps + motors + heater + water = latent + cover + infiltration + perimeter + vents + floor's
/// gain. Vapour closes: transpiration + evaporation + pad = carried out + condensed.
/// </remarks>
/// <param name="AirCelsius">Air, mean of the step, °C.</param>
/// <param name="VapourPressureKilopascal">kPa.</param>
/// <param name="RelativeHumidityPercent">0 to 100.</param>
/// <param name="HeaterWatts">Useful heat of the air heater, W.</param>
/// <param name="VentCubicMetresPerSecond">Air through the vents, m3/s, infiltration apart.</param>
/// <param name="FloorHeatWatts">From the floor to the air, mean of the step, W; negative where the floor takes heat up.</param>
/// <param name="FloorCelsiusAfter">Floor at the end of the step, °C.</param>
/// <param name="SolarWatts">Absorbed sun, floor's share included, W.</param>
/// <param name="FloorSolarWatts">The share of the absorbed sun that falls on the floor, W.</param>
/// <param name="LatentWatts">Taken from the air by transpiration, W.</param>
/// <param name="WaterHeatWatts">Sensible heat from the water bodies, W; negative where they are warmed.</param>
/// <param name="CoverLossWatts">By conduction through covers, W.</param>
/// <param name="InfiltrationLossWatts">By infiltration, W.</param>
/// <param name="PerimeterLossWatts">Along the perimeter, W.</param>
/// <param name="VentLossWatts">By ventilation, against the air as it comes in behind the pad, W.</param>
/// <param name="CondensationKilogramsPerHour">Water that drips from the cover, kg/h.</param>
/// <param name="VapourCarriedOutKilogramsPerHour">Net with infiltration and ventilation, kg/h; negative where the air brings some.</param>
public readonly record struct HouseAir(
    double AirCelsius,
    double VapourPressureKilopascal,
    double RelativeHumidityPercent,
    double HeaterWatts,
    double VentCubicMetresPerSecond,
    double FloorHeatWatts,
    double FloorCelsiusAfter,
    double SolarWatts,
    double FloorSolarWatts,
    double LatentWatts,
    double WaterHeatWatts,
    double CoverLossWatts,
    double InfiltrationLossWatts,
    double PerimeterLossWatts,
    double VentLossWatts,
    double CondensationKilogramsPerHour,
    double VapourCarriedOutKilogramsPerHour)
{
    /// <summary>Air taken in against humidity while the vents are shut, m3/s; its heat is in <see cref="VentLossWatts"/>.</summary>
    public double PurgeCubicMetresPerSecond { get; init; }

    /// <summary>The part of the heater's output that this airing asks for, W.</summary>
    public double PurgeHeaterWatts { get; init; }

    /// <summary>Share of the step in which the pad is wet.</summary>
    public double PadWetShare { get; init; }

    /// <summary>Water that the pad evaporates into the air that comes in, kg/h.</summary>
    public double PadKilogramsPerHour { get; init; }
}
