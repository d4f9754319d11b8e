namespace FarmTwin.Farm.Water;

/// <summary>Activity coefficients of ions by the Davies equation: log γ = -A z² (√I/(1+√I) - 0.3 I).</summary>
/// <remarks>Davies 1962 (from memory, not re-read). For I up to 0.5 mol/L; above, the value at 0.5 is held. Pure, allocation
/// free.</remarks>
public static class DaviesActivity
{
    /// <summary>The Debye-Hückel A at 25 °C, decadic.</summary>
    public const double DebyeHuckelAt25 = 0.512;

    private const double LargestIonicStrength = 0.5;

    /// <summary>γ of an ion of one charge.</summary>
    /// <param name="ionicStrength">mol/L, 0-0.5.</param>
    /// <param name="debyeHuckel">The A at the water's temperature (<see cref="CarbonateConstants.DebyeHuckel"/>).</param>
    public static double Monovalent(double ionicStrength, double debyeHuckel = DebyeHuckelAt25) =>
        Math.Exp(MonovalentLogarithm(ionicStrength, debyeHuckel));

    /// <summary>γ of an ion of two charges: the fourth power of that of one.</summary>
    /// <param name="ionicStrength">mol/L, 0-0.5.</param>
    /// <param name="debyeHuckel">The A at the water's temperature (<see cref="CarbonateConstants.DebyeHuckel"/>).</param>
    public static double Divalent(double ionicStrength, double debyeHuckel = DebyeHuckelAt25)
    {
        double gamma = Monovalent(ionicStrength, debyeHuckel);
        gamma *= gamma;
        return gamma * gamma;
    }

    /// <summary>The natural logarithm of γ of an ion of one charge.</summary>
    internal static double MonovalentLogarithm(double ionicStrength, double debyeHuckel)
    {
        double strength = Math.Clamp(ionicStrength, 0, LargestIonicStrength);
        double root = Math.Sqrt(strength);
        return -CarbonateConstants.LogarithmOfTen * debyeHuckel * ((root / (1 + root)) - (0.3 * strength));
    }
}
