namespace FarmTwin.Farm.Alarms;

/// <summary>What a probe reads.</summary>
public enum ProbeQuantity
{
    /// <summary>pH of a basin.</summary>
    PH,

    /// <summary>Electric conductivity of a basin at 25 °C, µS/cm.</summary>
    Conductivity,

    /// <summary>Temperature of a basin, °C.</summary>
    WaterTemperature,

    /// <summary>Dissolved oxygen of a basin, mg/L.</summary>
    Oxygen,

    /// <summary>Water in a basin as a share of its normal level.</summary>
    Level,

    /// <summary>Air of the house, °C.</summary>
    AirTemperature,

    /// <summary>Mains power: 1 while it is on, 0 while it is off.</summary>
    Mains,
}

/// <summary>Names and units of what probes read.</summary>
public static class ProbeQuantities
{
    /// <summary>The entry of the library that describes a usual probe of this kind.</summary>
    public static string UsualModel(ProbeQuantity quantity) => quantity switch
    {
        ProbeQuantity.PH => "ph",
        ProbeQuantity.Conductivity => "conductivity",
        ProbeQuantity.WaterTemperature => "water-temperature",
        ProbeQuantity.Oxygen => "oxygen",
        ProbeQuantity.Level => "level",
        ProbeQuantity.Mains => "mains",
        _ => "air-temperature",
    };

    /// <summary>Unit of a reading.</summary>
    public static string Unit(ProbeQuantity quantity) => quantity switch
    {
        ProbeQuantity.Conductivity => "µS/cm",
        ProbeQuantity.Oxygen => "mg/L",
        ProbeQuantity.WaterTemperature or ProbeQuantity.AirTemperature => "°C",
        _ => "1",
    };

    /// <summary>Unit of a difference of readings.</summary>
    public static string DifferenceUnit(ProbeQuantity quantity) => Unit(quantity) == "°C" ? "K" : Unit(quantity);

    /// <summary>End of the name of a recorded column.</summary>
    public static string ColumnEnding(ProbeQuantity quantity) => quantity switch
    {
        ProbeQuantity.PH => "pH",
        ProbeQuantity.Conductivity => "uS_per_cm",
        ProbeQuantity.Oxygen => "mg_per_L",
        ProbeQuantity.Level => "of_normal_level",
        ProbeQuantity.Mains => "on",
        _ => "C",
    };

    /// <summary>The quantity in words.</summary>
    public static string Words(ProbeQuantity quantity) => quantity switch
    {
        ProbeQuantity.PH => "pH",
        ProbeQuantity.Conductivity => "conductivity",
        ProbeQuantity.WaterTemperature => "water temperature",
        ProbeQuantity.Oxygen => "oxygen",
        ProbeQuantity.Level => "water level",
        ProbeQuantity.Mains => "mains power",
        _ => "air temperature",
    };
}
