using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Water;

/// <summary>Numbers of the green film that grows on water in the light.</summary>
/// <param name="GrowthAt20PerDay">Greatest growth at 20 °C, 1/d.</param>
/// <param name="GrowthPerKelvin">Exponent of growth and respiration, 1/K.</param>
/// <param name="HalfLightMicromoles">Light of half growth, µmol/(m² s).</param>
/// <param name="SelfShadingGrams">Dry mass that halves its own light, g/m².</param>
/// <param name="InoculumGrams">Dry mass that growth starts from, g/m².</param>
/// <param name="RespirationAt20PerDay">Respiration at 20 °C, 1/d.</param>
/// <param name="SloughingPerDay">Share that drifts off, 1/d.</param>
/// <param name="NitrateHalfSaturation">Nitrate of half growth, mg N/L.</param>
/// <param name="CarbonShare">Carbon in dry mass, g/g.</param>
/// <param name="NitrogenPerCarbon">N for C, g/g.</param>
/// <param name="PhosphorusPerCarbon">P for C, g/g.</param>
/// <param name="OxygenPerCarbon">O2 for C, g/g.</param>
public sealed record AlgaeParameters(
    double GrowthAt20PerDay, double GrowthPerKelvin, double HalfLightMicromoles, double SelfShadingGrams, double InoculumGrams,
    double RespirationAt20PerDay, double SloughingPerDay, double NitrateHalfSaturation, double CarbonShare, double NitrogenPerCarbon,
    double PhosphorusPerCarbon, double OxygenPerCarbon)
{
    /// <summary>Reads them.</summary>
    public static AlgaeParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new AlgaeParameters(
            set.Get("growthAt20", "1/d"), set.Get("growthPerKelvin", "1/K"), set.Get("halfLight", "umol/m2/s"), set.Get("selfShading", "g/m2"),
            set.Get("inoculum", "g/m2"), set.Get("respirationAt20", "1/d"), set.Get("sloughing", "1/d"), set.Get("nitrateHalfSaturation", "mg N/L"),
            set.Get("carbonShare", "g/g"), set.Get("nitrogenPerCarbon", "g/g"), set.Get("phosphorusPerCarbon", "g/g"), set.Get("oxygenPerCarbon", "g/g"));
    }
}
