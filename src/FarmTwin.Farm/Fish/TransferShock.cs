using FarmTwin.Farm.Operations;

namespace FarmTwin.Farm.Fish;

/// <summary>What it costs fish to be put from one water into another.</summary>
/// <remarks>
/// Share lost = 1 − exp(−s² (k_T (|ΔT| − T0)² + k_pH (|ΔpH| − pH0)²)), only what lies beyond the tolerated difference counting;
/// s = 1 − safe rate / rate, none at or below the safe rate of tempering, all of it when poured over at once. The form is our own
/// choice; a fast fall of temperature and a fast rise are taken to be alike. See docs/model/quarantine.md. Pure.
/// </remarks>
public static class TransferShock
{
    /// <summary>Share that dies of it, 0 to below 1.</summary>
    /// <param name="parameters">Numbers of husbandry.</param>
    /// <param name="kelvin">Difference of temperature, K, of either sign.</param>
    /// <param name="pH">Difference of pH, of either sign.</param>
    /// <param name="temperKelvinPerHour">Rate at which the waters are brought together, K/h, above 0.</param>
    public static double Share(HusbandryParameters parameters, double kelvin, double pH, double temperKelvinPerHour)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(temperKelvinPerHour);
        double suddenness = Math.Max(0, 1 - (parameters.TemperSafeKelvinPerHour / temperKelvinPerHour));
        double beyond = Math.Max(0, Math.Abs(kelvin) - parameters.ShockToleratedKelvin);
        double beyondPH = Math.Max(0, Math.Abs(pH) - parameters.ShockToleratedPH);
        double dose = suddenness * suddenness
            * ((parameters.ShockHazardPerSquareKelvin * beyond * beyond) + (parameters.ShockHazardPerSquarePH * beyondPH * beyondPH));
        return Math.Min(LargestShare, 1 - Math.Exp(-dose));
    }

    // Keeps the hazard finite where nobody could live.
    private const double LargestShare = 0.999;
}
