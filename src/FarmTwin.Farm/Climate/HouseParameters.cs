using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Climate;

/// <summary>A house as its air balance sees it: plain measures, covers, vents, screen, heater.</summary>
/// <remarks>Immutable. Every area, volume and coefficient must be finite and not negative; the heater's set-point must lie below
/// the vents'.</remarks>
public sealed record HouseParameters
{
    /// <summary>Floor, m2, above 0.</summary>
    public required double FloorSquareMetres { get; init; }

    /// <summary>All cover that faces the outside, m2, above 0.</summary>
    public required double CoverSquareMetres { get; init; }

    /// <summary>Sum of U times area over all covers and walls, W/K.</summary>
    public required double CoverWattsPerKelvin { get; init; }

    /// <summary>Enclosed air, m3, above 0.</summary>
    public required double VolumeCubicMetres { get; init; }

    /// <summary>Loss along the perimeter, W/K.</summary>
    public required double PerimeterWattsPerKelvin { get; init; }

    /// <summary>Air changes an hour with vents shut, 1/h.</summary>
    public required double InfiltrationPerHour { get; init; }

    /// <summary>Transmission of all solar heat by the structure, 0 to 1.</summary>
    public required double SolarTransmission { get; init; }

    /// <summary>PAR transmission of the structure at crop height, 0 to 1.</summary>
    public required double ParTransmission { get; init; }

    /// <summary>Air pressure at the site, kPa.</summary>
    public required double PressureKilopascal { get; init; }

    /// <summary>Greatest ventilation, m3/s.</summary>
    public required double VentCubicMetresPerSecond { get; init; }

    /// <summary>Air temperature at which vents begin to open, °C.</summary>
    public required double VentSetPointCelsius { get; init; }

    /// <summary>Whether a thermal screen is drawn at night.</summary>
    public bool HasThermalScreen { get; init; }

    /// <summary>Output of the air heater, W; 0 for none.</summary>
    public double HeaterCapacityWatts { get; init; }

    /// <summary>Air temperature that the heater holds, °C.</summary>
    public double HeaterSetPointCelsius { get; init; }

    /// <summary>Outside air below which the screen is drawn at night, °C.</summary>
    public double ScreenBelowCelsius { get; init; } = double.PositiveInfinity;

    /// <summary>Effectiveness of a wet pad before the vents, 0 (none) to 1.</summary>
    public double PadEffectiveness { get; init; }

    /// <summary>Air temperature that the pad holds when ventilation alone does not, °C.</summary>
    public double PadSetPointCelsius { get; init; } = double.PositiveInfinity;

    /// <summary>Relative humidity that airing holds while the vents are shut, %; 100 and above for none.</summary>
    public double PurgeHumidityPercent { get; init; } = double.PositiveInfinity;

    /// <summary>Most air that such airing takes in, m3/s.</summary>
    public double PurgeCubicMetresPerSecond { get; init; }

    /// <summary>What the balance needs beside measures.</summary>
    public required HouseAirParameters Air { get; init; }

    /// <summary>A gable house under one cover with other (or the same) end walls.</summary>
    /// <param name="shape">Its measures.</param>
    /// <param name="cover">Roof and side walls; its leakiness and light hold for the house.</param>
    /// <param name="ends">End walls.</param>
    /// <param name="elevationMetres">Site above sea level, m.</param>
    /// <param name="insulatedPerimeter">Whether the perimeter is insulated.</param>
    /// <param name="air">The process's parameters.</param>
    public static HouseParameters Gable(HouseShape shape, CoverParameters cover, CoverParameters ends, double elevationMetres,
        bool insulatedPerimeter, HouseAirParameters air)
    {
        ArgumentNullException.ThrowIfNull(cover);
        ArgumentNullException.ThrowIfNull(ends);
        ArgumentNullException.ThrowIfNull(air);
        double roofAndSides = shape.RoofSquareMetres + shape.SidesSquareMetres;
        return new HouseParameters
        {
            FloorSquareMetres = shape.FloorSquareMetres,
            CoverSquareMetres = roofAndSides + shape.EndsSquareMetres,
            CoverWattsPerKelvin = (roofAndSides * cover.HeatTransferWattsPerSquareMetreKelvin)
                + (shape.EndsSquareMetres * ends.HeatTransferWattsPerSquareMetreKelvin),
            VolumeCubicMetres = shape.VolumeCubicMetres,
            PerimeterWattsPerKelvin = shape.PerimeterMetres
                * (insulatedPerimeter ? air.InsulatedPerimeterWattsPerMetreKelvin : air.PerimeterWattsPerMetreKelvin),
            InfiltrationPerHour = cover.InfiltrationPerHour,
            SolarTransmission = cover.SolarTransmission,
            ParTransmission = cover.ParTransmission,
            PressureKilopascal = Psychrometrics.PressureKilopascal(elevationMetres),
            VentCubicMetresPerSecond = shape.FloorSquareMetres * air.VentFlowCubicMetresPerSquareMetreSecond,
            VentSetPointCelsius = air.VentSetPointCelsius,
            Air = air,
        };
    }

    /// <summary>The house that a farm describes.</summary>
    /// <param name="parts">The farm.</param>
    /// <param name="cover">Its cover.</param>
    /// <param name="pressureKilopascal">Air pressure at the site, kPa.</param>
    /// <exception cref="DescriptionException">A pad without fans, or wetted before the house is ventilated.</exception>
    public static HouseParameters Of(FarmParts parts, CoverParameters cover, double pressureKilopascal)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(cover);
        HouseDescription house = parts.Farm.House;
        return new HouseParameters
        {
            FloorSquareMetres = house.FloorSquareMetres,
            CoverSquareMetres = house.CoverSquareMetres,
            CoverWattsPerKelvin = house.CoverSquareMetres * cover.HeatTransferWattsPerSquareMetreKelvin,
            VolumeCubicMetres = house.AirCubicMetres,
            PerimeterWattsPerKelvin = house.PerimeterMetres * parts.Climate.House.PerimeterWattsPerMetreKelvin,
            InfiltrationPerHour = house.InfiltrationPerHour,
            SolarTransmission = cover.SolarTransmission,
            ParTransmission = cover.ParTransmission,
            PressureKilopascal = pressureKilopascal,
            VentCubicMetresPerSecond = house.LargestVentilationPerHour * house.AirCubicMetres / UnitConstants.SecondsPerHour,
            VentSetPointCelsius = house.VentCelsius,
            HasThermalScreen = house.Screen,
            ScreenBelowCelsius = house.ScreenBelowCelsius ?? double.PositiveInfinity,
            PadEffectiveness = house.EvaporativePad is { } pad ? PadOf(parts, pad) : 0,
            PadSetPointCelsius = house.EvaporativePad?.WetAtCelsius ?? double.PositiveInfinity,
            PurgeHumidityPercent = 100 * (house.HumidityPurge?.AboveShare ?? double.PositiveInfinity),
            PurgeCubicMetresPerSecond = (house.HumidityPurge?.LargestPerHour ?? 0) * house.AirCubicMetres / UnitConstants.SecondsPerHour,
            HeaterCapacityWatts = (house.AirHeater?.OutputKilowatts ?? 0) * UnitConstants.GramsPerKilogram,
            HeaterSetPointCelsius = house.AirHeater?.HoldCelsius ?? double.NegativeInfinity,
            Air = parts.Climate.House,
        };
    }

    private static double PadOf(FarmParts parts, EvaporativePadDescription pad) => parts.Farm.House.Fans is null
        ? throw new DescriptionException("house.evaporativePad: air must be drawn through a pad; describe the \"fans\" of the house.")
        : pad.WetAtCelsius < parts.Farm.House.VentCelsius
            ? throw new DescriptionException(
                $"house.evaporativePad: it is wetted at {pad.WetAtCelsius:0.#} °C, below the {parts.Farm.House.VentCelsius:0.#} °C at which the house is ventilated; set \"wetAt\" at or above \"ventAt\".")
            : pad.Effectiveness ?? parts.Climate.Machines.PadEffectiveness;
}
