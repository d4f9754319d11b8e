namespace FarmTwin.Farm.Description;

/// <summary>Exhaust fans that ventilate the house; without them it is ventilated by openings and costs no power.</summary>
public sealed record FansDescription
{
    /// <summary>Air moved for the power, m³/h for each watt.</summary>
    [Input("airPerPower", "Air that the fans move for their power, at the pressure they work against", Unit = "m3/h/W", Low = 5, High = 80)]
    public double CubicMetresPerWattHour { get; init; } = 28;
}

/// <summary>A wet pad through which the fans draw the air.</summary>
public sealed record EvaporativePadDescription
{
    /// <summary>Air temperature at which the pad is wetted, °C.</summary>
    [Input("wetAt", "Air temperature of the house at which the pad is wetted, when the fans run in full", Unit = "°C", Low = 15, High = 45)]
    public double WetAtCelsius { get; init; } = 28;

    /// <summary>Share of the way to the wet bulb; the library's when left out.</summary>
    [Input("effectiveness", "How far it cools the air toward its wet bulb; the library's figure when left out", Unit = "1", Low = 0.3, High = 0.95)]
    public double? Effectiveness { get; init; }

    /// <summary>Electric power of its pump, W.</summary>
    [Input("power", "Electric power of its pump", Unit = "W", Low = 0, High = 5000)]
    public double PowerWatts { get; init; } = 90;

    /// <summary>Water bled off for the water evaporated.</summary>
    [Input("bleed", "Water bled off, so that salts do not crust it, as a share of what it evaporates", Unit = "1", Low = 0, High = 2)]
    public double BleedShare { get; init; } = 0.2;
}

/// <summary>Airing against humidity while the vents are shut; the heater makes up for it.</summary>
public sealed record HumidityPurgeDescription
{
    /// <summary>Relative humidity held, as a share.</summary>
    [Input("above", "Relative humidity that it holds", Unit = "1", Low = 0.5, High = 0.99)]
    public required double AboveShare { get; init; }

    /// <summary>Most air changes an hour.</summary>
    [Input("airChanges", "Most air changes an hour that it airs with", Unit = "1/h", Low = 0.1, High = 20)]
    public double LargestPerHour { get; init; } = 2;
}

/// <summary>Carbon dioxide from bottles or a vented source into the house air.</summary>
public sealed record EnrichmentDescription
{
    /// <summary>Held, ppm.</summary>
    [Input("hold", "Carbon dioxide that it holds while there is light and the vents are shut", Unit = "ppm", Low = 400, High = 2000)]
    public required double HoldPpm { get; init; }

    /// <summary>Largest flow, kg/h.</summary>
    [Input("output", "Largest flow", Unit = "kg/h", Low = 0.001, High = 1000)]
    public required double LargestKilogramsPerHour { get; init; }
}
