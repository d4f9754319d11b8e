using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Water;

/// <summary>How meters turn conductivity into what they show.</summary>
/// <param name="TemperatureCoefficientPerKelvin">Rise of conductivity per kelvin, of that at 25 °C, 1/K.</param>
/// <param name="TdsFactorSodiumChloride">Factor of the "500" scale, mg/L per µS/cm.</param>
/// <param name="TdsFactorNaturalWater">Factor of the "700" (442) scale, mg/L per µS/cm.</param>
public sealed record ConductivityParameters(
    double TemperatureCoefficientPerKelvin, double TdsFactorSodiumChloride, double TdsFactorNaturalWater)
{
    /// <summary>Reads the values from the set "water".</summary>
    /// <param name="set">The parameter set.</param>
    public static ConductivityParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new ConductivityParameters(
            set.Get("conductivityTemperatureCoefficient", "1/K"),
            set.Get("tdsFactor500", "mg cm/(L uS)"),
            set.Get("tdsFactor700", "mg cm/(L uS)"));
    }
}
