using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

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
        Monovalent(Vector256.Create(ionicStrength), Vector256.Create(debyeHuckel)).ToScalar();

    /// <summary>γ of an ion of one charge in four waters.</summary>
    internal static Vector256<double> Monovalent(Vector256<double> ionicStrength, Vector256<double> debyeHuckel) =>
        FourFunctions.Exp(MonovalentLogarithm(ionicStrength, debyeHuckel));

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
    internal static double MonovalentLogarithm(double ionicStrength, double debyeHuckel) =>
        MonovalentLogarithm(Vector256.Create(ionicStrength), Vector256.Create(debyeHuckel)).ToScalar();

    private static Vector256<double> MonovalentLogarithm(Vector256<double> ionicStrength, Vector256<double> debyeHuckel)
    {
        Vector256<double> strength = Vector256.Clamp(ionicStrength, Vector256<double>.Zero, Vector256.Create(LargestIonicStrength));
        Vector256<double> root = Vector256.Sqrt(strength);
        return -CarbonateConstants.LogarithmOfTen * debyeHuckel * ((root / (Vector256<double>.One + root)) - (0.3 * strength));
    }
}
