using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Water;

/// <summary>Constants corrected for activity: they join concentrations with the activity h = 10^-pH. Of one water.</summary>
internal readonly struct EffectiveConstants
{
    public EffectiveConstants(in CarbonateConstants constants, double ionicStrength)
    {
        var same = new EffectiveLanes(new ConstantLanes(in constants), Vector256.Create(ionicStrength));
        InverseGamma1 = same.InverseGamma1.ToScalar();
        K1 = same.K1.ToScalar();
        K1K2 = same.K1K2.ToScalar();
        Water = same.Water.ToScalar();
        Phosphate = same.Phosphate.ToScalar();
        Ammonium = same.Ammonium.ToScalar();
    }

    public double InverseGamma1 { get; }

    public double K1 { get; }

    public double K1K2 { get; }

    public double Water { get; }

    public double Phosphate { get; }

    public double Ammonium { get; }
}
