namespace FarmTwin.Farm.Description;

/// <summary>The water that fish travel in, and how it is made like the tank's.</summary>
public sealed record TransportDescription
{
    /// <summary>Temperature of the transport water, °C.</summary>
    [Input("temperature", "Temperature of the water they travel in", Unit = "°C", Low = 0, High = 40)]
    public required double Celsius { get; init; }

    /// <summary>pH of it.</summary>
    [Input("pH", "pH of the water they travel in; like the tank's when left out", Unit = "1", Low = 5, High = 10)]
    public double? PH { get; init; }

    /// <summary>Rate at which the two waters are brought together, K/h.</summary>
    [Input("temper", "Rate at which their water is brought to the tank's; 1–2 K/h is good practice", Unit = "K/h", Low = 0.1, High = 1000)]
    public double TemperKelvinPerHour { get; init; } = 1.5;

    /// <summary>Share lost to the transport itself.</summary>
    [Input("loss", "Share that dies of the transport itself in the days after it, besides handling", Unit = "1", Low = 0, High = 0.9)]
    public double LossShare { get; init; }
}

/// <summary>A batch's stay in quarantine.</summary>
public sealed record QuarantineStayDescription
{
    /// <summary>The quarantine basin.</summary>
    [Input("in", "The quarantine tank", Of = "quarantines")]
    public required string In { get; init; }

    /// <summary>Length of the stay, d.</summary>
    [Input("for", "Length of the stay; longer where unexplained deaths go on", Unit = "d", Low = 1, High = 120)]
    public double Days { get; init; } = 21;

    /// <summary>Rate at which the fish are tempered to the tank, K/h.</summary>
    [Input("temper", "Rate at which they are tempered to the tank's water", Unit = "K/h", Low = 0.1, High = 1000)]
    public double TemperKelvinPerHour { get; init; } = 1.5;
}

/// <summary>A quarantine tank and its care: a basin of its own, part of neither loop.</summary>
/// <remarks>Its water goes one way: nothing returns to the fish loop, and treated water never reaches plants.</remarks>
public sealed record QuarantineDescription
{
    /// <summary>The tank.</summary>
    [Input("basin", "The tank", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Changed when TAN is above this, mg N/L.</summary>
    [Input("changeAboveTan", "Water is changed in the morning when TAN is above this", Unit = "mg N/L", Low = 0, High = 20)]
    public double ChangeAboveTan { get; init; } = 1.5;

    /// <summary>or nitrite is above this, mg N/L.</summary>
    [Input("changeAboveNitrite", "or nitrite is above this", Unit = "mg N/L", Low = 0, High = 20)]
    public double ChangeAboveNitrite { get; init; } = 1;

    /// <summary>or pH is below this.</summary>
    [Input("changeBelowPH", "or pH is below this: a small tank nitrifies its alkalinity away", Unit = "1", Low = 0, High = 9)]
    public double ChangeBelowPH { get; init; } = 6.8;

    /// <summary>Share changed.</summary>
    [Input("change", "Share of its water that is changed at a time", Unit = "1", Low = 0.05, High = 0.9)]
    public double ChangeShare { get; init; } = 0.3;

    /// <summary>Where the new water is taken.</summary>
    [Input("waterFrom", "Basin that the new water is taken from (warm water of the fish loop); source water, of the source's temperature, when left out", Of = "basins")]
    public string? WaterFrom { get; init; }

    /// <summary>Where the old water goes.</summary>
    [Input("waterTo", "Basin that takes the old water (the plant sump); out of the farm when left out, and always after a treatment or with salt in it", Of = "basins")]
    public string? WaterTo { get; init; }

    /// <summary>Share of the usual ration.</summary>
    [Input("ration", "Share of the usual ration while they are watched", Unit = "1", Low = 0, High = 1)]
    public double RationShare { get; init; } = 0.5;
}
