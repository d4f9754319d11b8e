using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Water;

/// <summary>As <see cref="EffectiveConstants"/>, of four waters side by side.</summary>
internal readonly struct EffectiveLanes
{
    public readonly Vector256<double> InverseGamma1;
    public readonly Vector256<double> K1;
    public readonly Vector256<double> K1K2;
    public readonly Vector256<double> Water;
    public readonly Vector256<double> Phosphate;
    public readonly Vector256<double> Ammonium;

    public EffectiveLanes(in ConstantLanes constants, Vector256<double> ionicStrength)
    {
        Vector256<double> gamma1 = DaviesActivity.Monovalent(ionicStrength, constants.DebyeHuckel);
        Vector256<double> inverse1 = Vector256<double>.One / gamma1;
        Vector256<double> ratio = inverse1 * inverse1 * inverse1; // γ1/γ2, for γ2 = γ1⁴
        InverseGamma1 = inverse1;
        K1 = constants.K1 * inverse1;
        K1K2 = K1 * constants.K2 * ratio;
        Water = constants.KWater * inverse1;
        Phosphate = constants.KPhosphate * ratio;
        Ammonium = constants.KAmmonium * gamma1;
    }
}
