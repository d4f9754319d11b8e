namespace FarmTwin.Scenarios.Units;

/// <summary>What the usual dimensions are called, and how they are usually written.</summary>
internal static class DimensionNames
{
    private static readonly (Dimension Dimension, string Name, string[] Examples)[] Known =
    [
        (Dimension.None, "a number", ["0.4", "40 %"]),
        (new(Length: 1), "a length", ["m", "cm", "in", "ft"]),
        (new(Length: 2), "an area", ["m2", "ft2"]),
        (new(Length: 3), "a volume", ["L", "m3", "gal", "ft3"]),
        (new(Mass: 1), "a mass", ["g", "kg", "lb", "oz"]),
        (new(Time: 1), "a duration", ["min", "h", "days", "weeks"]),
        (new(Temperature: 1), "a temperature difference", ["K", "°C", "°F"]),
        (new(Amount: 1), "an amount of substance", ["mol", "mmol"]),
        (new(Length: 3, Time: -1), "a flow", ["L/h", "m3/h", "gpm", "gph"]),
        (new(Mass: 1, Time: -1), "a mass flow", ["kg/day", "g/h", "lb/day"]),
        (new(Length: 1, Time: -1), "a speed", ["m/s", "m/d", "mph", "ft/min"]),
        (new(Time: -1), "a rate", ["/day", "/week", "1/h"]),
        (new(Length: -2), "a number per area", ["/m2", "/ft2"]),
        (new(Length: -3), "a number per volume", ["/m3", "/gal"]),
        (new(Length: 2, Mass: 1, Time: -3), "a power", ["W", "kW", "Btu/h", "hp"]),
        (new(Length: 2, Mass: 1, Time: -2), "an energy", ["kWh", "MJ", "Btu", "therm"]),
        (new(Length: -1, Mass: 1, Time: -2), "a pressure", ["kPa", "mbar", "psi", "inH2O"]),
        (new(Mass: 1, Length: -3), "a mass concentration", ["mg/L", "g/m3"]),
        (new(Mass: 1, Length: -2), "a mass per area", ["g/m2", "kg/m2", "lb/ft2"]),
        (new(Amount: 1, Length: -3), "a molar concentration", ["mmol/L", "mol/m3"]),
        (new(Mass: 1, Time: -3), "a power per area", ["W/m2", "MJ/m2/d", "Btu/h/ft2"]),
        (new(Mass: 1, Time: -3, Temperature: -1), "a heat transfer coefficient", ["W/m2K", "Btu/h ft2 F"]),
        (new(Length: 2, Mass: 1, Time: -3, Temperature: -1), "a heat loss coefficient", ["W/K", "Btu/h F"]),
        (new(Amount: 1, Length: -2, Time: -1), "a photon flux", ["µmol/m2/s", "mol/m2/d"]),
        (new(Mass: -1, Length: -3, Time: 3, Current: 2), "a conductivity", ["µS/cm", "mS/cm", "dS/m"]),
        (new(Angle: 1), "an angle", ["°", "deg"]),
        (new(Current: 1), "a current", ["A"]),
        (new(Current: 1, Time: 1), "an electric charge", ["Ah"]),
        (new(Length: 2, Mass: 1, Time: -3, Current: -1), "a voltage", ["V"]),
        (new(Light: 1, Length: -2), "an illuminance", ["lx"]),
        (new(Money: 1), "an amount of money", ["USD"]),
    ];

    /// <summary>The name with its article ("a volume"), or null for a dimension without a name of its own.</summary>
    public static string? NameOf(MeasureUnit unit)
    {
        if (unit.IsAbsoluteTemperature)
        {
            return "a temperature";
        }

        Dimension money = new(Money: 1);
        return NameOf(unit.Dimension) ?? (unit.Dimension.Money == 1 && unit.Dimension != money ? "a price" : null);
    }

    /// <summary>The units that a message names, the target's own first.</summary>
    public static IEnumerable<string> Examples(MeasureUnit unit)
    {
        string tail = unit.Substance.Length == 0 ? string.Empty : " " + unit.Substance;
        IEnumerable<string> usual = unit.IsAbsoluteTemperature
            ? ["°C", "°F"]
            : Known.Where(k => k.Dimension == unit.Dimension).SelectMany(k => k.Examples);
        if (unit.Noun.Length > 0 || tail.Length > 0)
        {
            return [unit.Spelling];
        }

        return usual.Prepend(unit.Spelling).Distinct(StringComparer.Ordinal);
    }

    private static string? NameOf(Dimension dimension) =>
        Known.Where(k => k.Dimension == dimension).Select(k => k.Name).FirstOrDefault();
}
