using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Climate;

/// <summary>A fuel, or electricity, as it is bought: heat, carbon dioxide and efficiency per sale unit.</summary>
/// <remarks>Heating values and efficiencies are on the higher heating value (vapour condensed), as US appliances are rated.</remarks>
/// <param name="SaleUnit">The unit it is sold in, as the data file states it ("gal", "therm", "kWh").</param>
/// <param name="HeatMegajoulesPerUnit">Higher heating value, MJ per sale unit, above 0.</param>
/// <param name="CarbonDioxideKilogramsPerUnit">CO2 set free, kg per sale unit, 0 or more.</param>
/// <param name="WaterHeaterEfficiency">Useful heat to the water over higher heating value; above 1 for a heat pump.</param>
/// <param name="AirHeaterEfficiency">Useful heat to the air over higher heating value; above 1 for a heat pump.</param>
public sealed record FuelProperties(
    string SaleUnit,
    double HeatMegajoulesPerUnit,
    double CarbonDioxideKilogramsPerUnit,
    double WaterHeaterEfficiency,
    double AirHeaterEfficiency)
{
    /// <summary>Megajoules in a million British thermal units.</summary>
    public const double MegajoulesPerMillionBtu = UnitConstants.JoulesPerBtu;

    /// <summary>Whether it is bought by the kWh.</summary>
    public bool IsElectric => SaleUnit == "kWh";

    /// <summary>Whether it drives a heat pump, which gives more heat than it is bought as.</summary>
    public bool IsHeatPump => WaterHeaterEfficiency > 1;

    /// <summary>Reads a fuel from its parameter set.</summary>
    /// <param name="set">A set of the library folder <c>fuels</c>; the unit of <c>heatingValue</c> ("MJ/gal") names the sale unit.</param>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A parameter has another unit.</exception>
    public static FuelProperties From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        const string HeatName = "heatingValue";
        const string HeatPrefix = "MJ/";
        string unit = string.Empty;
        foreach (Parameter parameter in set.All)
        {
            if (parameter.Name == HeatName && parameter.Unit.StartsWith(HeatPrefix, StringComparison.Ordinal))
            {
                unit = parameter.Unit[HeatPrefix.Length..];
            }
        }

        if (unit.Length == 0)
        {
            throw new ArgumentException($"The fuel '{set.Name}' must state '{HeatName}' in MJ per sale unit.", nameof(set));
        }

        return new FuelProperties(unit, set.Get(HeatName, HeatPrefix + unit), set.Get("carbonDioxide", "kg/" + unit),
            set.Get("waterHeaterEfficiency", "1"), set.Get("airHeaterEfficiency", "1"));
    }

    /// <summary>Sale units burnt for a useful heat.</summary>
    /// <param name="usefulMegajoules">MJ, 0 or more.</param>
    /// <param name="efficiency">Useful heat over higher heating value, above 0.</param>
    public double UnitsFor(double usefulMegajoules, double efficiency) =>
        usefulMegajoules / (efficiency * HeatMegajoulesPerUnit);

    /// <summary>Sale units an hour at a useful power.</summary>
    /// <param name="usefulWatts">W.</param>
    /// <param name="efficiency">Useful heat over higher heating value, above 0.</param>
    public double UnitsPerHour(double usefulWatts, double efficiency) =>
        UnitsFor(usefulWatts * UnitConstants.SecondsPerHour / 1e6, efficiency);

    /// <summary>Useful megajoules of one sale unit.</summary>
    /// <param name="efficiency">Useful heat over higher heating value.</param>
    public double UsefulMegajoulesPerUnit(double efficiency) => efficiency * HeatMegajoulesPerUnit;

    /// <summary>Carbon dioxide of some sale units, kg.</summary>
    /// <param name="units">Sale units.</param>
    public double CarbonDioxideKilograms(double units) => units * CarbonDioxideKilogramsPerUnit;

    /// <summary>Price of a sale unit at which this fuel gives useful heat at the cost of another.</summary>
    /// <param name="efficiency">Efficiency with this fuel.</param>
    /// <param name="other">The other fuel.</param>
    /// <param name="otherEfficiency">Efficiency with the other fuel, above 0.</param>
    /// <param name="otherPrice">Price of the other's sale unit.</param>
    public double BreakEvenPrice(double efficiency, FuelProperties other, double otherEfficiency, double otherPrice)
    {
        ArgumentNullException.ThrowIfNull(other);
        return otherPrice * UsefulMegajoulesPerUnit(efficiency) / other.UsefulMegajoulesPerUnit(otherEfficiency);
    }
}
