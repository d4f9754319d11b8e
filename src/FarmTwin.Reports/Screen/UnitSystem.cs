namespace FarmTwin.Reports.Screen;

/// <summary>The units of the screen page. Files are always metric.</summary>
public enum UnitSystem
{
    /// <summary>Kilograms, litres, degrees Celsius.</summary>
    Metric,

    /// <summary>Pounds, US gallons, degrees Fahrenheit.</summary>
    Us,
}
