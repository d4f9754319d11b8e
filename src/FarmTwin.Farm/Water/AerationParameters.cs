using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Water;

/// <summary>What aeration depends on beside air, depth and temperature.</summary>
/// <param name="AlphaClearWater">Transfer in clear fish water over that in tap water, 0-1.</param>
/// <param name="AlphaSolidsWater">The same where solids are suspended (mineralization tank), 0-1.</param>
/// <param name="Beta">Saturation in the farm's water over that in clean water, 0-1.</param>
/// <param name="Theta">Growth of transfer per kelvin above 20 °C, as a factor.</param>
/// <param name="FoulingFactor">What fouled diffusers still give, 0-1.</param>
/// <param name="FineBubbleEfficiencyPerMetre">Share of the oxygen blown in that dissolves per metre of depth, fine bubbles,
/// 1/m.</param>
/// <param name="CoarseBubbleEfficiencyPerMetre">The same for coarse bubbles, 1/m.</param>
/// <param name="SurfaceVelocityMetresPerHour">Transfer velocity of oxygen through a quiet surface, m/h.</param>
/// <param name="CarbonDioxideRatio">Transfer coefficient of carbon dioxide over that of oxygen.</param>
public sealed record AerationParameters(double AlphaClearWater, double AlphaSolidsWater, double Beta, double Theta, double FoulingFactor,
    double FineBubbleEfficiencyPerMetre, double CoarseBubbleEfficiencyPerMetre, double SurfaceVelocityMetresPerHour,
    double CarbonDioxideRatio)
{
    /// <summary>Reads the values from the set "water".</summary>
    /// <param name="set">The parameter set.</param>
    public static AerationParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new AerationParameters(
            set.Get("alphaClearWater", "1"),
            set.Get("alphaSolidsWater", "1"),
            set.Get("beta", "1"),
            set.Get("transferTemperatureFactor", "1"),
            set.Get("diffuserFouling", "1"),
            set.Get("fineBubbleEfficiency", "1/m"),
            set.Get("coarseBubbleEfficiency", "1/m"),
            set.Get("surfaceTransferVelocity", "m/h"),
            set.Get("carbonDioxideTransferRatio", "1"));
    }
}
