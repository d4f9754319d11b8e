using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Climate;

/// <summary>A covering of a house: heat transfer, light, leakiness.</summary>
/// <param name="HeatTransferWattsPerSquareMetreKelvin">U, W/(m2 K), with wet inside, radiation and a wind up to the threshold.</param>
/// <param name="ParTransmission">PAR transmission of the whole structure at crop height when new, 0 to 1.</param>
/// <param name="SolarTransmission">Transmission of all solar heat by the structure, 0 to 1.</param>
/// <param name="AgeingPerYear">Share of the transmission lost in a year, 1/y.</param>
/// <param name="InfiltrationPerHour">Air changes an hour with vents shut, 1/h.</param>
public sealed record CoverParameters(
    double HeatTransferWattsPerSquareMetreKelvin,
    double ParTransmission,
    double SolarTransmission,
    double AgeingPerYear,
    double InfiltrationPerHour)
{
    /// <summary>Reads a cover from its parameter set (library folder <c>covers</c>).</summary>
    /// <param name="set">The set.</param>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A parameter has another unit.</exception>
    public static CoverParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new CoverParameters(
            set.Get("heatTransfer", "W/m2K"),
            set.Get("parTransmission", "1"),
            set.Get("solarTransmission", "1"),
            set.Get("ageing", "1/y"),
            set.Get("infiltration", "1/h"));
    }

    /// <summary>PAR transmission after some years, 0 to 1.</summary>
    /// <param name="years">Age, y, 0 or more.</param>
    /// <param name="dirtShare">Share taken by dirt, 0 to 0.1.</param>
    public double ParTransmissionAt(double years, double dirtShare) =>
        ParTransmission * Math.Max(0, 1 - (AgeingPerYear * years)) * (1 - dirtShare);
}
